// Numbers beside low rows: none over another, and both sides have theirs.
#include "app/canvas/shown_numbers.h"

#include <gtest/gtest.h>

#include <random>
#include <set>
#include <vector>

namespace shawlwright::app {

namespace {

NumberedRows rowsOf(const std::vector<Side>& sides)
{
    return {static_cast<int>(sides.size()), false, [](int row) { return row + 1; },
            [&sides](int row) { return sides[static_cast<std::size_t>(row)]; }};
}

std::vector<Side> byTurns(int rows)
{
    std::vector<Side> sides;
    for (int row = 0; row < rows; ++row)
        sides.push_back(row % 2 == 0 ? Side::RS : Side::WS);
    return sides;
}

} // namespace

TEST(ShownNumbers, NoTwoInAColumnComeNearerThanTheirHeight)
{
    std::mt19937 random(46);
    for (int round = 0; round < 400; ++round) {
        std::vector<Side> sides = byTurns(1 + static_cast<int>(random() % 60));
        if (round % 2 == 1)
            for (Side& side : sides)
                side = random() % 3 == 0 ? Side::WS : Side::RS; // short rows and the like
        const NumberedRows rows = rowsOf(sides);
        const int cell = 2 + static_cast<int>(random() % 40), high = 8 + static_cast<int>(random() % 40);
        int lastCount = -1, lastLabel[2] = {-1, -1};
        for (int row = 0; row < rows.rows; ++row) {
            if (countShown(rows, row, cell, high)) {
                if (lastCount >= 0) {
                    EXPECT_GE((row - lastCount) * cell, high) << "cell " << cell << ", row " << row + 1;
                }
                lastCount = row;
            }
            if (labelShown(rows, row, cell, high)) {
                int& last = lastLabel[rows.side(row) == Side::RS ? 0 : 1];
                if (last >= 0) {
                    EXPECT_GE((row - last) * cell, high) << "seed 46, cell " << cell << ", high " << high << ", row " << row + 1;
                }
                last = row;
            }
        }
    }
}

TEST(ShownNumbers, RowsOfBothSidesHaveTheirs)
{
    const std::vector<Side> sides = byTurns(60);
    const NumberedRows rows = rowsOf(sides);
    for (int row = 0; row < 60; ++row)
        EXPECT_TRUE(labelShown(rows, row, 24, 28)) << "each side has room for all its own";
    for (const auto& [cell, high] : {std::pair(24, 28), std::pair(11, 14), std::pair(6, 28)}) {
        std::set<Side> counted, labelled;
        for (int row = 1; row < 60; ++row) {
            if (countShown(rows, row, cell, high))
                counted.insert(sides[static_cast<std::size_t>(row)]);
            if (labelShown(rows, row, cell, high))
                labelled.insert(sides[static_cast<std::size_t>(row)]);
        }
        EXPECT_EQ(counted.size(), 2u) << cell;
        EXPECT_EQ(labelled.size(), 2u) << cell;
    }
}

} // namespace shawlwright::app
