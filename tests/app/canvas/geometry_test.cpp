#include "app/canvas/geometry.h"

#include <gtest/gtest.h>

namespace shawlwright::app {

const Gutters around{50, 80, 20, 30};

TEST(CanvasGeometry, StandsInTheMiddleWhereThereIsRoom)
{
    const CanvasGeometry view = laidOut(QSize(800, 600), around, Extent{10, 20}, 24, QPoint(99, 99));
    EXPECT_EQ(view.scroll, QPoint(0, 0));
    EXPECT_EQ(view.grid.size(), QSize(480, 240));
    EXPECT_EQ(view.grid.left(), 50 + (670 - 480) / 2);
    EXPECT_EQ(view.cellRect(0, 1), QRect(view.grid.right() - 23, view.grid.bottom() - 23, 24, 24));
    EXPECT_EQ(view.cellRect(9, 20).topLeft(), view.grid.topLeft());
    EXPECT_EQ(view.cellRect(3, 4, 2).right(), view.cellRect(3, 4).right()); // wide to the left
}

TEST(CanvasGeometry, EachCellIsFoundUnderItsOwnPixels)
{
    const CanvasGeometry view = laidOut(QSize(400, 300), around, Extent{50, 60}, 17, QPoint(123, 211));
    for (int row = 0; row < 50; ++row)
        for (int column = 1; column <= 60; ++column) {
            const QRect cell = view.cellRect(row, column);
            EXPECT_EQ(view.cellUnder(cell.topLeft()), (At{row, column}));
            EXPECT_EQ(view.cellUnder(cell.bottomRight()), (At{row, column}));
            EXPECT_EQ(view.boundaryNear(cell.left() + 2), column);
            EXPECT_EQ(view.boundaryNear(cell.right() - 2), column - 1);
        }
}

TEST(CanvasGeometry, ScrollIsHeldWithinTheChartAndShowsWhatIsAskedFor)
{
    const CanvasGeometry view =
        laidOut(QSize(400, 300), around, Extent{50, 60}, 20, QPoint(1 << 28, 1 << 28));
    EXPECT_EQ(view.scroll, view.farthest);
    EXPECT_EQ(view.cellRect(0, 1).bottomRight(), view.grid.bottomRight()); // the lower right corner is seen
    const QPoint wanted = view.scrollToShow(view.cellRect(49, 60));
    EXPECT_EQ(wanted, QPoint(0, 0));
    EXPECT_EQ(view.scrollToShow(view.cellRect(0, 1)), view.scroll);
}

TEST(CanvasGeometry, AnEmptyChartHasNoCells)
{
    const CanvasGeometry view = laidOut(QSize(400, 300), around, Extent{0, 0}, 20, QPoint());
    EXPECT_FALSE(view.cellsIn(QRect(0, 0, 400, 300)));
    EXPECT_FALSE(view.inside(At{0, 1}));
}

} // namespace shawlwright::app
