// What a reader of instructions has to say about a place in the text.
//
// Shape:   found: what stands there; expected: what would be understood; chosen: the reading that was taken,
// where there
//          is one. An error belongs to words that were not understood and are kept as words.
// Units:   Place counts lines and columns of the text from 1, columns in code points.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace shawlwright {

struct ReadingNote {
    enum class Weight { Error, Warning, Note } weight = Weight::Error;
    Place at;
    std::string found;
    std::string expected;
    std::string chosen;
    bool operator==(const ReadingNote&) const = default;
};

// "found 'k2tgo'; expected a stitch, a marker or a repeat", "...; taken as k2tog".
std::string sentence(const ReadingNote& note);
// "12:7: error: found ..."
std::string toText(const ReadingNote& note);

} // namespace shawlwright
