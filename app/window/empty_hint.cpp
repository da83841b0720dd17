#include "app/window/empty_hint.h"

#include "app/canvas/canvas.h"

#include <QEvent>

#include <algorithm>

namespace shawlwright::app {

EmptyHint::EmptyHint(Canvas* over) : QLabel(over), m_canvas(*over), m_viewport(over->viewport())
{
    setObjectName(QStringLiteral("emptyHint"));
    setText(tr("Nothing is charted yet.\nChoose a stitch on the left and drag over the chart to paint it, "
               "or press Return and type:  k2, yo, k2tog. It goes where the cursor is, and on in the next row when a row is full."));
    setAlignment(Qt::AlignCenter);
    setWordWrap(true);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    m_viewport->installEventFilter(this);
    connect(over, &Canvas::cursorMoved, this, &EmptyHint::place);
    connect(over, &Canvas::zoomChanged, this, &EmptyHint::place);
    hide();
}

void EmptyHint::setWanted(bool wanted)
{
    m_wanted = wanted;
    place();
}

void EmptyHint::place()
{
    const QRect view = m_canvas.viewport()->rect(), chart = m_canvas.chartRect(), grid = m_canvas.gridRect();
    const At at = m_canvas.cursor();
    const QRect cursor = m_canvas.cellRectOnViewport(at.row, at.column).adjusted(-4, -4, 4, 4);
    const int wanted = 58 * fontMetrics().averageCharWidth(); // two lines
    constexpr int gap = 12;
    // Centred in the band and at its upper or lower end; empty where it has no room there.
    const auto within = [&](const QRect& band, bool above) {
        const int width = std::min(wanted, band.width() - 2 * gap);
        if (width < 120)
            return QRect();
        const int height = heightForWidth(width);
        const QRect put((band.left() + band.right() - width) / 2, above ? band.top() + gap : band.bottom() - gap - height,
                        width, height);
        return band.height() < height + 2 * gap || put.intersects(cursor) ? QRect() : put;
    };
    QRect put;
    if (m_wanted)
        for (const QRect& one : {within(QRect(QPoint(0, 0), QPoint(view.right(), chart.top() - 1)), false),
                                 within(QRect(QPoint(0, chart.bottom() + 1), view.bottomRight()), true),
                                 within(grid & view, true), within(grid & view, false)})
            if (put.isEmpty())
                put = one;
    setVisible(!put.isEmpty());
    if (put.isEmpty())
        return;
    setGeometry(put.translated(m_canvas.viewport()->pos()));
    raise();
}

bool EmptyHint::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_viewport && event->type() == QEvent::Resize)
        QMetaObject::invokeMethod(this, &EmptyHint::place, Qt::QueuedConnection); // once the chart is laid out anew
    return QLabel::eventFilter(watched, event);
}

} // namespace shawlwright::app
