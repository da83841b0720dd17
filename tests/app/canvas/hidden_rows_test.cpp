// Plain WS rows folded away on the canvas: where things lie then, and that nothing unseen is changed.
#include "tests/app/canvas/desk.h"

#include "core/edits/motifs.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QSignalSpy>

namespace shawlwright::app {

namespace {

// Rows 1 to 8 of 16 stitches, RS and WS by turns, each knit or purled; 9 to 12 are empty.
struct Folded : Desk {
    explicit Folded(bool hide = true) : Desk(12, 16)
    {
        for (int row = 0; row < 8; ++row)
            put("k", Area{row, row, 1, 16});
        canvas.setPlainRowsHidden(hide);
        settle();
        told.clear();
        before = steps();
    }
    void put(const char* key_, Area area)
    {
        EXPECT_TRUE(document.performOrTell(
            fill(document.pattern(), document.catalogue(), canvas.section(), area, stitch(key_))));
    }
    std::string hidden() const // labels
    {
        std::string text;
        for (int row = 0; row < static_cast<int>(section().rows.size()); ++row)
            if (canvas.hidesRow(row))
                text += (text.empty() ? "" : " ") + std::to_string(row + 1);
        return text;
    }
    std::vector<RowRef> plainRows() const
    {
        return {section().rows[1], section().rows[3], section().rows[5], section().rows[7]};
    }
    int before = 0;
};

Areas cells(std::initializer_list<int> rows, int firstColumn, int lastColumn)
{
    Areas areas;
    for (const int row : rows)
        areas.push_back(Area{row, row, firstColumn, lastColumn});
    return areas;
}

} // namespace

TEST(HiddenRows, HaveNoPlaceInTheView)
{
    Folded desk;
    EXPECT_EQ(desk.hidden(), "2 4 6 8");
    EXPECT_EQ(desk.canvas.hiddenRowsInWords(), QStringLiteral("4 WS rows (purl)"));
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(1, 4).isEmpty());
    const QRect one = desk.canvas.cellRectOnViewport(0, 4), three = desk.canvas.cellRectOnViewport(2, 4);
    EXPECT_EQ(three.bottom() + 1, one.top());
    EXPECT_EQ(desk.canvas.cellAtPoint(three.center()), std::optional(At{2, 4}));
    EXPECT_EQ(desk.canvas.cellAtPoint(QPoint(three.center().x(), three.bottom())), std::optional(At{2, 4}));
    EXPECT_EQ(desk.canvas.cellRectOnViewport(8, 4).bottom() + 1, desk.canvas.cellRectOnViewport(6, 4).top());
    desk.canvas.setPlainRowsHidden(false);
    EXPECT_EQ(desk.hidden(), "");
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(1, 4).isEmpty());
}

TEST(HiddenRows, ArePassedOverByTheKeys)
{
    Folded desk;
    desk.canvas.setCursor(At{0, 5});
    desk.type(Qt::Key_Up);
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 5}));
    desk.type(Qt::Key_Up);
    desk.type(Qt::Key_Down);
    desk.type(Qt::Key_Down);
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 5}));
    desk.type(Qt::Key_Home, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.cursor().row, 11);
    desk.type(Qt::Key_PageDown);
    EXPECT_EQ(desk.canvas.cursor().row, 0);
    EXPECT_EQ(desk.hidden(), "2 4 6 8"); // none came into view on the way
}

TEST(HiddenRows, ComeIntoViewWhereTheyAreGoneToOrNoLongerPlain)
{
    Folded desk;
    desk.canvas.setCursor(At{3, 5});
    EXPECT_EQ(desk.canvas.cursor(), (At{3, 5}));
    EXPECT_EQ(desk.hidden(), "2 6 8");
    desk.put("yo", Area{5, 5, 2, 2}); // by its words, say
    EXPECT_EQ(desk.hidden(), "2 8");
    desk.document.undoStack().undo();
    EXPECT_EQ(desk.hidden(), "2 6 8");
    EXPECT_EQ(desk.canvas.cursor().row, 4); // undo goes to its place, as near as it can be seen
    desk.canvas.setCursor(At{3, 5});
    // Hidden anew they are all gone, and the cursor is beside.
    desk.canvas.setPlainRowsHidden(false);
    desk.canvas.setPlainRowsHidden(true);
    EXPECT_EQ(desk.hidden(), "2 4 6 8");
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 5}));
}

TEST(HiddenRows, DoNotVanishUnderTheBrush)
{
    Folded desk;
    desk.brush("k");
    desk.drag(desk.middle(9, 1), desk.middle(9, 16));
    EXPECT_EQ(desk.key(9, 16), "k");
    EXPECT_EQ(desk.hidden(), "2 4 6 8"); // row 10 is plain now, and stays until rows are hidden anew
    desk.canvas.setPlainRowsHidden(false);
    desk.canvas.setPlainRowsHidden(true);
    EXPECT_EQ(desk.hidden(), "2 4 6 8 10");
}

TEST(HiddenRows, AreNotPaintedOver)
{
    Folded desk;
    const auto plain = desk.plainRows();
    desk.brush("p");
    desk.canvas.setTool(CanvasTool::Paint);
    desk.drag(desk.middle(0, 3), desk.middle(6, 9)); // one quick stroke over six rows
    for (const int row : {0, 2, 4, 6}) {
        int painted = 0;
        for (int column = 1; column <= 16; ++column)
            painted += desk.key(row, column) == "p" ? 1 : 0;
        EXPECT_GE(painted, 1) << row; // no gaps in the rows that are seen
    }
    desk.canvas.setTool(CanvasTool::Area);
    desk.drag(desk.middle(0, 12), desk.middle(6, 14));
    EXPECT_EQ(desk.key(4, 13), "p");
    EXPECT_EQ(desk.plainRows(), plain); // the very same rows
}

TEST(HiddenRows, AreLeftOutOfASelection)
{
    Folded desk;
    const auto plain = desk.plainRows();
    desk.canvas.setTool(CanvasTool::Select);
    desk.drag(desk.middle(0, 2), desk.middle(4, 5));
    EXPECT_EQ(desk.canvas.selected(), cells({0, 2, 4}, 2, 5));
    EXPECT_EQ(desk.canvas.selection(), std::optional(Area{0, 4, 2, 5})); // one rectangle to look at
    desk.canvas.eraseSelection();
    EXPECT_EQ(desk.key(2, 3), "no_st");
    EXPECT_EQ(desk.plainRows(), plain);
    desk.document.undoStack().undo();
    desk.canvas.selectAll();
    EXPECT_EQ(desk.canvas.selected().size(), 5u); // 1, 3, 5, 7, and the empty ones from 9 on
    EXPECT_FALSE(holds(desk.canvas.selected(), At{1, 1}));
    desk.canvas.select(Area{0, 0, 1, 16});
    desk.canvas.selectColumns();
    EXPECT_FALSE(holds(desk.canvas.selected(), At{3, 1}));
    desk.canvas.selectAreas(cells({0, 4}, 2, 5)); // row 3, which is seen, is not of it
    EXPECT_FALSE(desk.canvas.selection());
}

TEST(HiddenRows, ActsOnStitchesThatWouldChangeOneAreRefused)
{
    Folded desk;
    desk.put("yo", Area{2, 2, 3, 3});
    const auto plain = desk.plainRows();
    desk.canvas.select(Area{2, 2, 2, 5});
    const int steps = desk.steps();
    EXPECT_FALSE(desk.canvas.moveSelected(1, 0, Leaving::NoStitch));
    ASSERT_FALSE(desk.told.isEmpty());
    EXPECT_TRUE(desk.told.last().contains(QStringLiteral("Row 4: is hidden"))) << qPrintable(desk.told.last());
    EXPECT_EQ(desk.steps(), steps);
    EXPECT_TRUE(desk.canvas.moveSelected(2, 0, Leaving::NoStitch));
    EXPECT_EQ(desk.key(4, 3), "yo");
    EXPECT_EQ(desk.plainRows(), plain);
    EXPECT_EQ(desk.canvas.selected(), cells({4}, 2, 5));
    // A motif of both sides goes over plain rows as long as they stay what they are.
    const auto motif = motifOf(desk.document.pattern(), desk.document.catalogue(), desk.canvas.section(),
                               Area{4, 5, 2, 5}, "m");
    ASSERT_TRUE(motif.ok());
    desk.canvas.setStamp(motif.value());
    desk.canvas.setTool(CanvasTool::Stamp);
    desk.click(desk.middle(0, 9));
    EXPECT_EQ(desk.key(0, 10), "yo");
    EXPECT_EQ(desk.plainRows(), plain);
}

TEST(HiddenRows, GoWithTheRowBelowThemWhereWholeRowsMove)
{
    Folded desk;
    desk.put("yo", Area{0, 0, 3, 3});
    const RowId first = desk.section().rows[0]->id, second = desk.section().rows[1]->id;
    EXPECT_EQ(desk.canvas.withHidden({{0, 0}, {2, 2}}), (std::vector<IndexRun>{{0, 3}}));
    EXPECT_EQ(desk.canvas.withHidden({{0, 0}, {4, 4}}), (std::vector<IndexRun>{{0, 1}, {4, 5}}));
    desk.canvas.select(Area{0, 0, 1, 16});
    EXPECT_TRUE(desk.canvas.moveRows(0, 1, desk.canvas.rowBeside(2, 1))); // over rows 3 and 4
    EXPECT_EQ(desk.section().rows[2]->id, first);
    EXPECT_EQ(desk.section().rows[3]->id, second);
    EXPECT_EQ(desk.hidden(), "2 4 6 8");
    EXPECT_EQ(desk.canvas.selected(), cells({2}, 1, 16));
}

TEST(HiddenRows, KeepTheChartsOwnRowsInTheAsKnittedView)
{
    Folded desk;
    desk.canvas.setUnfolded(true);
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(1, 1).isEmpty());
    desk.canvas.setUnfolded(false);
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(1, 1).isEmpty());
}

TEST(HiddenRows, LookTheSameWhetherPaintedAnewOrPieceByPiece)
{
    Folded desk;
    desk.canvas.resize(900, 700);
    desk.canvas.show();
    desk.settle();
    desk.brush("yo");
    desk.drag(desk.middle(0, 3), desk.middle(6, 9));
    desk.put("p", Area{3, 3, 2, 2}); // comes back
    desk.settle();
    const QImage pieces = desk.canvas.viewport()->grab().toImage();
    desk.canvas.viewport()->repaint();
    EXPECT_EQ(pieces, desk.canvas.viewport()->grab().toImage());
    EXPECT_EQ(desk.hidden(), "2 6 8");
}

} // namespace shawlwright::app
