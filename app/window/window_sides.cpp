// How the panels share the sides of the window, and give way to the chart.
#include "app/panels/findings_panel.h"
#include "app/panels/row_facts_panel.h"
#include "app/panels/sections_panel.h"
#include "app/window/main_window.h"

#include <QDockWidget>
#include <QMouseEvent>

#include <algorithm>
#include <utility>

namespace shawlwright::app {

QDockWidget* MainWindow::sideDock(Qt::DockWidgetArea area) const
{
    QDockWidget* widest = nullptr;
    for (const auto& [name, dock] : m_docks)
        if (dock->isVisibleTo(this) && !dock->isFloating() && dockWidgetArea(dock) == area &&
            (!widest || dock->width() > widest->width()))
            widest = dock;
    return widest;
}

void MainWindow::setSideWidths(int left, int right)
{
    QDockWidget* docks[] = {sideDock(Qt::LeftDockWidgetArea), sideDock(Qt::RightDockWidgetArea)};
    const int wanted[] = {docks[0] ? left : 0, docks[1] ? right : 0};
    const int both = wanted[0] + wanted[1];
    constexpr int lines = 8; // between the panels and the chart
    const int room = isVisible() ? width() - lines - std::min(m_canvas->usefulWidth(), width() / 2)
                                 : both; // else not known yet
    QList<QDockWidget*> shown;
    QList<int> widths;
    for (const int side : {0, 1})
        if (docks[side]) {
            shown << docks[side];
            widths << (both <= room ? wanted[side] : wanted[side] * room / both);
        }
    resizeDocks(shown, widths, Qt::Horizontal);
}

// A window that has become smaller, numbers that have become wider: the panels give way to the chart.
void MainWindow::fitPanels()
{
    if (!isVisible() || action(ActionId::ChartAlone)->isChecked())
        return;
    const QDockWidget *left = sideDock(Qt::LeftDockWidgetArea), *right = sideDock(Qt::RightDockWidgetArea);
    if (centralWidget()->width() < std::min(m_canvas->usefulWidth(), width() / 2))
        setSideWidths(left ? left->width() : 0, right ? right->width() : 0);
    shareLeftSide();
}

// The panel that stands with the sections and can be seen: of two on one place the one whose tab is in front.
QDockWidget* MainWindow::besideSections() const
{
    QDockWidget* sections = m_docks.at(QStringLiteral("sections"));
    if (!sections->isVisible() || sections->isFloating() || !tabifiedDockWidgets(sections).isEmpty())
        return nullptr;
    for (const char* name : {"stitches", "motifs"}) {
        QDockWidget* other = m_docks.at(QString::fromLatin1(name));
        if (!other->isFloating() && dockWidgetArea(other) == dockWidgetArea(sections) && other->isVisible() &&
            !other->visibleRegion().isEmpty())
            return other;
    }
    return nullptr;
}

void MainWindow::shareLeftSide()
{
    QDockWidget *sections = m_docks.at(QStringLiteral("sections")), *other = besideSections();
    if (!isVisible() || !other || m_leftSideChosen)
        return;
    const int title = sections->titleBarWidget()->sizeHint().height();
    const int both = std::max(sections->height() + other->height(), height() / 2);
    const int high = title + m_sections->heightWithin(both * 9 / 20 - title);
    if (high != sections->height())
        resizeDocks({sections, other}, {high, both - high}, Qt::Vertical);
}

// What a row holds is more at one row than at another: it takes the room that the findings above it leave
// empty.
void MainWindow::shareRightSide()
{
    QDockWidget *findings = m_docks.at(QStringLiteral("findings")), *row = m_docks.at(QStringLiteral("row"));
    const bool together = dockWidgetArea(findings) == dockWidgetArea(row) && !findings->isFloating() &&
                          !row->isFloating() && findings->isVisible() && row->isVisible() &&
                          tabifiedDockWidgets(findings).isEmpty() && tabifiedDockWidgets(row).isEmpty();
    if (!isVisible() || !together || m_rightSideChosen)
        return;
    const int missing = m_facts->heightWanted() - m_facts->height();
    if (missing <= 0)
        return;
    const int more = std::min(missing, m_findings->height() - m_findings->heightWanted());
    if (more > 0)
        resizeDocks({findings, row}, {findings->height() - more, row->height() + more}, Qt::Vertical);
}

// The lines between panels are the window's own; who draws one has chosen the heights beside it.
bool MainWindow::event(QEvent* event)
{
    const bool handled = QMainWindow::event(event);
    if (event->type() == QEvent::MouseButtonPress || event->type() == QEvent::MouseButtonRelease) {
        const std::pair now(m_docks.at(QStringLiteral("sections"))->height(),
                            m_docks.at(QStringLiteral("row"))->height());
        if (event->type() == QEvent::MouseButtonPress) {
            const bool onLine = !childAt(static_cast<QMouseEvent*>(event)->position().toPoint());
            m_heightsPressed = onLine ? std::optional(now) : std::nullopt;
        } else {
            const auto [sections, row] = std::exchange(m_heightsPressed, std::nullopt).value_or(now);
            m_leftSideChosen = m_leftSideChosen || sections != now.first;
            m_rightSideChosen = m_rightSideChosen || row != now.second;
        }
    }
    return handled;
}

} // namespace shawlwright::app
