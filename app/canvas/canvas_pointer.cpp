// Mouse and wheel.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/turn_cut.h"
#include "app/canvas/zoom.h"

#include <QApplication>
#include <QMouseEvent>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

void Canvas::Parts::traceHovered()
{
    hover.parents.clear();
    const int line = hover.cell ? facts.line(hover.cell->row) : -1;
    if (line < 0 || !geometry.inside(*hover.cell))
        return;
    if (traced.line != line) {
        traced.trace = traceOf(ledger(), pattern(), document.catalogue(), line);
        traced.line = line;
    }
    hover.parents = parentsOf(ledger(), pattern(), document.catalogue(), traced.trace, line, *hover.cell);
    parentsThroughHidden();
    for (CellSpan& parent : hover.parents)
        if (const Row* below = row(parent.at.row))
            parent = stitchAt(*below, document.catalogue(), parent.at);
}

// What a hidden row takes up stands for it.
void Canvas::Parts::parentsThroughHidden()
{
    for (int rows = 0; rows < 4; ++rows) { // more of them never lie on each other but in odd charts
        std::vector<CellSpan> seen;
        std::optional<Trace> trace;
        int traceLine = -1;
        bool any = false;
        for (const CellSpan& parent : hover.parents) {
            const int line = shownRows.hides(parent.at.row) ? facts.line(parent.at.row) : -1;
            if (line < 0) {
                seen.push_back(parent);
                continue;
            }
            any = true;
            if (std::exchange(traceLine, line) != line)
                trace = traceOf(ledger(), pattern(), document.catalogue(), line);
            for (const CellSpan& one : parentsOf(ledger(), pattern(), document.catalogue(), *trace, line, parent.at))
                seen.push_back(one);
        }
        hover.parents = std::move(seen);
        if (!any)
            return;
    }
}

void Canvas::Parts::hoverAt(std::optional<QPointF> device)
{
    Hover next;
    if (device && geometry.grid.contains(device->toPoint())) {
        const At at = geometry.cellUnder(*device);
        if (geometry.inside(at)) {
            next.cell = at;
            next.boundary = geometry.boundaryNear(device->x());
        }
    }
    if (next.cell == hover.cell && next.boundary == hover.boundary)
        return;
    const bool otherCell = next.cell != hover.cell;
    if (otherCell) {
        const bool drags = tool == CanvasTool::Select && next.cell && holds(selected, *next.cell);
        canvas.viewport()->setCursor(drags ? Qt::SizeAllCursor : Qt::ArrowCursor);
    }
    for (const QRect& old : hoverRects())
        repaint(old);
    next.parents = hover.parents;
    hover = next;
    if (otherCell)
        traceHovered();
    for (const QRect& now : hoverRects())
        repaint(now);
    if (otherCell)
        tellHovered();
}

void Canvas::mousePressEvent(QMouseEvent* event)
{
    const QPointF device = m->toDevice(event->position());
    if (strokeOpen()) // a second button in the middle of a drag does nothing
        return;
    if (event->button() == Qt::MiddleButton) {
        m->drag.kind = DragKind::Pan;
        m->drag.button = Qt::MiddleButton;
        m->drag.pressedAt = device.toPoint();
        m->drag.scrollAtPress = m->geometry.scroll;
        return;
    }
    if (event->button() != Qt::LeftButton && event->button() != Qt::RightButton)
        return;
    if (m->out) {
        m->lookAt(device);
        return;
    }
    if (!m->geometry.grid.contains(device.toPoint())) {
        m->pressBesideGrid(device, event);
        return;
    }
    const At at = m->geometry.cellUnder(device);
    if (!m->geometry.inside(at))
        return;
    const bool right = event->button() == Qt::RightButton;
    if (!right && event->modifiers().testFlag(Qt::AltModifier)) {
        if (const Row* row = m->row(at.row))
            Q_EMIT picked(cellAt(*row, at.column).stitch);
        return;
    }
    m->flashed.reset();
    const bool selects = m->tool == CanvasTool::Select && !right;
    if (selects && !(event->modifiers() & (Qt::ShiftModifier | Qt::ControlModifier)) &&
        holds(m->selected, at)) {
        m->moveCursor(at, false);
        m->beginMove(at, event);
        return;
    }
    const bool extends = selects && event->modifiers().testFlag(Qt::ShiftModifier);
    if (!extends)
        m->moveCursor(at, false);
    if (m->tool != CanvasTool::Select || right)
        m->followClicked();
    const int boundary = m->geometry.boundaryNear(device.x());
    switch (m->tool) {
    case CanvasTool::Paint:
    case CanvasTool::Erase:
        m->beginStroke(at, event->button(), right || m->tool == CanvasTool::Erase);
        return;
    case CanvasTool::Marker:
        m->pressMarker(at, boundary, event->button());
        return;
    case CanvasTool::Turn:
        if (!right)
            m->turnAt(at.row, boundary);
        else if (m->shown())
            m->perform(workedToItsEnd(m->document.pattern(), m->section, at.row));
        return;
    case CanvasTool::Stamp:
        if (right)
            Q_EMIT contextWanted(at.row, at.column, event->globalPosition().toPoint());
        else
            m->stampAt(at);
        return;
    case CanvasTool::Area:
        if (right) {
            m->beginStroke(at, event->button(), true);
            return;
        }
        break;
    case CanvasTool::Repeat:
    case CanvasTool::RowRepeat:
    case CanvasTool::Select:
        if (right) {
            Q_EMIT contextWanted(at.row, at.column, event->globalPosition().toPoint());
            return;
        }
        break;
    }
    m->beginRectangle(extends ? m->anchor : at, at, m->tool, event, m->selectBy);
}

// A hand that shakes while it clicks has not dragged.
bool Canvas::Parts::draggedFar(QPointF device) const
{
    return (device.toPoint() - drag.pressedAt).manhattanLength() >
           QApplication::startDragDistance() * ratio / 2;
}

void Canvas::mouseMoveEvent(QMouseEvent* event)
{
    const QPointF device = m->toDevice(event->position());
    Drag& drag = m->drag;
    if (drag.kind == DragKind::Pan) {
        m->scrollTo(drag.scrollAtPress - (device.toPoint() - drag.pressedAt));
        return;
    }
    m->hoverAt(device);
    if (drag.kind == DragKind::None) {
        if (!m->geometry.grid.contains(device.toPoint()))
            viewport()->setCursor(m->dragsRows(device) ? Qt::SizeVerCursor : Qt::ArrowCursor);
        return;
    }
    if (drag.kind != DragKind::Stroke)
        m->scrollBeyond(device);
    const At at = m->geometry.cellUnder(device);
    switch (drag.kind) {
    case DragKind::Stroke:
        m->continueStroke(at);
        break;
    case DragKind::Move:
        m->continueMove(device, event->modifiers().testFlag(Qt::ControlModifier));
        break;
    case DragKind::Rows:
        m->continueRowMove(device);
        break;
    case DragKind::Rectangle: {
        const At inside = m->inside(at);
        drag.moved = drag.moved || m->draggedFar(device);
        if (inside != drag.now) {
            drag.now = inside;
            m->repaintAll();
        }
        break;
    }
    case DragKind::Marker: {
        const int boundary = m->geometry.boundaryNear(device.x());
        if (boundary != drag.boundary) {
            drag.boundary = boundary;
            m->repaintAll();
        }
        break;
    }
    case DragKind::None:
    case DragKind::Pan:
        break;
    }
}

void Canvas::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != m->drag.button || !strokeOpen())
        return;
    const QPointF device = m->toDevice(event->position());
    if (m->drag.kind == DragKind::Move)
        m->continueMove(device, event->modifiers().testFlag(Qt::ControlModifier));
    const Drag done = m->drag;
    const At by = done.kind == DragKind::Move ? m->movedBy() : At{0, 0};
    if (done.kind == DragKind::Marker)
        m->dropMarker(done.boundary);
    m->drag = {};
    if (done.kind != DragKind::Stroke && done.kind != DragKind::Pan)
        m->repaintAll(); // what the drag drew over the chart
    if (done.kind == DragKind::Rows) {
        m->finishRowMove(done);
        return;
    }
    if (done.kind == DragKind::Move && done.moved) {
        if (moveSelected(by.row, by.column, done.copies ? Leaving::TheStitches : Leaving::NoStitch))
            Q_EMIT told(m->movedInWords(by, done.copies));
        return;
    }
    if (done.kind != DragKind::Rectangle && done.kind != DragKind::Move)
        return;
    if (done.kind == DragKind::Rectangle && done.tool == CanvasTool::Select &&
        (done.by != SelectBy::Cells || done.how != SelectHow::Anew)) {
        m->finishSelecting(done);
        return;
    }
    const bool click = !done.moved && done.from == done.now;
    if (click && (done.tool == CanvasTool::Repeat || done.tool == CanvasTool::Select))
        if (const std::optional<BoxId> box = m->boxAt(device, done.tool == CanvasTool::Select)) {
            Q_EMIT boxActivated(*box);
            return;
        }
    if (click && done.tool == CanvasTool::Repeat) {
        Q_EMIT told(tr("Drag over the stitches that are repeated."));
        return;
    }
    if (click && done.tool == CanvasTool::Select) {
        m->selectStitch(done.now);
        return;
    }
    if (done.tool == CanvasTool::Select)
        m->finishSelecting(done);
    else
        m->finishRectangle(areaBetween(done.from, done.now), done.tool);
}

void Canvas::mouseDoubleClickEvent(QMouseEvent* event)
{
    const QPointF device = m->toDevice(event->position());
    if (!m->out && event->button() == Qt::LeftButton && !m->bracketAt(device))
        if (const std::optional<int> row = m->rowBesideGrid(device)) {
            Q_EMIT rowActivated(*row);
            return;
        }
    mousePressEvent(event); // two quick clicks are two clicks
}

void Canvas::wheelEvent(QWheelEvent* event)
{
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    event->accept();
    const int angle = event->angleDelta().y();
    if (angle == 0) // a touchpad's pause is no turn
        return;
    WheelRun& run = m->wheel;
    const QPointF at = m->toDevice(event->position());
    const QPointF inGrid = at - QPointF(m->geometry.grid.topLeft());
    if (run.cell != m->cell || (at - run.at).manhattanLength() > 3) {
        run = WheelRun{m->cell, m->cell, 0, at, (inGrid + QPointF(m->geometry.scroll)) / m->cell};
    }
    run.angle = clampedAngle(run.startCell, run.angle + angle);
    const int wanted = cellAfterWheel(run.startCell, run.angle);
    if (wanted != m->cell) {
        m->setCell(wanted, at);
        m->scrollTo(scrollAbout(run.anchor, m->cell, at - QPointF(m->geometry.grid.topLeft())));
        run.cell = m->cell;
    }
    m->hoverAt(at);
}

} // namespace shawlwright::app
