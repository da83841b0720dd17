// The one font of everything that is printed or drawn for others: it never follows the desktop.
//
// Units:   pixelSize is in the painter's own units. Needs a QGuiApplication.
#pragma once

#include <QFont>

namespace shawlwright::app {

QFont documentFont(int pixelSize, bool bold = false);

} // namespace shawlwright::app
