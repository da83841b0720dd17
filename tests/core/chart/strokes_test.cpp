#include "core/chart/draw.h"
#include "core/chart/symbols.h"
#include "core/files/builtin_catalogue.h"
#include "tests/core/chart/raster.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {
namespace {

TEST(Strokes, ReadsPointsAndStrokes)
{
    const auto paths = readStrokes(" 0.1,0.2  0.8,0.9 ; 0.5,0.5 0.5,0.8 0.25,1;");
    ASSERT_TRUE(paths.ok());
    ASSERT_EQ(paths.value().size(), 2u);
    EXPECT_EQ(paths.value()[0].points[1], (Point{0.8, 0.9}));
    EXPECT_EQ(paths.value()[1].points.size(), 3u);
}

struct Case {
    const char* text;
    const char* message;
};

TEST(Strokes, RefusesWhatIsNone)
{
    const Case cases[] = {
        {"", "no stroke"},
        {" ; ;", "no stroke"},
        {"0.1", "'0.1' is no point"},
        {"0.1,0.2 a,b", "'a,b' is no point"},
        {"0.1,0.2 0.3,1.2", "outside of the cell"},
        {"-0.1,0.2 0.3,0.2", "outside of the cell"},
        {"0.1,0.2 nan,0.5", "no"},
        {"0.1,0.2 1e999,0.5", "no"},
        {"0.1,0.2", "one point only"},
        {"0.1,0.2,0.3 0.5,0.5", "is no point"},
    };
    for (const Case& c : cases) {
        const auto paths = readStrokes(c.text);
        ASSERT_FALSE(paths.ok()) << c.text;
        EXPECT_NE(paths.fault().message.find(c.message), std::string::npos)
            << c.text << ": " << paths.fault().message;
    }
    std::string long_;
    for (int i = 0; i < 5000; ++i)
        long_ += "0.5,0.5 ";
    EXPECT_FALSE(readStrokes(long_).ok());
}

TEST(Strokes, WrittenOnesReadBackAsTheyWere)
{
    const std::vector<Path> drawn{Path().move({0.1, 0.2}).line({0.8, 0.9}), Path().move({1.0 / 3, 0}).line({2, 1}).line({0.05, 0.5})};
    const std::string text = writeStrokes(drawn);
    EXPECT_EQ(text, "0.1,0.2 0.8,0.9; 0.333,0 2,1 0.05,0.5");
    const auto read = readStrokes(text);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read.value()[0], drawn[0]);
    EXPECT_EQ(writeStrokes(read.value()), text);
    EXPECT_EQ(writeStrokes({Path().move({0.5, 0.5})}), ""); // a point is no stroke
}

// Whatever the program draws can be taken over: the strokes are where the symbol was, and none is refused.
TEST(Strokes, EverySymbolCanBeTakenOver)
{
    int taken = 0;
    for (const Stitch& stitch : builtInCatalogue().builtIn()) {
        const Symbol symbol = symbolOf(stitch);
        const auto strokes = strokesOf(symbol);
        if (strokes.empty())
            continue;
        ++taken;
        Stitch own = stitch;
        own.strokes = writeStrokes(strokes);
        ASSERT_TRUE(readStrokes(own.strokes).ok()) << stitch.key;
        const auto was = raster(symbol, 16), is = raster(symbolOf(own), 16);
        if (std::none_of(symbol.shapes.begin(), symbol.shapes.end(),
                         [](const Shape& shape) { return std::holds_alternative<Fill>(shape); })) {
            double ink = 0;
            for (const double pixel : was)
                ink += pixel;
            EXPECT_LT(difference(was, is), 0.2 * ink) << stitch.key;
        }
    }
    EXPECT_GT(taken, 60);
}

TEST(Strokes, ARingStaysRound)
{
    const auto strokes = strokesOf({1, {Stroke{ring({0.5, 0.5}, 0.3)}}});
    ASSERT_EQ(strokes.size(), 1u);
    EXPECT_EQ(strokes[0].points.size(), 25u);
    for (const Point& p : strokes[0].points)
        EXPECT_NEAR(std::hypot(p.x - 0.5, p.y - 0.5), 0.3, 0.003);
}

} // namespace
} // namespace shawlwright::chart
