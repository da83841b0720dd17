// The charts as a PNG picture at a given number of dots per inch.
//
// Errors:  a picture beyond the limits is refused before any memory is asked for; the sentence tells the size
// wanted,
//          the limit and the dots per inch that fit. Needs a QGuiApplication.
#pragma once

#include "app/exports/export_options.h"

#include <QByteArray>

namespace shawlwright::app {

inline constexpr int mostPixelsASide = 32767;
inline constexpr double mostPixels = 400e6;

Result<QByteArray> pngOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options);

} // namespace shawlwright::app
