// Small sections made up for the drawn tests: a two-colour short-row wedge with a repeat, markers and a row
// repeat; a plain lace repeat with nested boxes.
#pragma once

#include "core/chart/chart.h"
#include "core/pattern/pattern.h"

namespace shawlwright::chart {

struct Sample {
    PatternHead head;
    Section section;
    std::vector<RowFacts> facts;
};

// Cells from right to left by key, "k*5" for five of them, "." for no stitch.
std::vector<Cell> cellsOf(const Catalogue& catalogue, const std::string& keys);

Sample wedgeSample(const Catalogue& catalogue);
Sample laceSample(const Catalogue& catalogue);

} // namespace shawlwright::chart
