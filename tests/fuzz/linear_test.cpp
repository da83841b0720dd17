// Reading takes a number of steps in proportion to the length of a text, whatever stands in it: four times
// the text, about four times the steps. Counted, not timed.

#include "core/files/builtin_catalogue.h"
#include "core/wording/reader/reader.h"

#include <gtest/gtest.h>

using namespace shawlwright;

namespace {

std::string times(std::string_view text, int count)
{
    std::string all;
    for (int i = 0; i < count; ++i)
        all += text;
    return all;
}

struct Kind {
    const char* name;
    std::string before;
    std::string again;
};

} // namespace

TEST(Linear, StepsGrowWithTheText)
{
    const Kind kinds[] = {
        {"one long row", "CO 9 sts.\nRow 1: k1", ", yo, k2tog"},
        {"one long row without commas", "CO 9 sts.\nRow 1: k1", " yo k2tog"},
        {"broken lines", "CO 9 sts.\nRow 1: k1,\n", "yo, k2tog,\n"},
        {"rows", "CO 9 sts.\n", "Next row: k1, *yo, k2tog; rep from * to end.\n"},
        {"rows not understood", "CO 9 sts.\n", "Next row: k1, flurb the blarg.\n"},
        {"words misspelt", "CO 9 sts.\nRow 1: k1", ", k2togg"},
        {"prose", "", "The shawl is worked from the top down, on long needles\n"},
        {"one long line", "", "with yarn over and over "},
        {"open brackets", "CO 9 sts.\nRow 1: ", "["},
        {"open stars", "CO 9 sts.\nRow 1: ", "*k1, "},
        {"brackets one by one", "CO 9 sts.\nRow 1: k1", ", [yo, k2tog] 3 times"},
        {"markers", "CO 9 sts.\nRow 1: k1", ", pm, k1, sm"},
        {"doubts", "CO 9 sts.\nRow 1: k1", ", yo, k2tog, twice"},
        {"repeats", "CO 9 sts.\nRow 1: knit.\nRow 2: purl.\n", "Rep Rows 1-2 once more.\n"},
        {"until", "CO 9 sts.\nRow 1: knit.\n", "Work even until piece measures 20 cm.\n"},
        {"triples", "CO 9 sts.\nRow 1: knit.\n", "2-1-5, 4-1-3\n"},
        {"numbers", "CO 9 sts.\nRow 1: k1", ", twenty-one 1 (2, 3) "},
        {"sizes", "Sizes: S (M, L)\nCO 9 (9, 9) sts.\n", "Next row: k3 (4, 5), yo, k to end.\n"},
    };
    for (const Kind& kind : kinds) {
        const int count = 1500;
        const auto steps = [&](int n) {
            return readText(kind.before + times(kind.again, n), builtInCatalogue()).steps;
        };
        const double once = static_cast<double>(steps(count));
        const double four = static_cast<double>(steps(4 * count));
        EXPECT_GT(once, 0) << kind.name;
        EXPECT_LT(four, 4.6 * once + 5000) << kind.name << ": " << once << " steps, then " << four;
    }
}
