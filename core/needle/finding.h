// What is odd about a pattern: severity, kind, place, a sentence with the numbers in it, and a mend where there is one.
//
// Shape:   row is an index into the section's rows, line an index into the ledger (-1: none). column 0: the whole row.
#pragma once

#include "core/pattern/pattern.h"

#include <string>
#include <string_view>
#include <vector>

namespace shawlwright {

enum class Severity { Error, Warning, Note };

enum class FindingKind {
    TooFewStitches, StitchesLeftOver, RepeatDoesNotFit, TooManyLoops,
    MarkerStraddled, MarkerPlacedTwice, MarkerNotThere, MarkerInYarnOver,
    YarnElsewhere, YarnNotJoined,
    DoubleYarnOverClosed,
    NoEarlierTurn, PastLastTurn, NothingBetweenTurns, TurnAtEdge, DoubleStitchMissing, DoubleStitchWithoutTurn,
    TurnNeverClosed,
    PairWorkedAsTwo, NotAPair, WrongColourWorked,
    RowDrifts,
    StatedCountDiffers, VersionsDisagree, SizesDisagree,
    NotInKey, AbbreviationTwice,
    SameSideTwice, NumberingGap, MarkerOutside, EmptyRow,
    OwnWordsDiffer, ColumnBroken, YarnJoinedAgain
};
inline constexpr int findingKinds = static_cast<int>(FindingKind::YarnJoinedAgain) + 1;

// The kind in the words of the command line's JSON: "too-few-stitches".
std::string_view kindName(FindingKind kind);
std::string_view severityName(Severity severity); // "error", "warning", "note"

enum class MendKind {
    None, ReplaceCell, SetBoxTimes, JoinYarn, SetSide, SetStated, ShiftRow, RemoveMarkerFirst, DeleteMarkerMove, SetLabel,
    SlideBefore, CarryYarn
};

// A mend as plain data; derived/mends.h makes the edit.
struct Mend {
    MendKind kind = MendKind::None;
    std::string label; // "Purl the second loop"
    int column = 0;    // the cell, or the boundary of a marker
    StitchId stitch;
    int number = 0;
    BoxId box;
    MarkerId marker;
    std::string text;
    bool before = false; // RemoveMarkerFirst: it goes back before the stitch
    bool operator==(const Mend&) const = default;
};

struct Finding {
    Severity severity = Severity::Error;
    FindingKind kind = FindingKind::TooFewStitches;
    SectionId section;
    int row = -1;
    int line = -1;
    int column = 0;
    RowId in; // the row it is about, where a later one brought it to light; 0: the row being worked
    std::string message; // without the place
    Mend mend;
    int followsFrom = -1; // ledger line of the fault that this one only follows from; -1: stands on its own
    bool operator==(const Finding&) const = default;
};

} // namespace shawlwright
