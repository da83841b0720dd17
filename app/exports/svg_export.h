// The charts as SVG 1.1: flat paths in millimetres, one group per row with a title for those who cannot see
// it.
//
// Shape:   <g id="row-N"> holds chart row N, from 1 at the bottom; with several charts the ids begin with
// "section-S-".
//          No style sheets, no <symbol>, no transforms: page layout programs place it as it is.
// Units:   width, height and viewBox in millimetres, three decimals.
// Errors:  the fault's message is a sentence.
#pragma once

#include "app/exports/export_options.h"

#include <QByteArray>

namespace shawlwright::app {

Result<QByteArray> svgOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options);

} // namespace shawlwright::app
