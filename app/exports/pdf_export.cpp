#include "app/exports/pdf_export.h"

#include "app/document/text.h"
#include "app/exports/printed_pattern.h"

#include <QBuffer>
#include <QPageSize>
#include <QPdfWriter>

namespace shawlwright::app {

Result<QByteArray> pdfOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options)
{
    // Into memory first: the writer does not tell when a disk is full.
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(pageDpi);
    writer.setPageSize(QPageSize(options.paper == Paper::Letter ? QPageSize::Letter : QPageSize::A4));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(toQt(pattern.head.title));
    writer.setCreator(QStringLiteral("Shawlwright"));

    const PrintedPattern printed(pattern, catalogue, options,
                                 writer.pageLayout().fullRectPixels(pageDpi).size());
    QPainter painter;
    if (!painter.begin(&writer))
        return Fault{{}, {}, "The PDF could not be begun; there may be too little memory."};
    for (int page = 1; page <= printed.pages(); ++page) {
        if (page > 1 && !writer.newPage())
            return Fault{{},
                         {},
                         "The PDF stopped before page " + std::to_string(page) + " of " +
                             std::to_string(printed.pages()) + "; there may be too little memory."};
        printed.paintPage(painter, page);
    }
    if (!painter.end())
        return Fault{{}, {}, "The PDF could not be finished; there may be too little memory."};
    return bytes;
}

} // namespace shawlwright::app
