// The fine grid that strokes are drawn on.
//
// Units:   cells, y downwards.
#pragma once

#include "core/chart/symbols.h"

#include <cmath>

namespace shawlwright::app {

inline constexpr int gridSteps = 20; // to a cell

// The lines of the grid in a cell, from its top; those next to where heads end and feet stand lie on these.
inline double levelAt(int step)
{
    const double level = static_cast<double>(step) / gridSteps;
    for (const double line : {chart::headLine, chart::footLine})
        if (std::abs(level - line) < 0.5 / gridSteps)
            return line;
    return level;
}

inline int stepOf(double value)
{
    return static_cast<int>(std::lround(value * gridSteps));
}

} // namespace shawlwright::app
