// The colours of the inks on paper. Exports use these; the window may have others for a dark theme.
//
// Units:   0xRRGGBB.
// Source:  text on its ground has a contrast of 4.5 : 1, marks 3 : 1: WCAG 2.2, 1.4.3 and 1.4.11.
#pragma once

#include "core/chart/shapes.h"

#include <cstdint>

namespace shawlwright::chart {

enum class Paper : std::uint8_t { Light, Dark };

// `yarn` is the yarn's colour; only YarnTint (20 % of it over the paper) and YarnFull look at it.
std::uint32_t inkColour(Ink ink, std::uint32_t yarn = 0, Paper paper = Paper::Light);

// How light a colour is against another, 1 to 21.
double contrast(std::uint32_t a, std::uint32_t b);

} // namespace shawlwright::chart
