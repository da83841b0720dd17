// One section's chart as shapes: cells, symbols, numbers, yarn strips, boxes, brackets, markers, turns, and
// its key.
//
// Shape:   the grid's lower right corner is cell (row 0, column 1); row r is drawn above row r-1. x grows to
// the right,
//          so column c covers x = columns - c .. columns - c + 1; row r of n covers y = (n-1-r) h .. (n-r) h.
// Units:   see shapes.h.
// Errors:  none.
#pragma once

#include "core/chart/symbols.h"
#include "core/pattern/questions.h"

#include <optional>

namespace shawlwright::chart {

// What the needle knows about a row, given in from outside: the chart itself runs nothing.
struct RowFacts {
    std::optional<Quantity> before, after; // stitches; none: not known, not drawn
    std::optional<Quantity> atLast;        // after it the last time it is knitted, where that is another number
    std::vector<int> restingColumns;
    bool fault = false;
};

struct ChartOptions {
    double cellHeight = 1;
    bool stitchNumbers = true;
    bool counts = true;
    bool yarnTints = true;
    bool key = true;
    bool title = true;
    std::vector<std::string> notes{};     // sentences below it all
    int firstRow = 0, lastRow = -1;       // row indexes; last -1: all
    int firstColumn = 1, lastColumn = -1; // -1: all
};

struct ChartInput {
    const Section& section;
    const PatternHead& head;
    const Catalogue& catalogue;
    std::vector<RowFacts> facts; // one per row, or empty
};

Drawing chartOf(const ChartInput& input, const ChartOptions& options = {});

// The pieces, for a canvas that draws only what it shows.
Rect cellRect(const Section& section, double cellHeight, int row, int column, int width = 1);

// Stitch repeats: heavy outlines with a label each ("× 3", "to last 5 sts"). The label stands on cells
// without a symbol where the catalogue is given and there are such.
std::vector<Shape> boxShapes(const Section& section, const PatternHead& head, double cellHeight,
                             const Catalogue* catalogue = nullptr);

// Row repeats, with their right edge at x = 0; the caller moves them to the left of the numbers.
std::vector<Shape> bracketShapes(const Section& section, double cellHeight);

// Markers: solid where placed or moved, crossed where removed, light where they stand in between.
std::vector<Shape> markerShapes(const Section& section, const PatternHead& head, double cellHeight);

// Marks beyond the last worked cell of a short row, and arrows over the stitches slipped at a row's start.
std::vector<Shape> turnShapes(const Section& section, double cellHeight);

// "× 3 (4, 5)", "to end", "to 4 sts before marker A", "to 4 sts before last turn".
std::string boxLabel(const Box& box, const PatternHead& head);
std::string timesLabel(const Quantity& times);
std::string sizesLabel(const Quantity& quantity); // "3 (4, 5)"

// The columns where a row's work begins and ends, in the order of its knitting; nothing where it works no
// cell.
struct WorkedColumns {
    int first = 0, last = 0;
};
std::optional<WorkedColumns> workedColumns(const Section& section, int row);

// The key: only what the section uses, everything it uses; quiet stitches, yarn overs, decreases by size,
// increases, the rest, no stitch, repeats and markers last. Source of the order: common practice, no source.
enum class KeyKind : std::uint8_t {
    Stitch,
    NoStitch,
    Resting,
    Turn,
    Slip,
    Slide,
    BindOff,
    BreakYarn,
    StitchRepeat,
    RowRepeat,
    Marker,
    MarkerRemoved
};
struct KeyEntry {
    StitchId stitch;   // of Stitch
    std::string words; // "RS: k2tog; WS: p2tog"; empty for what is no stitch
    std::string name;
    KeyKind kind = KeyKind::Stitch;
    TurnMethod method = TurnMethod::Plain; // of Turn
    bool operator==(const KeyEntry&) const = default;
};
std::vector<KeyEntry> keyOf(const Section& section, const Catalogue& catalogue);

// One key for several charts; facts say whether stitches rest (one vector per section, or none at all).
std::vector<KeyEntry> keyOf(const std::vector<const Section*>& sections, const Catalogue& catalogue,
                            const std::vector<std::vector<RowFacts>>& facts = {}, Words words = Words::US);
Drawing keyDrawing(const std::vector<KeyEntry>& entries, const Catalogue& catalogue, double width);

} // namespace shawlwright::chart
