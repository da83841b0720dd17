// Markers in words: "pm", "sm", "remove marker", on the right side of what stands beside them.

#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

TEST(MarkerWords, PlacedSlippedRemoved)
{
    Knit knit(12);
    knit.rs("k*5 |A k*7").ws("k*12").rs("k*4 k2tog yo k*6").rs("k*5 -A k*7");
    const auto rows = written(knit);
    EXPECT_EQ(rows[0].text, "With MC, k5, pm, k7.");
    EXPECT_EQ(rows[1].text, "knit."); // slipped as it comes
    EXPECT_EQ(rows[3].text, "k5, remove marker, k7.");
}

TEST(MarkerWords, NamedWhereThereAreSeveral)
{
    Knit knit(12);
    knit.rs("k*5 |A k*2 |B k*5").ws("p*5 k*2 p*5").rs("k*5 -A k*2 -B |A k*5");
    EXPECT_EQ(textOf(knit, 0), "With MC, k5, pm A, k2, pm B, k5.");
    EXPECT_EQ(textOf(knit, 1), "p5, sm B, k2, sm A, p5.");
    EXPECT_EQ(textOf(knit, 2), "k5, remove marker A, k2, remove marker B, pm A, k5.");
}

// A yarn over beside a marker lies before or after it (Kate Atherley, 2006-08-13, on markers that wander).
TEST(MarkerWords, TheSideOfAYarnOverIsSaid)
{
    const auto second = [](const char* row) {
        Knit knit(12);
        knit.rs("k*5 |A k*7").row(Side::RS, row);
        return textOf(knit, 1);
    };
    EXPECT_EQ(second("k*5 ~A yo k*7"), "k5, sm, yo, k7.");
    EXPECT_EQ(second("k*5 yo ~A k*7"), "k5, yo, sm, k7.");
    EXPECT_EQ(second("k*5 yo ~A yo k*7"), "k5, yo, sm, yo, k7.");
    EXPECT_EQ(second("k*3 k2tog k*7"), "k3, k2tog, sm, k7.");
    const auto wrong = [](const char* row) {
        Knit knit(12);
        knit.rs("k*5 |A k*7").row(Side::WS, row);
        return textOf(knit, 1);
    };
    EXPECT_EQ(wrong("k*7 ~A yo k*5"), "k7, sm, yo, k5.");
    EXPECT_EQ(wrong("k*7 yo ~A k*5"), "k7, yo, sm, k5.");
}

TEST(MarkerWords, AtTheTipTheySayWhichSideOfAYarnOver)
{
    Knit knit(12);
    knit.rs("k*5 |A k*7")
        .ws("k*7 turn")
        .rs("~A yo k*7")
        .ws("k*8 turn")
        .rs("yo ~A k*8")
        .ws("k*9 turn")
        .rs("k*9");
    EXPECT_EQ(textOf(knit, 2), "sm, yo, k7.");
    EXPECT_EQ(textOf(knit, 4), "yo, sm, k8.");
    EXPECT_EQ(textOf(knit, 6), "knit.");
}

TEST(MarkerWords, ToAMarkerAndOn)
{
    Knit knit(12);
    knit.rs("k*5 |A k*7").ws("[ p ]A [ k ]end").rs("[ k ]A-2 k2tog yo [ k ]end");
    EXPECT_EQ(textOf(knit, 1), "p to marker, sm, k to end.");
    EXPECT_EQ(textOf(knit, 2), "k to 2 sts before marker, k2tog, sm, yo, k to end.");
}

TEST(MarkerWords, RunsThatPassOneAreSplit)
{
    Knit knit(12);
    knit.rs("k*5 |A k*7").rs("p k*10 p");
    EXPECT_EQ(textOf(knit, 1), "p1, k4, sm, k6, p1.");
}

TEST(MarkerWords, PlacedEachTimeARepeatIsWorked)
{
    Knit knit(8);
    knit.rs("[ k*2 |A! ]*2 k*4").rs("k [ |B! p*2 ]*2 [ k ]end");
    EXPECT_EQ(textOf(knit, 0), "With MC, [k2, pm A] twice, k4.");
    EXPECT_EQ(textOf(knit, 1), "k1, [pm B, p1, sm A, p1] twice, k to end.");
}

TEST(MarkerWords, OnceAtTheEdgeOfARepeatIsOutsideOfIt)
{
    Knit knit(8);
    knit.rs("k [ yo k2tog ]*2 |A k*3").ws("k*3 -A [ yo p2tog ]*2 k");
    EXPECT_EQ(textOf(knit, 0), "With MC, k1, [yo, k2tog] twice, pm, k3.");
    EXPECT_EQ(textOf(knit, 1), "k3, remove marker, [yo, p2tog] twice, k1.");
}

TEST(MarkerWords, SlippedEachTimeRound)
{
    Knit knit(16);
    knit.rs("k*4 |A k*4 |B k*4 |C k*4");
    knit.rs("[ k2tog yo k*2 ]*3 k*4");
    knit.rs("[ k2tog yo k*2 ]*4");
    knit.rs("k*4 [ k2tog yo k*2 ]*3");
    knit.rs("[ k*2 yo k2tog k*4 ]*2");
    knit.ws("p*4 [ p*2 yo p2tog ]*3");
    EXPECT_EQ(textOf(knit, 1), "[k2tog, yo, k2, sm] 3 times, k4.");
    EXPECT_EQ(textOf(knit, 2), "[k2tog, yo, k2] 4 times."); // none after the last time
    EXPECT_EQ(textOf(knit, 3), "k4, [sm, k2tog, yo, k2] 3 times.");
    EXPECT_EQ(textOf(knit, 4), "[k2, yo, k2tog, sm, k4] twice."); // that between the two times isn't steady
    EXPECT_EQ(textOf(knit, 5), "p4, [sm, p2, yo, p2tog] 3 times.");
}

TEST(MarkerWords, WithinARepeatWhereEachTimeHasOne)
{
    Knit knit(16);
    knit.rs("k*4 |A k*8 |B k*4").rs("[ k*4 k2tog yo k*2 ]*2").ws("[ p*4 p2tog yo p*2 ]*2");
    EXPECT_EQ(textOf(knit, 1), "[k4, sm, k2tog, yo, k2] twice."); // A the first time, B the second
    EXPECT_EQ(textOf(knit, 2), "[p4, sm, p2tog, yo, p2] twice.");
}

// Where the side of a yarn over differs from time to time, "[yo, k2tog, k2] 3 times" would leave it open.
TEST(MarkerWords, ARepeatIsToldTimeByTimeWhereAYarnOverIsInDoubt)
{
    Knit knit(16);
    knit.rs("k*4 |A k*4 |B k*8").rs("[ yo k2tog k*2 ]*3 k*4").rs("k [ yo k2tog k*2 ]end-3 k*3");
    EXPECT_EQ(textOf(knit, 1), "yo, [k2tog, k2, yo, sm] twice, k2tog, k6.");
    EXPECT_EQ(textOf(knit, 2), "k1, [yo, k2tog, k2, sm] twice, yo, k2tog, k5.");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[1].segments, (std::vector{5, 4, 7}));
    EXPECT_EQ(ledger.lines[2].segments, (std::vector{5, 4, 7}));
    Knit steady(16);
    steady.rs("k*4 |A k*4 |B k*8").rs("k*4 [ ~A yo k2tog k*2 ]*1 k*8");
    EXPECT_EQ(textOf(steady, 1), "k4, sm A, yo, k2tog, k2, sm B, k8.");
}

TEST(MarkerWords, OnlyWhatIsTrueEachTimeTheRowIsKnitted)
{
    Knit knit(12);
    knit.rs("k*5 |A k*7").rs("k yo [ k ]end").times(1, 3);
    EXPECT_EQ(textOf(knit, 1), "k1, yo, k to end.");
    Knit moving(12);
    moving.rs("k*5 |A k*7").rs("kfb k2tog k*9").ws("p*12").times(2, 2);
    EXPECT_EQ(textOf(moving, 1), "kfb, k2tog, k2, sm, k7.");
    Knit drifting(12);
    drifting.rs("k*5 |A k*7").rs("yo k*3 k2tog k*7").rs("yo k*9 k2tog k").times(1, 2);
    EXPECT_EQ(textOf(drifting, 2), "yo, k9, k2tog, k1."); // after k5, then after k6
}

TEST(MarkerWords, AMarkerAtTheEndIsNotSlipped)
{
    Knit knit(12);
    knit.rs("k*5 |A k*7").rs("k*5 turn").ws("k*5").rs("[ k ]A yo turn");
    EXPECT_EQ(textOf(knit, 1), "k5, turn, leaving 7 sts unworked.");
    EXPECT_EQ(textOf(knit, 3), "k to marker, yo, turn.");
}

// Found by the law of the two languages, seeds 10860 and 6568.
TEST(MarkerWords, AStandingMarkerAmongOthersOfItsNameIsSaidBesideAYarnOver)
{
    Knit knit(5);
    knit.rs(". . . . . kfb |B sl1 . turn").ws(". sl1 pfb p yo2 . .");
    knit.rs("slip:3 join . k2tog yo2 k [ kfb |B . ]turn . turn");
    EXPECT_EQ(textOf(knit, 2),
              "Slip first 3 sts to right needle, join MC, k2tog, yo twice, sm, k1, *kfb, pm; rep "
              "from * to last turn, turn.");
}

TEST(MarkerWords, ARepeatOfMoreThanSixtyTimesIsToldTimeByTimeToo)
{
    Knit knit(15, Side::WS);
    knit.ws(". [ yo p ]end-4 . . . . . turn:wt").rs(". . . . . [ k |B yo ]end-4 . turn:wt");
    knit.ws(". [ yo p ]end-4 p . . . . turn:wt").rs(". . . . . [ k yo ]end-4 . turn:wt");
    EXPECT_EQ(textOf(knit, 3),
              "k1, *yo, k1, sm, [yo, k1] 3 times; rep from * to last turn, yo, w&t, leaving 4 sts unworked.");
}

// Found by the law of the two languages: a marker placed where a repeat begins hid that another one is passed in it.
TEST(Markers, PassedInARepeatBesideWhichOneIsPlaced)
{
    Knit knit(7);
    knit.rs("k*3 |A k*4").rs("|B [ k yo2 ]end-1 k");
    EXPECT_EQ(textOf(knit, 1), "pm B, [k1, yo twice] 3 times, sm A, [k1, yo twice] 3 times, k1.");
}
