// One section's chart as shapes: cells, symbols, numbers, yarn strips, boxes, brackets, markers, turns, and its key.
//
// Shape:   the grid's lower right corner is cell (row 0, column 1); row r is drawn above row r-1. x grows to the right,
//          so column c covers x = columns - c .. columns - c + 1; row r of n covers y = (n-1-r) h .. (n-r) h.
// Units:   see shapes.h.
// Errors:  none.
#pragma once

#include "core/chart/symbols.h"
#include "core/pattern/questions.h"

namespace shawlwright::chart {

// What the needle knows about a row, given in from outside: the chart itself runs nothing.
struct RowFacts {
    int before = -1, after = -1;     // -1: not known, not drawn
    std::vector<int> restingColumns;
    bool fault = false;
};

struct ChartOptions {
    double cellHeight = 1;
    bool stitchNumbers = true;
    bool counts = true;
    bool yarnTints = true;
    bool key = true;
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
std::vector<Shape> boxShapes(const Section& section, const PatternHead& head, double cellHeight);
std::vector<Shape> bracketShapes(const Section& section, double cellHeight); // left of the grid and its numbers
std::vector<Shape> markerShapes(const Section& section, const PatternHead& head, double cellHeight);
std::vector<Shape> turnShapes(const Section& section, double cellHeight);

// The key: only what the section uses, everything it uses; quiet stitches, yarn overs, decreases by size, increases,
// the rest, no stitch, repeat box last. Source of the order: common practice, no source.
struct KeyEntry {
    StitchId stitch;   // noStitch with `words` set for the entries that are no stitch
    std::string words; // "RS: k2tog; WS: p2tog"
    std::string name;
};
std::vector<KeyEntry> keyOf(const Section& section, const Catalogue& catalogue);
Drawing keyDrawing(const std::vector<KeyEntry>& entries, const Catalogue& catalogue, double width);

} // namespace shawlwright::chart
