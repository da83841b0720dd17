#include "core/needle/work_row.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

void RowWork::workSpan(const Span& span)
{
    const auto firstBox = static_cast<std::size_t>(span.owner + 1);
    const bool plain = m_plan.boxes.size() <= firstBox;
    int cursor = 0; // moves of this span already fired
    for (std::size_t i = span.from; i < span.to && !full();) {
        const PlannedCell& cell = m_plan.cells[i];
        std::size_t box = m_plan.boxes.size();
        if (!plain)
            for (std::size_t b = firstBox; b < m_plan.boxes.size() && box == m_plan.boxes.size(); ++b)
                if (m_plan.boxes[b].u0 <= cell.u0 && cell.u0 < m_plan.boxes[b].u1)
                    box = b;
        if (box == m_plan.boxes.size()) {
            if (!m_plan.moves.empty())
                fireMoves(span, cursor, cell.u0, &cell);
            workCell(cell, span.pass);
            ++i;
            continue;
        }
        if (!m_plan.moves.empty())
            fireMoves(span, cursor, m_plan.boxes[box].u0, &cell);
        std::size_t end = i;
        while (end < span.to && m_plan.cells[end].u0 < m_plan.boxes[box].u1)
            ++end;
        workBox({i, end, static_cast<int>(box), 0});
        i = end;
    }
    if (!m_plan.moves.empty()) {
        const int last = span.owner < 0 ? m_plan.columns + mostColumns : m_plan.boxes[static_cast<std::size_t>(span.owner)].u1;
        fireMoves(span, cursor, last, nullptr);
    }
    if (full() && !m_tooMany) {
        m_tooMany = true;
        find(Severity::Error, FindingKind::TooManyLoops, m_previousColumn,
             "works more than " + toText(mostSteps) + " stitches; work its repeats less often");
        m_toldCount = true;
    }
}

void RowWork::advance(int loops)
{
    m_at += rs() ? loops : -loops;
    while (!m_watched.empty() && forward(m_watched.back()) <= 0) {
        m_crossings.emplace_back(m_watched.back(), made());
        m_watched.pop_back();
    }
}

void RowWork::workCell(const PlannedCell& cell, int pass)
{
    const Stitch& stitch = *cell.stitch;
    const int there = ahead();
    int take = stitch.takesUp;
    m_steps += 1 + stitch.leaves;
    if (!m_pending.empty() && forward(m_pending.back().position) <= take)
        passMarkersBefore(cell);
    const bool tooFew = take > there;
    if (tooFew) {
        if (m_missing == 0)
            m_missingColumn = cell.column;
        m_missing += take - there;
        take = there;
    }
    const bool closes = checkTaken(cell, take);
    if (m_plan.boxes.empty() && take == 1)
        followDrift(cell);
    if (m_previousSingle)
        followColumn(stitch);
    const int firstMade = made();
    makeLoops(cell, take, tooFew);
    if (m_trace)
        m_trace->cells.push_back({cell.column, rs() ? m_at : m_at - take, take, firstMade, made() - firstMade, pass, closes});
    if (!m_pending.empty() && forward(m_pending.back().position) < take)
        passMarkersUnder(cell, take, firstMade);
    advance(take);
    m_previousColumn = cell.column;
    m_previousWidth = stitch.width();
}

namespace {

Face faceOf(const Stitch& stitch, int part)
{
    if (stitch.heads.empty())
        return stitch.face;
    return stitch.heads[static_cast<std::size_t>(part)] == HeadKind::Purl ? Face::Purl : Face::Knit;
}

LoopKind kindOf(const Stitch& stitch, int part)
{
    if (stitch.manner == Manner::CastOn)
        return stitch.drawing == Drawing::Cup ? LoopKind::PickedUp : LoopKind::CastOn;
    const bool over = stitch.heads.empty() ? stitch.family == Family::YarnOver && stitch.takesUp == 0
                                           : stitch.heads[static_cast<std::size_t>(part)] == HeadKind::YarnOver;
    return over ? LoopKind::YarnOver : LoopKind::Plain;
}

} // namespace

void RowWork::makeLoops(const PlannedCell& cell, int take, bool madeUp)
{
    const Stitch& stitch = *cell.stitch;
    Loop loop;
    loop.madeIn = m_row.id;
    loop.stitch = stitch.id;
    loop.yarn = cell.yarn;
    if (madeUp)
        loop.flags = MadeUp;
    const bool passes = (stitch.manner == Manner::Slipped || stitch.manner == Manner::PairMade ||
                         stitch.manner == Manner::DoubleTurn) && stitch.leaves == take;
    for (int i = 0; i < stitch.leaves; ++i) {
        const int part = rs() ? i : stitch.leaves - 1 - i;
        Loop next = loop;
        if (passes) {
            next = loopAhead(i);
            next.madeIn = m_row.id;
            next.stitch = stitch.id;
            next.flags = static_cast<std::uint16_t>(next.flags | Slipped);
            if (stitch.manner == Manner::PairMade) {
                next.flags = static_cast<std::uint16_t>(next.flags | BriochePair);
                next.wrapYarn = cell.yarn;
            } else if (stitch.manner == Manner::DoubleTurn) {
                next.flags = static_cast<std::uint16_t>((next.flags & ~TurnLoop) | Doubled);
                next.method = TurnMethod::DoubleStitch;
            }
        } else {
            next.kind = kindOf(stitch, part);
            next.face = faceOf(stitch, part);
            if (m_previousSingle && !madeUp)
                next.under = m_previousTaken.face;
            m_line.perYarn.resize(std::max(m_line.perYarn.size(), static_cast<std::size_t>(cell.yarn.value)));
            if (cell.yarn.value > 0)
                ++m_line.perYarn[static_cast<std::size_t>(cell.yarn.value) - 1];
        }
        next.part = static_cast<std::uint8_t>(part);
        next.column = static_cast<std::int16_t>(cell.column + (stitch.width() > 1 ? std::min(part, stitch.width() - 1) : 0));
        m_made.push_back(next);
    }
}

bool RowWork::checkTaken(const PlannedCell& cell, int take)
{
    const Stitch& stitch = *cell.stitch;
    bool closes = false;
    bool anyPair = false;
    for (int i = 0; i < take; ++i) {
        const Loop& loop = loopAhead(i);
        if (loop.flags == 0 && loop.kind != LoopKind::YarnOver)
            continue;
        const bool worked = stitch.manner == Manner::Worked || stitch.manner == Manner::PairWorked ||
                            stitch.manner == Manner::BoundOff;
        closes = closes || (worked && (loop.flags & (TurnLoop | Doubled)) != 0);
        if ((loop.flags & BriochePair) != 0) {
            anyPair = true;
            const bool twoColours = loop.wrapYarn != loop.yarn;
            if (stitch.manner == Manner::PairWorked && take == 1 && twoColours && cell.yarn != loop.yarn) {
                const Yarn* own = yarnOf(m_context.head, loop.yarn);
                find(Severity::Error, FindingKind::WrongColourWorked, cell.column,
                     "works a brioche stitch of " + (own ? own->code : std::string("the other yarn")) +
                         " with the other yarn; slip it with a yarn over and work the columns of this row's own yarn");
            }
        }
        if (loop.kind == LoopKind::YarnOver && take == 1 && stitch.leaves == 1 && stitch.manner == Manner::Worked)
            checkDoubleYarnOver(cell, loop);
    }
    if (anyPair && stitch.manner == Manner::Worked)
        find(Severity::Error, FindingKind::PairWorkedAsTwo, cell.column,
             "works a brioche stitch with " + abbreviation(stitch, m_row.side) +
                 ", as if its yarn over were a stitch of its own; work both together with a brioche stitch")
            .mend = {MendKind::ReplaceCell, stitch.face == Face::Purl ? "Work it as brioche purl" : "Work it as brioche knit",
                     cell.column, {}, 0, {}, {}, stitch.face == Face::Purl ? "brp" : "brk"};
    if (stitch.manner == Manner::PairWorked && take > 0 && !anyPair && stitch.takesUp == take)
        find(Severity::Warning, FindingKind::NotAPair, cell.column,
             "works a brioche stitch where the stitch below has no yarn over; slip it with a yarn over in the row before");
    m_previousSingle = take == 1 && stitch.leaves == 1 && stitch.manner == Manner::Worked;
    if (m_previousSingle) {
        m_previousTaken = loopAhead(0);
        m_previousFace = faceOf(stitch, 0);
    }
    return closes;
}

void RowWork::checkDoubleYarnOver(const PlannedCell& cell, const Loop& loop)
{
    const int step = rs() ? 1 : -1;
    const Loop& before = m_previousTaken;
    const bool neighbours = m_previousSingle && before.kind == LoopKind::YarnOver && before.madeIn == loop.madeIn &&
                            before.stitch == loop.stitch && loop.part == before.part + step &&
                            loop.column == before.column + step;
    if (!neighbours || m_previousFace != faceOf(*cell.stitch, 0))
        return;
    const bool knit = (m_previousFace == Face::Knit) == rs();
    find(Severity::Warning, FindingKind::DoubleYarnOverClosed, cell.column,
         std::string("both loops of a double yarn over are ") + (knit ? "knit" : "purled") +
             "; the hole closes on one side. Knit one of them and purl the other")
        .mend = {MendKind::ReplaceCell, knit ? "Purl the second loop" : "Knit the second loop", cell.column, {}, 0, {}, {},
                 m_previousFace == Face::Knit ? "p" : "k"};
}

void RowWork::followDrift(const PlannedCell& cell)
{
    const Stitch& stitch = *cell.stitch;
    const Loop& below = loopAhead(0);
    if (stitch.leaves != 1 || below.column <= 0) {
        m_driftMixed = true;
        return;
    }
    const int drift = cell.column - below.column;
    m_driftMixed = m_driftMixed || (m_driftCells > 0 && drift != m_drift);
    m_drift = drift;
    ++m_driftCells;
}

} // namespace shawlwright
