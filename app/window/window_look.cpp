// How the window looks and what it remembers of that: theme, size of the text, its own size and place.
#include "app/panels/findings_panel.h"
#include "app/panels/look.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "app/window/main_window.h"

#include <QDockWidget>
#include <QMenu>
#include <QScreen>
#include <QSettings>

#include <algorithm>

namespace shawlwright::app {

void MainWindow::setTheme(bool dark)
{
    m_dark = dark;
    action(dark ? ActionId::DarkTheme : ActionId::LightTheme)->setChecked(true);
    if (themeOf(*this).dark != dark)
        dress(dark ? darkTheme() : lightTheme(), m_textPercent);
    action(ActionId::PaperChart)->setEnabled(dark);
    const bool paper = dark && action(ActionId::PaperChart)->isChecked();
    m_canvas->setTheme(dark && !paper ? darkTheme() : lightTheme());
    m_words->refresh();
    m_findings->refresh();
    update();
}

void MainWindow::setTextPercent(int percent)
{
    const int before = m_textPercent;
    m_textPercent = std::clamp(percent, leastTextPercent, mostTextPercent);
    QDockWidget* left = m_docks.at(QStringLiteral("sections"));
    QDockWidget* right = m_docks.at(QStringLiteral("words"));
    // From what they are at the desktop's size, where that is known: on the way there may have been no room for more.
    QList<int> widths;
    for (QDockWidget* dock : {left, right}) {
        if (before == leastTextPercent)
            dock->setProperty("plainWidth", dock->width());
        const QVariant plain = dock->property("plainWidth");
        widths << (plain.isValid() ? plain.toInt() * m_textPercent / 100 : dock->width() * m_textPercent / before);
    }
    dress(m_dark ? darkTheme() : lightTheme(), m_textPercent);
    refresh();
    // What grew with the text shrinks with it again, once all is measured anew.
    QTimer::singleShot(0, this, [this, widths] {
        setSideWidths(widths[0], widths[1]);
        m_fitTimer.start();
    });
    tell(tr("Text at %1 %.").arg(m_textPercent));
}

// What was remembered may be of a larger screen.
void MainWindow::keepOnScreen()
{
    const QRect room = screen()->availableGeometry();
    if (isMaximized() || isFullScreen() || room.contains(geometry()))
        return;
    resize(size().boundedTo(room.size()));
    move(std::clamp(x(), room.left(), std::max(room.left(), room.right() + 1 - width())),
         std::clamp(y(), room.top(), std::max(room.top(), room.bottom() + 1 - height())));
}

// The first time: all of a small screen, a part of a large one.
void MainWindow::sizeToScreen()
{
    const QSize room = screen()->availableSize();
    resize(std::min(1440, room.width()), std::min(900, room.height()));
    if (room.width() < 1500 || room.height() < 960)
        setWindowState(Qt::WindowMaximized);
}

// What all windows share of the chart and its stitches.
void MainWindow::takeChartSettings()
{
    const QSettings settings;
    const QSignalBlocker quietPaper(action(ActionId::PaperChart));
    const QSignalBlocker quietTints(action(ActionId::YarnTints));
    action(ActionId::PaperChart)->setChecked(settings.value(QStringLiteral("paperChart"), false).toBool());
    const bool tints = settings.value(QStringLiteral("yarnTints"), true).toBool();
    action(ActionId::YarnTints)->setChecked(tints);
    m_canvas->setYarnTints(tints);
    const QStringList favourites = settings.value(QStringLiteral("favourites")).toStringList();
    if (!favourites.isEmpty())
        m_stitches->setFavourites(favourites);
}

void MainWindow::takeSharedSettings()
{
    QSettings settings;
    settings.sync();
    takeChartSettings();
    const int percent = settings.value(QStringLiteral("textPercent"), leastTextPercent).toInt();
    if (percent != m_textPercent)
        setTextPercent(percent);
    setTheme(settings.value(QStringLiteral("darkTheme"), false).toBool());
}

void MainWindow::restoreSettings()
{
    const QSettings settings;
    takeChartSettings();
    setTheme(m_dark);
    m_canvas->setTurnMethod(
        static_cast<TurnMethod>(std::clamp(settings.value(QStringLiteral("turnMethod"), 0).toInt(), 0, 5)));
    if (!restoreGeometry(settings.value(QStringLiteral("geometry")).toByteArray()))
        sizeToScreen();
    keepOnScreen();
    restoreState(settings.value(QStringLiteral("panels")).toByteArray());
    m_leftSideChosen = settings.value(QStringLiteral("leftSideChosen"), false).toBool();
    m_rightSideChosen = settings.value(QStringLiteral("rightSideChosen"), false).toBool();
    m_canvas->setZoomPercent(settings.value(QStringLiteral("zoom"), 100).toDouble());
    m_canvas->fitSection();
    const QList<QAction*> methods = m_turnMenu->actions();
    methods[static_cast<int>(m_canvas->turnMethod())]->setChecked(true);
}

void MainWindow::keepSettings()
{
    keepView();
    QSettings settings;
    settings.setValue(QStringLiteral("paperChart"), action(ActionId::PaperChart)->isChecked());
    settings.setValue(QStringLiteral("yarnTints"), action(ActionId::YarnTints)->isChecked());
    settings.setValue(QStringLiteral("darkTheme"), m_dark);
    settings.setValue(QStringLiteral("textPercent"), m_textPercent);
    settings.setValue(QStringLiteral("favourites"), m_stitches->favourites());
    settings.setValue(QStringLiteral("turnMethod"), static_cast<int>(m_canvas->turnMethod()));
    settings.setValue(QStringLiteral("geometry"), saveGeometry());
    settings.setValue(QStringLiteral("panels"),
                      action(ActionId::ChartAlone)->isChecked() ? m_panelsBefore : saveState());
    settings.setValue(QStringLiteral("leftSideChosen"), m_leftSideChosen);
    settings.setValue(QStringLiteral("rightSideChosen"), m_rightSideChosen);
    settings.setValue(QStringLiteral("zoom"), m_canvas->chosenZoomPercent());
    settings.sync(); // at once, so that a program that is killed still knows them
}

// Sizes and places change many times a second while somebody drags.
void MainWindow::keepLayoutSoon()
{
    if (isVisible())
        m_layoutTimer.start();
}

void MainWindow::resizeEvent(QResizeEvent* event)
{
    QMainWindow::resizeEvent(event);
    placeStartPage();
    m_fitTimer.start();
    keepLayoutSoon();
}

void MainWindow::moveEvent(QMoveEvent* event)
{
    QMainWindow::moveEvent(event);
    keepLayoutSoon();
}

} // namespace shawlwright::app
