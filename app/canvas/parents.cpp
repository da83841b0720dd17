#include "app/canvas/parents.h"

#include <algorithm>

namespace shawlwright::app {

CellSpan stitchAt(const Row& row, const Catalogue& catalogue, At at)
{
    const Cell cell = cellAt(row, at.column);
    const int width = catalogue.stitch(cell.stitch).width();
    if (cell.part >= width || at.column - cell.part < 1)
        return {at, 1};
    return {At{at.row, at.column - cell.part}, width};
}

std::vector<CellSpan> parentsOf(const Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue,
                                const Trace& trace, int line, At at)
{
    std::vector<CellSpan> parents;
    if (line < 0 || line >= static_cast<int>(ledger.lines.size()))
        return parents;
    const KnittedRow& knitted = ledger.rows[static_cast<std::size_t>(line)];
    const Section& section = pattern.sections[static_cast<std::size_t>(knitted.section)];
    const int column = stitchAt(*knitted.ref, catalogue, at).at.column;
    const auto worked = std::find_if(trace.cells.begin(), trace.cells.end(),
                                     [column](const WorkedCell& cell) { return cell.column == column; });
    if (worked == trace.cells.end())
        return parents;
    const auto& loops = ledger.before[static_cast<std::size_t>(line)].loops;
    const int end = std::min(worked->firstLoop + worked->takesUp, static_cast<int>(loops.size()));
    for (int loop = std::max(0, worked->firstLoop); loop < end; ++loop) {
        const Loop& taken = loops[static_cast<std::size_t>(loop)];
        const int row = taken.madeIn.value ? rowIndex(section, taken.madeIn) : -1;
        if (row < 0 || taken.column < 1)
            continue;
        const CellSpan span{At{row, taken.column}, 1};
        if (std::find(parents.begin(), parents.end(), span) == parents.end())
            parents.push_back(span);
    }
    return parents;
}

} // namespace shawlwright::app
