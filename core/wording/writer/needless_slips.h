// Markers that a row slips and whose slip needs no word.
//
// Shape:   a slip between two stretches of stitches that take up some: wherever it falls the count is the same.
//          Beside a yarn over, a marker that is placed or removed, a repeat or the row's end it stays said.
// Units:   places: a run has one for each stitch, all else one.
// Source:  "Slip markers as you come to them", said once in the notes, allows leaving out sm: Yours UK shawl (2017).
#pragma once

#include "core/wording/phrases.h"

#include <vector>

namespace shawlwright {

struct NeedlessSlip {
    int at; // place before which it stood
    Phrase phrase;
};

bool isSlip(const Phrase& phrase);

// The phrases without such slips, which are added to `slips` in order. Runs that these parted are one.
Phrases withoutNeedlessSlips(const Phrases& phrases, const Catalogue& catalogue, std::vector<NeedlessSlip>& slips);

} // namespace shawlwright
