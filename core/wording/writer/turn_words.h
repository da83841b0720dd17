// What is said where a row ends other than by turning at the end of the needle. One phrase per way, no two
// alike, and each the same every time (Interweave, German Short-Rows: name the method, keep the form).
#pragma once

#include "core/pattern/row.h"
#include "core/stitches/catalogue.h"

#include <string>

namespace shawlwright {

// "turn", "w&t", "turn for DS" (the next row then begins with the double stitch), "turn, yo", "turn, pin
// yarn", "make twin st, turn".
std::string turnInWords(TurnMethod method);
// "slide"; "bind off all sts" or "bind off rem sts", "cast off" in the UK.
std::string slideInWords();
std::string bindOffInWords(bool all, Words words);

} // namespace shawlwright
