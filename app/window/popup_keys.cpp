#include "app/window/popup_keys.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMenu>

namespace shawlwright::app {

PopupKeys::PopupKeys(QObject* parent) : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool PopupKeys::eventFilter(QObject* watched, QEvent* event)
{
    // The chart keeps the focus behind a menu, and with it the actions that are its own; an override that is taken
    // goes on as a plain key to what is open.
    if (event->type() == QEvent::ShortcutOverride && qobject_cast<QMenu*>(QApplication::activePopupWidget())) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (!(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))) {
            event->accept();
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

} // namespace shawlwright::app
