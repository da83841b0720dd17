// From phrases to a row of a chart.
//
// Shape:   a draft holds the row's cells in the order worked, with its stitch repeats and marker moves
// between them; plain
//          runs are cells, a counted or open group is a box. placed() gives each a column.
//          Placing is an isotonic fit: every stitch wants to stand over the loops it takes up (the middle of
//          their columns); order and width are kept, and the sum of all distances from the wanted columns is
//          the least there is, within the width of the grid. Columns left free are no stitch.
// Units:   columns. u counts them in the direction of work, see needle/row_plan.h.
// Errors:  a row too wide for a chart gives nothing.
// Source:  least absolute deviations under an order: the heap form of pool-adjacent-violators, from memory.
#pragma once

#include "core/needle/ledger.h"
#include "core/wording/phrases.h"

#include <optional>

namespace shawlwright {

struct DraftCell {
    Cell cell; // noStitch: a column that keeps a marker inside of its repeat
    int width = 1;
};
struct DraftBox {
    std::size_t first = 0, last = 0; // cells, both in
    Box box;
};
struct DraftMove {
    std::size_t before = 0; // cell that follows
    MarkerId marker;
    MoveKind kind = MoveKind::Place;
};
struct RowDraft {
    std::vector<DraftCell> cells;
    std::vector<DraftBox> boxes; // outer ones first
    std::vector<DraftMove> moves;
    int width() const;
};

std::optional<RowDraft> draftOf(const Phrases& phrases, const Catalogue& catalogue);

struct PlacedRow {
    Row row;
    std::vector<Box> boxes; // without ids, rows not filled in
};
// The row as `base` with cells and moves; `u` is the place of each cell.
PlacedRow placed(const RowDraft& draft, const Row& base, const std::vector<int>& u, int columns);
std::vector<int> compact(const RowDraft& draft);
// The fit itself: numbers that never fall, as near in all to the wanted ranges as there are; one without a wish goes with
// the next. At least one must be wanted.
struct WantedRange {
    int from = 0, to = 0; // all of them as good
};
std::vector<int> neverFalling(const std::vector<std::optional<WantedRange>>& wanted);
// Loops that a stitch repeat made stand in its columns all together. Where loops do so, each is given a column of its own
// between those of its neighbours, as near to where it stands as there is room; markers go with them. Nothing happens
// where the chart has fewer columns than the needle has loops.
void spreadColumns(Needle& needle, int columns);
// A needle without columns at the start of a chart: in its middle, one column each, where there is room; else none.
void beginColumns(Needle& needle, int columns);
// From where to where a row works over columns of the needle, in u; nothing where it has none of them.
std::optional<WantedRange> reachOf(const Needle& before, const Trace& trace, Side side, int columns);
// The place of each cell, over the loops of the needle. `compactRow`: the row placed compactly, as it was traced on that
// needle.
std::vector<int> overParents(const RowDraft& draft, const Row& compactRow, const Needle& before,
                             const Trace& trace, int columns);

} // namespace shawlwright
