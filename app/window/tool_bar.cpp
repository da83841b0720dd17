#include "app/window/tool_bar.h"

#include <QCoreApplication>
#include <QCursor>
#include <QEvent>
#include <QLayout>
#include <QMenu>
#include <QScopedValueRollback>
#include <QTimer>
#include <QToolButton>
#include <QWidgetAction>

#include <algorithm>

namespace shawlwright::app {

ToolBar::ToolBar(const QString& title, QWidget* parent) : QToolBar(title, parent)
{
    setMovable(false);
    setToolButtonStyle(Qt::ToolButtonTextOnly);
    setContextMenuPolicy(Qt::PreventContextMenu);
    if (auto* more = findChild<QToolButton*>(QStringLiteral("qt_toolbar_ext_button"))) {
        more->setToolTip(tr("More tools"));
        more->setAccessibleName(tr("More tools"));
    }
    auto* more = new QToolButton(this);
    more->setObjectName(QStringLiteral("moreTools"));
    more->setText(tr("More"));
    more->setToolTip(tr("More tools"));
    more->setAccessibleName(tr("More tools"));
    more->setPopupMode(QToolButton::InstantPopup);
    m_moreMenu = new QMenu(more);
    more->setMenu(m_moreMenu);
    leaveWithMenu(*more);
    m_more = addWidget(more);
    removeAction(m_more);
}

void ToolBar::mayGiveWay(int order)
{
    close(order);
}

void ToolBar::staysShown()
{
    close(-1);
}

void ToolBar::close(int order)
{
    QList<QAction*> fresh = actions();
    for (const Group& group : m_groups)
        for (QAction* action : group.actions)
            fresh.removeAll(action);
    m_groups.push_back({order, fresh});
}

// A button of the bar goes with its action, which stays in the menus.
void ToolBar::showGroups(const std::vector<bool>& groups)
{
    QList<QAction*> wanted;
    for (std::size_t i = 0; i < m_groups.size(); ++i)
        if (groups[i])
            wanted += m_groups[i].actions;
    if (std::find(groups.begin(), groups.end(), false) != groups.end())
        wanted += m_more;
    for (QAction* action : actions())
        if (!wanted.contains(action))
            removeAction(action);
    for (qsizetype i = wanted.size() - 1; i >= 0; --i)
        if (!actions().contains(wanted[i]))
            insertAction(i + 1 < wanted.size() ? wanted[i + 1] : nullptr, wanted[i]);
}

void ToolBar::fillMore(const std::vector<bool>& shown)
{
    m_moreMenu->clear();
    for (std::size_t i = 0; i < m_groups.size(); ++i)
        if (!shown[i])
            for (QAction* action : m_groups[i].actions)
                if (!qobject_cast<QWidgetAction*>(action)) // that is a widget of the bar
                    m_moreMenu->addAction(action);
}

void ToolBar::fit()
{
    if (m_fitting || m_groups.empty() || width() <= 0 || !isVisible())
        return;
    const QScopedValueRollback guard(m_fitting, true);
    std::vector<bool> shown(m_groups.size(), true);
    showGroups(shown);
    int last = -1;
    for (const Group& group : m_groups)
        last = std::max(last, group.order);
    for (int order = 0; order <= last; ++order) {
        layout()->invalidate();
        if (layout()->sizeHint().width() <= width())
            return;
        for (std::size_t i = 0; i < m_groups.size(); ++i)
            if (m_groups[i].order == order)
                shown[i] = false;
        showGroups(shown);
        fillMore(shown);
    }
}

void ToolBar::resizeEvent(QResizeEvent* event)
{
    QToolBar::resizeEvent(event);
    fit();
}

void ToolBar::changeEvent(QEvent* event)
{
    QToolBar::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        QMetaObject::invokeMethod(this, &ToolBar::fit, Qt::QueuedConnection); // once all of it has the new font
}

void leaveWithMenu(QToolButton& button)
{
    QObject::connect(button.menu(), &QMenu::aboutToHide, &button, [&button] {
        QTimer::singleShot(0, &button, [&button] {
            if (button.rect().contains(button.mapFromGlobal(QCursor::pos())))
                return;
            button.setAttribute(Qt::WA_UnderMouse, false);
            QEvent left(QEvent::Leave);
            QCoreApplication::sendEvent(&button, &left);
            button.update();
        });
    });
}

} // namespace shawlwright::app
