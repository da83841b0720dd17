#include "app/canvas/geometry.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

struct Span {
    int from = 0, length = 0, farthest = 0;
};

Span placed(int room, int before, int after, int content)
{
    const int free = std::max(0, room - before - after);
    if (content <= free)
        return {before + (free - content) / 2, content, 0};
    return {before, free, content - free};
}

int shifted(int scroll, int from, int length, int seenFrom, int seenLength)
{
    if (from < seenFrom)
        return scroll - (seenFrom - from);
    if (from + length > seenFrom + seenLength)
        return scroll + std::min(from - seenFrom, from + length - seenFrom - seenLength);
    return scroll;
}

} // namespace

CanvasGeometry laidOut(QSize view, const Gutters& gutters, Extent extent, int cell, QPoint wantedScroll,
                       const ShownRows& shown)
{
    const Span across = placed(view.width(), gutters.left, gutters.right, extent.columns * cell);
    const Span down = placed(view.height(), gutters.top, gutters.bottom, shown.lines(extent.rows) * cell);
    CanvasGeometry made;
    made.cell = cell;
    made.extent = extent;
    made.shown = shown;
    made.gutters = gutters;
    made.grid = QRect(across.from, down.from, across.length, down.length);
    made.farthest = QPoint(across.farthest, down.farthest);
    made.scroll = QPoint(std::clamp(wantedScroll.x(), 0, across.farthest),
                         std::clamp(wantedScroll.y(), 0, down.farthest));
    return made;
}

QRect CanvasGeometry::cellRect(int row, int column, int width) const
{
    const QPoint corner = origin();
    const int high = shown.hides(row) ? 0 : cell;
    return QRect(corner.x() + (extent.columns - column - width + 1) * cell,
                 corner.y() + (shown.lines(extent.rows) - shown.lineOf(row)) * cell - high, width * cell, high);
}

QRect CanvasGeometry::areaRect(const Area& area) const
{
    return cellRect(area.lastRow, area.lastColumn) | cellRect(area.firstRow, area.firstColumn);
}

QRect CanvasGeometry::rowRect(int row) const
{
    return QRect(grid.left(), cellRect(row, 1).top(), grid.width(), shown.hides(row) ? 0 : cell);
}

At CanvasGeometry::cellUnder(QPointF point) const
{
    const QPointF inChart = point - QPointF(origin());
    return At{shown.rowAt(shown.lines(extent.rows) - 1 - static_cast<int>(std::floor(inChart.y() / cell))),
              extent.columns - static_cast<int>(std::floor(inChart.x() / cell))};
}

bool CanvasGeometry::inside(At at) const
{
    return at.row >= 0 && at.row < extent.rows && at.column >= 1 && at.column <= extent.columns;
}

int CanvasGeometry::boundaryNear(double x) const
{
    const int fromLeft = static_cast<int>(std::lround((x - origin().x()) / cell));
    return std::clamp(extent.columns - fromLeft, 0, extent.columns);
}

std::optional<Area> CanvasGeometry::cellsIn(const QRect& view) const
{
    const QRect seen = view & grid;
    if (seen.isEmpty())
        return std::nullopt;
    const At upperLeft = cellUnder(seen.topLeft());
    const At lowerRight = cellUnder(seen.bottomRight());
    return Area{std::max(0, lowerRight.row), std::min(extent.rows - 1, upperLeft.row),
                std::max(1, lowerRight.column), std::min(extent.columns, upperLeft.column)};
}

QPoint CanvasGeometry::scrollToShow(const QRect& cells) const
{
    return QPoint(shifted(scroll.x(), cells.left(), cells.width(), grid.left(), grid.width()),
                  shifted(scroll.y(), cells.top(), cells.height(), grid.top(), grid.height()));
}

} // namespace shawlwright::app
