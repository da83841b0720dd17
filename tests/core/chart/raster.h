// A picture of a few pixels made from a symbol's strokes and fills, to measure whether symbols can be told
// apart.
//
// Shape:   row by row from the top; each pixel 0 (paper) to 1 (ink), from 5 x 5 samples.
#pragma once

#include "core/chart/symbols.h"

namespace shawlwright::chart {

std::vector<double> raster(const Symbol& symbol, int pixelsPerCell);
double difference(const std::vector<double>& a, const std::vector<double>& b); // in whole pixels of ink

} // namespace shawlwright::chart
