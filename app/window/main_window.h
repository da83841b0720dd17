// The window: the chart in the middle, panels around it, menus and bar made from the table of actions.
//
// Shape:   one open shawl. Panels follow the document a moment after the chart does, all in one go
// (refresh()). Errors:  what goes wrong with a file is told in a dialog, what can't be done to the chart in
// the status bar.
#pragma once

#include "app/canvas/canvas.h"
#include "app/document/earlier_saves.h"
#include "app/document/file_lock.h"
#include "app/document/file_watch.h"
#include "app/document/pattern_document.h"
#include "app/window/actions.h"
#include "app/window/export_dialog.h"
#include "app/window/questions.h"
#include "app/window/rescue_copy.h"
#include "core/derived/pattern_search.h"
#include "core/edits/chart_clip.h"
#include "core/edits/times.h"
#include "core/edits/turned.h"

#include <QMainWindow>
#include <QTimer>

#include <map>

class QComboBox;
class QDockWidget;
class QLabel;
class QMenu;
class QToolBar;
class QToolButton;

namespace shawlwright {
struct NewPattern;
}

namespace shawlwright::app {

class CountThread;
class FindBar;
class FindingsPanel;
class FormDialog;
class MotifsPanel;
class RowFactsPanel;
class SectionsPanel;
class ElidedLabel;
class EmptyHint;
class StartPage;
class ToolBar;
class StitchesPanel;
class WordsPanel;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    bool openPath(const QString& path); // asks before unsaved work is lost
    void openFiles(const QStringList& paths); // the first one here, each other in a window of its own
    bool newShawl(const NewPattern& wishes);

    void keepRescueCopies(const QString& folder);
    void offerRescued(); // what a crash left behind
    RescueCopy* rescueCopy() { return m_rescue.get(); }
    void keepEarlierSaves(const QString& folder);
    void lookAtFile(); // asks where another program changed or removed the file
    // All windows are to be closed: this one asks as it does by itself; false: it stays.
    bool mayCloseForAll();
    bool closeForAll(); // asks again only where there was work since
    void takeSharedSettings(); // theme, size of the text and the like, as another window has left them

    PatternDocument& document() { return m_document; }
    Canvas& canvas() { return *m_canvas; }
    SectionsPanel& sections() { return *m_sections; }
    StitchesPanel& stitches() { return *m_stitches; }
    WordsPanel& words() { return *m_words; }
    MotifsPanel& motifs() { return *m_motifs; }
    FindingsPanel& findings() { return *m_findings; }
    RowFactsPanel& rowFacts() { return *m_facts; }
    CountThread& thread() { return *m_thread; }
    FindBar& findBar() { return *m_find; }
    QAction* action(ActionId id) const { return m_actions.at(id); }
    QComboBox* versionChooser() const { return m_version; }
    QComboBox* sizeChooser() const { return m_size; }
    Questions& questions() { return m_ask; }

    void showStartPage();
    void leaveStartPage();
    bool startPageShown() const;
    StartPage* startPage() const { return m_start; }

    void refresh();             // brings the panels up to date now
    QString statusLeft() const; // what is under the cursor, or was told last
    QString statusRight() const;
    QString lookOnly() const; // what stands over a chart that is shown as knitted; else empty

    // Dialogs, opened by their actions.
    void openRowSettings(int row);
    void editWords(int row);                 // typed over in the panel of words
    void readRows(const QString& text);      // asks, then starts a shawl
    void pasteWords(const QString& text);    // into the rows from the cursor on
    void makeStitchRepeat(const Area& over); // one step, however it is set
    void makeRowRepeat(int firstRow, int lastRow);
    void openStitchRepeat(BoxId box);
    void openRowRepeat(int bracket);
    void goTo(SectionId section, int row);
    void goToFinding(const Finding& finding);
    void mend(const Finding& finding);
    bool exportAs(ExportSubject subject, ExportKind kind, const ExportOptions& options);

Q_SIGNALS:
    void anotherWindowWanted(const QString& path);
    void quitWanted();      // all windows
    void settingsChanged(); // those that all windows share, by the person at this one

protected:
    bool event(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void moveEvent(QMoveEvent* event) override;

private:
    // main_window.cpp: how it is put together
    void makeActions();
    void takeAction(ActionId id, QAction* action); // gives it what its entry says
    void makeMenus();
    void makeBar();
    void makePanels();
    void connectAll();
    QDockWidget* addPanel(const QString& name, const QString& heading, ActionId shows, QWidget* panel,
                          Qt::DockWidgetArea area, const QList<QToolButton*>& beside = {});
    void panelsAsFirst();
    void setChartAlone(bool alone);
    void setTheme(bool dark);
    void setTextPercent(int percent);
    void sizeToScreen();
    void keepOnScreen();
    void setSideWidths(int left, int right); // as wide as that, where the chart keeps a part that is of use
    void fitPanels();
    QDockWidget* besideSections() const;
    void shareRightSide();
    void shareLeftSide(); // the sections as high as they are, within reason, and the rest for the stitches
    QDockWidget* sideDock(Qt::DockWidgetArea area) const; // the widest that is shown there; null: none
    void restoreSettings();
    void takeChartSettings();
    void keepSettings();
    void keepLayoutSoon();

    // window_files.cpp
    bool maySetAside(); // unsaved work is saved, or may be lost
    bool saveTo(const QString& path);
    bool save();
    bool saveAs();
    void startNewShawl();
    void openAnother();
    void startExport(ExportSubject subject);
    void rememberRecent(const QString& path);
    void keepView() const; // of the open file: zoom, and whether plain WS rows are hidden
    void viewAsKept();
    void fillRecent();
    QStringList recent() const;
    void keepRecent(const QStringList& paths);

    // window_start.cpp
    void coverWindow(bool covered);
    void placeStartPage();
    void makeFirstSteps();
    void showEmptyHint();

    // window_guards.cpp: files that others hold or change, and what was saved before
    void watchFile();
    bool openCopy(const QString& file, const QString& name);
    void readAgain();
    void openEarlierSaves();
    void keepSave(const QString& path);

    // window_acts.cpp
    void connectActs();
    void on(ActionId id, std::function<void()> act);
    void actsOnSections();
    void actsOnRows();
    void actsOnStitches();
    void actsOnView();
    void actsOnShaping();   // window_shaping.cpp
    void actsOnSelection(); // window_selection.cpp
    void turnedAround(const Result<Turned>& turned);
    void shiftPartOfRow(Part part, Gap gap);
    void repeatSeveralTimes();
    QString timesInWords(SectionId id, const Area& area, Along along, int times, const Times& made) const;
    QString rowWords(SectionId id, int row) const;
    std::optional<Area> oneRectangle(const QString& act); // tells why where more are selected; none: nothing
    Area withHiddenAbove(Area area) const;
    std::vector<IndexRun> rowRunsMeant() const;           // selected ones, or the cursor's
    std::pair<int, int> rowsMeant() const;                // from the first to the last of them
    std::optional<std::pair<int, int>> rowsTogether(const QString& act); // tells why where they have gaps
    void actsOnMotifs();  // window_motifs.cpp; what is painted mirrored too
    void saveMotif();
    void renameMotif();
    void takeStamp(); // the chosen motif becomes the one that is stamped
    QString mirrorInWords() const;
    void fillPlainRows();
    void stripeRows();
    void performShaping(SectionId section, std::pair<int, std::size_t> rows, const Edit& edit, const QString& words); // first, how many
    void makeWedge(); // window_shaped_rows.cpp
    void makeArches();
    void makeIncreases();
    void replaceAStitch();
    void copy();
    void paste();
    QString wordsOfRows(int first, int last);
    QString wordsOfStitches(const Section& section, const Areas& areas);
    void takeWords(SectionId section, RowId row, const QString& words);
    bool readRowsOf(const QString& path);
    void openWordStyle();
    // The dialog, until its answers make an edit that can be done or it is left; true: the edit is done.
    bool taken(FormDialog& dialog, const std::function<Result<Edit>()>& edit);
    void openPatternSettings();
    void openYarns();
    void openMarkers();
    void openSectionSettings();
    void openOwnStitch(StitchId id);
    void favouriteMenu(StitchId stitch, const QPoint& at);
    void rowMenu(int row, int column, const QPoint& at);
    void openMenu(QMenu& menu, const QPoint& at); // asked for there
    // window_row_head.cpp
    void addRowHead(QMenu& menu, int row);
    void openRowHead();
    void setRowsMeant(int row, const QString& name, const std::function<void(Row&)>& change);
    // window_find.cpp
    void connectFinding();
    void findPlaces();
    void stepToPlace(int by);
    void goToPlace(int at);
    void setBrush(StitchId stitch);

    // window_status.cpp
    void laterRow(); // the same where only the cursor moved
    void refreshRow();
    void later(); // refresh() when the present event is done
    void follow(const Change& change);
    void showRevisited(const Change& change); // the section where something was undone or redone
    void showCursor(); // after a zoom about the middle of the view
    void beginAnew();                         // another pattern is open: nothing of the last one is still in hand
    void showSection(SectionId section);
    void enableActions();
    void showWhetherUnfolded();
    void lightPhrase(); // of the cell pointed at, or at the cursor
    void fillVersions();
    void fillToolMenus();
    void placeNextMarker();
    void takeNextTurnMethod();
    void fillBrushYarns();
    void updateTitle();
    void updateCursorWords();
    void updateCounts();
    QString cellInWords(int row, int column) const;
    void tell(const QString& sentence);
    // window_missing.cpp
    QString whatIsMissing(const ActionEntry& entry) const;
    bool tellWhatIsMissing(const QKeyEvent& event); // false: the key belongs to no command that can't be done

    const Section* shownSection() const;
    int shownIndex() const { return m_canvas->sectionIndex(); }

    PatternDocument m_document;
    Questions m_ask;
    std::unique_ptr<RescueCopy> m_rescue;
    std::optional<int> m_setAside; // the changes of the document when its work might be set aside for all windows
    bool m_answered = false;       // closing for all, and nothing was done since that answer
    std::unique_ptr<EarlierSaves> m_earlierSaves;
    FileLock m_fileLock;
    FileWatch m_fileWatch{m_document};
    QTimer m_watchTimer;
    QTimer m_layoutTimer;
    QTimer m_fitTimer;
    bool m_leftSideChosen = false; // a person has drawn the line between sections and stitches
    bool m_rightSideChosen = false; // the same beside the facts of the row
    std::optional<std::pair<int, int>> m_heightsPressed; // of the sections and of these, when the mouse was pressed on a line
    std::map<ActionId, QAction*> m_actions;
    std::map<MenuId, QMenu*> m_menus;
    QMenu* m_recentMenu = nullptr;
    QMenu* m_turnMenu = nullptr;
    QMenu* m_markerMenu = nullptr;
    ToolBar* m_bar = nullptr;
    QComboBox* m_version = nullptr;
    QComboBox* m_size = nullptr;
    QComboBox* m_brushYarn = nullptr;
    QAction* m_versionAction = nullptr; // of the choosers in the bar, to hide them
    QAction* m_sizeAction = nullptr;
    QToolButton* m_zoom = nullptr;
    FindBar* m_find = nullptr;
    std::vector<SearchHit> m_found;
    int m_foundAt = -1;
    bool m_foundStale = true;
    QLabel* m_aloneHint = nullptr; // how the rest comes back
    QLabel* m_lookOnly = nullptr; // over the chart while it is shown as knitted

    Canvas* m_canvas = nullptr;
    SectionsPanel* m_sections = nullptr;
    StitchesPanel* m_stitches = nullptr;
    WordsPanel* m_words = nullptr;
    FindingsPanel* m_findings = nullptr;
    MotifsPanel* m_motifs = nullptr;
    RowFactsPanel* m_facts = nullptr;
    CountThread* m_thread = nullptr;
    EmptyHint* m_emptyHint = nullptr;
    QToolBar* m_firstSteps = nullptr; // null: read and put away
    StartPage* m_start = nullptr; // null: not asked for yet
    std::map<QString, QDockWidget*> m_docks;
    std::map<QString, QLabel*> m_headings;
    QByteArray m_panelsBefore; // before the chart stood alone

    ElidedLabel* m_left = nullptr;
    QLabel* m_right = nullptr;
    QTimer m_later;
    QTimer m_toldTimer;
    std::pair<int, int> m_hover{-1, 0};
    int m_sectionAt = 0;     // index of the section shown, for when it goes
    bool m_allStale = true;  // or only what follows the cursor
    bool m_headStale = true; // yarns, versions, stitches
    ChartClip m_clip;
    std::optional<shawlwright::Box> m_lastRepeat; // as it was asked for last
    QString m_rowsTyped;  // to be read, not yet made into a shawl
    int m_clipNumber = 0; // of what was copied last here
    bool m_dark = false;
    int m_textPercent = 100; // of the desktop's size
};

} // namespace shawlwright::app
