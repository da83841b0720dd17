// How often a stitch repeat that is about to be made has to be worked for its rows to come out.
//
// Shape:   a number per size where they differ, else one.
// Errors:  nothing where the repeat can't be made, fits no number of times, or fits as it stands.
#pragma once

#include "core/needle/ledger.h"

#include <optional>

namespace shawlwright {

// Tried on a copy of the pattern, on the needle of `choice`.
std::optional<int> timesThatFit(const Pattern& pattern, const Catalogue& catalogue, SectionId section,
                                const Box& box, RunChoice choice);

// The same for each size of a version. Where no number comes out exactly it is the greatest for which there
// are stitches; a size of which nothing is known has the number of the size shown.
std::optional<Quantity> timesThatFitEach(const Pattern& pattern, const Catalogue& catalogue,
                                         SectionId section, const Box& box, RunChoice shown);

} // namespace shawlwright
