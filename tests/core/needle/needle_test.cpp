#include "core/needle/needle.h"

#include <gtest/gtest.h>

using namespace shawlwright;

TEST(Needle, CastsOnAllOfOneYarnHangingWhereTheFirstRowStarts)
{
    const Needle rs = castOn(5, YarnId{1}, Side::RS);
    EXPECT_EQ(rs.count(), 5);
    EXPECT_EQ(rs.tip, 0);
    const Needle ws = castOn(5, YarnId{1}, Side::WS);
    EXPECT_EQ(ws.tip, 5);
    ASSERT_EQ(ws.yarns.size(), 1u);
    EXPECT_EQ(ws.yarns[0].position, 5);
}

TEST(Needle, SegmentsRunFromTheRightEdge)
{
    Needle needle = castOn(10, YarnId{1}, Side::RS);
    EXPECT_EQ(segments(needle), (std::vector<int>{10}));
    needle.markers = {{MarkerId{1}, 3, 3}, {MarkerId{2}, 8, 8}};
    EXPECT_EQ(segments(needle), (std::vector<int>{3, 5, 2}));
    EXPECT_EQ(dump(needle), "3 | 5 | 2");
}

TEST(Needle, StitchesBetweenTheInnermostTurns)
{
    Needle needle = castOn(20, YarnId{1}, Side::RS);
    needle.turns = {{17, Side::RS, TurnMethod::Plain, RowId{1}}};
    EXPECT_EQ(betweenTurns(needle), -1);
    needle.turns.push_back({4, Side::WS, TurnMethod::Plain, RowId{2}});
    EXPECT_EQ(betweenTurns(needle), 13);
    needle.turns.push_back({15, Side::RS, TurnMethod::Plain, RowId{3}});
    EXPECT_EQ(betweenTurns(needle), 11);
    EXPECT_EQ(dump(needle), "(4) 11 (5)");
}
