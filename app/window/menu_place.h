// Where a menu opens that was asked for at a point: beside it, and moved up no further than it needs to fit.
//
// Units:   logical pixels of the screen.
#pragma once

#include <QPoint>
#include <QRect>
#include <QSize>

namespace shawlwright::app {

// `room` is what the menu may cover; one that is larger begins at its upper edge. The point itself stays
// free, so that letting go of the button chooses nothing.
QPoint menuPlace(QPoint at, QSize menu, const QRect& room);

} // namespace shawlwright::app
