// The chart of one section, to look at and to draw in: tools, keyboard, zoom, frozen numbers around the grid.
//
// Shape:   rows are indexes into the section's rows, row 0 at the bottom; columns from 1 at the right. The
// view opens at
//          the lower right, where knitting starts. One stroke of the mouse is one undo step.
// Units:   zoom in per cent of 24 pixels a cell; a cell is always a whole number of device pixels, 2 to 128.
// Errors:  what cannot be done is told by told(), and nothing is changed.
#pragma once

#include "app/document/pattern_document.h"
#include "app/painting/theme.h"
#include "core/edits/move_stitches.h"

#include <QAbstractScrollArea>

#include <memory>
#include <optional>

class QLineEdit;

namespace shawlwright::app {

enum class CanvasTool {
    Paint,     // the brush, by clicking and dragging; right button: no stitch
    Area,      // fills a dragged rectangle with the brush
    Erase,     // to no stitch
    Marker,    // click at a boundary places, drag moves, right button or Delete removes
    Repeat,    // drag a stitch repeat; a click in one opens it
    RowRepeat, // drag over rows
    Turn,      // click at a boundary: the row is turned there; right button: it is worked to its end
    Select,    // drag a rectangle to copy, mirror or delete
    Stamp      // the motif, its lower right corner where it is clicked
};

// The middle about which is painted twice: a marker wherever it stands, or a place of the chart.
struct PaintMirror {
    std::optional<MarkerId> marker;
    int sum = 0; // without a marker: twice the column, or twice the boundary and one
    bool operator==(const PaintMirror&) const = default;
};

class Canvas : public QAbstractScrollArea {
    Q_OBJECT
public:
    explicit Canvas(PatternDocument& document, QWidget* parent = nullptr);
    ~Canvas() override;

    PatternDocument& document() const;
    void setSection(SectionId section); // goes to its first stitch, at the lower right
    SectionId section() const;
    int sectionIndex() const; // -1: the section is gone

    void setTool(CanvasTool tool);
    CanvasTool tool() const;
    void setBrush(StitchId stitch);
    StitchId brush() const;
    void setBrushYarn(YarnId yarn); // none: the yarn of the row
    YarnId brushYarn() const;
    void setTurnMethod(TurnMethod method);
    TurnMethod turnMethod() const;
    std::optional<MarkerId> marker() const;
    void
    setMarker(std::optional<MarkerId> marker); // that the Marker tool places; nothing: a new one each time
    void setPaintMirror(std::optional<PaintMirror> mirror); // paints, erases and types on both sides of it
    std::optional<PaintMirror> paintMirror() const;
    PaintMirror mirrorHere() const;             // that the selection or the cursor proposes
    void setStamp(std::optional<Motif> motif);  // what the Stamp tool puts down
    void setTheme(const Theme& theme);         // until then it follows the palette
    void setYarnTints(bool shown);
    void setBlackAndWhite(bool shown); // greys alone, as printed without colours; before any theme

    // The open stroke becomes an undo step as it is; called by itself before undo, save, another tool and
    // loss of focus where they pass through the canvas, by the window where they don't.
    void endStroke();
    bool strokeOpen() const;
    void cancelStroke(); // Esc: takes it back whole

    At cursor() const;
    void setCursor(At at); // within the chart; brings it into view
    void goToRow(int row); // in its column where the row has stitches there, else to the row's first one
    using QAbstractScrollArea::setCursor;
    const Areas& selected() const;
    std::optional<Area> selection() const; // the one rectangle that is selected, hidden rows in it too
    void select(std::optional<Area> area);
    void selectAreas(const Areas& areas);
    void selectAll();
    void selectRows();     // what is selected grows to whole rows; the cursor's where nothing is
    void selectColumns();  // the same
    void toggleSelected(); // the cell at the cursor is added, or taken out
    bool moveSelected(int rows, int columns, Leaving leaving); // up and to the left; the selection goes along
    // The same, one step of undo with the nudges right before it: only what lies at the end of the way is replaced.
    bool nudgeSelected(int rows, int columns);
    bool moveRows(int first, int last, int before); // into another order; what is selected goes along
    void openEntry();                                          // stitches are typed at the cursor
    QLineEdit* entry() const;                                  // null: closed
    void light(std::optional<Area> cells); // what is pointed at in the words; not while unfolded
    std::optional<Area> lit() const;

    // The section as knitted, to look at only: repeats worked out, see core/derived/unfolded.h. Cursor, rows and columns
    // that are asked for or told stay those of the folded chart; cells in the view are those that are seen.
    void setUnfolded(bool unfolded);
    bool unfolded() const;

    // Plain WS rows folded away (core/pattern/plain_ws_rows.h). What is gone to or worked on stays in view until they
    // are hidden anew; a hidden row that is plain no longer comes back by itself. Stitches of hidden rows are never
    // selected, and an act that would put down or take away some of them is refused. A rectangle over hidden rows is one
    // rectangle to acts on the fabric as a whole (mirror, upside down, repeat, motif), and whole rows that are moved,
    // copied or deleted take the hidden ones above them along.
    void setPlainRowsHidden(bool hidden);
    bool plainRowsHidden() const;
    bool hidesRow(int row) const;
    QString hiddenRowsInWords() const; // "12 WS rows (purl)"; empty: none are hidden
    std::vector<IndexRun> withHidden(std::vector<IndexRun> rows) const;
    int rowBeside(int row, int lines) const; // so many shown rows further up

    bool perform(const Result<Edit>& edit); // an act on stitches: mirrored too while it is painted so, hidden rows spared
    void eraseSelection();              // or the cell at the cursor where nothing is selected
    void showCell(int row, int column); // scrolls only as far as needed
    void showRow(int row);
    void
    flashFinding(const Finding& finding); // goes to its cell and frames it; the section must be shown already

    // A section that is opened is shown at the zoom chosen last, or smaller where its columns don't fit then but do at
    // a size that can be read; it goes on fitting while the window and the chart change, until a zoom is chosen.
    void fitSection();
    bool sectionFits() const;         // no zoom was chosen for it
    QRect gridRect() const;  // of the cells that are seen, on the viewport; logical pixels
    QRect chartRect() const; // with the numbers around
    int usefulWidth() const; // with room for the numbers and some columns; logical pixels
    double chosenZoomPercent() const; // what is shown, but for sections that are made to fit
    double zoomPercent() const;
    void setZoomPercent(double percent); // about the middle of the view
    void zoomIn();
    void zoomOut();
    void zoomToFit();       // the whole section, at most at 100 %
    void zoomToWidth();     // all columns, at most at 200 %
    void zoomToSelection(); // the same for what is selected
    int cellPixels() const; // device pixels

    QRect cellRectOnViewport(int row,
                             int column) const; // logical, for tests and tool tips; empty: out of sight
    std::optional<At> cellAtPoint(QPoint onViewport) const;
    qint64 cellsPainted() const; // since it was made, for measuring what a repaint costs

    QSize sizeHint() const override;

Q_SIGNALS:
    void cursorMoved(int row, int column);
    void hovered(int row, int column); // row -1: left the chart
    void selectionChanged();
    void zoomChanged(double percent);
    void unfoldedChanged(bool unfolded);
    void plainRowsHiddenChanged(bool hidden);
    void paintMirrorChanged();
    void toolChanged(shawlwright::app::CanvasTool tool);
    void picked(shawlwright::StitchId stitch);       // Alt and click: take this stitch as the brush
    void rowActivated(int row);                      // its number was double-clicked
    void repeatDrawn(const shawlwright::Area& over); // with its tool; making it is the listener's
    void rowRepeatDrawn(int firstRow, int lastRow);  // the same
    void boxActivated(shawlwright::BoxId box);
    void bracketActivated(int index); // of the frame's brackets
    void contextWanted(int row, int column,
                       const QPoint& globalPosition); // right button with Select, or in the numbers
    void told(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;

private:
    struct Parts;
    std::unique_ptr<Parts> m;
};

} // namespace shawlwright::app
