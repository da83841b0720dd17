#include "core/edits/chart_clip.h"

#include "core/base/text.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

namespace shawlwright {
namespace {

Row& opened(std::map<int, Row>& rows, const Section& section, int at)
{
    const auto found = rows.find(at);
    if (found != rows.end())
        return found->second;
    const Row& row = *section.rows[static_cast<std::size_t>(at)];
    return rows.emplace(at, padded(row, section.frame.columns)).first->second;
}

} // namespace

ChartClip clipOf(const Section& section, const Catalogue& catalogue, const Areas& areas)
{
    ChartClip clip;
    const std::optional<Area> whole = around(areas);
    if (!whole)
        return clip;
    clip.rows = whole->lastRow - whole->firstRow + 1;
    clip.columns = whole->lastColumn - whole->firstColumn + 1;
    clip.areas = shifted(areas, -whole->firstRow, 1 - whole->firstColumn);
    for (const Area& area : areas)
        for (int row = area.firstRow; row <= area.lastRow; ++row)
            for (int column = area.firstColumn; column <= area.lastColumn; ++column) {
                const Cell cell = cellAt(*section.rows[static_cast<std::size_t>(row)], column);
                const int width = catalogue.stitch(cell.stitch).width();
                if (cell.stitch == noStitch || cell.part != 0 || column + width - 1 > area.lastColumn)
                    continue;
                clip.pieces.push_back(
                    {row - whole->firstRow, column - whole->firstColumn, cell.stitch, cell.yarn});
            }
    return clip;
}

void putInto(std::map<int, Row>& rows, const Section& section, const Catalogue& catalogue, At at,
             const ChartClip& clip)
{
    for (const Area& area : clip.areas)
        for (int row = at.row + area.firstRow; row <= at.row + area.lastRow; ++row) {
            Row& into = opened(rows, section, row);
            for (int column = area.firstColumn; column <= area.lastColumn; ++column)
                into = painted(std::move(into), catalogue, at.column + column - 1, noStitch, {});
        }
    for (const ChartClip::Piece& piece : clip.pieces) {
        Row& into = opened(rows, section, at.row + piece.row);
        into = painted(std::move(into), catalogue, at.column + piece.column, piece.stitch, piece.yarn);
    }
}

Result<Edit> putDown(const Pattern& pattern, const Catalogue& catalogue, SectionId id, At at,
                     const ChartClip& clip, std::string name)
{
    if (auto fault = rowFault(pattern, id, at.row))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int rows = static_cast<int>(section.rows.size());
    const std::string where = placeInWords(pattern, sectionIndex(pattern, id), at.row);
    if (at.row + clip.rows > rows)
        return Fault{{},
                     where,
                     "needs " + counted(clip.rows, "row") + " from here up, " + toText(rows - at.row) +
                         " are left; insert rows first"};
    if (at.column < 1 || at.column + clip.columns - 1 > section.frame.columns)
        return Fault{{},
                     where,
                     "needs " + counted(clip.columns, "column") + " from here to the left, " +
                         toText(section.frame.columns - at.column + 1) + " are left; insert columns first"};
    std::map<int, Row> changed;
    putInto(changed, section, catalogue, at, clip);
    return setRows(pattern, id, changed, std::move(name));
}

std::optional<Fault> cutFault(const Pattern& pattern, const Catalogue& catalogue, SectionId id,
                              const Areas& areas)
{
    if (areas.empty())
        return Fault{{}, "", "nothing is selected; select stitches first"};
    if (auto fault = sectionFault(pattern, id))
        return fault;
    const Section& section = sectionIn(pattern, id);
    if (clipped(areas, static_cast<int>(section.rows.size()), section.frame.columns) != areas)
        return Fault{{}, sectionWords(section), "the selection reaches out of the chart; select anew"};
    for (const Area& area : areas)
        for (int at = area.firstRow; at <= area.lastRow; ++at) {
            const Row& row = *section.rows[static_cast<std::size_t>(at)];
            for (const int edge : {area.firstColumn, area.lastColumn}) {
                const Columns stitch = stitchAround(row, edge);
                if (stitch.first < area.firstColumn || stitch.last > area.lastColumn)
                    return Fault{{},
                                 cellWords(section, at, edge),
                                 stitchWords(catalogue, cellAt(row, edge).stitch, row.side) +
                                     " over columns " + toText(stitch.first) + " to " + toText(stitch.last) +
                                     " is selected in part; select all of it or none"};
            }
        }
    return std::nullopt;
}

} // namespace shawlwright
