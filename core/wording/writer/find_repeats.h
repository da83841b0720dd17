// Finds repeats in a row that is painted out in full: "k1, yo, k2tog, yo, k2tog, yo, k2tog, k3" becomes
// "k1, [yo, k2tog] 3 times, k3".
//
// Shape:   what the designer drew stays as it is; repeats are found beside it, inside it and around it.
//          A found group holds the columns of all its times; what is inside it has those of the first
//          time. "sm" in each time round is part of what repeats, without a name where names differ. One
//          that needs no word, between stitches that take some up, may lie anywhere in a group and isn't
//          said there if that is shorter (slip markers as you come to them: Yours UK shawl, 2017). A
//          marker placed or removed, and anything that goes to a place on the needle, is in no found
//          group. At most one group leads the row, told by an asterisk in that style: over half of the
//          stitches or more, three times over three quarters of the row or with four phrases, twice with
//          six phrases, six times else; one stitch ("[k2tog] 20 times") more often than is counted at
//          sight. None leads where a drawn repeat goes to a place: that has the asterisk.
// Method:  shortest_text.h says what is minimised and how.
// Source:  brackets, times, asterisk: Remade by Hand; Interweave, Pattern Play; Josephine Kush, Row
//          Repeats. Which groups have the asterisk: as handbooks print them (Mee 1846, Beeton 1870,
//          Dillmont 1886); the limits are our own.
#pragma once

#include "core/pattern/row.h"
#include "core/wording/phrases.h"

namespace shawlwright {

// `row`: the phrases' own, for the columns of a run that is cut.
void findRepeats(Phrases& phrases, const Row& row, const Catalogue& catalogue);

} // namespace shawlwright
