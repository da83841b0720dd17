// One stitch in place of another, wherever it stands.
//
// Shape:   in the areas selected, where it lies in them with all its columns; without areas in the whole
//          section. A stitch's own yarn stays.
// Errors:  a Fault where the two aren't of the same width, one is unknown or no stitch, or it stands
//          nowhere there.
#pragma once

#include "core/edits/areas.h"

namespace shawlwright {

struct Replaced {
    Edit edit;
    int count = 0; // stitches replaced
};
Result<Replaced> replaceStitch(const Pattern&, const Catalogue&, SectionId, const Areas& within,
                               StitchId from, StitchId to);

// The stitches that stand there, the most frequent first.
std::vector<StitchId> stitchesIn(const Section&, const Areas& within);

} // namespace shawlwright
