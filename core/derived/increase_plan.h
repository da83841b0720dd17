// Rows with increases at named places, every so many rows, with plain rows between them.
//
// Shape:   places are named once and found on the needle of each row: beside the edges, beside a marker, on both sides of
//          one stitch (the spine). A place has increases every `every` rows, counted from the first row made; where all
//          numbers are even that is an RS row, and a plain row leads there if the work doesn't face so. After the last
//          increase come the plain rows that belong to it. Or n increases are spread evenly over one row.
//          A made stitch leans; on the two sides of a place the leans mirror each other. The chart is widened to both
//          sides, so that the shape grows as it is knit.
// Units:   stitches; rows of the chart.
// Errors:  a Fault where a place isn't on the needle, two would need the same stitch, or the count asked for is never
//          reached, with the counts on either side of it.
// Source:  S + q k stitches after k rows with q increases each: arithmetic. Garter triangle of 4 every second row: Holly
//          Chayes, Shawl Geometry; crescent of 4 and 2: The Knitting Circle, garter tab. Evenly spread: n increases part
//          the row into n + 1 stretches, the outer ones half as long (common practice, no source).
#pragma once

#include "core/derived/rows_on_needle.h"

namespace shawlwright {

enum class Increase : std::uint8_t {
    YarnOver,
    MadeStitch,   // m1L, m1R; takes up none
    LiftedStitch, // LLI, RLI; worked into the stitch beside the place
    FrontAndBack  // kfb; the same, without a lean
};
enum class LeanOf : std::uint8_t { Away, Towards }; // the place

struct IncreasePlace {
    enum class At : std::uint8_t {
        RightEdge,   // after `beside` stitches
        LeftEdge,    // before `beside` stitches
        BeforeMarker, // to the right of it as charted, with `beside` stitches between
        AfterMarker,  // to the left of it
        AboutMarker,  // both
        Spine,        // on both sides of stitch number `stitch` from the right edge
        Middle        // on both sides of the middle stitch
    };
    At at = At::RightEdge;
    MarkerId marker;
    int stitch = 1;
    int beside = 0;
    int every = 2; // rows
    bool operator==(const IncreasePlace&) const = default;
};

struct IncreaseWishes {
    std::vector<IncreasePlace> places;
    std::optional<int> spread; // in place of places: so many increases, evenly over one row
    Increase increase = Increase::YarnOver;
    LeanOf lean = LeanOf::Away;
    int times = 10;            // rows with increases
    std::optional<int> until;  // in place of times: stitches
    PlainStitch stitches = PlainStitch::Knit;
    YarnId yarn; // none: that of the row before
};

struct IncreasePlan {
    std::vector<Row> rows;
    std::vector<int> counts; // stitches after each row
    std::vector<int> with;   // which of them have increases
    int before = 0;          // stitches
    int lead = 0;
    int filled = 0;
    Edit edit;
};

// `at`: index of the row it begins at; the rows are worked on the needle that the ledger shown has there.
Result<IncreasePlan> increasePlan(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                                  std::size_t shown, SectionId section, int at, const IncreaseWishes& wishes);

inline constexpr int mostIncreaseRows = 2000;

} // namespace shawlwright
