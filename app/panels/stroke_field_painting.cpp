#include "app/painting/shape_painter.h"
#include "app/panels/look.h"
#include "app/panels/stroke_field.h"
#include "app/panels/stroke_grid.h"

#include <QPainter>

#include <algorithm>
#include <utility>

namespace shawlwright::app {

void StrokeField::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(*this);
    const double size = cell();
    const int own = m_stitch.width();
    const QRectF paper(origin(), QSizeF(own * size, size));
    painter.fillRect(paper, theme.paper);
    if (columns() > own)
        painter.fillRect(QRectF(paper.topRight(), QSizeF((columns() - own) * size, size)), theme.noStitch);

    const int every = size / gridSteps >= 5 ? 1 : size / gridSteps >= 2.5 ? 2 : 5;
    painter.setPen(Qt::NoPen);
    painter.setBrush(mixed(theme.ink, theme.paper, 0.35));
    for (int across = 0; across <= columns() * gridSteps; across += every)
        for (int down = 0; down <= gridSteps; down += every)
            painter.drawRect(QRectF(toPixels({static_cast<double>(across) / gridSteps, levelAt(down)}) - QPointF(0.5, 0.5), QSizeF(1, 1)));
    painter.setPen(QPen(mixed(theme.ink, theme.paper, 0.5), 1, Qt::DashLine));
    for (const double line : {chart::headLine, chart::footLine})
        painter.drawLine(toPixels({0, line}), toPixels({static_cast<double>(own), line}));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.tenthLine, 1));
    for (int i = 1; i < columns(); ++i)
        painter.drawLine(toPixels({static_cast<double>(i), 0}), toPixels({static_cast<double>(i), 1}));
    painter.drawRect(paper);
    painter.setPen(QPen(hasFocus() ? theme.accent : theme.tenthLine, hasFocus() ? 2 : 1));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);

    static const PatternHead noYarns;
    Theme faint = theme;
    faint.ink = mixed(theme.ink, theme.paper, 0.16);
    paintShapes(painter, chart::symbolOf(m_stitch).shapes, ShapeStyle{faint, noYarns, origin(), size, 1, font()});

    const auto stroke = [&](const chart::Path& path, const QColor& colour) {
        painter.setPen(QPen(colour, 0.075 * size, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(toPath(path, origin(), size));
    };
    for (std::size_t i = 0; i < m_strokes.size(); ++i) {
        const auto& points = m_strokes[i].points;
        const bool reaches = std::any_of(points.begin(), points.end(), [own](chart::Point p) { return p.x > own; });
        stroke(m_strokes[i], static_cast<int>(i) == m_held ? theme.accent : reaches ? theme.error : theme.ink);
    }
    if (m_pressed && m_dragging)
        stroke(chart::Path().move(*m_pressed).line(m_cross), theme.accent);
    if (m_open) {
        chart::Path going = *m_open;
        going.line(m_cross);
        stroke(going, theme.accent);
    }
    if (hasFocus()) {
        const QPointF at = toPixels(m_cross);
        for (const auto& [colour, width] : {std::pair{theme.paper, 4.0}, {theme.accent, 2.0}}) {
            painter.setPen(QPen(colour, width));
            painter.drawLine(at - QPointF(9, 0), at + QPointF(9, 0));
            painter.drawLine(at - QPointF(0, 9), at + QPointF(0, 9));
        }
    }
}

} // namespace shawlwright::app
