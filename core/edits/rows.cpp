#include "core/edits/rows.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>
#include <unordered_map>

namespace shawlwright {
namespace {

std::string rowsWords(const Section& section, int first, int last)
{
    const auto labels = rowLabels(section);
    const std::string& from = labels[static_cast<std::size_t>(first)];
    return first == last ? "row " + from : "rows " + from + " to " + labels[static_cast<std::size_t>(last)];
}

// The side of the row that follows `row`.
Side following(const Row& row)
{
    const bool same = row.finish.kind == FinishKind::Slide || row.finish.kind == FinishKind::Round;
    return same ? row.side : otherSide(row.side);
}

// What an empty row before row `at` should be: it goes on from the row below, or leads to the row above.
Row emptyRow(const Pattern& pattern, const Section& section, int at, int count)
{
    Row row;
    row.yarn = pattern.head.castOn.yarn;
    row.side = pattern.head.castOn.firstSide;
    const Row* below = at > 0 ? section.rows[static_cast<std::size_t>(at) - 1].get() : nullptr;
    if (below) {
        row.side = following(*below);
        row.yarn = below->yarn;
        if (below->finish.kind == FinishKind::Round)
            row.finish.kind = FinishKind::Round;
    } else if (!section.rows.empty()) {
        const Row& above = *section.rows.front();
        row.yarn = above.yarn;
        row.side = count % 2 == 1 ? otherSide(above.side) : above.side;
        if (above.finish.kind == FinishKind::Round) {
            row.side = above.side;
            row.finish.kind = FinishKind::Round;
        }
    } else if (const int s = sectionIndex(pattern, section.id); s > 0) {
        const auto& before = pattern.sections[static_cast<std::size_t>(s) - 1].rows;
        if (!before.empty()) {
            row.side = following(*before.back());
            row.yarn = before.back()->yarn;
        }
    }
    row.cells.resize(static_cast<std::size_t>(section.frame.columns));
    return row;
}

MaybeFault roomFault(const Section& section, int at, int count)
{
    const int rows = static_cast<int>(section.rows.size());
    if (at < 0 || at > rows)
        return Fault{{},
                     sectionWords(section),
                     "rows can be put before rows 1 to " + toText(rows + 1) + " of the chart, not before " +
                         toText(at + 1)};
    if (count < 1 || count > mostRows - rows)
        return Fault{{},
                     sectionWords(section),
                     toText(count) + " rows asked for, there is room for 1 to " + toText(mostRows - rows) +
                         " more; start another section"};
    return std::nullopt;
}

std::vector<RowRef> withFreshIds(const Pattern& pattern, std::vector<Row> rows)
{
    std::vector<RowRef> refs;
    RowId id = freshRowId(pattern);
    for (Row& row : rows) {
        row.id = id;
        ++id.value;
        refs.push_back(std::make_shared<const Row>(std::move(row)));
    }
    return refs;
}

int indexOf(const std::vector<RowRef>& rows, RowId id)
{
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (rows[i]->id == id)
            return static_cast<int>(i);
    return -1;
}

// A box or bracket over rows of which [first, last] go: it keeps the rows that stay. False: none does.
template <typename Repeat>
bool shrunk(Repeat& repeat, const Section& section, int first, int last)
{
    int from = rowIndex(section, repeat.firstRow);
    int to = rowIndex(section, repeat.lastRow);
    if (from >= first && from <= last)
        from = last + 1;
    if (to >= first && to <= last)
        to = first - 1;
    if (from < 0 || to < from || from >= static_cast<int>(section.rows.size()))
        return false;
    repeat.firstRow = section.rows[static_cast<std::size_t>(from)]->id;
    repeat.lastRow = section.rows[static_cast<std::size_t>(to)]->id;
    return true;
}

// Copies of the repeats that lie wholly on the rows [first, last], for the copies of those rows; one that
// only ends with them grows over the copies.
template <typename Repeat>
std::vector<Repeat> duplicated(const std::vector<Repeat>& repeats, const Section& section, int first,
                               int last, const std::vector<RowRef>& copies)
{
    std::vector<Repeat> result = repeats;
    for (std::size_t i = 0; i < repeats.size(); ++i) {
        const int from = rowIndex(section, repeats[i].firstRow);
        const int to = rowIndex(section, repeats[i].lastRow);
        if (from >= first && to <= last) {
            Repeat copy = repeats[i];
            copy.firstRow = copies[static_cast<std::size_t>(from - first)]->id;
            copy.lastRow = copies[static_cast<std::size_t>(to - first)]->id;
            result.push_back(copy);
        } else if (to == last && from < first) {
            result[i].lastRow = copies.back()->id;
        }
    }
    return result;
}

// A repeat after its section's rows came into a new order: it holds the same rows where they still lie
// together, else those of them that stayed.
template <typename Repeat>
void follow(Repeat& repeat, const Section& section, const std::vector<RowRef>& rows, int movedFirst,
            int movedLast)
{
    const int from = rowIndex(section, repeat.firstRow);
    const int to = rowIndex(section, repeat.lastRow);
    const auto ends = [&](bool withMoved) {
        std::pair<int, int> span{static_cast<int>(rows.size()), -1};
        for (int i = from; i <= to; ++i) {
            if (!withMoved && i >= movedFirst && i <= movedLast)
                continue;
            const int at = indexOf(rows, section.rows[static_cast<std::size_t>(i)]->id);
            span = {std::min(span.first, at), std::max(span.second, at)};
        }
        return span;
    };
    auto span = ends(true);
    if (span.second - span.first != to - from)
        if (const auto stayed = ends(false); stayed.second >= 0)
            span = stayed;
    repeat.firstRow = rows[static_cast<std::size_t>(span.first)]->id;
    repeat.lastRow = rows[static_cast<std::size_t>(span.second)]->id;
}

void renumber(Section& copy)
{
    for (Box& box : copy.frame.boxes)
        if (box.id == BoxId{})
            box.id = freshBoxId(copy);
}

} // namespace

Result<Edit> setRow(const Pattern& pattern, SectionId id, int at, Row row, std::string name)
{
    std::map<int, Row> rows;
    rows.emplace(at, std::move(row));
    return setRows(pattern, id, rows, std::move(name));
}

Result<Edit> setRows(const Pattern& pattern, SectionId id, const std::map<int, Row>& rows, std::string name)
{
    Edit edit{std::move(name), {}};
    std::map<int, Row> swapped;
    for (const auto& [at, row] : rows) {
        if (auto fault = rowFault(pattern, id, at))
            return *fault;
        const Section& section = sectionIn(pattern, id);
        Row now = padded(row, section.frame.columns);
        now.id = section.rows[static_cast<std::size_t>(at)]->id;
        const std::string where = placeInWords(pattern, sectionIndex(pattern, id), at);
        if (auto fault = rowValuesFault(pattern, section, now, where))
            return *fault;
        if (padded(*section.rows[static_cast<std::size_t>(at)], section.frame.columns) != now)
            swapped.emplace(at, std::move(now));
    }
    if (!swapped.empty())
        addSwap(edit, sectionIn(pattern, id), std::move(swapped));
    return edit;
}

Result<Edit> insertRows(const Pattern& pattern, SectionId id, int at, int count)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (auto fault = roomFault(section, at, count))
        return *fault;
    std::vector<Row> rows;
    Row row = emptyRow(pattern, section, at, count);
    for (int i = 0; i < count; ++i) {
        rows.push_back(row);
        row.side = following(row);
    }
    return insertRows(pattern, id, at, std::move(rows), "insert " + counted(count, "row"));
}

Result<Edit> insertRows(const Pattern& pattern, SectionId id, int at, std::vector<Row> rows, std::string name)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (auto fault = roomFault(section, at, static_cast<int>(rows.size())))
        return *fault;
    int columns = section.frame.columns;
    for (const Row& row : rows)
        columns = std::max(columns, static_cast<int>(row.cells.size()));
    if (columns > mostColumns)
        return Fault{{},
                     sectionWords(section),
                     "the rows are " + toText(columns) + " columns wide; up to " + toText(mostColumns) +
                         " are possible, so use a stitch repeat or another section"};

    // Wider rows widen the chart.
    Section wide = section;
    wide.frame.columns = columns;
    Edit edit{std::move(name), {}};
    addFrame(edit, section, wide.frame);
    if (columns != section.frame.columns) {
        std::map<int, Row> widened;
        for (std::size_t i = 0; i < section.rows.size(); ++i)
            widened.emplace(static_cast<int>(i), padded(*section.rows[i], columns));
        addSwap(edit, section, std::move(widened));
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i] = padded(std::move(rows[i]), columns);
        const std::string where =
            sectionWords(section) + ", row " + toText(static_cast<int>(i) + 1) + " of the new ones";
        if (auto fault = rowValuesFault(pattern, wide, rows[i], where))
            return *fault;
    }
    edit.steps.push_back(SpliceRows{id, at, 0, withFreshIds(pattern, std::move(rows))});
    return edit;
}

Result<Edit> deleteRows(const Pattern& pattern, SectionId id, int first, int last)
{
    if (auto fault = rowsFault(pattern, id, first, last))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (last - first + 1 == static_cast<int>(section.rows.size()))
        return Fault{{},
                     sectionWords(section),
                     "these are all of its rows, and one has to stay; delete the section instead"};
    SectionFrame frame = section.frame;
    std::erase_if(frame.boxes, [&](Box& box) { return !shrunk(box, section, first, last); });
    std::erase_if(frame.brackets, [&](Bracket& bracket) { return !shrunk(bracket, section, first, last); });
    Edit edit{"delete " + rowsWords(section, first, last), {}};
    addFrame(edit, section, std::move(frame));
    edit.steps.push_back(SpliceRows{id, first, last - first + 1, {}});
    return edit;
}

Result<Edit> duplicateRows(const Pattern& pattern, SectionId id, int first, int last)
{
    if (auto fault = rowsFault(pattern, id, first, last))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (auto fault = roomFault(section, last + 1, last - first + 1))
        return *fault;
    std::vector<Row> rows;
    for (int at = first; at <= last; ++at) {
        rows.push_back(*section.rows[static_cast<std::size_t>(at)]);
        rows.back().label.clear(); // the typed label stays with the row it was typed for
    }
    auto copies = withFreshIds(pattern, std::move(rows));
    Section after = section;
    after.frame.boxes = duplicated(section.frame.boxes, section, first, last, copies);
    for (std::size_t i = section.frame.boxes.size(); i < after.frame.boxes.size(); ++i)
        after.frame.boxes[i].id = BoxId{};
    renumber(after);
    after.frame.brackets = duplicated(section.frame.brackets, section, first, last, copies);
    after.rows.insert(after.rows.begin() + last + 1, copies.begin(), copies.end());
    if (auto fault = repeatsFault(pattern, after.frame, after.rows))
        return *fault;

    Edit edit{"duplicate " + rowsWords(section, first, last), {}};
    edit.steps.push_back(SpliceRows{id, last + 1, 0, std::move(copies)});
    addFrame(edit, section, std::move(after.frame));
    return edit;
}

Result<Edit> moveRows(const Pattern& pattern, SectionId id, int first, int last, int before)
{
    if (auto fault = rowsFault(pattern, id, first, last))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (before < 0 || before > static_cast<int>(section.rows.size()))
        return Fault{{},
                     sectionWords(section),
                     "rows can be moved before rows 1 to " +
                         toText(static_cast<int>(section.rows.size()) + 1) + " of the chart, not before " +
                         toText(before + 1)};
    Edit edit{"move " + rowsWords(section, first, last), {}};
    if (before >= first && before <= last + 1)
        return edit;

    const int count = last - first + 1;
    const int to = before > last ? before - count : before;
    const std::vector<RowRef> moved(section.rows.begin() + first, section.rows.begin() + last + 1);
    std::vector<RowRef> rows = section.rows;
    rows.erase(rows.begin() + first, rows.begin() + last + 1);
    rows.insert(rows.begin() + to, moved.begin(), moved.end());
    SectionFrame frame = section.frame;
    for (Box& box : frame.boxes)
        follow(box, section, rows, first, last);
    for (Bracket& bracket : frame.brackets)
        follow(bracket, section, rows, first, last);
    if (auto fault = repeatsFault(pattern, frame, rows))
        return *fault;

    edit.steps.push_back(SpliceRows{id, first, count, {}});
    edit.steps.push_back(SpliceRows{id, to, 0, moved});
    addFrame(edit, section, std::move(frame));
    return edit;
}

} // namespace shawlwright
