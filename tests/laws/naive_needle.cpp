#include "tests/laws/naive_needle.h"

#include <algorithm>

namespace shawlwright::tests {

NaiveNeedle::NaiveNeedle(const Pattern& pattern, const Catalogue& catalogue, int size)
    : m_pattern(pattern), m_catalogue(catalogue), m_size(size), m_facingRS(pattern.head.castOn.firstSide == Side::RS)
{
    m_left.assign(static_cast<std::size_t>(pattern.head.castOn.stitches.at(size)), Item{"co", {}});
}

int NaiveNeedle::ahead() const
{
    return static_cast<int>(std::count_if(m_left.begin(), m_left.end(), [](const Item& i) { return !i.loop.empty(); }));
}

bool NaiveNeedle::takeOne()
{
    while (!m_left.empty() && m_left.back().loop.empty()) { // markers are slipped as they come
        m_right.push_back(m_left.back());
        m_left.pop_back();
    }
    if (m_left.empty())
        return false;
    m_left.pop_back();
    return true;
}

bool NaiveNeedle::cell(const Row&, const Stitch& stitch)
{
    if (stitch.takesUp == 0 && stitch.leaves > 0) {
        const bool besideLeft = !m_left.empty() && m_left.back().loop.empty();
        const bool besideRight = !m_right.empty() && m_right.back().loop.empty();
        m_line.sideUnsure = m_line.sideUnsure || besideLeft || besideRight;
    }
    for (int i = 0; i < stitch.takesUp; ++i) {
        if (i > 0 && !m_left.empty() && m_left.back().loop.empty())
            return false; // a marker among its stitches
        if (!takeOne())
            return false;
    }
    for (int i = 0; i < stitch.leaves; ++i) {
        m_line.made.push_back(stitch.key);
        m_right.push_back({stitch.key, {}});
    }
    return true;
}

bool NaiveNeedle::move(const MarkerMove& move, int reach)
{
    if (move.kind == MoveKind::Shift)
        return false;
    const auto named = [&](const Item& i) { return i.loop.empty() && i.marker == move.marker; };
    if (move.kind == MoveKind::Place) {
        if (std::any_of(m_left.begin(), m_left.end(), named) || std::any_of(m_right.begin(), m_right.end(), named))
            return false;
        m_line.sideUnsure = m_line.sideUnsure || (!m_left.empty() && m_left.back().loop.empty());
        m_right.push_back({"", move.marker});
        return true;
    }
    int loops = 0;
    for (auto it = m_left.rbegin(); it != m_left.rend() && loops < std::max(1, reach); ++it) {
        if (named(*it)) {
            m_left.erase(std::next(it).base());
            return true;
        }
        loops += it->loop.empty() ? 0 : 1;
    }
    for (auto it = m_right.rbegin(); it != m_right.rend() && it->loop.empty(); ++it)
        if (named(*it)) {
            m_right.erase(std::next(it).base());
            return true;
        }
    return false;
}

bool NaiveNeedle::loopsBefore(const Box& box, int& loops) const
{
    loops = ahead();
    if (box.until == BoxUntil::RowEnd)
        return true;
    loops = 0;
    for (auto it = m_left.rbegin(); it != m_left.rend(); ++it) {
        if (it->loop.empty() && it->marker == box.marker)
            return box.until == BoxUntil::Marker;
        loops += it->loop.empty() ? 0 : 1;
    }
    return false;
}

// The columns [from, to] of the chart in the direction of work, the boxes from `depth` on.
bool NaiveNeedle::span(const Row& row, const std::vector<Box>& boxes, std::size_t depth, int from, int to)
{
    const bool rs = row.side == Side::RS;
    for (int column = from; rs ? column <= to : column >= to;) {
        const Box* inner = nullptr;
        std::size_t next = depth;
        for (std::size_t b = depth; b < boxes.size() && !inner; ++b)
            if (boxes[b].firstColumn <= column && column <= boxes[b].lastColumn) {
                inner = &boxes[b];
                next = b + 1;
            }
        if (!inner) {
            if (!movesAt(row, rs ? column - 1 : column, column))
                return false;
            const Cell at = cellAt(row, column);
            const Stitch& stitch = m_catalogue.stitch(at.stitch);
            const int width = at.stitch == noStitch ? 1 : stitch.width();
            if (at.stitch != noStitch && at.part == (rs ? 0 : width - 1) && !cell(row, stitch))
                return false;
            column += rs ? 1 : -1;
            continue;
        }
        const int first = rs ? column : inner->lastColumn < column ? inner->lastColumn : column;
        const int last = rs ? inner->lastColumn : inner->firstColumn;
        if (inner->until == BoxUntil::Times) {
            for (int n = inner->times.at(m_size); n > 0; --n)
                if (!span(row, boxes, next, first, last))
                    return false;
        } else {
            const int leaving = inner->leaving.at(m_size);
            int loops = 0;
            while (true) {
                const int made = static_cast<int>(m_line.made.size());
                if (!loopsBefore(*inner, loops) || loops < leaving || made > 10000)
                    return false;
                if (loops == leaving)
                    break;
                const int before = ahead();
                if (!span(row, boxes, next, first, last) || ahead() == before)
                    return false;
            }
        }
        column = last + (rs ? 1 : -1);
    }
    return depth > 0 || movesAt(row, rs ? to : to - 1, to + (rs ? 1 : -1));
}

// The markers moved at a boundary, the row's next stitch standing at `column` or beyond.
bool NaiveNeedle::movesAt(const Row& row, int boundary, int column)
{
    int reach = 0;
    for (int c = column; reach == 0 && c >= 1 && c <= static_cast<int>(row.cells.size()); c += row.side == Side::RS ? 1 : -1)
        if (cellAt(row, c).stitch != noStitch) {
            reach = m_catalogue.stitch(cellAt(row, c).stitch).takesUp;
            break;
        }
    for (const MarkerMove& each : row.moves)
        if (each.boundary == boundary && !move(each, reach))
            return false;
    return true;
}

std::optional<NaiveLine> NaiveNeedle::work(const KnittedRow& knitted)
{
    const Row& row = *knitted.ref;
    m_line = {};
    if ((row.side == Side::RS) != m_facingRS || (!row.moves.empty() && !knitted.boxes->empty()))
        return std::nullopt;
    if (row.start.kind == StartKind::AtEdge)
        while (!m_right.empty()) {
            m_left.push_back(m_right.back());
            m_right.pop_back();
        }
    if (row.start.kind == StartKind::AfterSlipping)
        for (int n = row.start.slip.at(m_size); n > 0; --n) {
            while (!m_left.empty() && m_left.back().loop.empty()) {
                m_right.push_back(m_left.back());
                m_left.pop_back();
            }
            if (m_left.empty())
                return std::nullopt;
            m_right.push_back(m_left.back());
            m_left.pop_back();
        }
    const int columns = static_cast<int>(row.cells.size());
    const bool rs = row.side == Side::RS;
    if (!span(row, *knitted.boxes, 0, rs ? 1 : columns, rs ? columns : 1))
        return std::nullopt;
    m_line.worked = static_cast<int>(m_line.made.size());

    std::vector<int> segments{0};
    const auto count = [&](const Item& item) {
        if (item.loop.empty())
            segments.push_back(0);
        else
            ++segments.back();
    };
    if (row.finish.kind == FinishKind::BindOff)
        m_left.clear();
    else if (row.finish.kind != FinishKind::TurnEarly && ahead() > 0)
        return std::nullopt;
    std::for_each(m_right.begin(), m_right.end(), count);
    std::for_each(m_left.rbegin(), m_left.rend(), count);
    if (!rs)
        std::reverse(segments.begin(), segments.end());
    m_line.segments = segments;
    m_line.after = 0;
    for (const int segment : segments)
        m_line.after += segment;

    if (row.finish.kind == FinishKind::Slide || row.finish.kind == FinishKind::Round) {
        m_left.insert(m_left.end(), m_right.rbegin(), m_right.rend());
        m_right.clear();
    } else {
        std::swap(m_left, m_right);
        m_facingRS = !m_facingRS;
    }
    return m_line;
}

} // namespace shawlwright::tests
