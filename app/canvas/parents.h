// The cells in rows below whose loops a cell takes up: what the canvas lights up under the pointer.
//
// Shape:   of the first knitting of the row and, within a stitch repeat, its first working. Cast-on loops and
// loops of
//          other sections have no cell here. Given rightmost column of each stitch, with its width.
// Errors:  nothing where the cell is no stitch or isn't worked.
#pragma once

#include "core/edits/paint.h"
#include "core/needle/ledger.h"

#include <vector>

namespace shawlwright::app {

struct CellSpan {
    At at;
    int width = 1;
    bool operator==(const CellSpan&) const = default;
};

// The whole stitch that a cell is part of.
CellSpan stitchAt(const Row& row, const Catalogue& catalogue, At at);

std::vector<CellSpan> parentsOf(const Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue,
                                const Trace& trace, int line, At at);

} // namespace shawlwright::app
