// The section as knitted, on the same canvas.
#include "app/canvas/canvas_parts.h"
#include "app/document/text.h"

#include <algorithm>

namespace shawlwright::app {

At Canvas::Parts::folded(At at) const
{
    return out && at.row >= 0 && at.row < static_cast<int>(out->rows.size()) ? foldedAt(*out, at) : at;
}

At Canvas::Parts::seen(At at) const
{
    return out ? unfoldedAt(*out, at) : at;
}

Extent Canvas::Parts::foldedExtent() const
{
    const int at = index();
    if (at < 0)
        return {};
    const Section& section_ = document.pattern().sections[static_cast<std::size_t>(at)];
    return {static_cast<int>(section_.rows.size()), section_.frame.columns};
}

bool Canvas::Parts::unfold()
{
    out.reset();
    if (index() < 0)
        return false;
    Result<Unfolded> made =
        shawlwright::unfolded(document.pattern(), document.catalogue(), document.derived().ledger(), index());
    if (made.ok())
        out = std::move(made).take();
    else
        Q_EMIT canvas.told(toQt(toText(made.fault())));
    return out.has_value();
}

// After an edit, another section or another size; the cursor stays where it was as long as there is such a place.
void Canvas::Parts::unfoldAgain()
{
    const At was = folded(cursor);
    const std::size_t rows = out->rows.size();
    if (!unfold()) {
        cursor = was;
        Q_EMIT canvas.unfoldedChanged(false);
    } else if (out->rows.size() != rows) {
        cursor = unfoldedAt(*out, was);
    }
}

void Canvas::Parts::lookAt(QPointF device)
{
    const bool inGrid = geometry.grid.contains(device.toPoint());
    const std::optional<int> beside = rowBesideGrid(device);
    const At at = inGrid ? geometry.cellUnder(device) : At{beside.value_or(-1), cursor.column};
    if (!geometry.inside(at))
        return;
    moveCursor(at, false);
    if (inGrid && tool != CanvasTool::Select)
        tellToLookAtOnly();
}

void Canvas::Parts::tellToLookAtOnly()
{
    Q_EMIT canvas.told(Canvas::tr("This is the section as knitted, to look at. Fold it back (Ctrl+U) to change it."));
}

void Canvas::Parts::tellCursor()
{
    const At at = folded(cursor);
    Q_EMIT canvas.cursorMoved(at.row, at.column);
}

void Canvas::Parts::tellHovered()
{
    const At at = hover.cell ? folded(*hover.cell) : At{-1, 0};
    Q_EMIT canvas.hovered(at.row, at.column);
}

void Canvas::Parts::showCell(At at)
{
    if (geometry.inside(at))
        scrollTo(geometry.scrollToShow(geometry.cellRect(at.row, at.column)));
}

bool Canvas::unfolded() const
{
    return m->out.has_value();
}

void Canvas::setUnfolded(bool unfolded)
{
    if (unfolded == m->out.has_value())
        return;
    endStroke();
    m->closeEntry();
    select(std::nullopt);
    const At at = cursor();
    const QPoint stood = m->geometry.cellRect(m->cursor.row, m->cursor.column).topLeft();
    if (!unfolded)
        m->out.reset();
    else if (!m->unfold()) {
        Q_EMIT unfoldedChanged(false);
        return;
    }
    m->flashed.reset();
    m->chosenMarker.reset();
    m->hover = {};
    m->cursor = m->anchor = m->seen(at);
    m->atLowerRight = false;
    const Parts::Zoomed zoom{m->cell, m->chosenCell, m->fitsSection};
    if (const Parts::Zoomed other = m->otherZoom.value_or(zoom); other.cell != m->cell || other.fitsSection) {
        m->cell = other.cell;
        m->chosenCell = other.chosenCell;
        m->fitsSection = other.fitsSection;
    }
    m->otherZoom = zoom;
    m->refreshShown();
    if (m->cell != zoom.cell)
        Q_EMIT zoomChanged(zoomPercent());
    // The stitch at the cursor stays where it is in the view.
    m->scrollTo(m->geometry.scroll + m->geometry.cellRect(m->cursor.row, m->cursor.column).topLeft() - stood);
    m->showCell(m->cursor);
    m->tellCursor();
    Q_EMIT unfoldedChanged(unfolded);
}

} // namespace shawlwright::app
