#include "core/needle/work_row.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

void RowWork::followColumn(const Stitch& stitch)
{
    const Loop& middle = m_previousTaken;
    if (!middle.under || middle.flags != 0 || middle.kind != LoopKind::Plain || stitch.takesUp != 1 ||
        *middle.under != m_previousFace)
        return;
    Columns& columns = m_columns[static_cast<std::size_t>(m_previousFace)];
    if (middle.face == m_previousFace) {
        ++columns.kept;
        return;
    }
    if (columns.broken == 0 || middle.madeIn != columns.row) {
        columns.broken = 0;
        columns.column = middle.column;
        columns.row = middle.madeIn;
    }
    ++columns.broken;
    columns.column = std::min<int>(columns.column, middle.column);
}

// Ribs stand; a row in which some of their columns change over and back is more often a slip than meant. Only where
// columns of both faces go on, and no fewer than are broken: bumps on a plain ground are not told.
void RowWork::checkColumns()
{
    const auto of = [this](Face face) -> const Columns& { return m_columns[static_cast<std::size_t>(face)]; };
    if (of(Face::Knit).kept == 0 || of(Face::Purl).kept == 0)
        return;
    for (const Face face : {Face::Knit, Face::Purl}) {
        const Columns& columns = of(face);
        if (columns.broken == 0 || columns.broken > columns.kept)
            continue;
        const std::string stands = face == Face::Knit ? "knit" : "purl";
        const std::string shows = face == Face::Knit ? "purl" : "knit";
        find(Severity::Note, FindingKind::ColumnBroken, columns.column,
             counted(columns.broken, "stitch shows ", "stitches show ") + shows + " on the RS where the rows below and above show " +
                 stands + ". If that is not meant, work " + (columns.broken == 1 ? "it" : "them") + " as the column stands")
            .in = columns.row;
    }
}

} // namespace shawlwright
