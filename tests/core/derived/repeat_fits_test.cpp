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
    EXPECT_EQ(timesThatFit(pattern, lace.catalogue(), pattern.sections[0].id, over(pattern, 3, 4), {}), 10);
    EXPECT_EQ(pattern.sections[0].frame.boxes.size(), 0u);
}

TEST(TimesThatFit, AreNotSaidWhereNoneDo)
{
    Knit odd(25);
    odd.rs("k*2 yo k2tog k*2");
    const Pattern pattern = odd.done();
    EXPECT_EQ(timesThatFit(pattern, odd.catalogue(), pattern.sections[0].id, over(pattern, 3, 4), {}),
              std::nullopt);
    EXPECT_EQ(timesThatFit(pattern, odd.catalogue(), pattern.sections[0].id, over(pattern, 3, 99), {}),
              std::nullopt); // no such columns

    Knit twice(8); // as it stands
    twice.rs("k*2 yo k2tog k*2");
    const Pattern fits = twice.done();
    EXPECT_EQ(timesThatFit(fits, twice.catalogue(), fits.sections[0].id, over(fits, 3, 4), {}), std::nullopt);
}
