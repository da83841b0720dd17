// For a row that is laid out anew: its stitches are to stay where the chart has them.
//
// Shape:   the needle ahead of the row, each loop that the row takes up given the column of the stitch that
// takes it up.
#pragma once

#include "core/needle/ledger.h"

namespace shawlwright {

Needle stayingPut(Needle before, const Trace& trace, const Row& row, const Catalogue& catalogue);

} // namespace shawlwright
