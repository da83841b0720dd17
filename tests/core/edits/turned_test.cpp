// Stitches turned left to right and upside down, with the built-in catalogue.
//
// Source: a reflection reverses leans, and lace is turned by reversing its rows: common practice, no source.

#include "core/edits/turned.h"
#include "core/files/builtin_catalogue.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

#include <sstream>

namespace shawlwright {
namespace {

using namespace test;

const Catalogue& catalogue()
{
    return builtInCatalogue();
}

// Rows of keys, right to left; - is no stitch.
Pattern chart(const std::vector<std::string>& rows, int columns)
{
    Pattern pattern = patternOf(std::vector<std::string>(rows.size(), "-"), columns);
    for (std::size_t at = 0; at < rows.size(); ++at) {
        Row row = rowOf(pattern, static_cast<int>(at));
        std::istringstream words(rows[at]);
        std::string key;
        for (int column = 1; words >> key;) {
            const StitchId id = key == "-" ? noStitch : catalogue().require(key);
            if (id != noStitch)
                row = painted(std::move(row), catalogue(), column, id, {});
            column += catalogue().stitch(id).width();
        }
        pattern.sections[0].rows[at] = std::make_shared<const Row>(std::move(row));
    }
    return pattern;
}

std::string keysOf(const Row& row)
{
    std::string text;
    for (int column = 1; column <= static_cast<int>(row.cells.size());) {
        const Stitch& stitch = catalogue().stitch(cellAt(row, column).stitch);
        text += (text.empty() ? "" : " ") + (stitch.id == noStitch ? "-" : stitch.key);
        column += stitch.width();
    }
    return text;
}

std::vector<std::string> keysOf(const Pattern& pattern)
{
    std::vector<std::string> rows;
    for (const RowRef& row : pattern.sections[0].rows)
        rows.push_back(keysOf(*row));
    return rows;
}
using Rows = std::vector<std::string>;

Rows after(Pattern pattern, const Result<Turned>& turned)
{
    if (!turned.ok())
        return {toText(turned.fault())};
    apply(pattern, turned.value().edit);
    EXPECT_TRUE(faultsOf(pattern, catalogue()).empty());
    return keysOf(pattern);
}

TEST(Mirrored, LeansAndSidesSwap)
{
    const Pattern pattern = chart({"k2tog yo k k k", "c2_1_rpc m1l sssk", "k k2tog - - -"}, 5);
    EXPECT_EQ(after(pattern, mirrored(pattern, catalogue(), body, {0, 2, 1, 5})),
              (Rows{"k k k yo ssk", "k3tog m1r c2_1_lpc", "- - - ssk k"}));
}

// Every built-in stitch that leans and has a mirror image leans the other way in it.
TEST(Mirrored, EveryLeanOfTheCatalogueSwaps)
{
    for (const Stitch& stitch : catalogue().builtIn()) {
        const auto image = catalogue().mirrored(stitch.id);
        if (!image || stitch.lean == Lean::None)
            continue;
        const Lean lean = catalogue().stitch(*image).lean;
        const bool itself = stitch.lean == Lean::Centred || *image == stitch.id;
        EXPECT_EQ(lean, itself                      ? stitch.lean
                        : stitch.lean == Lean::Left ? Lean::Right
                                                    : Lean::Left)
            << stitch.key;
    }
}

TEST(Mirrored, MarkersChangeSidesWithTheStitches)
{
    Pattern pattern = chart({"k k2tog yo k k k"}, 6);
    Row row = rowOf(pattern, 0);
    for (const int boundary : {0, 1, 2, 4, 6})
        row.moves.push_back({MarkerId{1}, boundary});
    pattern.sections[0].rows[0] = std::make_shared<const Row>(row);
    const auto boundaries = [&](Area area) {
        Pattern changed = pattern;
        const auto turned = mirrored(changed, catalogue(), body, area);
        EXPECT_TRUE(turned.ok());
        apply(changed, turned.value().edit);
        std::vector<int> result;
        for (const MarkerMove& move : rowOf(changed, 0).moves)
            result.push_back(move.boundary);
        return result;
    };
    EXPECT_EQ(boundaries({0, 0, 1, 6}), (std::vector<int>{6, 5, 4, 2, 0}));
    EXPECT_EQ(boundaries({0, 0, 1, 4}), (std::vector<int>{0, 3, 2, 4, 6})); // those on its edges stay
}

TEST(Mirrored, WhatHasNoImageIsTold)
{
    const Pattern pattern = chart({"k k k5tog k"}, 4);
    const auto turned = mirrored(pattern, catalogue(), body, {0, 0, 1, 4});
    ASSERT_TRUE(turned.ok());
    EXPECT_EQ(turned.value().unlike, (std::vector<At>{{0, 2}}));
}

TEST(UpsideDown, RowsAreReversedAndLeansSwap)
{
    const Pattern pattern = chart({"k k2tog yo k k", "k p k k k", "k2tog yo k yo ssk", "k k c1_1_rc k"}, 5);
    EXPECT_EQ(after(pattern, upsideDown(pattern, catalogue(), body, {0, 2, 1, 5})),
              (Rows{"ssk yo k yo k2tog", "k p k k k", "k ssk yo k k", "k k c1_1_rc k"}));
    const auto even = upsideDown(pattern, catalogue(), body, {0, 3, 1, 5});
    ASSERT_TRUE(even.ok());
    EXPECT_EQ(even.value().rowsOnOtherSide, 3); // the plain row doesn't matter
    EXPECT_EQ(after(pattern, even), (Rows{"k k c1_1_lc k", "ssk yo k yo k2tog", "k p k k k", "k ssk yo k k"}));
    const auto odd = upsideDown(pattern, catalogue(), body, {0, 2, 1, 5});
    ASSERT_TRUE(odd.ok());
    EXPECT_EQ(odd.value().rowsOnOtherSide, 0);
}

TEST(UpsideDown, TwiceIsAsBefore)
{
    const Pattern pattern = chart({"k k2tog yo k k", "k p k k k", "ssk yo k k k"}, 5);
    Pattern changed = pattern;
    for (int time = 0; time < 2; ++time) {
        const auto turned = upsideDown(changed, catalogue(), body, {0, 2, 1, 5});
        ASSERT_TRUE(turned.ok());
        apply(changed, turned.value().edit);
        EXPECT_EQ(changed == pattern, time == 1);
    }
    EXPECT_EQ(changed, pattern);
}

TEST(UpsideDown, InRowsWhoseCountChangesDecreasesBecomeIncreases)
{
    // The free column beside the decrease takes the second head of the increase.
    const Pattern pattern = chart({"k k k k k", "k k2tog - k k", "k ssk - k -"}, 5);
    const auto turned = upsideDown(pattern, catalogue(), body, {0, 1, 1, 5});
    EXPECT_EQ(after(pattern, turned), (Rows{"k lli k k", "k k k k k", "k ssk - k -"}));
    Pattern changed = pattern;
    apply(changed, turned.value().edit);
    EXPECT_EQ(after(changed, upsideDown(changed, catalogue(), body, {0, 1, 1, 5})), keysOf(pattern));
}

TEST(UpsideDown, WhatCannotBeTurnedIsNamedWithItsCell)
{
    const auto fault = [](const std::string& row, int columns) {
        const Pattern pattern = chart({row}, columns);
        const auto turned = upsideDown(pattern, catalogue(), body, {0, 0, 1, columns});
        return turned.ok() ? std::string("turned") : toText(turned.fault());
    };
    EXPECT_EQ(fault("k yo k", 3),
              "Section 'Body', Row 1, column 2: yo makes 1 of 0; upside down it would make 0 of 1, and no stitch does "
              "that; change it, or leave out rows whose count changes");
    EXPECT_NE(fault("k k2tog k", 3).find("no room of 1 column"), std::string::npos);
    EXPECT_NE(fault("k - k3tog k", 4).find("no stitch does that with the other lean"), std::string::npos);
    EXPECT_NE(fault("k5tog yo yo yo yo", 5).find("k5tog has no mirror image"), std::string::npos);
    EXPECT_EQ(fault("k s2kp - - k", 5), "turned");
}

TEST(UpsideDown, CounterpartsHaveTheSameFaceAndTheOtherLean)
{
    int found = 0;
    for (const Stitch& stitch : catalogue().builtIn()) {
        const auto other = counterpart(catalogue(), stitch.id);
        if (!other)
            continue;
        ++found;
        const Stitch& is = catalogue().stitch(*other);
        EXPECT_EQ(is.takesUp, stitch.leaves) << stitch.key;
        EXPECT_EQ(is.leaves, stitch.takesUp) << stitch.key;
        EXPECT_EQ(is.face, stitch.face) << stitch.key;
        EXPECT_TRUE(stitch.lean == Lean::Left    ? is.lean == Lean::Right
                    : stitch.lean == Lean::Right ? is.lean == Lean::Left
                                                 : is.lean == stitch.lean)
            << stitch.key;
    }
    EXPECT_GE(found, 8);
}

} // namespace
} // namespace shawlwright
