// Repeats that go on to a place fill the free columns beside them: "k to end" is one cell in a stitch repeat,
// and a repeat is drawn over the columns it stands for. Painted out it would fill them too, but would no
// longer mean "to end" when the cast-on, the size or the pass of a row repeat is another.
//
// Shape:   only repeats of a single cell that lie in no other; free columns are those without a stitch between it and
//          its neighbours, and to where the row begins or ends over the needle. What lies between two such repeats
//          goes to the one worked first.
#pragma once

#include "core/wording/reader/layout.h"

namespace shawlwright {

// In u. Without an end the last repeat is not stretched beyond its stitches.
struct RowEdges {
    int from = 0;
    std::optional<int> to;
};
void stretchBoxes(PlacedRow& row, const RowDraft& draft, const std::vector<int>& u, RowEdges edges);

} // namespace shawlwright
