// A field to draw the symbol of a stitch in, with straight strokes on a fine grid, by the mouse or by keys.
//
// Mouse:   press, drag, let go is a stroke; from the end of the stroke drawn last it goes on as a bend of it. A click takes
//          hold of a stroke, Delete takes that one away.
// Keys:    arrows move the cross by a step of the grid, with Shift by a quarter of a cell; Space sets a point, Return ends
//          the stroke; Delete takes away the stroke at the cross, Backspace or Ctrl+Z what was done last.
// Shape:   strokes are paths of straight lines, as chart/symbols.h reads and writes them; the stitch's cells beside each
//          other, more of them where a stroke reaches further than the stitch.
// Units:   cells, y downwards.
#pragma once

#include "core/chart/symbols.h"
#include "core/stitches/stitch.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace shawlwright::app {

class StrokeField : public QWidget {
    Q_OBJECT
public:
    using Strokes = std::vector<chart::Path>;

    explicit StrokeField(QWidget* parent = nullptr);

    void setStitch(const Stitch& stitch); // how wide it is; its made symbol is seen faintly. What is drawn stays
    void setStrokes(Strokes strokes);     // to go on from; nothing can be taken back yet
    const Strokes& strokes() const { return m_strokes; } // without the one that keys are drawing
    int outside() const;                  // strokes that reach further than the stitch
    bool canTakeBack() const { return m_open || !m_before.empty(); }

    void beginWithMade();
    void addRing();  // about the cross: a yarn over
    void takeBack(); // the last point of an open stroke, else what was done last
    void clear();

    QSize sizeHint() const override;
    QPoint placeOf(chart::Point point) const; // in the widget

Q_SIGNALS:
    void drawn();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    int columns() const; // shown
    double cell() const; // pixels
    QPointF origin() const;
    QPointF toPixels(chart::Point point) const;
    chart::Point snapped(QPointF pixels) const;
    int strokeAt(QPointF pixels, double within) const; // -1: none
    void moveCross(int across, int down, bool far);
    void setPoint();
    void endStroke();
    void removeStroke(int stroke);
    void begin(); // remembers what was, before something is done
    void changed();
    void describe();

    Stitch m_stitch;
    Strokes m_strokes;
    std::vector<Strokes> m_before; // what Ctrl+Z brings back, the last at the end
    chart::Point m_cross{0.5, 0.5};
    std::optional<chart::Path> m_open;        // set by keys: the stroke goes on until Return
    std::optional<chart::Point> m_pressed;    // where a stroke of the mouse begins
    QPointF m_pressedAt;
    bool m_dragging = false;
    int m_held = -1; // the stroke that Delete takes away
    std::optional<chart::Point> m_bend;       // the end of the stroke drawn last
};

} // namespace shawlwright::app
