// A row in the order it is worked: its stitches and its boxes, whichever side it belongs to.
//
// Shape:   u counts columns in the direction of work: on RS u = boundary, on WS u = columns - boundary. A cell covers
//          u0..u1; a box the cells whose u0 lies in [u0, u1).
#pragma once

#include "core/needle/ledger.h"

namespace shawlwright {

struct PlannedCell {
    const Stitch* stitch;
    int column; // rightmost
    int u0;
    YarnId yarn;
};

struct PlannedBox {
    const Box* box;
    int u0, u1;
};

struct PlannedMove {
    const MarkerMove* move;
    int u;
};

struct RowPlan {
    int columns = 0;
    std::vector<PlannedCell> cells;
    std::vector<PlannedBox> boxes; // outer ones first
    std::vector<PlannedMove> moves; // by u, as written where equal
    int boundaryAt(int u, Side side) const { return side == Side::RS ? u : columns - u; }
};

RowPlan planOf(const Row& row, const RowContext& context);

} // namespace shawlwright
