#include "app/exports/chart_split.h"

#include "core/pattern/questions.h"

#include <algorithm>

namespace shawlwright::app {

std::vector<Span> split(int count, int most, const std::vector<bool>& forbidden,
                        const std::vector<bool>& preferred)
{
    const auto marked = [](const std::vector<bool>& borders, int at) {
        return at < static_cast<int>(borders.size()) && borders[static_cast<std::size_t>(at)];
    };
    std::vector<Span> spans;
    int first = 1;
    while (first <= count) {
        const int left = count - first + 1;
        const int sheets = (left + most - 1) / most;
        const int even =
            first - 1 + (left + sheets - 1) / sheets; // the border if the rest is shared out evenly
        const int farthest = std::min(first - 1 + most, count);
        int border = even;
        if (sheets > 1) {
            const int near = std::max(1, most / 4);
            for (int distance = 0; distance <= near; ++distance) {
                const int up = even + distance, down = even - distance;
                if (up <= farthest && up < count && marked(preferred, up) && !marked(forbidden, up)) {
                    border = up;
                    break;
                }
                if (down >= first && marked(preferred, down) && !marked(forbidden, down)) {
                    border = down;
                    break;
                }
            }
            while (border > first && marked(forbidden, border))
                --border;
            if (marked(forbidden,
                       border)) // one stitch is wider than the sheet: it is cut, for there is no other way
                border = even;
        }
        spans.push_back({first, border});
        first = border + 1;
    }
    return spans;
}

std::vector<Span> splitColumns(const Section& section, int most)
{
    const int columns = section.frame.columns;
    std::vector<bool> forbidden(static_cast<std::size_t>(columns) + 1, false);
    std::vector<bool> preferred = forbidden;
    for (const RowRef& row : section.rows)
        for (int column = 2; column <= std::min(columns, static_cast<int>(row->cells.size())); ++column)
            if (cellAt(*row, column).part > 0)
                forbidden[static_cast<std::size_t>(column) - 1] = true;
    for (const Box& box : section.frame.boxes) {
        if (box.firstColumn > 1)
            preferred[static_cast<std::size_t>(std::min(box.firstColumn, columns)) - 1] = true;
        preferred[static_cast<std::size_t>(std::clamp(box.lastColumn, 0, columns))] = true;
    }
    return split(columns, most, forbidden, preferred);
}

std::vector<Span> splitRows(const Section& section, int most)
{
    const auto rows = section.rows.size();
    std::vector<bool> preferred(rows + 1, false);
    for (const Bracket& bracket : section.frame.brackets) {
        const int first = rowIndex(section, bracket.firstRow);
        const int last = rowIndex(section, bracket.lastRow);
        if (first > 0)
            preferred[static_cast<std::size_t>(first)] = true;
        if (last >= 0)
            preferred[static_cast<std::size_t>(last) + 1] = true;
    }
    return split(static_cast<int>(rows), most, {}, preferred);
}

} // namespace shawlwright::app
