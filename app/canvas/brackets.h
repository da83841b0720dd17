// Row repeats in the numbers at the left of the chart: which depth each one stands at.
#pragma once

#include "core/pattern/pattern.h"

#include <string>
#include <vector>

namespace shawlwright::app {

struct BracketPlace {
    int index = 0; // of the frame's brackets
    int firstRow = 0, lastRow = 0;
    int depth = 0;     // 0: nearest to the grid; a bracket stands outside of those it holds
    std::string words; // "3\u00d7", or by size "2 (3, 4)\u00d7"
};

std::vector<BracketPlace> bracketPlaces(const Section& section);
int depths(const std::vector<BracketPlace>& places); // 0: no brackets

} // namespace shawlwright::app
