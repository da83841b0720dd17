// The catalogue itself: numbers, keys, words on either side, a pattern's own stitches, mirror images.
#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

Stitch made(const char* key, const char* onRS, const char* onWS)
{
    Stitch stitch;
    stitch.key = key;
    stitch.onRS = onRS;
    stitch.onWS = onWS;
    return stitch;
}

Stitch own(int number, const char* key, const char* onRS, const char* onWS)
{
    Stitch stitch = made(key, onRS, onWS);
    stitch.id = StitchId{static_cast<std::uint16_t>(number)};
    return stitch;
}

Catalogue small()
{
    Stitch knit = made("k", "k", "p"), purl = made("p", "p", "k"), off = made("bo", "bo", "bo");
    knit.mirror = "k";
    off.onRSUK = off.onWSUK = "cast off";
    Stitch right = made("right", "kr", "pr"), left = made("left", "kl", "pl"), twin = made("twin", "kx", "p");
    right.mirror = "left";
    left.mirror = "right";
    twin.mirror = "nowhere";
    return Catalogue({made("no_st", "no stitch", "no stitch"), knit, purl, off, right, left, twin});
}

TEST(Catalogue, numbersInOrder)
{
    const Catalogue catalogue = small();
    for (std::size_t i = 0; i < catalogue.builtIn().size(); ++i)
        EXPECT_EQ(catalogue.builtIn()[i].id.value, i);
    EXPECT_EQ(catalogue.find("no_st"), noStitch);
    EXPECT_EQ(catalogue.stitch(StitchId{2}).key, "p");
}

TEST(Catalogue, unknownNumberGivesNoStitch)
{
    const Catalogue catalogue = small();
    for (const int number : {7, 500, 999, 1000, 1001, 65535}) {
        const StitchId id{static_cast<std::uint16_t>(number)};
        EXPECT_EQ(catalogue.stitch(id).key, "no_st") << number;
        EXPECT_FALSE(catalogue.known(id)) << number;
    }
    EXPECT_TRUE(catalogue.known(noStitch));
    EXPECT_TRUE(catalogue.known(StitchId{6}));
}

TEST(Catalogue, unknownKeyOrWordGivesNothing)
{
    const Catalogue catalogue = small();
    EXPECT_EQ(catalogue.find("zzz"), std::nullopt);
    EXPECT_EQ(catalogue.find(""), std::nullopt);
    EXPECT_EQ(catalogue.worked("zzz", Side::RS), std::nullopt);
    EXPECT_EQ(catalogue.worked("", Side::WS), std::nullopt);
    EXPECT_EQ(catalogue.worked("pr", Side::RS), std::nullopt) << "a word of the other side";
}

TEST(Catalogue, wordMeansWhatIsSeenFromRS)
{
    const Catalogue catalogue = small();
    EXPECT_EQ(catalogue.worked("k", Side::RS), catalogue.require("k"));
    EXPECT_EQ(catalogue.worked("k", Side::WS), catalogue.require("p"));
    EXPECT_EQ(catalogue.worked("p", Side::WS), catalogue.require("k"))
        << "the plain one stands before 'twin'";
}

TEST(Catalogue, ukWords)
{
    const Catalogue catalogue = small();
    const Stitch& off = catalogue.stitch(catalogue.require("bo"));
    EXPECT_EQ(abbreviation(off, Side::RS), "bo");
    EXPECT_EQ(abbreviation(off, Side::WS, Words::UK), "cast off");
    EXPECT_EQ(abbreviation(catalogue.stitch(catalogue.require("k")), Side::WS, Words::UK), "p")
        << "no UK word of its own";
    EXPECT_EQ(catalogue.worked("cast off", Side::RS), off.id);
    EXPECT_EQ(catalogue.worked("bo", Side::RS), off.id);
}

TEST(Catalogue, ukWordOfEitherSideIsFoundOnBoth)
{
    Stitch over = made("yo", "yo", "yo");
    over.sameOnBothSides = true;
    over.onRSUK = "yfwd";
    over.onWSUK = "yrn";
    const Catalogue catalogue({made("no_st", "no stitch", "no stitch"), over});
    for (const Side side : {Side::RS, Side::WS})
        for (const char* word : {"yo", "yfwd", "yrn"})
            EXPECT_EQ(catalogue.worked(word, side), catalogue.require("yo")) << word;
    const Stitch mine = own(1000, "mine", "mine", "yfwd");
    EXPECT_EQ(catalogue.with(std::vector{mine}).worked("yfwd", Side::WS), mine.id)
        << "a word of the side itself comes first";
}

TEST(Catalogue, mirrored)
{
    const Catalogue catalogue = small();
    const auto mirror = [&](const char* key) { return catalogue.mirrored(catalogue.require(key)); };
    EXPECT_EQ(mirror("right"), catalogue.require("left"));
    EXPECT_EQ(mirror("left"), catalogue.require("right"));
    EXPECT_EQ(mirror("k"), catalogue.require("k"));
    EXPECT_EQ(mirror("p"), std::nullopt) << "none named";
    EXPECT_EQ(mirror("twin"), std::nullopt) << "names one that isn't there";
    EXPECT_EQ(catalogue.mirrored(StitchId{4711}), std::nullopt);
}

TEST(Catalogue, ownStitchesKeepTheirNumbers)
{
    const std::vector<Stitch> mine{own(1003, "fern", "fern", "fern"), own(1000, "leaf", "leaf", "leafp")};
    const Catalogue catalogue = small().with(mine);
    EXPECT_EQ(catalogue.find("fern"), (StitchId{1003}));
    EXPECT_EQ(catalogue.stitch(StitchId{1000}).key, "leaf");
    EXPECT_EQ(catalogue.worked("leafp", Side::WS), (StitchId{1000}));
    EXPECT_TRUE(catalogue.known(StitchId{1003}));
    EXPECT_FALSE(catalogue.known(StitchId{1001})) << "a gap";
    EXPECT_EQ(catalogue.stitch(StitchId{1002}).key, "no_st");
    EXPECT_EQ(catalogue.find("no_st"), noStitch) << "gaps don't take the key";
    EXPECT_EQ(catalogue.worked("no stitch", Side::RS), noStitch);
    EXPECT_EQ(catalogue.builtIn().size(), small().builtIn().size());
}

TEST(Catalogue, ownMeaningOfAWordComesFirst)
{
    const Catalogue catalogue = small().with(std::vector{own(1000, "my_knit", "k", "p")});
    EXPECT_EQ(catalogue.worked("k", Side::RS), (StitchId{1000}));
    EXPECT_EQ(catalogue.worked("p", Side::WS), (StitchId{1000}));
    EXPECT_EQ(catalogue.worked("k", Side::WS), catalogue.require("p"));
}

TEST(Catalogue, withReplacesWhatWasThereBefore)
{
    const Catalogue first = small().with(std::vector{own(1000, "fern", "fern", "fern")});
    const Catalogue second = first.with(std::vector{own(1000, "leaf", "leaf", "leaf")});
    EXPECT_EQ(second.find("fern"), std::nullopt);
    EXPECT_EQ(second.worked("fern", Side::RS), std::nullopt);
    EXPECT_EQ(second.find("leaf"), (StitchId{1000}));
    EXPECT_EQ(first.find("fern"), (StitchId{1000})) << "the first is left alone";
    EXPECT_EQ(first.with({}), small());
    EXPECT_NE(first, second);
}

TEST(Catalogue, otherSide)
{
    EXPECT_EQ(otherSide(Side::RS), Side::WS);
    EXPECT_EQ(otherSide(Side::WS), Side::RS);
}

TEST(Stitch, width)
{
    Stitch stitch;
    const auto width = [&](int leaves, int columns) {
        stitch.leaves = leaves;
        stitch.columns = columns;
        return stitch.width();
    };
    EXPECT_EQ(width(0, 0), 1);
    EXPECT_EQ(width(1, 0), 1);
    EXPECT_EQ(width(3, 0), 3);
    EXPECT_EQ(width(7, 1), 1);
    EXPECT_EQ(width(1, 3), 3);
}

} // namespace
} // namespace shawlwright
