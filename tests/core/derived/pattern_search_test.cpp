// What is found where, in knitting order.

#include "core/derived/pattern_search.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Shawl {
    Knit knit{8};
    Pattern pattern;
    std::optional<Derived> derived;

    Shawl()
    {
        knit.rs("k yo k2tog k*5").ws("p*8").rs("k*2 ssk yo k*4");
        knit.section("Border").rs("k*8").ws("k*8");
        pattern = knit.done();
        Row noted = *pattern.sections[1].rows[1];
        noted.note = "Keep the edge Loose";
        pattern.sections[1].rows[1] = std::make_shared<const Row>(noted);
        pattern.sections[1].frame.note = "Worked outwards.";
        derived.emplace(knit.catalogue(), pattern);
    }
    std::string found(std::string_view wanted)
    {
        std::string text;
        for (const SearchHit& hit : searched(pattern, *derived, wanted))
            text += (text.empty() ? "" : " ") + std::to_string(hit.section.value) + ":" + std::to_string(hit.row) +
                    (hit.column ? "/" + std::to_string(hit.column) : "");
        return text;
    }
};

} // namespace

TEST(PatternSearch, FindsRowsByTheirLabel)
{
    Shawl shawl;
    const std::string border = std::to_string(shawl.pattern.sections[1].id.value);
    const std::string body = std::to_string(shawl.pattern.sections[0].id.value);
    EXPECT_EQ(shawl.found("row 2"), body + ":1 " + border + ":1");
    EXPECT_EQ(shawl.found("2 of border"), border + ":1");
    EXPECT_EQ(shawl.found("Row 3"), body + ":2");
    EXPECT_EQ(shawl.found("R1 of Border"), border + ":0");
    EXPECT_EQ(shawl.found("row 9"), "");
    EXPECT_EQ(shawl.found("  "), "");
}

TEST(PatternSearch, FindsStitchesInTheOrderTheyAreKnitted)
{
    Shawl shawl;
    const std::string body = std::to_string(shawl.pattern.sections[0].id.value);
    EXPECT_EQ(shawl.found("yo"), body + ":0/2 " + body + ":2/4");
    EXPECT_EQ(shawl.found("SSK"), body + ":2/3");
    EXPECT_EQ(shawl.found("yarn over"), body + ":0/2 " + body + ":2/4");
    // A purl of the wrong side is painted as the knit that it shows; it is found by what the knitter works.
    const auto purls = searched(shawl.pattern, *shawl.derived, "p");
    ASSERT_EQ(purls.size(), 8u);
    EXPECT_EQ(purls.front(), (SearchHit{shawl.pattern.sections[0].id, 1, 8})); // leftmost first
    EXPECT_EQ(purls.back().column, 1);
}

TEST(PatternSearch, FindsWords)
{
    Shawl shawl;
    const std::string border = std::to_string(shawl.pattern.sections[1].id.value);
    EXPECT_EQ(shawl.found("loose"), border + ":1");
    EXPECT_EQ(shawl.found("outwards"), border + ":-1");
    EXPECT_EQ(shawl.found("k1, yo"), std::to_string(shawl.pattern.sections[0].id.value) + ":0"); // as it is written
}
