// One stitch in place of another.

#include "core/edits/replace_stitch.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

TEST(ReplaceStitch, InTheSelectionOrTheWholeSection)
{
    struct Line {
        Areas within;
        const char* first;
        const char* second;
        int count;
    };
    const Line lines[] = {{{}, "p p k2tog", "- p -", 3},
                          {{Area{0, 0, 1, 1}}, "p k k2tog", "- k -", 1},
                          {{Area{0, 1, 2, 9}}, "k p k2tog", "- p -", 2}};
    for (const Line& line : lines) {
        Pattern pattern = patternOf({"k k k2tog", "- k -"}, 3);
        const Pattern before = pattern;
        auto replaced = replaceStitch(pattern, smallCatalogue(), body, line.within, st("k"), st("p"));
        ASSERT_TRUE(replaced.ok());
        EXPECT_EQ(replaced.value().count, line.count);
        const Applied applied = apply(pattern, replaced.value().edit);
        EXPECT_EQ(dump(rowOf(pattern, 0)), line.first);
        EXPECT_EQ(dump(rowOf(pattern, 1)), line.second);
        apply(pattern, applied.takeBack);
        EXPECT_EQ(pattern, before);
    }
}

TEST(ReplaceStitch, AWideOneCountsOnceAndKeepsItsYarn)
{
    Pattern pattern = patternOf({"c4 k c4"}, 9);
    Row row = rowOf(pattern, 0);
    for (int at = 5; at < 9; ++at)
        row.cells[static_cast<std::size_t>(at)].yarn = YarnId{2};
    pattern.sections[0].rows[0] = std::make_shared<const Row>(row);
    const Catalogue catalogue = smallCatalogue().with(std::vector<Stitch>{[] {
        Stitch own = stitch("c4b", 4, 4);
        own.id = StitchId{firstOwnStitch};
        return own;
    }()});
    auto cut = replaceStitch(pattern, catalogue, body, Areas{Area{0, 0, 3, 9}}, st("c4"), StitchId{firstOwnStitch});
    ASSERT_TRUE(cut.ok());
    EXPECT_EQ(cut.value().count, 1); // the other one is only partly selected
    auto all = replaceStitch(pattern, catalogue, body, {}, st("c4"), StitchId{firstOwnStitch});
    ASSERT_TRUE(all.ok());
    EXPECT_EQ(all.value().count, 2);
    apply(pattern, all.value().edit);
    EXPECT_EQ(cellAt(rowOf(pattern, 0), 9), (Cell{StitchId{firstOwnStitch}, YarnId{2}, 3}));
    EXPECT_EQ(cellAt(rowOf(pattern, 0), 4), (Cell{StitchId{firstOwnStitch}, {}, 3}));
}

TEST(ReplaceStitch, WhatCantBeIsSaid)
{
    const Pattern pattern = patternOf({"k k c4"}, 6);
    const auto fails = [&](StitchId from, StitchId to, const Areas& within, const char* says) {
        const auto replaced = replaceStitch(pattern, smallCatalogue(), body, within, from, to);
        ASSERT_FALSE(replaced.ok()) << says;
        EXPECT_NE(replaced.fault().message.find(says), std::string::npos) << replaced.fault().message;
    };
    fails(st("k"), st("c4"), {}, "k is 1 column wide and c4 4");
    fails(st("p"), st("k"), {}, "p doesn't stand in its chart");
    fails(st("k"), st("p"), {Area{0, 0, 3, 6}}, "in the selection");
    fails(noStitch, st("p"), {}, "choose a stitch");
    fails(st("k"), StitchId{77}, {}, "choose a stitch");
}

TEST(ReplaceStitch, TheStitchesThatStandThere)
{
    const Pattern pattern = patternOf({"k p p", "- p k2tog"}, 3);
    EXPECT_EQ(stitchesIn(pattern.sections[0], {}), (std::vector<StitchId>{st("p"), st("k"), st("k2tog")}));
    EXPECT_EQ(stitchesIn(pattern.sections[0], {Area{1, 1, 1, 1}}), std::vector<StitchId>{});
}

} // namespace
} // namespace shawlwright
