#include "core/edits/paint.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>
#include <cassert>

namespace shawlwright {
namespace {

std::string left(int columns)
{
    return toText(columns) + (columns == 1 ? " is left" : " are left");
}

MaybeFault cellFault(const Pattern& pattern, const Section& section, At at)
{
    if (const auto fault = rowFault(pattern, section.id, at.row))
        return fault;
    if (at.column >= 1 && at.column <= section.frame.columns)
        return std::nullopt;
    return Fault{{},
                 sectionWords(section),
                 "column " + toText(at.column) + " asked for, the chart has " +
                     counted(section.frame.columns, "column") + "; choose one inside it"};
}

MaybeFault stitchFault(const Pattern& pattern, const Catalogue& catalogue, SectionId section, StitchId stitch,
                       YarnId yarn)
{
    if (const auto fault = sectionFault(pattern, section))
        return fault;
    if (const auto fault = yarnFault(pattern, yarn))
        return fault;
    if (!catalogue.known(stitch))
        return Fault{{}, "", "the stitch is neither a built-in one nor one of the pattern's; choose another"};
    return std::nullopt;
}

// Each stitch that has a cell in [first, last] becomes no stitch, whole.
void clear(Row& row, int first, int last)
{
    for (int column = first; column <= last; ++column) {
        const Columns stitch = stitchAround(row, column);
        for (int at = stitch.first; at <= stitch.last; ++at)
            row.cells[static_cast<std::size_t>(at) - 1] = Cell{};
    }
}

void put(Row& row, int column, StitchId stitch, int width, YarnId yarn)
{
    if (yarn == row.yarn)
        yarn = YarnId{}; // the row's own need not be said
    for (int part = 0; part < width; ++part)
        row.cells[static_cast<std::size_t>(column + part) - 1] =
            stitch == noStitch ? Cell{} : Cell{stitch, yarn, static_cast<std::uint8_t>(part)};
}

const Row& rowAt(const Section& section, int row)
{
    return *section.rows[static_cast<std::size_t>(row)];
}

// The rows of the map that are still as they were, but for no stitches at the left, are left out.
void addPainted(Edit& edit, const Section& section, std::map<int, Row> rows)
{
    std::erase_if(rows, [&](const auto& entry) {
        return padded(rowAt(section, entry.first), section.frame.columns) == entry.second;
    });
    addSwap(edit, section, std::move(rows));
}

Row& opened(std::map<int, Row>& rows, const Section& section, int row)
{
    const auto found = rows.find(row);
    if (found != rows.end())
        return found->second;
    return rows.emplace(row, padded(rowAt(section, row), section.frame.columns)).first->second;
}

} // namespace

Row painted(Row row, const Catalogue& catalogue, int column, StitchId stitch, YarnId yarn)
{
    const int width = catalogue.stitch(stitch).width();
    assert(column >= 1 && column + width - 1 <= mostColumns);
    row = padded(std::move(row), column + width - 1);
    clear(row, column, column + width - 1);
    put(row, column, stitch, width, yarn);
    return row;
}

Result<Edit> paint(const Pattern& pattern, const Catalogue& catalogue, SectionId id,
                   std::span<const At> cells, StitchId stitch, YarnId yarn)
{
    if (auto fault = stitchFault(pattern, catalogue, id, stitch, yarn))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int width = catalogue.stitch(stitch).width();

    // In knitting order within a row; a cell that a stitch of this very call covers already is not painted
    // over, so a stroke along a row puts wide stitches side by side.
    std::vector<At> sorted(cells.begin(), cells.end());
    std::sort(sorted.begin(), sorted.end());
    Edit edit;
    std::map<int, Row> rows;
    At next{-1, 0};
    for (const At at : sorted) {
        if (auto fault = cellFault(pattern, section, at))
            return *fault;
        if (at < next)
            continue;
        if (at.column + width - 1 > section.frame.columns)
            return Fault{{},
                         cellWords(section, at.row, at.column),
                         stitchWords(catalogue, stitch, rowAt(section, at.row).side) + " is " +
                             counted(width, "column") + " wide, " +
                             left(section.frame.columns - at.column + 1) +
                             " to the edge of the chart; paint it further to the right or widen the chart"};
        Row& row = opened(rows, section, at.row);
        row = painted(std::move(row), catalogue, at.column, stitch, yarn);
        next = At{at.row, at.column + width};
    }
    if (!sorted.empty())
        edit.name = "paint " + stitchWords(catalogue, stitch, rowAt(section, sorted.front().row).side);
    addPainted(edit, section, std::move(rows));
    return edit;
}

Result<Edit> fill(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area,
                  StitchId stitch, YarnId yarn)
{
    if (auto fault = stitchFault(pattern, catalogue, id, stitch, yarn))
        return *fault;
    if (auto fault = rowsFault(pattern, id, area.firstRow, area.lastRow))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    for (const int column : {area.firstColumn, area.lastColumn})
        if (auto fault = cellFault(pattern, section, At{area.firstRow, column}))
            return *fault;
    if (area.lastColumn < area.firstColumn)
        return Fault{{}, sectionWords(section), "the area to fill has no columns; mark it again"};

    const int width = catalogue.stitch(stitch).width();
    if (area.lastColumn - area.firstColumn + 1 < width)
        return Fault{{},
                     sectionWords(section),
                     stitchWords(catalogue, stitch, rowAt(section, area.firstRow).side) + " is " +
                         counted(width, "column") + " wide, the area " +
                         toText(area.lastColumn - area.firstColumn + 1) + "; mark a wider one"};
    Edit edit{"fill with " + stitchWords(catalogue, stitch, rowAt(section, area.firstRow).side), {}};
    std::map<int, Row> rows;
    for (int at = area.firstRow; at <= area.lastRow; ++at) {
        Row& row = opened(rows, section, at);
        clear(row, area.firstColumn, area.lastColumn);
        for (int column = area.firstColumn; column + width - 1 <= area.lastColumn; column += width)
            put(row, column, stitch, width, yarn);
    }
    addPainted(edit, section, std::move(rows));
    return edit;
}

Result<Edit> erase(const Pattern& pattern, const Catalogue& catalogue, SectionId id,
                   std::span<const At> cells)
{
    auto edit = paint(pattern, catalogue, id, cells, noStitch);
    if (edit.ok())
        edit.value().name = "erase stitches";
    return edit;
}

Result<Edit> setCellYarn(const Pattern& pattern, SectionId id, std::span<const At> cells, YarnId yarn)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    if (auto fault = yarnFault(pattern, yarn))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    std::map<int, Row> rows;
    for (const At at : cells) {
        if (auto fault = cellFault(pattern, section, at))
            return *fault;
        Row& row = opened(rows, section, at.row);
        if (cellAt(row, at.column).stitch == noStitch)
            continue;
        const Columns stitch = stitchAround(row, at.column);
        for (int column = stitch.first; column <= stitch.last; ++column)
            row.cells[static_cast<std::size_t>(column) - 1].yarn = yarn == row.yarn ? YarnId{} : yarn;
    }
    const Yarn* named = yarnOf(pattern.head, yarn);
    Edit edit{named ? "stitches in " + named->code : "stitches in the row's yarn", {}};
    addPainted(edit, section, std::move(rows));
    return edit;
}

Result<Edit> shiftRow(const Pattern& pattern, const Catalogue& catalogue, SectionId id, int at, int columns)
{
    if (auto fault = rowFault(pattern, id, at))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int width = section.frame.columns;
    const Row old = padded(rowAt(section, at), width);
    const auto fallsOff = [&](const std::string& what) {
        return Fault{{},
                     cellWords(section, at, 1),
                     what + " would fall off the " + (columns > 0 ? "left" : "right") +
                         " edge when the row moves by " +
                         counted(columns > 0 ? columns : -columns, "column") + "; widen the chart first"};
    };
    Row row = old;
    std::fill(row.cells.begin(), row.cells.end(), Cell{});
    for (int column = 1; column <= width; ++column) {
        const Cell cell = cellAt(old, column);
        if (cell.stitch == noStitch)
            continue;
        const int to = column + columns;
        if (to < 1 || to > width)
            return fallsOff(stitchWords(catalogue, cell.stitch, old.side) + " in column " + toText(column));
        row.cells[static_cast<std::size_t>(to) - 1] = cell;
    }
    for (MarkerMove& move : row.moves) {
        move.boundary += columns;
        if (move.boundary < 0 || move.boundary > width)
            return fallsOff("a marker");
    }
    Edit edit{std::string("shift the row to the ") + (columns > 0 ? "left" : "right"), {}};
    std::map<int, Row> rows;
    rows.emplace(at, std::move(row));
    addPainted(edit, section, std::move(rows));
    return edit;
}

} // namespace shawlwright
