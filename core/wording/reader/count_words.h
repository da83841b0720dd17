// The count that stands after a row: "(45 sts)", "- 45 sts", "(2 sts inc)", "(12 sts worked, 5 unworked)".
#pragma once

#include "core/wording/reader/cursor.h"

namespace shawlwright {

struct CountWords {
    std::optional<Quantity> total; // none: a change, or stitches worked and unworked
};

// Takes a count that stands here, whole; nothing else may follow but a full stop.
std::optional<CountWords> countWords(Cursor& cursor, int sizes);

} // namespace shawlwright
