#include "core/chart/symbols.h"

#include <gtest/gtest.h>

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

} // namespace
} // namespace shawlwright::chart
