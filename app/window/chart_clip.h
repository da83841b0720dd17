// Stitches copied from a chart: cut out of one place, put down or mirrored in another.
//
// Shape:   an area of rows by columns; a wide stitch that the area cuts is left out.
// Errors:  a Fault where what is put down would reach past the chart's edges; nothing is changed then.
#pragma once

#include "core/edits/paint.h"

#include <vector>

namespace shawlwright::app {

struct ChartClip {
    struct Piece {
        int row = 0;    // from the area's lowest
        int column = 0; // from its rightmost, of the stitch's part 0
        StitchId stitch;
        YarnId yarn;
    };
    int rows = 0, columns = 0;
    std::vector<Piece> pieces;
};

ChartClip clipOf(const Section& section, const Catalogue& catalogue, const Area& area);
ChartClip mirroredClip(ChartClip clip, const Catalogue& catalogue);

// Puts the clip down with its lower right corner at `at`; all the cells it covers are replaced.
Result<Edit> putDown(const Pattern& pattern, const Catalogue& catalogue, SectionId section, At at,
                     const ChartClip& clip, std::string name);

} // namespace shawlwright::app
