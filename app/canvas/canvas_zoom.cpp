// Zoom to a width, to a selection, and by two fingers.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/zoom.h"

#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

constexpr double leastFittingPercent = 65; // below, labels in the chart are hard to read

// Device pixels between the frozen numbers.
QSize Canvas::Parts::roomForCells() const
{
    const Gutters around = gutters(numberColumns(greatestCell)); // at their largest
    return (canvas.maximumViewportSize() * canvas.devicePixelRatioF()) -
           QSize(around.left + around.right, around.top + around.bottom);
}

int Canvas::Parts::fittingCell(Extent of) const
{
    const int least = cellOfPercent(leastFittingPercent, canvas.devicePixelRatioF());
    const QSize room = roomForCells();
    if (of.columns == 0 || least >= chosenCell || room.width() <= 0)
        return chosenCell;
    const int bar = static_cast<int>(canvas.verticalScrollBar()->sizeHint().width() * canvas.devicePixelRatioF());
    int fitting = room.width() / of.columns;
    if (shownRows.lines(of.rows) * fitting > room.height())
        fitting = (room.width() - bar) / of.columns;
    return fitting < least ? chosenCell : std::min(fitting, chosenCell);
}

void Canvas::fitSection()
{
    m->fitsSection = true;
    m->layOut();
}

bool Canvas::sectionFits() const
{
    return m->fitsSection;
}

double Canvas::chosenZoomPercent() const
{
    return percentOfCell(m->chosenCell, devicePixelRatioF());
}

QRect Canvas::gridRect() const
{
    return m->toLogical(m->geometry.grid);
}

QRect Canvas::chartRect() const
{
    const Gutters& around = m->geometry.gutters;
    return m->toLogical(m->geometry.grid.adjusted(-around.left, -around.top, around.right, around.bottom));
}

int Canvas::usefulWidth() const
{
    constexpr int columns = 10;
    const double ratio = devicePixelRatioF();
    const Gutters around = m->gutters(m->numbers);
    return static_cast<int>((around.left + around.right + columns * cellOfPercent(100, ratio)) / ratio) +
           verticalScrollBar()->sizeHint().width();
}

void Canvas::zoomToWidth()
{
    const Extent extent = m->extent();
    if (extent.columns == 0)
        return;
    const int bar = static_cast<int>(verticalScrollBar()->sizeHint().width() * devicePixelRatioF());
    m->setCell(std::clamp((m->roomForCells().width() - bar) / extent.columns, leastCell,
                          cellOfPercent(200, devicePixelRatioF())),
               m->geometry.grid.center());
}

void Canvas::zoomToSelection()
{
    const std::optional<Area> all = around(m->selected);
    if (!all)
        return;
    const Area area = *all;
    const QSize room = m->roomForCells();
    const int lines = m->shownRows.lineOf(area.lastRow + 1) - m->shownRows.lineOf(area.firstRow);
    const int fitting =
        std::min(room.width() / (area.lastColumn - area.firstColumn + 1), room.height() / std::max(1, lines));
    m->setCell(std::clamp(fitting, leastCell, cellOfPercent(200, devicePixelRatioF())), m->geometry.grid.center());
    const QRect wanted = m->geometry.areaRect(area);
    m->scrollTo(m->geometry.scroll + wanted.center() - m->geometry.grid.center());
}

// Two fingers on a touchpad or a screen: the chart's point between them stays there.
void Canvas::Parts::pinch(double factor, QPointF device, bool begins)
{
    if (begins || pinched.cell != cell)
        pinched = {cell, static_cast<double>(cell)};
    if (!(factor > 0))
        return;
    pinched.wanted = std::clamp(pinched.wanted * factor, double(leastCell), double(greatestCell));
    setCell(static_cast<int>(std::lround(pinched.wanted)), device);
    pinched.cell = cell;
}

bool Canvas::Parts::takesGesture(QEvent* event)
{
    if (event->type() == QEvent::NativeGesture) {
        const auto* native = static_cast<QNativeGestureEvent*>(event);
        if (native->gestureType() != Qt::ZoomNativeGesture && native->gestureType() != Qt::BeginNativeGesture)
            return false;
        const bool begins = native->gestureType() == Qt::BeginNativeGesture;
        pinch(begins ? 1 : 1 + native->value(), toDevice(native->position()), begins);
        return true;
    }
    if (event->type() != QEvent::Gesture)
        return false;
    auto* gestures = static_cast<QGestureEvent*>(event);
    const auto* two = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture));
    if (!two)
        return false;
    const QPointF middle = canvas.viewport()->mapFromGlobal(two->centerPoint());
    pinch(two->state() == Qt::GestureStarted ? 1 : two->scaleFactor(), toDevice(middle),
          two->state() == Qt::GestureStarted);
    return true;
}

} // namespace shawlwright::app
