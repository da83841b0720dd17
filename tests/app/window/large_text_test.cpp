// Large text, small windows and settings of a larger screen: the chart keeps a part that is of use, and nothing is lost.
#include "app/panels/look.h"
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/window/empty_hint.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QDockWidget>
#include <QFontMetrics>
#include <QMenu>
#include <QSettings>
#include <QStatusBar>
#include <QTest>
#include <QToolBar>
#include <QToolButton>

namespace shawlwright::app {

namespace {

struct Large {
    ~Large() { dress(lightTheme()); }

    QDockWidget& dock(const char* name) { return *seat.window().findChild<QDockWidget*>(QString::fromUtf8(name)); }
    int chart() { return seat.window().centralWidget()->width(); }
    void settle()
    {
        for (int i = 0; i < 5; ++i)
            seat.settle();
    }
    void text(int percent)
    {
        for (int now = leastTextPercent; now < percent; now += textPercentStep)
            seat.act(ActionId::LargerText);
        settle();
    }

    Seat seat;
};

} // namespace

TEST(LargeWindow, TextNeverMakesItLarger)
{
    Large large;
    MainWindow& window = large.seat.window();
    window.resizeDocks({&large.dock("words")}, {560}, Qt::Horizontal);
    large.settle();
    for (int percent = leastTextPercent; percent <= mostTextPercent; percent += textPercentStep) {
        EXPECT_EQ(window.size(), QSize(1280, 800)) << percent;
        EXPECT_TRUE(window.rect().contains(window.statusBar()->geometry())) << percent;
        EXPECT_GE(large.chart(), 400) << percent;
        EXPECT_GE(large.chart(), std::min(window.canvas().usefulWidth(), window.width() / 2) - 30) << percent;
        large.seat.act(ActionId::LargerText);
        large.settle();
    }
    for (int percent = mostTextPercent; percent > leastTextPercent; percent -= textPercentStep)
        large.seat.act(ActionId::SmallerText);
    large.settle();
    EXPECT_EQ(window.size(), QSize(1280, 800));
    EXPECT_NEAR(large.dock("words").width(), 560, 4) << "as it was before";
}

TEST(LargeWindow, ASmallOneGivesTheChartItsPart)
{
    Large large;
    MainWindow& window = large.seat.window();
    window.resize(1900, 1000);
    large.settle();
    window.resizeDocks({&large.dock("words")}, {900}, Qt::Horizontal);
    large.settle();
    const QByteArray wide = window.saveState();
    window.resize(853, 533); // 1280 x 800 at one and a half
    large.settle();
    EXPECT_GE(large.chart(), 340); // the titles of the panels need the rest
    EXPECT_EQ(window.size(), QSize(853, 533));
    EXPECT_TRUE(window.rect().contains(window.statusBar()->geometry()));

    // The same where it was remembered.
    window.restoreState(wide);
    window.resize(860, 533);
    large.settle();
    EXPECT_GE(large.chart(), 340); // the titles of the panels need the rest
}

TEST(LargeWindow, EveryToolIsInTheBarOrUnderMore)
{
    Large large;
    const auto* bar = large.seat.window().findChild<QToolBar*>(QStringLiteral("tools"));
    EXPECT_EQ(bar->findChild<QToolButton*>(QStringLiteral("moreTools")), nullptr) << "all has room";
    using enum ActionId;
    bool needed = false;
    for (const int step : {0, 1, 2, 3, 4, 5, 6}) {
        if (step > 0)
            large.seat.act(LargerText);
        large.settle();
        const auto* more = bar->findChild<QToolButton*>(QStringLiteral("moreTools"));
        for (const ActionId id : {NewShawl, Open, Save, Undo, Redo, ToolPaint, ToolArea, ToolErase, ToolSelect, ToolMarker,
                                  ToolTurn, ToolStitchRepeat, ToolRowRepeat, ToolMotif, ZoomOut, ZoomIn}) {
            QAction* action = large.seat.window().action(id);
            const QWidget* button = bar->widgetForAction(action);
            const bool inBar = button && button->isVisible() && bar->rect().contains(button->geometry());
            const bool underMore = more && more->isVisible() && bar->rect().contains(more->geometry()) && more->menu()->actions().contains(action);
            EXPECT_TRUE(inBar || underMore) << step << " " << actionEntry(id).text;
            needed = needed || underMore;
        }
    }
    EXPECT_TRUE(needed);
}

TEST(LargeWindow, TilesGrowWithTheTextAndSayTheirWholeName)
{
    Large large;
    StitchGrid& grid = *large.seat.window().stitches().grid();
    const int before = grid.tileOf(large.seat.stitch("k")).height();
    const QFontMetrics metrics(smaller(grid.font()));
    for (const Stitch& stitch : large.seat.document().catalogue().builtIn()) {
        const QRect tile = grid.tileOf(stitch.id);
        const int label = metrics.horizontalAdvance(QString::fromStdString(stitch.onRS));
        if (stitch.id == noStitch || tile.isEmpty())
            continue;
        EXPECT_TRUE(tile.width() + 8 >= label || tile.width() >= grid.width() - 32) << stitch.onRS;
    }
    large.text(200);
    EXPECT_GE(grid.tileOf(large.seat.stitch("k")).height(), 2 * before - 2);
}

TEST(LeftSide, SectionsTakeWhatTheyNeedAndStitchesTheRest)
{
    Large large;
    large.settle();
    QDockWidget &sections = large.dock("sections"), &stitches = large.dock("stitches");
    const int one = sections.height();
    EXPECT_LT(one, 110);
    EXPECT_GT(stitches.height(), 3 * one);
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(large.seat.document().performOrTell(addSection(large.seat.pattern(), 1, "Border", 6, 8)));
        large.settle();
    }
    EXPECT_GT(sections.height(), one + 40);
    for (int i = 0; i < 30; ++i)
        ASSERT_TRUE(large.seat.document().performOrTell(addSection(large.seat.pattern(), 1, "Border", 6, 8)));
    large.settle();
    EXPECT_LT(sections.height(), stitches.height());
    // What a person has set stays.
    MainWindow& window = large.seat.window();
    const QPoint line = sections.geometry().bottomLeft() + QPoint(60, 2), there = line + QPoint(0, 60);
    const int shared = sections.height();
    QTest::mousePress(&window, Qt::LeftButton, {}, line);
    QTest::mouseMove(&window, there);
    QTest::qWait(50);
    QTest::mouseRelease(&window, Qt::LeftButton, {}, there);
    large.settle();
    const int chosen = sections.height();
    EXPECT_GT(chosen, shared + 20);
    ASSERT_TRUE(large.seat.document().performOrTell(addSection(large.seat.pattern(), 1, "Border", 6, 8)));
    large.settle();
    EXPECT_EQ(sections.height(), chosen);
}

TEST(Hint, CoversNoNumberAndNotTheCursor)
{
    for (const auto& [rows, columns] : {std::pair(8, 20), std::pair(40, 60), std::pair(3, 300), std::pair(300, 3)}) {
        Seat seat(20, rows, columns);
        seat.settle();
        Canvas& canvas = seat.window().canvas();
        const auto* hint = canvas.findChild<EmptyHint*>();
        ASSERT_NE(hint, nullptr);
        for (const At at : {At{0, 1}, At{rows - 1, columns}, At{rows / 2, columns / 2}}) {
            canvas.setCursor(at);
            canvas.showCell(at.row, at.column);
            seat.settle();
            if (hint->isHidden())
                continue;
            const QRect put = hint->geometry().translated(-canvas.viewport()->pos());
            EXPECT_TRUE(canvas.gridRect().contains(put) || !canvas.chartRect().intersects(put)) << rows << " x " << columns;
            EXPECT_FALSE(put.intersects(canvas.cellRectOnViewport(at.row, at.column)));
            EXPECT_TRUE(canvas.viewport()->rect().contains(put));
        }
        if (columns > 10) {
            EXPECT_FALSE(hint->isHidden()) << rows << " x " << columns;
        }
    }
}

} // namespace shawlwright::app
