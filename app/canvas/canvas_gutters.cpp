// The frozen numbers around the grid: row labels and yarns where a row starts, counts, findings, row repeats,
// stitches.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/shown_numbers.h"
#include "app/document/text.h"
#include "core/base/text.h"
#include "core/pattern/alike_yarns.h"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

void Canvas::Parts::paintGutters(QPainter& painter, const QRect& exposed)
{
    const std::optional<Area> seen = geometry.cellsIn(geometry.grid);
    if (!seen)
        return;
    painter.save();
    painter.setFont(gutterFont());
    const QFontMetrics metrics(gutterFont());
    const QRect grid = geometry.grid;

    if (exposed.top() < grid.top()) {
        painter.setPen(theme.softInk);
        const int top = grid.top() - geometry.gutters.top, right = grid.right() + 1;
        painter.drawText(QRect(right, top, numbers.countEnd, geometry.gutters.top),
                         Qt::AlignRight | Qt::AlignVCenter, Canvas::tr("sts"));
        painter.drawText(QRect(right + numbers.numberAt, top, geometry.gutters.right, geometry.gutters.top),
                         Qt::AlignLeft | Qt::AlignVCenter, Canvas::tr("row"));
    }
    if (exposed.bottom() > grid.bottom() && !out) // as knitted a column is no stitch's number
        paintStitchNumbers(painter);

    // A number may stand half beside its row where rows are low, but not over the header of a scrolled chart.
    const int above = geometry.scroll.y() > 0 ? 0 : metrics.height() / 2;
    const int below = geometry.scroll.y() < geometry.farthest.y() ? 0 : metrics.height() / 2;
    painter.setClipRect(QRect(0, grid.top() - above, viewSize().width(), grid.height() + above + below));
    for (int at = seen->firstRow; at <= seen->lastRow && at < facts.rows(); ++at)
        if (geometry.rowRect(at).top() <= exposed.bottom() + metrics.height() &&
            geometry.rowRect(at).bottom() >= exposed.top() - metrics.height() && !shownRows.hides(at))
            paintRowNumbers(painter, at, metrics.height());
    if (exposed.left() < grid.left())
        paintBrackets(painter);
    painter.restore();
}

void Canvas::Parts::paintRowNumbers(QPainter& painter, int at, int high)
{
    const Row* held = row(at);
    if (!held)
        return;
    const auto pixels = [this](double logical) { return static_cast<int>(std::lround(logical * ratio)); };
    const RowFact& fact = facts.at(at);
    const QRect band = geometry.rowRect(at);
    const int left = geometry.grid.left(), right = geometry.grid.right() + 1;
    const bool fromRight = held->side == Side::RS;

    // The yarn, where the row starts.
    const QColor colour = yarnColour(head(), held->yarn);
    const int stripAt = fromRight ? right + pixels(4) : left - pixels(9);
    if (geometry.cell < 8) {
        painter.fillRect(stripAt, band.top(), pixels(5), band.height(), colour);
    } else {
        const int gap = std::max(1, geometry.cell / 12);
        const QRectF strip(stripAt, band.top() + gap, pixels(5), band.height() - 2 * gap);
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        if (contrastRatio(colour.rgb() & 0xFFFFFF, theme.window.rgb() & 0xFFFFFF) < leastContrast) {
            painter.setPen(QPen(theme.softInk, std::max(1.0, std::floor(ratio)))); // a white yarn needs an edge
            painter.drawRoundedRect(strip.adjusted(0.5, 0.5, -0.5, -0.5), pixels(1.5), pixels(1.5));
        } else {
            painter.drawRoundedRect(strip, pixels(1.5), pixels(1.5));
        }
    }

    const QRect tall = band.adjusted(0, -high, 0, high);
    const NumberedRows rows{facts.rows(), shownRows.hidesAny(),
                            [this](int of) { return shownRows.hidesAny() ? shownRows.lineOf(of) : of + 1; },
                            [this](int of) { const Row* there = row(of); return there ? there->side : Side::RS; }};
    if (labelShown(rows, at, geometry.cell, high)) {
        QFont bold = gutterFont();
        bold.setWeight(QFont::DemiBold);
        painter.setFont(bold);
        painter.setPen(at == cursor.row ? theme.accent : theme.ink);
        if (fromRight)
            painter.drawText(
                QRect(right + numbers.numberAt, tall.top(), geometry.gutters.right, tall.height()),
                Qt::AlignLeft | Qt::AlignVCenter, toQt(fact.label));
        else
            painter.drawText(QRect(left - pixels(16) - geometry.gutters.left, tall.top(),
                                   geometry.gutters.left, tall.height()),
                             Qt::AlignRight | Qt::AlignVCenter, toQt(fact.label));
        painter.setFont(gutterFont());
    }
    if (fact.before >= 0 && countShown(rows, at, geometry.cell, high)) {
        painter.setPen(theme.softInk);
        QString count = QString::number(fact.before);
        if (fact.unsure)
            count.prepend(QLatin1Char('~')); // it rests on a row that doesn't come out
        painter.drawText(QRect(right, tall.top(), numbers.countEnd, tall.height()),
                         Qt::AlignRight | Qt::AlignVCenter, count);
        painter.setPen(fact.after != fact.before ? theme.accent : theme.softInk);
        painter.drawText(QRect(right + numbers.changeAt, tall.top(), geometry.gutters.right, tall.height()),
                         Qt::AlignLeft | Qt::AlignVCenter, toQt(fact.afterInWords()));
    }

    paintHiddenMark(painter, at);

    // The worst finding, between the number and the count; that of a hidden row stands with the row below it.
    std::optional<Severity> worst = fact.worst();
    for (int above = at + 1; above < facts.rows() && shownRows.hides(above); ++above)
        if (const auto hidden = facts.at(above).worst(); hidden && (!worst || *hidden < *worst))
            worst = hidden;
    if (worst) {
        const double size = std::clamp<double>(geometry.cell, 3, pixels(8));
        const double x = right + numbers.findingAt;
        const double y = band.center().y();
        painter.setPen(Qt::NoPen);
        painter.setBrush(*worst == Severity::Error     ? theme.error
                         : *worst == Severity::Warning ? theme.warning
                                                       : theme.note);
        if (*worst == Severity::Note)
            painter.drawEllipse(QPointF(x + size / 2, y), size / 2, size / 2);
        else
            painter.drawPolygon(QPolygonF({QPointF(x, y + size / 2), QPointF(x + size, y + size / 2),
                                           QPointF(x + size / 2, y - size / 2)}));
    }
}

void Canvas::Parts::paintStitchNumbers(QPainter& painter)
{
    const std::optional<Area> seen = geometry.cellsIn(geometry.grid);
    const QFontMetrics metrics(gutterFont());
    const QRect grid = geometry.grid;
    const int widest = metrics.horizontalAdvance(QString::number(seen->lastColumn) + QStringLiteral("  "));
    const int step = std::max(5, stepFor(geometry.cell, widest));
    painter.save();
    painter.setClipRect(grid.adjusted(-widest, 0, widest, geometry.gutters.bottom));
    for (int column = seen->firstColumn; column <= seen->lastColumn; ++column) {
        if (column % step != 0 && column != 1)
            continue;
        painter.setPen(column == cursor.column ? theme.accent : theme.softInk);
        const QRect cell_ = geometry.cellRect(0, column);
        painter.drawText(
            QRect(cell_.center().x() - widest, grid.bottom() + 1, 2 * widest, geometry.gutters.bottom),
            Qt::AlignCenter, QString::number(column));
    }
    painter.restore();
}

void Canvas::Parts::paintBrackets(QPainter& painter)
{
    const auto pixels = [this](double logical) { return static_cast<int>(std::lround(logical * ratio)); };
    const int outermost = geometry.grid.left() - geometry.gutters.left + depths(brackets) * numbers.bracket;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    const int line = std::max(1, pixels(1.5));
    for (const BracketPlace& place : brackets) {
        const QRect rows = geometry.rowRect(place.lastRow) | geometry.rowRect(place.firstRow);
        const int x = outermost - place.depth * numbers.bracket - pixels(4);
        painter.fillRect(x, rows.top() + line, line, rows.height() - 2 * line, theme.softInk);
        painter.fillRect(x, rows.top() + line, pixels(4), line, theme.softInk);
        painter.fillRect(x, rows.bottom() - 2 * line, pixels(4), line, theme.softInk);
        const QRect seen = rows & geometry.grid;
        painter.setPen(theme.ink);
        painter.drawText(QRect(x - numbers.bracket + pixels(3), seen.center().y() - numbers.textHeight, numbers.bracket - pixels(5),
                               2 * numbers.textHeight),
                         Qt::AlignRight | Qt::AlignVCenter, toQt(place.words));
    }
    painter.restore();
}

QString Canvas::Parts::findingsInWords(QPointF device) const
{
    const QRect grid = geometry.grid;
    if (device.y() < grid.top() || device.y() > grid.bottom())
        return {};
    const At at = geometry.cellUnder(device);
    QString words;
    for (const Finding& finding : findings()) {
        const bool hidden = finding.row > at.row && finding.row <= shownRows.lastWith(at.row);
        const bool here = finding.section == section && (finding.row == at.row || hidden);
        const bool inCell = !hidden && grid.contains(device.toPoint());
        if (here && (!inCell || finding.column == at.column || finding.column == 0))
            words += (words.isEmpty() ? QString() : QStringLiteral("\n")) + toQt(finding.message);
    }
    return words;
}

std::optional<int> Canvas::Parts::rowBesideGrid(QPointF device) const
{
    const QRect grid = geometry.grid;
    const bool beside = device.x() < grid.left() || device.x() > grid.right();
    const At at = geometry.cellUnder(device);
    if (!beside || device.y() < grid.top() || device.y() > grid.bottom() || at.row < 0 ||
        at.row >= geometry.extent.rows)
        return std::nullopt;
    return at.row;
}

std::optional<int> Canvas::Parts::columnBesideGrid(QPointF device) const
{
    const QRect grid = geometry.grid;
    const bool beside = (device.y() < grid.top() && device.y() >= grid.top() - geometry.gutters.top) ||
                        (device.y() > grid.bottom() && device.y() <= grid.bottom() + geometry.gutters.bottom);
    const At at = geometry.cellUnder(device);
    if (!beside || device.x() < grid.left() || device.x() > grid.right() || at.column < 1 ||
        at.column > geometry.extent.columns)
        return std::nullopt;
    return at.column;
}

std::optional<int> Canvas::Parts::bracketAt(QPointF device) const
{
    const std::optional<int> at = rowBesideGrid(device);
    if (!at || device.x() > geometry.grid.left())
        return std::nullopt;
    const int wide = numbers.bracket;
    const int fromOutside = geometry.grid.left() - geometry.gutters.left + depths(brackets) * wide;
    if (device.x() >= fromOutside)
        return std::nullopt;
    const int depth = static_cast<int>((fromOutside - device.x()) / wide);
    for (const BracketPlace& place : brackets)
        if (place.depth == depth && *at >= place.firstRow && *at <= place.lastRow)
            return place.index;
    return std::nullopt;
}

} // namespace shawlwright::app
