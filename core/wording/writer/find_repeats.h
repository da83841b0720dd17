// Finds repeats in a row that is painted out in full: "k1, yo, k2tog, yo, k2tog, yo, k2tog, k3" becomes "k1,
// [yo, k2tog] 3 times, k3".
//
// Shape:   a found group holds the columns of all its times; what is inside it has those of the first time.
// What
//          the designer drew stays as it is; repeats are found beside it, inside it and around it.
//          Markers: "sm" in each time round is part of what repeats, without a name where names differ. One
//          that needs no word, between stitches that take some up, may lie anywhere in a group and isn't said
//          there (slip markers as you come to them: Yours UK shawl, 2017) if that is shorter. A marker placed
//          or removed, and anything that goes to a place on the needle, is in no found group. The group that
//          carries the row (half of its stitches, and more often than is counted at sight) is its leading
//          one, told by an asterisk in that style; there is one at most, none where a drawn repeat has the
//          asterisk.
// Method:  shortest_text.h says what is minimised and how.
// Source:  brackets, times, asterisk: Remade by Hand; Interweave, Pattern Play; Josephine Kush, Row Repeats.
#pragma once

#include "core/pattern/row.h"
#include "core/wording/phrases.h"

namespace shawlwright {

// `row`: the phrases' own, for the columns of a run that is cut.
void findRepeats(Phrases& phrases, const Row& row, const Catalogue& catalogue);

} // namespace shawlwright
