// Exports to a file: the kind by its ending, the file whole or not at all.
//
// Errors:  a sentence that says what was not written and why; whatever was there before is then untouched.
#pragma once

#include "app/exports/export_options.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <string_view>

namespace shawlwright::app {

enum class ExportKind { Svg, Pdf, Png, Text };

std::optional<ExportKind> exportKind(std::string_view ending);  // "svg", "pdf", "png", "txt"
std::string exportEndings();                                    // ".svg, .pdf, .png and .txt"
bool needsFonts(ExportKind kind, const ExportOptions& options); // and with them a QGuiApplication

Result<QByteArray> exported(const Pattern& pattern, const Catalogue& catalogue, ExportKind kind,
                            const ExportOptions& options);

// `source` is the pattern's own file, which is never overwritten, whatever name or link leads to it; may be
// empty.
std::optional<QString> exportTo(const QString& path, const QString& source, const Pattern& pattern,
                                const Catalogue& catalogue, const ExportOptions& options);

// The part of exportTo that comes after: writes through a device or pipe as it is, beside and renamed for a
// file.
std::optional<QString> writeExported(const QString& path, const QByteArray& bytes);
std::optional<QString> refusedTarget(const QString& path, const QString& source);

} // namespace shawlwright::app
