#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

using Kinds = std::vector<std::string>;

} // namespace

TEST(ShortRows, EachMethodMarksItsStitchUntilARowCrossesTheGap)
{
    const struct {
        const char* turn;
        const char* back;
        TurnMethod method;
        int marked; // loop that carries the turn
    } methods[] = {
        {"turn:wt", "k*6", TurnMethod::WrapAndTurn, 6},
        {"turn:yo", "k*6", TurnMethod::YarnOver, 6},
        {"turn:pin", "sl1 k*5", TurnMethod::PinnedYarn, 6},
        {"turn:twin", "k*6", TurnMethod::TwinStitch, 6},
        {"turn:ds", "ds k*5", TurnMethod::DoubleStitch, 5},
    };
    for (const auto& m : methods) {
        Knit knit(10);
        knit.rs(std::string("k*6 ") + m.turn).ws(m.back);
        Ledger ledger = knit.run();
        const Loop& loop = ledger.before[2].loops[static_cast<std::size_t>(m.marked)];
        EXPECT_TRUE(loop.flags & (TurnLoop | Doubled)) << m.turn;
        EXPECT_EQ(loop.method, m.method) << m.turn;
        EXPECT_EQ(ledger.before[2].count(), 10) << m.turn; // none of them counts as a stitch more
        EXPECT_EQ(kinds(ledger), Kinds{"turn-never-closed"}) << m.turn << told(ledger, knit.pattern());

        knit.rs("k*10");
        ledger = knit.run();
        EXPECT_EQ(kinds(ledger), Kinds{}) << m.turn << told(ledger, knit.pattern());
        EXPECT_TRUE(ledger.before.back().turns.empty());
        const Trace trace = traceOf(ledger, knit.pattern(), knit.catalogue(), 2);
        EXPECT_TRUE(trace.cells[static_cast<std::size_t>(m.marked)].closesTurn) << m.turn;
    }
}

TEST(ShortRows, BeforeTheLastTurnCountsFromTheGap)
{
    Knit knit(20);
    knit.rs("k*12 turn:ds").ws("ds k*11").rs("[ k ]turn-3 turn:ds").ws("ds k*8");
    const Ledger ledger = knit.run();
    // The double stitch is one of the three.
    EXPECT_EQ(ledger.lines[2].worked, 9);
    EXPECT_EQ(ledger.lines[3].worked, 9);
}

TEST(ShortRows, AMirroredWedgeBeginsOnTheWrongSide)
{
    Knit knit(20, Side::WS);
    knit.ws("k*12 turn").rs("sl1 k*11").ws("[ k ]turn-4 turn").rs("sl1 k*7").times(2, 2);
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.lines[4].worked, 4);
    EXPECT_EQ(ledger.lines[4].restingRight, 16);
    EXPECT_EQ(ledger.lines[5].worked, 8); // the row back is fixed here, so it wants more than there is
    EXPECT_EQ(kinds(ledger), (Kinds{"too-few-stitches"}));
}

TEST(ShortRows, TurnsThatCannotBe)
{
    Knit none(10);
    none.rs("[ k ]turn-2 turn");
    EXPECT_EQ(kinds(none.run()), Kinds{"no-earlier-turn"});

    Knit past(12);
    past.rs("k*4 turn").ws("k*4").rs("k*6 [ k ]turn-0 turn");
    EXPECT_EQ(kinds(past.run()), Kinds{"past-last-turn"});

    Knit edge(6);
    edge.rs("k*6 turn");
    EXPECT_EQ(kinds(edge.run()), Kinds{"turn-at-edge"});

    Knit nothing(10);
    nothing.rs("k*6 turn").ws("k*2 turn").rs("[ k ]turn-2 turn");
    EXPECT_EQ(kinds(nothing.run()), Kinds{"nothing-between-turns"});

    Knit tooFar(10);
    tooFar.rs("k*6 turn").ws("k*2 turn").rs("[ k ]turn-5 turn");
    EXPECT_EQ(kinds(tooFar.run()), (Kinds{"repeat-does-not-fit", "nothing-between-turns"}));

    Knit missing(10);
    missing.rs("k*6 turn:ds").ws("k*6").rs("k*10");
    EXPECT_EQ(kinds(missing.run()), Kinds{"double-stitch-missing"});

    Knit stray(10);
    stray.rs("ds k*9");
    EXPECT_EQ(kinds(stray.run()), Kinds{"double-stitch-without-turn"});
}

TEST(ShortRows, RestingColumnsLieOverLoopsThatRest)
{
    Knit knit(6);
    knit.rs("k*6").ws(". . k*4 turn").rs("k*4");
    // The wrong-side row leaves nothing at the left; its margin there has no loops under it.
    Pattern pattern = knit.done();
    const Ledger ledger = run(pattern, knit.catalogue());
    EXPECT_EQ(ledger.lines[1].restingRight, 2);

    Knit wedge(6);
    wedge.rs("k*6").ws("k*6").rs("k*4 turn").ws(". . k*4").rs("k*6");
    const Ledger second = wedge.run();
    EXPECT_EQ(restingColumns(second, 2), (std::vector<int>{5, 6}));
    EXPECT_EQ(restingColumns(second, 3), (std::vector<int>{5, 6}));
    EXPECT_EQ(restingColumns(second, 4), (std::vector<int>{}));

    Knit fresh(9); // in a section's first row the loops have no columns yet: those next to the stitches are meant
    fresh.rs(". . k*3 turn");
    Pattern first = fresh.done();
    first.sections[0].frame.columns = 12;
    Row row = *first.sections[0].rows[0];
    row.cells.resize(12);
    first.sections[0].rows[0] = std::make_shared<const Row>(row);
    EXPECT_EQ(restingColumns(run(first, fresh.catalogue()), 0), (std::vector<int>{6, 7, 8, 9, 10, 11}));
}

TEST(ShortRows, ARepeatRestsOverTheWholeWidthItIsDrawnOver)
{
    // The repeat of the first row is drawn over columns 2 to 5, with one stitch in it; the short row stops before it.
    Knit knit(12);
    knit.rs("k [ k . . . ]end-1 k").ws("[ p . . . . . ]end").rs("k . . . . . turn");
    const Ledger ledger = knit.run();
    EXPECT_EQ(kinds(ledger), Kinds{}) << told(ledger, knit.pattern());
    EXPECT_EQ(restingColumns(ledger, 2), (std::vector<int>{2, 3, 4, 5, 6}));
}
