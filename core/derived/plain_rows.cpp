#include "core/derived/plain_rows.h"

#include "core/base/text.h"
#include "core/derived/stays_put.h"
#include "core/edits/checks.h"

#include <algorithm>
#include <set>

namespace shawlwright {
namespace {

bool isEmpty(const Row& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const Cell& cell) { return cell.stitch == noStitch; });
}

// What a row was before, as far as its filling keeps it.
struct OldRow {
    int taken = 0; // loops
    std::vector<MoveBefore> moves;
};

OldRow oldRow(const Row& row, const Trace& trace)
{
    OldRow old;
    for (const WorkedCell& cell : trace.cells)
        old.taken += cell.takesUp;
    for (const MarkerMove& move : row.moves) {
        std::size_t before = 0;
        for (const WorkedCell& cell : trace.cells) {
            const bool beyond =
                row.side == Side::RS ? cell.column > move.boundary : cell.column <= move.boundary;
            if (beyond)
                break;
            before += static_cast<std::size_t>(cell.takesUp);
        }
        old.moves.push_back({move, before});
    }
    return old;
}

class PlainFilling {
public:
    PlainFilling(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                 std::size_t shown, int section, const std::vector<int>& rows, PlainStitch how)
        : m_pattern(pattern), m_catalogue(catalogue), m_ledgers(ledgers), m_shown(shown),
          m_sectionAt(section), m_section(pattern.sections[static_cast<std::size_t>(section)]),
          m_targets(rows.begin(), rows.end()), m_how(how), m_columns(m_section.frame.columns)
    {
    }

    Result<Edit> edit()
    {
        for (const int row : m_targets)
            if (auto fault = rowCantBe(row))
                return *fault;
        // A row found to differ between its knittings becomes a repeat, and rows after it are worked again.
        for (std::size_t open = m_open.size();; open = m_open.size()) {
            m_rows.clear();
            m_columns = m_section.frame.columns;
            if (auto fault = workThrough(m_ledgers[m_shown], true))
                return *fault;
            for (const Ledger& ledger : m_ledgers)
                if (&ledger != &m_ledgers[m_shown])
                    if (auto fault = workThrough(ledger, false))
                        return *fault;
            if (m_open.size() == open)
                break;
        }
        return made();
    }

private:
    const Row& rowOf(int at) const { return *m_section.rows[static_cast<std::size_t>(at)]; }
    Fault fault(int row, std::string message) const
    {
        return {{}, placeInWords(m_pattern, m_sectionAt, row), std::move(message)};
    }

    std::optional<Fault> rowCantBe(int at) const
    {
        const Row& row = rowOf(at);
        if (row.finish.kind == FinishKind::BindOff)
            return fault(at,
                         "binds off, so it can't be filled with plain stitches; choose rows that are knit");
        if (row.finish.kind == FinishKind::TurnEarly && isEmpty(row))
            return fault(at, "turns early, but nothing painted says where; paint how far it goes, or let it "
                             "end with a plain turn");
        if (firstLineOf(m_ledgers[m_shown], m_sectionAt, at) < 0)
            return fault(at, "is not knit in the version that is shown; show one that has it");
        return std::nullopt;
    }

    // The knitted rows from the first that is filled to the last; the shown ledger lays the rows out, each
    // other knitting has to need the same stitches.
    std::optional<Fault> workThrough(const Ledger& ledger, bool laysOut)
    {
        std::size_t from = ledger.rows.size(), to = 0;
        for (std::size_t line = 0; line < ledger.rows.size(); ++line)
            if (isTarget(ledger.rows[line])) {
                from = std::min(from, line);
                to = line + 1;
            }
        if (from >= to)
            return std::nullopt;
        Needle needle = ledger.before[from];
        for (std::size_t line = from; line < to; ++line) {
            const KnittedRow& knitted = ledger.rows[line];
            RowContext context{m_catalogue, m_pattern.head, *knitted.boxes, ledger.choice.size,
                               line == 0 || ledger.rows[line - 1].section != knitted.section};
            if (!isTarget(knitted)) {
                workRow(needle, *knitted.ref, context);
                continue;
            }
            context.boxes = {};
            if (auto fault = fillOne(ledger, line, needle, context, laysOut))
                return fault;
            const std::vector<Box> repeat{repeatOn(knitted.row)};
            if (m_open.count(knitted.row) > 0)
                context.boxes = repeat;
            workRow(needle, m_rows.at(knitted.row), context);
        }
        return std::nullopt;
    }

    bool isTarget(const KnittedRow& row) const
    {
        return row.section == m_sectionAt && m_targets.count(row.row) > 0;
    }

    std::optional<Fault> fillOne(const Ledger& ledger, std::size_t line, const Needle& needle,
                                 const RowContext& context, bool laysOut)
    {
        const int at = ledger.rows[line].row;
        const Row& row = rowOf(at);
        const LoopsAhead ahead = loopsAhead(needle, row, context);
        if (ahead.count <= 0)
            return fault(at, "has no stitches ahead of it on the needle; fill or mend the rows below first");
        const Trace trace = traceOf(ledger, m_pattern, m_catalogue, static_cast<int>(line));
        const OldRow old = oldRow(row, trace);
        const bool early = row.finish.kind == FinishKind::TurnEarly;
        const int count = early ? std::min(old.taken, ahead.count) : ahead.count;
        std::vector<StitchId> worked = plainStitches(needle, row, ahead, count, m_how, m_catalogue);
        const bool alike = std::all_of(worked.begin(), worked.end(),
                                       [&](StitchId stitch) { return stitch == worked.front(); });
        const auto known = m_worked.find(at);
        const bool first = laysOut && m_rows.count(at) == 0;
        if (m_open.count(at) == 0) {
            const bool differs = !first && known != m_worked.end() && known->second != worked;
            const bool tooWide = count > mostColumns;
            if (differs || tooWide)
                m_open.insert(at);
        }
        if (m_open.count(at) > 0) {
            if (early || !alike || !row.moves.empty() ||
                (known != m_worked.end() && known->second.front() != worked.front()))
                return fault(at, "has " + counted(count, "stitch") +
                                     " here and other ones in another knitting of it, so no one row of plain "
                                     "stitches fits all; paint it by hand with a stitch repeat");
        }
        if (first || m_rows.count(at) == 0)
            layOut(at, row, worked, old, trace, needle, context);
        if (first)
            m_worked[at] = std::move(worked);
        return std::nullopt;
    }

    void layOut(int at, const Row& row, const std::vector<StitchId>& worked, const OldRow& old,
                const Trace& trace, Needle before, const RowContext& context)
    {
        if (m_open.count(at) > 0) {
            m_columns = std::max(m_columns, 1);
            Row one = row;
            one.cells.assign(static_cast<std::size_t>(m_columns), Cell{});
            one.cells.front() = Cell{worked.front(), {}, 0};
            m_rows[at] = std::move(one);
            return;
        }
        if (context.startsSection) { // what lies below is another chart
            for (Loop& loop : before.loops)
                loop.column = 0;
            before = stayingPut(std::move(before), trace, row, m_catalogue);
        }
        const bool hadStitches = !trace.cells.empty();
        Row now = laidOver(worked, row, hadStitches ? old.moves : std::vector<MoveBefore>{}, before, context,
                           m_columns);
        if (!hadStitches)
            now.moves = row.moves;
        m_columns = std::max(m_columns, static_cast<int>(now.cells.size()));
        m_rows[at] = std::move(now);
    }

    Box repeatOn(int at) const
    {
        Box box;
        box.firstRow = box.lastRow = rowOf(at).id;
        box.until = BoxUntil::RowEnd;
        return box;
    }

    // Stitch repeats go on below and above the rows filled.
    void cutBoxes(SectionFrame& frame) const
    {
        std::vector<Box> cut;
        std::uint32_t id = freshBoxId(m_section).value;
        for (const Box& box : frame.boxes) {
            const int from = rowIndex(m_section, box.firstRow), to = rowIndex(m_section, box.lastRow);
            bool keptId = false;
            for (int low = from; low <= to; ++low) {
                if (m_targets.count(low) > 0)
                    continue;
                int high = low;
                while (high < to && m_targets.count(high + 1) == 0)
                    ++high;
                Box part = box;
                part.firstRow = rowOf(low).id;
                part.lastRow = rowOf(high).id;
                if (std::exchange(keptId, true))
                    part.id = BoxId{id++};
                cut.push_back(std::move(part));
                low = high;
            }
        }
        for (const int at : m_open) {
            Box box = repeatOn(at);
            box.id = BoxId{id++};
            cut.push_back(std::move(box));
        }
        frame.boxes = std::move(cut);
    }

    Edit made()
    {
        Edit edit{m_targets.size() == 1
                      ? "plain stitches"
                      : "plain stitches in " + counted(static_cast<int>(m_targets.size()), "row"),
                  {}};
        SectionFrame frame = m_section.frame;
        frame.columns = m_columns;
        cutBoxes(frame);
        std::map<int, Row> changed;
        for (auto& [at, row] : m_rows) {
            row = padded(std::move(row), m_columns);
            if (padded(rowOf(at), m_columns) != row)
                changed.emplace(at, std::move(row));
        }
        addSwap(edit, m_section, std::move(changed));
        addFrame(edit, m_section, std::move(frame));
        return edit;
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    std::span<const Ledger> m_ledgers;
    std::size_t m_shown;
    int m_sectionAt;
    const Section& m_section;
    std::set<int> m_targets;
    PlainStitch m_how;
    int m_columns;
    std::map<int, Row> m_rows;                     // as filled
    std::map<int, std::vector<StitchId>> m_worked; // their stitches in the knitting that lays them out
    std::set<int> m_open;                          // one stitch, repeated to the end of the row
};

} // namespace

Result<Edit> plainRows(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                       std::size_t shown, SectionId id, const std::vector<int>& rows, PlainStitch how)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    for (const int row : rows)
        if (auto fault = rowFault(pattern, id, row))
            return *fault;
    if (rows.empty())
        return Fault{
            {}, sectionWords(sectionIn(pattern, id)), "has no empty rows to fill; choose rows instead"};
    return PlainFilling(pattern, catalogue, ledgers, shown, sectionIndex(pattern, id), rows, how).edit();
}

std::vector<int> emptyRows(const Section& section, Side side)
{
    std::vector<int> rows;
    for (std::size_t at = 0; at < section.rows.size(); ++at)
        if (section.rows[at]->side == side && isEmpty(*section.rows[at]))
            rows.push_back(static_cast<int>(at));
    return rows;
}

} // namespace shawlwright
