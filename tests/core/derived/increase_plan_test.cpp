// Rows with increases: their counts against published shapes, and no finding on any of them.

#include "core/derived/increase_plan.h"
#include "core/wording/writer/writer.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

#include <numeric>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

using At = IncreasePlace::At;

struct Planned {
    explicit Planned(Knit& knit) : catalogue(knit.catalogue()), pattern(knit.done()) {}

    bool make(int at, const IncreaseWishes& wishes)
    {
        const std::vector<Ledger> ledgers{run(pattern, catalogue)};
        auto made = increasePlan(pattern, catalogue, ledgers, 0, pattern.sections[0].id, at, wishes);
        if (!made.ok()) {
            fault = made.fault().message;
            return false;
        }
        plan = std::move(made.value());
        const Pattern before = pattern;
        const Edit takeBack = apply(pattern, plan.edit).takeBack;
        EXPECT_EQ(faultsOf(pattern, catalogue), Faults{});
        Pattern undone = pattern;
        apply(undone, takeBack);
        EXPECT_EQ(undone, before);
        const auto after = afterEach(run(pattern, catalogue));
        for (std::size_t i = 0; i < plan.counts.size(); ++i)
            EXPECT_EQ(plan.counts[i], after[static_cast<std::size_t>(at) + i]); // what is told beforehand is true
        EXPECT_EQ(plan.counts.size(), plan.rows.size());
        return true;
    }
    std::string told() const { return tests::told(run(pattern, catalogue), pattern); }
    int total(int rows) const // of the stitches of the first rows
    {
        const auto after = afterEach(run(pattern, catalogue));
        return std::accumulate(after.begin(), after.begin() + rows, 0);
    }
    std::string chart(int row) const { return tests::chart(pattern, row, catalogue); }

    Catalogue catalogue;
    Pattern pattern;
    IncreasePlan plan;
    std::string fault;
};

IncreasePlace place(At at, int every = 2, int beside = 0)
{
    IncreasePlace made;
    made.at = at;
    made.every = every;
    made.beside = beside;
    return made;
}

IncreaseWishes wishesOf(std::vector<IncreasePlace> places, int times)
{
    IncreaseWishes wishes;
    wishes.places = std::move(places);
    wishes.times = times;
    return wishes;
}

Knit plain(int stitches)
{
    Knit knit(stitches);
    knit.rs("").ws("");
    return knit;
}

} // namespace

TEST(IncreasePlan, CountsOfPublishedShapes)
{
    // Stitches after 100 rows and the sum over all rows, from 9 or 3 at the start. Garter triangle, 4 every second row,
    // edges and spine: Holly Chayes, Right Triangle. Crescent, one at each end of every row: Rhyflower Knits, Basic
    // Top-Down Crescent. Crescent of 4 on RS rows and 2 on WS rows: The Knitting Circle, garter tab. Sideways triangle,
    // one edge every second row: Holly Chayes, Side to Side Triangle. The sums are arithmetic.
    struct Line {
        int start;
        std::vector<IncreasePlace> places;
        int times, stitches, total;
    };
    const IncreasePlace right = place(At::RightEdge, 2, 2), left = place(At::LeftEdge, 2, 2);
    const IncreasePlace everyRight = place(At::RightEdge, 1, 2), everyLeft = place(At::LeftEdge, 1, 2);
    for (const Line& line : {Line{9, {right, left, place(At::Middle)}, 50, 209, 11100},
                             Line{9, {everyRight, everyLeft}, 100, 209, 11000},
                             Line{9, {everyRight, everyLeft, place(At::Middle)}, 100, 309, 16100},
                             Line{3, {place(At::RightEdge, 2, 1)}, 50, 53, 2850}}) {
        for (const Increase increase : {Increase::YarnOver, Increase::MadeStitch, Increase::LiftedStitch}) {
            Knit knit = plain(line.start);
            Planned desk(knit);
            IncreaseWishes wishes = wishesOf(line.places, line.times);
            wishes.increase = increase;
            ASSERT_TRUE(desk.make(0, wishes)) << desk.fault;
            ASSERT_EQ(desk.plan.rows.size(), 100u);
            EXPECT_EQ(desk.plan.counts.back(), line.stitches);
            EXPECT_EQ(desk.total(100), line.total);
            EXPECT_EQ(desk.told(), "");
            EXPECT_EQ(desk.pattern.sections[0].frame.columns, line.stitches);
        }
    }
}

TEST(IncreasePlan, APublishedTriangleRowByRow)
{
    // Yours magazine (UK), 2017-10-10: cast on 10, two plain rows, then 4 more on every RS row from row 3: 110 after row
    // 52, 114 after 54, 118 after 56, 238 after 116, 242 after 118.
    Knit knit(10);
    knit.rs("k*5 |A k*5").ws("p*10");
    Planned desk(knit);
    IncreasePlace marker = place(At::AboutMarker, 2, 1);
    marker.marker = MarkerId{1};
    ASSERT_TRUE(desk.make(2, wishesOf({place(At::RightEdge, 2, 3), place(At::LeftEdge, 2, 3), marker}, 58)))
        << desk.fault;
    const auto after = afterEach(run(desk.pattern, desk.catalogue));
    for (const auto& [row, stitches] : {std::pair{52, 110}, {54, 114}, {56, 118}, {116, 238}, {118, 242}})
        EXPECT_EQ(after[static_cast<std::size_t>(row) - 1], stitches);
    EXPECT_EQ(desk.told(), "");
}

TEST(IncreasePlan, MirrorsTheLeans)
{
    struct Line {
        Increase increase;
        LeanOf lean;
        const char* row; // right to left
    };
    for (const Line& line : {Line{Increase::YarnOver, LeanOf::Away, "k yo k k yo k yo k k yo k"},
                             Line{Increase::MadeStitch, LeanOf::Away, "k m1l k k m1r k m1l k k m1r k"},
                             Line{Increase::MadeStitch, LeanOf::Towards, "k m1r k k m1l k m1r k k m1l k"},
                             Line{Increase::LiftedStitch, LeanOf::Away, "k lli rli k lli rli k"},
                             Line{Increase::FrontAndBack, LeanOf::Away, "k kfb kfb k kfb kfb k"}}) {
        Knit knit = plain(7);
        Planned desk(knit);
        IncreaseWishes wishes =
            wishesOf({place(At::RightEdge, 2, 1), place(At::LeftEdge, 2, 1), place(At::Middle)}, 1);
        wishes.increase = line.increase;
        wishes.lean = line.lean;
        ASSERT_TRUE(desk.make(0, wishes)) << desk.fault;
        EXPECT_EQ(desk.chart(0), line.row);
        EXPECT_EQ(desk.plan.counts, (std::vector<int>{11, 11}));
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(IncreasePlan, OnTheWrongSideTheStitchShowsAsItIsWorked)
{
    Knit knit = plain(6);
    Planned desk(knit);
    IncreaseWishes wishes = wishesOf({place(At::RightEdge, 1, 1), place(At::LeftEdge, 1, 1)}, 2);
    wishes.increase = Increase::MadeStitch;
    ASSERT_TRUE(desk.make(0, wishes)) << desk.fault; // knit every row
    EXPECT_EQ(desk.chart(1), "p m1lp p p p p p p m1rp p");
}

TEST(IncreasePlan, BesideMarkers)
{
    struct Line {
        At at;
        int beside;
        std::vector<int> segments; // right to left
    };
    for (const Side side : {Side::RS, Side::WS})
        for (const Line& line :
             {Line{At::BeforeMarker, 0, {7, 5}}, Line{At::AfterMarker, 0, {6, 6}}, Line{At::AboutMarker, 0, {7, 6}},
              Line{At::BeforeMarker, 2, {7, 5}}, Line{At::AboutMarker, 1, {7, 6}}})
            for (const Increase increase : {Increase::YarnOver, Increase::MadeStitch, Increase::LiftedStitch,
                                            Increase::FrontAndBack}) {
                Knit knit(11);
                knit.rs("k*6 |A k*5").ws("p*11");
                if (side == Side::WS)
                    knit.rs("k*11");
                Planned desk(knit);
                IncreasePlace marker = place(line.at, 1, line.beside);
                marker.marker = MarkerId{1};
                IncreaseWishes wishes = wishesOf({marker}, 1);
                wishes.increase = increase;
                ASSERT_TRUE(desk.make(side == Side::WS ? 3 : 2, wishes)) << desk.fault;
                EXPECT_EQ(segments(run(desk.pattern, desk.catalogue).before.back()), line.segments)
                    << static_cast<int>(line.at) << " beside " << line.beside;
                EXPECT_EQ(desk.told(), "");
            }
}

TEST(IncreasePlan, UntilACountOrTheNearestOnes)
{
    Knit knit = plain(9);
    IncreaseWishes wishes =
        wishesOf({place(At::RightEdge, 2, 2), place(At::LeftEdge, 2, 2), place(At::Middle)}, 0);
    wishes.until = 29;
    {
        Planned desk(knit);
        ASSERT_TRUE(desk.make(0, wishes)) << desk.fault;
        EXPECT_EQ(desk.plan.counts.back(), 29);
        EXPECT_EQ(desk.plan.with.size(), 5u);
        EXPECT_EQ(desk.plan.rows.size(), 10u);
    }
    wishes.until = 31;
    Planned desk(knit);
    ASSERT_FALSE(desk.make(0, wishes));
    EXPECT_NE(desk.fault.find("29 after 5 rows with increases, 33 after 6"), std::string::npos) << desk.fault;
}

TEST(IncreasePlan, EvenlyOverARow)
{
    for (const auto& [stitches, more] : {std::pair{60, 12}, {61, 7}, {13, 13}, {100, 1}, {7, 3}}) {
        for (const Increase increase : {Increase::YarnOver, Increase::MadeStitch, Increase::FrontAndBack}) {
            Knit knit(stitches);
            knit.rs("");
            Planned desk(knit);
            IncreaseWishes wishes;
            wishes.spread = more;
            wishes.increase = increase;
            ASSERT_TRUE(desk.make(0, wishes)) << desk.fault;
            EXPECT_EQ(desk.plan.counts, std::vector<int>{stitches + more});
            EXPECT_EQ(desk.told(), "");
            // From one increase to the next as many stitches, or one more.
            std::vector<int> at;
            const Row& row = *desk.pattern.sections[0].rows[0];
            int taken = 0;
            for (int column = 1; column <= static_cast<int>(row.cells.size()); ++column) {
                const Cell cell = cellAt(row, column);
                const Stitch& stitch = desk.catalogue.stitch(cell.stitch);
                if (cell.stitch == noStitch || cell.part != 0)
                    continue;
                if (stitch.leaves > stitch.takesUp)
                    at.push_back(taken);
                taken += stitch.takesUp;
            }
            ASSERT_EQ(static_cast<int>(at.size()), more);
            for (std::size_t i = 1; i < at.size(); ++i) {
                EXPECT_GE(at[i] - at[i - 1], stitches / more);
                EXPECT_LE(at[i] - at[i - 1], stitches / more + 1);
            }
        }
    }
}

TEST(IncreasePlan, GrowsToBothSides)
{
    Knit knit = plain(9);
    Planned desk(knit);
    ASSERT_TRUE(desk.make(0, wishesOf({place(At::RightEdge, 2, 2), place(At::LeftEdge, 2, 2), place(At::Middle)}, 10)));
    const auto middle = [&](int row) { // twice the middle of what is painted
        const Row& cells = *desk.pattern.sections[0].rows[static_cast<std::size_t>(row)];
        const ColumnSpan span = usedColumns(cells, {});
        return span.first + span.last;
    };
    for (int row = 0; row < 20; ++row)
        EXPECT_NEAR(middle(row), 50, 2) << row;
}

TEST(IncreasePlan, StartsOnTheRightSideAndKeepsTheRowsThere)
{
    Knit knit(8);
    knit.rs("k*8").rs("k*8");
    knit.pattern().sections[0].rows.resize(1);
    Planned desk(knit);
    const RowId first = desk.pattern.sections[0].rows[0]->id;
    ASSERT_TRUE(desk.make(1, wishesOf({place(At::RightEdge, 2, 1)}, 3))) << desk.fault;
    EXPECT_EQ(desk.plan.lead, 1); // a WS row comes first
    EXPECT_EQ(desk.plan.with, (std::vector<int>{1, 3, 5}));
    EXPECT_EQ(desk.pattern.sections[0].rows[0]->id, first);
    EXPECT_EQ(desk.told(), "");
}

TEST(IncreasePlan, InARowRepeatIsRefused)
{
    Knit knit(8);
    knit.rs("k*8").ws("p*8").rs("k*8").ws("p*8").times(2, Quantity(3));
    Planned desk(knit);
    EXPECT_FALSE(desk.make(3, wishesOf({place(At::RightEdge, 2, 1)}, 1)));
    EXPECT_NE(desk.fault.find("row repeat"), std::string::npos);
    EXPECT_TRUE(desk.make(2, wishesOf({place(At::RightEdge, 2, 1)}, 1))) << desk.fault; // before it
}

TEST(IncreasePlan, WhatCantBeIsSaidWithNumbers)
{
    IncreaseWishes many;
    many.spread = 9;
    IncreaseWishes reached = wishesOf({place(At::RightEdge)}, 0);
    reached.until = 8;
    IncreaseWishes wide = wishesOf({place(At::RightEdge, 1)}, 1995);
    IncreaseWishes lifted = wishesOf({place(At::RightEdge, 2, 8)}, 1);
    lifted.increase = Increase::LiftedStitch;
    IncreasePlace marker = place(At::AboutMarker);
    marker.marker = MarkerId{1};
    IncreasePlace spine = place(At::Spine);
    spine.stitch = 9;
    struct Line {
        IncreaseWishes wishes;
        const char* says;
    };
    for (const Line& line :
         {Line{wishesOf({}, 3), "no place is chosen"}, Line{wishesOf({place(At::RightEdge, 0)}, 3), "can't increase every 0"},
          Line{wishesOf({place(At::RightEdge)}, 0), "less than one row"},
          Line{wishesOf({place(At::Middle)}, 2), "7 or 9 would have one"}, Line{wishesOf({spine}, 2), "has no stitch 9"},
          Line{wishesOf({marker}, 2), "marker A isn't on the needle"},
          Line{wishesOf({place(At::RightEdge, 2, 9)}, 2), "leave fewer stitches"},
          Line{wishesOf({place(At::RightEdge, 2, 4), place(At::LeftEdge, 2, 4)}, 2), "fall on one place"},
          Line{many, "up to 8 have a stitch between"}, Line{reached, "name a greater count"},
          Line{wide, "up to 2000 columns"}, Line{lifted, "no stitch beside"}}) {
        Knit knit(8);
        knit.rs("k*8").ws("p*8");
        knit.pattern().head.markers = {{MarkerId{1}, "A"}};
        Planned desk(knit);
        EXPECT_FALSE(desk.make(2, line.wishes)) << line.says;
        EXPECT_NE(desk.fault.find(line.says), std::string::npos) << desk.fault;
    }
}
