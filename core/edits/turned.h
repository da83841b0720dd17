// Makers that turn what stands in an area: left to right, or upside down.
//
// Shape:   mirrored(): columns in reverse order, each stitch as its mirror image; markers inside the area
//          change sides with them, those on its edges only where the area is as wide as the chart. A
//          leaning stitch without a mirror image stays as it is and is told.
//          upsideDown(): rows in reverse order; columns, markers and what the rows say of themselves
//          stay. In the reversed fabric every lean is the other one, so leaning stitches become their
//          mirror image. In a row that takes up as many loops as it leaves nothing else changes:
//          decreases pair with yarn overs as before. In a row whose count changes, what is taken up and
//          left changes places: a decrease becomes the increase of its face, plain heads and opposite
//          lean, an increase the decrease, in the columns it has and those of no stitch beside it.
// Errors:  upsideDown() is refused where a stitch has no such counterpart, named with its cell: a yarn
//          over or a made stitch in a row whose count changes, a leaning stitch without mirror image.
//          Both refuse an area that cuts a wide stitch.
// Source:  a reflection reverses leans; that lace is turned by reversing its rows: common practice, no
//          source.
#pragma once

#include "core/edits/areas.h"

namespace shawlwright {

struct Turned {
    Edit edit;
    std::vector<At> unlike;  // leaning stitches that have no mirror image, in their new place
    int rowsOnOtherSide = 0; // rows with more than knit and purl that came from RS to WS or the other way
};
Result<Turned> mirrored(const Pattern&, const Catalogue&, SectionId, const Area&);
Result<Turned> upsideDown(const Pattern&, const Catalogue&, SectionId, const Area&);

// The stitch that takes up what this one leaves and leaves what it takes up, as described above.
std::optional<StitchId> counterpart(const Catalogue&, StitchId);

} // namespace shawlwright
