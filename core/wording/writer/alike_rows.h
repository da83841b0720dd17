// What is alike in a section: rows that the same words tell, and row repeats of the designer's that hold the
// same.
//
// Shape:   nodes in the order read: a row, or a row repeat of the designer's with nodes of its own. Nodes
// with the same
//          key are told by the same words; keys of rows are 0 or more, those of repeats below.
// Errors:  nodes() gives nothing where row repeats cross, or where `rows` doesn't hold each of them.
#pragma once

#include "core/wording/writer/row_counts.h"
#include "core/wording/writer/section_facts.h"
#include "core/wording/writer/writer.h"

#include <span>
#include <unordered_map>

namespace shawlwright {

struct SectionNode {
    int first = 0, last = 0; // rows
    int key = 0;
    int repeat = -1; // the designer's, of SectionFacts::repeats()
    std::vector<SectionNode> inside;
};

class AlikeRows {
public:
    // `rows` as writtenRows() gives them; all must outlive this.
    AlikeRows(const SectionFacts& facts, const RowCounts& counts, const Style& style,
              std::span<const WrittenRow> rows);

    bool complete() const; // a written row for each row of the section
    const WrittenRow& written(int row) const { return *m_rows[static_cast<std::size_t>(row)]; }
    const std::vector<const WrittenRow*>& writtenRepeats() const { return m_repeats; } // in the order read
    const WrittenRow& writtenRepeat(std::size_t repeat) const { return *m_repeats[m_place[repeat]]; }

    bool sameWords(int a, int b) const
    {
        return m_words[static_cast<std::size_t>(a)] == m_words[static_cast<std::size_t>(b)];
    }
    bool typed(int row) const { return !m_facts.row(row).label.empty(); }
    bool counted(int row) const; // its number follows from the one before it

    std::optional<std::vector<SectionNode>> nodes();

private:
    void numberRows(const RowCounts& counts, const Style& style);
    bool placeRepeats();
    std::vector<SectionNode> nodesOf(int first, int last, std::size_t from);

    const SectionFacts& m_facts;
    std::vector<const WrittenRow*> m_rows, m_repeats;
    std::vector<std::size_t> m_place;  // of the facts' repeats in m_repeats
    std::vector<int> m_words, m_alike; // by row: the same words; on the same side in the same yarn too
    std::unordered_map<std::string, int> m_repeatKeys;
};

// The words of a row as they are with a count behind them: the full stop goes where a dash leads to a count.
std::string withoutStop(const WrittenRow& written);

} // namespace shawlwright
