// Symbols stay apart from each other, in their boxes, and say what the stitch does.
#include "core/chart/draw.h"
#include "core/files/builtin_catalogue.h"
#include "tests/core/chart/raster.h"

#include <gtest/gtest.h>

#include <map>

namespace shawlwright::chart {
namespace {

std::string text(const Symbol& symbol)
{
    std::string all = std::to_string(symbol.width);
    for (const Shape& shape : symbol.shapes)
        all += "\n" + dump(shape);
    return all;
}

Stitch loops(int takesUp, int leaves, Lean lean = Lean::None, Face face = Face::Knit)
{
    Stitch stitch;
    stitch.key = "made_up";
    stitch.takesUp = takesUp;
    stitch.leaves = leaves;
    stitch.lean = lean;
    stitch.face = face;
    return stitch;
}

TEST(Symbols, EveryBuiltInStitchHasItsOwn)
{
    std::map<std::string, std::string> seen;
    for (const Stitch& stitch : builtInCatalogue().builtIn()) {
        if (stitch.id == noStitch)
            continue; // drawn by the cell, which is grey and without a border
        const auto [it, fresh] = seen.emplace(text(symbolOf(stitch)), stitch.key);
        EXPECT_TRUE(fresh) << stitch.key << " looks like " << it->second;
    }
    EXPECT_GT(seen.size(), 100u);
}

// The design asks for legibility at 8 pixels in black and white. Two symbols that differ by less than one
// pixel of ink cannot be told apart; a limit of our own, no source.
TEST(Symbols, AreToldApartInFewPixels)
{
    const auto& stitches = builtInCatalogue().builtIn();
    const std::pair<int, double> limits[] = {{8, 1.0}, {12, 2.5}};
    for (const auto& [pixels, least] : limits) {
        std::vector<std::vector<double>> pictures;
        for (const Stitch& stitch : stitches)
            pictures.push_back(raster(symbolOf(stitch), pixels));
        for (std::size_t i = 1; i < stitches.size(); ++i)
            for (std::size_t j = i + 1; j < stitches.size(); ++j)
                if (pictures[i].size() == pictures[j].size()) {
                    EXPECT_GE(difference(pictures[i], pictures[j]), least)
                        << stitches[i].key << " and " << stitches[j].key << " at " << pixels << " pixels";
                }
    }
}

TEST(Symbols, MeasureFindsWhatIsAlike)
{
    const auto a = raster(symbolOf(loops(2, 1, Lean::Right)), 8);
    EXPECT_EQ(difference(a, a), 0);
    EXPECT_GT(difference(a, raster(Symbol{1, {}}, 8)), 8);
}

TEST(Symbols, StayInTheirBoxes)
{
    for (const Stitch& stitch : builtInCatalogue().builtIn()) {
        const Symbol symbol = symbolOf(stitch);
        EXPECT_EQ(symbol.width, stitch.width()) << stitch.key;
        const Rect box = boundsOf(symbol.shapes);
        EXPECT_GE(box.x, -0.001) << stitch.key;
        EXPECT_GE(box.y, -0.001) << stitch.key;
        EXPECT_LE(box.x + box.width, symbol.width + 0.001) << stitch.key;
        EXPECT_LE(box.y + box.height, 1.001) << stitch.key;
    }
}

TEST(Symbols, MirrorImagesAreMirrored)
{
    const Catalogue& catalogue = builtInCatalogue();
    for (const char* key : {"k2tog", "k3tog", "c1_1_rc", "c2_1_rc", "m1r", "rli"}) {
        const Stitch& stitch = catalogue.stitch(catalogue.require(key));
        const auto other = catalogue.mirrored(stitch.id);
        ASSERT_TRUE(other.has_value()) << key;
        const int pixels = 16;
        const auto here = raster(symbolOf(stitch), pixels),
                   there = raster(symbolOf(catalogue.stitch(*other)), pixels);
        const int width = stitch.width() * pixels;
        std::vector<double> turned(here.size());
        for (int y = 0; y < pixels; ++y)
            for (int x = 0; x < width; ++x)
                turned[static_cast<std::size_t>(y * width + x)] =
                    here[static_cast<std::size_t>(y * width + width - 1 - x)];
        EXPECT_LT(difference(turned, there), 1.5) << key;
    }
}

struct Case {
    int takesUp, leaves;
    Lean lean;
};

// Whatever a designer invents is drawn, in its box, unlike its neighbours.
TEST(Symbols, AnyStitchDrawsItself)
{
    std::map<std::string, std::string> seen;
    for (int takesUp = 0; takesUp <= 9; ++takesUp)
        for (int leaves = 0; leaves <= 9; ++leaves) {
            if (takesUp + leaves == 0)
                continue;
            for (const Face face : {Face::Knit, Face::Purl}) {
                const Symbol symbol = symbolOf(loops(takesUp, leaves, Lean::None, face));
                EXPECT_FALSE(symbol.shapes.empty());
                const Rect box = boundsOf(symbol.shapes);
                const std::string name = std::to_string(takesUp) + " into " + std::to_string(leaves);
                EXPECT_GE(box.x, -0.001) << name;
                EXPECT_LE(box.x + box.width, symbol.width + 0.001) << name;
                const auto [it, fresh] = seen.emplace(text(symbol), name);
                EXPECT_TRUE(fresh) << name << " looks like " << it->second;
            }
        }
    for (const int many : {20, 64})
        EXPECT_FALSE(symbolOf(loops(many, 1, Lean::Left)).shapes.empty());
}

TEST(Symbols, HeadsAreListedRightToLeft)
{
    Stitch stitch = loops(1, 2);
    stitch.heads = {HeadKind::Knit, HeadKind::Purl}; // the purl is the left one
    const auto picture = raster(symbolOf(stitch), 16);
    double left = 0, right = 0;
    for (int y = 0; y < 5; ++y)
        for (int x = 0; x < 32; ++x)
            (x < 16 ? left : right) += picture[static_cast<std::size_t>(y * 32 + x)];
    EXPECT_GT(left, right + 2);
}

TEST(Symbols, OwnStrokesWin)
{
    Stitch stitch = loops(2, 1, Lean::Right);
    stitch.strokes = "0.1,0.1 0.9,0.9; 0.1,0.9 0.9,0.1";
    const Symbol symbol = symbolOf(stitch);
    ASSERT_EQ(symbol.shapes.size(), 2u);
    EXPECT_EQ(dump(symbol.shapes[0]), "stroke symbol 0.075 M0.1,0.1 L0.9,0.9" + std::string());
}

TEST(Symbols, TurnMarksDifferAndStandBeyondTheBorder)
{
    std::map<std::string, int> seen;
    for (const Side side : {Side::RS, Side::WS})
        for (int m = 0; m <= static_cast<int>(TurnMethod::TwinStitch); ++m) {
            const Symbol mark = turnMark(static_cast<TurnMethod>(m), side);
            EXPECT_TRUE(seen.emplace(text(mark), m).second);
            const Rect box = boundsOf(mark.shapes);
            if (side == Side::RS)
                EXPECT_LE(box.x + box.width, 0.001);
            else
                EXPECT_GE(box.x, -0.001);
            EXPECT_LE(box.width, 1);
        }
}

TEST(Symbols, FitIntoLowCells)
{
    const auto& catalogue = builtInCatalogue();
    for (const Stitch& stitch : catalogue.builtIn()) {
        const Rect place{3, 5, static_cast<double>(stitch.width()), 0.6};
        const Rect box = boundsOf(symbolIn(symbolOf(stitch), place));
        if (box.width == 0)
            continue;
        EXPECT_GE(box.y, 4.999) << stitch.key;
        EXPECT_LE(box.y + box.height, 5.601) << stitch.key;
        EXPECT_GE(box.x, 2.999) << stitch.key;
        EXPECT_LE(box.x + box.width, 3.001 + stitch.width()) << stitch.key;
    }
}

} // namespace
} // namespace shawlwright::chart
