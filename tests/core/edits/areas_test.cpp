// What is selected, as a set of rectangles; and the edits on all of them at once.

#include "core/edits/selected.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace shawlwright {
namespace {

using namespace test;

std::set<At> cells(const Areas& areas)
{
    std::set<At> result;
    int counted = 0;
    for (const Area& area : areas)
        for (int row = area.firstRow; row <= area.lastRow; ++row)
            for (int column = area.firstColumn; column <= area.lastColumn; ++column, ++counted)
                result.insert({row, column});
    EXPECT_EQ(counted, static_cast<int>(result.size())) << "rectangles overlap";
    return result;
}

TEST(Areas, RectanglesThatMakeARectangleAreOne)
{
    Areas areas = joined({}, Area{2, 3, 1, 4});
    areas = joined(areas, Area{2, 3, 5, 9});
    areas = joined(areas, Area{0, 1, 1, 9});
    EXPECT_EQ(areas, (Areas{Area{0, 3, 1, 9}}));
    EXPECT_EQ(joined(areas, Area{5, 4, 1, 9}), areas); // without rows it adds nothing
}

TEST(Areas, TakingTheMiddleLeavesARing)
{
    const Areas ring = without({Area{0, 4, 1, 5}}, Area{1, 3, 2, 4});
    EXPECT_EQ(ring, (Areas{Area{0, 0, 1, 5}, Area{1, 3, 1, 1}, Area{1, 3, 5, 5}, Area{4, 4, 1, 5}}));
    EXPECT_EQ(cellsIn(ring), 16);
    EXPECT_TRUE(holds(ring, {0, 3}));
    EXPECT_FALSE(holds(ring, {2, 3}));
    EXPECT_EQ(around(ring), (Area{0, 4, 1, 5}));
    EXPECT_EQ(rowRuns(ring), (std::vector<IndexRun>{{0, 4}}));
    EXPECT_EQ(joined(ring, Area{1, 3, 2, 4}), (Areas{Area{0, 4, 1, 5}}));
}

TEST(Areas, RunsHaveNoGaps)
{
    const Areas areas = joined(joined(joined({}, Area{0, 1, 1, 2}), Area{2, 2, 9, 9}), Area{6, 7, 4, 5});
    EXPECT_EQ(rowRuns(areas), (std::vector<IndexRun>{{0, 2}, {6, 7}}));
    EXPECT_EQ(columnRuns(areas), (std::vector<IndexRun>{{1, 2}, {4, 5}, {9, 9}}));
    EXPECT_EQ(clipped(areas, 7, 8), (Areas{Area{0, 1, 1, 2}, Area{6, 6, 4, 5}}));
    EXPECT_EQ(around({}), std::nullopt);
}

// Against a plain set of cells: what was added and not taken again; and equal sets are equal lists.
TEST(Areas, AgreeWithASetOfCells)
{
    std::mt19937 random(7);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int run = 0; run < 200; ++run) {
        Areas areas;
        std::set<At> model;
        for (int step = 0; step < 8; ++step) {
            const int row = below(6), column = 1 + below(6);
            const Area area{row, row + below(3), column, column + below(3)};
            const bool takes = below(3) == 0;
            areas = takes ? without(areas, area) : joined(areas, area);
            for (const At at : cells({area}))
                takes ? void(model.erase(at)) : void(model.insert(at));
        }
        ASSERT_EQ(cells(areas), model) << "seed 7, run " << run;
        Areas other; // the same set, cell by cell, from the end
        for (auto at = model.rbegin(); at != model.rend(); ++at)
            other = joined(other, Area{at->row, at->row, at->column, at->column});
        ASSERT_EQ(areas, other) << "seed 7, run " << run;
    }
}

TEST(Selected, AllAreasAreFilledAndErasedInOneEdit)
{
    Pattern pattern = patternOf({"- - - - - -", "p p p p p p", "- - - - - -"}, 6);
    const Pattern before = pattern;
    const Areas areas = joined(joined({}, Area{0, 1, 1, 2}), Area{1, 2, 5, 6});
    auto filled = fill(pattern, smallCatalogue(), body, areas, st("k"));
    ASSERT_TRUE(filled.ok());
    EXPECT_EQ(filled.value().steps.size(), 1u);
    const Applied applied = apply(pattern, filled.value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "k k - - - -");
    EXPECT_EQ(dump(rowOf(pattern, 1)), "k k p p k k");
    EXPECT_EQ(dump(rowOf(pattern, 2)), "- - - - k k");
    auto gone = erase(pattern, smallCatalogue(), body, areas);
    ASSERT_TRUE(gone.ok());
    apply(pattern, gone.value());
    EXPECT_EQ(dump(rowOf(pattern, 1)), "- - p p - -");
    pattern = before;
    auto narrow = fill(pattern, smallCatalogue(), body, joined({}, Area{0, 0, 1, 2}), st("c4"));
    ASSERT_FALSE(narrow.ok());
    EXPECT_NE(narrow.fault().message.find("4"), std::string::npos);
    EXPECT_EQ(pattern, before);
}

TEST(Selected, RowsAndColumnsWithGapsGoInOneEdit)
{
    Pattern pattern = patternOf({"k - - -", "- k - -", "- - k -", "- - - k"}, 4);
    const Pattern before = pattern;
    auto rows = deleteRows(pattern, body, std::vector<IndexRun>{{0, 0}, {2, 3}});
    ASSERT_TRUE(rows.ok());
    EXPECT_EQ(rows.value().name, "delete 3 rows");
    Applied applied = apply(pattern, rows.value());
    ASSERT_EQ(pattern.sections[0].rows.size(), 1u);
    EXPECT_EQ(dump(rowOf(pattern, 0)), "- k - -");
    apply(pattern, applied.takeBack);
    EXPECT_EQ(pattern, before);
    auto columns = deleteColumns(pattern, smallCatalogue(), body, std::vector<IndexRun>{{1, 1}, {3, 3}});
    ASSERT_TRUE(columns.ok());
    applied = apply(pattern, columns.value());
    EXPECT_EQ(dump(rowOf(pattern, 1)), "k -");
    EXPECT_EQ(dump(rowOf(pattern, 3)), "- k");
    apply(pattern, applied.takeBack);
    EXPECT_EQ(pattern, before);
    EXPECT_FALSE(deleteRows(pattern, body, std::vector<IndexRun>{{0, 1}, {2, 3}}).ok()); // one has to stay
}

} // namespace
} // namespace shawlwright
