#include "core/pattern/questions.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

// "1 2.1 3.1 2.2 3.2": the rows in knitting order by their place in the chart, with the pass of each bracket.
std::string knitted(const Pattern& pattern, int version = 0, int size = 0)
{
    std::string text;
    for (const KnittedRow& row : knittedRows(pattern, version, size)) {
        text += (text.empty() ? "" : " ") + std::string(static_cast<std::size_t>(row.section), '\'') +
                std::to_string(row.row + 1);
        for (const int pass : row.passes)
            text += "." + std::to_string(pass);
    }
    return text;
}

Pattern withBrackets(int rows, std::vector<Bracket> brackets)
{
    Pattern pattern = patternOf(std::vector<std::string>(static_cast<std::size_t>(rows), "k"), 1);
    pattern.sections[0].frame.brackets = std::move(brackets);
    return pattern;
}

Bracket bracket(std::uint32_t first, std::uint32_t last, Quantity times)
{
    return Bracket{RowId{first}, RowId{last}, std::move(times)};
}

TEST(KnittedRows, BracketsAreWorkedOut)
{
    EXPECT_EQ(knitted(withBrackets(3, {})), "1 2 3");
    EXPECT_EQ(knitted(withBrackets(4, {bracket(2, 3, 2)})), "1 2.1 3.1 2.2 3.2 4");
    EXPECT_EQ(knitted(withBrackets(4, {bracket(2, 3, 1)})), "1 2.1 3.1 4");
    EXPECT_EQ(knitted(withBrackets(4, {bracket(2, 3, 0)})), "1 4");
    EXPECT_EQ(knitted(withBrackets(2, {bracket(1, 1, 2), bracket(2, 2, 3)})), "1.1 1.2 2.1 2.2 2.3");
}

TEST(KnittedRows, BracketsNest)
{
    const char* expected = "1.1 2.1.1 2.1.2 3.1 1.2 2.2.1 2.2.2 3.2";
    EXPECT_EQ(knitted(withBrackets(3, {bracket(1, 3, 2), bracket(2, 2, 2)})), expected);
    EXPECT_EQ(knitted(withBrackets(3, {bracket(2, 2, 2), bracket(1, 3, 2)})),
              expected); // in whatever order they stand
    // Both begin with the same row; both end with it.
    EXPECT_EQ(knitted(withBrackets(2, {bracket(1, 1, 2), bracket(1, 2, 2)})),
              "1.1.1 1.1.2 2.1 1.2.1 1.2.2 2.2");
    EXPECT_EQ(knitted(withBrackets(2, {bracket(1, 2, 2), bracket(2, 2, 2)})),
              "1.1 2.1.1 2.1.2 1.2 2.2.1 2.2.2");
}

TEST(KnittedRows, CountFromOneInEachSection)
{
    Pattern pattern = withBrackets(2, {bracket(1, 2, 3)});
    Section edge = pattern.sections[0];
    edge.id = SectionId{2};
    edge.frame.brackets.clear();
    pattern.sections.push_back(edge);
    const auto rows = knittedRows(pattern, 0, 0);
    ASSERT_EQ(rows.size(), 8u);
    EXPECT_EQ(rows[5].index, 6);
    EXPECT_EQ(rows[6].index, 1);
    EXPECT_EQ(rows[6].section, 1);
    EXPECT_EQ(rows[0].ref, rows[2].ref);
}

TEST(KnittedRows, VersionsAndSizes)
{
    Pattern pattern = withBrackets(2, {bracket(2, 2, Quantity(std::vector<int>{1, 3}))});
    pattern.head.versions = {"garter", "lace"};
    pattern.head.sizes = {"S", "L"};
    Section other = pattern.sections[0];
    other.id = SectionId{2};
    other.frame.versions = {"lace"};
    pattern.sections.push_back(other);
    other.id = SectionId{3};
    other.frame.versions = {"garter", "lace"};
    pattern.sections.push_back(other);
    EXPECT_EQ(knitted(pattern, 0, 0), "1 2.1 ''1 ''2.1");
    EXPECT_EQ(knitted(pattern, 1, 0), "1 2.1 '1 '2.1 ''1 ''2.1");
    EXPECT_EQ(knitted(pattern, 0, 1), "1 2.1 2.2 2.3 ''1 ''2.1 ''2.2 ''2.3");
    EXPECT_FALSE(belongsTo(pattern.sections[1], pattern, 0));
    EXPECT_TRUE(belongsTo(pattern.sections[0], pattern, 1));
}

TEST(KnittedRows, StopAtTheLimit)
{
    const Pattern pattern = withBrackets(3, {bracket(1, 3, mostRepeats), bracket(2, 3, mostRepeats)});
    EXPECT_EQ(knittedRows(pattern, 0, 0).size(), static_cast<std::size_t>(mostKnittedRows));
}

TEST(KnittedRows, CarryTheirBoxesOuterOnesFirst)
{
    Pattern pattern = patternOf({"k k k k", "k k k k", "k k k k"}, 4);
    pattern.sections[0].frame.boxes = {box(1, 2, 2, 3, 1), box(1, 2, 1, 4, 2), box(2, 2, 2, 3, 3)};
    const auto rows = knittedRows(pattern, 0, 0);
    const auto ids = [&](std::size_t at) {
        std::string text;
        for (const Box& each : *rows[at].boxes)
            text += std::to_string(each.id.value);
        return text;
    };
    EXPECT_EQ(ids(0), "21");
    EXPECT_EQ(ids(1), "213");
    EXPECT_EQ(ids(2), "");
    for (int row = 0; row < 3; ++row)
        EXPECT_EQ(*rows[static_cast<std::size_t>(row)].boxes, boxesOn(pattern.sections[0], row));
}

} // namespace
} // namespace shawlwright
