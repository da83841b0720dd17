// A stitch repeat about to be made knows how often it must be worked.

#include "tests/support/knit.h"

#include "core/derived/repeat_fits.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

Box over(const Pattern& pattern, int firstColumn, int lastColumn)
{
    Box box;
    box.firstRow = box.lastRow = pattern.sections[0].rows[0]->id;
    box.firstColumn = firstColumn;
    box.lastColumn = lastColumn;
    return box;
}

} // namespace

TEST(TimesThatFit, FillTheRow)
{
    Knit lace(24); // 2 + 10 x 2 + 2
    lace.rs("k*2 yo k2tog k*2");
    const Pattern pattern = lace.done();
    EXPECT_EQ(timesThatFitEach(pattern, lace.catalogue(), pattern.sections[0].id, over(pattern, 3, 4), {}), Quantity(10));
    EXPECT_EQ(pattern.sections[0].frame.boxes.size(), 0u);
    EXPECT_EQ(timesThatFitEach(pattern, lace.catalogue(), pattern.sections[0].id, over(pattern, 3, 99), {}),
              std::nullopt); // no such columns
}

// 14 = 4 + 10, 22 = 4 + 18: the arithmetic of the row, no source.
TEST(TimesThatFitEach, AreANumberPerSize)
{
    Knit lace(14);
    lace.rs("k*2 yo k2tog k*2");
    Pattern pattern = lace.done();
    pattern.head.sizes = {"Small", "Large"};
    pattern.head.castOn.stitches = Quantity(std::vector<int>{14, 22});
    const SectionId id = pattern.sections[0].id;
    EXPECT_EQ(timesThatFitEach(pattern, lace.catalogue(), id, over(pattern, 3, 4), {}), Quantity(std::vector<int>{5, 9}));
    pattern.head.castOn.stitches = Quantity(std::vector<int>{14, 6}); // one of them as it stands
    EXPECT_EQ(timesThatFitEach(pattern, lace.catalogue(), id, over(pattern, 3, 4), {}), Quantity(std::vector<int>{5, 1}));
    pattern.head.castOn.stitches = Quantity(14);
    EXPECT_EQ(timesThatFitEach(pattern, lace.catalogue(), id, over(pattern, 3, 4), {}), Quantity(5));
}

TEST(TimesThatFitEach, AreAsManyAsThereAreStitchesForWhereNoneComeOut)
{
    Knit odd(25);
    odd.rs("k*2 yo k2tog k*2");
    Pattern pattern = odd.done();
    const SectionId id = pattern.sections[0].id;
    EXPECT_EQ(timesThatFitEach(pattern, odd.catalogue(), id, over(pattern, 3, 4), {}), Quantity(10)); // one is left
    EXPECT_EQ(timesThatFitEach(pattern, odd.catalogue(), id, over(pattern, 3, 99), {}), std::nullopt);
    pattern.head.sizes = {"Small", "Large"};
    pattern.head.castOn.stitches = Quantity(std::vector<int>{5, 25}); // too few for those beside it
    EXPECT_EQ(timesThatFitEach(pattern, odd.catalogue(), id, over(pattern, 3, 4), {0, 1}), Quantity(10));
}
