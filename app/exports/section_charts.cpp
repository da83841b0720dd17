#include "app/exports/section_charts.h"

#include "core/pattern/plain_ws_rows.h"

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

std::vector<SectionChart> sectionCharts(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger,
                                        const ExportOptions& options)
{
    std::vector<SectionChart> charts;
    std::vector<int> chartOfSection(pattern.sections.size(), -1);
    for (const int i : exportedSections(pattern, options)) {
        const Section& section = pattern.sections[static_cast<std::size_t>(i)];
        if (section.rows.empty() || section.frame.columns <= 0)
            continue;
        chartOfSection[static_cast<std::size_t>(i)] = static_cast<int>(charts.size());
        charts.push_back({i, section.frame.title, std::vector<chart::RowFacts>(section.rows.size())});
    }
    for (std::size_t line = 0; line < ledger.lines.size(); ++line) {
        const int at = chartOfSection[static_cast<std::size_t>(ledger.rows[line].section)];
        if (at < 0)
            continue;
        SectionChart& chart = charts[static_cast<std::size_t>(at)];
        chart::RowFacts& facts = chart.facts[static_cast<std::size_t>(ledger.rows[line].row)];
        const LedgerLine& counted = ledger.lines[line];
        if (facts.after < 0) {
            facts.before = counted.before;
            facts.after = counted.after;
            facts.restingColumns = restingColumns(ledger, static_cast<int>(line));
        } else {
            facts.atLast = counted.after != facts.after ? counted.after : -1;
        }
    }
    if (!options.plainWsRows && options.part.empty())
        for (SectionChart& chart : charts)
            leavePlainRowsOut(chart, pattern.sections[static_cast<std::size_t>(chart.section)], catalogue);
    return charts;
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
