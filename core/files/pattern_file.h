// The pattern file (.shawl): JSON, `format` first, one row of cells per line as runs.
//
// Shape:   cells from column 1, tokens apart by blanks: "k*12 yo k2tog -*3 p@CC": key, @ yarn code, * how many, - for
//          no stitch. Trailing no stitches are not written; reading pads the row to the section's columns.
// Errors:  every fault of a file with its line and column and path, first one first, at most 20. A file with a fault
//          gives no pattern. Sizes and depth are checked before memory is asked for. Keys we don't know are kept.
#pragma once

#include "core/pattern/pattern.h"

#include <optional>
#include <string>
#include <string_view>

namespace shawlwright {

inline constexpr int fileFormat = 1;
inline constexpr int mostFileBytes = 64 * 1024 * 1024;
inline constexpr int mostFileDepth = 16;

struct ReadPattern {
    std::optional<Pattern> pattern;
    Faults faults;
};
ReadPattern readPattern(std::string_view bytes, const Catalogue& builtIn);

std::string writePattern(const Pattern& pattern, const Catalogue& builtIn); // same pattern, same bytes

} // namespace shawlwright
