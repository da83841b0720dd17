// Stitches typed at the cursor.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/cell_entry.h"
#include "app/document/text.h"
#include "core/derived/typed_stitches.h"

#include <algorithm>

namespace shawlwright::app {

void Canvas::openEntry()
{
    endStroke();
    if (!m->shown() || !m->geometry.inside(m->cursor))
        return;
    if (!m->entry) {
        m->entry = new CellEntry(viewport());
        connect(m->entry, &CellEntry::typed, this, [this](const QString& text) { m->takeTyped(text); });
        connect(m->entry, &CellEntry::left, this, [this] { m->closeEntry(); });
    }
    m->entry->clear();
    m->entry->show();
    m->placeEntry();
    m->entry->setFocus();
}

QLineEdit* Canvas::entry() const
{
    return m->entry;
}

void Canvas::Parts::closeEntry()
{
    CellEntry* open = std::exchange(entry, nullptr);
    if (!open)
        return;
    const bool had = open->hasFocus();
    open->hide();
    open->deleteLater();
    if (had)
        canvas.setFocus();
}

// Below the cell, above it where there is no room; on the side that is not yet knitted.
void Canvas::Parts::placeEntry()
{
    if (!entry)
        return;
    const QRect cell_ = canvas.cellRectOnViewport(cursor.row, cursor.column);
    const QSize room = canvas.viewport()->size();
    const QSize size = entry->sizeHint().expandedTo(QSize(180, 0));
    int top = cell_.bottom() + 4;
    if (top + size.height() > room.height())
        top = cell_.top() - 4 - size.height();
    const int left =
        std::clamp(cell_.center().x() - size.width() / 2, 0, std::max(0, room.width() - size.width()));
    entry->setGeometry(left, std::max(0, top), size.width(), size.height());
}

void Canvas::Parts::takeTyped(const QString& text)
{
    const Section* section_ = shown();
    if (!section_)
        return;
    if (text.isEmpty()) { // on to the next row
        if (cursor.row + 1 < static_cast<int>(section_->rows.size()))
            moveCursor(startOfRow(*section_, cursor.row + 1), false);
        placeEntry();
        return;
    }
    const TypedStitches typed =
        typedStitches(document.pattern(), document.catalogue(), section, cursor, fromQt(text));
    if (!perform(typed.edit))
        return;
    const int last = geometry.extent.columns;
    moveCursor(At{typed.next.row, std::clamp(typed.next.column, 1, last)}, false);
    if (entry) {
        entry->clear();
        placeEntry();
    }
}

} // namespace shawlwright::app
