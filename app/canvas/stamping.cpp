// Motifs that are stamped, and shown where they would lie.
#include "app/canvas/canvas_parts.h"
#include "core/edits/motifs.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

void Canvas::setStamp(std::optional<Motif> motif)
{
    endStroke();
    m->stamp = std::move(motif);
    if (m->tool == CanvasTool::Stamp)
        m->repaintAll();
}

At Canvas::Parts::stampPlace() const
{
    return hover.cell.value_or(cursor);
}

QRect Canvas::Parts::stampRect() const
{
    if (tool != CanvasTool::Stamp || !stamp || out)
        return {};
    const At at = stampPlace();
    return geometry.areaRect(Area{at.row, at.row + static_cast<int>(stamp->rows.size()) - 1, at.column,
                                  at.column + stamp->columns - 1});
}

Extent Canvas::Parts::stampGrowth() const
{
    if (!stamp || !geometry.inside(stampPlace()))
        return {};
    const Extent room = extent();
    return {std::max(0, stampPlace().row + static_cast<int>(stamp->rows.size()) - room.rows),
            std::max(0, stampPlace().column + stamp->columns - 1 - room.columns)};
}

// The motif where it would be stamped, on a ground of its own, so that nothing shows through its stitches.
// Where it reaches over the edge the rows and columns that will come are seen, too, over the numbers beside
// the chart.
void Canvas::Parts::paintStamp(QPainter& painter)
{
    const QRect around = stampRect();
    if (around.isEmpty() || !geometry.inside(stampPlace()))
        return;
    const int thick = std::max(1, static_cast<int>(std::lround(2 * ratio)));
    painter.save();
    painter.setClipRect(stampRoom());
    painter.setRenderHint(QPainter::Antialiasing, false);
    QImage picture(stamp->columns * geometry.cell, geometry.cell, QImage::Format_RGB32);
    const std::vector<bool> nothingRests(static_cast<std::size_t>(stamp->columns));
    QColor tint = theme.accent;
    tint.setAlpha(36);
    const Extent room = extent();
    for (std::size_t row = 0; row < stamp->rows.size(); ++row) {
        const int onto = stampPlace().row + static_cast<int>(row);
        if (shownRows.hides(onto))
            continue;
        Row motifRow;
        motifRow.cells = stamp->rows[row];
        atlas.paintRow(picture, 0, motifRow, 1, stamp->columns, nothingRests);
        const int top = geometry.cellRect(onto, 1).top();
        for (int column = 1; column <= stamp->columns; ++column) {
            const bool comes = onto >= room.rows || stampPlace().column + column - 1 > room.columns;
            if (!comes && cellAt(motifRow, column).stitch == noStitch)
                continue;
            const int x = (stamp->columns - column) * geometry.cell;
            const QRect onView(around.left() + x, top, geometry.cell, geometry.cell);
            painter.drawImage(onView.topLeft(), picture, QRect(x, 0, geometry.cell, geometry.cell));
            painter.fillRect(onView, tint);
        }
    }
    painter.setPen(QPen(theme.accent, thick));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(around.adjusted(0, 0, -1, -1));
    paintStampGrowth(painter, around & stampRoom());
    painter.restore();
}

// Where the chart's edge is in view there is room beyond it.
QRect Canvas::Parts::stampRoom() const
{
    QRect room = geometry.grid;
    if (geometry.scroll.x() == 0)
        room.setLeft(0);
    if (geometry.scroll.y() == 0)
        room.setTop(0);
    return room;
}

// There isn't always room for all columns that will come.
void Canvas::Parts::paintStampGrowth(QPainter& painter, const QRect& seen)
{
    const int columns = stampGrowth().columns;
    if (columns == 0 || seen.isEmpty())
        return;
    const QString words = columns == 1 ? Canvas::tr("+1 column") : Canvas::tr("+%1 columns").arg(columns);
    painter.setFont(gutterFont());
    const QFontMetrics metrics(painter.font());
    const int pad = static_cast<int>(std::lround(4 * ratio));
    QRect chip(0, 0, metrics.horizontalAdvance(words) + 2 * pad, metrics.height() + pad);
    chip.moveBottomLeft(QPoint(seen.left(), seen.top() - 1));
    if (chip.top() < stampRoom().top())
        chip.moveTop(seen.bottom() + 1);
    painter.setClipping(false);
    painter.fillRect(chip, theme.accent);
    painter.setPen(theme.paper);
    painter.drawText(chip, Qt::AlignCenter, words);
}

bool Canvas::Parts::stampAt(At at)
{
    if (!stamp) {
        Q_EMIT canvas.told(Canvas::tr("No motif is chosen. Choose one among the motifs, or save the selected "
                                      "stitches as one."));
        return false;
    }
    const Extent before = extent();
    if (!perform(stampMotif(document.pattern(), document.catalogue(), section, at, *stamp)))
        return false;
    const Extent now = extent();
    const bool wider = now.columns > before.columns, higher = now.rows > before.rows;
    if (wider && higher)
        Q_EMIT canvas.told(
            Canvas::tr("The section is %1 columns wide and %2 rows high now.").arg(now.columns).arg(now.rows));
    else if (wider)
        Q_EMIT canvas.told(Canvas::tr("The section is %1 columns wide now.").arg(now.columns));
    else if (higher)
        Q_EMIT canvas.told(Canvas::tr("The section is %1 rows high now.").arg(now.rows));
    return true;
}

} // namespace shawlwright::app
