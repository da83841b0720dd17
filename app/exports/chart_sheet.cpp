#include "app/exports/chart_sheet.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright::app {

Result<ChartSheet> chartSheet(const Pattern& pattern, const Catalogue& catalogue,
                              const ExportOptions& options)
{
    const Ledger ledger = run(pattern, catalogue, options.choice);
    ChartSheet sheet;
    sheet.cellMm = options.cellMm;
    chart::ChartOptions drawn;
    drawn.title = false; // set above each chart in one size, whatever the cells'
    double y = sheetMarginMm;
    double widest = 0;
    for (const SectionChart& chart : sectionCharts(pattern, ledger, options)) {
        PlacedChart placed;
        placed.section = chart.section;
        placed.title = chart.title;
        placed.drawing = drawingOf(chart, pattern, catalogue, drawn);
        const chart::Rect& bounds = placed.drawing.bounds;
        if (!sheet.charts.empty())
            y += 2 * sheetMarginMm;
        if (!chart.title.empty()) {
            placed.titleAt = {sheetMarginMm, y + sheetTitleMm * 0.8};
            y += sheetTitleMm + sheetMarginMm * 0.5;
            widest = std::max(widest, codePoints(chart.title) * sheetTitleMm * 0.62);
        }
        placed.origin = {sheetMarginMm - bounds.x * options.cellMm, y - bounds.y * options.cellMm};
        y += bounds.height * options.cellMm;
        widest = std::max(widest, bounds.width * options.cellMm);
        sheet.charts.push_back(std::move(placed));
    }
    if (sheet.charts.empty())
        return Fault{{},
                     {},
                     "There is no chart to draw: no section of this version has rows in a grid. "
                     "A text (.txt) or PDF holds the words."};
    sheet.widthMm = widest + 2 * sheetMarginMm;
    sheet.heightMm = y + sheetMarginMm;
    return sheet;
}

} // namespace shawlwright::app
