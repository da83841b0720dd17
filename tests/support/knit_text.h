// A pattern in the short notation of knit.h, to paste into a table of tests: what a law found, small enough
// to read.
#pragma once

#include "core/pattern/pattern.h"

#include <string>

namespace shawlwright::tests {

// `Knit knit(5);` and a line per row. What the notation has no word for (yarns of single cells, sizes,
// labels, notes) is named in a comment behind the row.
std::string asKnit(const Pattern& pattern, const Catalogue& catalogue);

} // namespace shawlwright::tests
