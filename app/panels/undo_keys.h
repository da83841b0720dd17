// Undo and redo pressed in a field that has nothing to take back are meant for the pattern.
#pragma once

class QEvent;
class QLineEdit;

namespace shawlwright::app {

bool leavesUndo(const QLineEdit& field, QEvent& event); // an event filter of the field returns true then

} // namespace shawlwright::app
