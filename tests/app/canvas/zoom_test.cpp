#include "app/canvas/zoom.h"
#include "core/edits/marks.h"
#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QNativeGestureEvent>
#include <QPointingDevice>
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

TEST(Zoom, FitsTheWidthAndTheSelection)
{
    Desk desk(300, 60);
    desk.canvas.zoomToWidth();
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(desk.canvas.cursor().row, 60).isEmpty());
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(desk.canvas.cursor().row, 1).isEmpty());
    const int wide = desk.canvas.cellPixels();
    EXPECT_GT(wide, 6);
    desk.canvas.zoomToSelection(); // nothing is selected
    EXPECT_EQ(desk.canvas.cellPixels(), wide);
    desk.canvas.select(Area{100, 109, 20, 29});
    desk.canvas.zoomToSelection();
    EXPECT_GT(desk.canvas.cellPixels(), wide);
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(100, 20).isEmpty());
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(109, 29).isEmpty());
}

TEST(Zoom, AWideSectionOpensSmallerSoThatItsColumnsAreSeen)
{
    Desk desk(10, 40); // 960 pixels at 100 % in a view of 900
    const auto wholeRow = [&] {
        return !desk.canvas.cellRectOnViewport(0, 1).isEmpty() && !desk.canvas.cellRectOnViewport(0, 40).isEmpty();
    };
    EXPECT_TRUE(wholeRow());
    EXPECT_EQ(std::lround(desk.canvas.chosenZoomPercent()), 100);
    const int fitting = desk.canvas.cellPixels();
    EXPECT_LT(fitting, 24);

    ASSERT_TRUE(desk.canvas.perform(addBracket(desk.document.pattern(), desk.section().id, 0, 1, Quantity(3))));
    EXPECT_TRUE(wholeRow());
    desk.canvas.resize(860, 700);
    desk.settle();
    EXPECT_TRUE(wholeRow());
    EXPECT_LT(desk.canvas.cellPixels(), fitting);

    desk.canvas.setZoomPercent(100); // who zooms has the last word
    EXPECT_FALSE(desk.canvas.sectionFits());
    desk.canvas.resize(880, 700);
    desk.settle();
    EXPECT_EQ(desk.canvas.cellPixels(), 24);
    desk.canvas.setSection(desk.section().id); // until a section is opened
    EXPECT_TRUE(wholeRow());
}

TEST(Zoom, ASectionThatWouldBeTooSmallToReadKeepsTheZoom)
{
    Desk desk(10, 200);
    EXPECT_EQ(desk.canvas.cellPixels(), 24);
    Desk narrow(10, 5);
    EXPECT_EQ(narrow.canvas.cellPixels(), 24);
}

TEST(Zoom, TwoFingersZoomLikeTheWheel)
{
    Desk desk(200, 200);
    const int before = desk.canvas.cellPixels();
    const QPoint at(300, 300);
    const auto under = desk.canvas.cellAtPoint(at);
    const QPointingDevice* pad = QPointingDevice::primaryPointingDevice();
    const auto gesture = [&](Qt::NativeGestureType type, double value) {
        QNativeGestureEvent event(type, pad, 2, QPointF(at), QPointF(at), QPointF(at), value, QPointF());
        QApplication::sendEvent(desk.canvas.viewport(), &event);
    };
    gesture(Qt::BeginNativeGesture, 0);
    for (int i = 0; i < 20; ++i)
        gesture(Qt::ZoomNativeGesture, 0.02); // small steps add up
    EXPECT_NEAR(desk.canvas.cellPixels(), before * std::pow(1.02, 20), 1.01);
    EXPECT_EQ(desk.canvas.cellAtPoint(at), under);
}

} // namespace shawlwright::app
