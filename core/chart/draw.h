// The strokes, rings and figures that symbols and charts are put together from.
//
// Units:   chart units, y downwards.
// Source:  a quarter of a circle as one curve needs handles of 0.5523 of the radius: any book on splines.
#pragma once

#include "core/chart/shapes.h"

#include <initializer_list>

namespace shawlwright::chart {

inline constexpr double lineWeight = 0.075; // of every symbol, in cells

Path segment(Point from, Point to);
Path polyline(std::initializer_list<Point> points);
Path ring(Point centre, double radiusX, double radiusY);
inline Path ring(Point centre, double radius)
{
    return ring(centre, radius, radius);
}
Path rectangle(const Rect& rect);
Path roundedRectangle(const Rect& rect, double radius);
Path arch(Point leftFoot, Point rightFoot, double height); // an open half oval; a negative height hangs down

// A whole number in drawn figures, centred; no font is needed for it.
Path numeral(int number, Point centre, double height);
double numeralWidth(int number, double height);

Shape moved(const Shape& shape, double dx, double dy);
Shape scaled(const Shape& shape, double factorX,
             double factorY); // about 0, 0; strokes and texts by the smaller

// What the shapes cover, the width of strokes included, texts by estimate (textWidth).
Rect boundsOf(const std::vector<Shape>& shapes);
Rect united(const Rect& a, const Rect& b); // an empty one adds nothing

// About as wide as a sans-serif type sets it; nothing here measures fonts.
double textWidth(const std::string& words, double size);

} // namespace shawlwright::chart
