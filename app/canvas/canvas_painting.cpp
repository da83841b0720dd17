// The grid and what lies over it. Everything is painted in device pixels, and only what is exposed.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/zoom.h"
#include "app/painting/shape_painter.h"

#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

constexpr int leastForOverlay = 5; // device pixels a cell; below it markers and turns would hide the chart

void frame(QPainter& painter, const QRect& around, const QColor& colour, int thickness)
{
    const int t = std::min({thickness, around.width(), around.height()});
    painter.fillRect(around.left(), around.top(), around.width(), t, colour);
    painter.fillRect(around.left(), around.bottom() - t + 1, around.width(), t, colour);
    painter.fillRect(around.left(), around.top(), t, around.height(), colour);
    painter.fillRect(around.right() - t + 1, around.top(), t, around.height(), colour);
}

QColor washed(QColor colour, int alpha)
{
    colour.setAlpha(alpha);
    return colour;
}

QColor colourOf(const Theme& theme, Severity severity)
{
    return severity == Severity::Error     ? theme.error
           : severity == Severity::Warning ? theme.warning
                                           : theme.note;
}

} // namespace

void Canvas::paintEvent(QPaintEvent* event)
{
    const double ratio = devicePixelRatioF();
    if (ratio != m->ratio) { // the window went to another screen: same size to the eye
        m->cell = cellOfPercent(percentOfCell(m->cell, m->ratio), ratio);
        m->chosenCell = cellOfPercent(percentOfCell(m->chosenCell, m->ratio), ratio);
        m->ratio = ratio;
        QMetaObject::invokeMethod(
            this, [this] { m->refreshAll(); }, Qt::QueuedConnection);
    }
    AtlasKey key{m->geometry.cell, ratio, m->theme, {}};
    const PatternHead& head = m->head();
    if (m->tints && head.yarns.size() > 1)
        for (const Yarn& yarn : head.yarns)
            key.yarnColours.push_back(yarn.colour);
    m->atlas.prepare(std::move(key), m->document.catalogue(), head, font());

    QPainter painter(viewport());
    painter.resetTransform();
    painter.scale(1 / ratio, 1 / ratio);
    const auto toDevice = [ratio](const QRect& logical) {
        return QRectF(logical.x() * ratio, logical.y() * ratio, logical.width() * ratio,
                      logical.height() * ratio)
            .toAlignedRect();
    };
    const QRect exposed = toDevice(event->rect());
    const bool fewPieces = event->region().rectCount() <= 16;
    for (const QRect& piece : event->region()) {
        const QRect device = fewPieces ? toDevice(piece) : exposed;
        for (const QRect& beside : QRegion(device) - QRegion(m->geometry.grid)) // cells are opaque
            painter.fillRect(beside, m->theme.window);
        m->paintCells(painter, device);
        m->paintTenthLines(painter, device);
        if (!fewPieces)
            break;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    m->paintOverlay(painter, exposed);
    m->paintFindings(painter, exposed);
    m->paintPointer(painter);
    m->paintMirrorLine(painter);
    m->paintGutters(painter, exposed);
    m->paintStamp(painter);
    m->paintRowLine(painter);
}

void Canvas::Parts::paintCells(QPainter& painter, const QRect& exposed)
{
    const Section* section_ = shown();
    const std::optional<Area> area = geometry.cellsIn(exposed);
    if (!section_ || !area)
        return;
    const int columns = area->lastColumn - area->firstColumn + 1;
    const int rows = shownRows.lineOf(area->lastRow + 1) - shownRows.lineOf(area->firstRow);
    const QSize size(columns * geometry.cell, rows * geometry.cell);
    if (cells.width() < size.width() || cells.height() < size.height())
        cells = QImage(size.expandedTo(cells.size()), QImage::Format_RGB32);
    for (int line = shownRows.lineOf(area->lastRow), top = 0; line >= shownRows.lineOf(area->firstRow);
         --line, top += geometry.cell) {
        const int at = shownRows.rowAt(line);
        atlas.paintRow(cells, top, *section_->rows[static_cast<std::size_t>(at)], area->firstColumn,
                       area->lastColumn, facts.resting(ledger(), at));
    }
    painted += static_cast<qint64>(columns) * rows;
    painter.save();
    painter.setClipRect(exposed & geometry.grid);
    painter.drawImage(geometry.cellRect(area->lastRow, area->lastColumn).topLeft(), cells,
                      QRect(QPoint(0, 0), size));
    painter.restore();
}

void Canvas::Parts::paintTenthLines(QPainter& painter, const QRect& exposed)
{
    const QRect seen = exposed & geometry.grid;
    const std::optional<Area> area = geometry.cellsIn(exposed);
    if (!area || seen.isEmpty())
        return;
    const int line = std::max(1, atlas.line());
    const int step = geometry.cell >= 5 ? 10 : 50;
    for (int column = area->firstColumn - 1; column <= area->lastColumn; ++column) {
        const int x = geometry.cellRect(0, column).left(); // the left side of the column
        if (column % step == 0)
            painter.fillRect(
                QRect(column == geometry.extent.columns ? x : x - line, seen.top(), line, seen.height()) &
                    seen,
                theme.tenthLine);
    }
    for (int at = area->firstRow; at <= area->lastRow + 1; ++at) {
        const int y = geometry.cellRect(at - 1, 1).top(); // the upper side of the row before
        if (at % step == 0 && at > 0)
            painter.fillRect(
                QRect(seen.left(), at == geometry.extent.rows ? y : y - line, seen.width(), line) & seen,
                theme.tenthLine);
    }
}

void Canvas::Parts::paintOverlay(QPainter& painter, const QRect& exposed)
{
    if (geometry.cell < leastForOverlay)
        return;
    const QPoint origin = geometry.origin();
    const double cell_ = geometry.cell;
    const QRect room = geometry.grid.adjusted(-2, -2, 2, 2);
    const QRectF wanted(QPointF((exposed & room).topLeft() - origin) / cell_,
                        QSizeF((exposed & room).size()) / cell_);
    const ShapeStyle style{theme, head(),                           origin,
                           cell_, std::max(1.0, std::floor(ratio)), canvas.font()};
    painter.save();
    painter.setClipRect(room);
    for (const Overlay::Piece& piece : overlay.pieces())
        if (piece.bounds.intersects(wanted))
            paintShape(painter, piece.shape, style);
    painter.restore();
}

void Canvas::Parts::paintFindings(QPainter& painter, const QRect& exposed)
{
    const std::optional<Area> area = geometry.cellsIn(exposed);
    if (!area || geometry.cell < 8)
        return;
    painter.save();
    painter.setClipRect(geometry.grid);
    painter.setPen(Qt::NoPen);
    for (int at = area->firstRow; at <= area->lastRow && at < facts.rows(); ++at)
        for (const FindingMark& mark : facts.at(at).findings) {
            if (mark.column < area->firstColumn || mark.column > area->lastColumn || shownRows.hides(at))
                continue;
            const QRectF cell_ = geometry.cellRect(at, mark.column);
            const double side = std::max(4.0, 0.28 * cell_.width());
            painter.setBrush(colourOf(theme, mark.severity));
            painter.drawPolygon(QPolygonF({cell_.topRight(), cell_.topRight() - QPointF(side, 0),
                                           cell_.topRight() + QPointF(0, side)}));
        }
    painter.restore();
}

std::vector<QRect> Canvas::Parts::hoverRects() const
{
    std::vector<QRect> rects;
    for (const CellSpan& parent : hover.parents)
        rects.push_back(geometry.cellRect(parent.at.row, parent.at.column, parent.width));
    if (hover.cell) {
        const int width = tool == CanvasTool::Paint || tool == CanvasTool::Area ? brushWidth() : 1;
        rects.push_back(geometry.cellRect(hover.cell->row, hover.cell->column, width));
        if (tool == CanvasTool::Marker || tool == CanvasTool::Turn)
            rects.push_back(geometry.cellRect(hover.cell->row, hover.boundary + 1, 2));
    }
    if (const auto twin = mirroredHover())
        rects.push_back(*twin);
    if (const QRect stamped = stampRect(); !stamped.isEmpty()) {
        rects.push_back(stamped.adjusted(-4, -4, 4, 4));
        if (stampGrowth().columns > 0) // with what is said of them, above or below it
            rects.push_back(QRect(0, stamped.top() - 2 * numbers.textHeight, viewSize().width(),
                                  stamped.height() + 4 * numbers.textHeight));
    }
    if (drag.kind == DragKind::Rectangle)
        rects.push_back(geometry.areaRect(areaMeant(drag.from, drag.now, drag.by)));
    return rects;
}

QRegion outline(const QRegion& cells, int thick)
{
    return cells - (cells.translated(thick, 0) & cells.translated(-thick, 0) & cells.translated(0, thick) &
                    cells.translated(0, -thick));
}

// Rectangles that touch have one outline.
void Canvas::Parts::paintSelection(QPainter& painter, int thin)
{
    QRegion cells_;
    for (const Area& area : selected)
        cells_ += geometry.areaRect(area);
    for (const QRect& part : cells_)
        painter.fillRect(part, washed(theme.accent, 36));
    for (const QRect& edge : outline(cells_, thin))
        painter.fillRect(edge, theme.accent);
}

void Canvas::Parts::paintPointer(QPainter& painter)
{
    const int thick = std::max(1, static_cast<int>(std::lround(2 * ratio)));
    const int thin = std::max(1, static_cast<int>(std::floor(ratio)));
    painter.save();
    painter.setClipRect(geometry.grid);
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintSelection(painter, thin);
    for (const CellSpan& parent : hover.parents) {
        const QRect around = geometry.cellRect(parent.at.row, parent.at.column, parent.width);
        painter.fillRect(around, washed(theme.accent, 46));
        frame(painter, around, theme.accent, thin);
    }
    if (drag.kind == DragKind::Move) {
        paintMoving(painter, thick);
    } else if (drag.kind == DragKind::Rectangle) {
        const bool rows = drag.tool == CanvasTool::RowRepeat;
        const QRect around =
            geometry.areaRect(areaMeant(drag.from, drag.now, rows ? SelectBy::Rows : drag.by));
        const QColor colour = drag.how == SelectHow::Take ? theme.softInk : theme.accent;
        painter.fillRect(around, washed(colour, 46));
        frame(painter, around, colour, thick);
    } else if (hover.cell && (tool == CanvasTool::Marker || tool == CanvasTool::Turn)) {
        const QRect cell_ =
            geometry.cellRect(hover.cell->row, hover.boundary); // its left side is the boundary
        const int boundary = drag.kind == DragKind::Marker ? drag.boundary : hover.boundary;
        const int x = geometry.cellRect(hover.cell->row, boundary).left();
        painter.fillRect(QRect(x - thick / 2, cell_.top(), thick, cell_.height()), theme.accent);
    } else if (hover.cell) {
        const bool brushes = tool == CanvasTool::Paint || tool == CanvasTool::Area;
        const int width = brushes ? brushWidth() : 1;
        const bool fits = hover.cell->column + width - 1 <= geometry.extent.columns;
        frame(painter, geometry.cellRect(hover.cell->row, hover.cell->column, width),
              fits ? washed(theme.accent, 150) : theme.error, thick);
    }
    if (chosenMarker)
        if (const Section* section_ = shown())
            if (const int at = rowIndex(*section_, chosenMarker->row); at >= 0) {
                const QRect cell_ = geometry.cellRect(at, chosenMarker->boundary);
                frame(painter, QRect(cell_.left() - 2 * thick, cell_.top(), 4 * thick, cell_.height()),
                      theme.accent, thin);
            }
    if (lit) {
        const QRect around = geometry.areaRect(*lit);
        painter.fillRect(around, washed(theme.accent, 46));
        frame(painter, around, theme.accent, thick);
    }
    if (flashed)
        frame(painter, geometry.areaRect(*flashed).adjusted(-thin, -thin, thin, thin), theme.warning, thick);
    if (geometry.inside(cursor)) {
        const QRect around = geometry.cellRect(cursor.row, cursor.column);
        if (canvas.hasFocus())
            frame(painter, around.adjusted(-thin, -thin, thin, thin), theme.accent, thick + thin);
        else
            frame(painter, around, theme.softInk, thin);
    }
    painter.restore();
}

} // namespace shawlwright::app
