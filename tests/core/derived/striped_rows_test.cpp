// Yarns of rows by a sequence that repeats, joined where the needle asks for it.

#include "core/derived/striped_rows.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

// "MC MC +CC CC": + where a row joins its yarn.
std::string yarns(const Pattern& pattern)
{
    std::string text;
    for (const RowRef& row : pattern.sections[0].rows)
        text += (text.empty() ? "" : " ") + std::string(row->start.joins ? "+" : "") +
                yarnOf(pattern.head, row->yarn)->code;
    return text;
}

constexpr YarnId mc{1}, cc{2};

struct Striped {
    Knit knit{10};
    explicit Striped(int rows)
    {
        for (int i = 0; i < rows; ++i)
            knit.row(i % 2 == 0 ? Side::RS : Side::WS, "k*10");
        pattern = knit.done();
    }
    bool stripe(int first, int last, std::vector<Stripe> stripes)
    {
        const std::vector<Ledger> ledgers{run(pattern, knit.catalogue())};
        const auto edit =
            stripedRows(pattern, knit.catalogue(), ledgers, pattern.sections[0].id, first, last, stripes);
        if (!edit.ok()) {
            fault = edit.fault();
            return false;
        }
        const Pattern before = pattern;
        const Edit takeBack = apply(pattern, edit.value()).takeBack;
        Pattern undone = pattern;
        apply(undone, takeBack);
        EXPECT_EQ(undone, before);
        return true;
    }
    std::string told() { return tests::told(run(pattern, knit.catalogue()), pattern); }
    Pattern pattern;
    Fault fault;
};

} // namespace

TEST(StripedRows, JoinAYarnAtItsFirstRowOnly)
{
    // Two-row stripes carried up the edge: common practice, no source.
    Striped desk(8);
    ASSERT_TRUE(desk.stripe(0, 7, {{2, mc}, {2, cc}}));
    EXPECT_EQ(yarns(desk.pattern), "MC MC +CC CC MC MC CC CC");
    EXPECT_EQ(desk.told(), "");
}

TEST(StripedRows, StartAnewWhereAYarnHangsAtTheOtherEdge)
{
    Striped desk(6);
    ASSERT_TRUE(desk.stripe(0, 5, {{1, mc}, {2, cc}}));
    EXPECT_EQ(yarns(desk.pattern), "MC +CC CC MC +CC CC"); // CC hangs at the other edge after three rows
    EXPECT_EQ(desk.told(), "");
}

TEST(StripedRows, EmptyRowsAreTakenAsWorkedOverAllStitches)
{
    Striped desk(8);
    for (RowRef& row : desk.pattern.sections[0].rows) {
        Row bare = *row;
        bare.cells.assign(bare.cells.size(), Cell{});
        row = std::make_shared<const Row>(bare);
    }
    ASSERT_TRUE(desk.stripe(1, 7, {{2, cc}, {2, mc}}));
    EXPECT_EQ(yarns(desk.pattern), "MC +CC CC MC MC CC CC MC");
}

TEST(StripedRows, OfSomeRowsLeaveTheOthers)
{
    Striped desk(8);
    ASSERT_TRUE(desk.stripe(2, 5, {{2, cc}, {2, mc}}));
    EXPECT_EQ(yarns(desk.pattern), "MC MC +CC CC MC MC MC MC");
    EXPECT_EQ(desk.told(), "");
    ASSERT_TRUE(desk.stripe(2, 3, {{1, mc}})); // a join that is no longer needed goes
    EXPECT_EQ(yarns(desk.pattern), "MC MC MC MC MC MC MC MC");
}

TEST(StripedRows, StitchesKeepAYarnOfTheirOwn)
{
    Striped desk(2);
    Row row = *desk.pattern.sections[0].rows[1];
    row.cells[3].yarn = cc;
    row.cells[4].yarn = YarnId{1};
    desk.pattern.sections[0].rows[1] = std::make_shared<const Row>(row);
    ASSERT_TRUE(desk.stripe(1, 1, {{1, mc}}));
    EXPECT_EQ(cellAt(*desk.pattern.sections[0].rows[1], 4).yarn, cc);
    EXPECT_EQ(cellAt(*desk.pattern.sections[0].rows[1], 5).yarn, YarnId{});
}

TEST(StripedRows, AreReadBackAsTheSequence)
{
    Striped desk(10);
    ASSERT_TRUE(desk.stripe(0, 9, {{2, mc}, {4, cc}}));
    EXPECT_EQ(stripesOf(desk.pattern.sections[0], 0, 9), (std::vector<Stripe>{{2, mc}, {4, cc}}));
    EXPECT_EQ(stripesOf(desk.pattern.sections[0], 0, 1), (std::vector<Stripe>{{2, mc}}));
}

TEST(StripedRows, WhatCantBeIsSaid)
{
    Striped desk(4);
    EXPECT_FALSE(desk.stripe(0, 3, {}));
    EXPECT_FALSE(desk.stripe(0, 3, {{0, mc}}));
    EXPECT_FALSE(desk.stripe(0, 3, {{2, YarnId{}}}));
    EXPECT_FALSE(desk.stripe(0, 3, {{2, YarnId{9}}}));
    EXPECT_FALSE(desk.stripe(0, 9, {{2, mc}}));
}
