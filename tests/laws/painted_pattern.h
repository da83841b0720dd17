// Shawls painted out in full, as somebody draws who knows of no stitch repeats: their rows repeat themselves
// in parts, in parts of parts, between markers, and to early turns.
#pragma once

#include "core/pattern/pattern.h"

#include <random>

namespace shawlwright::tests {

// Markers named A, B, ... may stand between stitches from the first row on; two rows may be knitted again.
Pattern paintedPattern(std::mt19937& random);

} // namespace shawlwright::tests
