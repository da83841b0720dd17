// The colours of window and chart, light and dark, and which ink of a chart's shape has which of them.
//
// Source:  our own; text on its ground has a contrast of at least 4.5 : 1, marks 3 : 1 (WCAG 2.2, 1.4.3
// and 1.4.11).
#pragma once

#include "core/chart/shapes.h"
#include "core/pattern/pattern.h"

#include <QColor>
#include <QPalette>

namespace shawlwright::app {

struct Theme {
    QColor window, paper, ink, softInk, line, tenthLine;
    QColor edge; // of fields and buttons
    QColor accent, wash, noStitch, error, warning, note;
    bool dark = false;
    bool operator==(const Theme&) const = default;
};

Theme lightTheme(); // exports use this one, always
Theme darkTheme();
Theme themeFor(const QPalette& palette); // by whether its window is darker than its text

QColor mixed(const QColor& over, const QColor& ground, double share); // share of `over`, opaque
QColor yarnColour(const PatternHead& head, YarnId yarn);              // grey where there is no such yarn
QColor colourOf(const Theme& theme, chart::Ink ink, const PatternHead& head, YarnId yarn = {});

} // namespace shawlwright::app
