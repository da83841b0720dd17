// Arches of short rows: their numbers against the sums of arithmetic series, and no finding on any of them.

#include "core/derived/short_row_arch.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

#include <numeric>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Arched {
    explicit Arched(Knit& knit) : catalogue(knit.catalogue()), pattern(knit.done()) {}

    bool make(int at, const ArchWishes& wishes)
    {
        const std::vector<Ledger> ledgers{run(pattern, catalogue)};
        auto made = shortRowArches(pattern, catalogue, ledgers, 0, pattern.sections[0].id, at, wishes);
        if (!made.ok()) {
            fault = made.fault().message;
            return false;
        }
        arches = std::move(made.value());
        const Pattern before = pattern;
        const Edit takeBack = apply(pattern, arches.edit).takeBack;
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
    int sum(int first, int rows) const
    {
        const auto counts = worked(first, rows);
        return std::accumulate(counts.begin(), counts.end(), 0);
    }
    Catalogue catalogue;
    Pattern pattern;
    Arches arches;
    std::string fault;
};

ArchWishes wishesOf(int width, int step, bool widening, int rows)
{
    ArchWishes wishes;
    wishes.width = width;
    wishes.step = step;
    wishes.widening = widening;
    wishes.rows = rows;
    return wishes;
}

ArchPlace atStitch(int stitch)
{
    ArchPlace place;
    place.at = ArchPlace::At::Stitch;
    place.stitch = stitch;
    return place;
}

Knit plain(int stitches)
{
    Knit knit(stitches);
    knit.rs("").ws("");
    return knit;
}

} // namespace

TEST(Arch, StitchesOfANarrowingOne)
{
    // Row j works W - j s: M W - s M (M + 1) / 2 in M rows; the first closing row after an even M works W - s M / 2,
    // the next one W. Sum of an arithmetic series.
    struct Line {
        int width, step, rows, first, last, stitches, closing;
    };
    for (const Line& line : {Line{80, 4, 16, 76, 16, 736, 48}, Line{101, 5, 18, 96, 11, 963, 56},
                             Line{64, 3, 20, 61, 4, 650, 34}}) {
        Knit knit = plain(line.width);
        Arched desk(knit);
        ASSERT_TRUE(desk.make(0, wishesOf(line.width - 2 * line.step, line.step, false, line.rows))) << desk.fault;
        const auto worked = desk.worked(0, line.rows + 2);
        EXPECT_EQ(worked.front(), line.first);
        EXPECT_EQ(worked[static_cast<std::size_t>(line.rows) - 1], line.last);
        EXPECT_EQ(desk.sum(0, line.rows), line.stitches);
        EXPECT_EQ(worked[static_cast<std::size_t>(line.rows)], line.closing);
        EXPECT_EQ(worked.back(), line.width);
        EXPECT_EQ(desk.arches.widths.back(), line.last);
        EXPECT_EQ(desk.arches.shortRows, line.rows);
        EXPECT_EQ(desk.arches.rests.front().right + desk.arches.rests.front().left, line.width - line.last);
        EXPECT_EQ(desk.arches.filled, 2);
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(Arch, StitchesOfAWideningOne)
{
    // From turn to turn, row j works c + (j - 1) s: c M + s M (M - 1) / 2 in M rows. Sum of an arithmetic series.
    struct Line {
        int width, step, rows;
    };
    for (const Line& line : {Line{10, 2, 12}, Line{5, 3, 7}, Line{1, 1, 20}}) {
        Knit knit = plain(61);
        Arched desk(knit);
        ASSERT_TRUE(desk.make(0, wishesOf(line.width, line.step, true, line.rows + 1))) << desk.fault;
        EXPECT_EQ(desk.sum(1, line.rows), line.width * line.rows + line.step * line.rows * (line.rows - 1) / 2);
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(Arch, LiesAboutItsPlace)
{
    struct Line {
        ArchPlace place;
        int width, right, left; // resting after the second short row
    };
    ArchPlace marker;
    marker.at = ArchPlace::At::Marker;
    marker.marker = MarkerId{1};
    for (const Line& line : {Line{{}, 5, 18, 18}, Line{{}, 6, 18, 17}, Line{atStitch(11), 5, 8, 28},
                             Line{atStitch(11), 4, 9, 28}, Line{marker, 6, 12, 23}, Line{marker, 7, 12, 22}}) {
        Knit knit(41);
        knit.rs("k*15 |A k*26").ws("k*41");
        Arched desk(knit);
        ArchWishes wishes = wishesOf(line.width, 2, true, 2);
        wishes.places = {line.place};
        ASSERT_TRUE(desk.make(2, wishes)) << desk.fault;
        EXPECT_EQ(desk.arches.rests.front().right, line.right);
        EXPECT_EQ(desk.arches.rests.front().left, line.left);
        EXPECT_EQ(desk.arches.widths, std::vector<int>{line.width});
        EXPECT_EQ(desk.told(), "");
    }
}

// Below lies a row whose stitch repeat stands for many stitches: the arch is drawn where its stitches are.
TEST(Arch, LiesOverSingleStitchesOfARepeat)
{
    for (const char* below : {"p*2 [ p ]end-2 p*2", "[ p ]end", "p*6 [ p ]*21 p*6", "[ p*3 ]*11"}) {
        Knit knit(33);
        knit.rs("k*33").ws(below);
        Arched arch(knit);
        ASSERT_TRUE(arch.make(2, wishesOf(7, 2, true, 8))) << below << arch.fault;
        const Ledger ledger = run(arch.pattern, arch.catalogue);
        for (int line = 2; line < 10; ++line)
            for (const WorkedCell& cell : traceOf(ledger, arch.pattern, arch.catalogue, line).cells)
                EXPECT_EQ(cell.column, cell.firstLoop + 1) << below << ", line " << line;
    }
}

TEST(Arch, OneAfterTheOther)
{
    ArchWishes wishes = wishesOf(4, 3, true, 6);
    ArchPlace marker;
    marker.at = ArchPlace::At::Marker;
    marker.marker = MarkerId{1};
    wishes.places = {atStitch(75), marker};
    Knit two(90);
    two.rs("k*15 |A k*30 |B k*45").ws("k*90");
    Arched other(two);
    ArchPlace second = marker;
    second.marker = MarkerId{2};
    wishes.places = {atStitch(75), marker, second};
    ASSERT_TRUE(other.make(2, wishes)) << other.fault;
    EXPECT_EQ(other.arches.arches, 3);
    EXPECT_EQ(other.arches.rows.size(), 20u);
    // From the right edge: 15 + 2 to the first turn, then 4, 7, 10, 13, 16; the row that leads to the next arch goes
    // from stitch 15 - 2 - 6 to 45 + 2.
    const auto worked = other.worked(2, 20);
    EXPECT_EQ(std::vector<int>(worked.begin(), worked.begin() + 8), (std::vector<int>{17, 4, 7, 10, 13, 16, 40, 4}));
    EXPECT_EQ(worked.back(), 90);
    EXPECT_EQ(other.told(), "");
}

TEST(Arch, TheNeedleFindsNothing)
{
    int made = 0;
    for (const TurnMethod method : {TurnMethod::Plain, TurnMethod::WrapAndTurn, TurnMethod::DoubleStitch,
                                    TurnMethod::YarnOver, TurnMethod::PinnedYarn, TurnMethod::TwinStitch})
        for (const bool widening : {true, false})
            for (const int step : {1, 2, 5})
                for (const int rows : {2, 3, 6, 7})
                    for (const int before : {0, 1, 2})
                        for (const int yarns : {1, 2, 3})
                            for (const int places : {1, 2}) {
                                Knit knit(81);
                                knit.rs("k*10 |A yo k2tog k*68 p").ws("p*80 k").rs("k*80 p").ws("p*80 k");
                                Arched desk(knit);
                                ArchWishes wishes = wishesOf(widening ? 4 : 30, step, widening, rows);
                                wishes.method = method;
                                wishes.stitches = static_cast<PlainStitch>(made % 3);
                                wishes.slipFirst = made % 2 == 0;
                                if (yarns > 1)
                                    wishes.yarns = {YarnId{1}, YarnId{2}};
                                wishes.yarnTurns = yarns == 2 ? YarnTurns::EachArch : YarnTurns::EachPair;
                                if (places == 2)
                                    wishes.places = {atStitch(60), atStitch(21)};
                                const std::string which = "method " + std::to_string(static_cast<int>(method)) +
                                                          (widening ? " widening by " : " narrowing by ") +
                                                          std::to_string(step) + ", " + std::to_string(rows) +
                                                          " rows after " + std::to_string(before) + ", yarns " +
                                                          std::to_string(yarns);
                                if (!desk.make(before, wishes)) {
                                    ASSERT_NE(desk.fault.find("would do"), std::string::npos) << which << desk.fault;
                                    continue;
                                }
                                ASSERT_EQ(desk.told(), "") << which;
                                for (const int count : afterEach(run(desk.pattern, desk.catalogue)))
                                    ASSERT_EQ(count, 81) << which;
                                ASSERT_EQ(desk.pattern.sections[0].frame.columns, 81) << which;
                                ++made;
                            }
    EXPECT_GT(made, 500);
}

TEST(Arch, UntilItIsSoWide)
{
    Knit knit = plain(80);
    ArchWishes wishes = wishesOf(10, 4, true, 0);
    wishes.untilWidth = 33;
    {
        Arched desk(knit);
        ASSERT_TRUE(desk.make(0, wishes));
        EXPECT_EQ(desk.arches.widths, (std::vector<int>{10, 14, 18, 22, 26, 30}));
    }
    wishes.places = {atStitch(20), atStitch(60)};
    {
        Arched desk(knit);
        ASSERT_TRUE(desk.make(0, wishes)) << desk.fault; // an even number of turns leads on to the next
        EXPECT_EQ(desk.arches.shortRows, 6);
        EXPECT_EQ(desk.arches.widths.back(), 26);
    }
    wishes = wishesOf(30, 4, false, 0);
    wishes.untilWidth = 12;
    {
        Arched desk(knit);
        ASSERT_TRUE(desk.make(0, wishes));
        EXPECT_EQ(desk.arches.widths.back(), 14);
    }
}

TEST(Arch, TheYarnsTakeTurns)
{
    Knit knit(60);
    knit.rs("k*60").ws("k*60");
    ArchWishes wishes = wishesOf(6, 2, true, 4);
    wishes.places = {atStitch(15), atStitch(45)};
    wishes.yarns = {YarnId{1}, YarnId{2}};
    const auto yarns = [](const Arched& desk) {
        std::string text;
        for (const Row& row : desk.arches.rows)
            text += (row.start.joins ? " +" : " ") + yarnOf(desk.pattern.head, row.yarn)->code +
                    (row.finish.breaksYarn ? "|" : "");
        return text;
    };
    {
        Arched desk(knit);
        ASSERT_TRUE(desk.make(2, wishes));
        EXPECT_EQ(yarns(desk), " MC MC MC MC| +CC CC CC CC CC CC");
        EXPECT_EQ(desk.arches.joins, 1);
    }
    wishes.places = {atStitch(11), atStitch(31), atStitch(51)};
    {
        // A yarn that is joined again elsewhere was broken where it hung among the stitches.
        Arched desk(knit);
        ASSERT_TRUE(desk.make(2, wishes)) << desk.fault;
        EXPECT_EQ(yarns(desk), " MC MC MC MC| +CC CC CC CC| +MC MC MC MC MC MC");
        EXPECT_EQ(desk.told(), "");
        EXPECT_EQ(run(desk.pattern, desk.catalogue).before.back().yarns.size(), 1u);
    }
    wishes.yarnTurns = YarnTurns::EachPair;
    wishes.places = {atStitch(15)};
    {
        Arched desk(knit);
        ASSERT_TRUE(desk.make(2, wishes));
        EXPECT_EQ(yarns(desk), " MC MC| +CC CC CC CC");
        EXPECT_EQ(desk.told(), "");
    }
}

TEST(Arch, WhatCantBeIsSaidWithNumbers)
{
    ArchWishes none = wishesOf(4, 2, true, 4);
    none.places.clear();
    ArchWishes far = wishesOf(4, 2, true, 4);
    far.places = {atStitch(21)};
    ArchWishes marker = far;
    marker.places[0].at = ArchPlace::At::Marker;
    marker.places[0].marker = MarkerId{1};
    ArchWishes odd = wishesOf(2, 1, true, 5);
    odd.places = {atStitch(5), atStitch(15)};
    ArchWishes overlap = wishesOf(2, 2, true, 8);
    overlap.places = {atStitch(8), atStitch(12)};
    ArchWishes until = wishesOf(10, 2, true, 4);
    until.untilWidth = 6;
    struct Line {
        ArchWishes wishes;
        const char* says;
    };
    for (const Line& line :
         {Line{wishesOf(4, 2, true, 12), "up to 8 short rows would do"}, Line{wishesOf(4, 2, true, 1), "2 short rows or more"},
          Line{wishesOf(0, 2, true, 4), "take 1 or more"}, Line{wishesOf(4, 0, true, 4), "take 1 or more"},
          Line{wishesOf(6, 2, false, 5), "up to 4 rows would do"}, Line{wishesOf(20, 1, true, 2), "begin narrower"},
          Line{none, "no place is chosen"}, Line{far, "has no stitch 21, the needle holds 20"},
          Line{marker, "marker A isn't on the needle"}, Line{odd, "4 or 6 would do"},
          Line{overlap, "would overlap by"}, Line{until, "ends at 6"}}) {
        Knit knit(20);
        knit.rs("k*20").ws("p*20");
        knit.pattern().head.markers = {{MarkerId{1}, "A"}};
        Arched desk(knit);
        EXPECT_FALSE(desk.make(2, line.wishes)) << line.says;
        EXPECT_NE(desk.fault.find(line.says), std::string::npos) << desk.fault;
    }
}
