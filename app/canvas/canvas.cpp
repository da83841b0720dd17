#include "app/canvas/canvas.h"

#include "app/canvas/accessible_chart.h"
#include "app/canvas/canvas_parts.h"
#include "app/canvas/zoom.h"
#include "app/painting/grey_theme.h"
#include "core/edits/selected.h"

#include <QEvent>
#include <QFontMetrics>
#include <QHelpEvent>
#include <QResizeEvent>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

Canvas::Canvas(PatternDocument& document, QWidget* parent)
    : QAbstractScrollArea(parent), m(std::make_unique<Parts>(*this, document))
{
    AccessibleChart::install();
    setObjectName(QStringLiteral("canvas"));
    setAccessibleName(tr("Chart"));
    setAccessibleDescription(
        tr("Arrows move from stitch to stitch, Space paints, Delete takes a stitch away"));
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->setMouseTracking(true);
    viewport()->grabGesture(Qt::PinchGesture);
    m->theme = themeFor(palette());
    m->ratio = devicePixelRatioF();
    m->cell = m->chosenCell = cellOfPercent(100, m->ratio);
    connect(&document, &PatternDocument::changed, this,
            [this](const Change& change, const Reworked& reworked) { m->changed(change, reworked); });
    connect(&document, &PatternDocument::revisited, this,
            [this](const Change& change, const Edit& before, Going going) { m->revisited(change, before, going); });
    connect(&document, &PatternDocument::aboutToPerform, this, [this](int step) { m->keepSeat(step); });
    connect(&document, &PatternDocument::replaced, this, [this] { // its sections have nothing to do with the old ones
        setUnfolded(false);
        m->seats.clear();
        if (!this->document().pattern().sections.empty())
            setSection(this->document().pattern().sections.front().id);
    });
    connect(&document, &PatternDocument::choiceChanged, this, [this] { m->refreshAll(); });
    connect(this, &Canvas::cursorMoved, this, [this] { AccessibleChart::cursorMoved(*this); });
    if (const auto knit = document.catalogue().find("k"))
        m->brush = *knit;
    if (!document.pattern().sections.empty())
        setSection(document.pattern().sections.front().id);
}

Canvas::~Canvas() = default;

void Canvas::setSection(SectionId section)
{
    endStroke();
    m->section = section;
    m->cursor = m->anchor = At{};
    m->flashed.reset();
    m->chosenMarker.reset();
    m->keptInView.clear();
    setPaintMirror(std::nullopt); // its columns are those of the section before
    m->atLowerRight = true;
    m->fitsSection = true;
    m->otherZoom.reset();
    select(std::nullopt);
    m->cursor = m->anchor = m->firstStitch(0);
    m->refreshAll();
    AccessibleChart::reshaped(*this);
    m->tellCursor();
}

PatternDocument& Canvas::document() const
{
    return m->document;
}

SectionId Canvas::section() const
{
    return m->section;
}

int Canvas::sectionIndex() const
{
    return m->index();
}

void Canvas::setTool(CanvasTool tool)
{
    endStroke();
    if (tool == m->tool)
        return;
    m->tool = tool;
    m->chosenMarker.reset();
    m->repaintAll();
    Q_EMIT toolChanged(tool);
}

CanvasTool Canvas::tool() const
{
    return m->tool;
}

void Canvas::setBrush(StitchId stitch)
{
    endStroke();
    m->brush = stitch;
    m->repaintAll();
}

StitchId Canvas::brush() const
{
    return m->brush;
}

void Canvas::setBrushYarn(YarnId yarn)
{
    endStroke();
    m->brushYarn = yarn;
}

YarnId Canvas::brushYarn() const
{
    return m->brushYarn;
}

void Canvas::setTurnMethod(TurnMethod method)
{
    m->turnMethod = method;
}

TurnMethod Canvas::turnMethod() const
{
    return m->turnMethod;
}

std::optional<MarkerId> Canvas::marker() const
{
    return m->marker;
}

void Canvas::setMarker(std::optional<MarkerId> marker)
{
    m->marker = marker;
}

void Canvas::setTheme(const Theme& theme)
{
    m->followsPalette = false;
    m->chosenTheme = theme;
    m->theme = m->shownTheme();
    m->repaintAll();
}

void Canvas::setBlackAndWhite(bool shown)
{
    m->blackAndWhite = shown;
    m->theme = m->shownTheme();
    m->refreshShown();
}

Theme Canvas::Parts::shownTheme() const
{
    return blackAndWhite ? greyTheme() : chosenTheme.value_or(themeFor(canvas.palette()));
}

void Canvas::light(std::optional<Area> cells)
{
    if (m->out)
        cells.reset();
    if (cells == m->lit)
        return;
    m->lit = cells;
    m->repaintAll();
}

std::optional<Area> Canvas::lit() const
{
    return m->lit;
}

void Canvas::setYarnTints(bool shown)
{
    m->tints = shown;
    m->repaintAll();
}

bool Canvas::strokeOpen() const
{
    return m->drag.kind != DragKind::None;
}

void Canvas::endStroke()
{
    if (!strokeOpen())
        return;
    const bool drawn = m->drag.kind != DragKind::Stroke && m->drag.kind != DragKind::Pan;
    m->drag = {}; // what was painted is in the pattern already; a rectangle not let go of is none
    if (drawn)
        m->repaintAll();
}

void Canvas::cancelStroke()
{
    const int stroke = m->drag.strokeNumber;
    if (m->drag.kind == DragKind::Move || m->drag.kind == DragKind::Rows)
        Q_EMIT told(tr("Taken back, nothing is moved."));
    endStroke();
    if (stroke > 0)
        m->document.takeBackStroke(stroke);
}

At Canvas::cursor() const
{
    return m->folded(m->cursor);
}

void Canvas::setCursor(At at)
{
    if (!m->out)
        m->bringIntoView(at.row);
    m->moveCursor(m->seen(at), false);
    m->followClicked();
}

void Canvas::goToRow(int row)
{
    const ColumnSpan stitches = m->out ? ColumnSpan{} : m->stitchesOf(row);
    const int column = cursor().column;
    if (m->out || (column >= stitches.first && column <= stitches.last))
        setCursor(At{row, std::max(1, column)});
    else {
        m->moveCursor(m->firstStitch(row), false);
        m->followClicked();
    }
}

void Canvas::eraseSelection()
{
    endStroke();
    if (m->out)
        return m->tellToLookAtOnly();
    const Areas areas = m->selected.empty() ? Areas{areaBetween(m->cursor, m->cursor)} : m->selected;
    if (m->shown())
        m->performPainted(erase(m->document.pattern(), m->document.catalogue(), m->section, areas));
}

void Canvas::showCell(int row, int column)
{
    m->showCell(m->seen(At{row, column}));
}

void Canvas::showRow(int row)
{
    const Extent extent = m->foldedExtent();
    if (row < 0 || row >= extent.rows)
        return;
    const QPoint wanted = m->geometry.scrollToShow(m->geometry.cellRect(m->seen(At{row, 1}).row, 1));
    m->scrollTo(QPoint(m->geometry.scroll.x(), wanted.y()));
}

void Canvas::flashFinding(const Finding& finding)
{
    const Extent extent = m->foldedExtent();
    if (finding.row < 0 || finding.row >= extent.rows || extent.columns == 0)
        return;
    const bool one = finding.column >= 1 && finding.column <= extent.columns;
    setCursor(At{finding.row, one ? finding.column : cursor().column});
    if (one)
        showCell(finding.row, finding.column);
    else
        showRow(finding.row);
    const At at = m->seen(At{finding.row, one ? finding.column : 1});
    m->flashed = Area{at.row, at.row, one ? at.column : 1, one ? at.column : m->extent().columns};
    m->repaintAll();
}

double Canvas::zoomPercent() const
{
    return percentOfCell(m->cell, devicePixelRatioF());
}

int Canvas::cellPixels() const
{
    return m->cell;
}

void Canvas::setZoomPercent(double percent)
{
    m->setCell(cellOfPercent(percent, devicePixelRatioF()), m->geometry.grid.center());
}

void Canvas::zoomIn()
{
    m->setCell(nextCell(m->cell, 1), m->geometry.grid.center());
}

void Canvas::zoomOut()
{
    m->setCell(nextCell(m->cell, -1), m->geometry.grid.center());
}

void Canvas::zoomToFit()
{
    const Extent extent = m->extent();
    if (extent.rows == 0 || extent.columns == 0)
        return;
    const QSize room = m->roomForCells();
    const int fitting = std::min(room.width() / extent.columns, room.height() / m->shownRows.lines(extent.rows));
    m->setCell(std::clamp(fitting, leastCell, cellOfPercent(100, devicePixelRatioF())),
               m->geometry.grid.center());
}

QRect Canvas::cellRectOnViewport(int row, int column) const
{
    const QRect seen = m->geometry.cellRect(row, column) & m->geometry.grid;
    return m->geometry.inside(At{row, column}) && !seen.isEmpty() ? m->toLogical(seen) : QRect();
}

std::optional<At> Canvas::cellAtPoint(QPoint onViewport) const
{
    const QPointF device = m->toDevice(onViewport);
    if (!m->geometry.grid.contains(device.toPoint()))
        return std::nullopt;
    const At at = m->geometry.cellUnder(device);
    return m->geometry.inside(at) ? std::optional(at) : std::nullopt;
}

qint64 Canvas::cellsPainted() const
{
    return m->painted;
}

QSize Canvas::sizeHint() const
{
    return QSize(720, 560);
}

void Canvas::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    m->layOut();
}

void Canvas::scrollContentsBy(int, int)
{
    if (m->layingOut)
        return;
    m->atLowerRight = false;
    m->layOut();
    m->hoverAt(underMouse() ? std::optional(m->toDevice(viewport()->mapFromGlobal(QCursor::pos())))
                            : std::nullopt);
    m->repaintAll();
}

void Canvas::focusInEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusInEvent(event);
    m->repaintAll();
}

void Canvas::focusOutEvent(QFocusEvent* event)
{
    endStroke();
    QAbstractScrollArea::focusOutEvent(event);
    m->repaintAll();
}

void Canvas::changeEvent(QEvent* event)
{
    QAbstractScrollArea::changeEvent(event);
    if (!m)
        return;
    if (event->type() == QEvent::PaletteChange && m->followsPalette)
        m->theme = m->shownTheme();
    if (event->type() == QEvent::FontChange)
        m->layOut();
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        m->repaintAll();
}

bool Canvas::viewportEvent(QEvent* event)
{
    if (m->takesGesture(event)) {
        event->accept();
        return true;
    }
    if (event->type() == QEvent::Leave)
        m->hoverAt(std::nullopt);
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QString words = m->findingsInWords(m->toDevice(help->pos()));
        if (words.isEmpty())
            QToolTip::hideText();
        else
            QToolTip::showText(help->globalPos(), words, viewport());
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

} // namespace shawlwright::app
