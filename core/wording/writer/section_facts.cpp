#include "core/wording/writer/section_facts.h"

#include "core/base/text.h"
#include "core/wording/writer/quantity_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

Side sideAfter(const Row& row)
{
    const FinishKind kind = row.finish.kind;
    return kind == FinishKind::Slide || kind == FinishKind::Round ? row.side : otherSide(row.side);
}

// For each row of a section the lines in which it is knitted.
RunLines linesByRow(const Ledger& ledger, int section, std::size_t rows)
{
    RunLines lines(rows);
    const std::vector<KnittedRow>& knitted = ledger.rows;
    auto at = std::lower_bound(knitted.begin(), knitted.end(), section,
                               [](const KnittedRow& row, int wanted) { return row.section < wanted; });
    for (; at != knitted.end() && at->section == section; ++at)
        if (static_cast<std::size_t>(at->row) < rows)
            lines[static_cast<std::size_t>(at->row)].push_back(static_cast<int>(at - knitted.begin()));
    return lines;
}

} // namespace

SectionFacts::SectionFacts(const Pattern& pattern, const Runs& runs, int section)
    : m_pattern(pattern), m_runs(runs), m_at(section),
      m_section(pattern.sections[static_cast<std::size_t>(section)]),
      m_firstDue(pattern.head.castOn.firstSide), m_labels(rowLabels(m_section))
{
    for (int before = section; before-- > 0;) {
        const Section& other = pattern.sections[static_cast<std::size_t>(before)];
        if (!other.rows.empty() && belongsTo(other, pattern, runs.version())) {
            m_firstDue = sideAfter(*other.rows.back());
            break;
        }
    }
    for (const std::string& label : m_labels)
        m_numbers.push_back(readInt(label));
    for (const Ledger* ledger : runs.bySize)
        m_lines.push_back(linesByRow(*ledger, section, m_section.rows.size()));
    m_everyLines.resize(m_section.rows.size());
    for (const Ledger* ledger : runs.every) {
        RunLines lines = linesByRow(*ledger, section, m_section.rows.size());
        for (std::size_t at = 0; at < lines.size(); ++at)
            m_everyLines[at].push_back(std::move(lines[at]));
    }
    std::map<RowId, int> places;
    for (int at = 0; at < rows(); ++at)
        places.emplace(row(at).id, at);
    for (const Bracket& bracket : m_section.frame.brackets) {
        const auto first = places.find(bracket.firstRow);
        const auto last = places.find(bracket.lastRow);
        if (first != places.end() && last != places.end() && first->second <= last->second)
            m_all.push_back({first->second, last->second, &bracket.times});
    }
    // Of equal ones the earlier is the outer one.
    std::stable_sort(m_all.begin(), m_all.end(), [](const RowRepeatFacts& a, const RowRepeatFacts& b) {
        return a.last - a.first > b.last - b.first;
    });
    for (std::size_t i = 0; i < m_all.size(); ++i)
        if (!everyValueIs(*m_all[i].times, 1)) {
            m_repeats.push_back(m_all[i]);
            m_place.push_back(i);
        }
}

bool SectionFacts::round(int at) const
{
    const FinishKind kind = row(at).finish.kind;
    return kind == FinishKind::Round ||
           (kind == FinishKind::BindOff && at > 0 && row(at - 1).finish.kind == FinishKind::Round);
}

Side SectionFacts::dueSide(int at) const
{
    return at == 0 ? m_firstDue : sideAfter(row(at - 1));
}

RunLines SectionFacts::lines(int at) const
{
    return lines(std::span<const int>(&at, 1));
}

RunLines SectionFacts::lines(std::span<const int> wanted) const
{
    RunLines all(m_lines.size());
    for (std::size_t run = 0; run < all.size(); ++run)
        for (const int at : wanted) {
            const std::vector<int>& some = lines(run, at);
            all[run].insert(all[run].end(), some.begin(), some.end());
        }
    return all;
}

RunLines SectionFacts::endingLines(std::size_t repeat) const
{
    const std::size_t place = m_place[repeat];
    const int end = m_all[place].last;
    RunLines ends(m_lines.size());
    for (std::size_t run = 0; run < ends.size(); ++run) {
        const Ledger& ledger = *m_runs.bySize[run];
        std::vector<std::pair<std::size_t, int>> last; // pass of each bracket from this one inwards
        std::size_t depth = 0;
        for (std::size_t r = 0; r < m_all.size(); ++r)
            if (m_all[r].first <= end && end <= m_all[r].last) {
                if (r >= place)
                    last.emplace_back(depth, m_all[r].times->at(ledger.choice.size));
                ++depth;
            }
        for (const int line : lines(run, end)) {
            const Passes& passes = ledger.rows[static_cast<std::size_t>(line)].passes;
            if (std::all_of(last.begin(), last.end(), [&](const auto& l) {
                    return l.first < passes.size() && passes[l.first] == l.second;
                }))
                ends[run].push_back(line);
        }
    }
    return ends;
}

} // namespace shawlwright
