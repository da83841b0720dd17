#include "core/chart/frame.h"

#include <algorithm>

namespace shawlwright::chart {

Frame wholeFrame(const Section& section, double cellHeight)
{
    return frameOf(section, ChartOptions{.cellHeight = cellHeight});
}

Frame frameOf(const Section& section, const ChartOptions& options)
{
    const int rows = static_cast<int>(section.rows.size()), columns = section.frame.columns;
    Frame frame{section, options.cellHeight};
    frame.firstRow = std::clamp(options.firstRow, 0, std::max(0, rows - 1));
    frame.lastRow = options.lastRow < 0 ? rows - 1 : std::min(options.lastRow, rows - 1);
    frame.firstColumn = std::clamp(options.firstColumn, 1, std::max(1, columns));
    frame.lastColumn = options.lastColumn < 0 ? columns : std::min(options.lastColumn, columns);
    return frame;
}

Rect cellRect(const Section& section, double cellHeight, int row, int column, int width)
{
    const Frame frame{section, cellHeight};
    return {frame.x(column + width - 1), frame.top(row), static_cast<double>(width), cellHeight};
}

std::optional<WorkedColumns> workedColumns(const Section& section, int at)
{
    const Row& row = *section.rows[static_cast<std::size_t>(at)];
    const ColumnSpan used = usedColumns(row, boxesOn(section, at));
    if (used.first == 0)
        return std::nullopt;
    return row.side == Side::RS ? WorkedColumns{used.first, used.last} : WorkedColumns{used.last, used.first};
}

std::vector<Shape> boxShapes(const Section& section, const PatternHead& head, double cellHeight,
                             const Catalogue* catalogue)
{
    return boxShapes(wholeFrame(section, cellHeight), head, catalogue);
}

std::vector<Shape> bracketShapes(const Section& section, double cellHeight)
{
    return bracketShapes(wholeFrame(section, cellHeight));
}

std::vector<Shape> markerShapes(const Section& section, const PatternHead& head, double cellHeight)
{
    return markerShapes(wholeFrame(section, cellHeight), head);
}

std::vector<Shape> turnShapes(const Section& section, double cellHeight)
{
    return turnShapes(wholeFrame(section, cellHeight));
}

} // namespace shawlwright::chart
