#include "app/canvas/row_facts.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright::app {

std::optional<Severity> RowFact::worst() const
{
    std::optional<Severity> worst;
    for (const FindingMark& mark : findings)
        if (!worst || mark.severity < *worst)
            worst = mark.severity;
    return worst;
}

std::vector<int> RowFacts::refresh(const Pattern& pattern, const Ledger& ledger,
                                   std::span<const Finding> findings, int section)
{
    std::vector<RowFact> facts;
    std::vector<int> lines;
    if (section >= 0) {
        const Section& shown = pattern.sections[static_cast<std::size_t>(section)];
        facts.resize(shown.rows.size());
        lines.assign(shown.rows.size(), -1);
        const std::vector<std::string> labels = rowLabels(shown);
        for (std::size_t row = 0; row < facts.size() && row < labels.size(); ++row)
            facts[row].label = labels[row];
        for (std::size_t line = 0; line < ledger.lines.size() && line < ledger.rows.size(); ++line) {
            const KnittedRow& knitted = ledger.rows[line];
            if (knitted.section != section || knitted.row < 0 ||
                knitted.row >= static_cast<int>(facts.size()))
                continue;
            const std::size_t row = static_cast<std::size_t>(knitted.row);
            if (lines[row] < 0) {
                lines[row] = static_cast<int>(line);
                facts[row].before = ledger.lines[line].before;
                facts[row].after = ledger.lines[line].after;
            } else {
                facts[row].atLast = ledger.lines[line].after;
            }
            facts[row].unsure = ledger.lines[line].restsOn.value != 0;
        }
        for (const Finding& finding : findings) {
            if (finding.section != shown.id || finding.row < 0 ||
                finding.row >= static_cast<int>(facts.size()))
                continue;
            auto& marks = facts[static_cast<std::size_t>(finding.row)].findings;
            const FindingMark mark{finding.column, finding.severity};
            if (std::find(marks.begin(), marks.end(), mark) == marks.end())
                marks.push_back(mark);
        }
    }
    std::vector<int> different;
    for (std::size_t row = 0; row < facts.size(); ++row)
        if (row >= m_facts.size() || !(facts[row] == m_facts[row]))
            different.push_back(static_cast<int>(row));
    m_facts = std::move(facts);
    m_lines = std::move(lines);
    m_resting.resize(m_facts.size());
    return different;
}

std::string RowFact::afterInWords() const
{
    std::string words;
    if (after >= 0 && after != before)
        words = "\u2192 " + toText(after);
    if (atLast >= 0 && atLast != after)
        words += (words.empty() ? "" : " ") + std::string("\u2026 ") + toText(atLast);
    return words;
}

void RowFacts::forgetResting(int row)
{
    if (row >= 0 && row < static_cast<int>(m_resting.size()))
        m_resting[static_cast<std::size_t>(row)].reset();
}

int RowFacts::line(int row) const
{
    return row >= 0 && row < static_cast<int>(m_lines.size()) ? m_lines[static_cast<std::size_t>(row)] : -1;
}

const std::vector<bool>& RowFacts::resting(const Ledger& ledger, int row)
{
    auto& kept = m_resting[static_cast<std::size_t>(row)];
    if (!kept) {
        kept.emplace();
        if (const int first = line(row); first >= 0)
            for (const int column : restingColumns(ledger, first)) {
                if (static_cast<std::size_t>(column) > kept->size())
                    kept->resize(static_cast<std::size_t>(column));
                (*kept)[static_cast<std::size_t>(column) - 1] = true;
            }
    }
    return *kept;
}

} // namespace shawlwright::app
