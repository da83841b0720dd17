// Painting that is done mirrored as well, shown where it will lie.
#include "app/canvas/canvas_parts.h"
#include "app/document/text.h"
#include "core/edits/mirror_edit.h"
#include "core/edits/turn_moves.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

void Canvas::setPaintMirror(std::optional<PaintMirror> mirror)
{
    endStroke();
    if (m->mirror == mirror)
        return;
    m->mirror = mirror;
    m->repaintAll();
    Q_EMIT paintMirrorChanged();
}

std::optional<PaintMirror> Canvas::paintMirror() const
{
    return m->mirror;
}

// The middle of the selected columns; a marker beside the cursor; else the cursor's column.
PaintMirror Canvas::mirrorHere() const
{
    if (const std::optional<Area> area = selection(); area && area != m->clicked)
        return {{}, area->firstColumn + area->lastColumn};
    const At here = cursor();
    if (const int line = m->out ? -1 : m->facts.line(here.row); line >= 0)
        for (const MarkerAt& stands : m->document.derived().ledger().before[static_cast<std::size_t>(line)].markers)
            if (stands.column == here.column || stands.column == here.column - 1)
                return {stands.marker, 0};
    if (const Row* row = m->out ? nullptr : m->row(here.row))
        for (const MarkerMove& move : row->moves)
            if (move.kind != MoveKind::Remove && (move.boundary == here.column || move.boundary == here.column - 1))
                return {move.marker, 0};
    return {{}, 2 * here.column};
}

// Twice the middle of a row; about a marker it stands where that row has it.
std::optional<int> Canvas::Parts::mirrorSum(int at) const
{
    if (!mirror || out) // the rows as they are knitted are only looked at
        return std::nullopt;
    if (!mirror->marker)
        return mirror->sum;
    if (const Row* here = row(at))
        for (const MarkerMove& move : here->moves)
            if (move.marker == *mirror->marker && move.kind != MoveKind::Remove)
                return 2 * move.boundary + 1;
    if (const int line = facts.line(at); line >= 0)
        for (const MarkerAt& stands : document.derived().ledger().before[static_cast<std::size_t>(line)].markers)
            if (stands.marker == *mirror->marker)
                return 2 * stands.column + 1;
    return std::nullopt;
}

bool Canvas::Parts::performPainted(const Result<Edit>& edit, int stroke)
{
    const Result<Edit> whole = mirror && edit.ok()
                                   ? mirroredToo(document.pattern(), document.catalogue(), section, edit.value(),
                                                 [this](int at) { return mirrorSum(at); })
                                   : edit;
    const std::string moved =
        whole.ok() ? turnMovesInWords(document.pattern(), turnMoves(document.pattern(), whole.value())) : std::string();
    if (!perform(whole, stroke))
        return false;
    if (!moved.empty())
        Q_EMIT canvas.told(toQt(moved));
    return true;
}

std::optional<QRect> Canvas::Parts::mirroredHover() const
{
    const bool paints = tool == CanvasTool::Paint || tool == CanvasTool::Erase || tool == CanvasTool::Area;
    if (!hover.cell || !paints)
        return std::nullopt;
    const auto sum = mirrorSum(hover.cell->row);
    if (!sum)
        return std::nullopt;
    const int width = tool == CanvasTool::Erase ? 1 : brushWidth();
    return geometry.cellRect(hover.cell->row, *sum - (hover.cell->column + width - 1), width);
}

// The line about which it is painted, through the rows that have it.
void Canvas::Parts::paintMirrorLine(QPainter& painter)
{
    const std::optional<Area> area = mirror ? geometry.cellsIn(geometry.grid) : std::nullopt;
    if (!area)
        return;
    const int thick = std::max(2, static_cast<int>(std::lround(2 * ratio)));
    painter.save();
    painter.setClipRect(geometry.grid);
    QPen pen(theme.accent, thick, Qt::DashLine, Qt::FlatCap);
    painter.setPen(pen);
    std::optional<int> runSum;
    int runTop = 0, runBottom = 0;
    const auto draw = [&] {
        if (!runSum)
            return;
        const int boundary = *runSum / 2; // the boundary itself, or the column whose middle it is
        const QRect cell_ = geometry.cellRect(area->firstRow, boundary);
        const int x = *runSum % 2 == 0 ? cell_.center().x() : cell_.left();
        painter.drawLine(x, runTop, x, runBottom);
    };
    for (int at = area->lastRow; at >= area->firstRow; --at) {
        if (shownRows.hides(at))
            continue;
        const auto sum = mirrorSum(at);
        const QRect cell_ = geometry.cellRect(at, 1);
        if (sum != runSum) {
            draw();
            runSum = sum;
            runTop = cell_.top();
        }
        runBottom = cell_.bottom() + 1;
    }
    draw();
    if (const auto twin = mirroredHover()) {
        painter.setPen(QPen(theme.accent, std::max(1, thick / 2), Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(twin->adjusted(0, 0, -1, -1));
    }
    painter.restore();
}

} // namespace shawlwright::app
