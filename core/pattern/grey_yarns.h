// Yarn colours for a print without colours: greys that are told apart.
//
// Shape:   the yarns in their order, each with a grey for its colour; the darker yarn has the darker grey, and the steps
//          between neighbours are even, however near their own colours are. Of equal ones the earlier is the darker.
// Units:   0xRRGGBB; darkest and lightest leave symbols on a 20 % tint a contrast of more than 7 : 1 (WCAG 2.2, 1.4.6).
#pragma once

#include "core/pattern/pattern.h"

namespace shawlwright {

std::vector<Yarn> inGrey(std::vector<Yarn> yarns);

} // namespace shawlwright
