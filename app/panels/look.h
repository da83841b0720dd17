// How the window is dressed: palette, style sheet and type, made from a theme.
//
// Shape:   widgets that paint for themselves ask themeOf(*this), so that a change of theme reaches them by
// their palette. Units:   pixels in the style sheet. The text is as large as the desktop's, at least 13 px, times the
// person's own per cent.
#pragma once

#include "app/painting/theme.h"

#include <QFont>
#include <QPalette>
#include <QString>

class QWidget;

namespace shawlwright::app {

Theme themeOf(const QWidget& widget);

QPalette paletteOf(const Theme& theme);
QString styleSheetOf(const Theme& theme, const QFont& font);
QFont windowFont(int textPercent = 100); // Inter, else the desktop's sans
QFont smaller(QFont font);               // 11 px where the text has 13, for what stands beside
QFont heading(QFont font); // weight 600

constexpr int leastTextPercent = 100, mostTextPercent = 250, textPercentStep = 25;
void dress(const Theme& theme, int textPercent = 100); // the whole application

} // namespace shawlwright::app
