#include "core/edits/move_stitches.h"

#include "core/base/text.h"
#include "core/edits/chart_clip.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright {
namespace {

std::string byWords(int rows, int columns)
{
    std::string words;
    if (rows != 0)
        words = counted(rows > 0 ? rows : -rows, "row") + (rows > 0 ? " up" : " down");
    if (columns != 0)
        words += (words.empty() ? "" : ", ") + counted(columns > 0 ? columns : -columns, "column") +
                 (columns > 0 ? " to the left" : " to the right");
    return words;
}

MaybeFault roomFault(const Section& section, const Area& from, int rows, int columns)
{
    const int most = static_cast<int>(section.rows.size());
    const auto lacks = [&](int number, const char* what, const char* edge, const char* mend) {
        return Fault{{},
                     sectionWords(section),
                     "moved " + byWords(rows, columns) + ", the stitches would reach " +
                         counted(number, what) + " past the " + edge +
                         " edge; move them less far or insert " + mend + " first"};
    };
    if (from.lastRow + rows >= most)
        return lacks(from.lastRow + rows - most + 1, "row", "upper", "rows");
    if (from.firstRow + rows < 0)
        return lacks(-from.firstRow - rows, "row", "lower", "rows");
    if (from.lastColumn + columns > section.frame.columns)
        return lacks(from.lastColumn + columns - section.frame.columns, "column", "left", "columns");
    if (from.firstColumn + columns < 1)
        return lacks(1 - from.firstColumn - columns, "column", "right", "columns");
    return std::nullopt;
}

// Where a gap opens no stitch may lie across.
MaybeFault partFault(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area,
                     Part part)
{
    if (auto fault = rowsFault(pattern, id, area.firstRow, area.lastRow))
        return fault;
    const Section& section = sectionIn(pattern, id);
    if (area.firstColumn < 1 || area.lastColumn < area.firstColumn || area.lastColumn > section.frame.columns)
        return Fault{{}, sectionWords(section), "the selection reaches out of the chart; select anew"};
    const int edge = part == Part::Left ? area.firstColumn : area.lastColumn;
    for (int at = area.firstRow; at <= area.lastRow; ++at) {
        const Row& row = *section.rows[static_cast<std::size_t>(at)];
        const Columns stitch = stitchAround(row, edge);
        if (part == Part::Left ? stitch.first < edge : stitch.last > edge)
            return Fault{{},
                         cellWords(section, at, edge),
                         stitchWords(catalogue, cellAt(row, edge).stitch, row.side) + " over columns " +
                             toText(stitch.first) + " to " + toText(stitch.last) +
                             " would be cut; begin beside it"};
    }
    return std::nullopt;
}

// Takes the marker moves inside the areas out of their rows and puts them into those they go to.
void carryMarkers(std::map<int, Row>& changed, const Section& section, const Areas& areas, int rows, int columns)
{
    std::vector<std::pair<int, MarkerMove>> carried;
    for (const Area& area : areas) {
        const bool whole = area.firstColumn == 1 && area.lastColumn == section.frame.columns;
        for (int at = area.firstRow; at <= area.lastRow; ++at)
            std::erase_if(changed.at(at).moves, [&](const MarkerMove& move) {
                if (!whole && (move.boundary < area.firstColumn || move.boundary >= area.lastColumn))
                    return false;
                carried.emplace_back(at + rows, move);
                carried.back().second.boundary += columns;
                return true;
            });
    }
    for (const auto& [at, move] : carried) {
        std::vector<MarkerMove>& moves = changed.at(at).moves;
        if (std::find(moves.begin(), moves.end(), move) == moves.end())
            moves.push_back(move);
    }
}

struct BoxRows {
    int first = 0, last = 0;
};

bool inside(const Box& box, BoxRows rows, const Area& area)
{
    return rows.first >= area.firstRow && rows.last <= area.lastRow && box.firstColumn >= area.firstColumn &&
           box.lastColumn <= area.lastColumn;
}

SectionFrame carriedBoxes(const Section& section, const Areas& areas, int rows, int columns, Leaving leaving)
{
    const auto rowsOf = [&](const Box& box) {
        return BoxRows{rowIndex(section, box.firstRow), rowIndex(section, box.lastRow)};
    };
    SectionFrame frame = section.frame;
    std::vector<Box> carried;
    std::uint32_t freshId = freshBoxId(section).value;
    std::erase_if(frame.boxes, [&](const Box& box) {
        const BoxRows from = rowsOf(box);
        if (std::none_of(areas.begin(), areas.end(), [&](const Area& area) { return inside(box, from, area); }))
            return false;
        Box there = box;
        if (leaving == Leaving::TheStitches)
            there.id = BoxId{freshId++};
        there.firstRow = section.rows[static_cast<std::size_t>(from.first + rows)]->id;
        there.lastRow = section.rows[static_cast<std::size_t>(from.last + rows)]->id;
        there.firstColumn += columns;
        there.lastColumn += columns;
        carried.push_back(std::move(there));
        return leaving == Leaving::NoStitch;
    });
    std::erase_if(frame.boxes, [&](const Box& box) {
        return std::any_of(carried.begin(), carried.end(), [&](const Box& over) {
            const BoxRows at = rowsOf(over);
            return inside(box, rowsOf(box), Area{at.first, at.last, over.firstColumn, over.lastColumn});
        });
    });
    frame.boxes.insert(frame.boxes.end(), carried.begin(), carried.end());
    return frame;
}

} // namespace

Result<Edit> moveStitches(const Pattern& pattern, const Catalogue& catalogue, SectionId id,
                          const Areas& areas, int rows, int columns, Leaving leaving)
{
    if (auto fault = cutFault(pattern, catalogue, id, areas))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const Area from = *around(areas);
    if (auto fault = roomFault(section, from, rows, columns))
        return *fault;
    const ChartClip clip = clipOf(section, catalogue, areas);
    std::map<int, Row> changed;
    if (leaving == Leaving::NoStitch) {
        ChartClip empty = clip;
        empty.pieces.clear();
        putInto(changed, section, catalogue, At{from.firstRow, from.firstColumn}, empty);
    }
    putInto(changed, section, catalogue, At{from.firstRow + rows, from.firstColumn + columns}, clip);
    if (leaving == Leaving::NoStitch)
        carryMarkers(changed, section, areas, rows, columns);
    auto edit = setRows(pattern, id, changed,
                        leaving == Leaving::NoStitch ? "move the selection" : "copy the selection along");
    const SectionFrame frame = carriedBoxes(section, areas, rows, columns, leaving);
    if (!edit.ok() || frame.boxes == section.frame.boxes)
        return edit;
    if (auto fault = repeatsFault(pattern, frame, section.rows))
        return *fault;
    addFrame(edit.value(), section, frame);
    return edit;
}

Result<Edit> shiftPart(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area,
                       Part part, Gap gap)
{
    if (auto fault = gap == Gap::Close ? cutFault(pattern, catalogue, id, joined({}, area))
                                       : partFault(pattern, catalogue, id, area, part))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int columns = section.frame.columns;
    const int count = area.lastColumn - area.firstColumn + 1;
    const int towardsLeft = part == Part::Left ? 1 : -1;
    const int by = gap == Gap::Open ? count * towardsLeft : -count * towardsLeft;
    // The columns that move.
    const int nearest = gap == Gap::Open ? 0 : count;
    const int first = part == Part::Left ? area.firstColumn + nearest : 1;
    const int last = part == Part::Left ? columns : area.lastColumn - nearest;
    const auto fallsOff = [&](int at, int column, const std::string& what) {
        return Fault{{},
                     cellWords(section, at, column),
                     what + " would fall off the " + (part == Part::Left ? "left" : "right") +
                         " edge when this part of the row moves by " + counted(count, "column") +
                         "; insert columns at that edge first"};
    };
    std::map<int, Row> changed;
    for (int at = area.firstRow; at <= area.lastRow; ++at) {
        const Row old = padded(*section.rows[static_cast<std::size_t>(at)], columns);
        Row row = old;
        const auto clear = [&row](int from, int to) {
            for (int column = from; column <= to; ++column)
                row.cells[static_cast<std::size_t>(column) - 1] = Cell{};
        };
        clear(first, last);
        if (gap == Gap::Close)
            clear(area.firstColumn, area.lastColumn);
        for (int column = first; column <= last; ++column) {
            const Cell cell = cellAt(old, column);
            if (cell.stitch == noStitch)
                continue;
            if (column + by < 1 || column + by > columns)
                return fallsOff(at, column, stitchWords(catalogue, cell.stitch, old.side));
            row.cells[static_cast<std::size_t>(column + by) - 1] = cell;
        }
        // A marker where the part begins stays with what stays; one in columns that go comes to stand at the
        // gap.
        for (MarkerMove& move : row.moves) {
            const int edge = part == Part::Left ? area.firstColumn - 1 : area.lastColumn;
            const int past = (move.boundary - edge) * towardsLeft;
            if (past <= 0)
                continue;
            const int now =
                gap == Gap::Close ? edge + std::max(0, past - count) * towardsLeft : move.boundary + by;
            if (now < 0 || now > columns)
                return fallsOff(at, part == Part::Left ? columns : 1, "a marker");
            move.boundary = now;
        }
        changed.emplace(at, std::move(row));
    }
    const std::string side = part == Part::Left ? "left" : "right";
    return setRows(pattern, id, changed,
                   gap == Gap::Open ? "move the " + side + " part of the row over"
                                    : "close up the " + side + " part of the row");
}

} // namespace shawlwright
