#include "app/canvas/zoom.h"
#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QScrollBar>

#include <cmath>

namespace shawlwright::app {

TEST(Zoom, ANotchAddsAFifth)
{
    EXPECT_EQ(cellAfterWheel(20, 120), 24);
    EXPECT_EQ(cellAfterWheel(24, -120), 20);
    EXPECT_EQ(cellAfterWheel(24, 0), 24);
    EXPECT_EQ(cellAfterWheel(24, 100000), greatestCell);
    EXPECT_EQ(cellAfterWheel(24, -100000), leastCell);
}

TEST(Zoom, EachStepOfTheMenuChangesTheSizeUntilTheLimits)
{
    int cell = leastCell;
    while (cell < greatestCell) {
        const int next = nextCell(cell, 1);
        ASSERT_GT(next, cell);
        cell = next;
    }
    while (cell > leastCell) {
        const int next = nextCell(cell, -1);
        ASSERT_LT(next, cell);
        cell = next;
    }
}

TEST(Zoom, OneEventOrFortyGiveTheSame)
{
    Desk once(200, 200), often(200, 200);
    const QPoint at(300, 300);
    once.wheel(at, 120);
    for (int event = 0; event < 40; ++event)
        often.wheel(at, 3);
    EXPECT_EQ(once.canvas.cellPixels(), often.canvas.cellPixels());
    EXPECT_NE(once.canvas.cellPixels(), 24);
    EXPECT_EQ(once.canvas.horizontalScrollBar()->value(), often.canvas.horizontalScrollBar()->value());
    EXPECT_EQ(once.canvas.verticalScrollBar()->value(), often.canvas.verticalScrollBar()->value());
}

TEST(Zoom, ForwardAndBackIsExactAndTheCellUnderThePointerStays)
{
    Desk desk(200, 200);
    desk.canvas.showCell(100, 100);
    const QPoint at(400, 300);
    const auto under = desk.canvas.cellAtPoint(at);
    ASSERT_TRUE(under);
    const int across = desk.canvas.horizontalScrollBar()->value(),
              down = desk.canvas.verticalScrollBar()->value();
    for (int notch = 0; notch < 4; ++notch) {
        desk.wheel(at, 120);
        EXPECT_EQ(desk.canvas.cellAtPoint(at), under) << notch;
    }
    for (int notch = 0; notch < 4; ++notch)
        desk.wheel(at, -120);
    EXPECT_EQ(desk.canvas.cellPixels(), 24);
    EXPECT_EQ(desk.canvas.horizontalScrollBar()->value(), across);
    EXPECT_EQ(desk.canvas.verticalScrollBar()->value(), down);
}

TEST(Zoom, AWheelWithoutATurnDoesNothing)
{
    Desk desk;
    desk.wheel(QPoint(300, 300), 0);
    EXPECT_EQ(desk.canvas.cellPixels(), 24);
}

TEST(Zoom, FitShowsTheWholeSection)
{
    Desk desk(100, 120);
    desk.canvas.zoomToFit();
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(0, 1).isEmpty());
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(99, 120).isEmpty());
    EXPECT_EQ(desk.canvas.horizontalScrollBar()->maximum(), 0);
    EXPECT_EQ(desk.canvas.verticalScrollBar()->maximum(), 0);
    Desk small(3, 3);
    small.canvas.zoomToFit();
    EXPECT_EQ(std::lround(small.canvas.zoomPercent()), 100);
}

} // namespace shawlwright::app
