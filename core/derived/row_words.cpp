#include "core/derived/row_words.h"

#include "core/base/text.h"
#include "core/derived/painted_out.h"
#include "core/derived/stays_put.h"
#include "core/wording/reader/reader.h"
#include "core/wording/reader/row_head.h"

#include <algorithm>
#include <set>

namespace shawlwright {
namespace {

bool sameRepeat(const Box& a, const Box& b)
{
    Box like = b;
    like.id = a.id;
    like.firstRow = a.firstRow;
    like.lastRow = a.lastRow;
    like.unknown = a.unknown;
    return a == like;
}

class WordsIntoRows {
public:
    WordsIntoRows(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                  std::size_t shown, int section, int first, BadRows bad)
        : m_bad(bad), m_pattern(pattern), m_catalogue(catalogue), m_ledgers(ledgers), m_shown(ledgers[shown]),
          m_sectionAt(section), m_first(first), m_was(pattern.sections[static_cast<std::size_t>(section)]),
          m_after(pattern)
    {
    }

    RowsFromWords read(std::string_view text)
    {
        RowsFromWords result{Edit{}, {}, 0, {}};
        const auto onward = needleAhead();
        const std::string where = placeInWords(m_pattern, m_sectionAt, std::min(m_first, rowsThere() - 1));
        if (!onward) {
            result.edit = Fault{{}, where, "is not knit in the version that is shown; show one that has it"};
            return result;
        }
        const std::string prefix = missingLabel(text, *onward);
        ReadText read = readText(prefix + std::string(text), m_catalogue, {m_pattern.head, onward});
        result.notes = std::move(read.notes);
        for (ReadingNote& note : result.notes)
            if (note.at.line == 1)
                note.at.column = std::max(1, note.at.column - static_cast<int>(prefix.size()));
        result.rows = read.rowsRead + read.rowsNot;
        const bool leavesOut = m_bad == BadRows::LeaveOut && read.rowsRead > 0;
        if (read.rowsRead == 0 || (read.rowsNot > 0 && !leavesOut)) {
            // Of several rows the place in the text tells which.
            result.edit = notUnderstood(result.rows > 1 ? "the words" : where, result.notes);
            return result;
        }
        if (const auto wrong = wrongSide(read.pattern.sections)) {
            result.edit = *wrong;
            return result;
        }
        takeHead(read.pattern.head);
        takeRows(read.pattern.sections);
        for (const Place& place : placesOf(read))
            result.leftOut.push_back(whyNot(place, result.notes));
        if (const Faults faults = faultsOf(m_after, m_catalogue.with(m_after.head.stitches));
            !faults.empty()) {
            result.edit = faults.front();
            return result;
        }
        paintOut();
        result.edit = difference();
        return result;
    }

private:
    int rowsThere() const { return static_cast<int>(m_was.rows.size()); }
    Section& section() { return m_after.sections[static_cast<std::size_t>(m_sectionAt)]; }

    std::optional<Onward> needleAhead() const
    {
        Onward onward;
        onward.columns = m_was.frame.columns;
        if (m_first < rowsThere()) {
            const int line = firstLineOf(m_shown, m_sectionAt, m_first);
            if (line < 0)
                return std::nullopt;
            const Row& row = *m_was.rows[static_cast<std::size_t>(m_first)];
            onward.before = m_shown.before[static_cast<std::size_t>(line)];
            onward.side = row.side;
            onward.yarn = row.yarn;
            if (m_first == 0) // they stand over another chart's columns
                for (Loop& loop : onward.before.loops)
                    loop.column = 0;
            onward.before = stayingPut(std::move(onward.before),
                                       traceOf(m_shown, m_pattern, m_catalogue, line), row, m_catalogue);
            return onward;
        }
        int line = -1; // the last knitting of the row before
        for (std::size_t at = 0; at < m_shown.rows.size(); ++at)
            if (m_shown.rows[at].section == m_sectionAt && m_shown.rows[at].row == rowsThere() - 1)
                line = static_cast<int>(at);
        if (line < 0)
            return std::nullopt;
        const Row& row = *m_was.rows.back();
        onward.before = m_shown.before[static_cast<std::size_t>(line) + 1];
        onward.side = row.finish.kind == FinishKind::Slide || row.finish.kind == FinishKind::Round ? row.side
                      : row.side == Side::RS                                                       ? Side::WS
                                                                                                   : Side::RS;
        onward.yarn = row.yarn;
        return onward;
    }

    // What makes one row of a text that has no label.
    std::string missingLabel(std::string_view text, const Onward& onward) const
    {
        const auto lines = normalLines(text);
        const auto first =
            std::find_if(lines.begin(), lines.end(), [](const NormalText& line) { return !line.blank(); });
        if (first == lines.end() || rowHead(*first))
            return {};
        const bool round = m_first < rowsThere() &&
                           m_was.rows[static_cast<std::size_t>(m_first)]->finish.kind == FinishKind::Round;
        return round ? "Rnd 1: " : onward.side == Side::RS ? "Row 1 (RS): " : "Row 1 (WS): ";
    }

    static Fault notUnderstood(const std::string& where, const std::vector<ReadingNote>& notes)
    {
        const auto error = std::find_if(notes.begin(), notes.end(), [](const ReadingNote& note) {
            return note.weight == ReadingNote::Weight::Error;
        });
        if (error == notes.end())
            return Fault{{}, where, "no row in these words; write stitches, such as k2, yo, k2tog, k to end"};
        return Fault{error->at, where, sentence(*error)};
    }

    static bool notRead(const Row& row) // the reader kept its words, and no stitch
    {
        return !row.words.empty() && std::all_of(row.cells.begin(), row.cells.end(), [](const Cell& cell) {
            return cell.stitch == noStitch;
        });
    }

    // Of the rows that were not understood.
    static std::vector<Place> placesOf(const ReadText& read)
    {
        std::vector<Place> places;
        for (const Section& part : read.pattern.sections)
            for (const RowRef& row : part.rows)
                if (const auto place = read.rowPlaces.find(row->id.value);
                    notRead(*row) && place != read.rowPlaces.end())
                    places.push_back(place->second);
        return places;
    }

    static Fault whyNot(Place row, const std::vector<ReadingNote>& notes)
    {
        for (const ReadingNote& note : notes)
            if (note.weight == ReadingNote::Weight::Error && note.at.line >= row.line)
                return Fault{note.at, {}, sentence(note)};
        return Fault{row, {}, "is not understood; write stitches, such as k2, yo, k2tog, k to end"};
    }

    // A row of the words that would land on a row of the other side.
    std::optional<Fault> wrongSide(const std::vector<Section>& read) const
    {
        int at = m_first;
        for (const Section& part : read)
            for (const RowRef& row : part.rows) {
                if (at < rowsThere() && m_was.rows[static_cast<std::size_t>(at)]->side != row->side)
                    return Fault{{},
                                 placeInWords(m_pattern, m_sectionAt, at),
                                 std::string("is ") +
                                     (row->side == Side::RS ? "a WS row, the words for it tell an RS row"
                                                            : "an RS row, the words for it tell a WS row") +
                                     "; begin at a row of the same side"};
                ++at;
            }
        return std::nullopt;
    }

    // Yarns, markers and stitches that the words brought; the title page is not theirs.
    void takeHead(const PatternHead& read)
    {
        m_after.head.yarns = read.yarns;
        m_after.head.markers = read.markers;
        m_after.head.stitches = read.stitches;
    }

    void takeRows(const std::vector<Section>& read)
    {
        const std::uint32_t fresh = freshRowId(m_pattern).value;
        std::map<RowId, RowId> ids;
        std::vector<Box> boxes;
        std::vector<Bracket> brackets;
        for (const Section& part : read) {
            section().frame.columns = std::max(section().frame.columns, part.frame.columns);
            ids.clear();
            for (const RowRef& row : part.rows) {
                Row now = *row;
                const std::size_t at = static_cast<std::size_t>(m_first) + m_rows++;
                const bool stands = at < m_was.rows.size();
                now.id = stands ? m_was.rows[at]->id
                                : RowId{fresh + static_cast<std::uint32_t>(at - m_was.rows.size())};
                now.label = stands ? m_was.rows[at]->label : std::string();
                now.unknown = stands ? m_was.rows[at]->unknown : std::string();
                ids[row->id] = now.id;
                if (stands && notRead(*row)) {
                    m_keptRows.insert(static_cast<int>(at));
                    continue;
                }
                auto ref = std::make_shared<const Row>(std::move(now));
                if (stands)
                    section().rows[at] = std::move(ref);
                else
                    section().rows.push_back(std::move(ref));
            }
            for (Box box : part.frame.boxes) {
                box.firstRow = ids[box.firstRow];
                box.lastRow = ids[box.lastRow];
                boxes.push_back(std::move(box));
            }
            for (Bracket bracket : part.frame.brackets) {
                bracket.firstRow = ids[bracket.firstRow];
                bracket.lastRow = ids[bracket.lastRow];
                brackets.push_back(std::move(bracket));
            }
        }
        takeBoxes(std::move(boxes));
        for (Bracket& bracket : brackets)
            if (std::find(section().frame.brackets.begin(), section().frame.brackets.end(), bracket) ==
                section().frame.brackets.end())
                section().frame.brackets.push_back(std::move(bracket));
    }

    bool replaced(int row) const
    {
        return m_first <= row && row < m_first + static_cast<int>(m_rows) && m_keptRows.count(row) == 0;
    }

    // A stitch repeat over more rows than these stays whole where the words still say it, and is cut where
    // they don't.
    void takeBoxes(std::vector<Box> fresh)
    {
        std::vector<Box>& boxes = section().frame.boxes;
        const std::vector<Box> were = std::exchange(boxes, {});
        std::uint32_t id = freshBoxId(m_was).value;
        for (const Box& was : were) {
            const int from = rowIndex(m_was, was.firstRow), to = rowIndex(m_was, was.lastRow);
            const int last = m_first + static_cast<int>(m_rows) - 1;
            const int begin = std::max(from, m_first), end = std::min(to, last);
            if (begin > end) {
                boxes.push_back(was);
                continue;
            }
            std::vector<std::size_t> same;
            int replacedRows = 0;
            for (int row = begin; row <= end; ++row)
                replacedRows += replaced(row) ? 1 : 0;
            for (int row = begin; row <= end; ++row)
                for (std::size_t i = 0; i < fresh.size(); ++i)
                    if (fresh[i].firstRow == section().rows[static_cast<std::size_t>(row)]->id &&
                        sameRepeat(was, fresh[i])) {
                        same.push_back(i);
                        break;
                    }
            if (static_cast<int>(same.size()) == replacedRows) {
                boxes.push_back(was);
                for (auto i = same.rbegin(); i != same.rend(); ++i)
                    fresh.erase(fresh.begin() + static_cast<std::ptrdiff_t>(*i));
                continue;
            }
            bool keptId = false;
            for (int low = from; low <= to; ++low) {
                if (replaced(low))
                    continue;
                int high = low;
                while (high < to && !replaced(high + 1))
                    ++high;
                Box part = was;
                part.firstRow = m_was.rows[static_cast<std::size_t>(low)]->id;
                part.lastRow = m_was.rows[static_cast<std::size_t>(high)]->id;
                if (std::exchange(keptId, true))
                    part.id = BoxId{id++};
                boxes.push_back(std::move(part));
                low = high;
            }
        }
        for (Box& box : fresh) {
            box.id = BoxId{id++};
            boxes.push_back(std::move(box));
        }
    }

    int pastLast() const { return m_first + static_cast<int>(m_rows); }

    void paintOut()
    {
        std::vector<int> rows;
        for (int row = m_first; row < pastLast() && row < rowsThere(); ++row)
            if (replaced(row) && boxesOn(m_was, row).empty() && !boxesOn(section(), row).empty())
                rows.push_back(row);
        if (rows.empty())
            return;
        const Catalogue catalogue = m_catalogue.with(m_after.head.stitches);
        std::vector<Ledger> ledgers;
        for (const Ledger& ledger : m_ledgers)
            ledgers.push_back(run(m_after, catalogue, ledger.choice));
        for (const int row : rows) {
            auto out = paintedOut(m_after, catalogue, ledgers, m_sectionAt, row, section().frame.columns);
            if (!out)
                continue;
            std::erase_if(section().frame.boxes,
                          [&](const Box& box) { return box.firstRow == out->id && box.lastRow == out->id; });
            section().rows[static_cast<std::size_t>(row)] = std::make_shared<const Row>(std::move(*out));
        }
    }

    Edit difference()
    {
        Edit edit{m_rows == 1 ? "words of row " + rowLabels(section())[static_cast<std::size_t>(m_first)]
                              : "words of " + counted(static_cast<int>(m_rows), "row"),
                  {}};
        if (m_after.head != m_pattern.head)
            edit.steps.push_back(SwapHead{m_after.head});
        SwapRows swapped{m_was.id, {}};
        for (int row = m_first; row < pastLast() && row < rowsThere(); ++row)
            if (const RowRef& now = section().rows[static_cast<std::size_t>(row)];
                *now != *m_was.rows[static_cast<std::size_t>(row)])
                swapped.rows[row] = now;
        if (!swapped.rows.empty())
            edit.steps.push_back(std::move(swapped));
        if (section().rows.size() > m_was.rows.size())
            edit.steps.push_back(SpliceRows{
                m_was.id, rowsThere(), 0, {section().rows.begin() + rowsThere(), section().rows.end()}});
        if (section().frame != m_was.frame)
            edit.steps.push_back(SwapFrame{m_was.id, section().frame});
        return edit;
    }

    BadRows m_bad;
    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    std::span<const Ledger> m_ledgers;
    const Ledger& m_shown;
    int m_sectionAt;
    int m_first;
    const Section& m_was;
    Pattern m_after;
    std::size_t m_rows = 0; // taken so far
    std::set<int> m_keptRows; // of those, whose words were not understood
};

} // namespace

RowsFromWords rowsFromWords(const Pattern& pattern, const Catalogue& catalogue,
                            std::span<const Ledger> ledgers, std::size_t shown, SectionId id, int first,
                            std::string_view text, BadRows bad)
{
    const int section = sectionIndex(pattern, id);
    const int rows =
        section < 0 ? 0 : static_cast<int>(pattern.sections[static_cast<std::size_t>(section)].rows.size());
    if (section < 0 || first < 0 || first > rows || rows == 0)
        return {Fault{{}, "", "the row these words are for is no longer there; choose one that is"}, {}, 0, {}};
    return WordsIntoRows(pattern, catalogue, ledgers, shown, section, first, bad).read(text);
}

std::string wordsToEdit(const Row& row, const std::string& text)
{
    std::string words = text;
    if (row.stated) {
        std::string count;
        for (std::size_t i = 0; i < row.stated->values.size(); ++i)
            count += (i == 0   ? ""
                      : i == 1 ? " ("
                               : ", ") +
                     toText(row.stated->values[i]) + (i > 0 && i + 1 == row.stated->values.size() ? ")" : "");
        words += " (" + count + " sts)";
    }
    if (!row.note.empty())
        words += " " + row.note;
    return words;
}

} // namespace shawlwright
