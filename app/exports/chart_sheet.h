// All charts of an export on one sheet, below each other under their titles: what an SVG and a PNG show.
//
// Shape:   a chart's point p lands at origin + cellMm * p.
// Units:   millimetres from the sheet's upper left corner.
#pragma once

#include "app/exports/section_charts.h"

#include <QPointF>

namespace shawlwright::app {

struct PlacedChart {
    int section = 0;
    std::string title;         // empty: none
    int rows = 0, columns = 0; // that are drawn
    QPointF titleAt;           // on the baseline, left end
    chart::Drawing drawing;
    QPointF origin;
};

struct ChartSheet {
    double widthMm = 0, heightMm = 0;
    double cellMm = 5;
    std::vector<PlacedChart> charts;
};

inline constexpr double sheetMarginMm = 4;
inline constexpr double sheetTitleMm = 4.2; // size of the letters

// Errors: a sentence where there is no chart to show.
Result<ChartSheet> chartSheet(const Pattern& pattern, const Catalogue& catalogue,
                              const ExportOptions& options);

} // namespace shawlwright::app
