// The panels beside the chart: what stands in them, where they are at first, and the chart without them.
#include "app/panels/count_thread.h"
#include "app/panels/findings_panel.h"
#include "app/panels/motifs_panel.h"
#include "app/panels/row_facts_panel.h"
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "app/panels/look.h"
#include "app/window/elided_label.h"
#include "app/window/main_window.h"
#include "app/window/tool_bar.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDockWidget>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QMenuBar>
#include <QStatusBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int firstLeft = 236, firstRight = 340; // widths, at the plain size of the text

QToolButton* quietButton(const QString& words, const QString& tip, QWidget* parent)
{
    auto* button = new QToolButton(parent);
    button->setObjectName(QStringLiteral("quiet"));
    button->setText(words);
    button->setToolTip(tip);
    button->setAutoRaise(true);
    return button;
}

} // namespace

QDockWidget* MainWindow::addPanel(const QString& name, const QString& words, ActionId shows, QWidget* panel,
                                  Qt::DockWidgetArea area, const QList<QToolButton*>& beside)
{
    auto* dock = new QDockWidget(words, this);
    dock->setObjectName(name);
    dock->setFeatures(QDockWidget::DockWidgetClosable | QDockWidget::DockWidgetMovable |
                      QDockWidget::DockWidgetFloatable);
    auto* title = new QWidget(dock);
    title->setObjectName(QStringLiteral("panelTitle"));
    title->setAttribute(Qt::WA_StyledBackground);
    auto* line = new QHBoxLayout(title);
    line->setContentsMargins(16, 8, 10, 4);
    line->setSpacing(2);
    auto* label = new ElidedLabel(title);
    label->setText(words);
    label->setMinimumWidth(48); // cut with dots where the panel is narrow; its tip says it whole
    label->setObjectName(QStringLiteral("panelHeading"));
    line->addWidget(label, 1);
    for (QToolButton* button : beside)
        line->addWidget(button);
    dock->setTitleBarWidget(title);
    panel->setAttribute(Qt::WA_StyledBackground);
    panel->setMinimumWidth(120); // whatever is in it: it scrolls or is cut before the window outgrows the screen
    if (area != Qt::BottomDockWidgetArea)
        panel->setMinimumHeight(48);
    dock->setWidget(panel);
    addDockWidget(area, dock);
    takeAction(shows, dock->toggleViewAction());
    // A panel behind another's tab comes to the front; hidden is one that is in front. Queued, so that what was true before
    // the action is still known when it has been done.
    connect(
        dock, &QDockWidget::visibilityChanged, dock, [dock](bool seen) { dock->setProperty("seen", seen); },
        Qt::QueuedConnection);
    connect(dock->toggleViewAction(), &QAction::triggered, dock, [dock](bool shown) {
        const bool wasBehind = !shown && !dock->property("seen").toBool();
        if (wasBehind)
            dock->show();
        if (shown || wasBehind)
            dock->raise();
    });
    m_docks[name] = dock;
    m_headings[name] = label;
    return dock;
}

void MainWindow::makePanels()
{
    setDockOptions(QMainWindow::AnimatedDocks | QMainWindow::AllowNestedDocks |
                   QMainWindow::AllowTabbedDocks);
    setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    m_sections = new SectionsPanel(m_document, this);
    m_stitches = new StitchesPanel(m_document, this);
    m_words = new WordsPanel(m_document, this);
    m_findings = new FindingsPanel(m_document, this);
    for (const ActionEntry& entry : actionTable())
        if (belongsToChart(entry)) // nothing is typed into these lists
            for (QListView* list : {m_words->list(), m_findings->list()})
                list->addAction(action(entry.id));
    m_facts = new RowFactsPanel(m_document, this);
    m_motifs = new MotifsPanel(m_document, this);
    m_thread = new CountThread(m_document, this);

    const auto acting = [this](ActionId id, const QString& words) {
        QToolButton* button = quietButton(words, action(id)->toolTip(), this);
        connect(button, &QToolButton::clicked, action(id), &QAction::trigger);
        connect(action(id), &QAction::changed, button,
                [this, id, button] { button->setEnabled(action(id)->isEnabled()); });
        return button;
    };
    addPanel(QStringLiteral("sections"), tr("Sections"), ActionId::PanelSections, m_sections, Qt::LeftDockWidgetArea,
             {acting(ActionId::AddSection, tr("Add")),
              acting(ActionId::SectionEarlier, QString(QChar(0x2191))),
              acting(ActionId::SectionLater, QString(QChar(0x2193)))});
    addPanel(QStringLiteral("stitches"), tr("Stitches"), ActionId::PanelStitches, m_stitches, Qt::LeftDockWidgetArea,
             {acting(ActionId::OwnStitch, tr("Make one"))});
    addPanel(QStringLiteral("motifs"), tr("Motifs"), ActionId::PanelMotifs, m_motifs, Qt::LeftDockWidgetArea,
             {acting(ActionId::SaveMotif, tr("Save"))});
    auto* copy = acting(ActionId::CopyWords, tr("Copy"));
    auto* style = acting(ActionId::WordStyle, tr("How written..."));
    addPanel(QStringLiteral("words"), tr("In words"), ActionId::PanelWords, m_words, Qt::RightDockWidgetArea, {copy, style});
    addPanel(QStringLiteral("findings"), tr("Findings"), ActionId::PanelFindings, m_findings, Qt::RightDockWidgetArea);
    addPanel(QStringLiteral("row"), tr("At this row"), ActionId::PanelRow, m_facts, Qt::RightDockWidgetArea);
    addPanel(QStringLiteral("thread"), tr("Stitches over the shawl"), ActionId::PanelThread, m_thread, Qt::BottomDockWidgetArea);

    // The yarn that cells are painted with stands with the stitches.
    m_brushYarn = new QComboBox(m_stitches);
    m_brushYarn->setAccessibleName(tr("Yarn to draw with"));
    m_brushYarn->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_brushYarn->setMinimumContentsLength(6);
    m_brushYarn->setToolTip(tr("Yarn to draw with: that of the row, or another for single stitches"));
    auto* line = new QHBoxLayout;
    line->setContentsMargins(12, 0, 12, 12);
    line->addWidget(m_brushYarn);
    static_cast<QVBoxLayout*>(m_stitches->layout())->addLayout(line);
    connect(m_brushYarn, &QComboBox::activated, this, [this] {
        m_canvas->setBrushYarn(YarnId{static_cast<std::uint8_t>(m_brushYarn->currentData().toInt())});
    });
}

void MainWindow::panelsAsFirst()
{
    action(ActionId::ChartAlone)->setChecked(false);
    menuBar()->show();
    if (m_bar)
        m_bar->show();
    statusBar()->show();
    const auto place = [this](const char* name, Qt::DockWidgetArea area) {
        QDockWidget* dock = m_docks.at(QString::fromLatin1(name));
        dock->setFloating(false);
        addDockWidget(area, dock);
        dock->show();
        return dock;
    };
    QDockWidget* sections = place("sections", Qt::LeftDockWidgetArea);
    QDockWidget* stitches = place("stitches", Qt::LeftDockWidgetArea);
    QDockWidget* motifs = place("motifs", Qt::LeftDockWidgetArea);
    QDockWidget* words = place("words", Qt::RightDockWidgetArea);
    QDockWidget* findings = place("findings", Qt::RightDockWidgetArea);
    QDockWidget* row = place("row", Qt::RightDockWidgetArea);
    QDockWidget* thread = place("thread", Qt::BottomDockWidgetArea);
    splitDockWidget(sections, stitches, Qt::Vertical);
    tabifyDockWidget(stitches, motifs);
    stitches->raise();
    splitDockWidget(words, findings, Qt::Vertical);
    splitDockWidget(findings, row, Qt::Vertical);
    sections->setProperty("plainWidth", firstLeft);
    words->setProperty("plainWidth", firstRight);
    setSideWidths(firstLeft * m_textPercent / leastTextPercent, firstRight * m_textPercent / leastTextPercent);
    m_leftSideChosen = m_rightSideChosen = false;
    shareLeftSide();
    resizeDocks({words, findings, row}, {420, 130, 200}, Qt::Vertical); // the words are read most
    resizeDocks({thread}, {96}, Qt::Vertical);
}

// What the chart, a panel or the start page has no use for comes here.
void MainWindow::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    auto* button = qobject_cast<QAbstractButton*>(focusWidget());
    if (event->key() == Qt::Key_Escape && action(ActionId::ChartAlone)->isChecked())
        action(ActionId::ChartAlone)->setChecked(false);
    else if (enter && button && button->isEnabled() && !event->isAutoRepeat())
        button->click(); // by themselves they know Space alone
    else if (!tellWhatIsMissing(*event))
        QMainWindow::keyPressEvent(event);
}

void MainWindow::setChartAlone(bool alone)
{
    m_aloneHint->setVisible(alone);
    if (alone) {
        m_panelsBefore = saveState();
        for (const auto& [name, dock] : m_docks)
            dock->hide();
        m_bar->hide();
        if (m_firstSteps)
            m_firstSteps->hide();
        menuBar()->hide();
        statusBar()->hide();
    } else {
        menuBar()->show();
        statusBar()->show();
        m_bar->show();
        if (m_firstSteps)
            m_firstSteps->show();
        if (!m_panelsBefore.isEmpty())
            restoreState(m_panelsBefore);
        m_panelsBefore.clear();
    }
    m_canvas->setFocus();
}

} // namespace shawlwright::app
