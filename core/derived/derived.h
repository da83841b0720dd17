// What follows from an open pattern, kept true after each edit: the catalogue, a ledger per version and size,
// findings, written rows.
//
// Shape:   ledgers by version and size; findings of the shown choice first by row, then of the whole pattern.
// Errors:  none. Kept values equal values made from scratch; that is a law the tests hold.
#pragma once

#include "core/needle/ledger.h"
#include "core/wording/writer/gather.h"

#include <map>

namespace shawlwright {

class Derived {
public:
    Derived(const Catalogue& builtIn, const Pattern& pattern);

    // Which lines of the shown ledger were worked again, for views that repaint no more than that.
    Reworked update(const Pattern& pattern); // after an edit
    void show(const Pattern& pattern, RunChoice choice);

    const Catalogue& catalogue() const { return m_catalogue; }
    RunChoice choice() const { return m_choice; }
    const Ledger& ledger() const { return m_ledgers[at(m_choice)]; } // of the shown choice
    const Ledger& ledger(RunChoice choice) const { return m_ledgers[at(choice)]; }
    const std::vector<Ledger>& ledgers() const { return m_ledgers; } // of every version and size
    std::size_t shownLedger() const { return at(m_choice); }         // its place among them
    Runs toldRuns() const; // every size of the shown version, as words tell them; they last until the next edit
    const std::vector<Finding>& findings() const { return m_findings; }
    const std::vector<WrittenRow>& written(const Pattern& pattern,
                                           int section);                 // kept until the next edit near it
    std::vector<WrittenLine> lines(const Pattern& pattern, int section); // the same as they are printed

    bool operator==(const Derived& other) const;

private:
    std::size_t at(RunChoice choice) const;
    void runAll(const Pattern& pattern);
    void rewriteKept(const Pattern& pattern, std::span<const Reworked> reworked); // of each ledger
    void findAll(const Pattern& pattern);

    Catalogue m_builtIn;
    Catalogue m_catalogue;
    PatternHead m_head; // the ledgers were made with
    int m_sizes = 1;
    RunChoice m_choice;
    std::vector<Ledger> m_ledgers; // version by version, size by size
    std::vector<Finding> m_findings;
    struct Written {
        std::vector<WrittenRow> rows;
        std::vector<RowId> ids; // of the rows they were written from
        std::vector<Bracket> brackets;
    };
    std::map<std::uint32_t, Written> m_written; // by section id
};

} // namespace shawlwright
