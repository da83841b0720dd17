// Rows filled with plain stitches over the loops that the needle has ahead of them.

#include "core/derived/plain_rows.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Filled {
    explicit Filled(Knit& knit) : catalogue(knit.catalogue()), pattern(knit.done()) {}

    bool fill(const std::vector<int>& rows, PlainStitch how)
    {
        std::vector<Ledger> ledgers;
        for (int size = 0; size < sizeCount(pattern); ++size)
            ledgers.push_back(run(pattern, catalogue, {0, size}));
        const auto edit = plainRows(pattern, catalogue, ledgers, 0, pattern.sections[0].id, rows, how);
        if (!edit.ok()) {
            fault = edit.fault();
            return false;
        }
        const Pattern before = pattern;
        const Edit takeBack = apply(pattern, edit.value()).takeBack;
        EXPECT_TRUE(faultsOf(pattern, catalogue).empty());
        Pattern undone = pattern;
        apply(undone, takeBack);
        EXPECT_EQ(undone, before); // one step takes all of it back
        return true;
    }
    std::string row(int at) const { return chart(pattern, at, catalogue); }
    std::string told() const { return tests::told(run(pattern, catalogue), pattern); }
    std::vector<int> counts() const { return afterEach(run(pattern, catalogue)); }

    Catalogue catalogue;
    Pattern pattern;
    Fault fault;
};

} // namespace

TEST(PlainRows, TheChartShowsTheRightSide)
{
    struct Line {
        PlainStitch how;
        const char* rs;
        const char* ws;
    };
    // A knit of a wrong-side row shows as a purl: Vogue Knitting, Reading Charts.
    for (const Line& line :
         {Line{PlainStitch::Knit, "k k k k", "p p p p"}, Line{PlainStitch::Purl, "p p p p", "k k k k"},
          Line{PlainStitch::AsTheyShow, "k k k k", "k k k k"}}) {
        Knit knit(4);
        knit.rs("").ws("");
        Filled desk(knit);
        ASSERT_TRUE(desk.fill({0, 1}, line.how)) << toText(desk.fault);
        EXPECT_EQ(desk.row(0), line.rs);
        EXPECT_EQ(desk.row(1), line.ws);
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(PlainRows, AsTheStitchesShowKeepsRibs)
{
    Knit knit(6);
    knit.rs("k*2 p*2 k*2").ws("").rs("");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({1, 2}, PlainStitch::AsTheyShow));
    EXPECT_EQ(desk.row(1), "k k p p k k");
    EXPECT_EQ(desk.row(2), "k k p p k k");
}

TEST(PlainRows, ADoubleYarnOverIsWorkedKnitOneAndPurlOne)
{
    // (k1, p1) in the order worked; Jill Wolcott Knits, Working new stitches in dbl-YO. On a WS row the first
    // of them is at the left, and a knit there shows as a purl.
    for (const PlainStitch how : {PlainStitch::AsTheyShow, PlainStitch::Knit, PlainStitch::Purl}) {
        Knit knit(6);
        knit.rs("k*2 k2tog yo2 ssk").ws("");
        Filled desk(knit);
        ASSERT_TRUE(desk.fill({1}, how));
        EXPECT_EQ(desk.counts().back(), 6);
        EXPECT_EQ(desk.told(), "") << static_cast<int>(how);
        if (how == PlainStitch::AsTheyShow) {
            EXPECT_EQ(desk.row(1), "k k k k p k");
        }
    }
}

TEST(PlainRows, StandOverTheLoopsTheyTakeUp)
{
    Knit knit(8);
    knit.rs("k*3 k2tog . k*3").ws("").rs("");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({1, 2}, PlainStitch::AsTheyShow));
    EXPECT_EQ(desk.row(1), "k k k k - k k k");
    EXPECT_EQ(desk.row(2), "k k k k - k k k");
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, GoOnFromTheRowThatWasFilledBefore)
{
    Knit knit(4);
    knit.rs("").ws("").rs("yo k*4 yo").ws("");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({0, 1, 3}, PlainStitch::Knit));
    EXPECT_EQ(desk.counts(), (std::vector<int>{4, 4, 6, 6}));
    EXPECT_EQ(desk.row(3), "p p p p p p");
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, WidenTheChart)
{
    Knit knit(9);
    knit.rs("k").ws("k");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({0, 1}, PlainStitch::Knit));
    EXPECT_EQ(desk.pattern.sections[0].frame.columns, 9);
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, AShortRowStaysAsLongAsItWas)
{
    Knit knit(10);
    knit.rs("k*6 turn:ds").ws("DS p*5").rs("k*10");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({0, 1, 2}, PlainStitch::Knit));
    EXPECT_EQ(desk.row(0), "k k k k k k - - - -");
    EXPECT_EQ(desk.row(1), "p p p p p ds - - - -"); // the double stitch stays first
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, BriocheStitchesAreWorkedWithTheirYarnOvers)
{
    Knit knit(4);
    knit.rs("k sl1yo k sl1yo").ws("");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({1}, PlainStitch::AsTheyShow));
    EXPECT_EQ(desk.row(1), "k brk k brk");
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, StitchRepeatsAreCutAroundThem)
{
    Knit knit(8);
    knit.rs("k*2 [ yo k2tog ]*2 k*2").ws("p*8").rs("k*8");
    Pattern& pattern = knit.pattern();
    pattern.sections[0].frame.boxes[0].lastRow = pattern.sections[0].rows[2]->id;
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({1}, PlainStitch::AsTheyShow));
    EXPECT_EQ(desk.pattern.sections[0].frame.boxes.size(), 2u);
    EXPECT_EQ(boxesOn(desk.pattern.sections[0], 1).size(), 0u);
}

TEST(PlainRows, ARowOfDifferentCountsBecomesARepeatToItsEnd)
{
    Knit knit(4);
    knit.rs("k [ k ]end-1 kfb").ws("").times(2, 3);
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({1}, PlainStitch::Purl)) << toText(desk.fault);
    EXPECT_EQ(desk.counts(), (std::vector<int>{5, 5, 6, 6, 7, 7}));
    EXPECT_EQ(boxesOn(desk.pattern.sections[0], 1).size(), 1u);
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, SoDoesOneThatDiffersBySize)
{
    Knit knit(6);
    knit.pattern().head.sizes = {"S", "L"};
    knit.pattern().head.castOn.stitches = Quantity(std::vector<int>{6, 10});
    knit.rs("").ws("");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({0, 1}, PlainStitch::Knit)) << toText(desk.fault);
    EXPECT_EQ(afterEach(run(desk.pattern, desk.catalogue, {0, 1})), (std::vector<int>{10, 10}));
    EXPECT_EQ(desk.counts(), (std::vector<int>{6, 6}));
}

TEST(PlainRows, AMarkerStaysWhereItWasPlaced)
{
    Knit knit(8);
    knit.rs("k*3 |A yo k2tog k*3").ws("p*8");
    Filled desk(knit);
    ASSERT_TRUE(desk.fill({0}, PlainStitch::Knit));
    const Ledger ledger = run(desk.pattern, desk.catalogue);
    ASSERT_EQ(ledger.before[1].markers.size(), 1u);
    EXPECT_EQ(ledger.before[1].markers[0].position, 3);
    EXPECT_EQ(desk.told(), "");
}

TEST(PlainRows, WhatCantBeFilledIsSaid)
{
    struct Line {
        const char* words;
        const char* says;
    };
    for (const Line& line : {Line{"bindoff", "binds off"}, Line{"turn:wt", "turns early"}}) {
        Knit knit(5);
        knit.rs(line.words);
        Filled desk(knit);
        EXPECT_FALSE(desk.fill({0}, PlainStitch::Knit)) << line.words;
        EXPECT_NE(desk.fault.message.find(line.says), std::string::npos) << desk.fault.message;
    }
    Knit knit(5);
    knit.rs("bo*5").ws("");
    Filled desk(knit);
    EXPECT_FALSE(desk.fill({1}, PlainStitch::Knit));
    EXPECT_FALSE(desk.fill({}, PlainStitch::Knit));
    EXPECT_FALSE(desk.fill({7}, PlainStitch::Knit));
}

TEST(PlainRows, EmptyRowsOfASide)
{
    Knit knit(4);
    knit.rs("k*4").ws("").rs("").ws(". . .");
    EXPECT_EQ(emptyRows(knit.done().sections[0], Side::WS), (std::vector<int>{1, 3}));
    EXPECT_EQ(emptyRows(knit.done().sections[0], Side::RS), (std::vector<int>{2}));
}
