// A set of cells as rectangles: what is selected.
//
// Shape:   rectangles that don't overlap, from the lowest row up and then right to left, each as wide and
//          then as high as it can be: equal sets are equal lists, and one rectangle is a list of one.
// Errors:  none; a rectangle without cells adds and takes nothing.
#pragma once

#include "core/edits/paint.h"

#include <optional>
#include <vector>

namespace shawlwright {

using Areas = std::vector<Area>;

Areas joined(const Areas& areas, const Area& more);
Areas without(const Areas& areas, const Area& less);
Areas clipped(const Areas& areas, int rows, int columns); // what lies in a chart of this size
Areas shifted(Areas areas, int rows, int columns);        // up and to the left; negative: down, to the right

bool holds(const Areas& areas, At at);
int cellsIn(const Areas& areas);
std::optional<Area> around(const Areas& areas); // the smallest rectangle with all of them; nothing for none

// The rows (indexes) or columns that have a selected cell, in runs without a gap; lowest or rightmost first.
struct IndexRun {
    int first = 0, last = 0;
    bool operator==(const IndexRun&) const = default;
};
std::vector<IndexRun> rowRuns(const Areas& areas);
std::vector<IndexRun> columnRuns(const Areas& areas);

} // namespace shawlwright
