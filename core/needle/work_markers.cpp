// Markers: slipped as the tip passes them, placed, removed, and moved to the other side of a yarn over.
//
// A stitch that takes up none beside a marker may be worked before or after slipping it. The chart decides: the marker
// stays at its boundary, so a yarn over drawn before that boundary is worked first. A Shift move says it outright. So it
// is with a decrease that takes up stitches on both sides of a marker: drawn before the boundary, it comes to lie there.

#include "core/needle/work_row.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

std::string RowWork::markerName(MarkerId id) const
{
    const Marker* marker = markerOf(m_context.head, id);
    return marker ? marker->name : toText(id.value);
}

bool RowWork::waitsForShift(MarkerId marker) const
{
    return std::any_of(m_plan.moves.begin(), m_plan.moves.end(), [marker](const PlannedMove& planned) {
        return planned.move->kind == MoveKind::Shift && planned.move->marker == marker;
    });
}

// Passes the nearest marker: it now lies behind the tip, at the boundary nearest to where it stood in the chart.
void RowWork::passNearest(const PlannedCell* next)
{
    MarkerAt marker = m_pending.back();
    m_pending.pop_back();
    int lowest = 0;
    int highest = m_plan.columns;
    if (rs()) {
        lowest = m_previousColumn > 0 ? m_previousColumn + m_previousWidth - 1 : 0;
        highest = next ? next->column - 1 : m_plan.columns;
    } else {
        highest = m_previousColumn > 0 ? m_previousColumn - 1 : m_plan.columns;
        lowest = next ? next->column + next->stitch->width() - 1 : 0;
    }
    if (marker.column < 0)
        marker.column = rs() ? lowest : highest;
    else
        marker.column = std::max(lowest, std::min(marker.column, highest));
    m_passed.push_back({marker, made()});
}

void RowWork::passMarkersBefore(const PlannedCell& cell)
{
    while (!m_pending.empty() && forward(m_pending.back().position) <= 0) {
        const MarkerAt& marker = m_pending.back();
        if (cell.stitch->takesUp == 0) {
            if (waitsForShift(marker.marker))
                return;
            if (marker.column >= 0 && drawnBefore(cell, marker))
                return;
        }
        passNearest(&cell);
    }
}

bool RowWork::drawnBefore(const PlannedCell& cell, const MarkerAt& marker) const
{
    return rs() ? cell.column <= marker.column : cell.column + cell.stitch->width() - 1 > marker.column;
}

void RowWork::passMarkersUnder(const PlannedCell& cell, int take, int firstMade)
{
    bool before = true; // the next marker may still lie before the stitch
    while (!m_pending.empty() && forward(m_pending.back().position) < take) {
        const MarkerAt marker = m_pending.back();
        before = before && marker.column >= 0 && !drawnBefore(cell, marker);
        find(Severity::Error, FindingKind::MarkerStraddled, cell.column,
             abbreviation(*cell.stitch, m_row.side) + " takes up stitches on both sides of marker " +
                 markerName(marker.marker) + "; remove the marker first and put it back " +
                 (before ? "before that stitch" : "after"))
            .mend = {MendKind::RemoveMarkerFirst,
                     "Remove marker " + markerName(marker.marker) + " and put it back",
                     cell.column,
                     {},
                     cell.stitch->width(),
                     {},
                     marker.marker,
                     {},
                     before};
        m_pending.pop_back();
        m_passed.push_back({marker, before ? firstMade : made()});
    }
}

void RowWork::fireMoves(const Span& span, int& cursor, int u, const PlannedCell* next)
{
    const auto ownerOf = [this](const PlannedMove& planned) {
        int owner = -1;
        for (std::size_t b = 0; b < m_plan.boxes.size(); ++b) {
            const PlannedBox& box = m_plan.boxes[b];
            const bool inside = box.u0 < planned.u && planned.u < box.u1;
            const bool edge = planned.u == box.u0 || planned.u == box.u1;
            if (inside || (edge && planned.move->reach == MoveReach::EachTime))
                owner = static_cast<int>(b);
        }
        return owner;
    };
    for (; cursor < static_cast<int>(m_plan.moves.size()); ++cursor) {
        const PlannedMove& planned = m_plan.moves[static_cast<std::size_t>(cursor)];
        if (planned.u > u)
            return;
        if (ownerOf(planned) == span.owner)
            fire(planned, span.owner >= 0, next);
    }
}

void RowWork::fire(const PlannedMove& planned, bool inBox, const PlannedCell* next)
{
    const MarkerMove& move = *planned.move;
    if (move.boundary < 0 || move.boundary > m_plan.columns)
        find(Severity::Error, FindingKind::MarkerOutside, 0,
             "marker " + markerName(move.marker) + " stands after column " + toText(move.boundary) + " of " +
                 toText(m_plan.columns) + "; move it into the chart")
            .mend = {MendKind::DeleteMarkerMove, "Take the marker out", move.boundary, {}, 0, {}, move.marker, {}};
    switch (move.kind) {
    case MoveKind::Place:
        return place(move, inBox);
    case MoveKind::Remove:
        return remove(move, next);
    case MoveKind::Shift:
        return shift(move);
    }
}

void RowWork::place(const MarkerMove& move, bool inBox)
{
    const bool cutsStitch = m_previousColumn > 0 && m_previousColumn <= move.boundary &&
                            move.boundary < m_previousColumn + m_previousWidth - 1;
    if (cutsStitch)
        find(Severity::Error, FindingKind::MarkerInYarnOver, m_previousColumn,
             "marker " + markerName(move.marker) +
                 " is placed inside one stitch, between its loops; place it before or after that stitch")
            .mend = {MendKind::DeleteMarkerMove, "Take the marker out", move.boundary, {}, 0, {}, move.marker, {}};
    const auto same = [&](const MarkerAt& marker) { return marker.marker == move.marker; };
    // A repeat places its marker each time, a hundred thousand times if it must; one that stands there from an earlier row
    // it may not place at all.
    const auto listed = [&](const std::vector<MarkerId>& all) {
        return std::find(all.begin(), all.end(), move.marker) != all.end();
    };
    if (inBox && listed(m_refused))
        return;
    const bool elsewhere =
        !(inBox && listed(m_placed)) &&
        (std::any_of(m_pending.begin(), m_pending.end(), same) ||
         std::any_of(m_behind.begin(), m_behind.end(), same) ||
         std::any_of(m_passed.begin(), m_passed.end(), [&](const Passed& p) { return same(p.marker); }));
    // Passed ones stand in the order made.
    bool here = false;
    for (auto passed = m_passed.rbegin(); passed != m_passed.rend() && passed->made == made() && !here; ++passed)
        here = same(passed->marker);
    if (here || elsewhere) {
        find(Severity::Error, FindingKind::MarkerPlacedTwice, 0,
             "marker " + markerName(move.marker) + " is placed after column " + toText(move.boundary) +
                 ", but it is on the needle already; remove it first or place another")
            .mend = {MendKind::DeleteMarkerMove, "Don't place it again", move.boundary, {}, 0, {}, move.marker, {}};
        if (elsewhere && inBox)
            m_refused.push_back(move.marker);
        return;
    }
    if (!listed(m_placed))
        m_placed.push_back(move.marker);
    m_passed.push_back({{move.marker, 0, move.boundary}, made()});
}

void RowWork::remove(const MarkerMove& move, const PlannedCell* next)
{
    const int reach = next ? std::max(1, next->stitch->takesUp) : 1;
    for (auto it = m_pending.rbegin(); it != m_pending.rend(); ++it)
        if (it->marker == move.marker && forward(it->position) < reach) {
            m_pending.erase(std::next(it).base());
            return;
        }
    for (std::size_t i = m_passed.size(); i-- > 0;)
        if (m_passed[i].marker.marker == move.marker && m_passed[i].made == made()) {
            m_passed.erase(m_passed.begin() + static_cast<std::ptrdiff_t>(i));
            return;
        }
    std::string where = "is not on the needle";
    for (const MarkerAt& marker : m_pending)
        if (marker.marker == move.marker)
            where = "stands " + counted(forward(marker.position), "stitch") + " farther on";
    for (const Passed& passed : m_passed)
        if (passed.marker.marker == move.marker)
            where = "stands " + counted(made() - passed.made, "stitch") + " back";
    find(Severity::Error, FindingKind::MarkerNotThere, 0,
         "marker " + markerName(move.marker) + " is removed after column " + toText(move.boundary) + ", but it " + where +
             "; remove it where it stands")
        .mend = {MendKind::DeleteMarkerMove, "Leave it where it is", move.boundary, {}, 0, {}, move.marker, {}};
}

void RowWork::shift(const MarkerMove& move)
{
    if (!m_pending.empty() && m_pending.back().marker == move.marker && forward(m_pending.back().position) <= 0) {
        passNearest(nullptr);
        m_passed.back().marker.column = move.boundary;
        return;
    }
    for (Passed& passed : m_passed)
        if (passed.marker.marker == move.marker && passed.made == made()) {
            passed.marker.column = move.boundary;
            return;
        }
    find(Severity::Error, FindingKind::MarkerNotThere, 0,
         "marker " + markerName(move.marker) + " is to be slipped after column " + toText(move.boundary) +
             ", but it doesn't stand beside that place; move it by removing and placing it")
        .mend = {MendKind::DeleteMarkerMove, "Leave it where it is", move.boundary, {}, 0, {}, move.marker, {}};
}

// Called when the loops of the row are in place: markers in the positions of the new needle.
void RowWork::settleMarkers()
{
    std::vector<MarkerAt> markers;
    for (MarkerAt marker : m_behind) {
        marker.position = movedPosition(marker.position);
        markers.push_back(marker);
    }
    for (const Passed& passed : m_passed) {
        MarkerAt marker = passed.marker;
        marker.position = rs() ? low() + passed.made : low() + made() - passed.made;
        markers.push_back(marker);
    }
    for (MarkerAt marker : m_pending) {
        // One that stands at the tip was not passed: the new loops lie on its near side.
        marker.position = rs() ? marker.position + low() + made() - high() : marker.position;
        markers.push_back(marker);
    }
    std::stable_sort(markers.begin(), markers.end(), [](const MarkerAt& a, const MarkerAt& b) {
        return a.position != b.position ? a.position < b.position : a.column < b.column;
    });
    m_needle.markers = std::move(markers);
}

} // namespace shawlwright
