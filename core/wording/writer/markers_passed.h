// Which standing markers a row passes, and between which of its parts: found from what the needle did, so
// that a marker beside a yarn over is said on the side it is really slipped.
//
// Shape:   "sm" is said where something follows it, and only where it is true of every time the row is
// knitted.
//          Inside a stitch repeat it is said where each time round has it; markers of different names are
//          then just "sm". Markers that are passed within "k to end", or now and then in a repeat, are not
//          said; but where a yarn over stands beside one of these, the repeat has to be told time by time.
// Source:  slip markers as you come to them: Yours UK shawl (2017); the rest common practice, no source.
#pragma once

#include "core/needle/ledger.h"
#include "core/wording/writer/row_tree.h"

#include <span>

namespace shawlwright {

// Fills the gaps of a tree. `lines`: the ledger lines of the row. Gives the outermost repeats to be told time
// by time.
std::vector<Unrolled> sayMarkersPassed(RowSequence& tree, const Row& row, const Pattern& pattern,
                                       const Catalogue& catalogue, const Ledger& ledger,
                                       std::span<const int> lines);

} // namespace shawlwright
