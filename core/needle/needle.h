// The loops on the needle, between two rows of knitting; with the markers, the turns not yet closed and the yarns.
//
// Shape:   loop 0 is at the right edge as seen from the right side, whichever side was worked last. A position p
//          (marker, turn, yarn, tip) lies before loop p: 0 <= p <= loops.size().
// Units:   loops, each counting as one stitch. Each loop of a double yarn over counts; a brioche pair is one loop.
// Errors:  none here. What cannot be worked is told by workRow() as findings.
// Source:  after = before - taken up + left, resting loops untouched: common practice, no source.
#pragma once

#include "core/pattern/row.h"

#include <optional>
#include <string>
#include <vector>

namespace shawlwright {

enum class LoopKind : std::uint8_t { Plain, CastOn, PickedUp, YarnOver };

enum LoopFlag : std::uint16_t {
    Slipped = 1,      // passed over unworked by the row that touched it last
    BriochePair = 2,  // a slipped stitch with its yarn over
    Doubled = 4,      // a double stitch
    TurnLoop = 8,     // carries the wrap, yarn over, pin or twin of an early turn, not counted
    MadeUp = 16       // was missing; the needle goes on as if it were there
};

struct Loop {
    RowId madeIn;              // 0: cast on
    StitchId stitch;           // that made it
    std::int16_t column = 0;   // of its head in that row's chart; 0: not of this section's chart
    std::uint16_t flags = 0;   // LoopFlag
    YarnId yarn;               // its colour
    YarnId wrapYarn;           // of a brioche pair: the yarn that lies over it
    LoopKind kind = LoopKind::Plain;
    std::uint8_t part = 0;     // which of the loops that its stitch left, right to left
    Face face = Face::Knit;    // as seen from the right side
    TurnMethod method = TurnMethod::Plain; // of the turn that a TurnLoop or Doubled loop belongs to
    std::optional<Face> under; // of the one stitch it was worked into, if it is one into one
    bool operator==(const Loop&) const = default;
};

struct MarkerAt {
    MarkerId marker;
    int position = 0;
    int column = 0;  // the boundary it stood at in the chart
    bool operator==(const MarkerAt&) const = default;
};

// The gap of an early turn: where the tip was when the work was turned.
struct TurnAt {
    int position = 0;
    Side side = Side::RS; // of the row that was turned
    TurnMethod method = TurnMethod::Plain;
    RowId row;
    bool operator==(const TurnAt&) const = default;
};

struct YarnAt {
    YarnId yarn;
    int position = 0; // where it hangs
    bool operator==(const YarnAt&) const = default;
};

// Counts that rest on a fault: a row had too few or too many, and the needle went on as if it had come out.
struct Owed {
    RowId fault;   // the row with the fault; 0: none
    int loops = 0; // made up minus set aside, not yet made good
    bool operator==(const Owed&) const = default;
};

struct Needle {
    std::vector<Loop> loops;
    std::vector<MarkerAt> markers; // by position, right edge first
    std::vector<TurnAt> turns;     // open ones, oldest first
    std::vector<YarnAt> yarns;     // attached ones, by yarn
    int tip = 0;                   // where the next row goes on
    Side lastSide = Side::WS;      // side of the row worked last
    FinishKind lastFinish = FinishKind::Turn;
    TurnMethod lastMethod = TurnMethod::Plain; // of lastFinish TurnEarly
    bool started = false;          // a row was worked
    Owed owed;

    int count() const { return static_cast<int>(loops.size()); }
    bool operator==(const Needle&) const = default;
};

Needle castOn(int stitches, YarnId yarn, Side firstSide);

// Stitches between the markers, right edge first; one number where there is no marker.
std::vector<int> segments(const Needle& needle);
// Stitches between the two innermost open turns, right one and left one; -1 where there aren't both.
int betweenTurns(const Needle& needle);
// "3 | 2" with | for a marker, ( ) around loops outside of the innermost turns, ^ at the tip, right edge first: for
// tables of tests, failure messages and reports.
std::string dump(const Needle& needle);

} // namespace shawlwright
