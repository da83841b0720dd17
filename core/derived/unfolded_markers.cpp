#include "core/derived/unfolded_markers.h"

#include <algorithm>
#include <map>

namespace shawlwright {
namespace {

// The row's cells in the order worked, as places between them: place i lies before cell i.
class Places {
public:
    Places(std::span<const UnfoldedCell> cells, Side side) : m_rs(side == Side::RS), m_cells(cells.begin(), cells.end())
    {
        if (!m_rs)
            std::reverse(m_cells.begin(), m_cells.end());
        m_taken.push_back(0);
        m_made.push_back(0);
        for (const UnfoldedCell& cell : m_cells) {
            m_taken.push_back(m_taken.back() + cell.takesUp);
            m_made.push_back(m_made.back() + cell.leaves);
        }
    }

    int count() const { return static_cast<int>(m_taken.size()); }
    int taken(int place) const { return m_taken[static_cast<std::size_t>(place)]; }
    int made(int place) const { return m_made[static_cast<std::size_t>(place)]; }

    // The boundaries beside a place, in the direction of work: after the cell before it, before the cell after it.
    int afterBefore(int place) const
    {
        if (place == 0)
            return beforeNext(0);
        const UnfoldedCell& cell = m_cells[static_cast<std::size_t>(place) - 1];
        return m_rs ? cell.column + cell.width - 1 : cell.column - 1;
    }
    int beforeNext(int place) const
    {
        if (m_cells.empty())
            return 0;
        if (place + 1 == count())
            return afterBefore(place);
        const UnfoldedCell& cell = m_cells[static_cast<std::size_t>(place)];
        return m_rs ? cell.column - 1 : cell.column + cell.width - 1;
    }
    // Before the first stitch and after the last one there is room as far as the chart goes.
    int nearest(int place, int boundary) const
    {
        auto [low, high] = std::minmax({afterBefore(place), beforeNext(place)});
        if (place == 0)
            (m_rs ? low : high) = m_rs ? -farOut : farOut;
        if (place + 1 == count())
            (m_rs ? high : low) = m_rs ? farOut : -farOut;
        return std::clamp(boundary, low, high);
    }
    int outside(int place) const { return place > 0 ? afterBefore(place) : m_rs ? -farOut : farOut; }

    // First place with so many taken and made; -1: none.
    int at(int takenWanted, int madeWanted) const
    {
        for (int place = 0; place < count(); ++place)
            if (taken(place) == takenWanted && made(place) == madeWanted)
                return place;
        return -1;
    }
    int firstMaking(int wanted) const
    {
        return static_cast<int>(std::lower_bound(m_made.begin(), m_made.end(), wanted) - m_made.begin());
    }
    int lastBeforeTaking(int wanted) const // what lies after `wanted` loops is not taken yet
    {
        int place = static_cast<int>(std::upper_bound(m_taken.begin(), m_taken.end(), wanted) - m_taken.begin()) - 1;
        while (place > 0 && taken(place - 1) == taken(place))
            --place;
        return std::max(0, place);
    }

private:
    static constexpr int farOut = 1000000;
    bool m_rs;
    std::vector<UnfoldedCell> m_cells;
    std::vector<int> m_taken, m_made;
};

struct Found {
    MarkerMove move;
    int place = 0;
};

} // namespace

std::vector<MarkerMove> unfoldedMoves(std::span<const UnfoldedCell> cells, Side side, const Needle& before, Needle& after,
                                      const LedgerLine& line, bool bindsOff)
{
    const bool rs = side == Side::RS;
    const Places places(cells, side);
    const int madeEnd = after.count() - line.restingLeft;
    // Loops that lie between where the row began and the marker, before and after it.
    const auto takenBefore = [&](int position) { return rs ? position - line.firstTaken : line.lastTaken - position; };
    const auto madeBefore = [&](int position) { return rs ? position - line.restingRight : madeEnd - position; };
    const int taken = line.lastTaken - line.firstTaken;

    std::vector<Found> found;
    std::vector<bool> known(after.markers.size(), false);
    const auto place = [&](MarkerId marker, int at, int boundary, MoveKind kind) {
        found.push_back({MarkerMove{marker, boundary, kind, MoveReach::Once, {}}, at});
    };
    std::vector<MarkerAt> met = before.markers; // in the order the row comes to them
    if (!rs)
        std::reverse(met.begin(), met.end());
    for (const MarkerAt& was : met) {
        const int t = takenBefore(was.position);
        const auto same = [&](std::size_t i) { return !known[i] && after.markers[i].marker == was.marker; };
        std::size_t at = after.markers.size();
        int passedAt = -1;
        for (std::size_t i = 0; i < after.markers.size() && at == after.markers.size(); ++i) {
            if (!same(i))
                continue;
            const int is = after.markers[i].position;
            const bool behind = rs ? was.position <= line.firstTaken && is == was.position
                                   : was.position >= line.lastTaken && is - after.count() == was.position - before.count();
            const bool ahead = rs ? was.position >= line.lastTaken && is - after.count() == was.position - before.count()
                                  : was.position <= line.firstTaken && is == was.position;
            passedAt = t >= 0 && t <= taken ? places.at(t, madeBefore(is)) : -1;
            if (passedAt >= 0 || behind || ahead)
                at = i;
        }
        if (at == after.markers.size()) {
            if (!bindsOff || t < taken) {
                const int gone = places.lastBeforeTaking(std::clamp(t, 0, taken));
                place(was.marker, gone, places.nearest(gone, was.column), MoveKind::Remove);
            }
            continue;
        }
        known[at] = true;
        after.markers[at].column = was.column;
        if (passedAt < 0)
            continue;
        // Where it would be slipped if nothing were said: at its own boundary, or at once where it has none.
        const bool unknown = was.column == noBoundary;
        const bool atOnce = passedAt == 0 || places.taken(passedAt - 1) < places.taken(passedAt);
        if (unknown && atOnce && passedAt + 1 == places.count())
            continue; // the row ends before it
        const int stays = unknown ? places.outside(passedAt) : places.nearest(passedAt, was.column);
        after.markers[at].column = stays;
        if (unknown ? !atOnce : stays != was.column)
            place(was.marker, passedAt, stays, MoveKind::Shift);
    }
    for (std::size_t i = 0; i < after.markers.size(); ++i)
        if (!known[i]) {
            const int at = std::min(places.firstMaking(madeBefore(after.markers[i].position)), places.count() - 1);
            after.markers[i].column = places.afterBefore(at);
            place(after.markers[i].marker, at, after.markers[i].column, MoveKind::Place);
        }
    std::stable_sort(found.begin(), found.end(), [](const Found& a, const Found& b) {
        return a.place != b.place ? a.place < b.place : a.move.kind == MoveKind::Remove && b.move.kind != MoveKind::Remove;
    });
    std::vector<MarkerMove> moves;
    for (Found& one : found)
        moves.push_back(std::move(one.move));
    return moves;
}

} // namespace shawlwright
