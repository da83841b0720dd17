// Every action of the window, once: its words, its keys, where it stands and when it can be used. Menus, bars
// and the sheet of keys are made from this table.
//
// Shape:   in the order of the menus; a separator stands before an entry that opens a group.
// Errors:  every action has a key, and no key stands twice; keys without Ctrl or Alt (but F1 to F12) belong to the chart and work in its
// focus only.
#pragma once

#include <QString>

#include <span>

namespace shawlwright::app {

enum class ActionId {
    StartPage,
    NewShawl,
    Open,
    ReadRows,
    Save,
    SaveAs,
    EarlierSaves,
    ExportChart,
    ExportWords,
    ExportPattern,
    CloseWindow,
    Quit,
    Undo,
    Redo,
    Cut,
    Copy,
    Paste,
    SelectAll,
    SelectRows,
    SelectColumns,
    SelectCell,
    Mirror,
    UpsideDown,
    NudgeLeft,
    NudgeRight,
    NudgeUp,
    NudgeDown,
    PutDownTimes,
    FillSelection,
    ReplaceStitch,
    FindPlace,
    RepeatSelection,
    RepeatSelectedRows,
    PatternSettings,
    WordStyle,
    Yarns,
    Markers,
    NextMarker,
    AddSection,
    RenameSection,
    SectionSettings,
    DuplicateSection,
    SectionEarlier,
    SectionLater,
    DeleteSection,
    PreviousSection,
    NextSection,
    RowSettings,
    RowHead,
    RowWords,
    PlainRows,
    StripedRows,
    ShortRowWedge,
    ShortRowArch,
    IncreaseRows,
    RowAbove,
    RowBelow,
    DuplicateRow,
    RowUp,
    RowDown,
    RowLeft,
    RowRight,
    OpenLeft,
    OpenRight,
    CloseLeft,
    CloseRight,
    DeleteRow,
    CopyWords,
    ToolPaint,
    ToolArea,
    ToolErase,
    ToolMarker,
    ToolTurn,
    NextTurnMethod,
    ToolStitchRepeat,
    ToolRowRepeat,
    ToolSelect,
    PaintMirrored,
    ToolMotif,
    MotifMirrored,
    SaveMotif,
    RenameMotif,
    DeleteMotif,
    FindStitch,
    NoStitch,
    Favourite1,
    Favourite2,
    Favourite3,
    Favourite4,
    Favourite5,
    Favourite6,
    Favourite7,
    Favourite8,
    Favourite9,
    OwnStitch,
    ChangeOwnStitch,
    DeleteOwnStitch,
    AddColumn,
    DeleteColumn,
    ZoomIn,
    ZoomOut,
    ZoomPlain,
    ZoomFit,
    ZoomWidth,
    ZoomSelection,
    AsKnitted,
    HidePlainRows,
    BlackAndWhite,
    LargerText,
    SmallerText,
    ChartAlone,
    LightTheme,
    DarkTheme,
    PaperChart,
    YarnTints,
    PanelsAsFirst,
    PanelSections,
    PanelStitches,
    PanelMotifs,
    PanelWords,
    PanelFindings,
    PanelRow,
    PanelThread,
    ShortcutSheet,
    About
};

enum class MenuId { File, Edit, Shawl, Section, Row, Stitch, View, Help };

enum class Needs {
    Nothing,
    UndoStep,
    RedoStep,
    Selection,
    SeveralSections,
    SectionBefore,
    SectionAfter,
    Row,
    SeveralRows,
    RowAbove,
    RowBelow,
    OwnStitch,
    Markers,
    Motif
};

struct ActionEntry {
    ActionId id;
    MenuId menu;
    const char* text;      // with & for the menu's letter
    const char* keys;      // portable text of the shortcut; several are parted by "; "
    Needs needs = Needs::Nothing;
    const char* tip = ""; // empty: the text says it
    bool opensGroup = false;
    bool checkable = false;
};

std::span<const ActionEntry> actionTable();
const ActionEntry& actionEntry(ActionId id);
QString menuTitle(MenuId menu);
QString actionWords(const char* text); // a text of the tables here, in the person's language

// Shows and hides a panel.
constexpr bool isPanel(ActionId id)
{
    return id >= ActionId::PanelSections && id <= ActionId::PanelThread;
}

// Works only while the chart has the keys.
bool belongsToChart(const ActionEntry& entry);

// Keys that the chart itself knows: moving, painting, erasing; for the sheet of keys.
struct ChartKey {
    const char* keys;
    const char* does;
};
std::span<const ChartKey> chartKeys();

} // namespace shawlwright::app
