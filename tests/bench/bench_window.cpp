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

namespace {

// Each row ends in "k to end": a count that changes goes on to the last row.
Pattern withOpenEnds(Pattern pattern)
{
    Section& section = pattern.sections.front();
    for (const RowRef& row : section.rows) {
        const int last = row->side == Side::RS ? section.frame.columns : 1;
        Box box;
        box.id = BoxId{row->id.value};
        box.firstRow = box.lastRow = row->id;
        box.firstColumn = box.lastColumn = last;
        box.until = BoxUntil::RowEnd;
        section.frame.boxes.push_back(box);
    }
    return pattern;
}

enum class Keys { Anywhere, ChangingCounts };

void benchKeys(const Pattern& pattern, Keys keys, const std::string& name)
{
    app::MainWindow window;
    window.resize(1920, 1080);
    window.document().startNew(pattern);
    window.show();
    QApplication::processEvents();
    window.refresh();

    const Section& section = window.document().pattern().sections[0];
    std::mt19937 random(11);
    const StitchId k = window.document().catalogue().require("k");
    const StitchId p = window.document().catalogue().require("p");
    const StitchId yo = window.document().catalogue().require("yo");
    const auto press = [&window] {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent key(type, Qt::Key_Space, Qt::NoModifier, QStringLiteral(" "));
            QApplication::sendEvent(&window.canvas(), &key);
        }
    };
    std::vector<double> times;
    const qsizetype before = window.document().undoStack().count();
    while (times.size() < 200) {
        const std::size_t row = random() % section.rows.size();
        const std::size_t column = random() % section.rows[row]->cells.size();
        const StitchId there = section.rows[row]->cells[column].stitch;
        if (keys == Keys::ChangingCounts && there != yo)
            continue;
        window.canvas().setCursor({static_cast<int>(row), 1 + static_cast<int>(column)});
        window.canvas().setBrush(there == k ? p : k); // each key changes something
        window.refresh();
        QApplication::processEvents();
        times.push_back(milliseconds([&] {
            press();
            window.refresh();
            QApplication::processEvents();
        }));
    }
    std::sort(times.begin(), times.end());
    tell(name + ".painted", static_cast<double>(window.document().undoStack().count() - before), "keys");
    tell(name + ".median", median(times), "ms");
    tell(name + ".p95", share(times, 0.95), "ms");
}

} // namespace

void benchWindow()
{
    QStandardPaths::setTestModeEnabled(true); // the person's own settings and rescue copies are left alone
    benchKeys(bigShawl(), Keys::Anywhere, "key-to-screen");
    benchKeys(bigShawl(), Keys::ChangingCounts, "key-to-screen-of-counts");
    benchKeys(withOpenEnds(bigShawl()), Keys::ChangingCounts, "key-to-screen-of-counts-to-the-end");
}

} // namespace shawlwright::tests
