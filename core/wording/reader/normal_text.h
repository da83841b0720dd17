// Instructions as plain letters: curly quotes, dashes, primes, fixed blanks and bullets made ordinary, every
// letter with its place in the text as it was typed.
//
// Shape:   one NormalText per line of the text; joined() puts the lines of one row together with blanks
// between. Errors:  none: bytes that are not UTF-8 become '?'.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace shawlwright {

struct NormalText {
    std::string text;      // letters beyond ASCII that mean nothing to the reader stay UTF-8
    std::vector<Place> at; // of each byte, and of the end: one more than text has

    Place placeOf(std::size_t byte) const { return at[byte < at.size() ? byte : at.size() - 1]; }
    bool blank() const { return text.find_first_not_of(' ') == std::string::npos; }
};

std::vector<std::string_view> typedLines(std::string_view text); // as they were typed, without their ends
std::vector<NormalText> normalLines(std::string_view text);      // the same, one for one
NormalText part(const NormalText& whole, std::size_t from,
                std::size_t to = std::string::npos); // blanks trimmed
void append(NormalText& text, const NormalText& more);

} // namespace shawlwright
