#include "app/canvas/cell_entry.h"

#include <QKeyEvent>
#include <QStyle>

#include <algorithm>

namespace shawlwright::app {

CellEntry::CellEntry(QWidget* over) : QLineEdit(over)
{
    setAccessibleName(tr("Stitches from the cursor on"));
    setPlaceholderText(tr("k2tog   7 k   k2, yo, k2"));
    setMaxLength(1000);
}

void CellEntry::showRefused(bool refused)
{
    if (property("wrong").toBool() == refused)
        return;
    setProperty("wrong", refused);
    style()->unpolish(this);
    style()->polish(this);
}

QSize CellEntry::sizeHint() const
{
    const int words = fontMetrics().horizontalAdvance(text()) + 40;
    return {std::max(240, words), QLineEdit::sizeHint().height()};
}

bool CellEntry::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) { // letters and digits are words here
        event->accept();
        return true;
    }
    return QLineEdit::event(event);
}

void CellEntry::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Escape:
        Q_EMIT left();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT typed(text().trimmed());
        return;
    default:
        QLineEdit::keyPressEvent(event);
    }
}

void CellEntry::focusOutEvent(QFocusEvent* event)
{
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        Q_EMIT left();
}

} // namespace shawlwright::app
