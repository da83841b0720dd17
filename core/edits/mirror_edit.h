// What an edit paints in a section, painted mirrored as well: about a column, or about a boundary between two.
//
// Shape:   column c mirrored is sum - c: the sum is twice the column of the middle, or twice the boundary and one. Each
//          stitch that the edit puts down or takes away is put down or taken away there too, as its mirror image (k2tog
//          as ssk); one without a mirror image as it is. What would lie outside of the chart, or over what was painted
//          itself, is left out. Markers, turns and rows that come and go are not mirrored.
// Errors:  none.
#pragma once

#include "core/edits/paint.h"

#include <functional>
#include <optional>

namespace shawlwright {

using MirrorSum = std::function<std::optional<int>(int row)>; // none: nothing is mirrored in that row

Edit mirroredToo(const Pattern& pattern, const Catalogue& catalogue, SectionId section, Edit edit,
                 const MirrorSum& sumOf);

} // namespace shawlwright
