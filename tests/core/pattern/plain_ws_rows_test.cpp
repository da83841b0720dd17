// Which WS rows can be left out of a chart. Sentences: common practice, no source.
#include "core/pattern/plain_ws_rows.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using tests::Knit;

// "-, purl, ...": each row, "-" for one that is to be seen.
std::string ways(Knit knit)
{
    const Pattern pattern = knit.done();
    std::string text;
    for (const PlainWs& way : plainWsRows(pattern.sections[0], knit.catalogue()))
        text += (text.empty() ? "" : "; ") + (way.plain() ? plainWsWords(way) : "-");
    return text;
}

TEST(PlainWsRows, ArePurledKnittedOrAsTheyShow)
{
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*4")), "-; purl");
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("k*4")), "-; knit");
    EXPECT_EQ(ways(Knit(4).rs("k p k p").ws("k p k p")), "-; knit the knits and purl the purls");
    EXPECT_EQ(ways(Knit(4).rs("k p k p").ws("p k p k")), "-; -"); // moss stitch is to be seen
    EXPECT_EQ(ways(Knit(4).rs("k2tog yo k*2").ws("p*4").rs("k*4").ws("p*2 k2tog")), "-; purl; -; -");
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws(". . . .")), "-; -"); // nothing painted yet
}

TEST(PlainWsRows, MayHaveAGarterBorder)
{
    EXPECT_EQ(ways(Knit(10).rs("k*10").ws("k*3 p*5 k*2")), "-; k3, purl to the last 2 sts, k2");
    EXPECT_EQ(ways(Knit(10).rs("k*10").ws("p*8 k*2")), "-; purl to the last 2 sts, k2");
    EXPECT_EQ(ways(Knit(10).rs("k*10").ws("k p*9")), "-; k1, purl to the end");
    EXPECT_EQ(ways(Knit(10).rs("k*10").ws("k*3 [ p ]end-3 k*3")), "-; k3, purl to the last 3 sts, k3");
    EXPECT_EQ(ways(Knit(10).rs("k*10").ws("[ k ]*3 p*7")), "-; -"); // as wide as it is repeated
    EXPECT_EQ(ways(Knit(12).rs("k*12").ws("k*9 p*3")), "-; -");     // wider than mostGarterBorder
    EXPECT_EQ(ways(Knit(10).rs("k*10").ws("k*2 p*2 k*2 p*2 k*2")), "-; -");
}

TEST(PlainWsRows, AreNothingButAWayBack)
{
    const char* shown = "-; -";
    EXPECT_EQ(ways(Knit(4).rs("k*4", "MC").ws("p*4", "CC")), shown);
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*4 bindoff")), shown);
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*4 break")), shown);
    EXPECT_EQ(ways(Knit(6).rs("k*6").ws("p*4 turn:wt")), shown);
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*2 |A p*2")), shown);
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*4").stated(Quantity(4))), shown);
    EXPECT_EQ(ways(Knit(4).rs("k*4 slide").ws("p*4")), shown);
    EXPECT_EQ(ways(Knit(6).rs("k*4 turn:wt").ws("p*4")), "-; purl"); // back from a short row
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*4").times(1, Quantity(3))), shown); // the repeat is to be seen
    EXPECT_EQ(ways(Knit(4).rs("k*4").ws("p*4").times(2, Quantity(3))), "-; purl");
    for (const auto& change : {+[](Row& row) { row.note = "n"; }, +[](Row& row) { row.words = "w"; }}) {
        Knit knit(4);
        knit.rs("k*4").ws("p*4");
        Row row = *knit.pattern().sections[0].rows[1];
        change(row);
        knit.pattern().sections[0].rows[1] = std::make_shared<const Row>(row);
        EXPECT_EQ(ways(knit), shown);
    }
}

TEST(PlainWsRows, LeftOutKeepNumbersAndRepeats)
{
    Knit knit(4);
    knit.rs("k*4").ws("p*4").rs("k2tog yo k*2").ws("p*4").times(2, Quantity(5)).rs("k*4").ws("[ p ]end");
    const Pattern pattern = knit.done();
    const Section& whole = pattern.sections[0];
    std::vector<bool> gone;
    for (const PlainWs& way : plainWsRows(whole, knit.catalogue()))
        gone.push_back(way.plain());
    const FewerRows fewer = withoutRows(whole, gone);
    EXPECT_EQ(fewer.rows, (std::vector<int>{0, 2, 4}));
    EXPECT_EQ(rowLabels(fewer.section), (std::vector<std::string>{"1", "3", "5"}));
    ASSERT_EQ(fewer.section.frame.brackets.size(), 1u);
    EXPECT_EQ(fewer.section.frame.brackets[0].firstRow, whole.rows[2]->id);
    EXPECT_EQ(fewer.section.frame.brackets[0].lastRow, whole.rows[2]->id);
    EXPECT_TRUE(fewer.section.frame.boxes.empty()); // it stood on a row that is left out
    ASSERT_EQ(whole.frame.boxes.size(), 1u);
    Pattern left = pattern;
    left.sections[0] = fewer.section;
    EXPECT_TRUE(faultsOf(left, knit.catalogue()).empty());
}

TEST(PlainWsRows, LeftOutAreTold)
{
    const auto told = [](Knit knit) {
        const Pattern pattern = knit.done();
        const Section& section = pattern.sections[0];
        return rowsNotShown(section, plainWsRows(section, knit.catalogue()));
    };
    using Sentences = std::vector<std::string>;
    EXPECT_EQ(told(Knit(4).rs("k*4").ws("p*4").rs("k*4").ws("p*4")), Sentences{"WS rows not shown: purl."});
    EXPECT_EQ(told(Knit(4).rs("k*4").ws("p*4").rs("k*4").ws("p2tog p*2").rs("k*3").ws("k*3")),
              (Sentences{"WS row 2 not shown: purl.", "WS row 6 not shown: knit."}));
    EXPECT_EQ(told(Knit(4).rs("k*4").ws("p*4").rs("k*4").ws("p*4").rs("k*4").ws("k*4").rs("k*4").ws("p*4")),
              (Sentences{"WS rows 2-4 and 8 not shown: purl.", "WS row 6 not shown: knit."}));
    EXPECT_EQ(told(Knit(4).rs("k*4").ws("p2tog p*2")), Sentences{});
}

} // namespace
} // namespace shawlwright
