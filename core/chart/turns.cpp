// Short rows on the chart: the mark beyond the last worked cell, the arrow over stitches slipped at the
// start.
#include "core/chart/frame.h"

namespace shawlwright::chart {

std::optional<SlipArrow> slipArrow(const Frame& frame, int index)
{
    const Row& row = frame.row(index);
    const auto worked = workedColumns(frame.section, index);
    if (row.start.kind != StartKind::AfterSlipping || !worked)
        return std::nullopt;
    const bool rs = row.side == Side::RS;
    const SlipArrow arrow{rs ? frame.right() : frame.left(), frame.x(rs ? worked->first - 1 : worked->first),
                          frame.top(index) + frame.cellHeight / 2};
    if ((arrow.tip - arrow.from) * (rs ? -1 : 1) < 0.9)
        return std::nullopt;
    return arrow;
}

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
        if (const auto arrow = slipArrow(frame, index)) {
            const auto [from, tip, y] = *arrow;
            const double ahead = rs ? -1 : 1; // the way the row goes
            shapes.push_back(
                Stroke{segment({from + ahead * 0.15, y}, {tip - ahead * 0.2, y}), 0.07, Ink::TurnMark, true});
            shapes.push_back(Stroke{polyline({{tip - ahead * 0.34, y - 0.17},
                                              {tip - ahead * 0.14, y},
                                              {tip - ahead * 0.34, y + 0.17}}),
                                    0.07, Ink::TurnMark, false});
        }
    }
    return shapes;
}

} // namespace shawlwright::chart
