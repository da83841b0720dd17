#include "tests/app/canvas/desk.h"

#include "core/edits/sections.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QTest>
#include <QWheelEvent>

namespace shawlwright::app {

Desk::Desk(int rows, int columns, QSize size) : canvas(document)
{
    NewPattern wishes;
    wishes.rows = rows;
    wishes.columns = columns;
    wishes.castOn.stitches = columns;
    document.startNew(newPattern(wishes));
    canvas.setSection(document.pattern().sections.front().id);
    QObject::connect(&canvas, &Canvas::told, [this](const QString& sentence) { told << sentence; });
    canvas.resize(size);
    canvas.show();
    canvas.setFocus();
    settle();
}

StitchId Desk::stitch(const char* key) const
{
    return document.catalogue().require(key);
}

Cell Desk::cell(int row, int column) const
{
    return cellAt(*section().rows[static_cast<std::size_t>(row)], column);
}

std::string Desk::key(int row, int column) const
{
    return document.catalogue().stitch(cell(row, column).stitch).key;
}

QPoint Desk::middle(int row, int column) const
{
    return canvas.cellRectOnViewport(row, column).center();
}

QPoint Desk::rowNumber(int row) const
{
    const QRect right = canvas.cellRectOnViewport(row, 1);
    return QPoint(right.right() + 20, right.center().y());
}

QPoint Desk::columnNumber(int column) const
{
    const QRect lowest = canvas.cellRectOnViewport(0, column);
    return QPoint(lowest.center().x(), lowest.bottom() + 10);
}

QPoint Desk::boundary(int row, int at) const
{
    if (at == 0) {
        const QRect first = canvas.cellRectOnViewport(row, 1);
        return QPoint(first.right() - 1, first.center().y());
    }
    const QRect right = canvas.cellRectOnViewport(row, at);
    return QPoint(right.left() + 1, right.center().y());
}

static void sendMouse(Canvas& canvas, QEvent::Type type, QPoint at, Qt::MouseButton button,
                      Qt::MouseButtons held, Qt::KeyboardModifiers keys = {})
{
    QWidget* target = canvas.viewport();
    QMouseEvent event(type, at, target->mapToGlobal(at), button, held, keys);
    QApplication::sendEvent(target, &event);
}

void Desk::press(QPoint at, Qt::MouseButton button, Qt::KeyboardModifiers keys)
{
    sendMouse(canvas, QEvent::MouseButtonPress, at, button, button, keys);
}

void Desk::move(QPoint at, Qt::MouseButton held, Qt::KeyboardModifiers keys)
{
    sendMouse(canvas, QEvent::MouseMove, at, Qt::NoButton, held, keys);
}

void Desk::release(QPoint at, Qt::MouseButton button, Qt::KeyboardModifiers keys)
{
    sendMouse(canvas, QEvent::MouseButtonRelease, at, button, Qt::NoButton, keys);
}

void Desk::click(QPoint at, Qt::MouseButton button, Qt::KeyboardModifiers keys)
{
    press(at, button, keys);
    release(at, button, keys);
}

void Desk::drag(QPoint from, QPoint to, Qt::MouseButton button, Qt::KeyboardModifiers keys)
{
    press(from, button, keys);
    move(to, button, keys);
    release(to, button, keys);
}

void Desk::type(int key, Qt::KeyboardModifiers keys)
{
    QTest::keyClick(&canvas, static_cast<Qt::Key>(key), keys);
}

void Desk::wheel(QPoint at, int angle)
{
    QWidget* target = canvas.viewport();
    QWheelEvent event(at, target->mapToGlobal(at), QPoint(), QPoint(0, angle), Qt::NoButton,
                      Qt::ControlModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(target, &event);
}

void Desk::settle()
{
    for (int round = 0; round < 3; ++round)
        QApplication::processEvents();
}

} // namespace shawlwright::app
