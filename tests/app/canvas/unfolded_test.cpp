// The section as knitted on the canvas: looked at with the same hands, and left unchanged.
#include "tests/app/canvas/desk.h"

#include "core/edits/sections.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace shawlwright::app {

namespace {

// Rows 1 and 2 of 16 stitches are worked three times in all.
void repeatTwoRows(Desk& desk)
{
    for (int row = 0; row < 2; ++row)
        ASSERT_TRUE(desk.document.performOrTell(fill(desk.document.pattern(), desk.document.catalogue(),
                                                     desk.canvas.section(), Area{row, row, 1, 16}, desk.stitch("k"))));
    const Section& section = desk.section();
    SectionFrame frame = section.frame;
    frame.brackets.push_back({section.rows[0]->id, section.rows[1]->id, Quantity(3), {}});
    ASSERT_TRUE(desk.document.performOrTell(setFrame(desk.document.pattern(), section.id, frame, "repeat rows")));
}

} // namespace

TEST(AsKnitted, ShowsEveryRowAndKeepsTheCursorsStitch)
{
    Desk desk(4, 16);
    repeatTwoRows(desk);
    desk.canvas.setCursor(At{1, 5});
    QSignalSpy changed(&desk.canvas, &Canvas::unfoldedChanged);
    QSignalSpy moved(&desk.canvas, &Canvas::cursorMoved);
    desk.canvas.setUnfolded(true);
    ASSERT_TRUE(desk.canvas.unfolded());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 5})); // told as in the folded chart
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(7, 16).isEmpty()); // 3 times 2 rows and 2 more
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(8, 16).isEmpty());
    desk.click(desk.middle(5, 9)); // the third time row 2 is worked
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 9}));
    desk.type(Qt::Key_Up);
    EXPECT_EQ(desk.canvas.cursor().row, 2);
    desk.canvas.setUnfolded(false);
    EXPECT_EQ(desk.canvas.cursor().row, 2);
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(4, 16).isEmpty());
}

TEST(AsKnitted, IsLeftAsItIsAndSaysSo)
{
    Desk desk(4, 16);
    repeatTwoRows(desk);
    const int steps = desk.steps();
    desk.brush("yo");
    desk.canvas.setUnfolded(true);
    for (const CanvasTool tool : {CanvasTool::Paint, CanvasTool::Area, CanvasTool::Erase, CanvasTool::Marker,
                                  CanvasTool::Repeat, CanvasTool::RowRepeat, CanvasTool::Turn}) {
        desk.canvas.setTool(tool);
        desk.told.clear();
        desk.drag(desk.middle(1, 3), desk.middle(2, 6));
        EXPECT_FALSE(desk.canvas.strokeOpen());
        ASSERT_EQ(desk.told.size(), 1);
        EXPECT_TRUE(desk.told.front().contains(QStringLiteral("to look at"))) << qPrintable(desk.told.front());
    }
    for (const int key : {Qt::Key_Space, Qt::Key_Return, Qt::Key_Delete}) {
        desk.told.clear();
        desk.type(key);
        EXPECT_EQ(desk.told.size(), 1);
    }
    desk.canvas.selectAll();
    EXPECT_FALSE(desk.canvas.selection());
    desk.canvas.eraseSelection();
    EXPECT_EQ(desk.steps(), steps);
    desk.type(Qt::Key_Escape); // folds it back
    EXPECT_FALSE(desk.canvas.unfolded());
    desk.canvas.setTool(CanvasTool::Paint);
    desk.click(desk.middle(1, 3));
    EXPECT_EQ(desk.steps(), steps + 1);
}

TEST(AsKnitted, FollowsTheDocument)
{
    Desk desk(4, 16);
    repeatTwoRows(desk);
    desk.canvas.setUnfolded(true);
    desk.canvas.setCursor(At{3, 2});
    desk.document.undoStack().undo(); // the row repeat goes
    EXPECT_TRUE(desk.canvas.unfolded());
    EXPECT_EQ(desk.canvas.cursor().row, 3);
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(4, 1).isEmpty());
    desk.document.undoStack().redo();
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(7, 1).isEmpty());
}

TEST(Unfolded, HasAZoomOfItsOwn)
{
    Desk desk;
    desk.brush("k");
    desk.drag(desk.middle(0, 1), desk.middle(0, 16));
    desk.canvas.setZoomPercent(100);
    desk.canvas.setUnfolded(true);
    ASSERT_TRUE(desk.canvas.unfolded());
    desk.canvas.setZoomPercent(25);
    desk.canvas.setUnfolded(false);
    EXPECT_EQ(desk.canvas.cellPixels(), 24);
    desk.canvas.setUnfolded(true);
    EXPECT_EQ(desk.canvas.cellPixels(), 6);
}

} // namespace shawlwright::app
