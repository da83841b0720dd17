// Yarns without colour are told apart, in the order of their lightness.

#include "core/base/colour.h"
#include "core/pattern/grey_yarns.h"

#include <gtest/gtest.h>

using namespace shawlwright;

namespace {

std::vector<Yarn> yarns(std::initializer_list<std::uint32_t> colours)
{
    std::vector<Yarn> all;
    for (const std::uint32_t colour : colours) {
        Yarn yarn;
        yarn.colour = colour;
        all.push_back(yarn);
    }
    return all;
}

} // namespace

TEST(GreyYarns, KeepTheOrderOfLightness)
{
    const auto grey = inGrey(yarns({0xF2E8CF, 0x1B2A41, 0xC0392B}));
    EXPECT_GT(grey[0].colour, grey[2].colour);
    EXPECT_GT(grey[2].colour, grey[1].colour);
    for (const Yarn& yarn : grey) {
        EXPECT_EQ(yarn.colour & 0xFF, (yarn.colour >> 8) & 0xFF);
        EXPECT_EQ(yarn.colour & 0xFF, yarn.colour >> 16);
    }
}

TEST(GreyYarns, AreToldApartWhereTheirColoursAreAlike)
{
    const auto grey = inGrey(yarns({0xC0392B, 0x1F6FB2})); // red and blue of one lightness
    EXPECT_GT(contrastRatio(grey[0].colour, grey[1].colour), 7);
    const auto same = inGrey(yarns({0x808080, 0x808080, 0x808080}));
    EXPECT_NE(same[0].colour, same[1].colour);
    EXPECT_NE(same[1].colour, same[2].colour);
}

TEST(GreyYarns, LeaveSymbolsLegible)
{
    for (const Yarn& yarn : inGrey(yarns({0x000000, 0x444444, 0x999999, 0xFFFFFF}))) {
        const std::uint32_t level = 255 - (255 - (yarn.colour & 0xFF)) / 5; // a tint of 20 % on white
        EXPECT_GT(contrastRatio(level * 0x010101u, 0x16150F), 7);
    }
    EXPECT_TRUE(inGrey({}).empty());
}
