// Counts after rows. Source: Kniterations, Indicating Stitch Count Changes; Craft Star Studios, On Stitch
// Counts.

#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::vector<std::string> countsOf(Knit& knit, CountsShown shown = CountsShown::WhereTheyChange)
{
    Style style;
    style.counts = shown;
    std::vector<std::string> counts;
    for (const WrittenRow& row : written(knit, style))
        counts.push_back(row.count);
    return counts;
}

using Counts = std::vector<std::string>;

} // namespace

TEST(Counts, WhereTheyChange)
{
    Knit knit(4);
    knit.rs("k*2 yo k*2").ws("p*5").rs("k*3 k2tog").rs("k2tog*2").rs("k2tog");
    EXPECT_EQ(countsOf(knit), (Counts{"(5 sts)", "", "(4 sts)", "(2 sts)", "(1 st)"}));
    EXPECT_EQ(countsOf(knit, CountsShown::Always),
              (Counts{"(5 sts)", "(5 sts)", "(4 sts)", "(2 sts)", "(1 st)"}));
    EXPECT_EQ(countsOf(knit, CountsShown::Never), Counts(5));
}

TEST(Counts, RepeatedRowsSayTheChangeAndTheBlockTheTotal)
{
    Knit knit(4);
    knit.rs("k yo [ k ]end-1 yo k").ws("p yo p2tog [ p ]end").times(2, 5).rs("k2tog [ k ]end");
    EXPECT_EQ(countsOf(knit), (Counts{"(2 sts inc)", "", "(14 sts)", "(13 sts)"}));
    Knit down(9);
    down.rs("k2tog [ k ]end").times(1, 3);
    EXPECT_EQ(countsOf(down), (Counts{"(1 st dec)", "(6 sts)"}));
}

TEST(Counts, ARepeatThatChangesNothingHasNone)
{
    Knit knit(4);
    knit.rs("k*4").ws("p*4").times(2, 5);
    EXPECT_EQ(countsOf(knit), Counts(3));
    EXPECT_EQ(countsOf(knit, CountsShown::Always), Counts(3, "(4 sts)"));
}

TEST(Counts, AnInnerRepeatOnlyWhereEachTimeEndsAlike)
{
    Knit knit(4);
    knit.rs("k yo [ k ]end").times(1, 2).ws("[ p ]end").times(2, 3);
    // Rows 1, 1, 2 three times: 5 6 / 7 8 / 9 10. The inner repeat ends at 6, 8 and 10.
    EXPECT_EQ(countsOf(knit), (Counts{"(1 st inc)", "", "", "(10 sts)"}));
}

TEST(Counts, ShortRowsSayWhatWasWorked)
{
    Knit knit(20);
    knit.rs("k*15 turn").ws("k*10 turn").rs("[ k ]end").ws("[ p ]end");
    EXPECT_EQ(countsOf(knit),
              (Counts{"(15 sts worked, 5 unworked)", "(10 sts worked, 10 unworked)", "", "(20 sts)"}));
    Knit leaving(20); // "k2, yo, k3, turn, leaving 15 sts unworked" need not say it again
    leaving.rs("k*2 yo k*3 turn").ws("p*6");
    EXPECT_EQ(countsOf(leaving), (Counts{"(6 sts worked)", ""}));
}

TEST(Counts, TheStatedCountIsPrinted)
{
    Knit knit(4);
    knit.rs("k*4").stated(4).ws("p*4").stated(Quantity(std::vector{4, 6}));
    EXPECT_EQ(countsOf(knit), (Counts{"(4 sts)", "(4 (6) sts)"}));
    EXPECT_EQ(countsOf(knit, CountsShown::Never), Counts(2));
}

TEST(Counts, NothingIsCountedAfterBindingOff)
{
    Knit knit(4);
    knit.rs("bindoff");
    EXPECT_EQ(countsOf(knit, CountsShown::Always), Counts{""});
}
