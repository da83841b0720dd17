#include "core/wording/reader/stretch_boxes.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool stretches(const RowDraft& draft, const DraftBox& one)
{
    const bool nested = std::any_of(draft.boxes.begin(), draft.boxes.end(), [&](const DraftBox& other) {
        return &other != &one && other.first <= one.first && one.last <= other.last;
    });
    return one.first == one.last && one.box.until != BoxUntil::Times && !nested;
}

} // namespace

void stretchBoxes(PlacedRow& row, const RowDraft& draft, const std::vector<int>& u, RowEdges edges)
{
    const int columns = static_cast<int>(row.row.cells.size());
    const std::size_t cells = draft.cells.size();
    const auto endOf = [&](std::size_t cell) { return u[cell] + draft.cells[cell].width; };
    const bool rs = row.row.side == Side::RS;
    int taken = 0; // columns before this are a stretched repeat's
    for (std::size_t b = 0; b < draft.boxes.size(); ++b) {
        const DraftBox& one = draft.boxes[b];
        if (!stretches(draft, one))
            continue;
        const int from = one.first > 0 ? std::max(taken, endOf(one.first - 1)) : std::min(edges.from, u[one.first]);
        const int to = one.last + 1 < cells ? u[one.last + 1] : std::max(edges.to.value_or(0), endOf(one.last));
        taken = to;
        Box& box = row.boxes[b];
        box.firstColumn = rs ? from + 1 : columns - to + 1;
        box.lastColumn = rs ? to : columns - from;
        // A marker beside the cell is beside the repeat.
        for (std::size_t m = 0; m < draft.moves.size(); ++m) {
            if (draft.moves[m].before == one.last + 1)
                row.row.moves[m].boundary = rs ? to : columns - to;
            if (draft.moves[m].before == one.first && one.first == 0)
                row.row.moves[m].boundary = rs ? from : columns - from;
        }
    }
}

} // namespace shawlwright
