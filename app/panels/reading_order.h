// The fields of a form in the order they are read: as the layouts hold them, lines downwards and each from the left, a column
// to its end before the next.
#pragma once

#include <QList>

class QWidget;

namespace shawlwright::app {

// Those that Tab can go to, hidden ones too.
QList<QWidget*> inReadingOrder(const QWidget& form);

} // namespace shawlwright::app
