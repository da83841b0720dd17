#include "app/exports/export_file.h"

#include "app/document/checked_save.h"
#include "app/document/text.h"
#include "app/exports/pdf_export.h"
#include "app/exports/png_export.h"
#include "app/exports/svg_export.h"
#include "app/exports/text_export.h"
#include "core/base/text.h"
#include "core/pattern/one_size.h"

#include <QFile>
#include <QFileInfo>

#include <filesystem>

namespace shawlwright::app {

std::optional<ExportKind> exportKind(std::string_view ending)
{
    const std::string low = lowered(ending);
    if (low == "svg")
        return ExportKind::Svg;
    if (low == "pdf")
        return ExportKind::Pdf;
    if (low == "png")
        return ExportKind::Png;
    if (low == "txt")
        return ExportKind::Text;
    return std::nullopt;
}

std::string exportEndings()
{
    return ".svg, .pdf, .png and .txt";
}

bool needsFonts(ExportKind kind, const ExportOptions& options)
{
    return kind == ExportKind::Pdf || kind == ExportKind::Png ||
           (kind == ExportKind::Svg && options.lettering == Lettering::Outlines);
}

Result<QByteArray> exported(const Pattern& whole, const Catalogue& catalogue, ExportKind kind,
                            const ExportOptions& wishes)
{
    ExportOptions options = wishes;
    const Pattern pattern = options.everySize ? whole : ofOneSize(whole, options.choice.size);
    if (!options.everySize)
        options.choice.size = 0; // the one that is left
    switch (kind) {
    case ExportKind::Svg:
        return svgOf(pattern, catalogue, options);
    case ExportKind::Pdf:
        return pdfOf(pattern, catalogue, options);
    case ExportKind::Png:
        return pngOf(pattern, catalogue, options);
    case ExportKind::Text:
        break;
    }
    return textOf(pattern, catalogue, options);
}

std::optional<QString> refusedTarget(const QString& path, const QString& source)
{
    std::error_code error;
    const bool same =
        !source.isEmpty() && std::filesystem::equivalent(QFile::encodeName(path).toStdString(),
                                                         QFile::encodeName(source).toStdString(), error);
    if (same && !error)
        return QStringLiteral(
                   "“%1” is the pattern itself; an export never overwrites it. Choose another name.")
            .arg(path);
    return std::nullopt;
}

std::optional<QString> writeExported(const QString& path, const QByteArray& bytes)
{
    const QFileInfo target(path);
    if (!target.exists() || target.isFile() || target.isDir())
        return saveChecked(path, bytes);
    QFile device(path);
    if (!device.open(QIODevice::WriteOnly | QIODevice::Unbuffered) || device.write(bytes) != bytes.size() ||
        !device.flush())
        return QStringLiteral("“%1” could not be written: %2.").arg(path, device.errorString());
    return std::nullopt;
}

std::optional<QString> exportTo(const QString& path, const QString& source, const Pattern& pattern,
                                const Catalogue& catalogue, const ExportOptions& options)
{
    const auto kind = exportKind(fromQt(QFileInfo(path).suffix()));
    if (!kind)
        return QStringLiteral(
                   "The name's ending tells what is written, and “%1” has none that is known: use %2.")
            .arg(QFileInfo(path).fileName(), toQt(exportEndings()));
    if (auto refused = refusedTarget(path, source))
        return refused;
    const auto bytes = exported(pattern, catalogue, *kind, options);
    if (!bytes.ok())
        return toQt(bytes.fault().message);
    return writeExported(path, bytes.value());
}

} // namespace shawlwright::app
