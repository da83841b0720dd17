// The symbol of a stitch, drawn from what it does: feet at the bottom for the loops it takes up, heads at the
// top for those it leaves, leaning as it leans; a ring for a yarn over, a bar for a purl face.
//
// Shape:   in a box of stitch.width() x 1, y downwards (feet near 0.84, heads near 0.16).
// Units:   cells.
// Source:  our own drawings, within the trade's published conventions (ring, slant, wedge, bar).
#pragma once

#include "core/chart/shapes.h"

namespace shawlwright::chart {

inline constexpr double footLine = 0.84; // where feet stand
inline constexpr double headLine = 0.16; // where heads end

struct Symbol {
    int width = 1;
    std::vector<Shape> shapes;
};

Symbol symbolOf(const Stitch& stitch);

// The symbol in a place of a chart: cells that are lower than wide keep the drawing's proportions where the
// stitch is one cell wide; a wide one is pressed flat so that its heads stay over their columns.
std::vector<Shape> symbolIn(const Symbol& symbol, const Rect& place);

// The mark of an early turn. The border of the last worked cell is at x = 0 and the mark stands beyond it,
// over what rests: at x < 0 after a right-side row, at x > 0 after a wrong-side row. Its flag points where
// the next row goes.
Symbol turnMark(TurnMethod method, Side side);
Symbol slideMark(Side side); // an arrow, in a box 1 x 1: the needle is pushed back, the next row starts there
Symbol bindOffMark();        // in a box 1 x 1
Symbol breakYarnMark();      // in a box 1 x 1

// A designer's own drawing: lines of points "0.1,0.2 0.8,0.9; 0.5,0.5 0.5,0.8" in the box 0..width x 0..1, y
// downwards.
Result<std::vector<Path>> readStrokes(std::string_view text);
// The text that reads back as these: paths of straight lines, points to three places. What is no stroke is left out.
std::string writeStrokes(const std::vector<Path>& strokes);
// A symbol as strokes of straight lines, for a designer to go on from: curves in short pieces, fills by their outline.
std::vector<Path> strokesOf(const Symbol& symbol);

} // namespace shawlwright::chart
