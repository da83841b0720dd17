#include "core/derived/short_row_wedge.h"

#include "core/base/text.h"
#include "core/derived/stays_put.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright {
namespace {

// Whether the turning stitch is worked before the turn.
bool worksTurningStitch(TurnMethod method)
{
    return method == TurnMethod::DoubleStitch || method == TurnMethod::PinnedYarn;
}

bool isEmpty(const Row& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const Cell& cell) { return cell.stitch == noStitch; });
}

Side sideAfter(const Needle& needle)
{
    const bool same = needle.lastFinish == FinishKind::Slide || needle.lastFinish == FinishKind::Round;
    return same ? needle.lastSide : otherSide(needle.lastSide);
}

class WedgeMaking {
public:
    WedgeMaking(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                std::size_t shown, int section, int at, const WedgeWishes& wishes)
        : m_pattern(pattern), m_catalogue(catalogue), m_ledgers(ledgers), m_shown(ledgers[shown]),
          m_sectionAt(section), m_section(pattern.sections[static_cast<std::size_t>(section)]), m_at(at),
          m_wishes(wishes), m_columns(m_section.frame.columns),
          m_extra(worksTurningStitch(wishes.method) ? 1 : 0)
    {
    }

    Result<Wedge> make()
    {
        if (auto fault = takeNeedle())
            return *fault;
        if (auto fault = wishesFault())
            return *fault;
        if (m_wishes.at == WedgeAt::Marker) {
            if (auto fault = aboutMarker())
                return *fault;
        } else if (auto fault = fromEdge()) {
            return *fault;
        }
        return place();
    }

private:
    Fault fault(std::string message) const
    {
        const int rows = static_cast<int>(m_section.rows.size());
        return {{}, placeInWords(m_pattern, m_sectionAt, std::min(m_at, rows - 1)), std::move(message)};
    }

    // The needle ahead of row m_at in the shown choice; every other knitting has to have as many stitches.
    std::optional<Fault> takeNeedle()
    {
        std::optional<int> count, tip;
        for (const Ledger& ledger : m_ledgers)
            for (std::size_t line = 0; line < ledger.rows.size(); ++line) {
                const KnittedRow& row = ledger.rows[line];
                const bool ahead = row.section == m_sectionAt && row.row == m_at;
                const bool behind = m_at == static_cast<int>(m_section.rows.size()) &&
                                    row.section == m_sectionAt && row.row == m_at - 1;
                if (!ahead && !behind)
                    continue;
                const Needle& needle = ledger.before[line + (behind ? 1 : 0)];
                if (count && *count != needle.count())
                    return fault("has " + counted(*count, "stitch") + " ahead of it in one knitting and " +
                                 toText(needle.count()) +
                                 " in another, so one chart of a wedge doesn't fit both; give the wedge a "
                                 "section of its own for each, or take it out of the row repeat");
                if (tip && *tip != needle.tip)
                    return fault(
                        "begins at one place of the needle in one knitting and at another in the next, so "
                        "one chart of a wedge doesn't fit both; take it out of the row repeat, or turn "
                        "the row before alike");
                tip = needle.tip;
                count = needle.count();
                if (&ledger == &m_shown && !m_found) {
                    m_found = true;
                    m_needle = needle;
                    m_size = ledger.choice.size;
                    m_starts = ahead && (line == 0 || ledger.rows[line - 1].section != m_sectionAt);
                }
            }
        if (!m_found)
            return fault("is not knit in the version that is shown; show one that has it");
        if (m_starts) { // what lies below is another chart
            const Row& row = *m_section.rows[static_cast<std::size_t>(m_at)];
            const Trace trace =
                traceOf(m_shown, m_pattern, m_catalogue, firstLineOf(m_shown, m_sectionAt, m_at));
            for (Loop& loop : m_needle.loops)
                loop.column = 0;
            m_needle = stayingPut(std::move(m_needle), trace, row, m_catalogue);
        }
        if (m_needle.lastFinish == FinishKind::Round)
            return fault(
                "follows a round; short rows are worked to and fro, so end the round before with a turn");
        if (m_needle.lastFinish == FinishKind::BindOff && m_needle.count() == 0)
            return fault("has no stitches ahead of it; they are bound off");
        if (m_needle.count() > mostColumns)
            return fault("has " + counted(m_needle.count(), "stitch") + " ahead of it; a chart is up to " +
                         toText(mostColumns) + " columns wide");
        return std::nullopt;
    }

    std::optional<Fault> wishesFault()
    {
        if (m_wishes.step < 1)
            return fault("can't turn every " + counted(m_wishes.step, "stitch") + "; take 1 or more");
        if (m_wishes.untilLeft ? *m_wishes.untilLeft < 0 : m_wishes.turns < 1)
            return fault("is to have less than one turn; take 1 or more");
        for (const YarnId yarn : m_wishes.yarns)
            if (auto wrong = yarnFault(m_pattern, yarn))
                return wrong;
        if (m_wishes.at == WedgeAt::Marker && m_wishes.yarns.size() > 1)
            return fault(
                "about a marker the rows never come back to where the other yarn hangs; use one yarn");
        return std::nullopt;
    }

    // One more row on the needle.
    struct Plan {
        Side side = Side::RS;
        int works = 0; // stitches; all that are ahead where it doesn't turn early
        bool early = false;
        YarnId yarn;
    };
    void add(const Plan& plan)
    {
        Row base;
        base.side = plan.side;
        base.yarn = plan.yarn;
        if (plan.early)
            base.finish = {FinishKind::TurnEarly, m_wishes.method, false};
        const RowContext context{m_catalogue, m_pattern.head, {}, m_size, m_starts && m_wedge.rows.empty()};
        const LoopsAhead ahead = loopsAhead(m_needle, base, context);
        const auto hangs = std::find_if(m_needle.yarns.begin(), m_needle.yarns.end(),
                                        [&](const YarnAt& at) { return at.yarn == plan.yarn; });
        base.start.joins = hangs == m_needle.yarns.end() || hangs->position != ahead.tip;
        const bool afterTurn = m_needle.lastFinish == FinishKind::TurnEarly;
        const bool pinned = afterTurn && m_needle.lastMethod == TurnMethod::PinnedYarn;
        std::vector<StitchId> worked = plainStitches(
            m_needle, base, ahead, plan.early ? plan.works : ahead.count, m_wishes.stitches, m_catalogue);
        const bool doubled = !worked.empty() && worked.front() == m_catalogue.require("ds");
        if (!worked.empty() && !doubled && afterTurn && !m_wedge.rows.empty() &&
            (m_wishes.slipFirst || pinned))
            worked.front() = m_catalogue.require("sl");
        Row row = laidOver(worked, std::move(base), {}, m_needle, context, m_columns);
        m_columns = std::max(m_columns, static_cast<int>(row.cells.size()));
        workRow(m_needle, row, context);
        m_wedge.turns += plan.early ? 1 : 0;
        m_wedge.rows.push_back(std::move(row));
    }

    YarnId yarnOfPair(int pair) const
    {
        if (!m_wishes.yarns.empty())
            return m_wishes.yarns[static_cast<std::size_t>(pair) % m_wishes.yarns.size()];
        if (m_at > 0)
            return m_section.rows[static_cast<std::size_t>(m_at) - 1]->yarn;
        if (!m_section.rows.empty())
            return m_section.rows.front()->yarn;
        return m_pattern.head.castOn.yarn;
    }

    void leadTo(bool rightEdge)
    {
        const auto there = [&] {
            return rightEdge ? m_needle.tip == 0 && sideAfter(m_needle) == Side::RS
                             : m_needle.tip == m_needle.count() && sideAfter(m_needle) == Side::WS;
        };
        for (int rows = 0; rows < 2 && !there(); ++rows) {
            add({sideAfter(m_needle), 0, false, yarnOfPair(0)});
            ++m_wedge.lead;
        }
    }

    // The closing row carries the yarn along that the row after the wedge goes on with, where it hangs there.
    YarnId yarnOfClosing(int pairs) const
    {
        const int next = m_at + filledBy(static_cast<int>(m_wedge.rows.size()) + 1);
        if (next < static_cast<int>(m_section.rows.size()))
            for (const YarnAt& at : m_needle.yarns)
                if (at.yarn == m_section.rows[static_cast<std::size_t>(next)]->yarn &&
                    at.position == m_needle.tip)
                    return at.yarn;
        return yarnOfPair(pairs);
    }

    // How far the turns begin further in, because a stitch has to rest beyond each.
    int offset() const { return m_wishes.growing ? 0 : std::max(0, m_extra + 1 - m_wishes.step); }

    std::optional<Fault> fromEdge()
    {
        const bool right = m_wishes.at == WedgeAt::RightEdge;
        leadTo(right);
        const int all = m_needle.count(), step = m_wishes.step;
        // Pair i, from 1, works step * i, or all - offset - step * i; and a stitch rests beyond it.
        const int room = m_wishes.growing ? all - 1 - m_extra : all - offset() - 1;
        const int most = room / step;
        int pairs = m_wishes.turns;
        if (m_wishes.untilLeft) {
            const int left = *m_wishes.untilLeft;
            pairs = std::min(most, (all - (m_wishes.growing ? 0 : offset()) - left) / step);
            if (pairs < 1)
                return fault("has " + counted(all, "stitch") + ", so no turn at every " + toText(step) +
                             " leaves " + toText(left) + "; leave fewer, or turn more often");
        }
        if (pairs > most)
            return tooMany(pairs, most, all);
        const Side out = right ? Side::RS : Side::WS;
        for (int pair = 1; pair <= pairs; ++pair) {
            const int works = m_wishes.growing ? step * pair : all - offset() - step * pair;
            add({out, works + m_extra, true, yarnOfPair(pair - 1)});
            add({otherSide(out), 0, false, yarnOfPair(pair - 1)});
            m_wedge.lastWorked = works + m_extra;
        }
        m_wedge.resting = all - m_wedge.lastWorked;
        if (m_wishes.closing)
            add({out, 0, false, yarnOfClosing(pairs)});
        return std::nullopt;
    }

    std::optional<Fault> aboutMarker()
    {
        const auto marker = std::find_if(m_needle.markers.begin(), m_needle.markers.end(),
                                         [&](const MarkerAt& at) { return at.marker == m_wishes.marker; });
        if (marker == m_needle.markers.end()) {
            const Marker* named = markerOf(m_pattern.head, m_wishes.marker);
            return fault(named
                             ? "marker " + named->name + " isn't on the needle here; place it in a row before"
                             : std::string("no marker is chosen; place one in a row before"));
        }
        const int all = m_needle.count(), step = m_wishes.step;
        const int side = std::min(marker->position, all - marker->position); // stitches beside the marker
        if (m_needle.tip != 0 && m_needle.tip != all)
            leadTo(sideAfter(m_needle) == Side::WS);
        const int most = (side - 1 - m_extra) / step;
        int turns = m_wishes.turns;
        if (m_wishes.untilLeft) {
            turns = std::min(most, (side - *m_wishes.untilLeft) / step);
            if (turns < 1)
                return fault("has " + counted(side, "stitch") + " beside the marker, so no turn at every " +
                             toText(step) + " leaves " + toText(*m_wishes.untilLeft) +
                             "; leave fewer, or turn more often");
        }
        if (turns > most)
            return tooMany(turns, most, side);
        Side facing = sideAfter(m_needle);
        for (int row = 0; row < 2 * turns; ++row) {
            const int turn = row / 2;
            const int beyond = step * (m_wishes.growing ? turn + 1 : turns - turn) + m_extra;
            const int position = markerPosition();
            const int works =
                facing == Side::RS ? position + beyond - m_needle.tip : m_needle.tip - (position - beyond);
            add({facing, works, true, yarnOfPair(0)});
            m_wedge.lastWorked = works;
            facing = otherSide(facing);
        }
        m_wedge.resting = all - m_wedge.lastWorked;
        add({facing, 0, false, yarnOfPair(0)});
        add({otherSide(facing), 0, false, yarnOfPair(0)});
        return std::nullopt;
    }

    int markerPosition() const
    {
        for (const MarkerAt& at : m_needle.markers)
            if (at.marker == m_wishes.marker)
                return at.position;
        return 0;
    }

    Fault tooMany(int turns, int most, int stitches) const
    {
        const std::string where = m_wishes.at == WedgeAt::Marker ? " beside the marker" : "";
        return fault(counted(turns, "turn") + " at every " + counted(m_wishes.step, "stitch") +
                     " don't fit into the " + toText(stitches) + where + ", of which one has to rest; " +
                     (most < 1 ? "turn more often" : "up to " + toText(most) + " would"));
    }

    bool emptyAt(int at) const
    {
        if (at >= static_cast<int>(m_section.rows.size()) || !boxesOn(m_section, at).empty())
            return false;
        const Row& row = *m_section.rows[static_cast<std::size_t>(at)];
        return isEmpty(row) && row.moves.empty() && row.words.empty() &&
               row.finish.kind != FinishKind::BindOff;
    }

    int filledBy(int rows) const
    {
        int filled = 0;
        while (filled < rows && emptyAt(m_at + filled))
            ++filled;
        return filled;
    }

    // Into the chart: empty rows are filled, the others inserted before the row that follows.
    Result<Wedge> place()
    {
        const int rows = static_cast<int>(m_section.rows.size());
        int filled = filledBy(static_cast<int>(m_wedge.rows.size()));
        const int next = m_at + filled;
        if (m_needle.tip == 0 || m_needle.tip == m_needle.count())
            if (next < rows && !emptyAt(next) &&
                m_section.rows[static_cast<std::size_t>(next)]->side != sideAfter(m_needle))
                add({sideAfter(m_needle), 0, false, m_wedge.rows.back().yarn});
        filled = filledBy(static_cast<int>(m_wedge.rows.size()));
        m_wedge.filled = filled;
        if (filled < static_cast<int>(m_wedge.rows.size()))
            for (const Box& box : m_section.frame.boxes)
                if (rowIndex(m_section, box.firstRow) < m_at + filled &&
                    m_at + filled <= rowIndex(m_section, box.lastRow))
                    return fault(
                        "lies in the middle of a stitch repeat over several rows; end the repeat below "
                        "the wedge first");
        const std::string name = "wedge of " + counted(static_cast<int>(m_wedge.rows.size()), "short row");
        std::map<int, Row> swapped;
        for (int i = 0; i < filled; ++i) {
            const Row& was = *m_section.rows[static_cast<std::size_t>(m_at + i)];
            Row row = padded(m_wedge.rows[static_cast<std::size_t>(i)], m_columns);
            row.id = was.id;
            row.label = was.label;
            row.note = was.note;
            row.unknown = was.unknown;
            swapped.emplace(m_at + i, std::move(row));
        }
        m_wedge.edit.name = name;
        SectionFrame frame = m_section.frame;
        frame.columns = m_columns;
        addFrame(m_wedge.edit, m_section, frame);
        addSwap(m_wedge.edit, m_section, std::move(swapped));
        std::vector<Row> added(m_wedge.rows.begin() + filled, m_wedge.rows.end());
        if (!added.empty()) {
            for (Row& row : added)
                row = padded(std::move(row), m_columns);
            auto inserted = insertRows(m_pattern, m_section.id, m_at + filled, std::move(added), name);
            if (!inserted.ok())
                return inserted.fault();
            for (EditStep& step : inserted.value().steps)
                if (std::holds_alternative<SpliceRows>(step)) // the chart is widened already
                    m_wedge.edit.steps.push_back(std::move(step));
        }
        return std::move(m_wedge);
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    std::span<const Ledger> m_ledgers;
    const Ledger& m_shown;
    int m_sectionAt;
    const Section& m_section;
    int m_at;
    const WedgeWishes& m_wishes;
    int m_columns;
    int m_extra; // stitches a row works beyond the wrap-and-turn count
    bool m_found = false;
    bool m_starts = false; // the wedge's first row is the section's first
    int m_size = 0;
    Needle m_needle; // as the rows made so far left it
    Wedge m_wedge;
};

} // namespace

Result<Wedge> shortRowWedge(const Pattern& pattern, const Catalogue& catalogue,
                            std::span<const Ledger> ledgers, std::size_t shown, SectionId id, int at,
                            const WedgeWishes& wishes)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (at < 0 || at > static_cast<int>(section.rows.size()) || section.rows.empty())
        return Fault{{}, sectionWords(section), "the row the wedge begins at is no longer there; choose one"};
    return WedgeMaking(pattern, catalogue, ledgers, shown, sectionIndex(pattern, id), at, wishes).make();
}

} // namespace shawlwright
