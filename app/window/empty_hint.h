// Says over a chart without stitches how the first ones come into it; the mouse goes through it. It stands beside the chart
// where there is room, else in the chart's upper or lower part: over no number and not over the cursor.
#pragma once

#include <QLabel>

namespace shawlwright::app {

class Canvas;

class EmptyHint : public QLabel {
    Q_OBJECT
public:
    explicit EmptyHint(Canvas* over);

    void setWanted(bool wanted);
    void place();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    Canvas& m_canvas;
    QWidget* m_viewport; // events of it still come while the canvas ends
    bool m_wanted = false;
};

} // namespace shawlwright::app
