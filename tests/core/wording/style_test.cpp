#include "core/wording/style.h"
#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

#include <set>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

template <typename Value>
void eachValue(Value Style::*field, int values, std::set<std::map<std::string, std::string>>& seen)
{
    for (int value = 0; value < values; ++value) {
        Style style;
        style.*field = static_cast<Value>(value);
        PatternHead head;
        head.style = toWords(style);
        EXPECT_EQ(styleOf(head), style);
        seen.insert(head.style);
    }
}

} // namespace

TEST(Style, SurvivesThePatternFile)
{
    std::set<std::map<std::string, std::string>> seen;
    eachValue(&Style::words, 2, seen);
    eachValue(&Style::counts, 3, seen);
    eachValue(&Style::repeats, 2, seen);
    eachValue(&Style::times, 3, seen);
    eachValue(&Style::capitals, 3, seen);
    eachValue(&Style::sides, 3, seen);
    eachValue(&Style::repeatWord, 2, seen);
    eachValue(&Style::labels, 4, seen);
    eachValue(&Style::countMarks, 4, seen);
    eachValue(&Style::gathering, 2, seen);
    eachValue(&Style::versions, 2, seen);
    EXPECT_EQ(seen.size(), 1u + 1 + 2 + 1 + 2 + 2 + 2 + 1 + 3 + 3 + 1 + 1);
    EXPECT_EQ(seen.begin()->size(), 11u);
}

TEST(Style, WhatIsNotKnownIsTheDefault)
{
    PatternHead head;
    EXPECT_EQ(styleOf(head), Style{});
    head.style = {{"words", "nonsense"}, {"counts", ""}, {"shoe", "left"}, {"labels", "FULL STOP"}};
    EXPECT_EQ(styleOf(head), Style{});
}

TEST(Style, WordsOfARow)
{
    const char* const row = "k k2tog [ yo k2tog ]*4 [ k ]end";
    struct Case {
        const char* what;
        Style style;
        const char* text;
    };
    Style figures, words, start, stitches, repeat;
    words.times = TimesForm::Words;
    start.capitals = Capitals::RowStart;
    stitches.capitals = Capitals::Stitches;
    const Case cases[] = {
        {"as usual", {}, "k1, k2tog, [yo, k2tog] 4 times, k to end."},
        {"words", words, "k1, k2tog, [yo, k2tog] four times, k to end."},
        {"row start", start, "K1, k2tog, [yo, k2tog] 4 times, k to end."},
        {"stitches", stitches, "K1, K2tog, [Yo, K2tog] 4 times, K to end."},
    };
    for (const Case& one : cases)
        EXPECT_EQ(textOf(Side::RS, row, 20, one.style), one.text) << one.what;
    repeat.repeatWord = RepeatWord::Repeat;
    EXPECT_EQ(textOf(Side::RS, "k [ yo k2tog ]end-1 k", 10, repeat),
              "k1, *yo, k2tog; repeat from * to last st, k1.");
}

TEST(Style, CountsInTheirMarks)
{
    struct Case {
        CountMarks marks;
        const char* line;
    };
    const Case cases[] = {{CountMarks::Parentheses, "Row 1 (RS): yo, k4. (5 sts)"},
                          {CountMarks::Brackets, "Row 1 (RS): yo, k4. [5 sts]"},
                          {CountMarks::Dash, "Row 1 (RS): yo, k4 - 5 sts."},
                          {CountMarks::None, "Row 1 (RS): yo, k4. 5 sts."}};
    for (const Case& one : cases) {
        Knit knit(4);
        knit.pattern().head.yarns.resize(1);
        knit.rs("yo k*4");
        Style style;
        style.countMarks = one.marks;
        EXPECT_EQ(toText(written(knit, style)[0]), one.line);
    }
}
