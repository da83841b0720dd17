#include "app/window/main_window.h"

#include "app/document/text.h"
#include "app/panels/count_thread.h"
#include "app/panels/find_bar.h"
#include "app/panels/findings_panel.h"
#include "app/panels/form_dialog.h"
#include "app/panels/look.h"
#include "app/panels/motifs_panel.h"
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
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScreen>
#include <QSettings>
#include <QStatusBar>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

QToolButton* quietButton(const QString& words, const QString& tip, QWidget* parent)
{
    auto* button = new QToolButton(parent);
    button->setObjectName(QStringLiteral("quiet"));
    button->setText(words);
    button->setToolTip(tip);
    button->setAutoRaise(true);
    return button;
}

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
    setCentralWidget(middle);
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
    m_right = new QLabel(this);
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
    m_layoutTimer.setSingleShot(true);
    m_layoutTimer.setInterval(500);
    connect(&m_layoutTimer, &QTimer::timeout, this, &MainWindow::keepSettings);
    for (const auto& [name, dock] : m_docks)
        connect(dock, &QDockWidget::visibilityChanged, this, &MainWindow::keepLayoutSoon);
    connect(m_canvas, &Canvas::zoomChanged, this, &MainWindow::keepLayoutSoon);
    connect(m_stitches, &StitchesPanel::favouritesChanged, this, &MainWindow::keepSettings);
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
    m_rescue.reset();
    m_document.disconnect(this);
    m_document.undoStack().disconnect(this);
    // Docks and others hide when the rest of the window goes, and would tell a window that is no more.
    for (QObject* child : findChildren<QObject*>())
        QObject::disconnect(child, nullptr, this, nullptr);
}

void MainWindow::makeActions()
{
    for (const ActionEntry& entry : actionTable()) {
        auto* action = new QAction(actionWords(entry.text), this);
        QList<QKeySequence> keys;
        const QString all = QString::fromLatin1(entry.keys);
        if (!all.isEmpty())
            for (const QString& one : all.split(QStringLiteral("; ")))
                keys << QKeySequence(one, QKeySequence::PortableText);
        action->setShortcuts(keys);
        action->setCheckable(entry.checkable);
        const QString words = actionWords(entry.text).remove(QLatin1Char('&')).remove(QStringLiteral("..."));
        QString tip = entry.tip[0] != '\0' ? actionWords(entry.tip) : words;
        if (!keys.isEmpty())
            tip += QStringLiteral("  (") + keys.first().toString(QKeySequence::NativeText) + QLatin1Char(')');
        action->setToolTip(tip);
        if (belongsToChart(entry)) {
            action->setShortcutContext(Qt::WidgetShortcut);
            m_canvas->addAction(action);
        } else {
            addAction(action); // the keys work while the bars are hidden, too
        }
        m_actions[entry.id] = action;
    }
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

void MainWindow::makeMenus()
{
    QMenu* favourites = nullptr;
    for (const ActionEntry& entry : actionTable()) {
        QMenu*& menu = m_menus[entry.menu];
        if (!menu)
            menu = menuBar()->addMenu(menuTitle(entry.menu));
        if (entry.opensGroup)
            menu->addSeparator();
        // The nine favourites alone would make the menu longer than a small screen.
        const bool favourite = entry.id >= ActionId::Favourite1 && entry.id <= ActionId::Favourite9;
        if (entry.id == ActionId::Favourite1)
            favourites = menu->addMenu(tr("Favourites"));
        (favourite ? favourites : menu)->addAction(action(entry.id));
        if (entry.id == ActionId::Open) {
            m_recentMenu = menu->addMenu(tr("Open r&ecent"));
            connect(m_recentMenu, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
        }
        if (entry.id == ActionId::PanelsAsFirst) {
            m_panelsMenu = menu->addMenu(tr("Pan&els shown"));
            for (const auto& [name, dock] : m_docks)
                m_panelsMenu->addAction(dock->toggleViewAction());
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
    };
    withMenu(ToolMarker, tr("Marker"), m_markerMenu);
    withMenu(ToolTurn, tr("Turn"), m_turnMenu);
    inBar(ToolStitchRepeat, tr("Stitch repeat"));
    inBar(ToolRowRepeat, tr("Row repeat"));
    inBar(ToolMotif, tr("Motif"));
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

QDockWidget* MainWindow::addPanel(const QString& name, const QString& words, QWidget* panel,
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
    auto* label = new QLabel(words, title);
    label->setObjectName(QStringLiteral("panelHeading"));
    line->addWidget(label, 1);
    for (QToolButton* button : beside)
        line->addWidget(button);
    dock->setTitleBarWidget(title);
    panel->setAttribute(Qt::WA_StyledBackground);
    dock->setWidget(panel);
    addDockWidget(area, dock);
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
    addPanel(QStringLiteral("sections"), tr("Sections"), m_sections, Qt::LeftDockWidgetArea,
             {acting(ActionId::AddSection, tr("Add")),
              acting(ActionId::SectionEarlier, QString(QChar(0x2191))),
              acting(ActionId::SectionLater, QString(QChar(0x2193)))});
    addPanel(QStringLiteral("stitches"), tr("Stitches"), m_stitches, Qt::LeftDockWidgetArea,
             {acting(ActionId::OwnStitch, tr("Make one"))});
    addPanel(QStringLiteral("motifs"), tr("Motifs"), m_motifs, Qt::LeftDockWidgetArea,
             {acting(ActionId::SaveMotif, tr("Save"))});
    auto* copy = acting(ActionId::CopyWords, tr("Copy"));
    auto* style = acting(ActionId::WordStyle, tr("How written..."));
    addPanel(QStringLiteral("words"), tr("In words"), m_words, Qt::RightDockWidgetArea, {copy, style});
    addPanel(QStringLiteral("findings"), tr("Findings"), m_findings, Qt::RightDockWidgetArea);
    addPanel(QStringLiteral("row"), tr("At this row"), m_facts, Qt::RightDockWidgetArea);
    addPanel(QStringLiteral("thread"), tr("Stitches over the shawl"), m_thread, Qt::BottomDockWidgetArea);

    // The yarn that cells are painted with stands with the stitches.
    m_brushYarn = new QComboBox(m_stitches);
    m_brushYarn->setAccessibleName(tr("Yarn to draw with"));
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
    resizeDocks({sections, words}, {236, 340}, Qt::Horizontal);
    resizeDocks({sections, stitches}, {190, 510}, Qt::Vertical);
    resizeDocks({words, findings, row}, {440, 150, 160}, Qt::Vertical); // the words are read most
    resizeDocks({thread}, {96}, Qt::Vertical);
}

// What the chart has no use for comes here.
void MainWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && action(ActionId::ChartAlone)->isChecked())
        action(ActionId::ChartAlone)->setChecked(false);
    else
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
    QTimer::singleShot(0, this, [this, left, right, widths] {
        resizeDocks({left, right}, widths, Qt::Horizontal);
        keepOnScreen();
    });
    tell(tr("Text at %1 %.").arg(m_textPercent));
    keepSettings();
}

// Larger text may have asked for more than there is.
void MainWindow::keepOnScreen()
{
    const QSize room = screen()->availableSize();
    if (height() > room.height()) // in width the bar gives way
        resize(width(), room.height());
}

// The first time: all of a small screen, a part of a large one.
void MainWindow::sizeToScreen()
{
    const QSize room = screen()->availableSize();
    resize(std::min(1440, room.width()), std::min(900, room.height()));
    if (room.width() < 1500 || room.height() < 960)
        setWindowState(Qt::WindowMaximized);
}

void MainWindow::restoreSettings()
{
    const QSettings settings;
    const QSignalBlocker quietPaper(action(ActionId::PaperChart));
    const QSignalBlocker quietTints(action(ActionId::YarnTints));
    action(ActionId::PaperChart)->setChecked(settings.value(QStringLiteral("paperChart"), false).toBool());
    const bool tints = settings.value(QStringLiteral("yarnTints"), true).toBool();
    action(ActionId::YarnTints)->setChecked(tints);
    m_canvas->setYarnTints(tints);
    setTheme(m_dark);
    const QStringList favourites = settings.value(QStringLiteral("favourites")).toStringList();
    if (!favourites.isEmpty())
        m_stitches->setFavourites(favourites);
    m_canvas->setTurnMethod(
        static_cast<TurnMethod>(std::clamp(settings.value(QStringLiteral("turnMethod"), 0).toInt(), 0, 5)));
    if (!restoreGeometry(settings.value(QStringLiteral("geometry")).toByteArray()))
        sizeToScreen();
    keepOnScreen();
    restoreState(settings.value(QStringLiteral("panels")).toByteArray());
    m_canvas->setZoomPercent(settings.value(QStringLiteral("zoom"), 100).toDouble());
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
    settings.setValue(QStringLiteral("zoom"), m_canvas->zoomPercent());
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
    keepLayoutSoon();
}

void MainWindow::moveEvent(QMoveEvent* event)
{
    QMainWindow::moveEvent(event);
    keepLayoutSoon();
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
