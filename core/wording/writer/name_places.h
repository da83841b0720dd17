// Says how far instead of how many where that reads better: "k83, k2tog, k2" is "k to last 4 sts, k2tog,
// k2".
//
// Shape:   the rule of long runs: a plain run of more than countedAtSight stitches that ends no more
//          than countedAtSight before a place that words can name is told by that place, even where its
//          number would be shorter. A place is the end of the row, a marker ahead, or the last turn
//          where the row itself is turned early. The nearest place is taken; of places as near the end
//          of the row, then a marker. A run whose pieces are parted by markers slipped on the way counts
//          as one. A leading group (find_repeats.h) goes to the nearest such place too. Nothing is named
//          before a stretch whose length only the needle tells.
// Units:   stitches of the needle before the row.
// Source:  common practice, no source: nobody counts to eighty-three while knitting; "to 1 st before
//          gap, k2tog, k3, turn": fiberdreams, Short Rows.
#pragma once

#include "core/wording/phrases.h"
#include "core/wording/style.h"

#include <vector>

namespace shawlwright {

inline constexpr int countedAtSight = 12; // a dozen stitches are counted on the needle without losing count

// A place by the stitches that the row takes up after it; below zero where it lies past the row's end.
struct NamedPlace {
    Reach to; // `leaving` is filled in
    int fromEnd = 0;
};

// `places` must hold each time the row is knitted. Gives whether the row ends with a run to a place.
// Runs that are counted by the style stay so; leading groups go to a place all the same.
bool namePlaces(Phrases& phrases, const std::vector<NamedPlace>& places, Side side, const Catalogue& catalogue,
                LongRuns longRuns);

} // namespace shawlwright
