// The cells of one stroke of the brush, without gaps however quickly the mouse goes.
//
// Shape:   points come in the order of the mouse; each gives the cells on the line from the point before that
// are not
//          yet of the stroke. Points may lie outside the chart: the line to them is cut at its edge. A brush
//          of several columns is set side by side, counted from where the stroke began.
// Errors:  none.
#pragma once

#include "core/edits/paint.h"

#include <optional>
#include <set>
#include <vector>

namespace shawlwright::app {

std::vector<At> cellsBetween(At from, At to); // both ends, each cell once, in order

class Stroke {
public:
    Stroke(int rows, int columns, int width) : m_rows(rows), m_columns(columns), m_width(width) {}

    std::vector<At> to(At point);

private:
    int snapped(int column) const; // to the rightmost column of the brush's place there

    int m_rows, m_columns, m_width;
    std::optional<At> m_last;
    int m_anchor = 1;
    std::set<At> m_done;
};

} // namespace shawlwright::app
