// What is painted mirrored as well.

#include "core/edits/mirror_edit.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

const Catalogue& leaning()
{
    static const Catalogue catalogue = [] {
        std::vector<Stitch> stitches = smallCatalogue().builtIn();
        stitches[4].mirror = "ssk";
        stitches.push_back(stitch("ssk", 2, 1));
        stitches.back().mirror = "k2tog";
        return Catalogue(std::move(stitches));
    }();
    return catalogue;
}

std::string keys(const Row& row)
{
    std::string text;
    for (const Cell& cell : row.cells)
        text += (text.empty() ? "" : " ") + leaning().stitch(cell.stitch).key + (cell.part ? "'" : "");
    return text;
}

std::string after(Pattern pattern, const Result<Edit>& edit, std::optional<int> sum, int row = 0)
{
    EXPECT_TRUE(edit.ok());
    const Pattern before = pattern;
    const Edit both =
        mirroredToo(pattern, leaning(), body, edit.value(), [sum](int) { return sum; });
    EXPECT_EQ(both.steps.size(), edit.value().steps.size());
    const Edit back = apply(pattern, both).takeBack;
    EXPECT_EQ(faultsOf(pattern, leaning()), Faults{});
    Pattern undone = pattern;
    apply(undone, back);
    EXPECT_EQ(undone, before);
    return keys(rowOf(pattern, row));
}

TEST(MirrorEdit, AboutAColumnOrABoundary)
{
    const Pattern pattern = patternOf({"k k k k k k k", "p p p p p p p"}, 7);
    const At two[] = {{0, 2}};
    const StitchId decrease = leaning().require("k2tog");
    const auto paints = paint(pattern, leaning(), body, two, decrease);
    EXPECT_EQ(after(pattern, paints, 8), "k k2tog k k k ssk k");  // about column 4
    EXPECT_EQ(after(pattern, paints, 9), "k k2tog k k k k ssk");  // about the boundary after column 4
    EXPECT_EQ(after(pattern, paints, 4), "k k2tog k k k k k");    // in the middle itself
    EXPECT_EQ(after(pattern, paints, 40), "k k2tog k k k k k");   // outside of the chart
    EXPECT_EQ(after(pattern, paints, std::nullopt), "k k2tog k k k k k");
}

TEST(MirrorEdit, WideStitchesAndWhatIsTakenAway)
{
    const Pattern pattern = patternOf({"k k k k k k k"}, 7);
    const At one[] = {{0, 1}};
    EXPECT_EQ(after(pattern, paint(pattern, leaning(), body, one, leaning().require("yo2")), 8), "yo2 yo2' k k k yo2 yo2'");
    EXPECT_EQ(after(pattern, paint(pattern, leaning(), body, one, leaning().require("c4")), 8),
              "c4 c4' c4' c4' k k k"); // its image would lie over it
    EXPECT_EQ(after(pattern, erase(pattern, leaning(), body, one), 8), "no_st k k k k k no_st");
    const At many[] = {{0, 1}, {0, 2}, {0, 3}, {0, 4}};
    EXPECT_EQ(after(pattern, paint(pattern, leaning(), body, many, leaning().require("k2tog")), 8),
              "k2tog k2tog k2tog k2tog ssk ssk ssk");
}

} // namespace
} // namespace shawlwright
