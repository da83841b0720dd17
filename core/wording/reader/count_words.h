// The count that stands after a row: "(45 sts)", "- 45 sts", "(2 sts inc)", "(12 sts worked, 5 unworked)",
// and the counts of a row that is worked several times: "(45, 47, 49 sts)".
#pragma once

#include "core/wording/reader/cursor.h"

namespace shawlwright {

struct CountWords {
    std::optional<Quantity> total;  // none: a change, or stitches worked and unworked
    std::optional<Quantity> change; // negative: decreased
    std::optional<Quantity> worked, unworked;
    std::vector<int> eachTime; // of a row worked so many times
};

// Takes a count that stands here, whole; nothing else may follow but a full stop.
std::optional<CountWords> countWords(Cursor& cursor, int sizes);
// "You have 45 sts, 24 sts between the turns and 10 garter ridges in MC.": a line of its own.
std::optional<CountWords> reachedWords(const NormalText& line, int sizes);

} // namespace shawlwright
