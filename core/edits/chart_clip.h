// Stitches copied from a chart: cut out of one place, put down in another.
//
// Shape:   the areas selected, by the rectangle around them; what lies between them is none of it. A wide
//          stitch that they cut is left out.
// Errors:  a Fault where what is put down would reach past the chart's edges; nothing is changed then.
#pragma once

#include "core/edits/areas.h"

#include <map>

namespace shawlwright {

struct ChartClip {
    struct Piece {
        int row = 0;    // from the lowest
        int column = 0; // from the rightmost, of the stitch's part 0
        StitchId stitch;
        YarnId yarn;
    };
    int rows = 0, columns = 0;
    Areas areas; // from row 0 and column 1
    std::vector<Piece> pieces;
};

ChartClip clipOf(const Section& section, const Catalogue& catalogue, const Areas& areas);

// Puts the clip down with its lower right corner at `at`; all the cells it covers are replaced.
Result<Edit> putDown(const Pattern& pattern, const Catalogue& catalogue, SectionId section, At at,
                     const ChartClip& clip, std::string name);
// The same into rows that an edit is being made of (row index -> row); rows not yet there are taken from the
// section.
void putInto(std::map<int, Row>& rows, const Section& section, const Catalogue& catalogue, At at,
             const ChartClip& clip);

// Why stitches can't be taken as they are: the areas lie outside of the chart, or cut the first stitch it
// names.
std::optional<Fault> cutFault(const Pattern& pattern, const Catalogue& catalogue, SectionId section,
                              const Areas& areas);

} // namespace shawlwright
