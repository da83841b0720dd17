// Ways to write a pattern, for the law of the two languages: any style sheet, and rows painted out again and
// again.
#pragma once

#include "core/wording/style.h"

#include <random>

namespace shawlwright::tests {

Style anyStyle(std::mt19937& random); // every field is drawn

// Some of a section's rows stand again behind themselves, two to four times in all, as somebody paints who
// doesn't draw row repeats.
Pattern withRowsAgain(Pattern pattern, std::mt19937& random);

} // namespace shawlwright::tests
