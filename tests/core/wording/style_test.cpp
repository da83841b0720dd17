#include "core/wording/style.h"

#include <gtest/gtest.h>

using namespace shawlwright;

TEST(Style, SurvivesThePatternFile)
{
    for (const Words words : {Words::US, Words::UK})
        for (const CountsShown counts :
             {CountsShown::Always, CountsShown::WhereTheyChange, CountsShown::Never})
            for (const RepeatForm repeats : {RepeatForm::Bracket, RepeatForm::Asterisk}) {
                PatternHead head;
                head.style = toWords({words, counts, repeats});
                EXPECT_EQ(styleOf(head), (Style{words, counts, repeats}));
            }
}

TEST(Style, WhatIsNotKnownIsTheDefault)
{
    PatternHead head;
    EXPECT_EQ(styleOf(head), Style{});
    head.style = {{"words", "nonsense"}, {"counts", ""}, {"shoe", "left"}};
    EXPECT_EQ(styleOf(head), Style{});
}
