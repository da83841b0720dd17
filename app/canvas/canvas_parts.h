// What a Canvas consists of. Only the canvas's own files include this: painting, mouse and keys each have
// one.
#pragma once

#include "app/canvas/atlas.h"
#include "app/canvas/brackets.h"
#include "app/canvas/canvas.h"
#include "app/canvas/geometry.h"
#include "app/canvas/overlay.h"
#include "app/canvas/parents.h"
#include "app/canvas/row_facts.h"
#include "app/canvas/stroke.h"
#include "core/derived/unfolded.h"
#include "core/edits/areas.h"
#include "core/pattern/plain_ws_rows.h"

#include <QImage>
#include <QPainter>

#include <map>
#include <set>

namespace shawlwright::app {

enum class DragKind { None, Stroke, Rectangle, Move, Rows, Marker, Pan };

enum class SelectBy { Cells, Rows, Columns }; // rows and columns: from edge to edge
enum class SelectHow { Anew, Add, Take };

// A marker as it was gripped: by the row that sets it, not by an index that an edit may move.
struct MarkerGrip {
    RowId row;
    MarkerId marker;
    int boundary = 0;
    bool operator==(const MarkerGrip&) const = default;
};

struct Drag {
    DragKind kind = DragKind::None;
    Qt::MouseButton button = Qt::NoButton;
    CanvasTool tool = CanvasTool::Paint; // that began it
    int strokeNumber = 0;
    std::optional<Stroke> stroke;
    bool erases = false;
    SelectBy by = SelectBy::Cells;
    SelectHow how = SelectHow::Anew;
    bool copies = false; // of a move: Ctrl is held
    At from, now;        // in the chart
    QPoint pressedAt;
    bool moved = false;
    QPoint scrollAtPress;
    MarkerGrip grip;
    int boundary = 0; // of a marker; of rows: the row above the line where they will go
};

struct Hover {
    std::optional<At> cell;
    std::vector<CellSpan> parents;
    int boundary = 0;
};

// The columns of numbers at the right, from the grid's edge; device pixels.
struct NumberColumns {
    int textHeight = 0;
    int bracket = 0; // width that a row repeat takes up beside the rows
    int number = 0; // width of a row's label, at either side
    int numberAt = 0, findingAt = 0, countEnd = 0, changeAt = 0, width = 0;
};

struct WheelRun {
    int startCell = 0, cell = 0; // cell: as this run left it
    int angle = 0;
    QPointF at;     // of the pointer, in the grid
    QPointF anchor; // of the chart, in cells from its upper left
};

class CellEntry;

struct Canvas::Parts {
    Parts(Canvas& itself, PatternDocument& ofDocument) : canvas(itself), document(ofDocument) {}

    Canvas& canvas;
    PatternDocument& document;
    SectionId section;
    CanvasTool tool = CanvasTool::Paint;
    StitchId brush = noStitch;
    YarnId brushYarn;
    TurnMethod turnMethod = TurnMethod::WrapAndTurn;
    std::optional<MarkerId> marker;
    std::optional<PaintMirror> mirror;
    std::optional<Motif> stamp;
    Theme theme;
    bool followsPalette = true;
    bool tints = true;
    bool blackAndWhite = false;
    PatternHead greyHead; // of the shown pattern, while it is in black and white
    const PatternHead& head() const { return blackAndWhite ? greyHead : pattern().head; }
    std::optional<Theme> chosenTheme; // nothing: by the palette
    Theme shownTheme() const;

    int cell = 24;
    int chosenCell = 24;       // what somebody zoomed to
    bool fitsSection = true;   // cell is smaller than that where the columns fit only so
    struct Zoomed {
        int cell, chosenCell;
        bool fitsSection;
    };
    std::optional<Zoomed> otherZoom; // of the section folded, while it is seen as knitted, and the other way round
    double ratio = 1; // the pixel ratio that the cell was chosen for
    CanvasGeometry geometry;
    NumberColumns numbers;
    Atlas atlas;
    RowFacts facts;
    Overlay overlay;
    std::vector<BracketPlace> brackets;
    QImage cells; // kept between frames, only its memory matters
    qint64 painted = 0;
    bool atLowerRight = true; // until somebody scrolls
    bool layingOut = false;

    Drag drag;
    bool performing = false;
    At cursor;
    At anchor;                           // of the selection, for Shift and arrows
    SelectBy selectBy = SelectBy::Cells; // what Shift and arrows extend
    Areas selected;
    std::optional<Area> clicked; // the stitch selected last by a click alone
    std::optional<Area> flashed;
    std::optional<MarkerGrip> chosenMarker;
    CellEntry* entry = nullptr; // open while stitches are typed
    bool entryRefused = false;  // what was typed last, and why was told
    Hover hover;
    WheelRun wheel;
    struct {
        int cell = -1; // as the last turn of two fingers left it
        double wanted = 0;
    } pinched;
    std::optional<Area> lit;
    struct {
        int line = -1;
        Trace trace;
    } traced;

    // The section, asked for anew each time.
    int index() const { return shawlwright::sectionIndex(document.pattern(), section); }

    // What is seen: the section itself, or as it is knitted. Places in the view are the latter's then.
    std::optional<Unfolded> out;
    const Pattern& pattern() const { return out ? out->pattern : document.pattern(); }
    const Ledger& ledger() const { return out ? out->ledger : document.derived().ledger(); }
    const std::vector<Finding>& findings() const
    {
        return out ? out->ledger.findings : document.derived().findings();
    }
    int shownIndex() const { return out ? 0 : index(); }
    At folded(At seen) const;
    At seen(At folded) const;
    Extent foldedExtent() const;
    bool unfold(); // false: it can't be, and that was told
    void unfoldAgain();
    void lookAt(QPointF device);
    void tellToLookAtOnly();
    void tellCursor();
    void tellHovered();
    void showCell(At seen);
    const Section* shown() const;
    const Row* row(int at) const; // null: none
    Extent extent() const;

    // Hidden rows.
    bool hidesPlain = false;
    std::vector<PlainWs> plain;     // by row, while plain ones are hidden
    std::set<RowId> keptInView;     // plain, but gone to or worked on
    ShownRows shownRows;            // as the geometry has it after layOut()
    bool overlayMoved = false;
    void foldRows(int first, int last);
    void keepInView(int row);
    void bringIntoView(int row);
    void refreshOverlay();
    std::optional<Fault> hiddenFault(const Edit& edit) const;
    static bool sameStitches(const Row& a, const Row& b);
    void paintHiddenMark(QPainter& painter, int row);

    // View.
    QSize viewSize() const; // device pixels
    QPointF toDevice(QPointF logical) const { return logical * canvas.devicePixelRatioF(); }
    QRect toLogical(const QRect& device) const;
    NumberColumns numberColumns(int ofCell) const;
    Gutters gutters(const NumberColumns& columns) const;
    QSize roomBesideBars(const Gutters& around, Extent of) const; // with only the scroll bars that are needed
    QFont gutterFont(int ofCell) const; // sized in device pixels; in low rows smaller, as long as it can be read
    QFont gutterFont() const { return gutterFont(cell); }
    bool layOut();                                                // true where anything lies elsewhere now
    void scrollTo(QPoint scroll);
    QSize roomForCells() const;
    void pinch(double factor, QPointF device, bool begins);
    bool takesGesture(QEvent* event);
    void setCell(int wanted, QPointF about); // a point of the view, device pixels
    int fittingCell(Extent of) const; // chosenCell, or smaller
    void repaint(const QRect& device);
    void repaintRow(int row); // with its numbers
    void repaintAll();
    void refreshAll();
    void refreshShown(); // the same for what was unfolded just now
    void changed(const Change& change, const Reworked& reworked);
    struct Seat {
        SectionId section;
        At cursor, anchor;
        Areas selected;
    };
    struct Seats {
        std::optional<Seat> before, after;
    };
    std::map<int, Seats> seats; // by step of the undo stack
    Seat seat() const;
    void sit(const Seat& at);
    void keepSeat(int step);
    void revisited(const Change& change, const Edit& before, Going going);
    struct Nudged { // since the selection was made
        SectionId section;
        int step = 0; // of the undo stack, after it
        Areas from;
        int rows = 0, columns = 0;
    };
    std::optional<Nudged> nudged;
    At firstStitch(int row) const; // as it is knitted; where it will stand, in an empty row
    ColumnSpan stitchesOf(int row) const; // of an empty row: those of the row below; first 0: none
    void clampAll();        // cursor and selection into a chart that may have shrunk
    At inside(At at) const; // the nearest cell of a chart that has some

    // Pointer.
    void hoverAt(std::optional<QPointF> device);
    std::vector<QRect> hoverRects() const;
    void traceHovered();
    void parentsThroughHidden();
    int brushWidth() const;
    std::optional<int> mirrorSum(int row) const;
    std::optional<QRect> mirroredHover() const;
    At stampPlace() const;
    QRect stampRect() const; // device pixels; empty: nothing is to be stamped
    QRect stampRoom() const; // where it can be shown
    Extent stampGrowth() const; // rows and columns that would come to the chart

    // Acts; each is one undo step.
    bool perform(const Result<Edit>& edit, int stroke = 0);
    bool performPainted(const Result<Edit>& edit, int stroke = 0); // on both sides of the mirror line
    bool stampAt(At at);
    void beginStroke(At at, Qt::MouseButton button, bool erases);
    void continueStroke(At at);
    void finishRectangle(const Area& area, CanvasTool with);
    void paintAtCursor();
    void turnAt(int row, int boundary);
    void pressMarker(At at, int boundary, Qt::MouseButton button);
    void dropMarker(int boundary);
    bool deleteChosenMarker();
    std::optional<MarkerGrip> markerAt(int row, int boundary) const; // the move that its line starts from
    int nextStop(bool leftwards) const;
    // Typing.
    void closeEntry();
    void placeEntry();
    void takeTyped(const QString& text);
    void refuseTyped();
    void typeWholeRow(const QString& text);
    void toNextRow();
    void takenAs(int row, const std::string& warning);
    bool usedUp(int row) const; // no loop is left on the needle ahead of it

    std::optional<BoxId> boxAt(QPointF device, bool edgeAlone) const; // of nested ones the inner
    std::optional<int> bracketAt(QPointF device) const;
    std::optional<int> rowBesideGrid(QPointF device) const;    // in the numbers at the left or right
    std::optional<int> columnBesideGrid(QPointF device) const; // in the numbers above or below
    bool keyMoves(int key, Qt::KeyboardModifiers modifiers);
    void moveCursor(At to, bool extends); // brings it into view
    void placeCursor(At next);            // leaves the view as it is

    // Selecting.
    Area areaMeant(At from, At to, SelectBy by) const;
    void pressBesideGrid(QPointF device, QMouseEvent* event);
    void beginRectangle(At from, At now, CanvasTool with, QMouseEvent* event, SelectBy by);
    void finishSelecting(const Drag& done);
    void selectStitch(At at);
    void goOnAt(At at); // the cursor, to where painting or typing goes on
    void followClicked();
    void beginMove(At at, QMouseEvent* event);
    void continueMove(QPointF device, bool copies);
    void showMove(At now, bool copies);
    std::vector<IndexRun> rowsToDrag() const;
    bool dragsRows(QPointF device) const; // a press there would drag the selected rows
    void beginRowMove(At at, QMouseEvent* event);
    int rowLineNear(QPointF device) const;
    void continueRowMove(QPointF device);
    QString rowMoveInWords(const IndexRun& run) const;
    void finishRowMove(const Drag& done);
    void paintRowLine(QPainter& painter);
    bool draggedFar(QPointF device) const;
    At movedBy() const; // rows up and columns to the left
    QString movedInWords(At by, bool copied) const;
    void scrollBeyond(QPointF device); // on, while a drag is pulled over the grid's edge
    QString findingsInWords(QPointF device) const;

    // Painting, in device pixels.
    void paintCells(QPainter& painter, const QRect& exposed);
    void paintTenthLines(QPainter& painter, const QRect& exposed);
    void paintOverlay(QPainter& painter, const QRect& exposed);
    void paintFindings(QPainter& painter, const QRect& exposed);
    void paintSelection(QPainter& painter, int thin);
    void paintMoving(QPainter& painter, int thick);
    void paintPointer(QPainter& painter);
    void paintMirrorLine(QPainter& painter);
    void paintStamp(QPainter& painter);
    void paintStampGrowth(QPainter& painter, const QRect& seen);
    void paintGutters(QPainter& painter, const QRect& exposed);
    void paintRowNumbers(QPainter& painter, int row, int high);
    void paintStitchNumbers(QPainter& painter);
    void paintBrackets(QPainter& painter);
};

inline Area areaBetween(At a, At b)
{
    return Area{std::min(a.row, b.row), std::max(a.row, b.row), std::min(a.column, b.column),
                std::max(a.column, b.column)};
}

QRegion outline(const QRegion& cells, int thick); // inside of them

} // namespace shawlwright::app
