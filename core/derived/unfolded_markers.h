// Where the markers of an unfolded row are placed, removed and slipped, found from the needles around the row.
//
// Shape:   cells right to left, each with what it takes up and leaves; `first` and `end` are the boundaries at its right
//          and left. Markers of `after` get their boundary in the unfolded chart.
// Source:  a marker beside a yarn over stays at its boundary, see needle/work_markers.cpp.
#pragma once

#include "core/needle/ledger.h"

#include <span>

namespace shawlwright {

inline constexpr int noBoundary = -2000000; // of a marker that no row of the section has passed yet

struct UnfoldedCell {
    int folded = 1;  // its rightmost column in the folded chart
    int column = 1;  // its rightmost column here
    int width = 1;
    int takesUp = 0;
    int leaves = 0;
};

std::vector<MarkerMove> unfoldedMoves(std::span<const UnfoldedCell> cells, Side side, const Needle& before,
                                      Needle& after, const LedgerLine& line, bool bindsOff);

} // namespace shawlwright
