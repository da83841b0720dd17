// The grid of a chart: tints, no-stitch and resting cells, lines, symbols. Not for use outside of this
// folder.
#pragma once

#include "core/chart/frame.h"

namespace shawlwright::chart {

// In painting order: paper, yarn tints, no stitch, resting, grid, then a group per row with its symbols.
std::vector<Group> cellGroups(const Frame& frame, const ChartInput& input, const ChartOptions& options);

bool usesColour(const PatternHead& head); // more than one yarn: strips and tints say something

} // namespace shawlwright::chart
