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
        connect(m->entry, &CellEntry::textChanged, this, [this] {
            m->entry->showRefused(false);
            m->placeEntry();
        });
    }
    m->entry->clear();
    m->entry->show();
    m->entry->raise();
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
    if (std::exchange(entryRefused, false))
        Q_EMIT canvas.told({}); // nobody waits for it any more
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
    const QSize size = entry->sizeHint().boundedTo(QSize(room.width() - 8, room.height()));
    int top = cell_.top() - 4 - size.height();
    if (top < 0)
        top = cell_.bottom() + 4;
    const int left =
        std::clamp(cell_.center().x() - size.width() / 2, 0, std::max(0, room.width() - size.width()));
    entry->setGeometry(left, std::max(0, top), size.width(), size.height());
}

bool Canvas::Parts::usedUp(int at) const
{
    const int line = facts.line(at);
    if (line < 0)
        return false;
    const int loops = ledger().before[static_cast<std::size_t>(line)].count();
    int taken = 0; // as far as the cells themselves reach
    for (const WorkedCell& cell_ : traceOf(ledger(), pattern(), document.catalogue(), line).cells)
        if (cell_.takesUp > 0)
            taken = std::max(taken, row(at)->side == Side::RS ? cell_.firstLoop + cell_.takesUp : loops - cell_.firstLoop);
    return taken >= loops;
}

// A word was taken for another one.
void Canvas::Parts::takenAs(int at, const std::string& warning)
{
    entryRefused = false;
    if (!warning.empty())
        Q_EMIT canvas.told(Canvas::tr("Row %1: %2. Ctrl+Z takes it back.").arg(toQt(facts.at(at).label), toQt(warning)));
}

void Canvas::Parts::toNextRow()
{
    const int next = shownRows.stepped(cursor.row, 1);
    if (next != cursor.row && row(next))
        goOnAt(firstStitch(next));
    else
        Q_EMIT canvas.told(Canvas::tr("This is the last row of the section. Alt+Insert makes one above it."));
    placeEntry();
}

void Canvas::Parts::refuseTyped()
{
    entryRefused = true;
    if (entry)
        entry->showRefused(true);
}

// A row that says "to end" and the like is knitted over all stitches, so it begins where the row does.
void Canvas::Parts::typeWholeRow(const QString& text)
{
    if (const At start = startOfRow(*shown(), cursor.row); cursor != start) {
        goOnAt(start);
        placeEntry();
        Q_EMIT canvas.told(Canvas::tr("\"%1\" needs the whole row, which begins at stitch %2. Press Return again to "
                                      "put it there.")
                               .arg(text)
                               .arg(start.column));
        return;
    }
    const RowsFromWords whole =
        rowsFromWords(document.pattern(), document.catalogue(), document.derived().ledgers(),
                      document.derived().shownLedger(), section, cursor.row, fromQt(text));
    if (!perform(whole.edit)) {
        return refuseTyped();
    }
    const int at = cursor.row;
    if (entry)
        entry->clear();
    toNextRow();
    for (const ReadingNote& note : whole.notes)
        if (note.weight == ReadingNote::Weight::Warning) {
            takenAs(at, sentence(note));
            break;
        }
}

// Stitches go where the cursor is, as they are knitted; it then stands after them, or where the next row begins.
void Canvas::Parts::takeTyped(const QString& text)
{
    const Row* here = row(cursor.row);
    if (!here)
        return;
    if (text.isEmpty())
        return toNextRow();
    const int at = cursor.row;
    const bool rs = here->side == Side::RS;
    const TypedStitches typed =
        typedStitches(document.pattern(), document.catalogue(), section, cursor, fromQt(text));
    const bool empty = usedColumns(*here, boxesOn(*shown(), at)).first == 0;
    if (typed.needsRow && empty) // nothing stands in the way of a whole row
        return typeWholeRow(text);
    if (!performPainted(typed.edit)) {
        return refuseTyped();
    }
    if (entry)
        entry->clear();
    const ColumnSpan used = usedColumns(*row(at), boxesOn(*shown(), at));
    const bool beyond = rs ? typed.next.column > used.last : typed.next.column < used.first;
    bringIntoView(at);
    if (beyond && usedUp(at)) {
        toNextRow();
    } else {
        goOnAt(At{at, std::clamp(typed.next.column, 1, extent().columns)});
        placeEntry();
    }
    takenAs(at, typed.warning);
}

} // namespace shawlwright::app
