// The parts that the files of symbols share. Not for use outside of this folder.
//
// Units:   cells, y downwards.
#pragma once

#include "core/chart/draw.h"
#include "core/chart/symbols.h"

namespace shawlwright::chart {

using Shapes = std::vector<Shape>;
using DrawnAs = shawlwright::Drawing; // which drawing a symbol starts from

inline void add(Shapes& shapes, Path path, double width = lineWeight)
{
    shapes.push_back(Stroke{std::move(path), width, Ink::Symbol, false});
}

std::vector<double> headPlaces(int leaves, int width);  // right to left, as Stitch::heads
std::vector<double> footPlaces(int takesUp, int width); // left to right

bool headsDiffer(const Stitch& stitch);            // some knit, some purled
HeadKind headKind(const Stitch& stitch, int head); // what `heads` or the face says

// The symbol moved up to make room for the level bar of a purl form.
void standOnBar(Shapes& shapes, int width);

void drawLoops(Shapes& shapes, const Stitch& stitch);    // loops_symbol.cpp: feet, joint, heads
void drawCrossing(Shapes& shapes, const Stitch& stitch); // crossing_symbol.cpp
void drawBrioche(Shapes& shapes, const Stitch& stitch);  // brioche_symbol.cpp: hoods
bool drawnWithOwnBar(const Stitch& stitch);              // the drawing says knit or purl itself

} // namespace shawlwright::chart
