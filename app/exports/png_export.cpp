#include "app/exports/png_export.h"

#include "app/document/text.h"
#include "app/exports/chart_sheet.h"
#include "app/exports/document_font.h"
#include "app/painting/shape_painter.h"
#include "core/base/text.h"

#include <QBuffer>
#include <QImage>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

double pixels(double mm, double dpi)
{
    return std::ceil(mm * dpi / 25.4);
}

std::string inThousands(double whole)
{
    std::string digits = toText(static_cast<int>(std::min(whole, 2e9)));
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), 1, ',');
    return digits;
}

std::optional<Fault> tooLarge(const ChartSheet& sheet, int dpi)
{
    const double width = pixels(sheet.widthMm, dpi);
    const double height = pixels(sheet.heightMm, dpi);
    if (width <= mostPixelsASide && height <= mostPixelsASide && width * height <= mostPixels)
        return std::nullopt;
    int fits = dpi;
    while (fits > 1 && (pixels(std::max(sheet.widthMm, sheet.heightMm), fits) > mostPixelsASide ||
                        pixels(sheet.widthMm, fits) * pixels(sheet.heightMm, fits) > mostPixels))
        --fits;
    return Fault{{},
                 {},
                 "The picture would be " + inThousands(width) + " by " + inThousands(height) + " pixels at " +
                     toText(dpi) + " dots per inch; the limit is " + inThousands(mostPixelsASide) +
                     " pixels a side and " + inThousands(mostPixels) + " in all. " + toText(fits) +
                     " dots per inch fit; or export one section, or an SVG, which has no such limit."};
}

} // namespace

Result<QByteArray> pngOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options)
{
    const auto made = chartSheet(pattern, catalogue, options);
    if (!made.ok())
        return made.fault();
    const ChartSheet& sheet = made.value();
    if (auto fault = tooLarge(sheet, options.dpi))
        return *fault;

    const double perMm = options.dpi / 25.4;
    QImage image(static_cast<int>(pixels(sheet.widthMm, options.dpi)),
                 static_cast<int>(pixels(sheet.heightMm, options.dpi)), QImage::Format_RGB32);
    if (image.isNull())
        return Fault{{},
                     {},
                     "There is not enough memory for a picture of " + toText(image.width()) + " by " +
                         toText(image.height()) + " pixels; choose fewer dots per inch."};
    image.setDotsPerMeterX(qRound(options.dpi / 0.0254));
    image.setDotsPerMeterY(qRound(options.dpi / 0.0254));
    const Theme theme = lightTheme();
    image.fill(theme.paper);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const PlacedChart& chart : sheet.charts) {
        painter.setPen(theme.ink);
        painter.setFont(documentFont(std::max(1, qRound(sheetTitleMm * perMm)), true));
        painter.drawText(chart.titleAt * perMm, toQt(chart.title));
        paintDrawing(
            painter, chart.drawing,
            {theme, pattern.head, chart.origin * perMm, options.cellMm * perMm, 1, documentFont(10)});
    }
    painter.end();

    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG"))
        return Fault{
            {},
            {},
            "The picture could not be made; there may be too little memory. Choose fewer dots per inch."};
    return bytes;
}

} // namespace shawlwright::app
