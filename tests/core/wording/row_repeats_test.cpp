// Row repeats: "n more times", never a bare "n times" (Josephine Kush, Row Repeats).

#include "core/wording/writer/quantity_words.h"
#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::vector<std::string> repeatsOf(Knit& knit)
{
    std::vector<std::string> texts;
    for (const WrittenRow& row : written(knit)) {
        if (!row.repeat)
            continue;
        EXPECT_EQ(row.label, "");
        texts.push_back(row.text);
    }
    return texts;
}

using Texts = std::vector<std::string>;

Knit fourRows()
{
    Knit knit(4);
    knit.rs("k*4").ws("p*4").rs("k*4").ws("p*4");
    return knit;
}

} // namespace

TEST(RowRepeats, MoreTimes)
{
    Knit knit = fourRows();
    knit.times(2, 10);
    EXPECT_EQ(repeatsOf(knit), Texts{"Rep Rows 3-4 nine more times."});
    const auto rows = written(knit);
    ASSERT_EQ(rows.size(), 5u);
    EXPECT_EQ(rows[4].firstRow, 2);
    EXPECT_EQ(rows[4].lastRow, 3);
}

TEST(RowRepeats, OnceTwiceAndOneRow)
{
    Knit twice = fourRows();
    twice.times(4, 2);
    EXPECT_EQ(repeatsOf(twice), Texts{"Rep Rows 1-4 once more."});
    Knit one = fourRows();
    one.times(1, 5);
    EXPECT_EQ(repeatsOf(one), Texts{"Rep Row 4 four more times."});
    Knit none = fourRows();
    none.times(4, 1);
    EXPECT_EQ(repeatsOf(none), Texts{});
    Knit many = fourRows();
    many.times(4, 121);
    EXPECT_EQ(repeatsOf(many), Texts{"Rep Rows 1-4, 120 more times."});
    Knit never = fourRows();
    never.times(4, 0);
    EXPECT_EQ(repeatsOf(never), Texts{"Work Rows 1-4 a total of 0 times."});
}

TEST(RowRepeats, OnePerSize)
{
    Knit knit = fourRows();
    knit.pattern().head.sizes = {"S", "M", "L"};
    knit.times(4, Quantity(std::vector{10, 11, 12}));
    EXPECT_EQ(repeatsOf(knit), Texts{"Rep Rows 1-4, 9 (10, 11) more times."});
    Knit zero = fourRows();
    zero.pattern().head.sizes = {"S", "M"};
    zero.times(4, Quantity(std::vector{0, 2}));
    EXPECT_EQ(repeatsOf(zero), Texts{"Work Rows 1-4 a total of 0 (2) times."});
}

TEST(RowRepeats, InnerOnesFirst)
{
    Knit knit = fourRows();
    knit.times(2, 3).times(4, 5);
    EXPECT_EQ(repeatsOf(knit),
              (Texts{"Rep Rows 3-4 two more times.", "Rep Rows 1-4 (repeats included) four more times."}));
    Knit same = fourRows();
    same.times(4, 3).times(4, 5);
    EXPECT_EQ(repeatsOf(same),
              (Texts{"Rep Rows 1-4 four more times.", "Rep Rows 1-4 (repeats included) two more times."}));
}

TEST(RowRepeats, Rounds)
{
    Knit knit(4);
    knit.rs("k*4 round").rs("p*4 round").times(2, 3);
    EXPECT_EQ(repeatsOf(knit), Texts{"Rep Rnds 1-2 two more times."});
}

TEST(RowRepeats, NumbersInWords)
{
    EXPECT_EQ(numberInWords(3), "three");
    EXPECT_EQ(numberInWords(14), "fourteen");
    EXPECT_EQ(numberInWords(40), "forty");
    EXPECT_EQ(numberInWords(99), "ninety-nine");
    EXPECT_EQ(numberInWords(100), "100");
    for (int n = 0; n < 200; ++n)
        for (int m = 0; m < n; ++m)
            EXPECT_NE(numberInWords(n), numberInWords(m));
}

// "to 4 sts before last turn" is the same row each time, so a wedge is two rows and a repeat.
TEST(RowRepeats, AWedgeThatTurnsEarlierEachTime)
{
    Knit knit(60);
    knit.pattern().head.yarns.resize(1);
    knit.rs("k*57 turn").ws("[ k ]end").rs("[ k ]turn-3 turn").ws("[ k ]end").times(2, 18);
    std::string text;
    for (const WrittenRow& row : written(knit))
        text += toText(row) + "\n";
    EXPECT_EQ(text.substr(text.find("Row 2")), "Row 2 (WS): knit.\n"
                                               "Row 3 (RS): k to 3 sts before last turn, turn.\n"
                                               "Row 4 (WS): knit.\n"
                                               "Rep Rows 3-4 seventeen more times. (19 garter ridges)\n");
}
