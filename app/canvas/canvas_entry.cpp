// Stitches typed at the cursor.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/cell_entry.h"
#include "app/document/text.h"
#include "core/derived/row_words.h"
#include "core/derived/typed_stitches.h"

#include <algorithm>

namespace shawlwright::app {

void Canvas::openEntry()
{
    endStroke();
    if (m->out) {
        m->tellToLookAtOnly();
        return;
    }
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

// Above the cell, where nothing is knitted yet; below it where there is no room.
void Canvas::Parts::placeEntry()
{
    if (!entry)
        return;
    const QRect cell_ = canvas.cellRectOnViewport(cursor.row, cursor.column);
    const QSize room = canvas.viewport()->size();
    const QSize size = entry->sizeHint().expandedTo(QSize(240, 0));
    int top = cell_.top() - 4 - size.height();
    if (top < 0)
        top = cell_.bottom() + 4;
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
        if (const int next = shownRows.stepped(cursor.row, 1); next < static_cast<int>(section_->rows.size()))
            moveCursor(startOfRow(*section_, next), false);
        placeEntry();
        return;
    }
    const TypedStitches typed =
        typedStitches(document.pattern(), document.catalogue(), section, cursor, fromQt(text));
    const int begin = cursor.row;
    const bool empty =
        usedColumns(*section_->rows[static_cast<std::size_t>(begin)], boxesOn(*section_, begin)).first == 0;
    if (typed.needsRow && empty) { // nothing stands in the way of a whole row
        const RowsFromWords whole =
            rowsFromWords(document.pattern(), document.catalogue(), document.derived().ledgers(),
                          document.derived().shownLedger(), section, begin, fromQt(text));
        if (!perform(whole.edit))
            return;
        entry->clear();
        takeTyped({});
        return;
    }
    if (!performPainted(typed.edit))
        return;
    const int last = geometry.extent.columns;
    bringIntoView(typed.next.row);
    moveCursor(At{typed.next.row, std::clamp(typed.next.column, 1, last)}, false);
    if (entry) {
        entry->clear();
        placeEntry();
    }
}

} // namespace shawlwright::app
