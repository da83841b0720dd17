// "CO 34 sts, pm after 4 and 30 sts": the model's cast-on has no markers, so the first row places them. Its
// words speak of them as if they were on the needle ("k to marker, sm"); here they become words of a row that
// puts them there.
//
// Shape:   markers by distance from where the row starts, nearest first. Stretches and repeats that a marker
// ends or
//          parts are told by number; the rest of the row stays as it was.
// Units:   stitches of the needle before the row.
// Errors:  a marker inside of a stitch, or past where the row is worked, can't be placed; its distance is in
// `left`. Source:  common practice, no source.
#pragma once

#include "core/needle/needle.h"
#include "core/wording/phrases.h"

namespace shawlwright {

struct CastOnMarker {
    int after = 0;
    MarkerId marker;
};

// The needle with the markers on it, for the sense of the row's words.
Needle withMarkers(Needle needle, const std::vector<CastOnMarker>& markers, Side side);

struct MarkersPlaced {
    Phrases phrases;
    std::vector<int> left;
};
// `phrases` in their sense, every marker named; `stitches` on the needle.
MarkersPlaced placedInRow(const Phrases& phrases, std::vector<CastOnMarker> markers, int stitches,
                          const Catalogue& catalogue);

} // namespace shawlwright
