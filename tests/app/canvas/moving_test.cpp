// The selected stitches moved and copied along by the mouse.
#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QKeyEvent>

namespace shawlwright::app {

namespace {

// Two stitches in row 1, selected.
void prepare(Desk& desk)
{
    desk.brush("k");
    desk.click(desk.middle(1, 3));
    desk.brush("yo");
    desk.click(desk.middle(1, 4));
    desk.canvas.setTool(CanvasTool::Select);
    desk.drag(desk.middle(1, 3), desk.middle(1, 4));
}

} // namespace

TEST(Moving, ADragInTheSelectionMovesItInOneStep)
{
    Desk desk;
    prepare(desk);
    const int steps = desk.steps();
    desk.press(desk.middle(1, 4));
    desk.move(desk.middle(3, 7));
    EXPECT_EQ(desk.steps(), steps); // only a ghost until the button is up
    EXPECT_EQ(desk.key(1, 4), "yo");
    desk.move(desk.middle(5, 9));
    desk.release(desk.middle(5, 9));
    EXPECT_EQ(desk.steps(), steps + 1);
    EXPECT_EQ(desk.key(5, 8), "k");
    EXPECT_EQ(desk.key(5, 9), "yo");
    EXPECT_EQ(desk.key(1, 3), "no_st");
    EXPECT_EQ(desk.key(3, 7), "no_st");
    EXPECT_EQ(desk.canvas.selection(), (Area{5, 5, 8, 9}));
    EXPECT_EQ(desk.told.last(), QStringLiteral("Moved 4 up, 5 to the left."));
    desk.document.undoStack().undo();
    EXPECT_EQ(desk.key(1, 4), "yo");
    EXPECT_EQ(desk.key(5, 9), "no_st");
}

TEST(Moving, CtrlPressedOnTheWayCopies)
{
    Desk desk;
    prepare(desk);
    desk.press(desk.middle(1, 4));
    desk.move(desk.middle(5, 9));
    EXPECT_TRUE(desk.told.last().startsWith(QStringLiteral("Moved 4 up")));
    QKeyEvent down(QEvent::KeyPress, Qt::Key_Control, Qt::ControlModifier);
    QApplication::sendEvent(&desk.canvas, &down);
    EXPECT_TRUE(desk.told.last().startsWith(QStringLiteral("Copied 4 up")));
    desk.release(desk.middle(5, 9), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.key(5, 9), "yo");
    EXPECT_EQ(desk.key(1, 4), "yo");
    EXPECT_EQ(desk.key(1, 3), "k");
}

TEST(Moving, EscTakesItBackAndAnotherActEndsIt)
{
    Desk desk;
    prepare(desk);
    const int steps = desk.steps();
    desk.press(desk.middle(1, 4));
    desk.move(desk.middle(5, 9));
    desk.type(Qt::Key_Escape);
    desk.release(desk.middle(5, 9));
    EXPECT_EQ(desk.steps(), steps);
    EXPECT_EQ(desk.key(1, 4), "yo");
    EXPECT_EQ(desk.canvas.selection(), (Area{1, 1, 3, 4})); // still there for another try
    desk.press(desk.middle(1, 4));
    desk.move(desk.middle(5, 9));
    desk.canvas.endStroke(); // as undo, save and every action of the window do
    desk.document.undoStack().undo();
    desk.release(desk.middle(5, 9));
    EXPECT_EQ(desk.key(5, 9), "no_st");
    EXPECT_EQ(desk.key(1, 4), "no_st"); // the yarn over was painted last, and is undone
    EXPECT_EQ(desk.key(1, 3), "k");
}

TEST(Moving, ItStaysInsideTheChart)
{
    Desk desk;
    prepare(desk);
    desk.drag(desk.middle(1, 3), desk.middle(11, 16));
    EXPECT_EQ(desk.canvas.selection(), (Area{11, 11, 15, 16}));
    EXPECT_EQ(desk.key(11, 16), "yo");
    EXPECT_EQ(desk.key(11, 15), "k");
}

TEST(Moving, AClickInTheSelectionLeavesThatStitchSelected)
{
    Desk desk;
    prepare(desk);
    const int steps = desk.steps();
    desk.click(desk.middle(1, 4));
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{1, 1, 4, 4}}));
    EXPECT_EQ(desk.steps(), steps);
    desk.canvas.setTool(CanvasTool::Paint); // with another tool the selection is painted over, not dragged
    desk.canvas.select(Area{1, 1, 3, 4});
    desk.drag(desk.middle(1, 3), desk.middle(1, 5));
    EXPECT_EQ(desk.key(1, 3), "yo");
    EXPECT_EQ(desk.key(1, 5), "yo");
}

TEST(Moving, ByOneCellEachAStepOfItsOwn)
{
    Desk desk;
    prepare(desk);
    const int steps = desk.steps();
    EXPECT_TRUE(desk.canvas.moveSelected(1, 0, Leaving::NoStitch));
    EXPECT_TRUE(desk.canvas.moveSelected(0, -1, Leaving::NoStitch));
    EXPECT_EQ(desk.steps(), steps + 2);
    EXPECT_EQ(desk.key(2, 2), "k");
    EXPECT_EQ(desk.key(2, 3), "yo");
    EXPECT_EQ(desk.canvas.selection(), (Area{2, 2, 2, 3}));
    EXPECT_TRUE(desk.canvas.moveSelected(0, -1, Leaving::NoStitch));
    EXPECT_FALSE(desk.canvas.moveSelected(0, -1, Leaving::NoStitch));
    EXPECT_TRUE(desk.told.last().contains(QStringLiteral("1 column past the right edge")));
    EXPECT_EQ(desk.key(2, 1), "k");
}

// What the ghost covers is painted anew when it is gone.
TEST(Moving, TheGhostLeavesNoTrace)
{
    Desk desk;
    prepare(desk);
    desk.canvas.setCursor(At{1, 4});
    desk.move(desk.middle(1, 4), Qt::NoButton);
    desk.settle();
    const QImage before = desk.canvas.viewport()->grab().toImage();
    desk.press(desk.middle(1, 4));
    desk.move(desk.middle(6, 9));
    desk.settle();
    EXPECT_NE(desk.canvas.viewport()->grab().toImage(), before);
    desk.type(Qt::Key_Escape);
    desk.release(desk.middle(6, 9));
    desk.move(desk.middle(1, 4), Qt::NoButton);
    desk.settle();
    EXPECT_EQ(desk.canvas.viewport()->grab().toImage(), before);
}

} // namespace shawlwright::app
