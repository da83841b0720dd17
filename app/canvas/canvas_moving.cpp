// The selected stitches moved or copied along: dragged with a ghost under the pointer, or by keys.
#include "app/canvas/canvas_parts.h"
#include "core/edits/move_stitches.h"

#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace shawlwright::app {

bool Canvas::moveSelected(int rows, int columns, Leaving leaving)
{
    endStroke();
    if (m->selected.empty() || !m->shown() || (rows == 0 && columns == 0))
        return false;
    const Areas to = shifted(m->selected, rows, columns);
    if (!m->perform(moveStitches(m->document.pattern(), m->document.catalogue(), m->section, m->selected,
                                 rows, columns, leaving)))
        return false;
    selectAreas(to); // it goes along
    const Area seen = *around(to);
    m->placeCursor(m->inside(At{m->cursor.row + rows, m->cursor.column + columns}));
    m->anchor = m->cursor;
    showCell(rows < 0 ? seen.firstRow : seen.lastRow, columns < 0 ? seen.firstColumn : seen.lastColumn);
    return true;
}

bool Canvas::nudgeSelected(int rows, int columns)
{
    endStroke();
    QUndoStack& steps = m->document.undoStack();
    const auto goesOn = [&](const Parts::Nudged& last) {
        return last.section == m->section && last.step == steps.index() &&
               m->selected == shifted(last.from, last.rows, last.columns);
    };
    if (!m->nudged || !goesOn(*m->nudged)) {
        const Areas from = m->selected;
        if (!moveSelected(rows, columns, Leaving::NoStitch))
            return false;
        m->nudged = Parts::Nudged{m->section, steps.index(), from, rows, columns};
        return true;
    }
    Parts::Nudged all = *m->nudged;
    const Parts::Seat here = m->seat();
    const At start{here.cursor.row - all.rows, here.cursor.column - all.columns};
    all.rows += rows;
    all.columns += columns;
    steps.undo();
    m->sit({m->section, start, start, all.from});
    if ((all.rows != 0 || all.columns != 0) && !moveSelected(all.rows, all.columns, Leaving::NoStitch)) {
        steps.redo();
        m->sit(here);
        return false;
    }
    all.step = steps.index();
    m->nudged = all.rows != 0 || all.columns != 0 ? std::optional(all) : std::nullopt;
    return true;
}

void Canvas::Parts::beginMove(At at, QMouseEvent* event)
{
    drag = {};
    drag.kind = DragKind::Move;
    drag.button = event->button();
    drag.tool = tool;
    drag.from = drag.now = at;
    drag.pressedAt = toDevice(event->position()).toPoint();
}

// How far the drag has gone, held inside the chart.
At Canvas::Parts::movedBy() const
{
    const std::optional<Area> whole = around(selected);
    if (!whole)
        return At{0, 0};
    const Extent room = extent();
    return At{std::clamp(drag.now.row - drag.from.row, -whole->firstRow, room.rows - 1 - whole->lastRow),
              std::clamp(drag.now.column - drag.from.column, 1 - whole->firstColumn,
                         room.columns - whole->lastColumn)};
}

void Canvas::Parts::continueMove(QPointF device, bool copies)
{
    const At at = geometry.cellUnder(device);
    drag.moved = drag.moved || (at != drag.from && draggedFar(device));
    if (drag.moved)
        showMove(at, copies);
}

void Canvas::Parts::showMove(At at, bool copies)
{
    if (at == drag.now && copies == drag.copies)
        return;
    const At before = movedBy();
    const bool changes = copies != drag.copies;
    drag.now = at;
    drag.copies = copies;
    const At by = movedBy();
    if (by == before && !changes)
        return;
    repaintAll();
    Q_EMIT canvas.told(movedInWords(by, copies) + QLatin1Char(' ') +
                       (copies ? Canvas::tr("Esc takes it back.")
                               : Canvas::tr("Hold Ctrl to copy, Esc takes it back.")));
}

QString Canvas::Parts::movedInWords(At by, bool copied) const
{
    QStringList parts;
    if (by.row != 0)
        parts << (by.row > 0 ? Canvas::tr("%1 up").arg(by.row) : Canvas::tr("%1 down").arg(-by.row));
    if (by.column != 0)
        parts << (by.column > 0 ? Canvas::tr("%1 to the left").arg(by.column)
                                : Canvas::tr("%1 to the right").arg(-by.column));
    if (parts.isEmpty())
        return Canvas::tr("Where it was.");
    return (copied ? Canvas::tr("Copied %1.") : Canvas::tr("Moved %1.")).arg(parts.join(QStringLiteral(", ")));
}

void Canvas::Parts::paintMoving(QPainter& painter, int thick)
{
    const At by = movedBy();
    const std::optional<Area> seen = geometry.cellsIn(geometry.grid);
    if (!seen || !drag.moved)
        return;
    QRegion where;
    for (const Area& area : selected) {
        if (!drag.copies) { // what goes is paled
            QColor pale = theme.noStitch;
            pale.setAlpha(170);
            painter.fillRect(geometry.areaRect(area), pale);
        }
        const Area to = shifted({area}, by.row, by.column).front();
        where += geometry.areaRect(to);
        const int first = std::max(to.firstColumn, seen->firstColumn);
        const int last = std::min(to.lastColumn, seen->lastColumn);
        if (last < first)
            continue;
        QImage ghost((last - first + 1) * geometry.cell, geometry.cell, QImage::Format_RGB32);
        for (int at = std::max(to.firstRow, seen->firstRow); at <= std::min(to.lastRow, seen->lastRow); ++at) {
            if (shownRows.hides(at))
                continue;
            const Row* from = row(at - by.row);
            const Row* under = row(at);
            if (!from || !under)
                continue;
            Row stitches;
            stitches.yarn = under->yarn;
            stitches.cells = from->cells;
            atlas.paintRow(ghost, 0, stitches, first - by.column, last - by.column, {});
            painter.setOpacity(0.8);
            painter.drawImage(geometry.cellRect(at, last).topLeft(), ghost);
            painter.setOpacity(1);
        }
    }
    for (const QRect& edge : outline(where, thick))
        painter.fillRect(edge, theme.accent);
}

} // namespace shawlwright::app
