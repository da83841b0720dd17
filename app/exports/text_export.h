// The written pattern as plain text, UTF-8: the form that every screen reader reads.
//
// Errors:  none that a pattern can cause.
#pragma once

#include "app/exports/export_options.h"

#include <QByteArray>

namespace shawlwright::app {

Result<QByteArray> textOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options);

} // namespace shawlwright::app
