// Introduction and notes as this program's writer sets them in, two blanks below their heading: taken out of a text before
// anything else is read, so that what they say of rows, sizes or cast-ons is nobody's row, size or cast-on.
//
// Shape:   `lines` are those of `text`; the ones taken are blank afterwards. Only what stands before the first row.
// Errors:  none; a heading with nothing set in below it stays.
#pragma once

#include "core/pattern/pattern.h"
#include "core/wording/reader/normal_text.h"

#include <string_view>
#include <vector>

namespace shawlwright {

void takeProse(std::string_view text, std::vector<NormalText>& lines, PatternHead& head);

} // namespace shawlwright
