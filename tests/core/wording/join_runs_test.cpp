// A run that the chart draws in pieces is said as one.

#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

TEST(JoinRuns, PiecesOfOneStitchAreOneRun)
{
    EXPECT_EQ(textOf(Side::RS, "k*2 [ k ]end-3 yo k*3", 12), "k to last 3 sts, yo, k3.");
    EXPECT_EQ(textOf(Side::RS, "yo k*2 [ k ]end-3 k*3", 12), "yo, k to end.");
    EXPECT_EQ(textOf(Side::RS, "k*2 [ k ]end-7 k*4 p*3", 17), "k to last 3 sts, p3.");
    EXPECT_EQ(textOf(Side::RS, "k*2 [ k ]end-3 yo k k2tog", 13), "k to last 3 sts, yo, k1, k2tog.");
    EXPECT_EQ(textOf(Side::RS, "k*2 [ p ]end-3 k*3", 12), "k2, p to last 3 sts, k3.");
    EXPECT_EQ(textOf(Side::WS, "k*3 [ k ]end-4 k*4", 15), "knit.");
}

TEST(JoinRuns, MarkersSlippedWithinNeedNoWord)
{
    Knit knit(12);
    knit.pattern().head.yarns.resize(1);
    knit.rs("k*5 |A k*7").ws("k*2 [ k ]A-2 k*3 [ k ]end-3 k*3").rs("k [ k ]A-1 k yo k [ k ]end");
    const auto rows = written(knit);
    EXPECT_EQ(rows.at(1).text, "knit.");
    EXPECT_EQ(rows.at(1).phrases.front().firstColumn, 1);
    EXPECT_EQ(rows.at(2).text, "k to marker, yo, sm, k to end.");
}

TEST(JoinRuns, BindingOffAllIsSaidOnce)
{
    EXPECT_EQ(textOf(Side::RS, "[ bo ]end bindoff", 9), "bind off all sts.");
    EXPECT_EQ(textOf(Side::RS, "k*3 bindoff", 9), "k3, bind off rem sts.");
}
