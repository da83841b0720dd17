#include "core/base/result.h"

#include <gtest/gtest.h>

#include <memory>

namespace shawlwright {
namespace {

TEST(Result, HoldsAValueOrAFault)
{
    const Result<int> seven(7);
    EXPECT_TRUE(seven.ok());
    EXPECT_EQ(seven.value(), 7);
    const Result<int> none(Fault{{3, 9}, "Row 2", "needs 7 stitches"});
    EXPECT_FALSE(none.ok());
    EXPECT_EQ(none.fault().message, "needs 7 stitches");
    const Place place{3, 9};
    EXPECT_EQ(none.fault().at, place);
}

TEST(Result, CanBeTakenFrom)
{
    Result<std::unique_ptr<int>> held(std::make_unique<int>(5));
    const auto taken = std::move(held).take();
    EXPECT_EQ(*taken, 5);
}

TEST(Fault, AsText)
{
    struct Case {
        Fault fault;
        const char* text;
    };
    const Case cases[] = {
        {{{3, 9}, "Section 'Left wing', Row 37", "needs 7 stitches, 5 are left"},
         "line 3, column 9, Section 'Left wing', Row 37: needs 7 stitches, 5 are left"},
        {{{}, "Row 37", "needs 7 stitches"}, "Row 37: needs 7 stitches"},
        {{{12, 1}, "", "a row is missing"}, "line 12, column 1: a row is missing"},
        {{{}, "", "there is no such file"}, "there is no such file"},
    };
    for (const Case& c : cases)
        EXPECT_EQ(toText(c.fault), c.text);
}

} // namespace
} // namespace shawlwright
