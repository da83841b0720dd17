// A drawing as a bare SVG picture, for eyes only: the program's own export is elsewhere.
#pragma once

#include "core/chart/shapes.h"
#include "core/pattern/pattern.h"

#include <string>

namespace shawlwright::chart {

std::string svgShapes(const std::vector<Shape>& shapes, const PatternHead& head); // without the svg element
std::string svgOf(const Drawing& drawing, const PatternHead& head, double cell);

} // namespace shawlwright::chart
