#include "core/needle/row_plan.h"

#include <algorithm>

namespace shawlwright {

RowPlan planOf(const Row& row, const RowContext& context)
{
    RowPlan plan;
    plan.columns = static_cast<int>(row.cells.size());
    plan.cells.reserve(row.cells.size());
    const auto add = [&](int column, const Cell& cell) {
        const Stitch& stitch = context.catalogue.stitch(cell.stitch);
        const int u0 = row.side == Side::RS ? column - 1 : plan.columns - (column + stitch.width() - 1);
        plan.cells.push_back({&stitch, column, u0, cell.yarn == YarnId{} ? row.yarn : cell.yarn});
    };
    for (int i = 0; i < plan.columns; ++i) {
        const int at = row.side == Side::RS ? i : plan.columns - 1 - i;
        const Cell& cell = row.cells[static_cast<std::size_t>(at)];
        if (cell.part == 0 && cell.stitch != noStitch)
            add(at + 1, cell);
    }
    for (const Box& box : context.boxes) {
        if (row.side == Side::RS)
            plan.boxes.push_back({&box, box.firstColumn - 1, box.lastColumn});
        else
            plan.boxes.push_back({&box, plan.columns - box.lastColumn, plan.columns - box.firstColumn + 1});
    }
    for (const MarkerMove& move : row.moves)
        plan.moves.push_back({&move, row.side == Side::RS ? move.boundary : plan.columns - move.boundary});
    std::stable_sort(plan.moves.begin(), plan.moves.end(),
                     [](const PlannedMove& a, const PlannedMove& b) { return a.u < b.u; });
    return plan;
}

} // namespace shawlwright
