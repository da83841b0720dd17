// Stitches typed at a cell: "k2tog", "7 k", "k2, yo, [k2tog, yo] 3 times", placed in the direction of
// knitting.
//
// Shape:   the first stitch stands at `from`: on an RS row it takes the columns from there to the left, on a
// WS row to the right. Errors:  a fault where a word isn't known, where the words need the whole row ("k to
// end"), or where they reach over the edge.
#pragma once

#include "core/edits/paint.h"

#include <string_view>

namespace shawlwright {

struct TypedStitches {
    Result<Edit> edit;
    At next;               // where the next stitch goes; may lie beyond the edge
    int stitches = 0;      // cells placed
    bool needsRow = false; // refused here, but may be the words of a whole row: see row_words.h
    std::string warning;   // a word that was taken for another one; empty: none
};

TypedStitches typedStitches(const Pattern& pattern, const Catalogue& catalogue, SectionId section, At from,
                            std::string_view text);

// Where a row begins that is worked over the row below it.
At startOfRow(const Section& section, int row);

} // namespace shawlwright
