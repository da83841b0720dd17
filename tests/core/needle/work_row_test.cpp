#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Case {
    const char* row;
    int before;
    const char* after; // | is a marker, right edge first; ( ) are loops outside of the innermost turns
};

const Case cases[] = {
    {"k*5", 5, "5"},
    {"k*2 yo k2tog k", 5, "5"},
    {"k*3 |A k*2", 5, "3 | 2"},
    {"k*2 turn", 5, "2 (3)"},
    {"k yo k yo k", 3, "5"},
    {"k2tog sk2p k", 6, "3"},
    {"s2k3p k", 6, "2"},
    {"k kfb k", 3, "4"},
    {"yo2 k2tog k*3", 5, "6"},
    {"bo*3 k*2", 5, "2"},
    {"k*2 bindoff", 5, "2"},
    {"bindoff", 5, "0"},
    {"k [ yo k2tog ]*3 k", 8, "8"},
    {"[ k ]end-2 yo k*2", 9, "10"},
    {"[ k2tog ]end", 10, "5"},
    {"k [ yo k2tog ]end-2 k*2", 9, "9"},
    {"[ k [ yo ]*3 k2tog ]*2", 6, "10"},
    {"[ k*2 |A! ]*2 k*2", 6, "2 | 2 | 2"},
};

std::string knitted(const Case& c, Side side)
{
    Knit knit(c.before, side);
    knit.row(side, c.row);
    return dumpEnd(knit.run());
}

} // namespace

TEST(WorkRow, RightSideRows)
{
    for (const Case& c : cases)
        EXPECT_EQ(knitted(c, Side::RS), c.after) << c.row;
}

TEST(WorkRow, WrongSideRowsMirrorThem)
{
    EXPECT_EQ(knitted({"p*2 yo p2tog p", 5, ""}, Side::WS), "5");
    EXPECT_EQ(knitted({"p*3 |A p*2", 5, ""}, Side::WS), "2 | 3");
    EXPECT_EQ(knitted({"k*2 turn", 5, ""}, Side::WS), "(3) 2");
    EXPECT_EQ(knitted({"p [ yo p2tog ]end-2 p*2", 9, ""}, Side::WS), "9");
}

TEST(WorkRow, LoopsKnowTheirRowColumnColourAndFace)
{
    Knit knit(3);
    knit.rs("k yo2 k2tog").ws("k p k p", "CC");
    const Ledger ledger = knit.run();
    const Needle& after1 = ledger.before[1];
    ASSERT_EQ(after1.count(), 4);
    EXPECT_EQ(after1.loops[1].kind, LoopKind::YarnOver);
    EXPECT_EQ(after1.loops[1].part, 0);
    EXPECT_EQ(after1.loops[2].part, 1);
    EXPECT_EQ(after1.loops[2].column, 3);
    EXPECT_EQ(after1.loops[3].column, 4);
    const Needle& after2 = ledger.before[2];
    // Worked k, p, k, p from the left edge: seen from the right side purl, knit, purl, knit from the left.
    EXPECT_EQ(after2.loops[3].face, Face::Purl);
    EXPECT_EQ(after2.loops[2].face, Face::Knit);
    EXPECT_EQ(after2.loops[0].face, Face::Knit);
    EXPECT_EQ(after2.loops[0].yarn, YarnId{2});
    EXPECT_EQ(after2.loops[0].madeIn, ledger.rows[1].ref->id);
}

TEST(WorkRow, FourStitchesOfEachDoubleYarnOver)
{
    Knit knit(4);
    knit.rs("k*2 yo2 k*2").ws("p*2 yo2_k1p1k1p1 p*2");
    const Ledger ledger = knit.run();
    EXPECT_EQ(afterEach(ledger), (std::vector<int>{6, 8}));
    EXPECT_EQ(kinds(ledger), std::vector<std::string>{}) << told(ledger, knit.pattern());
}

TEST(WorkRow, LedgerLineOfAShortRow)
{
    Knit knit(20);
    knit.rs("k*12 turn").ws("k*8 turn").rs("[ k ]turn-2 turn");
    const Ledger ledger = knit.run();
    const LedgerLine& second = ledger.lines[1];
    EXPECT_EQ(second.before, 20);
    EXPECT_EQ(second.after, 20);
    EXPECT_EQ(second.worked, 8);
    EXPECT_EQ(second.resting, 12);
    EXPECT_EQ(second.restingRight, 4);
    EXPECT_EQ(second.restingLeft, 8);
    EXPECT_EQ(second.betweenTurns, 8);
    EXPECT_EQ(ledger.lines[2].worked, 6);
    EXPECT_EQ(ledger.lines[2].betweenTurns, 6);
}

TEST(WorkRow, SlidesAndYarnsInTwoColourBrioche)
{
    Knit knit(5);
    knit.rs("k [ sl1yo k ]*2 slide").rs("join sl1 [ brp sl1yo ]*1 brp sl1", "CC");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[0].after, 5);
    EXPECT_EQ(ledger.lines[1].after, 5);
    EXPECT_EQ(kinds(ledger), std::vector<std::string>{}) << told(ledger, knit.pattern());
    const Needle& end = ledger.before.back();
    ASSERT_EQ(end.yarns.size(), 2u);
    EXPECT_EQ(end.yarns[0].position, 5);
    EXPECT_EQ(end.yarns[1].position, 5);
    EXPECT_TRUE(end.loops[2].flags & BriochePair);
    EXPECT_EQ(end.loops[2].yarn, YarnId{1});
    EXPECT_EQ(end.loops[2].wrapYarn, YarnId{2});
}

TEST(WorkRow, StartsAfterSlippingAndAtTheEdge)
{
    Knit knit(20);
    knit.rs("slip:6 join k*8 turn", "CC").ws("k*8 turn", "CC").rs("edge k*20");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[0].worked, 8);
    EXPECT_EQ(ledger.lines[0].restingRight, 6);
    EXPECT_EQ(ledger.lines[0].restingLeft, 6);
    EXPECT_EQ(ledger.lines[1].betweenTurns, 8);
    EXPECT_EQ(ledger.lines[2].worked, 20);
    EXPECT_TRUE(ledger.before.back().turns.empty());
    EXPECT_EQ(kinds(ledger), std::vector<std::string>{}) << told(ledger, knit.pattern());
}

TEST(WorkRow, RoundsGoOnFromTheRight)
{
    Knit knit(8);
    knit.rs("[ k yo k ]end round").rs("k*12 round");
    const Ledger ledger = knit.run();
    EXPECT_EQ(afterEach(ledger), (std::vector<int>{12, 12}));
    EXPECT_EQ(kinds(ledger), std::vector<std::string>{}) << told(ledger, knit.pattern());
}

TEST(WorkRow, BracketsAreWorkedOut)
{
    Knit knit(3);
    knit.rs("k [ k ]end-1 yo k").ws("[ k ]end").times(2, 4).rs("[ k ]end");
    const Ledger ledger = knit.run();
    EXPECT_EQ(afterEach(ledger), (std::vector<int>{4, 4, 5, 5, 6, 6, 7, 7, 7}));
    EXPECT_EQ(ledger.rows[4].passes, Passes{3});
    EXPECT_EQ(ledger.rows[8].index, 9);
}

TEST(WorkRow, RidgesPerYarn)
{
    Knit knit(6);
    knit.rs("k*6").ws("k*6").rs("join k*6", "CC").ws("k*6", "CC").rs("k*6").ws("p*6").rs("k*6").ws("k*6");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[1].ridges, (std::vector<int>{1, 0}));
    EXPECT_EQ(ledger.lines[3].ridges, (std::vector<int>{1, 1}));
    EXPECT_EQ(ledger.lines[7].ridges, (std::vector<int>{2, 1}));
    EXPECT_EQ(ledger.lines[7].perYarn, (std::vector<int>{6, 0}));
}

TEST(WorkRow, TraceTellsWhatEachCellTookUpAndLeft)
{
    Knit knit(6);
    knit.ws("p yo p2tog p*3");
    const Ledger ledger = knit.run();
    const Trace trace = traceOf(ledger, knit.pattern(), knit.catalogue(), 0);
    ASSERT_EQ(trace.cells.size(), 6u);
    EXPECT_EQ(trace.cells[0].firstLoop, 5);
    EXPECT_EQ(trace.cells[0].firstMade, 5);
    EXPECT_EQ(trace.cells[2].firstLoop, 3);
    EXPECT_EQ(trace.cells[2].takesUp, 2);
    EXPECT_EQ(trace.cells[2].firstMade, 3);
    EXPECT_EQ(trace.cells[5].firstLoop, 0);
}

TEST(WorkRow, QuantitiesPerSize)
{
    Knit knit(0);
    knit.pattern().head.castOn.stitches = Quantity(std::vector<int>{10, 14, 18});
    knit.pattern().head.sizes = {"S", "M", "L"};
    knit.rs("k [ yo k2tog ]*4 k");
    Box& box = knit.pattern().sections[0].frame.boxes[0];
    box.times = Quantity(std::vector<int>{4, 6, 8});
    for (int size = 0; size < 3; ++size) {
        const Ledger ledger = knit.run({0, size});
        EXPECT_EQ(ledger.lines[0].after, 10 + 4 * size);
        EXPECT_EQ(kinds(ledger), std::vector<std::string>{});
    }
}
