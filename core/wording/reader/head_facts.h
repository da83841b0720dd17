// What a text says of the whole pattern above its cast-on: "by Rosa Lund", "Needles: 4 mm", "Gauge: 22 sts and 40 rows
// to 10 cm".
//
// Units:   millimetres; stitches and rows per 10 cm. Decimal point or comma.
// Errors:  none; a line that is not read in full is no fact.
#pragma once

#include "core/pattern/pattern.h"

#include <string>

namespace shawlwright {

bool readHeadFact(const std::string& line, PatternHead& head);

} // namespace shawlwright
