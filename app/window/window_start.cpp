// The start page over the window, and the note that guides through the first chart.
#include "app/window/main_window.h"
#include "app/window/empty_hint.h"
#include "app/window/shared_files.h"
#include "app/window/start_page.h"
#include "app/window/tool_bar.h"

#include <QDir>
#include <QDockWidget>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QSettings>
#include <QToolBar>
#include <QToolButton>

#include <algorithm>

namespace shawlwright::app {

namespace {

// In a bar a text that wraps asks for the height of its narrowest form; this one for that of the window's width.
class BarText : public QLabel {
public:
    using QLabel::QLabel;
    QSize sizeHint() const override
    {
        const int width = std::max(300, window()->width() - 16 * fontMetrics().averageCharWidth() - 60);
        return {width, heightForWidth(width)};
    }
    QSize minimumSizeHint() const override { return {200, sizeHint().height()}; }
};

} // namespace

void MainWindow::showStartPage()
{
    if (!m_start) {
        m_start = new StartPage(this);
        connect(m_start, &StartPage::newWanted, this, &MainWindow::startNewShawl);
        connect(m_start, &StartPage::openWanted, this, &MainWindow::openAnother);
        connect(m_start, &StartPage::wordsWanted, this, [this] { readRows({}); });
        connect(m_start, &StartPage::fileWanted, this, [this](const QString& path) { openPath(path); });
        connect(m_start, &StartPage::sampleWanted, this, [this](const QString& path) {
            if (maySetAside())
                openCopy(path, QFileInfo(path).completeBaseName());
        });
        connect(m_start, &StartPage::forgetWanted, this, [this](const QString& path) {
            QStringList paths = recent();
            paths.removeAll(path);
            keepRecent(paths);
            m_start->setRecent(paths);
        });
        connect(m_start, &StartPage::left, this, &MainWindow::leaveStartPage);
    }
    m_canvas->endStroke();
    m_start->setRecent(recent());
    m_start->setSamples(samples());
    m_start->show();
    m_start->raise();
    placeStartPage();
    coverWindow(true);
    m_start->setFocus();
}

void MainWindow::leaveStartPage()
{
    if (!startPageShown())
        return;
    m_start->hide();
    coverWindow(false);
    m_canvas->setFocus();
}

bool MainWindow::startPageShown() const
{
    return m_start && !m_start->isHidden();
}

void MainWindow::makeFirstSteps()
{
    m_emptyHint = new EmptyHint(m_canvas);
    if (QSettings().value(QStringLiteral("firstStepsRead"), false).toBool())
        return;
    addToolBarBreak();
    m_firstSteps = addToolBar(tr("First steps"));
    m_firstSteps->setObjectName(QStringLiteral("firstSteps"));
    m_firstSteps->setMovable(false);
    m_firstSteps->setContextMenuPolicy(Qt::PreventContextMenu);
    auto* words = new BarText(
        tr("<b>1</b> Choose a stitch on the left, or press 1 to 9. <b>2</b> Drag over the chart, from the lower "
           "right. <b>3</b> Read the count of each row beside it, and the row in words on the right."),
        m_firstSteps);
    words->setWordWrap(true);
    words->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    m_firstSteps->addWidget(words);
    auto* done = new QToolButton(m_firstSteps);
    done->setObjectName(QStringLiteral("firstStepsDone"));
    done->setText(tr("Don't show again"));
    done->setToolTip(tr("The keys are listed by F1"));
    m_firstSteps->addWidget(done);
    connect(done, &QToolButton::clicked, this, [this] {
        QSettings settings;
        settings.setValue(QStringLiteral("firstStepsRead"), true);
        settings.sync();
        m_firstSteps->hide();
        m_firstSteps->deleteLater();
        m_firstSteps = nullptr;
        m_canvas->setFocus();
    });
}

void MainWindow::showEmptyHint()
{
    const Section* section = shownSection();
    const bool empty = section && std::none_of(section->rows.begin(), section->rows.end(), [](const RowRef& row) {
        return std::any_of(row->cells.begin(), row->cells.end(),
                           [](const Cell& cell) { return cell.stitch != noStitch; });
    });
    m_emptyHint->setWanted(empty && !m_canvas->entry());
}

// What lies below the page must not take the keys that are meant for it.
void MainWindow::coverWindow(bool covered)
{
    centralWidget()->setEnabled(!covered);
    m_bar->setEnabled(!covered);
    for (const auto& [name, dock] : m_docks)
        dock->setEnabled(!covered);
}

void MainWindow::placeStartPage()
{
    if (m_firstSteps)
        for (QLabel* words : m_firstSteps->findChildren<QLabel*>())
            words->updateGeometry();
    if (!startPageShown())
        return;
    const int top = menuBar()->isVisible() ? menuBar()->geometry().bottom() + 1 : 0;
    m_start->setGeometry(0, top, width(), height() - top);
}

} // namespace shawlwright::app
