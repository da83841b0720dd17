// Selecting on the chart: cells, whole rows and columns, anew, added and taken.
#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace shawlwright::app {

TEST(Selecting, RowsByTheirNumbersWithAnyTool)
{
    Desk desk;
    desk.canvas.setTool(CanvasTool::Paint);
    desk.click(desk.rowNumber(3));
    EXPECT_EQ(desk.canvas.selection(), (Area{3, 3, 1, 16}));
    EXPECT_EQ(desk.canvas.cursor().row, 3);
    desk.drag(desk.rowNumber(5), desk.rowNumber(8));
    EXPECT_EQ(desk.canvas.selection(), (Area{5, 8, 1, 16}));
    desk.click(desk.rowNumber(2), Qt::LeftButton, Qt::ShiftModifier); // from where it began
    EXPECT_EQ(desk.canvas.selection(), (Area{2, 5, 1, 16}));
    EXPECT_EQ(desk.steps(), 0);
    EXPECT_EQ(desk.canvas.tool(), CanvasTool::Paint);
    desk.type(Qt::Key_Escape);
    EXPECT_TRUE(desk.canvas.selected().empty());
}

TEST(Selecting, ColumnsByTheirNumbers)
{
    Desk desk;
    desk.drag(desk.columnNumber(4), desk.columnNumber(2));
    EXPECT_EQ(desk.canvas.selection(), (Area{0, 11, 2, 4}));
    desk.click(desk.columnNumber(9), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{0, 11, 2, 4}, Area{0, 11, 9, 9}}));
    EXPECT_FALSE(desk.canvas.selection()); // not one rectangle
    desk.click(desk.columnNumber(3), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{0, 11, 2, 2}, Area{0, 11, 4, 4}, Area{0, 11, 9, 9}}));
}

TEST(Selecting, CtrlAddsAndTakes)
{
    Desk desk;
    desk.canvas.setTool(CanvasTool::Select);
    desk.drag(desk.middle(1, 2), desk.middle(3, 4));
    desk.drag(desk.middle(6, 8), desk.middle(7, 9), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{1, 3, 2, 4}, Area{6, 7, 8, 9}}));
    desk.click(desk.middle(10, 1), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_TRUE(holds(desk.canvas.selected(), At{10, 1}));
    desk.click(desk.middle(10, 1), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_FALSE(holds(desk.canvas.selected(), At{10, 1}));
    desk.drag(desk.middle(1, 4), desk.middle(3, 4), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{1, 3, 2, 3}, Area{6, 7, 8, 9}}));
    desk.click(desk.rowNumber(2), Qt::LeftButton, Qt::ControlModifier); // not all of it is selected: adds
    EXPECT_TRUE(holds(desk.canvas.selected(), At{2, 16}));
    desk.click(desk.rowNumber(2), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{1, 1, 2, 3}, Area{3, 3, 2, 3}, Area{6, 7, 8, 9}}));
    EXPECT_EQ(desk.steps(), 0);
}

TEST(Selecting, AClickSelectsItsStitch)
{
    Desk desk;
    desk.brush("yo2");
    ASSERT_EQ(desk.document.catalogue().stitch(desk.stitch("yo2")).width(), 2);
    desk.click(desk.middle(4, 6));
    const int steps = desk.steps();
    desk.canvas.setTool(CanvasTool::Select);
    desk.click(desk.middle(2, 3));
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{2, 2, 3, 3}}));
    desk.click(desk.middle(4, 7)); // elsewhere: that one, and all of a wide stitch
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{4, 4, 6, 7}}));
    desk.click(desk.middle(8, 1), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.selected().size(), 2u);
    desk.type(Qt::Key_Escape);
    EXPECT_TRUE(desk.canvas.selected().empty());
    EXPECT_EQ(desk.steps(), steps);
}

TEST(Selecting, WhatAClickSelectedStaysWithTheCursor)
{
    Desk desk;
    desk.brush("k");
    desk.canvas.setTool(CanvasTool::Select);
    desk.click(desk.middle(2, 3));
    desk.type(Qt::Key_Up);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{3, 3, 3, 3}}));
    desk.canvas.goToRow(7);
    EXPECT_EQ(desk.canvas.selected().front().firstRow, 7);
    desk.canvas.setTool(CanvasTool::Paint);
    desk.click(desk.middle(5, 5));
    EXPECT_TRUE(desk.canvas.selected().empty());
    desk.canvas.setTool(CanvasTool::Select);
    desk.drag(desk.middle(1, 2), desk.middle(1, 4)); // what was dragged over stays where it is
    desk.type(Qt::Key_Up);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{1, 1, 2, 4}}));
}

TEST(Selecting, WhatAClickSelectedIsGoneOncePaintingGoesOn)
{
    Desk desk;
    desk.brush("k");
    desk.canvas.setTool(CanvasTool::Select);
    desk.click(desk.middle(2, 3));
    ASSERT_FALSE(desk.canvas.selected().empty());
    desk.canvas.setTool(CanvasTool::Paint);
    desk.type(Qt::Key_Space); // paints and goes on to the next stitch
    EXPECT_TRUE(desk.canvas.selected().empty());
    // The same area selected otherwise is no click's.
    desk.canvas.select(Area{2, 2, 3, 3});
    desk.canvas.setTool(CanvasTool::Select);
    desk.type(Qt::Key_Up);
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{2, 2, 3, 3}}));
}

TEST(Selecting, ByKeysAlone)
{
    Desk desk;
    QSignalSpy changed(&desk.canvas, &Canvas::selectionChanged);
    desk.canvas.setCursor(At{4, 5});
    desk.canvas.selectRows();
    EXPECT_EQ(desk.canvas.selection(), (Area{4, 4, 1, 16}));
    desk.type(Qt::Key_Up, Qt::ShiftModifier);
    desk.type(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(desk.canvas.selection(), (Area{4, 6, 1, 16}));
    desk.type(Qt::Key_Escape);
    desk.canvas.selectColumns();
    desk.type(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(desk.canvas.selection()->firstRow, 0);
    EXPECT_EQ(desk.canvas.selection()->lastRow, 11);
    EXPECT_EQ(changed.count(), 6);
    desk.type(Qt::Key_Escape);
    desk.canvas.setCursor(At{0, 1});
    desk.canvas.toggleSelected();
    desk.canvas.setCursor(At{2, 2});
    desk.canvas.toggleSelected();
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{0, 0, 1, 1}, Area{2, 2, 2, 2}}));
    desk.canvas.selectRows();
    EXPECT_EQ(desk.canvas.selected(), (Areas{Area{0, 0, 1, 16}, Area{2, 2, 1, 16}}));
}

TEST(Selecting, DeleteAndFillReachEveryRectangle)
{
    Desk desk;
    desk.brush("k");
    desk.canvas.selectAreas({Area{0, 1, 1, 2}, Area{5, 5, 4, 6}});
    desk.canvas.setTool(CanvasTool::Area);
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.key(1, 2), "k");
    EXPECT_EQ(desk.key(5, 5), "k");
    EXPECT_EQ(desk.key(3, 3), "no_st");
    EXPECT_EQ(desk.steps(), 1);
    desk.type(Qt::Key_Delete);
    EXPECT_EQ(desk.key(1, 2), "no_st");
    EXPECT_EQ(desk.key(5, 5), "no_st");
    EXPECT_EQ(desk.steps(), 2);
    desk.canvas.setTool(CanvasTool::Repeat);
    QSignalSpy repeat(&desk.canvas, &Canvas::repeatDrawn);
    desk.type(Qt::Key_Space);
    EXPECT_EQ(repeat.count(), 0);
    ASSERT_FALSE(desk.told.isEmpty());
    EXPECT_TRUE(desk.told.last().contains(QStringLiteral("2 are selected")));
}

} // namespace shawlwright::app
