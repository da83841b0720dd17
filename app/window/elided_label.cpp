#include "app/window/elided_label.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>

#include <algorithm>

namespace shawlwright::app {

QSize ElidedLabel::minimumSizeHint() const
{
    return {4 * fontMetrics().averageCharWidth(), QLabel::minimumSizeHint().height()};
}

QString ElidedLabel::elided() const
{
    return fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width());
}

void ElidedLabel::showWords(const QString& words)
{
    if (m_whole)
        m_whole->hide();
    setText(words);
}

void ElidedLabel::say(const QString& words)
{
    showWords(words);
    if (elided() == words || !isVisible())
        return;
    if (!m_whole) {
        m_whole = new QLabel(window());
        m_whole->setObjectName(QStringLiteral("saidWhole"));
        m_whole->setWordWrap(true);
        m_whole->setAttribute(Qt::WA_TransparentForMouseEvents);
    }
    m_whole->setText(words);
    m_whole->ensurePolished(); // its padding counts in its height
    const QPoint corner = mapTo(window(), QPoint(0, 0));
    const int width = std::min(window()->width() - corner.x() - 16, 80 * fontMetrics().averageCharWidth());
    const int height = m_whole->heightForWidth(width);
    m_whole->setGeometry(corner.x() + 8, corner.y() - height - 8, width, height);
    m_whole->show();
    m_whole->raise();
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
