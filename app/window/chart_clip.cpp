#include "app/window/chart_clip.h"

#include "core/base/text.h"
#include "core/edits/rows.h"

namespace shawlwright::app {

ChartClip clipOf(const Section& section, const Catalogue& catalogue, const Area& area)
{
    ChartClip clip;
    clip.rows = area.lastRow - area.firstRow + 1;
    clip.columns = area.lastColumn - area.firstColumn + 1;
    for (int row = area.firstRow; row <= area.lastRow; ++row)
        for (int column = area.firstColumn; column <= area.lastColumn; ++column) {
            const Cell cell = cellAt(*section.rows[static_cast<std::size_t>(row)], column);
            const int width = catalogue.stitch(cell.stitch).width();
            if (cell.stitch == noStitch || cell.part != 0 || column + width - 1 > area.lastColumn)
                continue;
            clip.pieces.push_back({row - area.firstRow, column - area.firstColumn, cell.stitch, cell.yarn});
        }
    return clip;
}

ChartClip mirroredClip(ChartClip clip, const Catalogue& catalogue)
{
    for (ChartClip::Piece& piece : clip.pieces) {
        piece.column = clip.columns - piece.column - catalogue.stitch(piece.stitch).width();
        piece.stitch = catalogue.mirrored(piece.stitch).value_or(piece.stitch);
    }
    return clip;
}

Result<Edit> putDown(const Pattern& pattern, const Catalogue& catalogue, SectionId id, At at,
                     const ChartClip& clip, std::string name)
{
    const int index = sectionIndex(pattern, id);
    if (index < 0)
        return Fault{{}, "", "The section is gone."};
    const Section& section = pattern.sections[static_cast<std::size_t>(index)];
    const int rows = static_cast<int>(section.rows.size());
    if (at.row + clip.rows > rows)
        return Fault{{},
                     placeInWords(pattern, index, at.row),
                     "needs " + counted(clip.rows, "row") + " from here up, " + toText(rows - at.row) +
                         " are left; insert rows first"};
    if (at.column + clip.columns - 1 > section.frame.columns)
        return Fault{{},
                     placeInWords(pattern, index, at.row),
                     "needs " + counted(clip.columns, "column") + " from here to the left, " +
                         toText(section.frame.columns - at.column + 1) + " are left; insert columns first"};
    std::map<int, Row> changed;
    for (int row = 0; row < clip.rows; ++row) {
        Row fresh = *section.rows[static_cast<std::size_t>(at.row + row)];
        for (int column = 0; column < clip.columns; ++column)
            fresh = painted(std::move(fresh), catalogue, at.column + column, noStitch, {});
        changed.emplace(at.row + row, std::move(fresh));
    }
    for (const ChartClip::Piece& piece : clip.pieces) {
        Row& row = changed.at(at.row + piece.row);
        row = painted(std::move(row), catalogue, at.column + piece.column, piece.stitch, piece.yarn);
    }
    return setRows(pattern, id, changed, std::move(name));
}

} // namespace shawlwright::app
