#include "app/canvas/shown_rows.h"

#include <algorithm>

namespace shawlwright::app {

ShownRows::ShownRows(const std::vector<bool>& hidden)
{
    const auto count = std::count(hidden.begin(), hidden.end(), true);
    if (count == 0 || static_cast<std::size_t>(count) == hidden.size())
        return;
    auto rows = std::make_shared<Rows>();
    for (std::size_t row = 0; row < hidden.size(); ++row) {
        rows->lineOf.push_back(static_cast<int>(rows->rowAt.size()));
        if (!hidden[row])
            rows->rowAt.push_back(static_cast<int>(row));
    }
    m_rows = std::move(rows);
}

bool ShownRows::hides(int row) const
{
    return m_rows && row >= 0 && row < static_cast<int>(m_rows->lineOf.size()) && rowAt(lineOf(row)) != row;
}

int ShownRows::lineOf(int row) const
{
    if (!m_rows || row < 0)
        return row;
    const int rows = static_cast<int>(m_rows->lineOf.size());
    return row < rows ? m_rows->lineOf[static_cast<std::size_t>(row)]
                      : static_cast<int>(m_rows->rowAt.size()) + row - rows;
}

int ShownRows::rowAt(int line) const
{
    if (!m_rows || line < 0)
        return line;
    const int lines = static_cast<int>(m_rows->rowAt.size());
    return line < lines ? m_rows->rowAt[static_cast<std::size_t>(line)]
                        : static_cast<int>(m_rows->lineOf.size()) + line - lines;
}

int ShownRows::nearest(int row) const
{
    if (!hides(row))
        return row;
    const int above = lineOf(row);
    return rowAt(above > 0 ? above - 1 : above);
}

int ShownRows::lastWith(int row) const
{
    while (hides(row + 1))
        ++row;
    return row;
}

Areas ShownRows::seen(const Areas& areas) const
{
    if (!m_rows)
        return areas;
    Areas seen;
    for (const Area& area : areas)
        for (int row = area.firstRow; row <= area.lastRow; ++row) {
            if (hides(row))
                continue;
            Area part = area;
            part.firstRow = row;
            while (row < area.lastRow && !hides(row + 1))
                ++row;
            part.lastRow = row;
            seen.push_back(part);
        }
    std::sort(seen.begin(), seen.end(), [](const Area& a, const Area& b) {
        return std::pair(a.firstRow, a.firstColumn) < std::pair(b.firstRow, b.firstColumn);
    });
    return seen;
}

std::vector<IndexRun> ShownRows::together(std::vector<IndexRun> runs) const
{
    std::vector<IndexRun> joined;
    for (IndexRun run : runs) {
        run.last = lastWith(run.last);
        if (!joined.empty() && run.first <= joined.back().last + 1)
            joined.back().last = std::max(joined.back().last, run.last);
        else
            joined.push_back(run);
    }
    return joined;
}

bool ShownRows::operator==(const ShownRows& other) const
{
    return m_rows == other.m_rows || (m_rows && other.m_rows && m_rows->rowAt == other.m_rows->rowAt &&
                                      m_rows->lineOf == other.m_rows->lineOf);
}

} // namespace shawlwright::app
