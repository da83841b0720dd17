#include "app/window/actions.h"

#include <QCoreApplication>
#include <QKeySequence>

#include <algorithm>

namespace shawlwright::app {

namespace {

using enum ActionId;

constexpr ActionEntry table[] = {
    {StartPage, MenuId::File, "Start pa&ge", "Alt+Home", Needs::Nothing,
     "How to begin, what was open lately, and the samples"},
    {NewShawl, MenuId::File, "&New shawl...", "Ctrl+N"},
    {Open, MenuId::File, "&Open...", "Ctrl+O"},
    {ReadRows, MenuId::File, "Read &rows in words...", "Ctrl+Shift+T", Needs::Nothing,
     "Makes a shawl of written instructions, typed, pasted or from a text file"},
    {Save, MenuId::File, "&Save", "Ctrl+S", Needs::Nothing, "", true},
    {SaveAs, MenuId::File, "Save &as...", "Ctrl+Shift+S"},
    {EarlierSaves, MenuId::File, "Earlier sa&ves...", "Ctrl+Alt+S", Needs::Nothing,
     "What was saved before, to be opened as a copy"},
    {ExportChart, MenuId::File, "Export &chart...", "Ctrl+E", Needs::Nothing,
     "The chart as a drawing or a picture", true},
    {ExportWords, MenuId::File, "Export &words...", "Ctrl+Shift+E", Needs::Nothing,
     "The written instructions as text"},
    {ExportPattern, MenuId::File, "Export &pattern...", "Ctrl+P", Needs::Nothing,
     "The whole pattern as pages to print"},
    {CloseWindow, MenuId::File, "C&lose the window", "Ctrl+W", Needs::Nothing, "", true},
    {Quit, MenuId::File, "&Quit", "Ctrl+Q", Needs::Nothing, "Closes all windows"},

    {Undo, MenuId::Edit, "&Undo", "Ctrl+Z", Needs::UndoStep},
    {Redo, MenuId::Edit, "&Redo", "Ctrl+Shift+Z; Ctrl+Y", Needs::RedoStep},
    {Cut, MenuId::Edit, "Cu&t", "Ctrl+X", Needs::Selection,
     "Copies the selected stitches and leaves no stitch", true},
    {Copy, MenuId::Edit, "Cop&y", "Ctrl+C", Needs::Nothing,
     "Copies the selected stitches, or the chosen rows of the words"},
    {Paste, MenuId::Edit, "&Paste", "Ctrl+V", Needs::Nothing,
     "Puts copied stitches down, their lower right corner at the cursor; copied words become rows"},
    {SelectAll, MenuId::Edit, "Select &all", "Ctrl+A"},
    {SelectRows, MenuId::Edit, "Select wh&ole rows", "Shift+W", Needs::Row,
     "The row at the cursor, or what is selected, from edge to edge"},
    {SelectColumns, MenuId::Edit, "Select whole &columns", "Shift+C", Needs::Row,
     "The column at the cursor, or what is selected, from the first row to the last"},
    {SelectCell, MenuId::Edit, "Add or take a ce&ll", "Shift+S", Needs::Row,
     "Adds the cell at the cursor to the selection, or takes it out"},
    {Mirror, MenuId::Edit, "&Mirror the selection", "Ctrl+M", Needs::Selection,
     "Turns the selected stitches left to right, decreases with their lean", true},
    {UpsideDown, MenuId::Edit, "Turn it upside &down", "Ctrl+Shift+M", Needs::Selection,
     "Its rows in reverse order, every lean the other way"},
    {NudgeLeft, MenuId::Edit, "Move it a stitc&h left", "Alt+Shift+Left; Alt+J", Needs::Selection,
     "Moves the selected stitches; they replace what is there", true},
    {NudgeRight, MenuId::Edit, "Move it a stitch ri&ght", "Alt+Shift+Right; Alt+L", Needs::Selection,
     "Moves the selected stitches; they replace what is there"},
    {NudgeUp, MenuId::Edit, "Mo&ve it a row up", "Alt+Shift+Up; Alt+I", Needs::Selection,
     "Moves the selected stitches; they replace what is there"},
    {NudgeDown, MenuId::Edit, "Move it a ro&w down", "Alt+Shift+Down; Alt+K", Needs::Selection,
     "Moves the selected stitches; they replace what is there"},
    {PutDownTimes, MenuId::Edit, "Repeat it several t&imes...", "Ctrl+T", Needs::Selection,
     "Copies the selected stitches again and again, upwards or to a side"},
    {FillSelection, MenuId::Edit, "&Fill the selection", "Ctrl+L", Needs::Selection,
     "Fills it with the chosen stitch", true},
    {ReplaceStitch, MenuId::Edit, "Replac&e a stitch...", "Ctrl+H", Needs::Nothing,
     "Puts another stitch in its place, in the selection or the whole section"},
    {FindPlace, MenuId::Edit, "Fi&nd in the shawl", "Ctrl+Shift+F", Needs::Nothing,
     "Rows by their number, stitches, notes and words"},
    {RepeatSelection, MenuId::Edit, "Make a &stitch repeat of it", "Ctrl+R", Needs::Selection},
    {RepeatSelectedRows, MenuId::Edit, "Ma&ke a row repeat of its rows", "Ctrl+Shift+R", Needs::Selection},

    {PatternSettings, MenuId::Shawl, "&Pattern...", "Ctrl+I", Needs::Nothing,
     "Title, designer, cast on, gauge, versions and sizes"},
    {WordStyle, MenuId::Shawl, "How &words are written...", "Ctrl+K", Needs::Nothing,
     "Abbreviations, repeats, row labels and counts of the written rows"},
    {Yarns, MenuId::Shawl, "&Yarns...", "Ctrl+J"},
    {Markers, MenuId::Shawl, "&Markers...", "Ctrl+Shift+K", Needs::Markers, "Rename the markers"},
    {NextMarker, MenuId::Shawl, "Choose the ne&xt marker", "Shift+M", Needs::Markers,
     "The marker tool places it from now on; after the last one a new marker each time"},

    {AddSection, MenuId::Section, "&Add a section", "Ctrl+Shift+N"},
    {RenameSection, MenuId::Section, "&Rename", "F2"},
    {SectionSettings, MenuId::Section, "&Settings...", "Ctrl+Shift+I", Needs::Nothing,
     "Title, note and versions of the section"},
    {DuplicateSection, MenuId::Section, "&Duplicate", "Ctrl+Shift+D"},
    {SectionEarlier, MenuId::Section, "Knit it &earlier", "Ctrl+Shift+Up", Needs::SectionBefore, "", true},
    {SectionLater, MenuId::Section, "Knit it &later", "Ctrl+Shift+Down", Needs::SectionAfter},
    {DeleteSection, MenuId::Section, "Dele&te the section", "Ctrl+Shift+X", Needs::SeveralSections},
    {PreviousSection, MenuId::Section, "Show the section &before", "Ctrl+PgUp", Needs::SectionBefore, "",
     true},
    {NextSection, MenuId::Section, "Show the section a&fter", "Ctrl+PgDown", Needs::SectionAfter},

    {RowSettings, MenuId::Row, "Row &settings...", "Ctrl+Return", Needs::Row,
     "Side, yarn, start, turn, count, number, note and words of the row"},
    {RowHead, MenuId::Row, "What the row &is...", "Ctrl+Shift+Return", Needs::Row,
     "Side, yarn, start, end and note of the row, or of the selected rows; also by the right button on its number"},
    {RowWords, MenuId::Row, "Change its w&ords", "F4", Needs::Row,
     "Type over what is written; the chart follows"},
    {PlainRows, MenuId::Row, "Fill with &plain stitches...", "Ctrl+Shift+L", Needs::Row,
     "Knit, purl, or as the stitches show, over the stitches that are on the needle"},
    {StripedRows, MenuId::Row, "&Yarn of the rows...", "Ctrl+Shift+J", Needs::Row,
     "Stripes that repeat, over the selected rows or the whole section"},
    {ShortRowWedge, MenuId::Row, "Wed&ge of short rows...", "Ctrl+Shift+W", Needs::Row,
     "Short rows at an edge or about a marker, each turning further out or earlier"},
    {ShortRowArch, MenuId::Row, "Arc&h of short rows...", "Ctrl+Shift+A", Needs::Row,
     "Short rows about the middle, markers or stitches, wider or narrower on both sides from row to row"},
    {IncreaseRows, MenuId::Row, "Rows with i&ncreases...", "Ctrl+Shift+G", Needs::Row,
     "At edges, markers or a middle stitch every so many rows, or evenly over one row"},
    {RowAbove, MenuId::Row, "Insert a row &above", "Alt+Insert", Needs::Nothing, "", true},
    {RowBelow, MenuId::Row, "Insert a row &below", "Alt+Shift+Insert"},
    {DuplicateRow, MenuId::Row, "&Duplicate", "Ctrl+D", Needs::Row},
    {RowUp, MenuId::Row, "Move &up", "Alt+Up", Needs::RowAbove, "", true},
    {RowDown, MenuId::Row, "Move do&wn", "Alt+Down", Needs::RowBelow},
    {RowLeft, MenuId::Row, "Shift its stitches &left", "Alt+Left", Needs::Row},
    {RowRight, MenuId::Row, "Shift its stitches &right", "Alt+Right", Needs::Row},
    {OpenLeft, MenuId::Row, "Insert no stitch, the left part &moves", "Insert", Needs::Row,
     "Makes room at the cursor, or as wide as the selection; what lies left of it moves on", true},
    {OpenRight, MenuId::Row, "Insert no stitch, the right part mo&ves", "Shift+Insert", Needs::Row,
     "Makes room at the cursor, or as wide as the selection; what lies right of it moves on"},
    {CloseLeft, MenuId::Row, "Ta&ke out, the left part closes up", "Ctrl+Del", Needs::Row,
     "Takes out the stitch at the cursor, or the selected ones; what lies left of it moves up"},
    {CloseRight, MenuId::Row, "Tak&e out, the right part closes up", "Ctrl+Shift+Del", Needs::Row,
     "Takes out the stitch at the cursor, or the selected ones; what lies right of it moves up"},
    {DeleteRow, MenuId::Row, "Dele&te", "Ctrl+Backspace", Needs::SeveralRows,
     "Deletes the row, or the selected rows", true},
    {CopyWords, MenuId::Row, "&Copy the words of the section", "Ctrl+Shift+C", Needs::Nothing, "", true},

    {ToolPaint, MenuId::Stitch, "&Paint", "P", Needs::Nothing,
     "Draw the chosen stitch; the right button leaves no stitch", false, true},
    {ToolArea, MenuId::Stitch, "&Area", "A", Needs::Nothing,
     "Drag over an area to fill it with the chosen stitch", false, true},
    {ToolErase, MenuId::Stitch, "&Erase", "E", Needs::Nothing, "Leaves no stitch", false, true},
    {ToolSelect, MenuId::Stitch, "&Select", "S", Needs::Nothing,
     "Drag over stitches to copy, mirror or repeat them", false, true},
    {ToolMarker, MenuId::Stitch, "&Marker", "M", Needs::Nothing,
     "Click between two stitches to place a marker; the right button removes it", false, true},
    {ToolTurn, MenuId::Stitch, "&Turn", "T", Needs::Nothing,
     "Click between two stitches: the row is turned there, the rest waits on the needle", false, true},
    {NextTurnMethod, MenuId::Stitch, "Ne&xt turn method", "Shift+T", Needs::Nothing,
     "Wrap and turn and the others, one after the other"},
    {ToolStitchRepeat, MenuId::Stitch, "Stitch &repeat", "R", Needs::Nothing,
     "Drag over the stitches that are repeated", false, true},
    {ToolRowRepeat, MenuId::Stitch, "Ro&w repeat", "W", Needs::Nothing,
     "Drag over the rows that are repeated", false, true},
    {PaintMirrored, MenuId::Stitch, "Paint m&irrored", "Y", Needs::Nothing,
     "Paints, erases and types on both sides of a line: the middle of the selection, a marker beside the cursor, or "
     "the cursor's column",
     true, true},
    {ToolMotif, MenuId::Stitch, "Moti&f", "O", Needs::Motif,
     "Stamps the chosen motif, its lower right corner where you click; over the edge the chart grows", true, true},
    {MotifMirrored, MenuId::Stitch, "Stamp it mirrore&d", "Alt+O", Needs::Motif,
     "Turns the motif left to right, decreases with their lean", false, true},
    {SaveMotif, MenuId::Stitch, "Sa&ve the selection as a motif...", "Ctrl+G", Needs::Selection,
     "Keeps the selected stitches under a name, in the pattern"},
    {RenameMotif, MenuId::Stitch, "Re&name the motif...", "Shift+F2", Needs::Motif},
    {DeleteMotif, MenuId::Stitch, "Delete the m&otif", "Alt+Delete", Needs::Motif},
    {FindStitch, MenuId::Stitch, "Find a stitc&h", "Ctrl+F", Needs::Nothing, "", true},
    {NoStitch, MenuId::Stitch, "No stit&ch", "0"},
    {Favourite1, MenuId::Stitch, "Favourite 1", "1", Needs::Nothing, "", true},
    {Favourite2, MenuId::Stitch, "Favourite 2", "2"},
    {Favourite3, MenuId::Stitch, "Favourite 3", "3"},
    {Favourite4, MenuId::Stitch, "Favourite 4", "4"},
    {Favourite5, MenuId::Stitch, "Favourite 5", "5"},
    {Favourite6, MenuId::Stitch, "Favourite 6", "6"},
    {Favourite7, MenuId::Stitch, "Favourite 7", "7"},
    {Favourite8, MenuId::Stitch, "Favourite 8", "8"},
    {Favourite9, MenuId::Stitch, "Favourite 9", "9"},
    {OwnStitch, MenuId::Stitch, "Ma&ke a stitch of your own...", "Ctrl+Shift+O", Needs::Nothing, "", true},
    {ChangeOwnStitch, MenuId::Stitch, "Chan&ge your own stitch...", "Ctrl+Shift+Y", Needs::OwnStitch},
    {DeleteOwnStitch, MenuId::Stitch, "Delete &your own stitch", "Alt+Backspace", Needs::OwnStitch},
    {AddColumn, MenuId::Stitch, "Insert a &blank column left of here", "Ctrl+Shift+Left", Needs::Nothing, "", true},
    {DeleteColumn, MenuId::Stitch, "De&lete the column", "Ctrl+Shift+Backspace", Needs::Nothing,
     "Deletes the column at the cursor, or the selected columns"},

    {ZoomIn, MenuId::View, "Zoom &in", "Ctrl++; Ctrl+="},
    {ZoomOut, MenuId::View, "Zoom &out", "Ctrl+-"},
    {ZoomPlain, MenuId::View, "&100 %", "Ctrl+1"},
    {ZoomFit, MenuId::View, "&Whole section", "Ctrl+0"},
    {ZoomWidth, MenuId::View, "&All columns", "Ctrl+2"},
    {ZoomSelection, MenuId::View, "The &selection", "Ctrl+3", Needs::Selection},
    {AsKnitted, MenuId::View, "As &knitted", "Ctrl+U", Needs::Nothing,
     "The section with its repeats worked out, in the version and size shown; to look at only", true, true},
    {HidePlainRows, MenuId::View, "&Hide plain WS rows", "Ctrl+Shift+H", Needs::Nothing,
     "WS rows that are purled, knitted or worked as the stitches show are folded away; a double line in the numbers "
     "shows where",
     false, true},
    {LargerText, MenuId::View, "La&rger text", "Ctrl+Alt++; Ctrl+Alt+=", Needs::Nothing,
     "The words of the window; the chart has its own zoom", true},
    {SmallerText, MenuId::View, "S&maller text", "Ctrl+Alt+-"},
    {ChartAlone, MenuId::View, "&Chart alone", "F11", Needs::Nothing, "Hides everything but the chart", true,
     true},
    {PanelsAsFirst, MenuId::View, "&Panels as at first", "Shift+F11", Needs::Nothing,
     "All panels shown, in their first places"},
    {PanelSections, MenuId::View, "&Sections", "Alt+1", Needs::Nothing, "", false, true},
    {PanelStitches, MenuId::View, "S&titches", "Alt+2", Needs::Nothing, "", false, true},
    {PanelMotifs, MenuId::View, "&Motifs", "Alt+3", Needs::Nothing, "", false, true},
    {PanelWords, MenuId::View, "In &words", "Alt+4", Needs::Nothing, "", false, true},
    {PanelFindings, MenuId::View, "&Findings", "Alt+5", Needs::Nothing, "", false, true},
    {PanelRow, MenuId::View, "At this &row", "Alt+6", Needs::Nothing, "", false, true},
    {PanelThread, MenuId::View, "Stitches &over the shawl", "Alt+7", Needs::Nothing, "", false, true},
    {LightTheme, MenuId::View, "&Light", "F7", Needs::Nothing, "", true, true},
    {DarkTheme, MenuId::View, "&Dark", "F8", Needs::Nothing, "", false, true},
    {PaperChart, MenuId::View, "Chart o&n paper in the dark", "Shift+F8", Needs::Nothing,
     "Keeps the chart light in the dark theme", false, true},
    {BlackAndWhite, MenuId::View, "&Black and white", "Ctrl+B", Needs::Nothing,
     "The chart as it is told apart in a print without colours", false, true},
    {YarnTints, MenuId::View, "&Tint stitches with their yarn", "Ctrl+Shift+B", Needs::Nothing, "", false, true},

    {ShortcutSheet, MenuId::Help, "&Keys", "F1"},
    {About, MenuId::Help, "&About Shawlwright", "Shift+F1"},
};

constexpr ChartKey ownKeys[] = {
    {"Left, Right, Up, Down", "move the cursor"},
    {"Shift with these", "select"},
    {"Drag in the numbers", "select whole rows or columns"},
    {"Drag selected row numbers", "move the rows; Esc takes it back"},
    {"Drag what is selected", "move it; with Ctrl, pressed while dragging, copy it (Select)"},
    {"Ctrl with a click or drag", "add to the selection, or take from it (Select, and in the numbers)"},
    {"Home, End", "to the leftmost or rightmost stitch of the row, then to the edge; with Ctrl to the corners"},
    {"Ctrl with Left, Right", "to the next marker or edge of a repeat"},
    {"PgUp, PgDown", "a screenful up or down"},
    {"Space", "paint at the cursor"},
    {"Return", "type stitches where the cursor is, as they are knitted: k2tog, 7 k. After the last stitch of a row, or by Return alone, to the next row"},
    {"Delete", "leave no stitch; delete the chosen marker"},
    {"Esc", "take the stroke back; select nothing"},
    {"Ctrl with the wheel", "zoom about the pointer"},
    {"Alt with a click", "take the stitch under the pointer"},
};

} // namespace

std::span<const ActionEntry> actionTable()
{
    return table;
}

const ActionEntry& actionEntry(ActionId id)
{
    return *std::find_if(std::begin(table), std::end(table),
                         [id](const ActionEntry& entry) { return entry.id == id; });
}

QString actionWords(const char* text)
{
    return QCoreApplication::translate("Actions", text);
}

QString menuTitle(MenuId menu)
{
    switch (menu) {
    case MenuId::File:
        return QCoreApplication::translate("Actions", "&File");
    case MenuId::Edit:
        return QCoreApplication::translate("Actions", "&Edit");
    case MenuId::Shawl:
        return QCoreApplication::translate("Actions", "Sha&wl");
    case MenuId::Section:
        return QCoreApplication::translate("Actions", "&Section");
    case MenuId::Row:
        return QCoreApplication::translate("Actions", "&Row");
    case MenuId::Stitch:
        return QCoreApplication::translate("Actions", "S&titch");
    case MenuId::View:
        return QCoreApplication::translate("Actions", "&View");
    case MenuId::Help:
        return QCoreApplication::translate("Actions", "&Help");
    }
    return {};
}

bool belongsToChart(const ActionEntry& entry)
{
    const QString firstOfThem = QString::fromLatin1(entry.keys).section(QStringLiteral("; "), 0, 0);
    const QKeySequence keys(firstOfThem, QKeySequence::PortableText);
    if (keys.isEmpty())
        return false;
    const QKeyCombination first = keys[0];
    const bool function = first.key() >= Qt::Key_F1 && first.key() <= Qt::Key_F12;
    return !function && !(first.keyboardModifiers() & (Qt::ControlModifier | Qt::AltModifier));
}

std::span<const ChartKey> chartKeys()
{
    return ownKeys;
}

} // namespace shawlwright::app
