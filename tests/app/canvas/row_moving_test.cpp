// Whole rows dragged by their numbers.
#include "tests/app/canvas/desk.h"

#include "core/edits/sections.h"

#include <gtest/gtest.h>

namespace shawlwright::app {

namespace {

std::string order(const Desk& desk) // of the row ids, which are 1 and up at first
{
    std::string text;
    for (const RowRef& row : desk.section().rows)
        text += (text.empty() ? "" : " ") + std::to_string(row->id.value);
    return text;
}

void bracket(Desk& desk, int first, int last)
{
    SectionFrame frame = desk.section().frame;
    frame.brackets.push_back({desk.section().rows[static_cast<std::size_t>(first)]->id,
                              desk.section().rows[static_cast<std::size_t>(last)]->id, Quantity(3), {}});
    ASSERT_TRUE(desk.document.performOrTell(setFrame(desk.document.pattern(), desk.section().id, frame, "repeat rows")));
}

} // namespace

TEST(RowsByTheirNumbers, AreDraggedAsOneStep)
{
    Desk desk(6, 8);
    const int steps = desk.steps();
    desk.drag(desk.rowNumber(0), desk.rowNumber(1)); // selects them
    EXPECT_EQ(desk.canvas.selection(), std::optional(Area{0, 1, 1, 8}));
    desk.press(desk.rowNumber(0));
    desk.move(desk.rowNumber(2));
    const int above = desk.canvas.cellRectOnViewport(3, 1).top();
    desk.move(QPoint(desk.rowNumber(3).x(), above + 2));
    ASSERT_FALSE(desk.told.isEmpty());
    EXPECT_TRUE(desk.told.last().contains(QStringLiteral("below row 5"))) << qPrintable(desk.told.last());
    EXPECT_EQ(desk.steps(), steps);
    desk.release(QPoint(desk.rowNumber(3).x(), above + 2));
    EXPECT_EQ(order(desk), "3 4 1 2 5 6");
    EXPECT_EQ(desk.steps(), steps + 1);
    EXPECT_EQ(desk.canvas.selection(), std::optional(Area{2, 3, 1, 8})); // it goes along
    EXPECT_EQ(desk.canvas.cursor().row, 2);
    desk.document.undoStack().undo();
    EXPECT_EQ(order(desk), "1 2 3 4 5 6");
}

TEST(RowsByTheirNumbers, GoToTheTopAndToTheBottom)
{
    Desk desk(4, 8);
    desk.click(desk.rowNumber(1));
    const QRect top = desk.canvas.cellRectOnViewport(3, 1), bottom = desk.canvas.cellRectOnViewport(0, 1);
    desk.drag(desk.rowNumber(1), QPoint(desk.rowNumber(1).x(), top.top() + 1));
    EXPECT_EQ(order(desk), "1 3 4 2");
    desk.drag(desk.rowNumber(3), QPoint(desk.rowNumber(1).x(), bottom.bottom() - 1));
    EXPECT_EQ(order(desk), "2 1 3 4");
    const int steps = desk.steps();
    desk.drag(desk.rowNumber(0), QPoint(desk.rowNumber(0).x() + 40, bottom.center().y())); // where it was
    EXPECT_EQ(desk.steps(), steps);
}

TEST(RowsByTheirNumbers, StayWithEscapeAndWithAClick)
{
    Desk desk(6, 8);
    desk.drag(desk.rowNumber(0), desk.rowNumber(2));
    const int steps = desk.steps();
    desk.press(desk.rowNumber(1));
    desk.move(desk.rowNumber(4));
    EXPECT_TRUE(desk.canvas.strokeOpen());
    desk.type(Qt::Key_Escape);
    EXPECT_FALSE(desk.canvas.strokeOpen());
    desk.release(desk.rowNumber(4));
    EXPECT_EQ(desk.steps(), steps);
    EXPECT_EQ(desk.canvas.selection(), std::optional(Area{0, 2, 1, 8}));
    desk.click(desk.rowNumber(1)); // a click selects that row alone
    EXPECT_EQ(desk.canvas.selection(), std::optional(Area{1, 1, 1, 8}));
    EXPECT_EQ(desk.steps(), steps);
}

TEST(RowsByTheirNumbers, AreOnlyDraggedWhereWholeRowsAreSelected)
{
    Desk desk(6, 8);
    desk.canvas.select(Area{0, 1, 2, 5});
    desk.drag(desk.rowNumber(0), desk.rowNumber(3)); // selects rows instead
    EXPECT_EQ(order(desk), "1 2 3 4 5 6");
    EXPECT_EQ(desk.canvas.selection(), std::optional(Area{0, 3, 1, 8}));
    desk.canvas.selectAreas({Area{0, 0, 1, 8}, Area{2, 2, 1, 8}});
    desk.told.clear();
    desk.drag(desk.rowNumber(0), desk.rowNumber(5));
    EXPECT_EQ(order(desk), "1 2 3 4 5 6");
    ASSERT_FALSE(desk.told.isEmpty());
    EXPECT_TRUE(desk.told.last().contains(QStringLiteral("Rows 1, 3 are selected"))) << qPrintable(desk.told.last());
}

TEST(RowsByTheirNumbers, KeepRowRepeatsWhole)
{
    Desk desk(6, 8);
    bracket(desk, 1, 2);
    desk.canvas.select(Area{1, 2, 1, 8});
    EXPECT_TRUE(desk.canvas.moveRows(1, 2, 5)); // the repeat goes along
    EXPECT_EQ(order(desk), "1 4 5 2 3 6");
    const Bracket& moved = desk.section().frame.brackets.front();
    EXPECT_EQ(moved.firstRow, RowId{2});
    EXPECT_EQ(moved.lastRow, RowId{3});
    EXPECT_TRUE(faultsOf(desk.document.pattern(), desk.document.catalogue()).empty());
}

} // namespace shawlwright::app
