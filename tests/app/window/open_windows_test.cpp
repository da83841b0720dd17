// Windows that hear of each other: settings, and all closed together.
#include "app/window/open_windows.h"
#include "app/panels/look.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>

namespace shawlwright::app {

namespace {

// Three windows of one person, and which of them were asked to close.
struct Three {
    OpenWindows::Window window(int at)
    {
        return {[this, at] {
                    asked << at;
                    return at != stays;
                },
                [this, at] {
                    closed << at;
                    return true;
                }};
    }
    QTemporaryDir folder;
    QList<int> asked, closed;
    int stays = -1;
    OpenWindows first{folder.path(), window(0)};
    OpenWindows second{folder.path(), window(1)};
    OpenWindows third{folder.path(), window(2)};
};

} // namespace

TEST(OpenWindows, AllAreAskedTheOneInFrontFirstAndClosedItLast)
{
    Three three;
    three.second.closeAll();
    EXPECT_TRUE(QTest::qWaitFor([&] { return three.closed.size() == 3; }));
    EXPECT_EQ(three.asked.front(), 1);
    EXPECT_EQ(QSet<int>(three.asked.begin(), three.asked.end()), (QSet<int>{0, 1, 2}));
    EXPECT_EQ(three.closed.back(), 1);
    EXPECT_EQ(QSet<int>(three.closed.begin(), three.closed.end()), (QSet<int>{0, 1, 2}));
}

TEST(OpenWindows, WhereOneStaysNoneIsClosed)
{
    for (const int stays : {0, 1, 2}) {
        Three three;
        three.stays = stays;
        three.second.closeAll();
        EXPECT_TRUE(QTest::qWaitFor([&] { return three.asked.contains(stays); }));
        QTest::qWait(50);
        EXPECT_EQ(three.asked.back(), stays) << "nobody is asked after that";
        EXPECT_TRUE(three.closed.isEmpty());
        // Later it may be tried again.
        three.stays = -1;
        three.asked.clear();
        three.second.closeAll();
        EXPECT_TRUE(QTest::qWaitFor([&] { return three.closed.size() == 3; }));
    }
}

TEST(OpenWindows, TheOthersHearOfSettings)
{
    Three three;
    QSignalSpy first(&three.first, &OpenWindows::settingsLeft), second(&three.second, &OpenWindows::settingsLeft),
        third(&three.third, &OpenWindows::settingsLeft);
    three.third.tellSettings();
    EXPECT_TRUE(QTest::qWaitFor([&] { return first.size() == 1 && second.size() == 1; }));
    EXPECT_EQ(third.size(), 0);
}

TEST(OpenWindows, AWindowThatWasKilledIsNotWaitedFor)
{
    QTemporaryDir folder;
    // Left by a process that is no more: its number is above those that the system gives.
    QFile left(folder.filePath(QStringLiteral("shawlwright-gone.window")));
    ASSERT_TRUE(left.open(QIODevice::WriteOnly));
    left.write("4194305\nshawlwright\n" + QSysInfo::machineHostName().toUtf8() + "\n");
    left.close();
    int closed = 0;
    OpenWindows alone(folder.path(), {[] { return true; }, [&] { return ++closed > 0; }});
    alone.closeAll();
    EXPECT_TRUE(QTest::qWaitFor([&] { return closed == 1; }));
    EXPECT_EQ(QDir(folder.path()).entryList({QStringLiteral("*gone*")}, QDir::Files).size(), 0);
}

TEST(OpenWindows, AnotherWindowsThemeAndTextSizeAreTaken)
{
    Seat seat;
    QSignalSpy told(&seat.window(), &MainWindow::settingsChanged);
    seat.act(ActionId::DarkTheme);
    seat.act(ActionId::LargerText);
    EXPECT_EQ(told.size(), 2);
    EXPECT_TRUE(QSettings().value(QStringLiteral("darkTheme")).toBool());
    QSettings().setValue(QStringLiteral("darkTheme"), false);
    QSettings().setValue(QStringLiteral("textPercent"), 150);
    QSettings().setValue(QStringLiteral("yarnTints"), false);
    seat.window().takeSharedSettings();
    EXPECT_FALSE(themeOf(seat.window()).dark);
    EXPECT_TRUE(seat.window().action(ActionId::LightTheme)->isChecked());
    EXPECT_FALSE(seat.window().action(ActionId::YarnTints)->isChecked());
    EXPECT_EQ(QFontInfo(seat.window().font()).pixelSize(), windowFont(150).pixelSize());
    EXPECT_EQ(told.size(), 2) << "what was heard is not told on";
    dress(lightTheme());
}

TEST(OpenWindows, ClosingForAllAsksAboutUnsavedWork)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.window().questions().unsaved = [](const QString&) { return Unsaved::GoOnEditing; };
    EXPECT_FALSE(seat.window().mayCloseForAll());
    EXPECT_TRUE(seat.window().isVisible());
    int asked = 0;
    seat.window().questions().unsaved = [&](const QString&) {
        ++asked;
        return Unsaved::DontSave;
    };
    EXPECT_TRUE(seat.window().mayCloseForAll());
    EXPECT_TRUE(seat.window().isVisible()) << "another may still stay";
    seat.window().questions().unsaved = [&](const QString&) {
        ++asked;
        return Unsaved::GoOnEditing;
    };
    EXPECT_FALSE(seat.window().close()) << "another stayed; closed alone, this one asks again";
    EXPECT_EQ(asked, 2);
    seat.window().questions().unsaved = [&](const QString&) {
        ++asked;
        return Unsaved::DontSave;
    };
    seat.paintRow(1, "p");
    EXPECT_TRUE(seat.window().mayCloseForAll());
    EXPECT_TRUE(seat.window().closeForAll());
    EXPECT_FALSE(seat.window().isVisible());
    EXPECT_EQ(asked, 3) << "what was answered is not asked again";
}

} // namespace shawlwright::app
