// Makers of edits that paint cells.
//
// Shape:   At{row, column}: row index from 0, column from 1 at the right edge.
// Errors:  a Fault where the cell lies outside the chart or the stitch is unknown; nothing is changed. A stitch that
//          reaches past the left edge is refused. What a wide stitch covers in part becomes no stitch.
#pragma once

#include "core/edits/edit.h"

#include <span>

namespace shawlwright {

struct At {
    int row = 0;
    int column = 1;
    auto operator<=>(const At&) const = default;
};

// A rectangle of cells, both corners inside it.
struct Area {
    int firstRow = 0, lastRow = 0;       // row indexes
    int firstColumn = 1, lastColumn = 1; // right to left
    bool operator==(const Area&) const = default;
};

Result<Edit> paint(const Pattern&, const Catalogue&, SectionId, std::span<const At>, StitchId, YarnId yarn = {});
// Fills the area with the stitch, as often as it fits side by side; what is left over at the left becomes no stitch.
Result<Edit> fill(const Pattern&, const Catalogue&, SectionId, const Area&, StitchId, YarnId yarn = {});
Result<Edit> erase(const Pattern&, const Catalogue&, SectionId, std::span<const At>); // to no stitch
Result<Edit> setCellYarn(const Pattern&, SectionId, std::span<const At>, YarnId yarn);
// Moves what a row holds by `columns` to the left (negative: right); refused where stitches would fall off.
Result<Edit> shiftRow(const Pattern&, const Catalogue&, SectionId, int row, int columns);
// The row with one stitch put at a column, wide neighbours cut to no stitch: what paint() does to a row.
Row painted(Row row, const Catalogue&, int column, StitchId, YarnId yarn);

} // namespace shawlwright
