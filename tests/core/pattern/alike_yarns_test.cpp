// Which yarns can't be told apart, and what is said of them.

#include "core/pattern/alike_yarns.h"

#include <gtest/gtest.h>

using namespace shawlwright;

namespace {

std::vector<Yarn> yarns(std::initializer_list<std::uint32_t> colours)
{
    std::vector<Yarn> all;
    for (const std::uint32_t colour : colours) {
        Yarn yarn;
        yarn.id = YarnId{static_cast<std::uint8_t>(all.size() + 1)};
        yarn.code = all.empty() ? "MC" : "CC" + std::to_string(all.size());
        yarn.colour = colour;
        all.push_back(yarn);
    }
    return all;
}

} // namespace

TEST(AlikeYarns, AreNamedWithTheirNumber)
{
    const auto found = alikeYarns(yarns({0x1F4E79, 0x23527D}));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].where, AlikeYarns::Where::ToEverybody);
    EXPECT_LT(found[0].number, 3);
    EXPECT_NE(found[0].message.find("MC and CC1"), std::string::npos) << found[0].message;
    EXPECT_NE(found[0].message.find("make MC darker or CC1 lighter"), std::string::npos) << found[0].message;
}

TEST(AlikeYarns, AreFoundForEyesThatLackAColour)
{
    const auto found = alikeYarns(yarns({0x6B8E3A, 0xA87A3A})); // moss and ochre
    ASSERT_EQ(found.size(), 1u) << "green and brown";
    EXPECT_EQ(found[0].where, AlikeYarns::Where::ToSomeEyes);
    EXPECT_NE(found[0].vision, ColourVision::NoBlue);
    EXPECT_NE(found[0].message.find("opia"), std::string::npos) << found[0].message;
}

TEST(AlikeYarns, AreFoundInGreyAlone)
{
    const auto found = alikeYarns(yarns({0xC0392B, 0x1F6FB2})); // red and blue of one lightness
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].where, AlikeYarns::Where::WithoutColour);
    EXPECT_LT(found[0].number, 3);
    EXPECT_NE(found[0].message.find(" : 1"), std::string::npos) << found[0].message;
}

TEST(AlikeYarns, AreNotFoundWhereAllGoWell)
{
    EXPECT_TRUE(alikeYarns(yarns({0x1B2A41, 0xF2E8CF})).empty());
    EXPECT_TRUE(alikeYarns(yarns({0x1B2A41})).empty());
    EXPECT_TRUE(alikeYarns({}).empty());
    EXPECT_EQ(alikeYarns(yarns({0x123456, 0x123456, 0x123456})).size(), 3u);
}
