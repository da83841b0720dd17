// One key in the window of a whole shawl: the stitch painted, the chart, counts, words and findings fresh on the screen.

#include "tests/bench/benches.h"
#include "tests/bench/measure.h"
#include "tests/support/big_shawl.h"

#include "app/window/main_window.h"

#include <QApplication>
#include <QKeyEvent>
#include <QStandardPaths>

#include <random>

namespace shawlwright::tests {

void benchWindow()
{
    QStandardPaths::setTestModeEnabled(true); // the person's own settings and rescue copies are left alone
    app::MainWindow window;
    window.resize(1920, 1080);
    window.document().startNew(bigShawl());
    window.show();
    QApplication::processEvents();
    window.refresh();

    const Section& section = window.document().pattern().sections[0];
    std::mt19937 random(11);
    const StitchId k = window.document().catalogue().require("k");
    const StitchId p = window.document().catalogue().require("p");
    const auto press = [&window] {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent key(type, Qt::Key_Space, Qt::NoModifier, QStringLiteral(" "));
            QApplication::sendEvent(&window.canvas(), &key);
        }
    };
    std::vector<double> times;
    const qsizetype before = window.document().undoStack().count();
    for (int i = 0; i < 200; ++i) {
        const std::size_t row = random() % section.rows.size();
        const std::size_t column = random() % section.rows[row]->cells.size();
        window.canvas().setCursor({static_cast<int>(row), 1 + static_cast<int>(column)});
        window.canvas().setBrush(section.rows[row]->cells[column].stitch == k ? p : k); // each key changes something
        window.refresh();
        QApplication::processEvents();
        times.push_back(milliseconds([&] {
            press();
            window.refresh();
            QApplication::processEvents();
        }));
    }
    std::sort(times.begin(), times.end());
    tell("key-to-screen.painted", static_cast<double>(window.document().undoStack().count() - before), "keys");
    tell("key-to-screen.median", median(times), "ms");
    tell("key-to-screen.p95", share(times, 0.95), "ms");
}

} // namespace shawlwright::tests
