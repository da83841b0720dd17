// What stands beside and below the grid: yarn strips, row and stitch numbers, starts and finishes, counts.
// Not for use outside of this folder.
#pragma once

#include "core/chart/frame.h"

namespace shawlwright::chart {

struct Gutters {
    std::vector<Group> groups;
    double leftEdge = 0; // x where the left gutter ends; brackets go there
};

Gutters guttersOf(const Frame& frame, const ChartInput& input, const ChartOptions& options);

// The columns that get a number below the grid: 1, every fifth, the first and last where there is room.
std::vector<int> numberedColumns(int firstColumn, int lastColumn);

} // namespace shawlwright::chart
