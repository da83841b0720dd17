// Columns that come and go: rows.h.

#include "core/edits/rows.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

namespace shawlwright {
namespace {

// Where new columns after boundary `boundary` go in one row: to the left of a stitch that lies across.
int gapIn(const Row& row, int boundary)
{
    return boundary == 0 ? 0 : stitchAround(row, boundary).last;
}

int without(int boundary, int first, int last)
{
    return boundary < first ? boundary : boundary <= last ? first - 1 : boundary - (last - first + 1);
}

} // namespace

Result<Edit> insertColumns(const Pattern& pattern, SectionId id, int boundary, int count)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int columns = section.frame.columns;
    if (boundary < 0 || boundary > columns)
        return Fault{{},
                     sectionWords(section),
                     "columns can be put after columns 0 to " + toText(columns) + ", not after " +
                         toText(boundary)};
    if (count < 1 || count > mostColumns - columns)
        return Fault{{},
                     sectionWords(section),
                     toText(count) + " columns asked for, there is room for 1 to " +
                         toText(mostColumns - columns) + " more; use a stitch repeat or another section"};

    Edit edit{"insert " + counted(count, "column"), {}};
    SectionFrame frame = section.frame;
    frame.columns += count;
    for (Box& box : frame.boxes) {
        box.firstColumn += box.firstColumn > boundary ? count : 0;
        box.lastColumn += box.lastColumn > boundary ? count : 0;
    }
    std::map<int, Row> rows;
    std::vector<RowRef> after;
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        Row row = padded(*section.rows[i], columns);
        const int gap = gapIn(row, boundary);
        row.cells.insert(row.cells.begin() + gap, static_cast<std::size_t>(count), Cell{});
        for (MarkerMove& move : row.moves)
            move.boundary += move.boundary > gap ? count : 0;
        after.push_back(std::make_shared<const Row>(row));
        rows.emplace(static_cast<int>(i), std::move(row));
    }
    if (auto fault = repeatsFault(pattern, frame, after))
        return *fault;
    addFrame(edit, section, std::move(frame));
    addSwap(edit, section, std::move(rows));
    return edit;
}

Result<Edit> deleteColumns(const Pattern& pattern, const Catalogue&, SectionId id, int first, int last)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int columns = section.frame.columns;
    if (first < 1 || last < first || last > columns)
        return Fault{{},
                     sectionWords(section),
                     "columns " + toText(first) + " to " + toText(last) + " asked for, the chart has " +
                         counted(columns, "column") + "; choose columns inside it"};
    if (last - first + 1 == columns)
        return Fault{{},
                     sectionWords(section),
                     "these are all of its columns, and one has to stay; delete the section instead"};

    Edit edit{first == last ? "delete column " + toText(first)
                            : "delete columns " + toText(first) + " to " + toText(last),
              {}};
    SectionFrame frame = section.frame;
    frame.columns -= last - first + 1;
    for (Box& box : frame.boxes) {
        box.firstColumn = without(box.firstColumn - 1, first, last) + 1;
        box.lastColumn = without(box.lastColumn, first, last);
    }
    std::erase_if(frame.boxes, [](const Box& box) { return box.lastColumn < box.firstColumn; });
    std::map<int, Row> rows;
    std::vector<RowRef> after;
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        Row row = padded(*section.rows[i], columns);
        for (const int edge : {first, last}) { // a stitch cut in two becomes no stitch, whole
            const Columns stitch = stitchAround(row, edge);
            if (stitch.first < first || stitch.last > last)
                for (int at = stitch.first; at <= stitch.last; ++at)
                    row.cells[static_cast<std::size_t>(at) - 1] = Cell{};
        }
        row.cells.erase(row.cells.begin() + first - 1, row.cells.begin() + last);
        for (MarkerMove& move : row.moves)
            move.boundary = without(move.boundary, first, last);
        after.push_back(std::make_shared<const Row>(row));
        rows.emplace(static_cast<int>(i), std::move(row));
    }
    if (auto fault = repeatsFault(pattern, frame, after))
        return *fault;
    addFrame(edit, section, std::move(frame));
    addSwap(edit, section, std::move(rows));
    return edit;
}

} // namespace shawlwright
