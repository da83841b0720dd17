#include "app/window/main_window.h"

#include "app/document/text.h"
#include "app/panels/count_thread.h"
#include "app/panels/find_bar.h"
#include "app/panels/findings_panel.h"
#include "app/panels/look.h"
#include "app/panels/row_dialog.h"
#include "app/panels/row_facts_panel.h"
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "app/window/elided_label.h"
#include "app/window/popup_keys.h"
#include "app/window/tool_bar.h"
#include "core/edits/sections.h"

#include <QActionGroup>
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QSettings>
#include <QStatusBar>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr std::pair<ActionId, CanvasTool> tools[] = {
    {ActionId::ToolPaint, CanvasTool::Paint},         {ActionId::ToolArea, CanvasTool::Area},
    {ActionId::ToolErase, CanvasTool::Erase},         {ActionId::ToolSelect, CanvasTool::Select},
    {ActionId::ToolMarker, CanvasTool::Marker},       {ActionId::ToolTurn, CanvasTool::Turn},
    {ActionId::ToolStitchRepeat, CanvasTool::Repeat}, {ActionId::ToolRowRepeat, CanvasTool::RowRepeat},
    {ActionId::ToolMotif, CanvasTool::Stamp},
};

} // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent), m_ask(askInDialogs(this))
{
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    new PopupKeys(this);
    m_dark = QSettings().value(QStringLiteral("darkTheme"), false).toBool();
    m_textPercent = std::clamp(QSettings().value(QStringLiteral("textPercent"), leastTextPercent).toInt(),
                               leastTextPercent, mostTextPercent);
    dress(m_dark ? darkTheme() : lightTheme(), m_textPercent);
    m_document.startNew(newPattern({}));
    // Before the chart hears of it, which then goes to the place in the section that is shown.
    connect(&m_document, &PatternDocument::revisited, this, &MainWindow::showRevisited);
    m_canvas = new Canvas(m_document, this);
    auto* middle = new QWidget(this);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_lookOnly = new QLabel(middle);
    m_lookOnly->setObjectName(QStringLiteral("lookOnly"));
    m_lookOnly->setWordWrap(true);
    m_lookOnly->hide();
    column->addWidget(m_lookOnly);
    m_aloneHint = new QLabel(tr("The chart alone. Esc or F11 brings the rest back."), middle);
    m_aloneHint->setObjectName(QStringLiteral("soft"));
    m_aloneHint->setContentsMargins(16, 4, 16, 4);
    m_aloneHint->hide();
    column->addWidget(m_aloneHint);
    column->addWidget(m_canvas, 1);
    m_find = new FindBar(middle);
    m_find->hide();
    column->addWidget(m_find);
    middle->setMinimumSize(200, 120); // whatever its parts ask for: larger text never makes the window larger
    setCentralWidget(middle);
    setMinimumSize(480, 320);
    m_later.setSingleShot(true);
    m_later.setInterval(0);
    m_toldTimer.setSingleShot(true);
    m_toldTimer.setInterval(8000);

    makeActions();
    makePanels();
    makeMenus();
    makeBar();
    makeFirstSteps();
    m_left = new ElidedLabel(this);
    m_right = new ElidedLabel(this);
    m_right->setObjectName(QStringLiteral("soft"));
    m_left->setMinimumWidth(80);
    statusBar()->addWidget(m_left, 1);
    statusBar()->addPermanentWidget(m_right);
    statusBar()->setSizeGripEnabled(false);

    connectAll();
    connectActs();
    panelsAsFirst();
    restoreSettings();
    watchFile();
    m_fitTimer.setSingleShot(true);
    m_fitTimer.setInterval(0);
    connect(&m_fitTimer, &QTimer::timeout, this, &MainWindow::fitPanels);
    m_layoutTimer.setSingleShot(true);
    m_layoutTimer.setInterval(500);
    connect(&m_layoutTimer, &QTimer::timeout, this, &MainWindow::keepSettings);
    for (const auto& [name, dock] : m_docks) {
        connect(dock, &QDockWidget::visibilityChanged, this, &MainWindow::keepLayoutSoon);
        connect(dock, &QDockWidget::visibilityChanged, &m_fitTimer, qOverload<>(&QTimer::start));
    }
    connect(m_canvas, &Canvas::zoomChanged, this, &MainWindow::keepLayoutSoon);
    connect(m_stitches, &StitchesPanel::favouritesChanged, this, [this] {
        keepSettings();
        Q_EMIT settingsChanged();
    });
    showSection(m_document.pattern().sections.front().id);
    setBrush(m_document.catalogue().find("k").value_or(noStitch));
    m_canvas->setTool(CanvasTool::Paint);
    action(ActionId::ToolPaint)->setChecked(true);
    refresh();
    m_canvas->setFocus();
}

MainWindow::~MainWindow()
{
    m_later.stop();
    m_layoutTimer.stop();
    m_fitTimer.stop();
    m_rescue.reset();
    m_document.disconnect(this);
    m_document.undoStack().disconnect(this);
    // Docks and others hide when the rest of the window goes, and would tell a window that is no more.
    for (QObject* child : findChildren<QObject*>())
        QObject::disconnect(child, nullptr, this, nullptr);
}

void MainWindow::makeActions()
{
    for (const ActionEntry& entry : actionTable())
        if (!isPanel(entry.id)) // these come with their panels
            takeAction(entry.id, new QAction(this));
    auto* toolGroup = new QActionGroup(this);
    for (const auto& [id, tool] : tools) {
        toolGroup->addAction(action(id));
        connect(action(id), &QAction::triggered, this, [this, tool = tool] {
            m_canvas->setTool(tool);
            m_canvas->setFocus();
        });
    }
    connect(m_canvas, &Canvas::toolChanged, this, [this](CanvasTool now) {
        for (const auto& [id, tool] : tools)
            if (tool == now)
                action(id)->setChecked(true);
    });
    auto* themes = new QActionGroup(this);
    themes->addAction(action(ActionId::LightTheme));
    themes->addAction(action(ActionId::DarkTheme));
}

void MainWindow::takeAction(ActionId id, QAction* action)
{
    const ActionEntry& entry = actionEntry(id);
    QList<QKeySequence> keys;
    for (const QString& one : QString::fromLatin1(entry.keys).split(QStringLiteral("; ")))
        keys << QKeySequence(one, QKeySequence::PortableText);
    action->setText(actionWords(entry.text));
    action->setShortcuts(keys);
    action->setCheckable(entry.checkable);
    const QString words = actionWords(entry.text).remove(QLatin1Char('&')).remove(QStringLiteral("..."));
    const QString tip = entry.tip[0] != '\0' ? actionWords(entry.tip) : words;
    action->setToolTip(tip + QStringLiteral("  (") + keys.first().toString(QKeySequence::NativeText) +
                       QLatin1Char(')'));
    if (belongsToChart(entry)) {
        action->setShortcutContext(Qt::WidgetShortcut);
        m_canvas->addAction(action);
    } else {
        addAction(action); // the keys work while the bars are hidden, too
    }
    m_actions[id] = action;
}

void MainWindow::makeMenus()
{
    QMenu* favourites = nullptr;
    QMenu* panels = nullptr;
    for (const ActionEntry& entry : actionTable()) {
        QMenu*& menu = m_menus[entry.menu];
        if (!menu)
            menu = menuBar()->addMenu(menuTitle(entry.menu));
        if (entry.opensGroup)
            menu->addSeparator();
        // The nine favourites alone would make the menu longer than a small screen.
        const bool favourite = entry.id >= ActionId::Favourite1 && entry.id <= ActionId::Favourite9;
        if (entry.id == ActionId::Favourite1)
            favourites = menu->addMenu(tr("Favo&urites"));
        if (entry.id == ActionId::PanelSections)
            panels = menu->addMenu(tr("Pan&els shown"));
        (favourite ? favourites : isPanel(entry.id) ? panels : menu)->addAction(action(entry.id));
        if (entry.id == ActionId::Open) {
            m_recentMenu = menu->addMenu(tr("Open r&ecent"));
            connect(m_recentMenu, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
        }
    }
    m_sections->setMenu(m_menus[MenuId::Section]);
}

void MainWindow::makeBar()
{
    m_bar = new ToolBar(tr("Tools"), this);
    addToolBar(m_bar);
    m_bar->setObjectName(QStringLiteral("tools"));
    using enum ActionId;
    // In the bar the words are short; the menus say the rest.
    const auto inBar = [this](ActionId id, const QString& words) {
        action(id)->setIconText(words);
        m_bar->addAction(action(id));
    };
    inBar(NewShawl, tr("New"));
    inBar(Open, tr("Open"));
    inBar(Save, tr("Save"));
    m_bar->addSeparator();
    m_bar->mayGiveWay(1);
    inBar(Undo, tr("Undo"));
    inBar(Redo, tr("Redo"));
    m_bar->addSeparator();
    m_bar->mayGiveWay(2);
    inBar(ToolPaint, tr("Paint"));
    inBar(ToolArea, tr("Area"));
    inBar(ToolErase, tr("Erase"));
    inBar(ToolSelect, tr("Select"));
    const auto withMenu = [&](ActionId id, const QString& words, QMenu*& menu) {
        inBar(id, words);
        auto* button = qobject_cast<QToolButton*>(m_bar->widgetForAction(action(id)));
        menu = new QMenu(this);
        button->setMenu(menu);
        button->setPopupMode(QToolButton::MenuButtonPopup);
        leaveWithMenu(*button);
    };
    withMenu(ToolMarker, tr("Marker"), m_markerMenu);
    withMenu(ToolTurn, tr("Turn"), m_turnMenu);
    m_bar->staysShown();
    inBar(ToolStitchRepeat, tr("Stitch repeat"));
    m_bar->mayGiveWay(5);
    inBar(ToolRowRepeat, tr("Row repeat"));
    m_bar->mayGiveWay(4);
    inBar(ToolMotif, tr("Motif"));
    m_bar->mayGiveWay(3);
    connect(m_markerMenu, &QMenu::aboutToShow, this, &MainWindow::fillToolMenus);
    auto* methods = new QActionGroup(this);
    const QStringList names = turnMethodNames();
    for (int i = 0; i < names.size(); ++i) {
        QAction* method = m_turnMenu->addAction(names[i]);
        method->setCheckable(true);
        method->setChecked(i == static_cast<int>(m_canvas->turnMethod()));
        methods->addAction(method);
        connect(method, &QAction::triggered, this, [this, i] {
            m_canvas->setTurnMethod(static_cast<TurnMethod>(i));
            action(ToolTurn)->trigger();
        });
    }

    auto* spring = new QWidget(m_bar);
    spring->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    m_bar->addWidget(spring);
    m_version = new QComboBox(m_bar);
    m_version->setAccessibleName(tr("Version shown"));
    m_version->setToolTip(tr("Version shown"));
    m_versionAction = m_bar->addWidget(m_version);
    m_size = new QComboBox(m_bar);
    m_size->setAccessibleName(tr("Size shown"));
    m_size->setToolTip(tr("Size shown"));
    m_sizeAction = m_bar->addWidget(m_size);
    for (QComboBox* chooser : {m_version, m_size}) {
        chooser->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        chooser->setMaximumWidth(150);
        connect(chooser, &QComboBox::activated, this, [this] {
            m_document.showChoice(
                {std::max(0, m_version->currentIndex()), std::max(0, m_size->currentIndex())});
        });
    }
    m_bar->staysShown();
    action(ZoomOut)->setIconText(QString(QChar(0x2212)));
    m_bar->addAction(action(ZoomOut));
    m_zoom = new QToolButton(m_bar);
    m_zoom->setToolTip(tr("Back to 100 %"));
    m_zoom->setMinimumWidth(58);
    connect(m_zoom, &QToolButton::clicked, action(ZoomPlain), &QAction::trigger);
    m_bar->addWidget(m_zoom);
    action(ZoomIn)->setIconText(QStringLiteral("+"));
    m_bar->addAction(action(ZoomIn));
    m_bar->mayGiveWay(0);
}

void MainWindow::connectAll()
{
    connect(&m_later, &QTimer::timeout, this, [this] {
        if (m_allStale)
            refresh();
        else
            refreshRow();
    });
    connect(&m_toldTimer, &QTimer::timeout, this, &MainWindow::updateCursorWords);
    connect(&m_document, &PatternDocument::changed, this, [this](const Change& change) {
        m_toldTimer.stop(); // what was told before is no longer so
        follow(change);
        later();
    });
    connect(&m_document, &PatternDocument::replaced, this, &MainWindow::beginAnew);
    connect(&m_document, &PatternDocument::choiceChanged, this, &MainWindow::later);
    connect(&m_document, &PatternDocument::told, this, &MainWindow::tell);
    connect(&m_document, &PatternDocument::pathChanged, this, [this] {
        leaveStartPage();
        updateTitle();
    });
    connect(&m_document, &PatternDocument::modifiedChanged, this, [this] {
        updateTitle();
        updateCounts();
    });
    QUndoStack& undo = m_document.undoStack();
    const auto steps = [this] { enableActions(); };
    connect(&undo, &QUndoStack::indexChanged, this, steps);
    connect(&undo, &QUndoStack::cleanChanged, this, steps);

    connect(m_canvas, &Canvas::told, this, &MainWindow::tell);
    connect(m_canvas, &Canvas::cursorMoved, this, [this](int row, int) {
        if (const Section* section = shownSection();
            section && row >= 0 && row < static_cast<int>(section->rows.size()))
            m_stitches->setSide(section->rows[static_cast<std::size_t>(row)]->side);
        m_hover = {-1, 0};
        updateCursorWords();
        laterRow();
    });
    connect(m_canvas, &Canvas::hovered, this, [this](int row, int column) {
        m_hover = {row, column};
        updateCursorWords();
        lightPhrase();
    });
    connect(m_canvas, &Canvas::selectionChanged, this, &MainWindow::enableActions);
    connect(m_canvas, &Canvas::unfoldedChanged, this, &MainWindow::showWhetherUnfolded);
    connect(m_canvas, &Canvas::plainRowsHiddenChanged, this, [this](bool hidden) {
        action(ActionId::HidePlainRows)->setChecked(hidden);
        enableActions();
    });
    connect(m_canvas, &Canvas::zoomChanged, this,
            [this](double percent) { m_zoom->setText(tr("%1 %").arg(qRound(percent))); });
    m_zoom->setText(tr("%1 %").arg(qRound(m_canvas->zoomPercent())));
    connect(m_canvas, &Canvas::picked, this, &MainWindow::setBrush);
    connect(m_canvas, &Canvas::rowActivated, this, &MainWindow::openRowSettings);
    // A dialog opened from within a mouse press would swallow the release.
    connect(m_canvas, &Canvas::repeatDrawn, this, &MainWindow::makeStitchRepeat, Qt::QueuedConnection);
    connect(m_canvas, &Canvas::rowRepeatDrawn, this, &MainWindow::makeRowRepeat, Qt::QueuedConnection);
    connect(m_canvas, &Canvas::boxActivated, this, &MainWindow::openStitchRepeat, Qt::QueuedConnection);
    connect(m_canvas, &Canvas::bracketActivated, this, &MainWindow::openRowRepeat, Qt::QueuedConnection);
    connect(m_canvas, &Canvas::contextWanted, this, &MainWindow::rowMenu, Qt::QueuedConnection);

    connect(m_sections, &SectionsPanel::sectionChosen, this, [this](SectionId section) {
        showSection(section);
        later();
    });
    connect(m_sections, &SectionsPanel::heightWantedChanged, this, &MainWindow::shareLeftSide);
    connect(m_sections, &SectionsPanel::sectionClicked, this, [this] { m_canvas->setFocus(); });
    connect(m_stitches, &StitchesPanel::stitchChosen, this, &MainWindow::setBrush);
    connect(m_stitches, &StitchesPanel::contextWanted, this, &MainWindow::favouriteMenu);
    connect(m_stitches, &StitchesPanel::favouritesChanged, this, &MainWindow::enableActions);
    connect(m_stitches, &StitchesPanel::toChartWanted, this, [this] { m_canvas->setFocus(); });
    connect(m_words, &WordsPanel::rowWanted, this, &MainWindow::goTo);
    connect(m_words, &WordsPanel::settingsWanted, this, [this](SectionId section, int row) {
        goTo(section, row);
        openRowSettings(row);
    });
    connect(m_words, &WordsPanel::wordsWanted, this, [this](SectionId section, int row) {
        goTo(section, row);
        editWords(row);
    });
    connect(m_words, &WordsPanel::phrasePointed, this, [this](SectionId section, int row, int first, int last) {
        const bool here = section == m_canvas->section() && first > 0;
        m_canvas->light(here ? std::optional(Area{row, row, first, last}) : std::nullopt);
    });
    connect(m_words, &WordsPanel::wordsTyped, this, &MainWindow::takeWords);
    connect(m_words, &WordsPanel::editingLeft, this, [this] { m_canvas->setFocus(); });
    connect(m_findings, &FindingsPanel::findingWanted, this, &MainWindow::goToFinding);
    connect(m_findings, &FindingsPanel::mendWanted, this, &MainWindow::mend);
    connect(m_facts, &RowFactsPanel::headingChanged, this,
            [this](const QString& words) { m_headings.at(QStringLiteral("row"))->setText(words); });
    connect(m_thread, &CountThread::rowWanted, this, &MainWindow::goTo);
}

} // namespace shawlwright::app
