#include "app/window/elided_label.h"

#include <QEvent>
#include <QMainWindow>
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
    beBrief();
    setText(words);
}

void ElidedLabel::beBrief()
{
    if (!m_whole || m_whole->isHidden())
        return;
    m_whole->hide();
    update();
}

bool ElidedLabel::eventFilter(QObject* of, QEvent* event)
{
    if (event->type() == QEvent::WindowBlocked || event->type() == QEvent::WindowDeactivate)
        beBrief();
    return QLabel::eventFilter(of, event);
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
        window()->installEventFilter(this);
    }
    m_whole->setText(words);
    m_whole->ensurePolished(); // its padding counts in its height
    // Over what is in the middle of the window: the panels beside it have their tabs and buttons at the lower edge.
    const QRect place = roomAbove();
    const int width = std::min(place.width(), 80 * fontMetrics().averageCharWidth());
    const int height = m_whole->heightForWidth(width);
    m_whole->setGeometry(place.left(), place.bottom() - height, width, height);
    m_whole->show();
    m_whole->raise();
    update();
}

QRect ElidedLabel::roomAbove() const
{
    constexpr int beside = 8;
    const QPoint corner = mapTo(window(), QPoint(0, 0));
    int left = corner.x(), right = window()->width();
    if (const auto* main = qobject_cast<QMainWindow*>(window()); main && main->centralWidget()) {
        left = main->centralWidget()->geometry().left();
        right = main->centralWidget()->geometry().right();
    }
    return QRect(QPoint(left + beside, 0), QPoint(right - beside, corner.y() - beside));
}

bool ElidedLabel::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip)
        setToolTip(elided() == text() ? QString() : text());
    return QLabel::event(event);
}

void ElidedLabel::paintEvent(QPaintEvent*)
{
    if (m_whole && m_whole->isVisible())
        return; // it is read there
    QPainter painter(this);
    style()->drawItemText(&painter, contentsRect(), static_cast<int>(alignment()), palette(), isEnabled(), elided(),
                          foregroundRole());
}

} // namespace shawlwright::app
