// What each action does.
#include "app/document/text.h"
#include "app/panels/look.h"
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "app/window/elided_label.h"
#include "app/window/main_window.h"
#include "app/window/menu_place.h"
#include "app/window/shortcut_sheet.h"
#include "core/derived/mends.h"
#include "core/edits/marks.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "core/edits/selected.h"
#include "core/wording/style.h"

#include <QApplication>
#include <QClipboard>
#include <QDockWidget>
#include <QListView>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QScreen>

#include <algorithm>

namespace shawlwright::app {

void MainWindow::on(ActionId id, std::function<void()> act)
{
    connect(action(id), &QAction::triggered, this, [this, act = std::move(act)] {
        m_canvas->endStroke(); // nothing happens in the middle of a stroke
        m_left->beBrief();
        act();
    });
}

void MainWindow::connectActs()
{
    using enum ActionId;
    on(StartPage, [this] { showStartPage(); });
    on(NewShawl, [this] { startNewShawl(); });
    on(Open, [this] { openAnother(); });
    on(ReadRows, [this] { readRows({}); });
    on(Save, [this] { save(); });
    on(SaveAs, [this] { saveAs(); });
    on(EarlierSaves, [this] { openEarlierSaves(); });
    on(ExportChart, [this] { startExport(ExportSubject::Chart); });
    on(ExportWords, [this] { startExport(ExportSubject::Words); });
    on(ExportPattern, [this] { startExport(ExportSubject::Pattern); });
    on(CloseWindow, [this] { close(); });
    on(Quit, [this] { Q_EMIT quitWanted(); });
    on(Undo, [this] { m_document.undoStack().undo(); });
    on(Redo, [this] { m_document.undoStack().redo(); });
    on(PatternSettings, [this] { openPatternSettings(); });
    on(WordStyle, [this] { openWordStyle(); });
    on(Yarns, [this] { openYarns(); });
    on(Markers, [this] { openMarkers(); });
    on(NextMarker, [this] { placeNextMarker(); });
    on(NextTurnMethod, [this] { takeNextTurnMethod(); });
    actsOnSelection();
    actsOnSections();
    actsOnRows();
    actsOnStitches();
    actsOnView();
    actsOnShaping();
    connectFinding();
    actsOnMotifs();
}

void MainWindow::actsOnSections()
{
    using enum ActionId;
    on(AddSection, [this] {
        const Pattern& pattern = m_document.pattern();
        const QString title =
            m_ask.words(tr("Title of the new section"), tr("Section %1").arg(pattern.sections.size() + 1));
        if (title.trimmed().isEmpty())
            return;
        const Section* shown = shownSection();
        const int at = std::max(0, shownIndex()) + 1;
        const auto edit =
            addSection(pattern, at, fromQt(title.trimmed()), 20, shown ? shown->frame.columns : 20);
        if (m_document.performOrTell(edit))
            showSection(m_document.pattern().sections[static_cast<std::size_t>(at)].id);
        later();
    });
    on(RenameSection, [this] {
        refresh();
        m_sections->rename();
    });
    on(SectionSettings, [this] { openSectionSettings(); });
    on(DuplicateSection, [this] {
        const int at = shownIndex();
        if (m_document.performOrTell(duplicateSection(m_document.pattern(), m_canvas->section())))
            showSection(m_document.pattern().sections[static_cast<std::size_t>(at) + 1].id);
    });
    const auto move = [this](int by) {
        m_document.performOrTell(moveSection(m_document.pattern(), m_canvas->section(), shownIndex() + by));
    };
    on(SectionEarlier, [move] { move(-1); });
    on(SectionLater, [move] { move(1); });
    on(DeleteSection, [this] {
        const Section* section = shownSection();
        if (section)
            m_document.performOrTell(deleteSection(m_document.pattern(), section->id));
    });
    const auto step = [this](int by) {
        const int to = shownIndex() + by;
        if (to >= 0 && to < static_cast<int>(m_document.pattern().sections.size()))
            showSection(m_document.pattern().sections[static_cast<std::size_t>(to)].id);
        later();
    };
    on(PreviousSection, [step] { step(-1); });
    on(NextSection, [step] { step(1); });
}

void MainWindow::actsOnRows()
{
    using enum ActionId;
    const auto section = [this] { return m_canvas->section(); };
    const auto cursorTo = [this](int row) { m_canvas->setCursor(At{row, m_canvas->cursor().column}); };
    on(RowSettings, [this] { openRowSettings(m_canvas->cursor().row); });
    on(RowHead, [this] { openRowHead(); });
    on(RowWords, [this] { editWords(m_canvas->cursor().row); });
    on(RowAbove, [=, this] {
        const Section* shown = shownSection();
        const int at = shown && !shown->rows.empty() ? m_canvas->cursor().row + 1 : 0;
        if (m_document.performOrTell(insertRows(m_document.pattern(), section(), at, 1)))
            cursorTo(at);
    });
    on(RowBelow, [=, this] {
        m_document.performOrTell(insertRows(m_document.pattern(), section(), m_canvas->cursor().row, 1));
    });
    on(DuplicateRow, [=, this] {
        if (const auto rows = rowsTogether(tr("Duplicating")))
            m_document.performOrTell(
                duplicateRows(m_document.pattern(), section(), rows->first, rows->second));
    });
    on(RowUp, [this] {
        if (const auto rows = rowsTogether(tr("Moving")))
            m_canvas->moveRows(rows->first, rows->second, m_canvas->rowBeside(rows->second + 1, 1));
    });
    on(RowDown, [this] {
        if (const auto rows = rowsTogether(tr("Moving")))
            m_canvas->moveRows(rows->first, rows->second, m_canvas->rowBeside(rows->first, -1));
    });
    const auto shift = [=, this](int by) {
        m_document.performOrTell(
            shiftRow(m_document.pattern(), m_document.catalogue(), section(), m_canvas->cursor().row, by));
    };
    on(RowLeft, [shift] { shift(1); });
    on(RowRight, [shift] { shift(-1); });
    on(DeleteRow, [=, this] {
        const std::vector<IndexRun> rows = m_canvas->withHidden(rowRunsMeant());
        int hidden = 0;
        for (const IndexRun& run : rows)
            for (int row = run.first; row <= run.last; ++row)
                hidden += m_canvas->hidesRow(row) ? 1 : 0;
        if (m_document.performOrTell(deleteRows(m_document.pattern(), section(), rows)) && hidden > 0)
            tell(hidden == 1 ? tr("A hidden WS row above was deleted with it.")
                             : tr("%1 hidden WS rows were deleted with them.").arg(hidden));
    });
    on(CopyWords, [this] {
        refresh();
        QApplication::clipboard()->setText(m_words->selectedText());
        tell(tr("The words are copied."));
    });
}

void MainWindow::actsOnStitches()
{
    using enum ActionId;
    on(FindStitch, [this] {
        m_docks.at(QStringLiteral("stitches"))->show();
        m_stitches->find();
    });
    on(NoStitch, [this] { setBrush(noStitch); });
    for (int place = 1; place <= 9; ++place)
        on(static_cast<ActionId>(static_cast<int>(Favourite1) + place - 1), [this, place] {
            if (const auto stitch = m_stitches->favourite(place))
                setBrush(*stitch);
        });
    on(OwnStitch, [this] { openOwnStitch(freshStitchId(m_document.pattern().head)); });
    on(ChangeOwnStitch, [this] { openOwnStitch(m_canvas->brush()); });
    on(DeleteOwnStitch, [this] {
        PatternHead head = m_document.pattern().head;
        const StitchId gone = m_canvas->brush();
        std::erase_if(head.stitches, [&](const Stitch& stitch) { return stitch.id == gone; });
        if (m_document.performOrTell(setHead(m_document.pattern(), head, "delete a stitch of your own")))
            setBrush(m_document.catalogue().find("k").value_or(noStitch));
    });
    on(AddColumn, [this] {
        m_document.performOrTell(
            insertColumns(m_document.pattern(), m_canvas->section(), m_canvas->cursor().column, 1));
    });
    on(DeleteColumn, [this] {
        std::vector<IndexRun> columns = columnRuns(m_canvas->selected());
        if (columns.empty())
            columns.push_back({m_canvas->cursor().column, m_canvas->cursor().column});
        m_document.performOrTell(
            deleteColumns(m_document.pattern(), m_document.catalogue(), m_canvas->section(), columns));
    });
}

void MainWindow::actsOnView()
{
    using enum ActionId;
    on(ZoomIn, [this] { m_canvas->zoomIn(); });
    on(ZoomOut, [this] { m_canvas->zoomOut(); });
    on(ZoomPlain, [this] { m_canvas->setZoomPercent(100); });
    on(ZoomFit, [this] { m_canvas->zoomToFit(); });
    on(ZoomWidth, [this] { m_canvas->zoomToWidth(); });
    on(ZoomSelection, [this] { m_canvas->zoomToSelection(); });
    connect(action(BlackAndWhite), &QAction::toggled, m_canvas, &Canvas::setBlackAndWhite);
    connect(action(AsKnitted), &QAction::toggled, this, [this](bool on) {
        m_canvas->setUnfolded(on);
        m_canvas->setFocus();
    });
    connect(action(HidePlainRows), &QAction::toggled, this, [this](bool on) {
        m_canvas->setPlainRowsHidden(on);
        m_canvas->setFocus();
        if (m_canvas->unfolded())
            return;
        if (const QString rows = m_canvas->hiddenRowsInWords(); !rows.isEmpty())
            tell(tr("Hidden: %1. A double line in the numbers shows where.").arg(rows));
        else if (on)
            tell(tr("This section has no plain WS row to hide."));
        else
            tell(tr("Every row is shown."));
    });
    on(LargerText, [this] { setTextPercent(m_textPercent + textPercentStep); });
    on(SmallerText, [this] { setTextPercent(m_textPercent - textPercentStep); });
    on(PanelsAsFirst, [this] { panelsAsFirst(); });
    on(LightTheme, [this] { setTheme(false); });
    on(DarkTheme, [this] { setTheme(true); });
    on(PaperChart, [this] { setTheme(m_dark); });
    on(HidePlainRows, [this] { keepSettings(); });
    for (const ActionId id : {LightTheme, DarkTheme, PaperChart, YarnTints, LargerText, SmallerText})
        on(id, [this] {
            keepSettings();
            Q_EMIT settingsChanged();
        });
    connect(action(ChartAlone), &QAction::toggled, this, &MainWindow::setChartAlone);
    connect(action(YarnTints), &QAction::toggled, m_canvas, &Canvas::setYarnTints);
    on(ShortcutSheet, [this] {
        class ShortcutSheet sheet(this);
        sheet.exec();
    });
    on(About, [this] {
        QMessageBox box(QMessageBox::NoIcon, tr("About Shawlwright"), tr("Shawlwright %1").arg(QLatin1String(SHAWLWRIGHT_VERSION)),
                        QMessageBox::NoButton, this);
        box.setInformativeText(tr("Charts and words for hand-knitted shawls. Every count is found by "
                                  "knitting the rows on a needle of loops, "
                                  "stitch by stitch.\n\nThe needle counts; it doesn't feel. Have a swatch "
                                  "and a test knitter tell you how the "
                                  "fabric turns out."));
        box.addButton(tr("Close"), QMessageBox::AcceptRole);
        box.exec();
    });
}

void MainWindow::favouriteMenu(StitchId stitch, const QPoint& at)
{
    QMenu menu;
    const bool real = stitch != noStitch;
    if (real) {
        for (int place = 1; place <= 9; ++place) {
            const auto now = m_stitches->favourite(place);
            const QString instead =
                now ? toQt(abbreviation(m_document.catalogue().stitch(*now), Side::RS)) : QString();
            QAction* entry = menu.addAction(now == stitch ? tr("Favourite %1").arg(place)
                                            : instead.isEmpty()
                                                ? tr("Keep as favourite %1").arg(place)
                                                : tr("Keep as favourite %1, now %2").arg(place).arg(instead));
            entry->setEnabled(now != stitch);
            connect(entry, &QAction::triggered, this,
                    [this, place, stitch] { m_stitches->setFavourite(place, stitch); });
        }
        menu.addSeparator();
    }
    setBrush(stitch);
    menu.addAction(action(ActionId::OwnStitch));
    menu.addAction(action(ActionId::ChangeOwnStitch));
    menu.addAction(action(ActionId::DeleteOwnStitch));
    openMenu(menu, at);
}

// Over the chart and the panels; the menus and the tools above them stay in sight where there is room.
void MainWindow::openMenu(QMenu& menu, const QPoint& at)
{
    menu.ensurePolished();
    QRect room = screen()->availableGeometry();
    if (const int top = mapToGlobal(QPoint(0, menuBar()->geometry().bottom() + 1)).y(); room.bottom() - top > menu.sizeHint().height())
        room.setTop(std::max(room.top(), top));
    menu.exec(menuPlace(at, menu.sizeHint(), room));
}

void MainWindow::rowMenu(int row, int column, const QPoint& at)
{
    using enum ActionId;
    if (column > 0 && m_canvas->selected().empty())
        m_canvas->setCursor(At{row, column});
    else if (column == 0)
        m_canvas->setCursor(At{row, m_canvas->cursor().column});
    QMenu menu;
    if (!m_canvas->selected().empty()) {
        for (const ActionId id : {Cut, Copy, Paste, Mirror, UpsideDown, PutDownTimes, FillSelection,
                                  RepeatSelection, RepeatSelectedRows})
            menu.addAction(action(id));
    } else if (!m_clip.pieces.empty()) {
        menu.addAction(action(Paste));
    }
    if (column == 0)
        addRowHead(menu, row);
    menu.addSeparator();
    for (const ActionId id : {RowSettings, RowWords, RowAbove, RowBelow, DuplicateRow, RowUp, RowDown})
        menu.addAction(action(id));
    menu.addSeparator();
    menu.addAction(action(DeleteRow));
    if (column > 0) {
        menu.addSeparator();
        menu.addAction(action(AddColumn));
        menu.addAction(action(DeleteColumn));
    }
    openMenu(menu, at);
}

void MainWindow::setBrush(StitchId stitch)
{
    // Who chooses a stitch means to paint it; Area paints too, and a selection may be waiting for it.
    const CanvasTool tool = m_canvas->tool();
    const bool takesStitch = tool == CanvasTool::Paint || tool == CanvasTool::Area || tool == CanvasTool::Select ||
                             (tool == CanvasTool::Erase && stitch == noStitch);
    if (!takesStitch)
        m_canvas->setTool(CanvasTool::Paint);
    m_canvas->setBrush(stitch);
    m_stitches->setChosen(stitch);
    m_stitches->usedLately(stitch);
    enableActions();
}

void MainWindow::goTo(SectionId section, int row)
{
    showSection(section);
    if (const Section* shown = shownSection();
        shown && row >= 0 && row < static_cast<int>(shown->rows.size())) {
        m_canvas->goToRow(row);
    }
    later();
}

void MainWindow::goToFinding(const Finding& finding)
{
    if (sectionIndex(m_document.pattern(), finding.section) < 0)
        return;
    showSection(finding.section);
    m_canvas->flashFinding(finding);
    later();
}

void MainWindow::mend(const Finding& finding)
{
    m_canvas->endStroke();
    goToFinding(finding);
    m_document.performOrTell(
        mendEdit(m_document.pattern(), m_document.catalogue(), finding, m_document.derived().choice()));
}

} // namespace shawlwright::app
