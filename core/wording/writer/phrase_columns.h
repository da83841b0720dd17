// Which columns of the chart a phrase speaks of.
#pragma once

#include "core/pattern/row.h"
#include "core/wording/phrases.h"

namespace shawlwright {

// The phrase speaks of the part's columns too. A part without columns changes nothing.
void cover(Phrase& phrase, const Phrase& part);

// Puts a phrase behind the others; stitches of one kind side by side are one run.
void append(Phrases& phrases, Phrase phrase);

// The stitches [from, to) of a run, in the order worked on the row's side, with their own columns; all
// columns of the run where its stitches are not those of the row one by one.
Phrase partOfRun(const Phrase& run, int from, int to, const Row& row, const Catalogue& catalogue);

} // namespace shawlwright
