// Where a large chart is cut.
#include "app/exports/chart_split.h"
#include "tests/commandline/sample.h"

#include <gtest/gtest.h>

namespace shawlwright::app {

using tests::Knit;

namespace {

std::vector<bool> at(int count, std::vector<int> borders)
{
    std::vector<bool> marks(static_cast<std::size_t>(count) + 1, false);
    for (const int border : borders)
        marks[static_cast<std::size_t>(border)] = true;
    return marks;
}

TEST(Split, ByTable)
{
    struct Case {
        int count, most;
        std::vector<int> forbidden, preferred;
        std::vector<Span> expected;
    };
    const Case cases[] = {
        {10, 10, {}, {}, {{1, 10}}},
        {10, 30, {}, {}, {{1, 10}}},
        {12, 10, {}, {}, {{1, 6}, {7, 12}}},
        {30, 10, {}, {}, {{1, 10}, {11, 20}, {21, 30}}},
        {12, 10, {6}, {}, {{1, 5}, {6, 12}}},
        {12, 10, {5, 6}, {}, {{1, 4}, {5, 12}}},
        {12, 10, {}, {8}, {{1, 8}, {9, 12}}},
        {12, 10, {8}, {8}, {{1, 6}, {7, 12}}},
        {3, 1, {}, {}, {{1, 1}, {2, 2}, {3, 3}}},
        {4, 2, {1, 2, 3}, {}, {{1, 2}, {3, 4}}}, // a stitch wider than the sheet
    };
    for (const Case& c : cases)
        EXPECT_EQ(split(c.count, c.most, at(c.count, c.forbidden), at(c.count, c.preferred)), c.expected)
            << c.count << " by " << c.most;
}

TEST(Split, CoversEverythingOnceAndKeepsToTheSize)
{
    for (int count = 1; count <= 60; ++count)
        for (int most = 1; most <= 30; ++most) {
            std::vector<bool> forbidden(static_cast<std::size_t>(count) + 1, false), preferred = forbidden;
            for (int i = 1; i < count; ++i) {
                forbidden[static_cast<std::size_t>(i)] = i % 5 == 2;
                preferred[static_cast<std::size_t>(i)] = i % 7 == 3;
            }
            int next = 1;
            for (const Span& span : split(count, most, forbidden, preferred)) {
                ASSERT_EQ(span.first, next);
                ASSERT_GE(span.last, span.first);
                ASSERT_LE(span.count(), most);
                next = span.last + 1;
            }
            ASSERT_EQ(next, count + 1);
        }
}

TEST(Split, NeverThroughAWideStitch)
{
    Knit knit(12);
    knit.rs("k*5 yo2 k2tog k2tog k*3"); // the double yarn over is two columns wide, 6 and 7
    const auto spans = splitColumns(knit.done().sections.front(), 6);
    ASSERT_EQ(spans.size(), 3u) << "6 and 6 would cut it";
    EXPECT_EQ(spans.front().last, 5);
}

} // namespace

} // namespace shawlwright::app
