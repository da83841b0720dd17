// The stitches of an area put down again and again beside it.
//
// Shape:   `times` copies besides the area itself, each at the one before: upwards into the rows above or
//          into new rows, to the left or to the right within the chart. New rows take the yarn of the
//          rows they are copied from and alternate sides from the row below them. Only stitches are
//          copied: no turns, markers, repeats or notes.
// Errors:  a Fault with the number that fits where so many don't; where the area cuts a wide stitch.
#pragma once

#include "core/edits/areas.h"

namespace shawlwright {

enum class Along { Up, UpNewRows, Left, Right };

int timesThatFit(const Pattern&, SectionId, const Area&, Along);

struct Times {
    Edit edit;
    Area over; // the cells of the copies, in the chart as it then is
    bool otherSide =
        false; // new rows are an odd number, so that the rows above them may be of the wrong side
};
Result<Times> putDownTimes(const Pattern&, const Catalogue&, SectionId, const Area&, Along, int times);

} // namespace shawlwright
