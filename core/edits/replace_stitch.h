// One stitch in place of another, wherever it stands.
//
// Shape:   in an area, where it lies in it with all its columns, or in the whole section. A stitch's own yarn
// stays. Errors:  a Fault where the two aren't of the same width, one is unknown or no stitch, or it stands
// nowhere there.
#pragma once

#include "core/edits/paint.h"

#include <optional>

namespace shawlwright {

struct Replaced {
    Edit edit;
    int count = 0; // stitches replaced
};
Result<Replaced> replaceStitch(const Pattern&, const Catalogue&, SectionId, const std::optional<Area>& within,
                               StitchId from, StitchId to);

// The stitches that stand there, the most frequent first.
std::vector<StitchId> stitchesIn(const Section&, const std::optional<Area>& within);

} // namespace shawlwright
