// Makers that move, copy and shift stitches within a chart.
//
// Shape:   `rows` up and `columns` to the left; negative: down and to the right.
// Errors:  a Fault where something would reach past the edges of the chart, or a wide stitch would be cut.
#pragma once

#include "core/edits/areas.h"

namespace shawlwright {

enum class Leaving { NoStitch, TheStitches }; // where they came from

// What they come to stand on is replaced; a wide stitch that is met in part becomes no stitch. Stitch repeats that lie
// wholly in one of the areas go along, or are copied, and replace those that they cover; one that would cross another
// repeat is a Fault. Markers that stand between two selected stitches go along where stitches are moved, those on an edge
// only where the area is as wide as the chart; a copy leaves markers alone, since each stands in one place.
Result<Edit> moveStitches(const Pattern&, const Catalogue&, SectionId, const Areas&, int rows, int columns,
                          Leaving);

// A part of each row of an area, from the area to one of the edges, is moved to make room or to close up.
//   Open:  the area comes to hold no stitch; what it held, and what lies from it to the edge, moves on
//          towards that edge by as many columns.
//   Close: what the area holds is taken out, and what lies between it and the edge moves up to fill the gap.
// Markers of these rows that stand in the part go with it; stitch repeats stay.
enum class Part { Left, Right };
enum class Gap { Open, Close };
Result<Edit> shiftPart(const Pattern&, const Catalogue&, SectionId, const Area&, Part, Gap);

} // namespace shawlwright
