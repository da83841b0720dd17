// A person at the window: what they do, in their words.
#pragma once

#include "app/window/main_window.h"
#include "core/edits/sections.h"

#include <gtest/gtest.h>

#include <QDialog>
#include <QTemporaryDir>

#include <functional>

namespace shawlwright::app {

class Seat {
public:
    explicit Seat(int castOn = 20, int rows = 8, int columns = 20);

    MainWindow& window() { return *m_window; }
    PatternDocument& document() { return m_window->document(); }
    const Pattern& pattern() { return document().pattern(); }
    const Section& section(std::size_t at = 0) { return pattern().sections[at]; }
    std::string key(int row, int column);
    StitchId stitch(const char* key) { return document().catalogue().require(key); }

    void paintRow(int row, const char* key); // the whole row, as an edit
    void click(int row, int column, Qt::MouseButton button = Qt::LeftButton);
    void doubleClickNumber(int row);
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {});
    void act(ActionId id) { m_window->action(id)->trigger(); }
    void settle();

    // Runs `during` as soon as a dialog is open, inside of it; `act` opens it.
    void inDialog(const std::function<void()>& act, const std::function<void(QDialog&)>& during);
    static void take(QDialog& dialog);  // presses its first button
    static void leave(QDialog& dialog); // Cancel

    QString path(const char* name) const { return m_folder.filePath(QString::fromUtf8(name)); }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<MainWindow> m_window;
};

// A field of a dialog by the name the program gives it.
template <typename Widget>
Widget& field(QDialog& dialog, const char* name)
{
    auto* found = dialog.findChild<Widget*>(QString::fromUtf8(name));
    EXPECT_NE(found, nullptr) << name;
    return *found;
}

} // namespace shawlwright::app
