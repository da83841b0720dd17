#include "app/canvas/stroke.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

std::vector<At> cellsBetween(At from, At to)
{
    const int rows = to.row - from.row;
    const int columns = to.column - from.column;
    const int steps = std::max(std::abs(rows), std::abs(columns));
    std::vector<At> cells{from};
    for (int step = 1; step <= steps; ++step) {
        const double share = static_cast<double>(step) / steps;
        cells.push_back(At{from.row + static_cast<int>(std::lround(rows * share)),
                           from.column + static_cast<int>(std::lround(columns * share))});
    }
    return cells;
}

int Stroke::snapped(int column) const
{
    const int away = column - m_anchor;
    const int places = away >= 0 ? away / m_width : -((-away + m_width - 1) / m_width);
    return m_anchor + places * m_width;
}

std::vector<At> Stroke::to(At point)
{
    if (!m_last)
        m_anchor = point.column;
    std::vector<At> fresh;
    for (At cell : cellsBetween(m_last.value_or(point), point)) {
        cell.column = snapped(cell.column);
        const bool fits =
            cell.row >= 0 && cell.row < m_rows && cell.column >= 1 && cell.column + m_width - 1 <= m_columns;
        if (fits && m_done.insert(cell).second)
            fresh.push_back(cell);
    }
    m_last = point;
    return fresh;
}

} // namespace shawlwright::app
