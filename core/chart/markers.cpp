// Markers as heavy lines between cells: where they are placed, moved and removed, and lightly where they
// stand.
#include "core/chart/frame.h"

#include <algorithm>
#include <cstdlib>

namespace shawlwright::chart {

namespace {

constexpr double movedLine = 0.15, standingLine = 0.06;

struct Standing {
    MarkerId marker;
    int boundary = 0;
    int since = 0; // first row of the light line still to be drawn
};

struct Drawn {
    std::vector<Shape> lines, signs;
    std::vector<Rect> names;
};

// On the line below the row where the marker comes into sight; in the lowest row within it, for below lies the margin.
void addName(Drawn& drawn, const Frame& frame, Point at, const std::string& name)
{
    const double size = 0.36;
    const double width = std::max(0.5, textWidth(name, size) + 0.2);
    at.y = std::min(at.y, frame.area().y + frame.area().height - 0.27);
    const Rect place{at.x - width / 2, at.y - 0.25, width, 0.5};
    drawn.names.push_back(place);
    drawn.signs.push_back(Fill{roundedRectangle(place, 0.25), Ink::MarkerLine, {}});
    drawn.signs.push_back(Text{{at.x, at.y + 0.13}, name, size, Align::Centre, Ink::Paper, true});
}

void addLine(Drawn& drawn, const Frame& frame, int boundary, int firstRow, int lastRow, double width,
             bool dashed)
{
    const double x = frame.x(boundary);
    const double top = frame.top(std::min(lastRow, frame.lastRow));
    const double bottom = frame.top(std::max(firstRow, frame.firstRow) - 1);
    drawn.lines.push_back(Stroke{segment({x, bottom}, {x, top}), width, Ink::MarkerLine, dashed});
}

bool within(const Frame& frame, int boundary)
{
    return boundary >= frame.firstColumn - 1 && boundary <= frame.lastColumn;
}

class Walk {
public:
    Walk(const Frame& frame, const PatternHead& head) : m_frame(frame), m_head(head) {}

    Drawn drawn()
    {
        for (int row = 0; row <= m_frame.lastRow; ++row) {
            if (row == m_frame.firstRow)
                nameStanding();
            for (const MarkerMove& move : m_frame.row(row).moves)
                apply(move, row);
        }
        for (const Standing& standing : m_standing)
            finish(standing, m_frame.lastRow);
        return std::move(m_drawn);
    }

private:
    std::string name(MarkerId id) const
    {
        const Marker* marker = markerOf(m_head, id);
        return marker ? marker->name : std::string();
    }

    bool shown(int row, int boundary) const { return row >= m_frame.firstRow && within(m_frame, boundary); }

    // On a later page the names stand at the bottom again.
    void nameStanding()
    {
        for (const Standing& standing : m_standing)
            if (within(m_frame, standing.boundary))
                addName(m_drawn, m_frame, {m_frame.x(standing.boundary), m_frame.top(m_frame.firstRow - 1)},
                        name(standing.marker));
    }

    void finish(const Standing& standing, int lastRow)
    {
        if (lastRow >= std::max(standing.since, m_frame.firstRow) && within(m_frame, standing.boundary))
            addLine(m_drawn, m_frame, standing.boundary, standing.since, lastRow, standingLine, false);
    }

    // The marker that is meant: of this name, nearest to the boundary.
    std::vector<Standing>::iterator meant(const MarkerMove& move)
    {
        auto best = m_standing.end();
        for (auto it = m_standing.begin(); it != m_standing.end(); ++it)
            if (it->marker == move.marker &&
                (best == m_standing.end() ||
                 std::abs(it->boundary - move.boundary) < std::abs(best->boundary - move.boundary)))
                best = it;
        return best;
    }

    void apply(const MarkerMove& move, int row)
    {
        const auto known = move.kind == MoveKind::Place ? m_standing.end() : meant(move);
        int from = move.boundary;
        const bool stood = known != m_standing.end();
        if (stood) {
            from = known->boundary;
            finish(*known, row - 1);
            m_standing.erase(known);
        }
        if (move.kind != MoveKind::Remove)
            m_standing.push_back({move.marker, move.boundary, row + 1});
        if (!shown(row, move.boundary))
            return;
        const double x = m_frame.x(move.boundary), top = m_frame.top(row), bottom = m_frame.top(row - 1);
        if (move.kind == MoveKind::Remove) {
            addLine(m_drawn, m_frame, move.boundary, row, row, 0.1, true);
            const double y = (top + bottom) / 2, arm = 0.17;
            m_drawn.names.push_back({x - arm - 0.05, y - arm - 0.05, 2 * arm + 0.1, 2 * arm + 0.1});
            m_drawn.signs.push_back(
                Stroke{segment({x - arm, y - arm}, {x + arm, y + arm}), 0.09, Ink::MarkerLine, false});
            m_drawn.signs.push_back(
                Stroke{segment({x - arm, y + arm}, {x + arm, y - arm}), 0.09, Ink::MarkerLine, false});
            return;
        }
        addLine(m_drawn, m_frame, move.boundary, row, row, movedLine, false);
        if (from != move.boundary && within(m_frame, from)) // where it came from
            m_drawn.lines.push_back(Stroke{segment({m_frame.x(from), bottom}, {x, bottom}), standingLine,
                                           Ink::MarkerLine, false});
        if (move.kind == MoveKind::Place || !stood)
            addName(m_drawn, m_frame, {x, bottom}, name(move.marker));
    }

    const Frame& m_frame;
    const PatternHead& m_head;
    std::vector<Standing> m_standing;
    Drawn m_drawn;
};

} // namespace

std::vector<Shape> markerShapes(const Frame& frame, const PatternHead& head)
{
    if (frame.empty())
        return {};
    Drawn drawn = Walk(frame, head).drawn();
    drawn.lines.insert(drawn.lines.end(), drawn.signs.begin(), drawn.signs.end());
    return std::move(drawn.lines);
}

std::vector<Rect> markerNames(const Frame& frame, const PatternHead& head)
{
    return frame.empty() ? std::vector<Rect>{} : Walk(frame, head).drawn().names;
}

} // namespace shawlwright::chart
