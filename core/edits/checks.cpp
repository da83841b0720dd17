#include "core/edits/checks.h"

#include "core/base/text.h"

#include <algorithm>
#include <cassert>

namespace shawlwright {
namespace {

struct Span {
    int first = -1;
    int last = -1;
};

Span spanOf(const std::vector<RowRef>& rows, RowId first, RowId last)
{
    Span span;
    for (int i = 0; i < static_cast<int>(rows.size()); ++i) {
        const RowId id = rows[static_cast<std::size_t>(i)]->id;
        if (id == first)
            span.first = i;
        if (id == last)
            span.last = i;
    }
    return span;
}

bool overlap(int a, int b, int c, int d)
{
    return a <= d && c <= b;
}
bool within(int a, int b, int c, int d) // [a, b] in [c, d]
{
    return c <= a && b <= d;
}

MaybeFault boxFault(const Pattern& pattern, const std::string& where, const SectionFrame& frame,
                    const std::vector<RowRef>& rows, const Box& box, Span span)
{
    if (span.first < 0 || span.last < span.first || box.firstColumn < 1 || box.lastColumn < box.firstColumn ||
        box.lastColumn > frame.columns)
        return Fault{{},
                     where,
                     "the stitch repeat over columns " + toText(box.firstColumn) + " to " +
                         toText(box.lastColumn) + " lies outside of the chart of " +
                         counted(frame.columns, "column") + " and " +
                         counted(static_cast<int>(rows.size()), "row") + "; draw it inside"};
    if (const auto fault =
            quantityFault(pattern, where, "the times of the stitch repeat", box.times, 0, mostRepeats))
        return fault;
    if (const auto fault = quantityFault(pattern, where, "the stitches left by the stitch repeat",
                                         box.leaving, 0, mostCount))
        return fault;
    if (box.until == BoxUntil::Marker && !markerOf(pattern.head, box.marker))
        return Fault{
            {}, where, "the stitch repeat goes to a marker that the pattern doesn't have; choose another"};
    return std::nullopt;
}

MaybeFault boxesFault(const Pattern& pattern, const std::string& where, const SectionFrame& frame,
                      const std::vector<RowRef>& rows)
{
    std::vector<Span> spans;
    for (std::size_t i = 0; i < frame.boxes.size(); ++i) {
        const Box& box = frame.boxes[i];
        const Span span = spanOf(rows, box.firstRow, box.lastRow);
        if (const auto fault = boxFault(pattern, where, frame, rows, box, span))
            return fault;
        int around = 0;
        for (std::size_t o = 0; o < spans.size(); ++o) {
            const Box& other = frame.boxes[o];
            if (!overlap(span.first, span.last, spans[o].first, spans[o].last) ||
                !overlap(box.firstColumn, box.lastColumn, other.firstColumn, other.lastColumn))
                continue;
            const bool inside = within(box.firstColumn, box.lastColumn, other.firstColumn, other.lastColumn);
            if (!inside && !within(other.firstColumn, other.lastColumn, box.firstColumn, box.lastColumn))
                return Fault{{},
                             where,
                             "the stitch repeats over columns " + toText(other.firstColumn) + " to " +
                                 toText(other.lastColumn) + " and " + toText(box.firstColumn) + " to " +
                                 toText(box.lastColumn) +
                                 " would cross; put one inside the other or part them"};
            ++around;
        }
        if (around >= mostNesting)
            return Fault{{},
                         where,
                         "stitch repeats would lie more than " + toText(mostNesting) + " deep; unfold some"};
        spans.push_back(span);
    }
    return std::nullopt;
}

MaybeFault bracketsFault(const Pattern& pattern, const std::string& where, const SectionFrame& frame,
                         const std::vector<RowRef>& rows)
{
    std::vector<Span> spans;
    for (const Bracket& bracket : frame.brackets) {
        const Span span = spanOf(rows, bracket.firstRow, bracket.lastRow);
        if (span.first < 0 || span.last < span.first)
            return Fault{
                {}, where, "the row repeat lies outside of the chart; draw it over rows that are there"};
        if (const auto fault =
                quantityFault(pattern, where, "the times of the row repeat", bracket.times, 0, mostRepeats))
            return fault;
        int around = 0;
        for (const Span& other : spans) {
            if (!overlap(span.first, span.last, other.first, other.last))
                continue;
            if (!within(span.first, span.last, other.first, other.last) &&
                !within(other.first, other.last, span.first, span.last))
                return Fault{
                    {},
                    where,
                    "row repeats over rows " + toText(other.first + 1) + " to " + toText(other.last + 1) +
                        " and " + toText(span.first + 1) + " to " + toText(span.last + 1) +
                        " (counted in the chart) would cross; put one inside the other or part them"};
            ++around;
        }
        if (around >= mostNesting)
            return Fault{
                {}, where, "row repeats would lie more than " + toText(mostNesting) + " deep; unfold some"};
        spans.push_back(span);
    }
    return std::nullopt;
}

} // namespace

MaybeFault sectionFault(const Pattern& pattern, SectionId id)
{
    if (sectionIndex(pattern, id) >= 0)
        return std::nullopt;
    return Fault{{}, "", "the section is no longer in the pattern; choose one that is"};
}

MaybeFault rowFault(const Pattern& pattern, SectionId id, int row)
{
    return rowsFault(pattern, id, row, row);
}

MaybeFault rowsFault(const Pattern& pattern, SectionId id, int first, int last)
{
    if (const auto fault = sectionFault(pattern, id))
        return fault;
    const Section& section = sectionIn(pattern, id);
    if (first >= 0 && first <= last && last < static_cast<int>(section.rows.size()))
        return std::nullopt;
    const std::string asked =
        first == last ? "row " + toText(first + 1) : "rows " + toText(first + 1) + " to " + toText(last + 1);
    return Fault{{},
                 sectionWords(section),
                 asked + " of the chart asked for, it has " +
                     counted(static_cast<int>(section.rows.size()), "row") + "; choose rows inside it"};
}

MaybeFault yarnFault(const Pattern& pattern, YarnId yarn)
{
    if (yarn == YarnId{} || yarnOf(pattern.head, yarn))
        return std::nullopt;
    return Fault{{}, "", "the yarn is not one of the pattern's; choose one of them"};
}

MaybeFault quantityFault(const Pattern& pattern, const std::string& where, const std::string& what,
                         const Quantity& quantity, int least, int most)
{
    const int sizes = sizeCount(pattern);
    if (quantity.values.empty() || (!quantity.single() && static_cast<int>(quantity.values.size()) != sizes))
        return Fault{{},
                     where,
                     what + " has " + counted(static_cast<int>(quantity.values.size()), "number") + " for " +
                         counted(sizes, "size") + "; give one number, or one per size"};
    for (const int value : quantity.values)
        if (value < least || value > most)
            return Fault{
                {}, where, what + " is " + toText(value) + "; give " + toText(least) + " to " + toText(most)};
    return std::nullopt;
}

MaybeFault rowValuesFault(const Pattern& pattern, const Section& section, const Row& row,
                          const std::string& where)
{
    const int columns = section.frame.columns;
    if (!yarnOf(pattern.head, row.yarn))
        return Fault{{}, where, "needs one of the pattern's yarns"};
    if (static_cast<int>(row.cells.size()) > columns)
        return Fault{{},
                     where,
                     "would have " + counted(static_cast<int>(row.cells.size()), "column") +
                         " in a chart of " + toText(columns) + "; widen the chart first"};
    if (row.start.kind == StartKind::AfterSlipping)
        if (const auto fault = quantityFault(pattern, where, "the number of stitches slipped first",
                                             row.start.slip, 0, mostCount))
            return fault;
    if (row.stated)
        if (const auto fault = quantityFault(pattern, where, "the stated count", *row.stated, 0, mostCount))
            return fault;
    for (const MarkerMove& move : row.moves) {
        if (move.boundary < 0 || move.boundary > columns)
            return Fault{{},
                         where,
                         "a marker after column " + toText(move.boundary) + " lies outside of the chart of " +
                             counted(columns, "column") + "; put it inside"};
        if (!markerOf(pattern.head, move.marker))
            return Fault{{}, where, "moves a marker that the pattern doesn't have; place a new one"};
    }
    for (const std::string* text : {&row.label, &row.note, &row.words})
        if (!validUtf8(*text))
            return Fault{{}, where, "the text holds characters that can't be kept; type it again"};
    return std::nullopt;
}

MaybeFault repeatsFault(const Pattern& pattern, const SectionFrame& frame, const std::vector<RowRef>& rows)
{
    const std::string where = "Section '" + frame.title + "'";
    if (const auto fault = boxesFault(pattern, where, frame, rows))
        return fault;
    return bracketsFault(pattern, where, frame, rows);
}

const Section& sectionIn(const Pattern& pattern, SectionId id)
{
    const int at = sectionIndex(pattern, id);
    assert(at >= 0);
    return pattern.sections[static_cast<std::size_t>(at)];
}

std::string sectionWords(const Section& section)
{
    return "Section '" + section.frame.title + "'";
}

std::string cellWords(const Section& section, int row, int column)
{
    return sectionWords(section) + ", Row " + rowLabels(section)[static_cast<std::size_t>(row)] +
           ", column " + toText(column);
}

std::string stitchWords(const Catalogue& catalogue, StitchId id, Side side)
{
    if (id == noStitch)
        return "no stitch";
    const Stitch& stitch = catalogue.stitch(id);
    const std::string& word = abbreviation(stitch, side);
    return word.empty() ? stitch.name : word;
}

Columns stitchAround(const Row& row, int column)
{
    const Cell cell = cellAt(row, column);
    Columns columns{column - cell.part, column};
    const auto belongs = [&](int at) {
        const Cell other = cellAt(row, at);
        return other.stitch == cell.stitch && other.part == at - columns.first;
    };
    if (cell.stitch == noStitch || columns.first < 1)
        return {column, column};
    for (int at = columns.first; at < column; ++at)
        if (!belongs(at))
            return {column, column};
    while (columns.last < static_cast<int>(row.cells.size()) && belongs(columns.last + 1))
        ++columns.last;
    return columns;
}

Row padded(Row row, int columns)
{
    if (static_cast<int>(row.cells.size()) < columns)
        row.cells.resize(static_cast<std::size_t>(columns));
    return row;
}

void addSwap(Edit& edit, const Section& section, std::map<int, Row> rows)
{
    SwapRows swap{section.id, {}};
    for (auto& [at, row] : rows)
        if (*section.rows[static_cast<std::size_t>(at)] != row)
            swap.rows.emplace(at, std::make_shared<const Row>(std::move(row)));
    if (!swap.rows.empty())
        edit.steps.push_back(std::move(swap));
}

void addFrame(Edit& edit, const Section& section, SectionFrame frame)
{
    if (section.frame != frame)
        edit.steps.push_back(SwapFrame{section.id, std::move(frame)});
}

} // namespace shawlwright
