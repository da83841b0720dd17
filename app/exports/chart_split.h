// Cuts a chart that is larger than a page into sheets: between rows and between columns, never through a
// stitch.
//
// Shape:   spans [first, last] in order, covering 1..count once. Sheets are of about the same size; a border
// where a
//          repeat begins or ends is taken when one lies near.
#pragma once

#include "core/pattern/pattern.h"

#include <vector>

namespace shawlwright::app {

struct Span {
    int first = 1, last = 1;
    int count() const { return last - first + 1; }
    bool operator==(const Span&) const = default;
};

// Border b lies after item b, 1 <= b < count; forbidden and preferred hold count + 1 entries or none.
std::vector<Span> split(int count, int most, const std::vector<bool>& forbidden,
                        const std::vector<bool>& preferred);

std::vector<Span> splitColumns(const Section& section, int most);
std::vector<Span> splitRows(const Section& section, int most); // rows from 1

} // namespace shawlwright::app
