// Plain stitches worked into the loops of a needle, and laid over them.
//
// Shape:   stitches in the order worked, one per loop; the chart's stitch, so a knit of a WS row is `p`.
// Units:   loops.
// Source:  "as the stitches show": knit the knit stitches and purl the purl stitches, as they face the
// knitter
//          (common practice, no source). A double yarn over is worked (k1, p1), so that its hole stays open
//          (Jill Wolcott Knits, Working new stitches in dbl-YO).
#pragma once

#include "core/needle/ledger.h"

namespace shawlwright {

enum class PlainStitch : std::uint8_t { Knit, Purl, AsTheyShow };

// Where the row begins and how many loops lie ahead of it; `row` for its side and start.
struct LoopsAhead {
    int tip = 0;
    int count = 0;
};
LoopsAhead loopsAhead(const Needle& needle, const Row& row, const RowContext& context);

// Into the next `count` loops: the second loop of a double yarn over is worked the other way, a brioche
// stitch together with its yarn over, and the first after a double-stitch turn is the double stitch.
std::vector<StitchId> plainStitches(const Needle& needle, const Row& row, LoopsAhead ahead, int count,
                                    PlainStitch how, const Catalogue& catalogue);

// The row with these stitches, over the columns of the loops of `before`; a column 0 has no wish. `moves` of
// a marker stand before the stitch of their place in the order worked.
struct MoveBefore {
    MarkerMove move;
    std::size_t stitch = 0;
};
Row laidOver(const std::vector<StitchId>& worked, Row base, const std::vector<MoveBefore>& moves,
             const Needle& before, const RowContext& context, int columns);

} // namespace shawlwright
