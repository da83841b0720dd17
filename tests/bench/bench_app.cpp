// A frame of the canvas against filling the same area, at four zooms; the pattern document as PDF.

#include "tests/bench/benches.h"
#include "tests/bench/measure.h"
#include "tests/support/big_shawl.h"

#include "app/canvas/canvas.h"
#include "app/exports/export_file.h"
#include "core/files/builtin_catalogue.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QScrollBar>

#include <cstring>

namespace shawlwright::tests {

void benchApp()
{
    const Pattern pattern = bigShawl();
    app::PatternDocument document;
    tell("window-open.pattern", milliseconds([&] { document.startNew(pattern); }), "ms");
    app::Canvas canvas(document);
    canvas.resize(1920, 1080);
    canvas.setSection(pattern.sections[0].id);
    canvas.show();
    QApplication::processEvents();

    QImage frame(canvas.viewport()->size(), QImage::Format_RGB32);
    QImage other(frame.size(), QImage::Format_RGB32);
    frame.fill(Qt::white);
    const auto fills = timed(41, [&](int) {
        QPainter painter(&frame);
        painter.fillRect(frame.rect(), Qt::white);
    });
    tell("fill.median", median(fills), "ms");
    for (const double percent : {8.0, 25.0, 50.0, 100.0}) {
        canvas.setZoomPercent(percent);
        canvas.verticalScrollBar()->setValue(canvas.verticalScrollBar()->maximum() / 2);
        canvas.horizontalScrollBar()->setValue(canvas.horizontalScrollBar()->maximum() / 2);
        QApplication::processEvents();
        std::vector<double> copies, frames; // by turns: what slows the machine for a while slows both
        for (int i = 0; i < 41; ++i) {
            copies.push_back(milliseconds(
                [&] { std::memcpy(other.bits(), frame.constBits(), static_cast<std::size_t>(frame.sizeInBytes())); }));
            frames.push_back(milliseconds([&] { canvas.viewport()->render(&frame); }));
        }
        std::sort(copies.begin(), copies.end());
        std::sort(frames.begin(), frames.end());
        const std::string name = "frame-at-" + std::to_string(canvas.cellPixels()) + "-px";
        tell(name + ".median", median(frames), "ms");
        tell(name + ".copy-pixels", median(copies), "ms");
        tell(name + "/copy-pixels", median(frames) / median(copies), "times");
        tell(name + "/fill", median(frames) / median(fills), "times");
    }
    tell("pdf", milliseconds([&] {
             if (!app::exported(pattern, builtInCatalogue(), app::ExportKind::Pdf, {}).ok())
                 std::abort();
         }),
         "ms");
}

} // namespace shawlwright::tests
