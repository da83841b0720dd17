// A wedge of short rows: ordinary rows, over the loops of the needle, that may be edited freely afterwards.
//
// Shape:   at an edge, each pair of rows goes out from that edge, turns early and comes back to it; pair i
// works
//          s, 2s, 3s ... stitches (growing) or W - s, W - 2s ... (shrinking). About a marker every row turns:
//          s, 2s ... stitches beyond it on either side, or the same from the outermost in. The closing row
//          works over all stitches and so closes every turn; about a marker it runs from the last turn to the
//          edge, and another one comes back. Where the work isn't at the edge the wedge starts from, plain
//          rows go there first. Empty rows from `at` on are filled, what doesn't find room is inserted; a
//          full row more is added where the row that follows would else lie on the wrong side.
// Units:   stitches, counted as for wrap and turn: the turning stitch rests. With a double stitch or a pinned
// yarn
//          the turning stitch is worked too, so that such a row is one stitch longer and comes back over the
//          same stitches; where a step is too small for that, the turns start one stitch further in.
// Errors:  a Fault where the stitches don't reach for the turns, with the numbers that would.
// Source:  how far each method works before the turn: Wise Owl Knits and Cabin Fever (German short rows one
// stitch
//          further), Craft Star Studios (yarn over turn), Knit 1 Knit All (pinned yarn, the first stitch of
//          the return is slipped), Brooklyn Tweed (twin stitches aren't counted).
#pragma once

#include "core/derived/laid_row.h"
#include "core/edits/edit.h"

namespace shawlwright {

enum class WedgeAt : std::uint8_t { RightEdge, LeftEdge, Marker };

struct WedgeWishes {
    WedgeAt at = WedgeAt::RightEdge;
    MarkerId marker;     // Marker
    bool growing = true; // each turn further out; else each earlier
    int step = 3;        // stitches from one turn to the next on the same side
    int turns = 10;      // pairs of rows; about a marker: turns on each side
    std::optional<int>
        untilLeft; // in place of turns: as many as leave this many stitches, to rest at the far end of
                   // a growing wedge or about a marker, to work in the last pair of a shrinking one
    TurnMethod method = TurnMethod::WrapAndTurn;
    PlainStitch stitches = PlainStitch::Knit;
    bool slipFirst = false;    // the first stitch after each early turn; with a pinned yarn it always is
    bool closing = true;       // always so about a marker
    std::vector<YarnId> yarns; // one after the other, a pair of rows each; at an edge only
};

struct Wedge {
    std::vector<Row> rows;
    int lead = 0;       // plain rows to the edge it starts from
    int turns = 0;      // early ones
    int lastWorked = 0; // stitches in the last row before the closing ones
    int resting = 0;    // stitches that rest then
    int filled = 0;     // of the rows, how many take the place of empty ones
    Edit edit;
};

// `at`: index of the row it begins at; the rows are worked on the needle that the ledger shown has there.
Result<Wedge> shortRowWedge(const Pattern& pattern, const Catalogue& catalogue,
                            std::span<const Ledger> ledgers, std::size_t shown, SectionId section, int at,
                            const WedgeWishes& wishes);

} // namespace shawlwright
