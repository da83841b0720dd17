// How the window is dressed: palette, style sheet and type, made from a theme.
//
// Shape:   widgets that paint for themselves ask themeOf(*this), so that a change of theme reaches them by
// their palette. Units:   pixels in the style sheet.
#pragma once

#include "app/painting/theme.h"

#include <QFont>
#include <QPalette>
#include <QString>

class QWidget;

namespace shawlwright::app {

Theme themeOf(const QWidget& widget);

QPalette paletteOf(const Theme& theme);
QString styleSheetOf(const Theme& theme);
QFont windowFont();        // Inter 13 px, else the desktop's sans
QFont smaller(QFont font); // 11 px, for what stands beside
QFont heading(QFont font); // weight 600

void dress(const Theme& theme); // the whole application

} // namespace shawlwright::app
