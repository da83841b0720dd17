// Wedges of short rows: their numbers against published formulas, and no finding on any of them.

#include "core/derived/short_row_wedge.h"
#include "core/wording/writer/writer.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

#include <numeric>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Wedged {
    explicit Wedged(Knit& knit) : catalogue(knit.catalogue()), pattern(knit.done()) {}

    bool make(int at, const WedgeWishes& wishes)
    {
        std::vector<Ledger> ledgers;
        for (int size = 0; size < sizeCount(pattern); ++size)
            ledgers.push_back(run(pattern, catalogue, {0, size}));
        auto made = shortRowWedge(pattern, catalogue, ledgers, 0, pattern.sections[0].id, at, wishes);
        if (!made.ok()) {
            fault = made.fault();
            return false;
        }
        wedge = made.value();
        const Pattern before = pattern;
        const Edit takeBack = apply(pattern, wedge.edit).takeBack;
        EXPECT_TRUE(faultsOf(pattern, catalogue).empty());
        Pattern undone = pattern;
        apply(undone, takeBack);
        EXPECT_EQ(undone, before);
        return true;
    }
    std::string told() const { return tests::told(run(pattern, catalogue), pattern); }
    std::vector<int> worked(int first, int rows) const
    {
        std::vector<int> counts;
        const Ledger ledger = run(pattern, catalogue);
        for (int i = 0; i < rows; ++i)
            counts.push_back(ledger.lines[static_cast<std::size_t>(first + i)].worked);
        return counts;
    }
    Catalogue catalogue;
    Pattern pattern;
    Wedge wedge;
    Fault fault;
};

WedgeWishes wishesOf(WedgeAt at, bool growing, int step, int turns,
                     TurnMethod method = TurnMethod::WrapAndTurn)
{
    WedgeWishes wishes;
    wishes.at = at;
    wishes.growing = growing;
    wishes.step = step;
    wishes.turns = turns;
    wishes.method = method;
    return wishes;
}

constexpr TurnMethod methods[] = {TurnMethod::Plain,    TurnMethod::WrapAndTurn, TurnMethod::DoubleStitch,
                                  TurnMethod::YarnOver, TurnMethod::PinnedYarn,  TurnMethod::TwinStitch};

} // namespace

TEST(Wedge, StitchesOfAShrinkingOne)
{
    // Out and back pair i works W - s i each way: 2 N W - s N (N + 1) stitches in 2 N rows; arithmetic.
    struct Line {
        int width, step, turns, last, stitches;
    };
    for (const Line& line : {Line{60, 3, 19, 3, 1140}, Line{40, 2, 19, 2, 760}, Line{50, 4, 12, 2, 576}}) {
        Knit knit(line.width);
        knit.rs("").ws("");
        Wedged desk(knit);
        ASSERT_TRUE(desk.make(0, wishesOf(WedgeAt::RightEdge, false, line.step, line.turns)));
        const auto worked = desk.worked(0, 2 * line.turns + 1);
        EXPECT_EQ(std::accumulate(worked.begin(), worked.end() - 1, 0), line.stitches);
        EXPECT_EQ(worked.back(), line.width); // the closing row works over all
        EXPECT_EQ(desk.wedge.lastWorked, line.last);
        EXPECT_EQ(desk.wedge.resting, line.width - line.last);
        EXPECT_EQ(desk.wedge.turns, line.turns);
        EXPECT_EQ(desk.wedge.filled, 2);
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(Wedge, StitchesOfAGrowingOne)
{
    struct Line {
        int step, turns, stitches;
    };
    for (const Line& line : {Line{3, 20, 1260}, Line{4, 10, 440}}) { // s N (N + 1); arithmetic
        Knit knit(80);
        knit.rs("").ws("");
        Wedged desk(knit);
        ASSERT_TRUE(desk.make(0, wishesOf(WedgeAt::RightEdge, true, line.step, line.turns)));
        const auto worked = desk.worked(0, 2 * line.turns);
        EXPECT_EQ(std::accumulate(worked.begin(), worked.end(), 0), line.stitches);
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(Wedge, AboutAMarkerIsAnArch)
{
    // Row j works W - j s where every turn is s earlier on its side: 80 stitches at 4, the first 16 rows work
    // 736 and the 16th works 16; the first closing row after M rows works W - s M / 2. Arithmetic.
    Knit knit(80);
    knit.rs("k*40 |A k*40").ws("k*80");
    Wedged desk(knit);
    WedgeWishes wishes = wishesOf(WedgeAt::Marker, false, 4, 9);
    wishes.marker = MarkerId{1};
    ASSERT_TRUE(desk.make(2, wishes)) << toText(desk.fault);
    const auto worked = desk.worked(2, 20);
    EXPECT_EQ(worked[0], 76);
    EXPECT_EQ(worked[15], 16);
    EXPECT_EQ(std::accumulate(worked.begin(), worked.begin() + 16, 0), 736);
    EXPECT_EQ(worked[18], 80 - 4 * 18 / 2);
    EXPECT_EQ(worked[19], 80);
    EXPECT_EQ(desk.told(), "");
}

TEST(Wedge, EachMethodTurnsForTheSameShape)
{
    // German short rows turn one stitch further: Wise Owl Knits; Cabin Fever (K8 becomes K9). Yarn over turn:
    // Craft Star Studios. Pinned: Knit 1 Knit All, the first stitch of the return is slipped. Twin stitches
    // aren't counted: Brooklyn Tweed.
    struct Line {
        TurnMethod method;
        int out, back;
        const char* first; // of the way back, as charted
    };
    for (const Line& line :
         {Line{TurnMethod::WrapAndTurn, 8, 8, "p"}, Line{TurnMethod::DoubleStitch, 9, 9, "ds"},
          Line{TurnMethod::YarnOver, 8, 8, "p"}, Line{TurnMethod::PinnedYarn, 9, 9, "sl"},
          Line{TurnMethod::TwinStitch, 8, 8, "p"}}) {
        Knit knit(30);
        knit.rs("").ws("");
        Wedged desk(knit);
        ASSERT_TRUE(desk.make(0, wishesOf(WedgeAt::RightEdge, true, 8, 2, line.method)));
        const auto worked = desk.worked(0, 2);
        EXPECT_EQ(worked[0], line.out);
        EXPECT_EQ(worked[1], line.back);
        const Row& back = *desk.pattern.sections[0].rows[1];
        EXPECT_EQ(desk.catalogue.stitch(cellAt(back, line.back).stitch).key, line.first);
    }
}

TEST(Wedge, TheNeedleFindsNothing)
{
    int made = 0;
    for (const TurnMethod method : methods)
        for (const WedgeAt at : {WedgeAt::RightEdge, WedgeAt::LeftEdge, WedgeAt::Marker})
            for (const bool growing : {true, false})
                for (const int step : {1, 2, 5})
                    for (const bool slip : {false, true})
                        for (const PlainStitch stitches :
                             {PlainStitch::Knit, PlainStitch::Purl, PlainStitch::AsTheyShow})
                            for (const bool alternate : {false, true})
                                for (const int before : {0, 1, 2}) { // rows below the wedge
                                    if (alternate && at == WedgeAt::Marker)
                                        continue;
                                    if (before == 0 && at == WedgeAt::Marker)
                                        continue;
                                    Knit knit(31);
                                    knit.rs("k*10 |A yo k2tog k*18 p").ws("p*30 k").rs("k*30 p").ws("p*30 k");
                                    Wedged desk(knit);
                                    WedgeWishes wishes = wishesOf(at, growing, step, 0, method);
                                    wishes.untilLeft = 2;
                                    wishes.marker = MarkerId{1};
                                    wishes.slipFirst = slip;
                                    wishes.stitches = stitches;
                                    if (alternate)
                                        wishes.yarns = {YarnId{1}, YarnId{2}};
                                    const std::string which =
                                        "method " + std::to_string(static_cast<int>(method)) + " at " +
                                        std::to_string(static_cast<int>(at)) +
                                        (growing ? " growing by " : " shrinking by ") + std::to_string(step) +
                                        (slip ? " slipped" : "") + (alternate ? " two yarns" : "") +
                                        " after row " + std::to_string(before);
                                    ASSERT_TRUE(desk.make(before, wishes))
                                        << which << ": " << toText(desk.fault);
                                    ASSERT_EQ(desk.told(), "") << which;
                                    ASSERT_EQ(desk.pattern.sections[0].rows.size(),
                                              4u + desk.wedge.rows.size());
                                    for (const int count : afterEach(run(desk.pattern, desk.catalogue)))
                                        ASSERT_EQ(count, 31) << which;
                                    ASSERT_EQ(desk.pattern.sections[0].frame.columns, 31) << which;
                                    ++made;
                                }
    EXPECT_GT(made, 1000);
}

TEST(Wedge, UntilStitchesAreLeft)
{
    Knit knit(40);
    knit.rs("").ws("");
    {
        Wedged desk(knit);
        WedgeWishes wishes = wishesOf(WedgeAt::RightEdge, false, 3, 0);
        wishes.untilLeft = 12;
        ASSERT_TRUE(desk.make(0, wishes));
        EXPECT_EQ(desk.wedge.turns, 9); // 40 - 9 * 3 = 13, and 10 would leave 10
        EXPECT_EQ(desk.wedge.lastWorked, 13);
    }
    {
        Wedged desk(knit);
        WedgeWishes wishes = wishesOf(WedgeAt::LeftEdge, true, 3, 0);
        wishes.untilLeft = 12;
        ASSERT_TRUE(desk.make(0, wishes));
        EXPECT_EQ(desk.wedge.lead, 1); // an RS row leads to the left edge
        EXPECT_EQ(desk.wedge.resting, 13);
    }
}

TEST(Wedge, FillsEmptyRowsAndInsertsTheOthers)
{
    Knit knit(20);
    knit.rs("k*20").ws("").rs("").ws("").rs("p*20");
    Wedged desk(knit);
    const RowId second = desk.pattern.sections[0].rows[1]->id;
    ASSERT_TRUE(desk.make(1, wishesOf(WedgeAt::LeftEdge, true, 4, 3)));
    EXPECT_EQ(desk.wedge.filled, 3);
    EXPECT_EQ(desk.wedge.rows.size(), 7u); // three pairs and the closing row; the RS row follows a WS one
    EXPECT_EQ(desk.pattern.sections[0].rows[1]->id, second);
    EXPECT_EQ(desk.pattern.sections[0].rows.size(), 9u);
    EXPECT_EQ(desk.told(), "");
}

TEST(Wedge, GoesBackWhereTheNextRowWouldLieOnTheWrongSide)
{
    Knit knit(20);
    knit.rs("k*20").ws("p*20").rs("k*20");
    Wedged desk(knit);
    ASSERT_TRUE(desk.make(2, wishesOf(WedgeAt::RightEdge, true, 4, 3)));
    EXPECT_EQ(desk.wedge.rows.size(), 8u); // the closing row and one back
    EXPECT_EQ(desk.told(), "");
}

TEST(Wedge, TheYarnsTakeTurnsPairByPair)
{
    Knit knit(20);
    knit.rs("k*20").ws("k*20");
    Wedged desk(knit);
    WedgeWishes wishes = wishesOf(WedgeAt::RightEdge, true, 4, 3);
    wishes.yarns = {YarnId{2}, YarnId{1}};
    ASSERT_TRUE(desk.make(2, wishes));
    std::string yarns;
    for (const Row& row : desk.wedge.rows)
        yarns += (row.start.joins ? " +" : " ") + yarnOf(desk.pattern.head, row.yarn)->code;
    EXPECT_EQ(yarns, " +CC CC MC MC CC CC MC");
}

TEST(Wedge, WhatCantBeIsSaidWithNumbers)
{
    struct Line {
        WedgeWishes wishes;
        const char* says;
    };
    WedgeWishes two = wishesOf(WedgeAt::Marker, true, 2, 2);
    two.yarns = {YarnId{1}, YarnId{2}};
    WedgeWishes left = wishesOf(WedgeAt::RightEdge, true, 4, 0);
    left.untilLeft = 25;
    const Line lines[] = {{wishesOf(WedgeAt::RightEdge, true, 4, 5), "up to 4 would"},
                          {wishesOf(WedgeAt::RightEdge, false, 30, 1), "turn more often"},
                          {wishesOf(WedgeAt::RightEdge, true, 0, 1), "take 1 or more"},
                          {wishesOf(WedgeAt::RightEdge, true, 4, 0), "less than one turn"},
                          {wishesOf(WedgeAt::Marker, true, 2, 2), "no marker is chosen"},
                          {two, "use one yarn"},
                          {left, "leave fewer"}};
    for (const Line& line : lines) {
        Knit knit(20);
        knit.rs("k*20").ws("p*20");
        Wedged desk(knit);
        EXPECT_FALSE(desk.make(2, line.wishes)) << line.says;
        EXPECT_NE(desk.fault.message.find(line.says), std::string::npos) << desk.fault.message;
    }
    Knit round(20);
    round.rs("k*20 round");
    Wedged desk(round);
    EXPECT_FALSE(desk.make(1, wishesOf(WedgeAt::RightEdge, true, 4, 2)));
    Knit sizes(20);
    sizes.pattern().head.sizes = {"S", "L"};
    sizes.pattern().head.castOn.stitches = Quantity(std::vector<int>{20, 24});
    sizes.rs("");
    Wedged other(sizes);
    EXPECT_FALSE(other.make(0, wishesOf(WedgeAt::RightEdge, true, 4, 2)));
    EXPECT_NE(other.fault.message.find("24"), std::string::npos);
}
