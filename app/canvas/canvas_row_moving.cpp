// Whole rows put into another order: their selected numbers are dragged, with a line where they will go.
#include "app/canvas/canvas_parts.h"
#include "app/document/text.h"
#include "core/edits/rows.h"

#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

bool Canvas::moveRows(int first, int last, int before)
{
    endStroke();
    if (m->out) {
        m->tellToLookAtOnly();
        return false;
    }
    before = std::max(0, before);
    const bool wereSelected = !m->selected.empty();
    const int cursorAt = std::clamp(m->cursor.row, first, last) - first;
    const auto edit = shawlwright::moveRows(m->document.pattern(), m->section, first, last, before);
    if (!edit.ok()) {
        Q_EMIT told(toQt(toText(edit.fault())));
        return false;
    }
    if (edit.value().empty() || !m->document.perform(edit.value()))
        return false;
    const int now = before > last ? before - (last - first + 1) : before;
    if (wereSelected) {
        select(Area{now, now + last - first, 1, m->extent().columns});
        m->selectBy = SelectBy::Rows;
    }
    m->placeCursor(m->inside(At{m->shownRows.nearest(now + cursorAt), m->cursor.column}));
    m->anchor = m->cursor;
    showRow(m->shownRows.nearest(now + last - first));
    showRow(now);
    return true;
}

// The rows whose numbers can be dragged: all that is selected, where that is whole rows.
std::vector<IndexRun> Canvas::Parts::rowsToDrag() const
{
    const int columns = extent().columns;
    for (const Area& area : selected)
        if (area.firstColumn != 1 || area.lastColumn != columns)
            return {};
    return shownRows.together(rowRuns(selected));
}

bool Canvas::Parts::dragsRows(QPointF device) const
{
    const std::optional<int> at = out || bracketAt(device) ? std::nullopt : rowBesideGrid(device);
    if (!at)
        return false;
    const std::vector<IndexRun> runs = rowsToDrag();
    return std::any_of(runs.begin(), runs.end(),
                       [&](const IndexRun& run) { return run.first <= *at && *at <= run.last; });
}

void Canvas::Parts::beginRowMove(At at, QMouseEvent* event)
{
    drag = {};
    drag.kind = DragKind::Rows;
    drag.button = event->button();
    drag.tool = CanvasTool::Select;
    drag.by = SelectBy::Rows;
    drag.from = drag.now = at;
    drag.boundary = at.row;
    drag.pressedAt = toDevice(event->position()).toPoint();
}

// The row above the line that is nearest to the pointer; hidden rows stay with the row below them.
int Canvas::Parts::rowLineNear(QPointF device) const
{
    const int lines = shownRows.lines(geometry.extent.rows);
    const double fromTop = (device.y() - geometry.origin().y()) / geometry.cell;
    return shownRows.rowAt(std::clamp(lines - static_cast<int>(std::lround(fromTop)), 0, lines));
}

void Canvas::Parts::continueRowMove(QPointF device)
{
    if (!drag.moved && !draggedFar(device))
        return;
    const int line = rowLineNear(device);
    if (drag.moved && line == drag.boundary)
        return;
    drag.moved = true;
    drag.boundary = line;
    repaintAll();
    const std::vector<IndexRun> runs = rowsToDrag();
    if (runs.size() == 1)
        Q_EMIT canvas.told(rowMoveInWords(runs.front()) + QLatin1Char(' ') + Canvas::tr("Esc takes it back."));
}

QString Canvas::Parts::rowMoveInWords(const IndexRun& run) const
{
    const auto label = [this](int at) { return toQt(facts.at(at).label); };
    const QString rows = run.first == run.last ? Canvas::tr("Row %1").arg(label(run.first))
                                               : Canvas::tr("Rows %1 to %2").arg(label(run.first), label(run.last));
    if (drag.boundary >= run.first && drag.boundary <= run.last + 1)
        return Canvas::tr("%1: where it was.").arg(rows);
    return drag.boundary >= facts.rows() ? Canvas::tr("%1: to the top.").arg(rows)
                                         : Canvas::tr("%1: below row %2.").arg(rows, label(drag.boundary));
}

void Canvas::Parts::finishRowMove(const Drag& done)
{
    if (!done.moved) { // a click on the number alone
        selectBy = SelectBy::Rows;
        canvas.select(areaMeant(done.from, done.from, SelectBy::Rows));
        return;
    }
    const std::vector<IndexRun> runs = rowsToDrag();
    if (runs.size() == 1) {
        canvas.moveRows(runs.front().first, runs.front().last, done.boundary);
        return;
    }
    QStringList words;
    for (const IndexRun& run : runs) {
        const QString first = toQt(facts.at(run.first).label), last = toQt(facts.at(run.last).label);
        words << (run.first == run.last ? first : Canvas::tr("%1 to %2").arg(first, last));
    }
    Q_EMIT canvas.told(Canvas::tr("Rows %1 are selected, with gaps between them. Select rows without a gap to move them.")
                           .arg(words.join(QStringLiteral(", "))));
}

void Canvas::Parts::paintRowLine(QPainter& painter)
{
    if (drag.kind != DragKind::Rows || !drag.moved)
        return;
    const int thick = std::max(2, static_cast<int>(std::lround(3 * ratio)));
    const int y = geometry.cellRect(drag.boundary, 1).top() + geometry.cell;
    const int left = geometry.grid.left() - static_cast<int>(16 * ratio);
    const int right = geometry.grid.right() + static_cast<int>(16 * ratio);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRect(QPoint(left, y - thick / 2), QPoint(right, y - thick / 2 + thick - 1)), theme.accent);
    painter.restore();
}

} // namespace shawlwright::app
