#include "app/panels/symbol_picture.h"

#include "app/painting/shape_painter.h"
#include "core/chart/symbols.h"

#include <QPainter>

#include <algorithm>

namespace shawlwright::app {

void drawSymbol(QPainter& painter, const QRectF& into, const Stitch& stitch, const Theme& theme)
{
    const chart::Symbol symbol = chart::symbolOf(stitch);
    const double scale = std::min(into.width() / symbol.width, into.height());
    const QPointF origin(into.center().x() - scale * symbol.width / 2, into.center().y() - scale / 2);
    static const PatternHead noYarns; // a symbol alone has no yarn colour
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintShapes(painter, symbol.shapes, ShapeStyle{theme, noYarns, origin, scale, 1.4, painter.font()});
    painter.restore();
}

} // namespace shawlwright::app
