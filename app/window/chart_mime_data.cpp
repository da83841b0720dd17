#include "app/window/chart_mime_data.h"

#include "app/exports/export_file.h"
#include "app/exports/png_export.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

const QString svgFormat = QStringLiteral("image/svg+xml");
const QString pngFormat = QStringLiteral("image/png");

constexpr int usualDpi = 200;
constexpr int leastDpi = 24;              // below it symbols can't be told apart
constexpr double mostPixelsCopied = 24e6; // about 100 MB while it is painted

// 0: none is good enough.
int dpiFor(const Area& part, double cellMm)
{
    constexpr int besideIt = 12; // cells' room for numbers and repeats
    const double wide = (part.lastColumn - part.firstColumn + 1 + besideIt) * cellMm / 25.4;
    const double high = (part.lastRow - part.firstRow + 1 + besideIt) * cellMm / 25.4;
    const double most =
        std::min(std::sqrt(mostPixelsCopied / (wide * high)), 0.9 * mostPixelsASide / std::max(wide, high));
    const int dpi = std::min(usualDpi, static_cast<int>(most));
    return dpi < leastDpi ? 0 : dpi;
}

} // namespace

ChartMimeData::ChartMimeData(const Pattern& pattern, const Catalogue& catalogue, SectionId section,
                             const Areas& part, RunChoice choice, const QString& words, int number)
    : m_pattern(pattern), m_catalogue(catalogue)
{
    m_options.choice = choice;
    m_options.section = section;
    m_options.part = part;
    m_options.dpi = dpiFor(around(part).value_or(Area{}), m_options.cellMm);
    setText(words);
    setData(ownFormat(), QByteArray::number(number));
}

QString ChartMimeData::ownFormat()
{
    return QStringLiteral("application/x-shawlwright-stitches");
}

QStringList ChartMimeData::formats() const
{
    QStringList formats = QMimeData::formats();
    formats << svgFormat;
    if (hasPicture())
        formats << pngFormat;
    return formats;
}

bool ChartMimeData::hasFormat(const QString& format) const
{
    return formats().contains(format);
}

QVariant ChartMimeData::retrieveData(const QString& format, QMetaType type) const
{
    const bool svg = format == svgFormat;
    if (!svg && !(format == pngFormat && hasPicture()))
        return QMimeData::retrieveData(format, type);
    QByteArray& made = svg ? m_svg : m_png;
    if (made.isEmpty()) {
        const auto bytes = exported(m_pattern, m_catalogue, svg ? ExportKind::Svg : ExportKind::Png, m_options);
        if (bytes.ok())
            made = bytes.value();
    }
    return made;
}

} // namespace shawlwright::app
