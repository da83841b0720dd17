// A pattern of one of its sizes is knitted as that size is in the pattern of all.
#include "core/pattern/one_size.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

TEST(OneSize, KnitsLikeThatSizeOfTheWhole)
{
    Knit knit(20);
    knit.pattern().head.sizes = {"Small", "Middle", "Large"};
    knit.pattern().head.castOn.stitches = Quantity(std::vector<int>{20, 24, 28});
    knit.rs("k*3 [ yo k2tog ]*7 k*3").ws("[ p ]end");
    knit.rs("k yo [ k ]end-3 turn").ws("[ p ]end").times(2, Quantity(std::vector<int>{2, 3, 5}));
    knit.rs("[ k ]end").stated(Quantity(std::vector<int>{22, 27, 33}));
    Pattern pattern = knit.done();
    Box& first = pattern.sections[0].frame.boxes.front();
    ASSERT_EQ(first.until, BoxUntil::Times);
    first.times = Quantity(std::vector<int>{7, 9, 11});
    for (Box& box : pattern.sections[0].frame.boxes)
        if (box.leaving == Quantity(3))
            box.leaving = Quantity(std::vector<int>{3, 4, 5});
    for (int size = 0; size < 3; ++size) {
        const Ledger whole = run(pattern, knit.catalogue(), {0, size});
        const Pattern alone = ofOneSize(pattern, size);
        EXPECT_EQ(alone.head.sizes, std::vector<std::string>{pattern.head.sizes[static_cast<std::size_t>(size)]});
        const Ledger one = run(alone, knit.catalogue(), {0, 0});
        EXPECT_TRUE(one.lines == whole.lines) << size;
        EXPECT_TRUE(one.before == whole.before) << size;
        EXPECT_TRUE(ofOneSize(alone, size) == alone) << size;
    }
    EXPECT_TRUE(ofOneSize(pattern, 9) == ofOneSize(pattern, 2));
}
