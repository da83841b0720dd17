#include "core/derived/unfolded.h"

#include "core/base/text.h"
#include "core/derived/unfolded_markers.h"
#include "core/wording/reader/layout.h"

#include <algorithm>
#include <cstdlib>

namespace shawlwright {
namespace {

int halved(int sum) // rounded down, below nothing too
{
    return sum >= 0 ? sum / 2 : (sum - 1) / 2;
}

// Of the fits that are equally near the one in the middle: else all stitches would drift to one side with the rows.
std::vector<int> fittedInTheMiddle(const std::vector<std::optional<WantedRange>>& wanted)
{
    std::vector<std::optional<WantedRange>> mirrored(wanted.rbegin(), wanted.rend());
    for (std::optional<WantedRange>& one : mirrored)
        if (one)
            one = WantedRange{-one->to, -one->from};
    std::vector<int> fit = neverFalling(wanted);
    const std::vector<int> other = neverFalling(mirrored);
    for (std::size_t i = 0; i < fit.size(); ++i)
        fit[i] = halved(fit[i] - other[fit.size() - 1 - i]);
    for (std::size_t i = 1; i < fit.size(); ++i) // what has no wish goes with another neighbour in each
        fit[i] = std::max(fit[i], fit[i - 1]);
    return fit;
}

class Unfolding {
public:
    Unfolding(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger, int section)
        : m_pattern(pattern), m_catalogue(catalogue), m_ledger(ledger), m_section(section),
          m_folded(pattern.sections[static_cast<std::size_t>(section)]), m_labels(rowLabels(m_folded))
    {
    }

    Result<Unfolded> done()
    {
        for (std::size_t line = 0; line < m_ledger.rows.size(); ++line)
            if (m_ledger.rows[line].section == m_section) {
                m_first = m_count == 0 ? line : m_first;
                ++m_count;
            }
        if (m_count == 0)
            return notKnitted();
        if (auto large = tooLarge(widest()))
            return *large;
        prepare();
        for (std::size_t at = 0; at < m_count; ++at)
            layRow(at);
        const int columns = std::max(1, m_last - m_least + 1);
        if (auto large = tooLarge(columns))
            return *large;
        for (std::size_t at = 0; at < m_count; ++at)
            paintRow(at, columns);
        for (Needle& needle : m_made.ledger.before)
            settle(needle, columns);
        m_made.pattern.sections[0].frame.columns = columns;
        return std::move(m_made);
    }

private:
    Fault fault(std::string message) const
    {
        return Fault{{}, "Section '" + m_folded.frame.title + "'", std::move(message)};
    }

    Fault notKnitted() const
    {
        const std::vector<std::string>& versions = m_pattern.head.versions;
        const auto shown = static_cast<std::size_t>(m_ledger.choice.version);
        if (shown >= versions.size())
            return fault("is not knitted; it has no rows yet");
        std::string others;
        for (std::size_t at = 0; at < versions.size(); ++at)
            if (at != shown && belongsTo(m_folded, m_pattern, static_cast<int>(at)))
                others += (others.empty() ? "" : " or ") + std::string("'") + versions[at] + "'";
        return fault("is not knitted in version '" + versions[shown] + "', which is shown; " +
                     (others.empty() ? "it belongs to no other, say in its settings to which it does"
                                     : "choose " + others + " to see it as knitted"));
    }

    std::optional<Fault> tooLarge(int columns) const
    {
        const auto cells = static_cast<long long>(columns) * static_cast<long long>(m_count);
        if (cells <= mostUnfoldedCells && columns <= mostUnfoldedColumns)
            return std::nullopt;
        return fault("would be " + counted(static_cast<int>(m_count), "row") + " of up to " + counted(columns, "stitch", "stitches") +
                     " as knitted, more than the " + toText(mostUnfoldedCells) +
                     " cells that are drawn; have its row repeats worked fewer times while you look at it");
    }

    int widest() const
    {
        int most = 1;
        for (std::size_t line = m_first; line < m_first + m_count; ++line)
            most = std::max(most, m_ledger.lines[line].worked);
        return most;
    }

    void prepare()
    {
        PatternHead& head = m_made.pattern.head;
        const int size = m_ledger.choice.size;
        head = m_pattern.head;
        head.versions.clear();
        head.sizes.clear();
        head.castOn.stitches = Quantity(head.castOn.stitches.at(size));
        Section section;
        section.id = m_folded.id;
        section.frame.title = m_folded.frame.title;
        section.frame.note = m_folded.frame.note;
        section.rows.resize(m_count);
        m_made.pattern.sections.push_back(std::move(section));
        m_made.rows.resize(m_count);
        m_cells.resize(m_count);
        Ledger& ledger = m_made.ledger;
        const auto from = static_cast<std::ptrdiff_t>(m_first), to = from + static_cast<std::ptrdiff_t>(m_count);
        ledger.before.assign(m_ledger.before.begin() + from, m_ledger.before.begin() + to + 1);
        ledger.lines.assign(m_ledger.lines.begin() + from, m_ledger.lines.begin() + to);
        ledger.rows.assign(m_ledger.rows.begin() + from, m_ledger.rows.begin() + to);
        Needle& start = ledger.before.front();
        for (std::size_t i = 0; i < start.loops.size(); ++i) {
            start.loops[i].madeIn = RowId{};
            start.loops[i].column = static_cast<std::int16_t>(std::min<std::size_t>(i + 1, mostUnfoldedColumns));
        }
        for (MarkerAt& marker : start.markers)
            marker.column = noBoundary;
    }

    // Where a stitch may stand, by its rightmost column: anywhere over the loops it takes up. A stitch that joins this section to loops
    // from before it stands over its own side, as an edging does.
    std::optional<WantedRange> wish(const WorkedCell& cell, int width, const Needle& before) const
    {
        std::optional<int> low, high;
        bool own = false;
        for (int i = cell.firstLoop; i < cell.firstLoop + cell.takesUp && i < before.count(); ++i) {
            if (i < 0)
                continue;
            const Loop& loop = before.loops[static_cast<std::size_t>(i)];
            const bool here = loop.madeIn != RowId{};
            if (here && !own)
                low = high = std::nullopt;
            own = own || here;
            if (here != own)
                continue;
            low = std::min<int>(low.value_or(loop.column), loop.column);
            high = std::max<int>(high.value_or(loop.column), loop.column);
        }
        if (!low)
            return std::nullopt;
        const int other = *high - width + 1;
        return WantedRange{std::min(*low, other), std::max(*low, other)};
    }

    void layRow(std::size_t at)
    {
        const std::size_t line = m_first + at;
        const KnittedRow& knitted = m_ledger.rows[line];
        const Needle& before = m_made.ledger.before[at];
        Trace trace = traceOf(m_ledger, m_pattern, m_catalogue, static_cast<int>(line));
        if (knitted.ref->side == Side::WS)
            std::reverse(trace.cells.begin(), trace.cells.end());
        std::vector<UnfoldedCell>& cells = m_cells[at];
        std::vector<std::optional<WantedRange>> wanted;
        bool any = false;
        int compact = 0;
        for (const WorkedCell& cell : trace.cells) {
            const int width = m_catalogue.stitch(cellAt(*knitted.ref, cell.column).stitch).width();
            std::optional<WantedRange> place = wish(cell, width, before);
            if (place)
                place = WantedRange{place->from - compact, place->to - compact};
            wanted.push_back(place);
            any = any || place;
            cells.push_back({cell.column, compact, width, cell.takesUp, cell.leaves});
            compact += width;
        }
        if (any) {
            const std::vector<int> shift = fittedInTheMiddle(wanted);
            for (std::size_t i = 0; i < cells.size(); ++i)
                cells[i].column += shift[i];
        } else {
            for (UnfoldedCell& cell : cells)
                cell.column += m_least;
        }
        if (!cells.empty()) {
            const int last = cells.back().column + cells.back().width - 1;
            m_last = m_anyCell ? std::max(m_last, last) : last;
            m_least = m_anyCell ? std::min(m_least, cells.front().column) : cells.front().column;
            m_anyCell = true;
        }
        carryOn(at, trace);
    }

    // The needle after the row: what was worked stands at its stitch's place, the rest where it stood.
    void carryOn(std::size_t at, const Trace& trace)
    {
        const std::vector<UnfoldedCell>& cells = m_cells[at];
        const LedgerLine& line = m_made.ledger.lines[at];
        const Needle& before = m_made.ledger.before[at];
        Needle& after = m_made.ledger.before[at + 1];
        const auto keeps = [&](int here, int there) {
            if (here < 0 || here >= after.count() || there < 0 || there >= before.count())
                return;
            Loop& loop = after.loops[static_cast<std::size_t>(here)];
            loop.madeIn = before.loops[static_cast<std::size_t>(there)].madeIn;
            loop.column = before.loops[static_cast<std::size_t>(there)].column;
        };
        if (cells.empty() && line.worked == 0 && before.count() == after.count()) {
            for (int i = 0; i < after.count(); ++i)
                keeps(i, i);
            for (std::size_t i = 0; i < after.markers.size() && i < before.markers.size(); ++i)
                after.markers[i].column = before.markers[i].column;
            m_moves.emplace_back();
            return;
        }
        for (int i = 0; i < line.restingRight; ++i)
            keeps(i, i);
        for (int i = 1; i <= line.restingLeft; ++i)
            keeps(after.count() - i, before.count() - i);
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const WorkedCell& cell = trace.cells[c];
            for (int i = 0; i < cell.leaves; ++i) {
                const int place = cell.firstMade + i;
                if (place < 0 || place >= after.count())
                    continue;
                Loop& loop = after.loops[static_cast<std::size_t>(place)];
                loop.madeIn = RowId{static_cast<std::uint32_t>(at + 1)};
                loop.column = static_cast<std::int16_t>(
                    cells[c].column + (cells[c].width > 1 ? std::min<int>(loop.part, cells[c].width - 1) : 0));
            }
        }
        m_moves.push_back(unfoldedMoves(cells, line.side, before, after, line,
                                        m_ledger.rows[m_first + at].ref->finish.kind == FinishKind::BindOff));
    }

    void paintRow(std::size_t at, int columns)
    {
        const int shift = 1 - m_least;
        const KnittedRow& knitted = m_ledger.rows[m_first + at];
        const Row& folded = *knitted.ref;
        const int size = m_ledger.choice.size;
        Row row;
        row.id = RowId{static_cast<std::uint32_t>(at + 1)};
        row.side = folded.side;
        row.yarn = folded.yarn;
        row.start = folded.start;
        row.start.slip = Quantity(folded.start.slip.at(size));
        row.finish = folded.finish;
        row.note = folded.note;
        if (folded.stated)
            row.stated = Quantity(folded.stated->at(size));
        row.label = m_labels[static_cast<std::size_t>(knitted.row)];
        if (!knitted.passes.empty())
            row.label += " (" + toText(passOf(at)) + ")";
        row.moves = std::move(m_moves[at]);
        for (MarkerMove& move : row.moves)
            move.boundary = std::clamp(move.boundary + shift, 0, columns);
        UnfoldedRow& here = m_made.rows[at];
        here.row = knitted.row;
        here.line = static_cast<int>(m_first + at);
        row.cells.resize(static_cast<std::size_t>(columns));
        here.columns.resize(static_cast<std::size_t>(columns));
        for (const UnfoldedCell& cell : m_cells[at]) {
            Cell painted = cellAt(folded, cell.folded);
            for (int part = 0; part < cell.width; ++part) {
                painted.part = static_cast<std::uint8_t>(part);
                const auto column = static_cast<std::size_t>(cell.column + shift + part - 1);
                row.cells[column] = painted;
                here.columns[column] = static_cast<std::int16_t>(cell.folded + part);
            }
        }
        std::vector<UnfoldedCell>().swap(m_cells[at]);
        findAgain(at);
        const auto ref = std::make_shared<const Row>(std::move(row));
        static const auto noBoxes = std::make_shared<const std::vector<Box>>();
        m_made.pattern.sections[0].rows[at] = ref;
        m_made.ledger.rows[at] = {0, static_cast<int>(at), static_cast<int>(at) + 1, ref, {}, noBoxes};
    }

    // How many times this row has been worked by then.
    int passOf(std::size_t at)
    {
        m_worked.resize(m_folded.rows.size());
        return ++m_worked[static_cast<std::size_t>(m_ledger.rows[m_first + at].row)];
    }

    void findAgain(std::size_t at)
    {
        const UnfoldedRow& here = m_made.rows[at];
        for (Finding finding : m_made.ledger.lines[at].findings) {
            finding.section = m_folded.id;
            finding.row = static_cast<int>(at);
            finding.line = static_cast<int>(at);
            if (finding.column > 0) {
                const auto found = std::find(here.columns.begin(), here.columns.end(), finding.column);
                finding.column = found == here.columns.end() ? 0 : static_cast<int>(found - here.columns.begin()) + 1;
            }
            finding.mend = {};
            m_made.ledger.findings.push_back(std::move(finding));
        }
    }

    void settle(Needle& needle, int columns) const
    {
        const int shift = 1 - m_least;
        for (Loop& loop : needle.loops) {
            const int column = loop.column + shift;
            loop.column = static_cast<std::int16_t>(column >= 1 && column <= columns ? column : 0);
        }
        for (MarkerAt& marker : needle.markers)
            marker.column = marker.column == noBoundary ? -1 : std::clamp(marker.column + shift, 0, columns);
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    const Ledger& m_ledger;
    int m_section;
    const Section& m_folded;
    std::vector<std::string> m_labels;
    std::size_t m_first = 0, m_count = 0;
    bool m_anyCell = false;
    int m_least = 1, m_last = 0; // columns in use
    std::vector<std::vector<UnfoldedCell>> m_cells;
    std::vector<std::vector<MarkerMove>> m_moves;
    std::vector<int> m_worked;
    Unfolded m_made;
};

// The column nearest to `column` whose value `fits`; 0: none.
template <typename Fits>
int nearestColumn(int columns, int column, const Fits& fits)
{
    for (int away = 0; away < columns; ++away)
        for (const int at : {column - away, column + away})
            if (at >= 1 && at <= columns && fits(at))
                return at;
    return 0;
}

} // namespace

Result<Unfolded> unfolded(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger, int section)
{
    return Unfolding(pattern, catalogue, ledger, section).done();
}

At foldedAt(const Unfolded& unfolded, At at)
{
    const UnfoldedRow& row = unfolded.rows[static_cast<std::size_t>(at.row)];
    const int near = nearestColumn(static_cast<int>(row.columns.size()), at.column,
                                   [&](int column) { return row.columns[static_cast<std::size_t>(column) - 1] > 0; });
    return At{row.row, near ? row.columns[static_cast<std::size_t>(near) - 1] : 1};
}

At unfoldedAt(const Unfolded& unfolded, At at)
{
    std::size_t row = 0;
    int best = -1;
    for (std::size_t i = 0; i < unfolded.rows.size(); ++i)
        if (unfolded.rows[i].row <= at.row && unfolded.rows[i].row > best) {
            best = unfolded.rows[i].row;
            row = i;
        }
    // The right edge of the first working in its row's order: the rightmost one there is.
    const std::vector<std::int16_t>& columns = unfolded.rows[row].columns;
    int column = 1, away = -1;
    for (std::size_t i = 0; i < columns.size(); ++i)
        if (columns[i] > 0 && (away < 0 || std::abs(columns[i] - at.column) < away)) {
            away = std::abs(columns[i] - at.column);
            column = static_cast<int>(i) + 1;
        }
    return At{static_cast<int>(row), column};
}

} // namespace shawlwright
