#include "app/exports/section_charts.h"

namespace shawlwright::app {

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

std::vector<SectionChart> sectionCharts(const Pattern& pattern, const Ledger& ledger,
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
    return charts;
}

chart::Drawing drawingOf(const SectionChart& chart, const Pattern& pattern, const Catalogue& catalogue,
                         chart::ChartOptions options)
{
    return chart::chartOf(
        {pattern.sections[static_cast<std::size_t>(chart.section)], pattern.head, catalogue, chart.facts},
        options);
}

} // namespace shawlwright::app
