// One row of a chart, in plain values.
//
// Shape:   cells by column, column 1 (cells[0]) at the right edge as seen from the right side, whichever way the row is
//          worked. A stitch of w columns fills w neighbouring cells with part 0 .. w-1, part 0 at the right.
//          A boundary b lies to the left of column b: 0 is the right edge of the grid, columns the left one.
// Units:   columns, counted stitches.
#pragma once

#include "core/pattern/quantity.h"
#include "core/stitches/catalogue.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace shawlwright {

struct RowId {
    std::uint32_t value = 0; // 0: no row (the cast-on)
    auto operator<=>(const RowId&) const = default;
};

struct YarnId {
    std::uint8_t value = 0; // 0: none; in a cell: the yarn of the row
    auto operator<=>(const YarnId&) const = default;
};

struct MarkerId {
    std::uint16_t value = 0;
    auto operator<=>(const MarkerId&) const = default;
};

struct Cell {
    StitchId stitch = noStitch;
    YarnId yarn;
    std::uint8_t part = 0;
    bool operator==(const Cell&) const = default;
};

enum class StartKind : std::uint8_t {
    Continue,      // where the work was turned (or the row ended)
    AfterSlipping, // the next `slip` stitches are passed to the right needle unworked
    AtEdge         // at the edge where a row of this side starts
};

struct Start {
    StartKind kind = StartKind::Continue;
    Quantity slip;
    bool joins = false; // the row's yarn is joined here
    bool operator==(const Start&) const = default;
};

enum class FinishKind : std::uint8_t { Turn, TurnEarly, Slide, Round, BindOff };

enum class TurnMethod : std::uint8_t { Plain, WrapAndTurn, DoubleStitch, YarnOver, PinnedYarn, TwinStitch };

struct Finish {
    FinishKind kind = FinishKind::Turn;
    TurnMethod method = TurnMethod::Plain; // of an early turn
    bool breaksYarn = false;
    bool operator==(const Finish&) const = default;
};

enum class MoveKind : std::uint8_t {
    Place,
    Remove, // taken off when the tip reaches it, or just before the stitch that would swallow it
    Shift   // the marker that stands beside this boundary is slipped exactly here (before or after a yarn over)
};

// At the edge of a stitch repeat: is the marker moved once, outside of it, or each time it is worked?
enum class MoveReach : std::uint8_t { Once, EachTime };

struct MarkerMove {
    MarkerId marker;
    int boundary = 0;
    MoveKind kind = MoveKind::Place;
    MoveReach reach = MoveReach::Once;
    std::string unknown{}; // see Row::unknown
    bool operator==(const MarkerMove&) const = default;
};

struct Row {
    RowId id; // stays the same while rows above come and go
    Side side = Side::RS;
    YarnId yarn;
    std::vector<Cell> cells;
    Start start;
    Finish finish;
    std::vector<MarkerMove> moves;
    std::optional<Quantity> stated; // the count the designer means to print
    std::string label;              // empty: counted; else as printed ("12a")
    std::string note;
    std::string words;              // the designer's own words for the row; empty: written
    std::string unknown;            // keys of the file that this program doesn't know, kept as JSON text
    bool operator==(const Row&) const = default;
};

using RowRef = std::shared_ptr<const Row>; // a row in a pattern is replaced, never changed

// The cell at a column (from 1); no stitch beyond the row's end.
inline Cell cellAt(const Row& row, int column)
{
    return column >= 1 && column <= static_cast<int>(row.cells.size()) ? row.cells[static_cast<std::size_t>(column) - 1]
                                                                       : Cell{};
}

} // namespace shawlwright
