// A canvas on a new pattern, driven as a person would: with a mouse and keys, by row and column.
#pragma once

#include "app/canvas/canvas.h"

#include <QStringList>

#include <string>

namespace shawlwright::app {

struct Desk {
    explicit Desk(int rows = 12, int columns = 16, QSize size = QSize(900, 700));

    PatternDocument document;
    Canvas canvas;
    QStringList told;

    StitchId stitch(const char* key) const;
    void brush(const char* key) { canvas.setBrush(stitch(key)); }
    std::string key(int row, int column) const; // of the stitch that stands there
    Cell cell(int row, int column) const;
    const Section& section() const { return document.pattern().sections.front(); }
    int steps() { return document.undoStack().count(); }

    QPoint middle(int row, int column) const;
    QPoint rowNumber(int row) const; // where its number stands or could stand, at the right
    QPoint columnNumber(int column) const;
    QPoint boundary(int row, int at) const; // on the line at the left of column `at`
    void press(QPoint at, Qt::MouseButton button = Qt::LeftButton, Qt::KeyboardModifiers keys = {});
    void move(QPoint at, Qt::MouseButton held = Qt::LeftButton, Qt::KeyboardModifiers keys = {});
    void release(QPoint at, Qt::MouseButton button = Qt::LeftButton, Qt::KeyboardModifiers keys = {});
    void click(QPoint at, Qt::MouseButton button = Qt::LeftButton, Qt::KeyboardModifiers keys = {});
    void drag(QPoint from, QPoint to, Qt::MouseButton button = Qt::LeftButton,
              Qt::KeyboardModifiers keys = {});
    void type(int key, Qt::KeyboardModifiers keys = {});
    void wheel(QPoint at, int angle);
    void settle(); // lets pending repaints happen
};

} // namespace shawlwright::app
