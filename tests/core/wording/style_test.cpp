#include "core/wording/reader/reader.h"
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
    eachValue(&Style::longRuns, 2, seen);
    eachValue(&Style::markers, 2, seen);
    EXPECT_EQ(seen.size(), 1u + 1 + 2 + 1 + 2 + 2 + 2 + 1 + 3 + 3 + 1 + 1 + 1 + 1);
    EXPECT_EQ(seen.begin()->size(), 13u);
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

TEST(Style, LongRunsGoToAPlaceOrAreCounted)
{
    Style counted;
    counted.longRuns = LongRuns::Counted;
    struct Case {
        const char* row;
        int castOn;
        const char *toAPlace, *counted;
    };
    const Case cases[] = {
        {"k*2 ssk k*33 k2tog k*2", 41, "k2, ssk, k to last 4 sts, k2tog, k2.", "k2, ssk, k33, k2tog, k2."},
        {"k*30 turn", 36, "k to last 6 sts, turn.", "k30, turn, leaving 6 sts unworked."},
        {"k*24", 24, "knit.", "k24."},
        // Drawn as a repeat to a place it is told so.
        {"k*2 ssk [ k ]end-4 k2tog k*2", 41, "k2, ssk, k to last 4 sts, k2tog, k2.",
         "k2, ssk, k to last 4 sts, k2tog, k2."},
    };
    for (const Case& one : cases) {
        EXPECT_EQ(textOf(Side::RS, one.row, one.castOn), one.toAPlace);
        EXPECT_EQ(textOf(Side::RS, one.row, one.castOn, counted), one.counted);
    }
}

TEST(Style, MarkersAreLeftOutWhereTheyNeedNoWord)
{
    // "Slip markers as you come to them", said once, allows leaving out sm: Yours UK shawl (2017).
    Style style;
    style.markers = MarkersSlipped::WhereNeeded;
    Knit knit(20);
    knit.rs("k*4 |A k*12 |B k*4").ws("k*4 p*12 k*4").rs("k*4 yo ~A k*12 ~B yo k*4");
    EXPECT_EQ(textOf(knit, 1), "k4, sm B, p12, sm A, k4.");
    EXPECT_EQ(textOf(knit, 1, style), "k4, p12, k4.");
    EXPECT_EQ(textOf(knit, 2, style), textOf(knit, 2)); // beside a yarn over the side must be told

    const Pattern pattern = knit.done();
    const std::string text = writtenPattern(pattern, knit.catalogue(), run(pattern, knit.catalogue()), style);
    EXPECT_NE(text.find("Cast on 20 sts with MC.\nSlip markers as you come to them.\n"), std::string::npos) << text;
    const ReadText read = readText(text, knit.catalogue());
    EXPECT_EQ(styleOf(read.pattern.head).markers, MarkersSlipped::WhereNeeded);
    EXPECT_EQ(read.pattern.head.introduction + read.pattern.sections.at(0).frame.note, "");
    EXPECT_EQ(dumpEnd(run(read.pattern, knit.catalogue())), dumpEnd(run(pattern, knit.catalogue())));
}
