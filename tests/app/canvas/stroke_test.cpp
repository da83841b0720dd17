#include "app/canvas/stroke.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace shawlwright::app {

TEST(Stroke, LeavesNoGapAtAnySlope)
{
    for (int rows = -200; rows <= 200; rows += 25)
        for (int columns = -200; columns <= 200; columns += 25) {
            const std::vector<At> cells = cellsBetween(At{300, 300}, At{300 + rows, 300 + columns});
            EXPECT_EQ(cells.front(), (At{300, 300}));
            EXPECT_EQ(cells.back(), (At{300 + rows, 300 + columns}));
            EXPECT_EQ(cells.size(),
                      static_cast<std::size_t>(std::max(std::abs(rows), std::abs(columns))) + 1);
            for (std::size_t at = 1; at < cells.size(); ++at) {
                EXPECT_LE(std::abs(cells[at].row - cells[at - 1].row), 1);
                EXPECT_LE(std::abs(cells[at].column - cells[at - 1].column), 1);
                EXPECT_NE(cells[at], cells[at - 1]);
            }
        }
}

TEST(Stroke, GivesEachCellOnce)
{
    Stroke stroke(10, 10, 1);
    EXPECT_EQ(stroke.to(At{2, 2}).size(), 1u);
    EXPECT_EQ(stroke.to(At{2, 6}).size(), 4u);
    EXPECT_TRUE(stroke.to(At{2, 2}).empty());
}

TEST(Stroke, IsCutAtTheEdgeAndComesBackWhereItReturns)
{
    Stroke stroke(10, 10, 1);
    (void)stroke.to(At{5, 8});
    EXPECT_EQ(stroke.to(At{5, 14}), (std::vector<At>{{5, 9}, {5, 10}}));
    EXPECT_TRUE(stroke.to(At{8, 14}).empty());
    EXPECT_EQ(stroke.to(At{8, 9}), (std::vector<At>{{8, 10}, {8, 9}})); // not joined to where it left
}

TEST(Stroke, SetsAWideBrushSideBySide)
{
    Stroke stroke(4, 10, 2);
    EXPECT_EQ(stroke.to(At{0, 3}), (std::vector<At>{{0, 3}}));
    EXPECT_EQ(stroke.to(At{0, 10}), (std::vector<At>{{0, 5}, {0, 7}, {0, 9}}));
    EXPECT_EQ(stroke.to(At{0, 1}), (std::vector<At>{{0, 1}}));
    Stroke atEdge(4, 10, 3);
    (void)atEdge.to(At{0, 8});
    EXPECT_EQ(atEdge.to(At{1, 10}), (std::vector<At>{{1, 8}})); // 9 would reach past the edge
}

} // namespace shawlwright::app
