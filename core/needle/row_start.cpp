#include "core/needle/work_row.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

RowWork::RowWork(Needle& needle, const Row& row, const RowContext& context, Trace* trace)
    : m_needle(needle), m_row(row), m_context(context), m_trace(trace), m_plan(planOf(row, context))
{
    m_line.side = row.side;
    m_line.yarn = row.yarn;
}

LedgerLine workRow(Needle& needle, const Row& row, const RowContext& context, Trace* trace)
{
    return RowWork(needle, row, context, trace).work();
}

LedgerLine RowWork::work()
{
    const int before = m_needle.count();
    if (m_context.startsSection) {
        // Another section's columns mean nothing in this one's chart.
        for (Loop& loop : m_needle.loops)
            loop.column = 0;
        for (MarkerAt& marker : m_needle.markers)
            marker.column = -1;
    }
    const bool nothing = m_plan.cells.empty() && m_row.finish.kind != FinishKind::BindOff &&
                         m_row.start.kind != StartKind::AfterSlipping;
    if (nothing) {
        find(Severity::Note, FindingKind::EmptyRow, 0, "nothing is painted yet");
        passOver();
        m_line.before = m_line.after = m_line.resting = before;
        m_line.segments = segments(m_needle);
        m_line.betweenTurns = betweenTurns(m_needle);
        m_line.perYarn.assign(m_context.head.yarns.size(), 0);
        settle(m_needle.owed, m_line, m_row.id);
        return std::move(m_line);
    }
    start();
    workSpan({0, m_plan.cells.size(), -1, 0});
    finish();
    fillLine(before);
    checkStated();
    return std::move(m_line);
}

// A row that is still to be painted takes the work to its other end, so that the row after it begins where it
// will.
void RowWork::passOver()
{
    if (m_row.finish.kind != FinishKind::Turn || m_row.side == m_needle.lastSide ||
        m_needle.lastFinish == FinishKind::Slide || m_needle.lastFinish == FinishKind::Round)
        return;
    const int end = rs() ? m_needle.count() : 0;
    for (YarnAt& yarn : m_needle.yarns)
        if (yarn.yarn == m_row.yarn && yarn.position == m_needle.tip)
            yarn.position = end;
    m_needle.tip = end;
    m_needle.lastSide = m_row.side;
    m_needle.lastFinish = FinishKind::Turn;
    m_needle.started = true;
}

Finding& RowWork::find(Severity severity, FindingKind kind, int column, std::string message)
{
    Finding finding;
    finding.severity = severity;
    finding.kind = kind;
    finding.column = column;
    finding.message = std::move(message);
    m_line.findings.push_back(std::move(finding));
    return m_line.findings.back();
}

// Two rows of one side in a turn's place: with another yarn that waits at this edge a slide was meant.
bool RowWork::slideWasMeant(int edge) const
{
    return m_needle.started && m_needle.lastFinish == FinishKind::Turn &&
           std::any_of(m_needle.yarns.begin(), m_needle.yarns.end(),
                       [&](const YarnAt& at) { return at.yarn == m_row.yarn && at.position == edge; });
}

// Where the row goes on if nothing else is said, with a finding where that can't be on this side.
int RowWork::continuedTip()
{
    const int edge = rs() ? 0 : m_needle.count();
    const FinishKind last = m_needle.lastFinish;
    const bool sameSide = m_row.side == m_needle.lastSide;
    if (m_row.start.kind == StartKind::AtEdge)
        return edge;
    if (last == FinishKind::Round)
        return edge;
    if (last == FinishKind::Slide) {
        if (!sameSide) {
            find(Severity::Error, FindingKind::SameSideTwice, 0,
                 std::string("follows a slide, after which the ") + (rs() ? "wrong" : "right") +
                     " side still faces; make this a " + (rs() ? "WS" : "RS") +
                     " row or turn instead of sliding")
                .mend = {MendKind::SetSide,
                         rs() ? "Make it a WS row" : "Make it an RS row",
                         0,
                         {},
                         rs() ? 1 : 0,
                         {},
                         {},
                         {}};
            return edge;
        }
        return m_needle.tip;
    }
    if (sameSide) {
        const std::string side = rs() ? "an RS" : "a WS";
        Finding& finding =
            find(Severity::Error, FindingKind::SameSideTwice, 0,
                 m_needle.started
                     ? "is " + side + " row after " + side +
                           " row; let the row before end with a slide, or make this one the other side"
                     : "is " + side + " row, but after the cast-on the other side faces; change the " +
                           "side of the row or of the cast-on");
        finding.mend = {MendKind::SetSide,
                        rs() ? "Make it a WS row" : "Make it an RS row",
                        0,
                        {},
                        rs() ? 1 : 0,
                        {},
                        {},
                        {}};
        if (slideWasMeant(edge))
            finding.mend = {
                MendKind::SlideBefore, "Let the row before end with a slide", 0, {}, 0, {}, {}, {}};
        return edge;
    }
    return m_needle.tip;
}

void RowWork::start()
{
    m_at = continuedTip();
    if (m_row.start.kind == StartKind::AfterSlipping) {
        const int wanted = m_row.start.slip.at(m_context.size);
        const int there = ahead();
        if (wanted > there) {
            find(Severity::Error, FindingKind::TooFewStitches, 0,
                 "slips " + counted(wanted, "stitch") + " to the right needle first, but only " +
                     toText(there) + (there == 1 ? " is" : " are") + " ahead; slip fewer");
            m_toldCount = true;
        }
        m_at += (rs() ? 1 : -1) * std::min(wanted, there);
    }
    m_start = m_at;
    m_available = ahead();
    m_made.reserve(static_cast<std::size_t>(m_available) + 16);

    for (const MarkerAt& marker : m_needle.markers)
        (forward(marker.position) >= 0 ? m_pending : m_behind).push_back(marker);
    const auto fartherFirst = [this](int a, int b) { return forward(a) > forward(b); };
    if (rs())
        std::reverse(m_pending.begin(), m_pending.end()); // the needle holds them right edge first

    for (const TurnAt& turn : m_needle.turns)
        if (forward(turn.position) > 0)
            m_watched.push_back(turn.position);
    for (const YarnAt& yarn : m_needle.yarns)
        if (forward(yarn.position) > 0)
            m_watched.push_back(yarn.position);
    std::sort(m_watched.begin(), m_watched.end(), fartherFirst);

    checkYarn();
    const bool doubleDue = m_needle.lastFinish == FinishKind::TurnEarly &&
                           m_needle.lastMethod == TurnMethod::DoubleStitch &&
                           m_row.start.kind == StartKind::Continue;
    const bool doubled = !m_plan.cells.empty() && m_plan.cells.front().stitch->manner == Manner::DoubleTurn;
    if (doubleDue && !doubled && !m_plan.cells.empty())
        find(Severity::Warning, FindingKind::DoubleStitchMissing, m_plan.cells.front().column,
             "follows a double-stitch turn, so its first stitch is made the double stitch (DS)")
            .mend = {
            MendKind::ReplaceCell, "Begin with DS", m_plan.cells.front().column, {}, 0, {}, {}, "ds"};
    if (doubled && !doubleDue)
        find(Severity::Warning, FindingKind::DoubleStitchWithoutTurn, m_plan.cells.front().column,
             "begins with a double stitch, but the row before was not turned early with that method");
}

std::string RowWork::positionInWords(int position) const
{
    if (position <= 0)
        return "at the right edge";
    if (position >= m_needle.count())
        return "at the left edge";
    return "after stitch " + toText(position) + " from the right edge";
}

void RowWork::checkYarn()
{
    const YarnId yarn = m_row.yarn;
    if (yarn == YarnId{})
        return;
    const auto hangs = std::find_if(m_needle.yarns.begin(), m_needle.yarns.end(),
                                    [yarn](const YarnAt& at) { return at.yarn == yarn; });
    const Yarn* named = yarnOf(m_context.head, yarn);
    const std::string name = named ? named->code : "the yarn";
    const bool meet = hangs != m_needle.yarns.end() && m_needle.lastFinish == FinishKind::Round &&
                      (hangs->position == 0 || hangs->position == m_needle.count());
    const bool here = hangs != m_needle.yarns.end() && (hangs->position == m_start || meet);
    if (m_row.start.joins) {
        if (here && m_needle.started)
            find(Severity::Note, FindingKind::YarnJoinedAgain, 0,
                 "joins " + name + ", which hangs here already, " + positionInWords(hangs->position) +
                     "; go on with it, or break it in the row before")
                .mend = {MendKind::CarryYarn, "Go on with " + name, 0, {}, 0, {}, {}, {}};
        return;
    }
    const Mend join{MendKind::JoinYarn, "Join " + name + " here", 0, {}, 0, {}, {}, {}};
    if (hangs == m_needle.yarns.end()) {
        find(Severity::Warning, FindingKind::YarnNotJoined, 0,
             "is worked with " + name + ", which isn't joined yet; join it at the start of the row")
            .mend = join;
        return;
    }
    if (!here)
        find(Severity::Error, FindingKind::YarnElsewhere, 0,
             "starts " + positionInWords(m_start) + ", but " + name + " hangs " +
                 positionInWords(hangs->position) +
                 "; work a row with it to here, start where it hangs, or join it anew")
            .mend = join;
}

} // namespace shawlwright
