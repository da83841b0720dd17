// The pattern file (.shawl): JSON, `format` first, one row of cells per line as runs.
//
// Shape:   cells from column 1, tokens apart by blanks: "k*12 yo k2tog -*3 p@CC": key, @ yarn code, * how
// many, - for
//          no stitch (cells_text.h). Trailing no stitches are not written; reading pads the row to the
//          section's columns. Yarns and markers are named by code and name, rows by id; the whole is
//          described in resources/shawl.schema.json. What is as usual is not written. UTF-8; a byte order
//          mark is skipped.
// Errors:  every fault of a file with its line and column and path or place in words, in the order of the
// file, at most
//          20; what is no JSON ends the reading. A file with a fault gives no pattern. Sizes and depth are
//          checked before memory is asked for. Keys we don't know are kept, in every object, and written
//          after those we know. Writing takes a pattern of which faultsOf() says nothing: one with faults is
//          written too, but not read again.
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
