#include "core/needle/work_row.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

void RowWork::finish()
{
    const int left = ahead();
    switch (m_row.finish.kind) {
    case FinishKind::TurnEarly:
        turnEarly();
        break;
    case FinishKind::BindOff:
        m_pending.clear(); // markers fall off the needle with the last stitches
        advance(left);
        break;
    default:
        break;
    }
    tellCounts();
    checkDrift();
    checkColumns();
    splice();
}

void RowWork::turnEarly()
{
    const int left = ahead();
    if (m_at == m_start && made() == 0)
        find(Severity::Warning, FindingKind::NothingBetweenTurns, 0,
             "turns without having worked a stitch; no stitches are left between the turns. Turn earlier in an earlier row");
    if (left == 0 && m_toldCount)
        return;
    if (left == 0) {
        find(Severity::Warning, FindingKind::TurnAtEdge, 0,
             "turns early, but no stitch is left to rest; make it a plain turn, or stop sooner");
        return;
    }
    const TurnMethod method = m_row.finish.method;
    if (method != TurnMethod::Plain && method != TurnMethod::DoubleStitch) {
        Loop& next = m_needle.loops[static_cast<std::size_t>(rs() ? m_at : m_at - 1)];
        next.flags = static_cast<std::uint16_t>(next.flags | TurnLoop);
        next.method = method;
    }
}

// No row stands before it in which something could be mended.
bool RowWork::isFirst() const
{
    return std::all_of(m_needle.loops.begin(), m_needle.loops.end(), [](const Loop& loop) { return loop.madeIn == RowId{}; });
}

// What the row wanted against what was there; then the needle goes on as if it had come out.
void RowWork::tellCounts()
{
    const bool mustEmpty = m_row.finish.kind == FinishKind::Turn || m_row.finish.kind == FinishKind::Slide ||
                           m_row.finish.kind == FinishKind::Round;
    const int left = mustEmpty ? ahead() : 0;
    if (!m_toldCount && (m_missing > 0 || left > 0)) {
        const int wanted = m_available - left + m_missing;
        if (!tellFit(wanted, m_available)) {
            if (m_missing > 0)
                find(Severity::Error, FindingKind::TooFewStitches, m_missingColumn,
                     "needs " + counted(wanted, "stitch") + ", " + toText(m_available) +
                         (m_available == 1 ? " is" : " are") + " there: " + toText(m_missing) +
                         " too few; take out stitches here or " +
                         (isFirst() ? "cast on " + toText(m_missing) + " more" : "add them in a row before"));
            else
                find(Severity::Error, FindingKind::StitchesLeftOver, 0,
                     "works " + toText(wanted) + " of " + counted(m_available, "stitch") + ": " + toText(left) +
                         (left == 1 ? " is" : " are") + " left over; work " + (left == 1 ? "it" : "them") +
                         ", or turn early if " + (left == 1 ? "it is" : "they are") + " to rest");
        }
    }
    if (left > 0)
        setAside(left);
    m_line.madeUp = m_missing - m_setAside;
    settle(m_needle.owed, m_line, m_row.id);
}

// A row with one counted repeat: says how often it would fit.
bool RowWork::tellFit(int wanted, int there)
{
    int found = -1;
    for (std::size_t b = 0; b < m_plan.boxes.size(); ++b) {
        bool outer = m_plan.boxes[b].box->until == BoxUntil::Times;
        for (std::size_t a = 0; a < b; ++a)
            outer = outer && !(m_plan.boxes[a].u0 <= m_plan.boxes[b].u0 && m_plan.boxes[b].u1 <= m_plan.boxes[a].u1);
        if (!outer)
            continue;
        if (found >= 0)
            return false;
        found = static_cast<int>(b);
    }
    if (found < 0)
        return false;
    const PlannedBox& planned = m_plan.boxes[static_cast<std::size_t>(found)];
    const auto inside = [&](const PlannedCell& cell) { return planned.u0 <= cell.u0 && cell.u0 < planned.u1; };
    const auto first = std::find_if(m_plan.cells.begin(), m_plan.cells.end(), inside);
    const auto last = std::find_if_not(first, m_plan.cells.end(), inside);
    const int once = takesOf(static_cast<std::size_t>(first - m_plan.cells.begin()),
                             static_cast<std::size_t>(last - m_plan.cells.begin()), static_cast<std::size_t>(found) + 1);
    if (once <= 0)
        return false;
    const int times = planned.box->times.at(m_context.size);
    const int beside = wanted - once * times;
    const int room = there - beside;
    const int fits = room >= 0 ? room / once : 0;
    const int over = room - fits * once;
    const auto often = [](int n) { return n == 1 ? std::string("once") : counted(n, "time"); };
    Finding& finding = find(Severity::Error, FindingKind::RepeatDoesNotFit, planned.box->firstColumn,
         "the stitch repeat of " + toText(once) + " worked " + often(times) + " needs " + counted(wanted, "stitch") +
             " with those beside it, " + toText(there) + (there == 1 ? " is" : " are") + " there; " +
             (room < 0 ? "those beside it alone are too many"
                       : "it fits " + often(fits) + (over > 0 ? " with " + toText(over) + " left. " +
                                     toText(there - over) + " or " + toText(there - over + once) +
                                     " stitches would fit"
                                                              : std::string())));
    if (over == 0 && fits > 0 && planned.box->times.single())
        finding.mend = {MendKind::SetBoxTimes, "Work the repeat " + often(fits), 0, {}, fits, planned.box->id, {}, {}};
    return true;
}

void RowWork::checkDrift()
{
    const bool plain = m_plan.boxes.empty() && !m_driftMixed && m_drift != 0 &&
                       m_driftCells == static_cast<int>(m_plan.cells.size()) && m_driftCells >= 3;
    if (!plain || m_context.startsSection || m_missing > 0 || m_setAside > 0)
        return;
    const int by = m_drift > 0 ? m_drift : -m_drift;
    const std::string way = m_drift > 0 ? "left" : "right";
    const std::string back = m_drift > 0 ? "right" : "left";
    find(Severity::Note, FindingKind::RowDrifts, 0,
         "stands " + counted(by, "column") + " to the " + way + " of the stitches it is worked into; move it to the " +
             back + " so that stitches stand over each other")
        .mend = {MendKind::ShiftRow, "Move the row " + counted(by, "column") + " to the " + back, 0, {}, -m_drift, {}, {}, {}};
}

int RowWork::movedPosition(int position) const
{
    if (position <= low() && !(position == low() && !rs() && position == high()))
        return position;
    if (position >= high())
        return position + made() - (high() - low());
    for (const auto& [at, madeThen] : m_crossings)
        if (at == position)
            return rs() ? low() + madeThen : low() + made() - madeThen;
    return low() + made();
}

void RowWork::splice()
{
    const int from = low();
    const int to = high();
    const int before = m_needle.count();
    m_line.firstTaken = from;
    m_line.lastTaken = to;
    m_line.restingRight = from;
    m_line.restingLeft = before - to;

    settleTurnsAndYarns();
    settleMarkers();
    if (from == 0 && to == before) {
        if (!rs())
            std::reverse(m_made.begin(), m_made.end());
        m_needle.loops = std::move(m_made);
        m_line.worked = m_needle.count();
    } else {
        m_line.worked = made();
        std::vector<Loop> loops;
        loops.reserve(static_cast<std::size_t>(before - (to - from) + made()));
        const auto begin = m_needle.loops.begin();
        loops.insert(loops.end(), begin, begin + from);
        if (rs())
            loops.insert(loops.end(), m_made.begin(), m_made.end());
        else
            loops.insert(loops.end(), m_made.rbegin(), m_made.rend());
        loops.insert(loops.end(), begin + to, m_needle.loops.end());
        m_needle.loops = std::move(loops);
    }
    if (m_trace)
        for (WorkedCell& cell : m_trace->cells)
            cell.firstMade = rs() ? from + cell.firstMade : from + m_line.worked - cell.firstMade - cell.leaves;
    m_line.resting = m_needle.count() - m_line.worked;
}

void RowWork::settleTurnsAndYarns()
{
    const int from = low();
    const int to = high();
    const int tip = rs() ? from + made() : from;
    const int all = m_needle.count() - (to - from) + made();
    const bool early = m_row.finish.kind == FinishKind::TurnEarly && ahead() > 0;

    std::vector<TurnAt> turns;
    for (TurnAt turn : m_needle.turns) {
        const bool crossed = from < turn.position && turn.position < to;
        const bool boundOff = m_row.finish.kind == FinishKind::BindOff && from <= turn.position && turn.position <= to;
        if (crossed || boundOff)
            continue;
        turn.position = movedPosition(turn.position);
        if (!(early && turn.side == m_row.side && turn.position == tip))
            turns.push_back(turn);
    }
    if (early)
        turns.push_back({tip, m_row.side, m_row.finish.method, m_row.id});

    std::vector<YarnAt> yarns;
    for (YarnAt yarn : m_needle.yarns) {
        if (yarn.yarn == m_row.yarn)
            continue;
        yarn.position = movedPosition(yarn.position);
        yarns.push_back(yarn);
    }
    if (!m_row.finish.breaksYarn && m_row.yarn != YarnId{})
        yarns.push_back({m_row.yarn, tip});
    std::sort(yarns.begin(), yarns.end(), [](const YarnAt& a, const YarnAt& b) { return a.yarn < b.yarn; });

    m_needle.turns = std::move(turns);
    m_needle.yarns = std::move(yarns);
    m_needle.tip = tip;
    if (m_row.finish.kind == FinishKind::Slide || m_row.finish.kind == FinishKind::Round)
        m_needle.tip = rs() ? 0 : all;
    m_needle.lastSide = m_row.side;
    m_needle.lastFinish = m_row.finish.kind;
    m_needle.lastMethod = early ? m_row.finish.method : TurnMethod::Plain;
    m_needle.started = true;
}

void RowWork::fillLine(int before)
{
    m_line.before = before;
    m_line.after = m_needle.count();
    m_line.segments = segments(m_needle);
    m_line.betweenTurns = betweenTurns(m_needle);
    m_line.perYarn.resize(std::max(m_line.perYarn.size(), m_context.head.yarns.size()));
    int purl = 0;
    for (int i = m_line.restingRight; i < m_line.restingRight + m_line.worked; ++i)
        purl += m_needle.loops[static_cast<std::size_t>(i)].face == Face::Purl ? 1 : 0;
    m_line.showsPurl = 2 * purl > m_line.worked;
}

void RowWork::checkStated()
{
    if (!m_row.stated)
        return;
    const int stated = m_row.stated->at(m_context.size);
    if (stated == m_line.after)
        return;
    find(Severity::Error, FindingKind::StatedCountDiffers, 0,
         "says " + counted(stated, "stitch") + ", but the needle has " + toText(m_line.after) +
             " after it; mend the count or the row")
        .mend = {MendKind::SetStated, "Say " + toText(m_line.after), 0, {}, m_line.after, {}, {}, {}};
}

} // namespace shawlwright
