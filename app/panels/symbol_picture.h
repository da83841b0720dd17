// A stitch's symbol for lists and dialogs: the chart's own shapes in a small picture.
#pragma once

#include "app/painting/theme.h"
#include "core/stitches/stitch.h"

#include <QRectF>

class QPainter;

namespace shawlwright::app {

// Draws the symbol centred in the rectangle, as large as fits; a wide one is shrunk to the width.
void drawSymbol(QPainter& painter, const QRectF& into, const Stitch& stitch, const Theme& theme);

} // namespace shawlwright::app
