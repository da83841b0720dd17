// What every built-in stitch must be, whatever it is.
#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

namespace shawlwright {
namespace {

const Catalogue& catalogue()
{
    return builtInCatalogue();
}
const Stitch& stitch(std::string_view key)
{
    return catalogue().stitch(catalogue().require(key));
}

Lean swapped(Lean lean)
{
    return lean == Lean::Right ? Lean::Left : lean == Lean::Left ? Lean::Right : lean;
}

TEST(BuiltIn, isTheFileInResources)
{
    std::ifstream file(SHAWLWRIGHT_SOURCE "/resources/stitches.json");
    std::stringstream text;
    text << file.rdbuf();
    const auto stitches = readStitches(text.str());
    ASSERT_TRUE(stitches.ok()) << toText(stitches.fault());
    EXPECT_EQ(stitches.value(), catalogue().builtIn());
    EXPECT_GE(catalogue().builtIn().size(), 120u);
}

TEST(BuiltIn, noStitchComesFirst)
{
    const Stitch& none = catalogue().builtIn().front();
    EXPECT_EQ(none.key, "no_st");
    EXPECT_EQ(none.takesUp, 0);
    EXPECT_EQ(none.leaves, 0);
    EXPECT_EQ(none.width(), 1);
}

TEST(BuiltIn, eachIsWhole)
{
    std::set<std::string> keys, names;
    for (const Stitch& one : catalogue().builtIn()) {
        SCOPED_TRACE(one.key);
        EXPECT_TRUE(checked(one).ok());
        EXPECT_TRUE(keys.insert(one.key).second) << "key twice";
        EXPECT_TRUE(names.insert(one.name).second) << "name twice: " << one.name;
        EXPECT_FALSE(one.name.empty());
        EXPECT_FALSE(one.source.empty());
        EXPECT_TRUE(one.unknown.empty());
        EXPECT_TRUE(one.howToRS.ends_with('.'));
        EXPECT_TRUE(one.howToWS.empty() || one.howToWS.ends_with('.'));
        EXPECT_EQ(one.sameOnBothSides, one.onRS == one.onWS);
        EXPECT_TRUE(one.sameOnBothSides || !one.howToWS.empty()) << "how to work it on the wrong side?";
        EXPECT_TRUE(one.heads.empty() || static_cast<int>(one.heads.size()) == one.leaves);
        const bool passes = one.manner == Manner::Slipped || one.manner == Manner::PairMade ||
                            one.manner == Manner::DoubleTurn;
        EXPECT_TRUE(!passes || one.takesUp == one.leaves);
        const bool ends = one.manner == Manner::BoundOff || one.manner == Manner::Dropped;
        EXPECT_TRUE(!ends || one.leaves == 0);
        EXPECT_TRUE(one.manner != Manner::CastOn || one.takesUp == 0);
        EXPECT_TRUE(one.drawing != Drawing::Crossing ||
                    one.crossing.front + one.crossing.back == one.takesUp);
    }
}

// On each side a word finds a stitch that is worked so there, and of the same count.
TEST(BuiltIn, eachWordFindsAStitchWorkedSo)
{
    for (const Stitch& one : catalogue().builtIn())
        for (const Side side : {Side::RS, Side::WS})
            for (const Words words : {Words::US, Words::UK}) {
                SCOPED_TRACE(one.key + (side == Side::RS ? " RS" : " WS"));
                const std::string& word = abbreviation(one, side, words);
                const auto found = catalogue().worked(word, side);
                ASSERT_TRUE(found) << word;
                const Stitch& other = catalogue().stitch(*found);
                EXPECT_TRUE(abbreviation(other, side, Words::US) == word ||
                            abbreviation(other, side, Words::UK) == word);
                EXPECT_EQ(other.takesUp, one.takesUp) << other.key;
                EXPECT_EQ(other.leaves, one.leaves) << other.key;
                EXPECT_EQ(other.lean, one.lean) << other.key;
                EXPECT_EQ(other.face, one.face) << other.key;
            }
}

// Words shared by several stitches are read as the first; these and no others.
TEST(BuiltIn, sharedWords)
{
    std::map<std::string, std::string> shared;
    for (const Stitch& one : catalogue().builtIn())
        for (const Side side : {Side::RS, Side::WS}) {
            const std::string& word = abbreviation(one, side);
            if (catalogue().worked(word, side) != one.id)
                shared[one.key] += std::string(side == Side::RS ? "RS " : "WS ") + word;
        }
    const std::map<std::string, std::string> known{
        {"skp", "WS ssp"},       // worked as ssk is: the same fabric
        {"sk2p", "WS sssp"},     // leans alike, not quite the same stack
        {"rdd_pass", "WS p3tog"} // leans alike
    };
    EXPECT_EQ(shared, known);
}

TEST(BuiltIn, otherSideKnowsTheWord)
{
    // What is worked on the wrong side is a known hand movement: the same word is worked on the right side by
    // some stitch.
    for (const Stitch& one : catalogue().builtIn())
        EXPECT_TRUE(catalogue().worked(one.onWS, Side::RS)) << one.key << ": " << one.onWS;
}

TEST(BuiltIn, mirrorImages)
{
    // No true mirror image: the trade uses the same stitch on either half and the picture differs a little.
    const std::set<std::string> usedAsItIs{"s1k2p", "k3_pass_yo", "inc4", "yo2_k1p1k1p1", "yo2_k1p1_each"};
    // Their mirror image is mirrored by a simpler stitch that leans alike.
    const std::map<std::string, std::string> throughSimpler{
        {"skp", "ssk"},        {"k2tog_tbl", "ssk"},  {"p2tog_tbl", "ssp"},  {"sk2p", "sssk"},
        {"k3tog_tbl", "sssk"}, {"p3tog_tbl", "sssp"}, {"rdd_pass", "k3tog"}, {"sk3p", "ssssk"}};
    for (const Stitch& one : catalogue().builtIn()) {
        SCOPED_TRACE(one.key);
        const auto id = catalogue().mirrored(one.id);
        EXPECT_EQ(id.has_value(), !one.mirror.empty());
        if (!id || usedAsItIs.contains(one.key))
            continue;
        const Stitch& mirror = catalogue().stitch(*id);
        EXPECT_EQ(mirror.takesUp, one.takesUp);
        EXPECT_EQ(mirror.leaves, one.leaves);
        EXPECT_EQ(mirror.lean, swapped(one.lean));
        EXPECT_EQ(mirror.face, one.face);
        EXPECT_EQ(mirror.width(), one.width());
        EXPECT_TRUE(
            std::equal(mirror.heads.begin(), mirror.heads.end(), one.heads.rbegin(), one.heads.rend()));
        const auto back = throughSimpler.find(one.key);
        EXPECT_EQ(catalogue().stitch(*catalogue().mirrored(*id)).key,
                  back == throughSimpler.end() ? one.key : back->second)
            << "mirrored twice";
    }
    for (const std::string& key : usedAsItIs)
        EXPECT_EQ(stitch(key).mirror, key);
}

// Turned over, a stitch worked by the same words shows its faces exchanged and its loops in the other order.
// Where that is the fabric itself, the same word on both sides is right; elsewhere no counterpart is
// published.
TEST(BuiltIn, alternatingPairsAreTheSameFromBothSides)
{
    for (const char* key : {"kp1", "pk1", "yo2_k1p1", "yo2_p1k1", "inc4", "yo2_k1p1k1p1", "yo2_k1p1_each"}) {
        const Stitch& one = stitch(key);
        SCOPED_TRACE(key);
        EXPECT_TRUE(one.sameOnBothSides);
        std::vector<HeadKind> turned(one.heads.rbegin(), one.heads.rend());
        for (HeadKind& head : turned)
            head = head == HeadKind::Knit ? HeadKind::Purl : HeadKind::Knit;
        EXPECT_EQ(turned, one.heads);
    }
}

// A stitch and what is worked for it on the wrong side: turned over, the one is the other.
TEST(BuiltIn, otherSideIsTheStitchTurnedOver)
{
    for (const Stitch& one : catalogue().builtIn()) {
        if (one.sameOnBothSides || one.key == "kfb" || one.key == "pfb")
            continue; // the bump of kfb is a purl that the plain purl form lacks: Vogue Knitting against
                      // common practice
        SCOPED_TRACE(one.key);
        const Stitch& other = catalogue().stitch(*catalogue().worked(one.onWS, Side::RS));
        EXPECT_EQ(other.lean,
                  one.lean == Lean::Centred || one.family == Family::YarnOver ? one.lean
                  : one.manner == Manner::Worked && one.family == Family::Increase && one.takesUp == 0
                      ? one.lean // a twist is the same from both sides
                      : swapped(one.lean));
        EXPECT_NE(other.face, one.face);
        ASSERT_EQ(other.heads.size(), one.heads.size());
        for (std::size_t i = 0; i < one.heads.size(); ++i) {
            const HeadKind seen = one.heads[one.heads.size() - 1 - i];
            EXPECT_EQ(other.heads[i], seen == HeadKind::Knit   ? HeadKind::Purl
                                      : seen == HeadKind::Purl ? HeadKind::Knit
                                                               : HeadKind::YarnOver);
        }
    }
}

} // namespace
} // namespace shawlwright
