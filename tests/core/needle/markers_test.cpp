#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

using Kinds = std::vector<std::string>;

} // namespace

TEST(Markers, StayBetweenTheirStitches)
{
    Knit knit(8);
    knit.rs("k*3 |A k*5").ws("p*8").rs("k2tog k*6").ws("p*7");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[1].segments, (std::vector<int>{3, 5}));
    EXPECT_EQ(ledger.lines[2].segments, (std::vector<int>{2, 5}));
    EXPECT_EQ(ledger.lines[3].segments, (std::vector<int>{2, 5}));
    EXPECT_EQ(kinds(ledger), Kinds{}) << told(ledger, knit.pattern());
}

TEST(Markers, TheChartSaysOnWhichSideAYarnOverFalls)
{
    // The marker stands after column 4 below; the yarn over is drawn in column 4, so before the marker.
    Knit before(6);
    before.rs("k*3 . |A k*3").rs("k*3 yo k*3");
    before.pattern().sections[0].rows[1] = [&] {
        Row row = *before.pattern().sections[0].rows[1];
        row.side = Side::RS;
        return std::make_shared<const Row>(row);
    }();
    Pattern pattern = before.done();
    Row first = *pattern.sections[0].rows[0];
    first.finish.kind = FinishKind::Slide;
    pattern.sections[0].rows[0] = std::make_shared<const Row>(first);
    const Ledger ledger = run(pattern, before.catalogue());
    EXPECT_EQ(ledger.lines[1].segments, (std::vector<int>{4, 3}));

    Knit after(6);
    after.rs("k*3 |A k*3 slide").rs("k*3 yo k*3");
    EXPECT_EQ(after.run().lines[1].segments, (std::vector<int>{3, 4}));
}

TEST(Markers, AShiftMoveSaysItOutright)
{
    Knit knit(6);
    knit.rs("k*3 |A k*3 slide").rs("join k*3 yo ~A k*3", "CC");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[1].segments, (std::vector<int>{4, 3}));
    EXPECT_EQ(kinds(ledger), Kinds{}) << told(ledger, knit.pattern());

    Knit wrongSide(6);
    wrongSide.rs("k*3 |A k*3").ws("p*3 yo ~A p*3").rs("k*7").ws("p*3 ~A yo p*4");
    EXPECT_EQ(wrongSide.run().lines[1].segments, (std::vector<int>{3, 4}));
    EXPECT_EQ(kinds(wrongSide.run()), Kinds{"marker-not-there"});
}

TEST(Markers, ADecreaseMayNotSwallowThem)
{
    Knit knit(7);
    knit.rs("k*3 |A k*4").ws("p*7").rs("k*2 sk2p k*2");
    const Ledger ledger = knit.run();
    EXPECT_EQ(kinds(ledger), Kinds{"marker-straddled"});
    EXPECT_EQ(ledger.findings[0].column, 3);
    EXPECT_EQ(ledger.findings[0].mend.kind, MendKind::RemoveMarkerFirst);
    EXPECT_NE(ledger.findings[0].message.find("marker A"), std::string::npos);

    Knit mended(7);
    mended.rs("k*3 |A k*4").ws("p*7").rs("k*2 -A sk2p |A k*2");
    const Ledger second = mended.run();
    EXPECT_EQ(kinds(second), Kinds{}) << told(second, mended.pattern());
    EXPECT_EQ(second.lines[2].segments, (std::vector<int>{3, 2}));
}

TEST(Markers, StayOnTheSideOfADecreaseOnWhichTheChartHasThem)
{
    Knit under(7);
    under.rs("k*3 |A k*4").ws("p*7").rs("k*2 sk2p k*2");
    EXPECT_EQ(under.run().lines[2].segments, (std::vector<int>{3, 2}));

    Knit past(7);
    past.rs("k*3 |A k*4").ws("p*7").rs("k*2 . sk2p k*2");
    const Ledger ledger = past.run();
    EXPECT_EQ(kinds(ledger), Kinds{"marker-straddled"});
    EXPECT_EQ(ledger.lines[2].segments, (std::vector<int>{2, 3}));
    EXPECT_NE(ledger.findings[0].message.find("put it back before that stitch"), std::string::npos);

    Knit mended(7);
    mended.rs("k*3 |A k*4").ws("p*7").rs("k*2 . -A |A sk2p k*2");
    EXPECT_EQ(kinds(mended.run()), Kinds{}) << told(mended.run(), mended.pattern());
    EXPECT_EQ(mended.run().lines[2].segments, (std::vector<int>{2, 3}));
}

TEST(Markers, PlacedTwiceRemovedElsewhereAndInsideADoubleYarnOver)
{
    Knit twice(6);
    twice.rs("k*3 |A k*3").ws("p*2 |A p*4");
    EXPECT_EQ(kinds(twice.run()), Kinds{"marker-placed-twice"});

    Knit gone(6);
    gone.rs("k*3 |A k*3").ws("p -A p*5");
    EXPECT_EQ(kinds(gone.run()), Kinds{"marker-not-there"});
    EXPECT_NE(gone.run().findings[0].message.find("2 stitches farther on"), std::string::npos);

    Knit inside(4);
    inside.rs("k*2 yo2 k*2");
    Row row = *inside.pattern().sections[0].rows[0];
    inside.pattern().head.markers.push_back({MarkerId{1}, "A"});
    row.moves.push_back({MarkerId{1}, 3, MoveKind::Place, MoveReach::Once});
    inside.pattern().sections[0].rows[0] = std::make_shared<const Row>(row);
    EXPECT_EQ(kinds(inside.run()), Kinds{"marker-in-yarn-over"});
}

TEST(Markers, MovesAtTheEdgeOfARepeatAreOnceOrEachTime)
{
    Knit each(9);
    each.rs("[ k*3 |A! ]*3");
    EXPECT_EQ(dumpEnd(each.run()), "3 | 3 | 3 |");
    Knit once(9);
    once.rs("[ k*3 ]*3 |A");
    EXPECT_EQ(dumpEnd(once.run()), "9 |");
}

TEST(Markers, RepeatsGoToTheNextMarkerOfThatName)
{
    Knit knit(12);
    knit.rs("k*4 |A k*4 |B k*4").ws("[ k ]B-1 k2tog [ k ]A-0 [ p ]end");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[1].segments, (std::vector<int>{4, 4, 3}));
    EXPECT_EQ(kinds(ledger), Kinds{"marker-straddled"}); // k2tog over marker B, drawn past it
    Knit behind(12);
    behind.rs("k*4 |A k*8").ws("p*10 [ p ]A-0 p*2");
    EXPECT_EQ(kinds(behind.run()), Kinds{"marker-not-there"});
}

TEST(Markers, FallOffWithTheBindOff)
{
    Knit knit(6);
    knit.rs("k*3 |A k*3").ws("bindoff");
    EXPECT_TRUE(knit.run().before.back().markers.empty());
    EXPECT_EQ(knit.run().lines[1].after, 0);
}

// Found by the law of written and read rows: a repeat places a marker each time, but none that stands there from before.
TEST(Markers, ARepeatDoesNotPlaceOneThatStandsThere)
{
    Knit each(9);
    each.rs("[ k*3 |A! ]*3").ws("p*9");
    EXPECT_EQ(kinds(each.run()), Kinds{});
    EXPECT_EQ(each.run().lines[0].segments, (std::vector<int>{3, 3, 3, 0}));
    Knit again(9);
    again.rs("k*3 |A k*6").ws("[ p*3 |A! ]*3");
    EXPECT_EQ(kinds(again.run()), Kinds{"marker-placed-twice"});
    EXPECT_EQ(again.run().lines[1].segments, (std::vector<int>{3, 6}));
}
