// What the canvas shows beside and under the cells of each row of one section: label, counts, resting
// columns, findings.
//
// Shape:   by row index. A row that is knitted several times shows its first knitting's count before and its
// last one's
//          after. Resting columns are asked of the ledger when a row is first seen.
// Errors:  a row that isn't knitted in the shown version has counts of -1.
#pragma once

#include "core/needle/ledger.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace shawlwright::app {

struct FindingMark {
    int column = 0; // 0: the whole row
    Severity severity = Severity::Note;
    bool operator==(const FindingMark&) const = default;
};

struct RowFact {
    std::string label;
    int before = -1, after = -1; // the first time it is knitted
    int atLast = -1;             // after the last time, where a row repeat comes back to it; else -1
    bool unsure = false; // its counts rest on a row that doesn't come out
    std::vector<FindingMark> findings;
    bool operator==(const RowFact&) const = default;
    std::optional<Severity> worst() const;
    std::string afterInWords() const; // "→ 23 … 219": where it changes the count, and where a row repeat leads
};

class RowFacts {
public:
    // Everything anew, in one go over the ledger; gives the rows that look different from before.
    std::vector<int> refresh(const Pattern& pattern, const Ledger& ledger, std::span<const Finding> findings, int section);
    void forgetResting() { m_resting.assign(m_facts.size(), std::nullopt); }
    void forgetResting(int row);

    const RowFact& at(int row) const { return m_facts[static_cast<std::size_t>(row)]; }
    int rows() const { return static_cast<int>(m_facts.size()); }
    int line(int row) const; // first ledger line; -1: not knitted
    const std::vector<bool>& resting(const Ledger& ledger, int row); // by column - 1; empty: none

private:
    std::vector<RowFact> m_facts;
    std::vector<int> m_lines;
    std::vector<std::optional<std::vector<bool>>> m_resting;
};

} // namespace shawlwright::app
