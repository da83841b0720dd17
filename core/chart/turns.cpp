// Short rows on the chart: the mark beyond the last worked cell, the arrow over stitches slipped at the
// start.
#include "core/chart/frame.h"

namespace shawlwright::chart {

std::vector<Shape> turnShapes(const Frame& frame)
{
    std::vector<Shape> shapes;
    if (frame.empty())
        return shapes;
    for (int index = frame.firstRow; index <= frame.lastRow; ++index) {
        const Row& row = frame.row(index);
        if (row.finish.kind != FinishKind::TurnEarly && row.start.kind != StartKind::AfterSlipping)
            continue;
        const auto worked = workedColumns(frame.section, index);
        if (!worked)
            continue;
        const bool rs = row.side == Side::RS;
        const double top = frame.top(index), h = frame.cellHeight;
        if (row.finish.kind == FinishKind::TurnEarly && frame.shows(worked->last)) {
            const double x = frame.x(rs ? worked->last : worked->last - 1);
            const double size = h < 1 ? h : 1, room = (h - size) / 2;
            for (const Shape& shape : turnMark(row.finish.method, row.side).shapes)
                shapes.push_back(moved(scaled(shape, size, size), x, top + room));
        }
        if (row.start.kind == StartKind::AfterSlipping) {
            const double edge = rs ? frame.right() : frame.left();
            const double tip = frame.x(rs ? worked->first - 1 : worked->first);
            const double ahead = rs ? -1 : 1; // the way the row goes
            const double y = top + h / 2;
            if ((tip - edge) * ahead < 0.9)
                continue;
            shapes.push_back(
                Stroke{segment({edge + ahead * 0.15, y}, {tip - ahead * 0.2, y}), 0.07, Ink::TurnMark, true});
            shapes.push_back(Stroke{polyline({{tip - ahead * 0.34, y - 0.17},
                                              {tip - ahead * 0.14, y},
                                              {tip - ahead * 0.34, y + 0.17}}),
                                    0.07, Ink::TurnMark, false});
        }
    }
    return shapes;
}

} // namespace shawlwright::chart
