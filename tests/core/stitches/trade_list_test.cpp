// The built-in stitches against facts from published sources: tests/data/stitches/trade-list.json names them
// all.
#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>

namespace shawlwright {
namespace {

using Json = nlohmann::json;

const Json& tradeList()
{
    static const Json list =
        Json::parse(std::ifstream(SHAWLWRIGHT_SOURCE "/tests/data/stitches/trade-list.json"));
    return list;
}

// A fact of an operation, or what stands here instead; "because" says why.
const Json& fact(const Json& operation, const char* name)
{
    if (const auto here = operation.find("here"); here != operation.end() && here->contains(name))
        return here->at(name);
    return operation.at(name);
}

const Stitch& stitchOf(const Json& operation)
{
    const auto id = builtInCatalogue().find(operation.at("id").get<std::string>());
    EXPECT_TRUE(id) << operation.at("id");
    return builtInCatalogue().stitch(id.value_or(noStitch));
}

std::string leanInWords(Lean lean)
{
    switch (lean) {
    case Lean::None:
        return "none";
    case Lean::Right:
        return "right";
    case Lean::Left:
        return "left";
    case Lean::Centred:
        break;
    }
    return "centred";
}

TEST(TradeList, isWhole)
{
    EXPECT_GE(tradeList().at("operations").size(), 120u);
    for (const Json& operation : tradeList().at("operations")) {
        SCOPED_TRACE(operation.at("id"));
        ASSERT_FALSE(operation.at("sources").empty());
        for (const Json& source : operation.at("sources"))
            EXPECT_TRUE(tradeList().at("sources").contains(source.get<std::string>())) << source;
        EXPECT_TRUE(!operation.contains("here") ||
                    !operation.at("here").at("because").get<std::string>().empty());
    }
}

TEST(TradeList, takesUpAndLeaves)
{
    for (const Json& operation : tradeList().at("operations")) {
        SCOPED_TRACE(operation.at("id"));
        EXPECT_EQ(stitchOf(operation).takesUp, fact(operation, "takesUp").get<int>());
        EXPECT_EQ(stitchOf(operation).leaves, fact(operation, "leaves").get<int>());
    }
}

TEST(TradeList, mirrorImages)
{
    for (const Json& operation : tradeList().at("operations")) {
        SCOPED_TRACE(operation.at("id"));
        const Json& mirror = fact(operation, "mirror");
        EXPECT_EQ(stitchOf(operation).mirror, mirror.is_null() ? "" : mirror.get<std::string>());
    }
}

TEST(TradeList, workedOnTheOtherSideForTheSameLook)
{
    for (const Json& operation : tradeList().at("operations")) {
        SCOPED_TRACE(operation.at("id"));
        const Stitch& stitch = stitchOf(operation);
        const Json& other = fact(operation, "otherSide");
        const auto id = builtInCatalogue().find(other.is_null() ? stitch.key : other.get<std::string>());
        ASSERT_TRUE(id) << other;
        EXPECT_EQ(stitch.onWS, builtInCatalogue().stitch(*id).onRS);
    }
}

TEST(TradeList, leanSeenFromRightSide)
{
    int looked = 0;
    for (const Json& operation : tradeList().at("operations")) {
        SCOPED_TRACE(operation.at("id"));
        const Stitch& stitch = stitchOf(operation);
        if (operation.contains("lean")) {
            EXPECT_EQ(leanInWords(stitch.lean), operation.at("lean").get<std::string>());
            continue;
        }
        const auto leanWorkedOn = [&](Side side) {
            const auto id = builtInCatalogue().worked(stitch.onRS, side);
            EXPECT_TRUE(id) << stitch.onRS;
            return leanInWords(builtInCatalogue().stitch(id.value_or(noStitch)).lean);
        };
        EXPECT_EQ(leanWorkedOn(Side::RS), operation.at("leanWorkedOnRS").get<std::string>());
        // Without a published counterpart a stitch is charted as worked on the right side, and so is its
        // lean.
        if (!stitch.sameOnBothSides && builtInCatalogue().worked(stitch.onRS, Side::WS)) {
            EXPECT_EQ(leanWorkedOn(Side::WS), operation.at("leanWorkedOnWS").get<std::string>());
            ++looked;
        }
    }
    EXPECT_GE(looked, 16) << "decreases with a form for either side";
}

} // namespace
} // namespace shawlwright
