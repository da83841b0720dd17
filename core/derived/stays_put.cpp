#include "core/derived/stays_put.h"

namespace shawlwright {

Needle stayingPut(Needle before, const Trace& trace, const Row& row, const Catalogue& catalogue)
{
    for (const WorkedCell& cell : trace.cells) {
        const int width = catalogue.stitch(cellAt(row, cell.column).stitch).width();
        for (int loop = cell.firstLoop; loop < cell.firstLoop + cell.takesUp; ++loop)
            if (loop >= 0 && loop < before.count()) // its middle, see overParents()
                before.loops[static_cast<std::size_t>(loop)].column =
                    static_cast<std::int16_t>(cell.column + width / 2);
    }
    return before;
}

} // namespace shawlwright
