#include "core/pattern/questions.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

struct Given {
    const char* label = "";
    bool slides = false;
};

std::string labels(const std::vector<Given>& rows)
{
    Section section;
    std::uint32_t id = 0;
    for (const Given& given : rows) {
        Row row;
        row.id = RowId{++id};
        row.label = given.label;
        row.finish.kind = given.slides ? FinishKind::Slide : FinishKind::Turn;
        section.rows.push_back(std::make_shared<const Row>(row));
    }
    std::string text;
    for (const std::string& label : rowLabels(section))
        text += (text.empty() ? "" : " ") + label;
    return text;
}

TEST(RowLabels, CountedSlidTogetherAndTyped)
{
    EXPECT_EQ(labels({}), "");
    EXPECT_EQ(labels({{}, {}, {}}), "1 2 3");
    // The passes of two colours over one row of fabric share a number.
    EXPECT_EQ(labels({{"", true}, {}, {"", true}, {}}), "1a 1b 2a 2b");
    EXPECT_EQ(labels({{}, {"", true}, {"", true}, {}, {}}), "1 2a 2b 2c 3");
    EXPECT_EQ(labels({{}, {"", true}}), "1 2"); // slides to nothing
    EXPECT_EQ(labels({{}, {"17"}, {}, {}}), "1 17 18 19");
    EXPECT_EQ(labels({{}, {"12a"}, {}, {}}), "1 12a 3 4"); // no number: counted on as if it had none
    EXPECT_EQ(labels({{"5", true}, {}, {}}), "5 5b 6");
}

TEST(Fresh, IdsAreOnePastTheGreatest)
{
    Pattern pattern = patternOf({"k", "k", "k"}, 1);
    EXPECT_EQ(freshRowId(pattern), RowId{4});
    EXPECT_EQ(freshSectionId(pattern), SectionId{2});
    EXPECT_EQ(freshBoxId(pattern.sections[0]), BoxId{1});
    EXPECT_EQ(freshYarnId(pattern.head), YarnId{3});
    EXPECT_EQ(freshMarkerId(pattern.head), MarkerId{3});
    EXPECT_EQ(freshStitchId(pattern.head), StitchId{firstOwnStitch});
    pattern.head.stitches = {stitch("own", 1, 1)};
    pattern.head.stitches[0].id = StitchId{1004};
    EXPECT_EQ(freshStitchId(pattern.head), StitchId{1005});
}

TEST(Questions, WhatIsNotThereGivesNothing)
{
    const Pattern pattern = patternOf({"k"}, 1);
    EXPECT_EQ(sectionIndex(pattern, SectionId{9}), -1);
    EXPECT_EQ(rowIndex(pattern.sections[0], RowId{9}), -1);
    EXPECT_EQ(yarnOf(pattern.head, YarnId{9}), nullptr);
    EXPECT_EQ(markerOf(pattern.head, MarkerId{9}), nullptr);
    EXPECT_EQ(versionCount(pattern), 1);
    EXPECT_EQ(sizeCount(pattern), 1);
    EXPECT_EQ(versionName(pattern, 0), "");
    EXPECT_EQ(cellAt(*pattern.sections[0].rows[0], 2), Cell{});
    EXPECT_EQ(cellAt(*pattern.sections[0].rows[0], 0), Cell{});
    EXPECT_EQ(placeInWords(pattern, 0, 0), "Section 'Body', Row 1");
}

TEST(Quantities, OneNumberOrOnePerSize)
{
    EXPECT_EQ(Quantity(5).at(0), 5);
    EXPECT_EQ(Quantity(5).at(7), 5);
    const Quantity three(std::vector<int>{4, 6, 8});
    EXPECT_EQ(three.at(1), 6);
    EXPECT_EQ(three.at(9), 8);
    EXPECT_EQ(three.at(-1), 4);
}

} // namespace
} // namespace shawlwright
