// What cannot be a stitch, and what the designer is told.
#include "core/stitches/stitch.h"

#include <gtest/gtest.h>

#include <functional>

namespace shawlwright {
namespace {

Stitch fine()
{
    Stitch stitch;
    stitch.key = "fern_2";
    stitch.onRS = "fern";
    stitch.onWS = "fern p";
    stitch.takesUp = 2;
    stitch.leaves = 3;
    stitch.heads = {HeadKind::Knit, HeadKind::YarnOver, HeadKind::Knit};
    return stitch;
}

TEST(Checked, givesTheStitchItself)
{
    const auto result = checked(fine());
    ASSERT_TRUE(result.ok());
    EXPECT_EQ(result.value(), fine());
}

TEST(Checked, limitsThemselvesAreFine)
{
    Stitch stitch = fine();
    stitch.heads.clear();
    stitch.takesUp = stitch.leaves = stitch.columns = mostLoopsPerStitch;
    EXPECT_TRUE(checked(stitch).ok());
    stitch.takesUp = stitch.leaves = stitch.columns = 0;
    EXPECT_TRUE(checked(stitch).ok());
    stitch.key = std::string(mostKeyLetters, 'k');
    stitch.onRS = std::string(mostWordBytes, 'k');
    EXPECT_TRUE(checked(stitch).ok());
}

struct Refused {
    std::function<void(Stitch&)> spoil;
    const char* says;
};

TEST(Checked, refusesNonsense)
{
    const Refused cases[] = {
        {[](Stitch& s) { s.key = ""; }, "has no key"},
        {[](Stitch& s) { s.key = "Fern"; }, "lower case letters, digits and _"},
        {[](Stitch& s) { s.key = "fern leaf"; }, "lower case letters, digits and _"},
        {[](Stitch& s) { s.key = "f\xC3\xA4rn"; }, "lower case letters, digits and _"},
        {[](Stitch& s) { s.key = std::string(mostKeyLetters + 1, 'k'); }, "has 61 letters; at most 60"},
        {[](Stitch& s) { s.onRS = ""; }, "no abbreviation for one of the sides"},
        {[](Stitch& s) { s.onWS = ""; }, "no abbreviation for one of the sides"},
        {[](Stitch& s) { s.onRS = "fern\nleaf"; }, "on one line"},
        {[](Stitch& s) { s.onWSUK = "fern\tleaf"; }, "on one line"},
        {[](Stitch& s) { s.onRSUK = " fern"; }, "blank"},
        {[](Stitch& s) { s.onWS = "fern "; }, "blank"},
        {[](Stitch& s) { s.onWS = std::string(mostWordBytes + 1, 'k'); }, "longer than 200"},
        {[](Stitch& s) { s.takesUp = -1; }, "takes up -1 stitches; 0 to 64"},
        {[](Stitch& s) { s.takesUp = 65; }, "takes up 65 stitches; 0 to 64"},
        {[](Stitch& s) { s.heads.clear(), s.leaves = -2; }, "leaves -2 stitches; 0 to 64"},
        {[](Stitch& s) { s.heads.clear(), s.leaves = 65; }, "leaves 65 stitches; 0 to 64"},
        {[](Stitch& s) { s.columns = -1; }, "-1 columns wide"},
        {[](Stitch& s) { s.columns = 65; }, "65 columns wide"},
        {[](Stitch& s) { s.heads.pop_back(); }, "leaves 3 stitches but describes 2"},
        {[](Stitch& s) { s.drawing = Drawing::Crossing; }, "crosses 0 over 0"},
        {[](Stitch& s) {
             s.drawing = Drawing::Crossing, s.crossing = {2, 1};
         },
         "crosses 2 over 1 stitches but takes up 2"},
        {[](Stitch& s) {
             s.drawing = Drawing::Crossing, s.crossing = {-1, 2};
         },
         "crosses -1 over 2"},
    };
    for (const Refused& one : cases) {
        Stitch stitch = fine();
        one.spoil(stitch);
        const auto result = checked(stitch);
        ASSERT_FALSE(result.ok()) << one.says;
        EXPECT_NE(result.fault().message.find(one.says), std::string::npos) << result.fault().message;
        EXPECT_LT(result.fault().where.size(), 80u);
    }
}

TEST(Checked, saysWhichStitch)
{
    Stitch stitch = fine();
    stitch.takesUp = -1;
    EXPECT_EQ(checked(stitch).fault().where, "stitch 'fern_2'");
}

} // namespace
} // namespace shawlwright
