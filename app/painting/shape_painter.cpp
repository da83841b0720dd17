#include "app/painting/shape_painter.h"

#include "app/document/text.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

QPointF placed(chart::Point point, QPointF origin, double scale)
{
    return origin + QPointF(point.x, point.y) * scale;
}

void paint(QPainter& painter, const chart::Fill& fill, const ShapeStyle& style)
{
    painter.fillPath(toPath(fill.path, style.origin, style.scale),
                     colourOf(style.theme, fill.ink, style.head, fill.yarn));
}

void paint(QPainter& painter, const chart::Stroke& stroke, const ShapeStyle& style)
{
    QPen pen(colourOf(style.theme, stroke.ink, style.head));
    pen.setWidthF(std::max(style.thinnest, stroke.width * style.scale));
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    if (stroke.dashed) {
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern({2.5, 2.0});
    }
    painter.strokePath(toPath(stroke.path, style.origin, style.scale), pen);
}

void paint(QPainter& painter, const chart::Text& text, const ShapeStyle& style)
{
    QFont font = style.font;
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(text.size * style.scale))));
    font.setWeight(text.bold ? QFont::DemiBold : QFont::Normal);
    const QString words = toQt(text.words);
    QPointF at = placed(text.at, style.origin, style.scale);
    if (text.align != chart::Align::Left) {
        const double width = QFontMetricsF(font, painter.device()).horizontalAdvance(words);
        at.rx() -= text.align == chart::Align::Right ? width : width / 2;
    }
    painter.setFont(font);
    painter.setPen(colourOf(style.theme, text.ink, style.head));
    painter.drawText(at, words);
}

QRectF boundsOf(const chart::Path& path)
{
    if (path.points.empty())
        return {};
    double left = path.points.front().x, right = left, top = path.points.front().y, bottom = top;
    for (const chart::Point& point : path.points) { // a curve stays within its handles
        left = std::min(left, point.x);
        right = std::max(right, point.x);
        top = std::min(top, point.y);
        bottom = std::max(bottom, point.y);
    }
    return {QPointF(left, top), QPointF(right, bottom)};
}

} // namespace

QPainterPath toPath(const chart::Path& path, QPointF origin, double scale)
{
    QPainterPath made;
    std::size_t next = 0;
    const auto point = [&] { return placed(path.points[next++], origin, scale); };
    for (const chart::Verb verb : path.verbs) {
        switch (verb) {
        case chart::Verb::Move:
            made.moveTo(point());
            break;
        case chart::Verb::Line:
            made.lineTo(point());
            break;
        case chart::Verb::Curve: {
            const QPointF first = point();
            const QPointF second = point();
            made.cubicTo(first, second, point());
            break;
        }
        case chart::Verb::Close:
            made.closeSubpath();
            break;
        }
    }
    return made;
}

void paintShape(QPainter& painter, const chart::Shape& shape, const ShapeStyle& style)
{
    std::visit([&](const auto& kind) { paint(painter, kind, style); }, shape);
}

void paintShapes(QPainter& painter, std::span<const chart::Shape> shapes, const ShapeStyle& style)
{
    for (const chart::Shape& shape : shapes)
        paintShape(painter, shape, style);
}

void paintDrawing(QPainter& painter, const chart::Drawing& drawing, const ShapeStyle& style)
{
    for (const chart::Group& group : drawing.groups)
        paintShapes(painter, group.shapes, style);
}

QRectF boundsOf(const chart::Shape& shape)
{
    if (const auto* fill = std::get_if<chart::Fill>(&shape))
        return boundsOf(fill->path);
    if (const auto* stroke = std::get_if<chart::Stroke>(&shape)) {
        const double half = stroke->width / 2;
        return boundsOf(stroke->path).adjusted(-half, -half, half, half);
    }
    const auto& text = std::get<chart::Text>(shape);
    const double width = 0.6 * text.size * static_cast<double>(text.words.size());
    const double left = text.align == chart::Align::Left    ? 0
                        : text.align == chart::Align::Right ? width
                                                            : width / 2;
    return {text.at.x - left, text.at.y - text.size, width, text.size * 1.3};
}

} // namespace shawlwright::app
