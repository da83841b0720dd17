// Arches of short rows: each about a place of the needle, wider or narrower from row to row on both sides; one after
// the other over the same stretch of rows, as many as there are places.
//
// Shape:   the first short row comes from the edge and turns beyond the first place; from then on every row goes from
//          turn to turn and works c, c + s, c + 2 s ... stitches (widening), or c, c - s, c - 2 s ... (narrowing): c the
//          width it starts with, s the step. Half of c lies on either side of the place, the odd one to the left. The row
//          that goes on from the last turn of one arch leads to the next one; two closing rows work over all stitches
//          and so close every turn. Where the work isn't at an edge a plain row leads there first. Rows are put into
//          the chart as rows_on_needle.h says.
// Units:   stitches, counted as for wrap and turn (short_row_wedge.h): with a double stitch or a pinned yarn each row
//          works the turning stitches too. A short row is one that turns early, so rows and turns are as many.
// Errors:  a Fault where the stitches don't reach, two arches would overlap, or the number of rows ends an arch on the
//          wrong side for the next one, with the numbers that would do.
// Source:  M rows of a narrowing arch over W stitches, row j working W - j s, work M W - s M (M + 1) / 2, and M rows of
//          a widening one c M + s M (M - 1) / 2: the sum of an arithmetic series. How far each method works before the
//          turn: see short_row_wedge.h.
#pragma once

#include "core/derived/rows_on_needle.h"

namespace shawlwright {

struct ArchPlace {
    enum class At : std::uint8_t { Middle, Marker, Stitch };
    At at = At::Middle;
    MarkerId marker; // Marker: wherever one of this name stands on the needle
    int stitch = 1;  // Stitch: from the right edge, from 1; the arch lies about this stitch
    bool operator==(const ArchPlace&) const = default;
};

enum class YarnTurns : std::uint8_t { EachArch, EachPair }; // a yarn for an arch, or for two rows of it

struct ArchWishes {
    std::vector<ArchPlace> places{{}};
    int width = 10;
    int step = 2;
    bool widening = true;
    int rows = 8;                  // short rows of each arch
    std::optional<int> untilWidth; // in place of rows: as many as keep the last row within it (narrowing: no narrower)
    TurnMethod method = TurnMethod::WrapAndTurn;
    PlainStitch stitches = PlainStitch::Knit;
    bool slipFirst = false;
    std::vector<YarnId> yarns; // one after the other
    YarnTurns yarnTurns = YarnTurns::EachArch;
};

struct Arches {
    std::vector<Row> rows;
    int lead = 0;   // plain rows to the edge
    int filled = 0; // of the rows, how many take the place of empty ones
    int arches = 0;
    int shortRows = 0;        // of each
    int joins = 0;            // times a yarn is joined
    std::vector<int> widths;  // stitches worked from turn to turn, of the first arch as worked
    struct Rests {
        int right = 0, left = 0; // stitches on either side of the last short row
    };
    std::vector<Rests> rests; // of each arch, in the order worked
    Edit edit;
};

// `at`: index of the row they begin at; the rows are worked on the needle that the ledger shown has there.
Result<Arches> shortRowArches(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                              std::size_t shown, SectionId section, int at, const ArchWishes& wishes);

} // namespace shawlwright
