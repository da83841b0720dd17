// Walks a chart's shapes with a QPainter: screen, PDF and PNG all draw through this.
//
// Shape:   a point p of the chart lands at origin + scale * p.
// Units:   `scale` is painter units per chart unit (a cell's width); `thinnest` the least width of a line in
// painter
//          units. Font sizes are scaled from the shapes and are whole painter units.
#pragma once

#include "app/painting/theme.h"
#include "core/chart/shapes.h"

#include <QFont>
#include <QPainter>
#include <QPainterPath>
#include <QPointF>

#include <span>

namespace shawlwright::app {

struct ShapeStyle {
    const Theme& theme;
    const PatternHead& head; // for the colours of yarns
    QPointF origin;
    double scale = 24;
    double thinnest = 1;
    QFont font;
};

QPainterPath toPath(const chart::Path& path, QPointF origin, double scale);
void paintShape(QPainter& painter, const chart::Shape& shape, const ShapeStyle& style);
void paintShapes(QPainter& painter, std::span<const chart::Shape> shapes, const ShapeStyle& style);
void paintDrawing(QPainter& painter, const chart::Drawing& drawing, const ShapeStyle& style);

// Around what a shape inks, in chart units; a text's width is taken at 0.6 of its size per letter.
QRectF boundsOf(const chart::Shape& shape);

} // namespace shawlwright::app
