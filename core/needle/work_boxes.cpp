// Stitch repeats: a number of times, or until a place.

#include "core/needle/work_row.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

void RowWork::workBox(const Span& inside)
{
    const PlannedBox& box = m_plan.boxes[static_cast<std::size_t>(inside.owner)];
    if (m_trace)
        m_trace->boxes.push_back({box.box->id, 0});
    if (box.box->until == BoxUntil::Times)
        workTimes(inside);
    else
        workUntil(inside);
}

void RowWork::onePass(Span inside, int number)
{
    inside.pass = number;
    if (m_trace)
        for (auto it = m_trace->boxes.rbegin(); it != m_trace->boxes.rend(); ++it)
            if (it->box == m_plan.boxes[static_cast<std::size_t>(inside.owner)].box->id) {
                it->times = number;
                break;
            }
    workSpan(inside);
}

void RowWork::workTimes(const Span& inside)
{
    const int times = m_plan.boxes[static_cast<std::size_t>(inside.owner)].box->times.at(m_context.size);
    for (int number = 1; number <= times && !full(); ++number)
        onePass(inside, number);
}

int RowWork::takesOf(std::size_t from, std::size_t to, std::size_t firstBox) const
{
    int takes = 0;
    for (std::size_t i = from; i < to;) {
        std::size_t box = firstBox;
        while (box < m_plan.boxes.size() &&
               !(m_plan.boxes[box].u0 <= m_plan.cells[i].u0 && m_plan.cells[i].u0 < m_plan.boxes[box].u1))
            ++box;
        if (box == m_plan.boxes.size()) {
            takes += m_plan.cells[i++].stitch->takesUp;
            continue;
        }
        if (m_plan.boxes[box].box->until != BoxUntil::Times)
            return -1;
        std::size_t end = i;
        while (end < to && m_plan.cells[end].u0 < m_plan.boxes[box].u1)
            ++end;
        const int once = takesOf(i, end, box + 1);
        if (once < 0)
            return -1;
        const long long all = static_cast<long long>(once) * m_plan.boxes[box].box->times.at(m_context.size);
        takes += static_cast<int>(std::min<long long>(all, mostCount));
        i = end;
    }
    return takes;
}

RowWork::Distance RowWork::distanceTo(const Box& box, std::size_t after) const
{
    using How = Distance::How;
    if (box.until == BoxUntil::RowEnd)
        return {How::Found, ahead()};
    if (box.until == BoxUntil::Marker) {
        for (auto it = m_pending.rbegin(); it != m_pending.rend(); ++it)
            if (it->marker == box.marker)
                return {How::Found, forward(it->position)};
    } else {
        for (auto it = m_needle.turns.rbegin(); it != m_needle.turns.rend(); ++it)
            if (it->side == m_row.side)
                return {forward(it->position) < 0 ? How::Behind : How::Found, forward(it->position)};
    }
    // The place isn't there: go on as if it were where the rest of the row comes out.
    const int rest = takesOf(after, m_plan.cells.size(), 0);
    return {How::NoPlace, std::max(0, ahead() - std::max(0, rest))};
}

std::string RowWork::placeInWords(const Box& box) const
{
    switch (box.until) {
    case BoxUntil::Marker:
        return "marker " + markerName(box.marker);
    case BoxUntil::LastTurn:
        return "the last turn";
    default:
        return "the end of the row";
    }
}

void RowWork::setAside(int loops)
{
    for (int i = 0; i < loops; ++i) {
        while (!m_pending.empty() && forward(m_pending.back().position) <= 0)
            passNearest(nullptr);
        advance(1);
    }
    m_setAside += loops;
}

void RowWork::workUntil(const Span& inside)
{
    const PlannedBox& planned = m_plan.boxes[static_cast<std::size_t>(inside.owner)];
    const Box& box = *planned.box;
    const Distance distance = distanceTo(box, inside.to);
    int leaving = box.leaving.at(m_context.size);
    if (distance.how == Distance::How::NoPlace) {
        const bool marker = box.until == BoxUntil::Marker;
        find(Severity::Error, marker ? FindingKind::MarkerNotThere : FindingKind::NoEarlierTurn, box.firstColumn,
             marker ? "repeats to marker " + markerName(box.marker) +
                          ", which isn't ahead on the needle; place it in an earlier row"
                    : std::string("counts from the last turn, but no earlier ") + (rs() ? "RS" : "WS") +
                          " row was turned early; say where to stop in another way");
        leaving = 0;
        m_toldCount = true;
    } else if (distance.how == Distance::How::Behind) {
        find(Severity::Error, FindingKind::PastLastTurn, box.firstColumn,
             "counts from the last turn, but has gone past it by " + counted(-distance.loops, "stitch") +
                 " already; stop earlier");
        m_toldCount = true;
        return;
    }
    const int once = takesOf(inside.from, inside.to, static_cast<std::size_t>(inside.owner) + 1);
    if (once < 0)
        return workUntilByNeedle(inside, leaving);
    const int room = distance.loops - leaving;
    if (room < 0) {
        find(Severity::Error, FindingKind::RepeatDoesNotFit, box.firstColumn,
             "stops " + counted(leaving, "stitch") + " before " + placeInWords(box) + ", but only " +
                 counted(distance.loops, "stitch") + (distance.loops == 1 ? " is" : " are") + " left before it");
        m_toldCount = true;
        m_missing += -room;
        m_missingColumn = box.firstColumn;
        return;
    }
    if (once == 0) {
        find(Severity::Error, FindingKind::RepeatDoesNotFit, box.firstColumn,
             "repeats stitches that take up none to " + placeInWords(box) + "; say how many times instead");
        onePass(inside, 1);
        return;
    }
    const int times = room / once;
    const int over = room % once;
    for (int number = 1; number <= times && !full(); ++number)
        onePass(inside, number);
    if (over > 0) {
        find(Severity::Error, FindingKind::RepeatDoesNotFit, box.firstColumn,
             "the stitch repeat takes up " + toText(once) + "; over the " + counted(room, "stitch") + " to " +
                 (leaving > 0 ? toText(leaving) + " before " : std::string()) + placeInWords(box) + " it fits " +
                 (times == 1 ? std::string("once") : counted(times, "time")) + " and " + toText(over) +
                 (over == 1 ? " is" : " are") + " left. " + (times > 0 ? toText(room - over) + " or " : std::string()) +
                 counted(room - over + once, "stitch") + " would fit");
        m_toldCount = true;
        setAside(over);
    }
}

void RowWork::workUntilByNeedle(const Span& inside, int leaving)
{
    const Box& box = *m_plan.boxes[static_cast<std::size_t>(inside.owner)].box;
    for (int number = 1; !full(); ++number) {
        const int room = distanceTo(box, inside.to).loops - leaving;
        const int from = m_at;
        if (room <= 0 || m_missing > 0) {
            if (room < 0 && m_missing == 0) {
                find(Severity::Error, FindingKind::RepeatDoesNotFit, box.firstColumn,
                     "the stitch repeat goes " + counted(-room, "stitch") + " past where it should stop before " +
                         placeInWords(box));
                m_toldCount = true;
            }
            return;
        }
        onePass(inside, number);
        if (m_at == from) {
            find(Severity::Error, FindingKind::RepeatDoesNotFit, box.firstColumn,
                 "repeats stitches that take up none to " + placeInWords(box) + "; say how many times instead");
            return;
        }
    }
}

} // namespace shawlwright
