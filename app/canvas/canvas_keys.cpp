// The keys of the chart.
#include "app/canvas/canvas_parts.h"

#include <QKeyEvent>

#include <algorithm>

namespace shawlwright::app {

void Canvas::Parts::moveCursor(At to, bool extends)
{
    const Extent room = extent();
    if (room.rows == 0 || room.columns == 0)
        return;
    At next = inside(to);
    next.row = shownRows.nearest(next.row);
    placeCursor(next);
    if (extends) {
        canvas.select(areaMeant(anchor, next, selectBy));
    } else {
        anchor = next;
        selectBy = SelectBy::Cells;
    }
    showCell(next);
}

void Canvas::Parts::goOnAt(At at)
{
    moveCursor(at, false);
    followClicked();
}

void Canvas::Parts::placeCursor(At next)
{
    const At before = cursor;
    cursor = next;
    if (next == before)
        return;
    // The frame reaches a little over its cell's edges, and the numbers of row and column change colour.
    for (const At& at : {before, next}) {
        repaintRow(at.row);
        repaintRow(shownRows.stepped(at.row, 1));
        repaintRow(shownRows.stepped(at.row, -1));
    }
    repaint(QRect(0, geometry.grid.bottom() + 1, viewSize().width(), geometry.gutters.bottom));
    if (tool == CanvasTool::Stamp)
        repaintAll(); // the motif goes along
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
        for (const MarkerAt& stands : ledger().before[static_cast<std::size_t>(line)].markers)
            stops.push_back(leftwards ? stands.column + 1 : stands.column);
    for (const MarkerMove& move : here->moves) // placed in this row
        stops.push_back(leftwards ? move.boundary + 1 : move.boundary);
    int next = leftwards ? extent().columns : 1;
    for (const int stop : stops)
        if (leftwards ? stop > cursor.column && stop < next : stop < cursor.column && stop > next)
            next = stop;
    return next;
}

bool Canvas::Parts::keyMoves(int key, Qt::KeyboardModifiers modifiers)
{
    if (modifiers.testFlag(Qt::AltModifier)) // moves rows and what is selected, where it can
        return false;
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
        to.row = shownRows.stepped(to.row, 1);
        break;
    case Qt::Key_Down:
        to.row = shownRows.stepped(to.row, -1);
        break;
    case Qt::Key_PageUp:
        to.row = shownRows.stepped(to.row, page);
        break;
    case Qt::Key_PageDown:
        to.row = shownRows.stepped(to.row, -page);
        break;
    case Qt::Key_Home: // the row's leftmost stitch, from there the edge; with Ctrl the upper left corner
    case Qt::Key_End: {
        const bool leftwards = key == Qt::Key_Home;
        const ColumnSpan stitches = stitchesOf(cursor.row);
        const int stitch = leftwards ? stitches.last : stitches.first;
        const int edge = leftwards ? room.columns : 1;
        const bool there = stitches.first == 0 || (leftwards ? cursor.column >= stitch : cursor.column <= stitch);
        to = At{whole ? (leftwards ? room.rows - 1 : 0) : cursor.row, whole || there ? edge : stitch};
        break;
    }
    default:
        return false;
    }
    if (whole && (key == Qt::Key_Left || key == Qt::Key_Right))
        to.column = nextStop(key == Qt::Key_Left);
    else if (whole && key != Qt::Key_Home && key != Qt::Key_End)
        return false;
    const bool extends = modifiers.testFlag(Qt::ShiftModifier);
    moveCursor(to, extends);
    if (!extends)
        followClicked();
    return true;
}

void Canvas::keyPressEvent(QKeyEvent* event)
{
    const Qt::KeyboardModifiers modifiers = event->modifiers();
    event->accept();
    if (event->key() == Qt::Key_Control && m->drag.kind == DragKind::Move) {
        m->showMove(m->drag.now, true);
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        if (strokeOpen())
            cancelStroke();
        else if (!m->selected.empty() || m->flashed || m->chosenMarker) {
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
    if (m->drag.kind != DragKind::Pan && m->drag.kind != DragKind::Move &&
        m->drag.kind != DragKind::Rows && m->keyMoves(event->key(), modifiers)) {
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
        openEntry(); // whatever the tool: letters would choose another one
        return;
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

void Canvas::keyReleaseEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Control && m->drag.kind == DragKind::Move)
        m->showMove(m->drag.now, false);
    QAbstractScrollArea::keyReleaseEvent(event);
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
