// The part of a section's chart that is drawn, and where its rows and columns lie. Not for use outside of
// this folder.
//
// Units:   chart units; rows by index, columns from 1, boundaries as in pattern/row.h.
#pragma once

#include "core/chart/chart.h"
#include "core/chart/draw.h"

namespace shawlwright::chart {

struct Frame {
    const Section& section;
    double cellHeight = 1;
    int firstRow = 0, lastRow = -1;
    int firstColumn = 1, lastColumn = 0;

    int rowCount() const { return static_cast<int>(section.rows.size()); }
    const Row& row(int index) const { return *section.rows[static_cast<std::size_t>(index)]; }
    double x(int boundary) const { return section.frame.columns - boundary; }
    double top(int rowIndex) const { return (rowCount() - 1 - rowIndex) * cellHeight; }
    double left() const { return x(lastColumn); }
    double right() const { return x(firstColumn - 1); }
    Rect area() const
    {
        return {left(), top(lastRow), right() - left(), (lastRow - firstRow + 1) * cellHeight};
    }
    bool empty() const { return lastRow < firstRow || lastColumn < firstColumn; }
    bool shows(int column) const { return column >= firstColumn && column <= lastColumn; }
};

Frame wholeFrame(const Section& section, double cellHeight);
Frame frameOf(const Section& section, const ChartOptions& options); // kept within the section

std::vector<Shape> boxShapes(const Frame& frame, const PatternHead& head, const Catalogue* catalogue);
std::vector<Shape> bracketShapes(const Frame& frame);
std::vector<Shape> markerShapes(const Frame& frame, const PatternHead& head);
// Where the names of markers and the crosses of removed ones stand.
std::vector<Rect> markerNames(const Frame& frame, const PatternHead& head);
std::vector<Shape> turnShapes(const Frame& frame);
// From where the arrow over the stitches slipped at the row's start begins to its tip; none where there is no such arrow.
struct SlipArrow {
    double from = 0, tip = 0, y = 0;
};
std::optional<SlipArrow> slipArrow(const Frame& frame, int row);

} // namespace shawlwright::chart
