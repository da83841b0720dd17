#include "app/window/elided_label.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>

namespace shawlwright::app {

QSize ElidedLabel::minimumSizeHint() const
{
    return {4 * fontMetrics().averageCharWidth(), QLabel::minimumSizeHint().height()};
}

QString ElidedLabel::elided() const
{
    return fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width());
}

bool ElidedLabel::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip)
        setToolTip(elided() == text() ? QString() : text());
    return QLabel::event(event);
}

void ElidedLabel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    style()->drawItemText(&painter, contentsRect(), static_cast<int>(alignment()), palette(), isEnabled(), elided(),
                          foregroundRole());
}

} // namespace shawlwright::app
