// How often a stitch repeat that is about to be made has to be worked for its rows to come out.
//
// Shape:   a number per size where they differ, else one.
// Errors:  nothing where the repeat can't be made, or no size knows a number.
#pragma once

#include "core/needle/ledger.h"

#include <optional>

namespace shawlwright {

// Tried on a copy of the pattern, for each size of the version that is shown: the number that comes out; where it comes out
// as it stands, that of the box; where none does, the greatest for which there are stitches. A size of which nothing is
// known has the number of the size shown.
std::optional<Quantity> timesThatFitEach(const Pattern& pattern, const Catalogue& catalogue,
                                         SectionId section, const Box& box, RunChoice shown);

} // namespace shawlwright
