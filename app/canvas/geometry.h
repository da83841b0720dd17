// Where the cells of a chart lie in the view: a grid in the middle, frozen numbers around it.
//
// Shape:   row 0 at the bottom, column 1 at the right. A chart smaller than its place stands in the middle of
// the view,
//          with its numbers beside it; a larger one is scrolled under them. A hidden row has no height.
// Units:   device pixels, all of them.
// Errors:  none; a chart without rows or columns has an empty grid.
#pragma once

#include "app/canvas/shown_rows.h"

#include <QPoint>
#include <QPointF>
#include <QRect>
#include <QSize>

#include <optional>

namespace shawlwright::app {

struct Gutters {
    int left = 0, right = 0, top = 0, bottom = 0;
    bool operator==(const Gutters&) const = default;
};

struct Extent {
    int rows = 0, columns = 0;
    bool operator==(const Extent&) const = default;
};

struct CanvasGeometry {
    int cell = 24;
    Extent extent; // hidden rows too
    ShownRows shown;
    Gutters gutters;
    QRect grid;      // the part of the view where cells are seen
    QPoint scroll;   // 0, 0: the upper left of the chart is at the upper left of the grid
    QPoint farthest; // the greatest scroll

    QPoint origin() const { return grid.topLeft() - scroll; } // of the chart's upper left corner
    QRect cellRect(int row, int column, int width = 1) const;
    QRect areaRect(const Area& area) const;
    QRect rowRect(int row) const;      // across the grid
    At cellUnder(QPointF point) const; // may lie outside the chart
    bool inside(At at) const;
    int boundaryNear(double x) const;                     // 0 .. columns
    std::optional<Area> cellsIn(const QRect& view) const; // those that a rectangle touches within the grid
    QPoint scrollToShow(const QRect& cells) const;        // the nearest scroll that shows all of it
};

CanvasGeometry laidOut(QSize view, const Gutters& gutters, Extent extent, int cell, QPoint wantedScroll,
                       const ShownRows& shown = {});

} // namespace shawlwright::app
