#include "app/exports/section_charts.h"

#include "core/pattern/plain_ws_rows.h"
#include "core/wording/writer/writer.h"

#include <algorithm>

namespace shawlwright::app {

namespace {

void leavePlainRowsOut(SectionChart& chart, const Section& section, const Catalogue& catalogue)
{
    const std::vector<PlainWs> plain = plainWsRows(section, catalogue);
    std::vector<bool> gone;
    for (const PlainWs& row : plain)
        gone.push_back(row.plain());
    FewerRows fewer = withoutRows(section, gone);
    if (fewer.rows.size() == section.rows.size() || fewer.rows.empty())
        return;
    std::vector<chart::RowFacts> facts;
    for (const int row : fewer.rows)
        facts.push_back(std::move(chart.facts[static_cast<std::size_t>(row)]));
    chart.facts = std::move(facts);
    chart.rows = std::move(fewer.rows);
    chart.fewer = std::make_shared<const Section>(std::move(fewer.section));
    chart.notShown = rowsNotShown(section, plain);
}

} // namespace

std::vector<int> exportedSections(const Pattern& pattern, const ExportOptions& options)
{
    std::vector<int> sections;
    for (int i = 0; i < static_cast<int>(pattern.sections.size()); ++i) {
        const Section& section = pattern.sections[static_cast<std::size_t>(i)];
        if (options.section ? section.id == *options.section
                            : belongsTo(section, pattern, options.choice.version))
            sections.push_back(i);
    }
    return sections;
}

namespace {

// The count after each row of a section, the first and the last time it is knitted.
struct Counts {
    int before = 0, first = 0, last = 0;
    int line = -1; // of the ledger, the first time; -1: it isn't knitted
};

std::vector<std::vector<Counts>> countsOf(const Pattern& pattern, const Ledger& ledger) // by section and row
{
    std::vector<std::vector<Counts>> counts;
    for (const Section& section : pattern.sections)
        counts.emplace_back(section.rows.size());
    for (std::size_t line = 0; line < ledger.lines.size(); ++line) {
        const KnittedRow& row = ledger.rows[line];
        Counts& here = counts[static_cast<std::size_t>(row.section)][static_cast<std::size_t>(row.row)];
        if (here.line < 0) {
            here.before = ledger.lines[line].before;
            here.first = ledger.lines[line].after;
            here.line = static_cast<int>(line);
        }
        here.last = ledger.lines[line].after;
    }
    // A row that this size works no times leaves the stitches that are there.
    int there = ledger.before.front().count();
    for (std::size_t at = 0; at < counts.size(); ++at)
        for (Counts& row : counts[at]) {
            if (row.line >= 0)
                there = row.last;
            else
                row = {there, there, there};
        }
    return counts;
}

// Said once where all sizes agree.
Quantity together(const std::vector<int>& bySize)
{
    const bool same = std::all_of(bySize.begin(), bySize.end(), [&](int n) { return n == bySize.front(); });
    return same ? Quantity(bySize.front()) : Quantity(bySize);
}

chart::RowFacts factsOf(const std::vector<Counts>& bySize)
{
    std::vector<int> before, first, last;
    for (const Counts& counts : bySize) {
        before.push_back(counts.before);
        first.push_back(counts.first);
        last.push_back(counts.last);
    }
    chart::RowFacts facts;
    if (std::none_of(bySize.begin(), bySize.end(), [](const Counts& one) { return one.line >= 0; }))
        return facts;
    facts.before = together(before);
    facts.after = together(first);
    if (last != first)
        facts.atLast = together(last);
    return facts;
}

} // namespace

std::vector<SectionChart> sectionCharts(const Pattern& pattern, const Catalogue& catalogue,
                                        std::span<const Ledger* const> bySize, const ExportOptions& options)
{
    std::vector<std::vector<std::vector<Counts>>> counts;
    for (const Ledger* ledger : bySize)
        counts.push_back(countsOf(pattern, *ledger));
    std::vector<SectionChart> charts;
    for (const int i : exportedSections(pattern, options)) {
        const auto at = static_cast<std::size_t>(i);
        const Section& section = pattern.sections[at];
        if (section.rows.empty() || section.frame.columns <= 0)
            continue;
        SectionChart& chart = charts.emplace_back();
        chart.section = i;
        chart.title = section.frame.title;
        for (std::size_t row = 0; row < section.rows.size(); ++row) {
            std::vector<Counts> here;
            for (const auto& ofSize : counts)
                here.push_back(ofSize[at][row]);
            chart.facts.push_back(factsOf(here));
            if (const int line = here.front().line; line >= 0)
                chart.facts.back().restingColumns = restingColumns(*bySize.front(), line);
        }
        if (!options.plainWsRows && options.part.empty())
            leavePlainRowsOut(chart, section, catalogue);
    }
    return charts;
}

std::string choiceInWords(const Pattern& pattern, const ExportOptions& options)
{
    std::vector<std::string> parts;
    if (versionCount(pattern) > 1)
        parts.push_back(versionName(pattern, options.choice.version));
    if (const std::string sizes = sizesInWords(pattern); !sizes.empty())
        parts.push_back("sizes " + sizes);
    else if (pattern.head.sizes.size() == 1)
        parts.push_back("size " + pattern.head.sizes.front());
    std::string words;
    for (const std::string& part : parts)
        words += (words.empty() ? "" : ", ") + part;
    return words;
}

const Section& drawnSection(const SectionChart& chart, const Pattern& pattern)
{
    return chart.fewer ? *chart.fewer : pattern.sections[static_cast<std::size_t>(chart.section)];
}

chart::Drawing drawingOf(const SectionChart& chart, const Pattern& pattern, const Catalogue& catalogue,
                         chart::ChartOptions options)
{
    chart::Drawing drawing =
        chart::chartOf({drawnSection(chart, pattern), pattern.head, catalogue, chart.facts}, options);
    if (chart.fewer)
        for (chart::Group& group : drawing.groups)
            if (group.row >= 0)
                group.row = chart.rows[static_cast<std::size_t>(group.row)];
    return drawing;
}

} // namespace shawlwright::app
