// The table of actions: whole, and no key twice.
#include "app/panels/look.h"
#include "app/panels/words_panel.h"
#include "app/window/actions.h"
#include "core/edits/marks.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QDialog>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QScreen>
#include <QScrollArea>

#include <functional>
#include <map>
#include <set>

namespace shawlwright::app {

static QList<QKeySequence> keysOf(const ActionEntry& entry)
{
    QList<QKeySequence> keys;
    const QString all = QString::fromLatin1(entry.keys);
    if (!all.isEmpty())
        for (const QString& one : all.split(QStringLiteral("; ")))
            keys << QKeySequence(one, QKeySequence::PortableText);
    return keys;
}

TEST(Actions, EveryEntryOfTheMenusShowsAKey)
{
    Seat seat;
    int seen = 0;
    const std::function<void(const QMenu&)> walk = [&](const QMenu& menu) {
        for (const QAction* action : menu.actions()) {
            const bool listOfFiles = action->menu() && action->menu()->title().contains(QStringLiteral("ecent"));
            if (action->isSeparator() || listOfFiles)
                continue;
            const QString text = action->text();
            if (action->menu()) {
                walk(*action->menu());
            } else {
                EXPECT_FALSE(action->shortcut().isEmpty()) << qPrintable(text);
                ++seen;
            }
            // Favourites carry the names of stitches, and a key of one figure.
            EXPECT_TRUE(text.contains(QLatin1Char('&')) || action->shortcut().toString().size() == 1)
                << qPrintable(text) << " has no letter";
        }
    };
    for (const QAction* menu : seat.window().menuBar()->actions())
        walk(*menu->menu());
    EXPECT_GE(seen, static_cast<int>(actionTable().size()));
}

TEST(Actions, WhatDesktopsTakeForThemselvesHasASecondKey)
{
    // Common practice, no source: window managers move windows by Alt+Shift and arrows, Alt+F2 asks for a command.
    for (const ActionEntry& entry : actionTable()) {
        const QList<QKeySequence> keys = keysOf(entry);
        const QKeyCombination first = keys.front()[0];
        const bool arrow = first.key() >= Qt::Key_Left && first.key() <= Qt::Key_Down;
        if (arrow && first.keyboardModifiers() == (Qt::AltModifier | Qt::ShiftModifier)) {
            EXPECT_GE(keys.size(), 2) << entry.text;
        }
        EXPECT_FALSE(keys.contains(QKeySequence(Qt::ALT | Qt::Key_F2))) << entry.text;
    }
}

TEST(Actions, KeysStepThroughTurnMethodsAndMarkers)
{
    Seat seat;
    Canvas& canvas = seat.window().canvas();
    canvas.setFocus();
    const TurnMethod first = canvas.turnMethod();
    seat.press(Qt::Key_T, Qt::ShiftModifier);
    EXPECT_NE(canvas.turnMethod(), first);
    EXPECT_EQ(canvas.tool(), CanvasTool::Turn);
    for (int i = 0; i < 5; ++i)
        seat.press(Qt::Key_T, Qt::ShiftModifier);
    EXPECT_EQ(canvas.turnMethod(), first);

    ASSERT_TRUE(seat.document().performOrTell(placeNewMarker(seat.pattern(), seat.section().id, 0, 3)));
    ASSERT_TRUE(seat.document().performOrTell(placeNewMarker(seat.pattern(), seat.section().id, 0, 6)));
    seat.settle();
    const auto& markers = seat.pattern().head.markers;
    ASSERT_EQ(markers.size(), 2u);
    seat.press(Qt::Key_M, Qt::ShiftModifier);
    EXPECT_EQ(canvas.marker(), markers[0].id);
    EXPECT_EQ(canvas.tool(), CanvasTool::Marker);
    seat.press(Qt::Key_M, Qt::ShiftModifier);
    EXPECT_EQ(canvas.marker(), markers[1].id);
    seat.press(Qt::Key_M, Qt::ShiftModifier);
    EXPECT_EQ(canvas.marker(), std::nullopt);
}

TEST(Actions, AKeyShowsAndHidesAPanel)
{
    Seat seat;
    seat.window().canvas().setFocus();
    EXPECT_TRUE(seat.window().words().isVisible());
    seat.press(Qt::Key_4, Qt::AltModifier);
    EXPECT_FALSE(seat.window().words().isVisible());
    EXPECT_FALSE(seat.window().action(ActionId::PanelWords)->isChecked());
    seat.press(Qt::Key_4, Qt::AltModifier);
    EXPECT_TRUE(seat.window().words().isVisible());
}

TEST(Actions, NoKeyStandsTwice)
{
    std::map<QString, std::string> seen;
    for (const ActionEntry& entry : actionTable())
        for (const QKeySequence& keys : keysOf(entry)) {
            ASSERT_FALSE(keys.isEmpty()) << entry.text << ": " << entry.keys;
            ASSERT_NE(keys[0].key(), Qt::Key_unknown) << entry.text;
            const auto [at, fresh] = seen.emplace(keys.toString(), entry.text);
            EXPECT_TRUE(fresh) << qPrintable(keys.toString()) << ": " << at->second << " and " << entry.text;
        }
    EXPECT_GT(seen.size(), 40u);
}

TEST(Actions, TheChartsOwnKeysAreNotTakenByTheWindow)
{
    // What the chart itself answers to, house rule: keys without Ctrl belong to it.
    const std::set<int> charts = {Qt::Key_Space,     Qt::Key_Return,  Qt::Key_Enter, Qt::Key_Delete,
                                  Qt::Key_Backspace, Qt::Key_Escape,  Qt::Key_Left,  Qt::Key_Right,
                                  Qt::Key_Up,        Qt::Key_Down,    Qt::Key_Home,  Qt::Key_End,
                                  Qt::Key_PageUp,    Qt::Key_PageDown};
    for (const ActionEntry& entry : actionTable())
        for (const QKeySequence& keys : keysOf(entry))
            if (!(keys[0].keyboardModifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
                EXPECT_EQ(charts.count(keys[0].key()), 0u) << entry.text;
            }
}

TEST(Actions, PlainKeysWorkInTheChartOnly)
{
    Seat seat;
    for (const ActionEntry& entry : actionTable()) {
        const bool chart = belongsToChart(entry);
        EXPECT_EQ(seat.window().action(entry.id)->shortcutContext(),
                  chart ? Qt::WidgetShortcut : Qt::WindowShortcut)
            << entry.text;
        const QString keys = QString::fromLatin1(entry.keys);
        const bool named = keys.contains(QStringLiteral("Ctrl")) || keys.contains(QStringLiteral("Alt"));
        EXPECT_FALSE(chart && named) << entry.text;
        // One letter or digit, or Insert, may come with Shift.
        const QString bare = QString(keys).remove(QStringLiteral("Shift+"));
        EXPECT_EQ(chart, bare.size() == 1 || bare == QStringLiteral("Insert")) << entry.text;
    }
    seat.window().canvas().setFocus();
    seat.press(Qt::Key_M);
    EXPECT_EQ(seat.window().canvas().tool(), CanvasTool::Marker);
    seat.press(Qt::Key_P);
    EXPECT_EQ(seat.window().canvas().tool(), CanvasTool::Paint);
}

TEST(Actions, EveryActionStandsInItsMenu)
{
    Seat seat;
    std::set<QAction*> inMenus;
    for (QAction* menu : seat.window().menuBar()->actions())
        for (QAction* action : menu->menu()->actions()) {
            inMenus.insert(action);
            if (action->menu()) // the favourites have one of their own
                for (QAction* inside : action->menu()->actions())
                    inMenus.insert(inside);
        }
    for (const ActionEntry& entry : actionTable())
        EXPECT_EQ(inMenus.count(seat.window().action(entry.id)), 1u) << entry.text;
}

static void lettersOf(const QMenu& menu, int& seen)
{
    std::map<QChar, QString> letters;
    for (const QAction* action : menu.actions()) {
        const QString text = action->text();
        const qsizetype at = text.indexOf(QLatin1Char('&'));
        if (at >= 0 && at + 1 < text.size() && text[at + 1] != QLatin1Char('&')) {
            const auto [before, fresh] = letters.emplace(text[at + 1].toLower(), text);
            EXPECT_TRUE(fresh) << qPrintable(menu.title()) << ": " << qPrintable(before->second) << " and "
                               << qPrintable(text);
            ++seen;
        }
        if (action->menu())
            lettersOf(*action->menu(), seen);
    }
}

TEST(Actions, NoLetterStandsTwiceInAMenu)
{
    Seat seat;
    std::set<QChar> titles;
    int seen = 0;
    for (const QAction* menu : seat.window().menuBar()->actions()) {
        const QString title = menu->text();
        EXPECT_TRUE(titles.insert(title[title.indexOf(QLatin1Char('&')) + 1].toLower()).second) << qPrintable(title);
        lettersOf(*menu->menu(), seen);
    }
    EXPECT_GT(seen, 70);
}

TEST(Actions, TheSheetOfKeysNamesThemAll)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::ShortcutSheet); },
                  [](QDialog& sheet) {
                      const auto* scroll = sheet.findChild<QScrollArea*>();
                      EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width());
                      QStringList words;
                      for (const QLabel* label : sheet.findChildren<QLabel*>())
                          words << label->text();
                      for (const ActionEntry& entry : actionTable())
                          for (const QKeySequence& keys : keysOf(entry)) {
                              const QString native = keys.toString(QKeySequence::NativeText);
                              EXPECT_TRUE(std::any_of(words.begin(), words.end(), [&](const QString& word) {
                                  return word.contains(native);
                              })) << entry.text;
                          }
                  });
}

TEST(Actions, TheSheetOfKeysScrollsDownOnlyAtAnySize)
{
    Seat seat;
    for (int percent = leastTextPercent; percent < mostTextPercent; percent += textPercentStep)
        seat.act(ActionId::LargerText);
    seat.inDialog([&] { seat.act(ActionId::ShortcutSheet); },
                  [](QDialog& sheet) {
                      const auto* scroll = sheet.findChild<QScrollArea*>();
                      EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width());
                      EXPECT_LE(sheet.width(), sheet.screen()->availableSize().width());
                  });
    dress(lightTheme());
}

TEST(Actions, UnusableOnesAreGrey)
{
    Seat seat;
    EXPECT_FALSE(seat.window().action(ActionId::Undo)->isEnabled());
    EXPECT_FALSE(seat.window().action(ActionId::Mirror)->isEnabled());
    EXPECT_FALSE(seat.window().action(ActionId::DeleteSection)->isEnabled());
    EXPECT_FALSE(seat.window().action(ActionId::ChangeOwnStitch)->isEnabled());
    seat.window().canvas().selectAll();
    seat.settle();
    EXPECT_TRUE(seat.window().action(ActionId::Mirror)->isEnabled());
    EXPECT_FALSE(seat.window().action(ActionId::DeleteRow)->isEnabled()); // a section keeps one row at least
}

} // namespace shawlwright::app
