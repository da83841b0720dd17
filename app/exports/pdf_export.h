// The printed pattern as PDF: what is needed, the charts on whole rows and columns, their key, the
// abbreviations, and the same rows in words as real text.
//
// Shape:   page 1 says what is needed and where everything is; then charts, key, abbreviations, words, in
// that order.
//          A chart larger than the page is cut into sheets in the order they are worked, numbers repeated on
//          each.
// Units:   A4 or Letter; the cell size in millimetres is kept, or made a little smaller where that saves a
// sheet. Errors:  the fault's message is a sentence. Needs a QGuiApplication.
#pragma once

#include "app/exports/export_options.h"

#include <QByteArray>

namespace shawlwright::app {

Result<QByteArray> pdfOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options);

} // namespace shawlwright::app
