// Zoom as whole device pixels per cell.
//
// Shape:   a wheel's turn is summed up from where it began, so that one event of 120 and forty of 3 give the
// same zoom,
//          and turning back gives exactly the zoom from before.
// Units:   eighths of a degree, as Qt counts them: one notch is 120 and zooms by a fifth.
#pragma once

#include <QPoint>
#include <QPointF>

namespace shawlwright::app {

inline constexpr int leastCell = 2;
inline constexpr int greatestCell = 128;
inline constexpr double usualCell = 24; // logical pixels at 100 %

int cellAfterWheel(int cellAtStart, int summedAngle);
int clampedAngle(int cellAtStart,
                 int summedAngle); // no farther than the limits: turning back answers at once
int nextCell(int cell, int steps); // a notch further in (1) or out (-1), always another size
int cellOfPercent(double percent, double pixelRatio);
double percentOfCell(int cell, double pixelRatio);

// The scroll at which the chart's point (in cells from its upper left) lies under a point of the view.
QPoint scrollAbout(QPointF cellsFromUpperLeft, int cell, QPointF pointInGrid);

} // namespace shawlwright::app
