// What is selected: by cells, whole rows and whole columns, anew, added to or taken from.
#include "app/canvas/canvas_parts.h"

#include <QMouseEvent>

#include <algorithm>

namespace shawlwright::app {

const Areas& Canvas::selected() const
{
    return m->selected;
}

std::optional<Area> Canvas::selection() const
{
    if (m->selected.size() <= 1 || !m->shownRows.hidesAny())
        return m->selected.size() == 1 ? std::optional(m->selected.front()) : std::nullopt;
    const std::optional<Area> whole = around(m->selected);
    return m->shownRows.seen({*whole}) == m->selected ? whole : std::nullopt;
}

void Canvas::select(std::optional<Area> area)
{
    selectAreas(area ? joined({}, *area) : Areas{});
}

void Canvas::selectAreas(const Areas& areas)
{
    const Extent room = m->extent();
    const Areas next = m->out ? Areas{} : m->shownRows.seen(clipped(areas, room.rows, room.columns));
    if (next == m->selected)
        return;
    m->selected = next;
    if (m->clicked && next != Areas{*m->clicked})
        m->clicked.reset();
    m->repaintAll();
    Q_EMIT selectionChanged();
}

void Canvas::selectAll()
{
    const Extent extent = m->extent();
    select(Area{0, extent.rows - 1, 1, extent.columns});
}

void Canvas::selectRows()
{
    endStroke();
    if (m->out)
        return m->tellToLookAtOnly();
    const Areas from = m->selected.empty() ? Areas{areaBetween(m->cursor, m->cursor)} : m->selected;
    Areas whole;
    for (const IndexRun& run : rowRuns(from))
        whole = joined(whole, Area{run.first, run.last, 1, m->extent().columns});
    m->selectBy = SelectBy::Rows;
    selectAreas(whole);
}

void Canvas::selectColumns()
{
    endStroke();
    if (m->out)
        return m->tellToLookAtOnly();
    const Areas from = m->selected.empty() ? Areas{areaBetween(m->cursor, m->cursor)} : m->selected;
    Areas whole;
    for (const IndexRun& run : columnRuns(from))
        whole = joined(whole, Area{0, m->extent().rows - 1, run.first, run.last});
    m->selectBy = SelectBy::Columns;
    selectAreas(whole);
}

void Canvas::toggleSelected()
{
    endStroke();
    if (m->out)
        return m->tellToLookAtOnly();
    const Area cell = areaBetween(m->cursor, m->cursor);
    m->selectBy = SelectBy::Cells;
    selectAreas(holds(m->selected, m->cursor) ? without(m->selected, cell) : joined(m->selected, cell));
}

Area Canvas::Parts::areaMeant(At from, At to, SelectBy by) const
{
    const Extent room = extent();
    Area area = areaBetween(from, to);
    if (by == SelectBy::Rows)
        area = Area{area.firstRow, area.lastRow, 1, room.columns};
    if (by == SelectBy::Columns)
        area = Area{0, room.rows - 1, area.firstColumn, area.lastColumn};
    return area;
}

void Canvas::Parts::pressBesideGrid(QPointF device, QMouseEvent* event)
{
    const bool right = event->button() == Qt::RightButton;
    const bool extends = event->modifiers().testFlag(Qt::ShiftModifier);
    At at = cursor;
    SelectBy by = SelectBy::Rows;
    if (const std::optional<int> row_ = rowBesideGrid(device)) {
        if (right) {
            Q_EMIT canvas.contextWanted(*row_, 0, event->globalPosition().toPoint());
            return;
        }
        if (const std::optional<int> bracket = bracketAt(device)) {
            Q_EMIT canvas.bracketActivated(*bracket);
            return;
        }
        at.row = *row_;
    } else if (const std::optional<int> column = columnBesideGrid(device); column && !right) {
        by = SelectBy::Columns;
        at.column = *column;
    } else {
        return;
    }
    flashed.reset();
    const bool plainly = !(event->modifiers() & (Qt::ShiftModifier | Qt::ControlModifier));
    if (by == SelectBy::Rows && plainly && dragsRows(device)) {
        placeCursor(at);
        anchor = at;
        beginRowMove(at, event);
        return;
    }
    placeCursor(at);
    if (!extends)
        anchor = at;
    beginRectangle(extends ? anchor : at, at, CanvasTool::Select, event, by);
}

// With Ctrl it is added to what is selected, or taken out of it where the press is on a selected cell.
void Canvas::Parts::beginRectangle(At from, At now, CanvasTool with, QMouseEvent* event, SelectBy by)
{
    drag = {};
    drag.kind = DragKind::Rectangle;
    drag.button = event->button();
    drag.tool = with;
    drag.by = by;
    drag.from = from;
    drag.now = now;
    drag.pressedAt = toDevice(event->position()).toPoint();
    if (with == CanvasTool::Select && event->modifiers().testFlag(Qt::ControlModifier)) {
        const Area pressed = areaMeant(now, now, by);
        const bool all = joined(selected, pressed) == selected;
        drag.how = all ? SelectHow::Take : SelectHow::Add;
    }
    repaintAll();
}

void Canvas::Parts::finishSelecting(const Drag& done)
{
    selectBy = done.by;
    const Area area = areaMeant(done.from, done.now, done.by);
    switch (done.how) {
    case SelectHow::Anew:
        canvas.select(area);
        break;
    case SelectHow::Add:
        canvas.selectAreas(joined(selected, area));
        break;
    case SelectHow::Take:
        canvas.selectAreas(without(selected, area));
        break;
    }
}

// All cells of a stitch that is wider than one: a part of it is nothing to copy or to keep.
void Canvas::Parts::selectStitch(At at)
{
    selectBy = SelectBy::Cells;
    const Row* here = row(at.row);
    if (!here || !geometry.inside(at))
        return canvas.select(std::nullopt);
    const CellSpan stitch = stitchAt(*here, document.catalogue(), at);
    clicked = Area{at.row, at.row, stitch.at.column, stitch.at.column + stitch.width - 1};
    canvas.select(clicked);
}

// What was selected by a click alone goes along with the cursor, or is gone where another tool works on: it was never
// meant to stay behind and be what the next act is done to.
void Canvas::Parts::followClicked()
{
    if (!clicked || selected != Areas{*clicked})
        return;
    if (tool == CanvasTool::Select)
        selectStitch(cursor);
    else
        canvas.select(std::nullopt);
}

void Canvas::Parts::scrollBeyond(QPointF device)
{
    const QRect grid = geometry.grid;
    const auto beyond = [](double at, int from, int to) {
        return at < from ? at - from : at > to ? at - to : 0.0;
    };
    QPoint by(static_cast<int>(beyond(device.x(), grid.left(), grid.right())),
              static_cast<int>(beyond(device.y(), grid.top(), grid.bottom())));
    if (drag.by == SelectBy::Rows) // the pointer stays beside the grid
        by.setX(0);
    if (drag.by == SelectBy::Columns)
        by.setY(0);
    if (by.isNull())
        return;
    const int most = geometry.cell;
    scrollTo(geometry.scroll + QPoint(std::clamp(by.x(), -most, most), std::clamp(by.y(), -most, most)));
}

} // namespace shawlwright::app
