// Mouse, wheel and keys.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/turn_cut.h"
#include "app/canvas/zoom.h"

#include <QApplication>
#include <QKeyEvent>
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
    hover.parents =
        parentsOf(ledger(), pattern(), document.catalogue(), traced.trace, line, *hover.cell);
    for (CellSpan& parent : hover.parents)
        if (const Row* below = row(parent.at.row))
            parent = stitchAt(*below, document.catalogue(), parent.at);
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
        const std::optional<int> row = m->rowBesideGrid(device);
        if (!row)
            return;
        if (event->button() == Qt::RightButton) {
            Q_EMIT contextWanted(*row, 0, event->globalPosition().toPoint());
            return;
        }
        if (const std::optional<int> bracket = m->bracketAt(device)) {
            Q_EMIT bracketActivated(*bracket);
            return;
        }
        m->moveCursor(At{*row, m->cursor.column}, false);
        if (m->tool == CanvasTool::Select)
            select(Area{*row, *row, 1, m->geometry.extent.columns});
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
    if (!(m->tool == CanvasTool::Select && event->modifiers().testFlag(Qt::ShiftModifier)))
        m->moveCursor(at, false);
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
    m->drag = {};
    m->drag.kind = DragKind::Rectangle;
    m->drag.button = event->button();
    m->drag.tool = m->tool;
    m->drag.from =
        m->tool == CanvasTool::Select && event->modifiers().testFlag(Qt::ShiftModifier) ? m->anchor : at;
    m->drag.now = at;
    m->drag.pressedAt = device.toPoint();
    m->repaintAll();
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
    if (drag.kind == DragKind::None)
        return;
    const QRect grid = m->geometry.grid;
    if (drag.kind != DragKind::Stroke &&
        !grid.contains(device.toPoint())) { // pulled over the edge: scroll on
        const auto beyond = [](double at, int from, int to) {
            return at < from ? at - from : at > to ? at - to : 0.0;
        };
        const QPoint by(static_cast<int>(beyond(device.x(), grid.left(), grid.right())),
                        static_cast<int>(beyond(device.y(), grid.top(), grid.bottom())));
        const int most = m->geometry.cell;
        m->scrollTo(m->geometry.scroll +
                    QPoint(std::clamp(by.x(), -most, most), std::clamp(by.y(), -most, most)));
    }
    const At at = m->geometry.cellUnder(device);
    switch (drag.kind) {
    case DragKind::Stroke:
        m->continueStroke(at);
        break;
    case DragKind::Rectangle: {
        const Extent room = m->extent();
        const At inside{std::clamp(at.row, 0, room.rows - 1), std::clamp(at.column, 1, room.columns)};
        drag.moved = drag.moved || (device.toPoint() - drag.pressedAt).manhattanLength() >
                                       QApplication::startDragDistance() * m->ratio / 2;
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
    const Drag done = m->drag;
    if (done.kind == DragKind::Marker)
        m->dropMarker(done.boundary);
    m->drag = {};
    if (done.kind == DragKind::Rectangle || done.kind == DragKind::Marker)
        m->repaintAll(); // what the drag drew over the chart
    if (done.kind != DragKind::Rectangle)
        return;
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
        select(std::nullopt);
        return;
    }
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

void Canvas::Parts::moveCursor(At to, bool extends)
{
    const Extent room = extent();
    if (room.rows == 0 || room.columns == 0)
        return;
    const At next{std::clamp(to.row, 0, room.rows - 1), std::clamp(to.column, 1, room.columns)};
    const At before = cursor;
    cursor = next;
    if (extends)
        canvas.select(areaBetween(anchor, next));
    else
        anchor = next;
    showCell(next);
    if (next == before)
        return;
    // The frame reaches a little over its cell's edges, and the numbers of row and column change colour.
    for (const At& at : {before, next}) {
        repaintRow(at.row);
        repaintRow(at.row + 1);
        repaintRow(at.row - 1);
    }
    repaint(QRect(0, geometry.grid.bottom() + 1, viewSize().width(), geometry.gutters.bottom));
    tellCursor();
}

// The next edge in the cursor's row: of a stitch repeat, at a marker, where the stitches begin and end.
int Canvas::Parts::nextStop(bool leftwards) const
{
    const Section* section_ = shown();
    const Row* here = row(cursor.row);
    if (!section_ || !here)
        return cursor.column;
    const std::vector<shawlwright::Box> boxes = boxesOn(*section_, cursor.row);
    const ColumnSpan used = usedColumns(*here, boxes);
    std::vector<int> stops{1, extent().columns};
    if (used.first > 0)
        stops.insert(stops.end(), {used.first, used.last});
    for (const shawlwright::Box& box : boxes)
        stops.insert(stops.end(), {box.firstColumn, box.lastColumn});
    if (const int line = facts.line(cursor.row); line >= 0)
        for (const MarkerAt& stands :
             ledger().before[static_cast<std::size_t>(line)].markers)
            stops.push_back(leftwards ? stands.column + 1 : stands.column);
    int next = leftwards ? extent().columns : 1;
    for (const int stop : stops)
        if (leftwards ? stop > cursor.column && stop < next : stop < cursor.column && stop > next)
            next = stop;
    return next;
}

bool Canvas::Parts::keyMoves(int key, Qt::KeyboardModifiers modifiers)
{
    const bool whole = modifiers.testFlag(Qt::ControlModifier);
    const Extent room = extent();
    const int page = std::max(1, geometry.grid.height() / std::max(1, geometry.cell) - 1);
    At to = cursor;
    switch (key) {
    case Qt::Key_Left:
        to.column += 1;
        break;
    case Qt::Key_Right:
        to.column -= 1;
        break;
    case Qt::Key_Up:
        to.row += 1;
        break;
    case Qt::Key_Down:
        to.row -= 1;
        break;
    case Qt::Key_PageUp:
        to.row += page;
        break;
    case Qt::Key_PageDown:
        to.row -= page;
        break;
    case Qt::Key_Home: // where the row ends at the left; with Ctrl the upper left corner
        to = At{whole ? room.rows - 1 : cursor.row, room.columns};
        break;
    case Qt::Key_End:
        to = At{whole ? 0 : cursor.row, 1};
        break;
    default:
        return false;
    }
    if (whole && (key == Qt::Key_Left || key == Qt::Key_Right))
        to.column = nextStop(key == Qt::Key_Left);
    else if (whole && key != Qt::Key_Home && key != Qt::Key_End)
        return false;
    moveCursor(to, modifiers.testFlag(Qt::ShiftModifier));
    return true;
}

void Canvas::keyPressEvent(QKeyEvent* event)
{
    const Qt::KeyboardModifiers modifiers = event->modifiers();
    event->accept();
    if (event->key() == Qt::Key_Escape) {
        if (strokeOpen())
            cancelStroke();
        else if (m->selection || m->flashed || m->chosenMarker) {
            m->flashed.reset();
            m->chosenMarker.reset();
            select(std::nullopt);
            m->repaintAll();
        } else if (m->out) {
            setUnfolded(false);
        } else {
            event->ignore();
        }
        return;
    }
    if (m->drag.kind != DragKind::Pan && m->keyMoves(event->key(), modifiers)) {
        return;
    }
    const bool plain = !(modifiers & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    const bool paints = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter ||
                        event->key() == Qt::Key_Space || event->key() == Qt::Key_Delete ||
                        event->key() == Qt::Key_Backspace;
    if (m->out && plain && paints) {
        m->tellToLookAtOnly();
        return;
    }
    switch (plain ? event->key() : 0) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m->tool == CanvasTool::Paint) {
            openEntry();
            return;
        }
        [[fallthrough]];
    case Qt::Key_Space:
        endStroke();
        m->paintAtCursor();
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        endStroke();
        if (m->tool != CanvasTool::Marker || !m->deleteChosenMarker())
            eraseSelection();
        return;
    default:
        event->ignore(); // letters and digits belong to the window's stitches
    }
}

bool Canvas::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) { // these are the canvas's own while it has the focus
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
        const int code = key->key();
        const bool ours = code == Qt::Key_Space || code == Qt::Key_Return || code == Qt::Key_Enter ||
                          code == Qt::Key_Delete || code == Qt::Key_Backspace ||
                          (code == Qt::Key_Escape && strokeOpen());
        if (plain && ours) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

} // namespace shawlwright::app
