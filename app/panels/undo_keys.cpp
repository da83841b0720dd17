#include "app/panels/undo_keys.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace shawlwright::app {

bool leavesUndo(const QLineEdit& field, QEvent& event)
{
    if (event.type() != QEvent::ShortcutOverride)
        return false;
    const auto& key = static_cast<const QKeyEvent&>(event);
    const bool leaves = (key.matches(QKeySequence::Undo) && !field.isUndoAvailable()) ||
                        (key.matches(QKeySequence::Redo) && !field.isRedoAvailable());
    if (leaves)
        event.ignore(); // the field would take it, and do nothing
    return leaves;
}

} // namespace shawlwright::app
