#include "core/derived/rows_on_needle.h"

#include "core/base/text.h"
#include "core/derived/stays_put.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"
#include "core/wording/reader/layout.h"

#include <algorithm>

namespace shawlwright {

bool nothingOn(const Row& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const Cell& cell) { return cell.stitch == noStitch; });
}

bool worksTurningStitch(TurnMethod method)
{
    return method == TurnMethod::DoubleStitch || method == TurnMethod::PinnedYarn;
}

RowsOnNeedle::RowsOnNeedle(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                           std::size_t shown, SectionId section, int at, std::string what)
    : m_pattern(pattern), m_catalogue(catalogue), m_ledgers(ledgers), m_shown(ledgers[shown]),
      m_sectionAt(sectionIndex(pattern, section)), m_at(at), m_what(std::move(what)),
      m_columns(pattern.sections[static_cast<std::size_t>(m_sectionAt)].frame.columns)
{
}

Fault RowsOnNeedle::fault(std::string message) const
{
    const int rows = static_cast<int>(section().rows.size());
    return {{}, placeInWords(m_pattern, m_sectionAt, std::min(m_at, rows - 1)), std::move(message)};
}

// The needle ahead of row m_at in the shown choice; every other knitting has to have as many stitches.
std::optional<Fault> RowsOnNeedle::takeNeedle()
{
    bool found = false;
    std::optional<int> count, tip;
    for (const Ledger& ledger : m_ledgers)
        for (std::size_t line = 0; line < ledger.rows.size(); ++line) {
            const KnittedRow& row = ledger.rows[line];
            const bool ahead = row.section == m_sectionAt && row.row == m_at;
            const bool behind = m_at == static_cast<int>(section().rows.size()) &&
                                row.section == m_sectionAt && row.row == m_at - 1;
            if (!ahead && !behind)
                continue;
            const Needle& needle = ledger.before[line + (behind ? 1 : 0)];
            if (count && *count != needle.count())
                return fault("has " + counted(*count, "stitch") + " ahead of it in one knitting and " +
                             toText(needle.count()) + " in another, so one chart of " + m_what +
                             " doesn't fit both; give it a section of its own for each, or take it out of the "
                             "row repeat");
            if (tip && *tip != needle.tip)
                return fault("begins at one place of the needle in one knitting and at another in the next, so "
                             "one chart of " +
                             m_what +
                             " doesn't fit both; take it out of the row repeat, or turn the row before alike");
            tip = needle.tip;
            count = needle.count();
            if (&ledger == &m_shown && !found) {
                found = true;
                m_needle = needle;
                m_size = ledger.choice.size;
                m_starts = ahead && (line == 0 || ledger.rows[line - 1].section != m_sectionAt);
            }
        }
    if (!found)
        return fault("is not knit in the version that is shown; show one that has it");
    if (m_starts) { // what lies below is another chart
        const Row& row = *section().rows[static_cast<std::size_t>(m_at)];
        const Trace trace =
            traceOf(m_shown, m_pattern, m_catalogue, firstLineOf(m_shown, m_sectionAt, m_at));
        for (Loop& loop : m_needle.loops)
            loop.column = 0;
        m_needle = stayingPut(std::move(m_needle), trace, row, m_catalogue);
    }
    spreadOverColumns();
    if (m_needle.lastFinish == FinishKind::Round)
        return fault("follows a round, and " + m_what +
                     " is worked to and fro, so end the round before with a turn");
    if (m_needle.lastFinish == FinishKind::BindOff && m_needle.count() == 0)
        return fault("has no stitches ahead of it; they are bound off");
    if (m_needle.count() > mostColumns)
        return fault("has " + counted(m_needle.count(), "stitch") + " ahead of it; a chart is up to " +
                     toText(mostColumns) + " columns wide");
    return std::nullopt;
}

// The rows made lie over single stitches, also over those that a stitch repeat below made.
void RowsOnNeedle::spreadOverColumns()
{
    const Needle was = m_needle;
    const int columns = std::max(m_columns, std::min(m_needle.count(), mostColumns));
    spreadColumns(m_needle, columns);
    if (m_needle != was)
        m_columns = columns;
}

void RowsOnNeedle::widenRight(int columns)
{
    auto wider = insertColumns(m_pattern, section().id, 0, columns);
    if (!wider.ok())
        return;
    m_made.edit = std::move(wider.value());
    apply(m_pattern, m_made.edit);
    m_columns += columns;
    for (Loop& loop : m_needle.loops)
        if (loop.column > 0)
            loop.column = static_cast<std::int16_t>(loop.column + columns);
    for (MarkerAt& marker : m_needle.markers)
        if (marker.column >= 0)
            marker.column += columns;
}

void RowsOnNeedle::widenTo(int columns)
{
    m_columns = std::max(m_columns, columns);
}

Side RowsOnNeedle::nextSide() const
{
    const bool same = m_needle.lastFinish == FinishKind::Slide || m_needle.lastFinish == FinishKind::Round;
    return same ? m_needle.lastSide : otherSide(m_needle.lastSide);
}

bool RowsOnNeedle::atStart(bool rightEdge) const
{
    return rightEdge ? m_needle.tip == 0 && nextSide() == Side::RS
                     : m_needle.tip == m_needle.count() && nextSide() == Side::WS;
}

YarnId RowsOnNeedle::yarnHere() const
{
    if (m_at > 0)
        return section().rows[static_cast<std::size_t>(m_at) - 1]->yarn;
    if (!section().rows.empty())
        return section().rows.front()->yarn;
    return m_pattern.head.castOn.yarn;
}

YarnId RowsOnNeedle::yarnAfter(int more) const
{
    const int next = m_at + filledBy(rows() + more);
    return next < static_cast<int>(section().rows.size()) ? section().rows[static_cast<std::size_t>(next)]->yarn
                                                          : YarnId{};
}

YarnId RowsOnNeedle::yarnGoingOn(YarnId otherwise) const
{
    const YarnId after = yarnAfter(1);
    for (const YarnAt& at : m_needle.yarns)
        if (at.yarn == after && at.position == m_needle.tip)
            return after;
    return otherwise;
}

bool RowsOnNeedle::workedRepeatedly() const
{
    for (const Bracket& bracket : section().frame.brackets) {
        const int first = rowIndex(section(), bracket.firstRow), last = rowIndex(section(), bracket.lastRow);
        const bool inside = (first < m_at || emptyAt(m_at)) && first <= m_at && m_at <= last;
        const auto& times = bracket.times.values;
        if (inside && std::any_of(times.begin(), times.end(), [](int often) { return often > 1; }))
            return true;
    }
    return false;
}

RowContext RowsOnNeedle::context() const
{
    return {m_catalogue, m_pattern.head, {}, m_size, m_starts && m_made.rows.empty()};
}

LedgerLine RowsOnNeedle::add(const Plain& plain)
{
    Row base;
    base.side = plain.side;
    base.yarn = plain.yarn;
    if (plain.turns)
        base.finish = {FinishKind::TurnEarly, *plain.turns, false};
    const LoopsAhead ahead = loopsAhead(m_needle, base, context());
    const bool afterTurn = m_needle.lastFinish == FinishKind::TurnEarly;
    const bool pinned = afterTurn && m_needle.lastMethod == TurnMethod::PinnedYarn;
    std::vector<StitchId> worked = plainStitches(m_needle, base, ahead, plain.turns ? plain.works : ahead.count,
                                                 plain.stitches, m_catalogue);
    const bool doubled = !worked.empty() && worked.front() == m_catalogue.require("ds");
    if (!worked.empty() && !doubled && afterTurn && !m_made.rows.empty() && (plain.slipFirst || pinned))
        worked.front() = m_catalogue.require("sl");
    return add(std::move(base), worked, {});
}

LedgerLine RowsOnNeedle::add(Row base, const std::vector<StitchId>& worked, const std::vector<MoveBefore>& moves)
{
    const LoopsAhead ahead = loopsAhead(m_needle, base, context());
    const auto hangs = std::find_if(m_needle.yarns.begin(), m_needle.yarns.end(),
                                    [&](const YarnAt& at) { return at.yarn == base.yarn; });
    base.start.joins = hangs == m_needle.yarns.end() || hangs->position != ahead.tip;
    if (base.start.joins && hangs != m_needle.yarns.end())
        breakYarn(base.yarn); // where it hangs nobody takes it up again
    Row row = laidOver(worked, std::move(base), moves, m_needle, context(), m_columns);
    m_columns = std::max(m_columns, static_cast<int>(row.cells.size()));
    LedgerLine line = workRow(m_needle, row, context());
    m_made.rows.push_back(std::move(row));
    return line;
}

void RowsOnNeedle::breakYarn(YarnId yarn)
{
    const auto last = std::find_if(m_made.rows.rbegin(), m_made.rows.rend(),
                                   [yarn](const Row& row) { return row.yarn == yarn; });
    if (last != m_made.rows.rend())
        last->finish.breaksYarn = true;
}

std::vector<StitchId> RowsOnNeedle::plainAhead(const Row& base, PlainStitch how) const
{
    const LoopsAhead ahead = loopsAhead(m_needle, base, context());
    return plainStitches(m_needle, base, ahead, ahead.count, how, m_catalogue);
}

void RowsOnNeedle::leadTo(bool rightEdge, YarnId yarn, PlainStitch stitches)
{
    for (int rows = 0; rows < 2 && !atStart(rightEdge); ++rows) {
        add({nextSide(), yarn, stitches, {}, 0, false});
        ++m_made.lead;
    }
}

bool RowsOnNeedle::emptyAt(int at) const
{
    if (at >= static_cast<int>(section().rows.size()) || !boxesOn(section(), at).empty())
        return false;
    const Row& row = *section().rows[static_cast<std::size_t>(at)];
    return nothingOn(row) && row.moves.empty() && row.words.empty() && row.finish.kind != FinishKind::BindOff;
}

int RowsOnNeedle::filledBy(int rows) const
{
    int filled = 0;
    while (filled < rows && emptyAt(m_at + filled))
        ++filled;
    return filled;
}

Result<PlacedRows> RowsOnNeedle::place(const std::string& name, PlainStitch stitches)
{
    const Section& here = section();
    const int next = m_at + filledBy(rows());
    if (m_needle.tip == 0 || m_needle.tip == m_needle.count())
        if (next < static_cast<int>(here.rows.size()) && !emptyAt(next) &&
            here.rows[static_cast<std::size_t>(next)]->side != nextSide())
            add({nextSide(), m_made.rows.back().yarn, stitches, {}, 0, false});
    for (const YarnAt& hanging : m_needle.yarns) // among the stitches, away from where the work goes on
        if (hanging.position > 0 && hanging.position < m_needle.count() && hanging.position != m_needle.tip)
            breakYarn(hanging.yarn);
    const int filled = filledBy(rows());
    m_made.filled = filled;
    if (filled < rows())
        for (const Box& box : here.frame.boxes)
            if (rowIndex(here, box.firstRow) < m_at + filled && m_at + filled <= rowIndex(here, box.lastRow))
                return fault("lies in the middle of a stitch repeat over several rows; end the repeat below " +
                             m_what + " first");
    if (m_columns > mostColumns)
        return fault("would need " + counted(m_columns, "column") + "; a chart is up to " + toText(mostColumns) +
                     " columns wide");
    std::map<int, Row> swapped;
    for (int i = 0; i < filled; ++i) {
        const Row& was = *here.rows[static_cast<std::size_t>(m_at + i)];
        Row row = padded(m_made.rows[static_cast<std::size_t>(i)], m_columns);
        row.id = was.id;
        row.label = was.label;
        row.note = was.note;
        row.unknown = was.unknown;
        swapped.emplace(m_at + i, std::move(row));
    }
    m_made.edit.name = name;
    SectionFrame frame = here.frame;
    frame.columns = m_columns;
    addFrame(m_made.edit, here, frame);
    addSwap(m_made.edit, here, std::move(swapped));
    std::vector<Row> added(m_made.rows.begin() + filled, m_made.rows.end());
    if (!added.empty()) {
        for (Row& row : added)
            row = padded(std::move(row), m_columns);
        auto inserted = insertRows(m_pattern, here.id, m_at + filled, std::move(added), name);
        if (!inserted.ok())
            return inserted.fault();
        for (EditStep& step : inserted.value().steps)
            if (std::holds_alternative<SpliceRows>(step)) // the chart is widened already
                m_made.edit.steps.push_back(std::move(step));
    }
    return std::move(m_made);
}

} // namespace shawlwright
