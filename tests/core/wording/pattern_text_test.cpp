#include "core/wording/reader/reader.h"
#include "tests/core/wording/written.h"

#include "core/pattern/one_size.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

// But for the abbreviations, which abbreviations_test.cpp is about.
std::string wholeText(Knit& knit, RunChoice choice = {}, const Style& style = {})
{
    const Pattern pattern = knit.done();
    std::string text =
        writtenPattern(pattern, knit.catalogue(), run(pattern, knit.catalogue(), choice), style);
    const std::size_t list = text.find("Abbreviations\n");
    const std::size_t end = text.find("\n\n", list);
    return list == std::string::npos ? text : text.erase(list, end + 2 - list);
}

} // namespace

TEST(PatternText, TitleCastOnSectionsRows)
{
    Knit knit(7);
    knit.pattern().head.title = "Heron";
    knit.pattern().sections[0].frame.note = "Slip markers as you come to them.";
    knit.rs("k*2 yo k*3 yo k*2").ws("k*9").times(2, 1);
    knit.section("Edge").rs("join p*2 k*3 yo k2tog p*2", "CC").ws("bindoff break", "CC");
    EXPECT_EQ(wholeText(knit), "Heron\n"
                               "\n"
                               "Cast on 7 sts with MC.\n"
                               "\n"
                               "Body\n"
                               "Slip markers as you come to them.\n"
                               "Row 1 (RS): With MC, k2, yo, k3, yo, k2. (9 sts)\n"
                               "Row 2 (WS): knit.\n"
                               "\n"
                               "Edge\n"
                               "Row 1 (RS): Join CC, p2, k3, yo, k2tog, p2.\n"
                               "Row 2 (WS): bind off all sts. Break CC.\n");
}

TEST(PatternText, WhatIsSaidOfTheWholeComesBack)
{
    Knit knit(7);
    PatternHead& head = knit.pattern().head;
    head.title = "Heron";
    head.designer = "Rosa Lund";
    head.needleMm = 3.75;
    head.gauge = {22.5, 44, "garter stitch, blocked"};
    // Nothing they say is taken for a row, a size, a designer or a cast-on.
    head.introduction = "by the sea – “grown”.\nCast on 5 sts and grow.\nKnit 4 rows.\n\nYarn over: bring it to the front.";
    head.notes = "Row 12: take care not to drop the double yo.\nSize: adjustable\n\nRow 1: k2tog.";
    head.yarns[0].name = "kelp";
    head.yarns[0].weight = 1;
    head.yarns[0].metresPerBall = 365.5;
    head.yarns[0].gramsPerBall = 100;
    head.yarns[1].name = "sand, undyed";
    knit.rs("k*7").ws("k*7");
    const Pattern pattern = knit.done();
    const std::string text = writtenPattern(pattern, knit.catalogue(), run(pattern, knit.catalogue()), {}, HeadTold::Facts);
    EXPECT_TRUE(text.starts_with("Heron\nby Rosa Lund\n\nIntroduction\n  by the sea – “grown”.\n"
                                 "  Cast on 5 sts and grow.\n  Knit 4 rows.\n\n  Yarn over: bring it to the front.\n\nYarn MC: kelp, weight 1 (super fine), 365.5 m per 100 g\n"
                                 "Yarn CC: sand, undyed\nNeedles: 3.75 mm, or the size that gives the gauge\n"
                                 "Gauge: 22.5 sts and 44 rows to 10 cm (4 in) in garter stitch, blocked\n\n"
                                 "Notes\n  Row 12: take care not to drop the double yo.\n  Size: adjustable\n\n"
                                 "  Row 1: k2tog.\n\nAbbreviations\n"))
        << text;
    const ReadText whole = readText(text, knit.catalogue());
    EXPECT_EQ(whole.rowsRead, 2);
    EXPECT_EQ(whole.pattern.sections.size(), 1u);
    const PatternHead& read = whole.pattern.head;
    EXPECT_TRUE(read.sizes.empty());
    EXPECT_EQ(read.castOn.stitches, Quantity(7));
    EXPECT_EQ(read.title, head.title);
    EXPECT_EQ(read.designer, head.designer);
    EXPECT_EQ(read.needleMm, head.needleMm);
    EXPECT_EQ(read.gauge, head.gauge);
    EXPECT_EQ(read.introduction, head.introduction);
    EXPECT_EQ(read.notes, head.notes);
    ASSERT_EQ(read.yarns.size(), 2u);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(read.yarns[i].name, head.yarns[i].name);
        EXPECT_EQ(read.yarns[i].weight, head.yarns[i].weight);
        EXPECT_EQ(read.yarns[i].metresPerBall, head.yarns[i].metresPerBall);
        EXPECT_EQ(read.yarns[i].gramsPerBall, head.yarns[i].gramsPerBall);
    }

    // What only looks like a yarn or a size is none.
    const PatternHead odd = readText("Heron\nYarn over: bring the yarn to the front.\nYarn needed: about 400 m\n"
                                     "Size: 180 cm wide\n\nCast on 4 sts.\nRow 1 (RS): knit.\n", knit.catalogue())
                                .pattern.head;
    EXPECT_EQ(odd.introduction, "Yarn over: bring the yarn to the front.\nYarn needed: about 400 m\nSize: 180 cm wide");
    EXPECT_TRUE(odd.sizes.empty());

    // As others write them; what isn't read in full is kept as words.
    const PatternHead other = readText("Heron\nTension: 20 stitches and 28,5 rows = 10 cm.\nNeedle 4,5 mm\n"
                                       "Gauge is not crucial.\n\nCast on 4 sts.\nRow 1 (RS): knit.\n", knit.catalogue())
                                  .pattern.head;
    EXPECT_EQ(other.gauge.rows, 28.5);
    EXPECT_EQ(other.needleMm, 4.5);
    EXPECT_EQ(other.introduction, "Gauge is not crucial.");
}

TEST(PatternText, OneVersionAtATime)
{
    Knit knit(3);
    knit.pattern().head.yarns.resize(1);
    knit.pattern().head.versions = {"Garter", "Lace"};
    knit.rs("k*3");
    knit.section("Plain", {"Garter"}).ws("k*3");
    knit.section("Holes", {"Lace"}).ws("p*3");
    EXPECT_EQ(wholeText(knit, {1, 0}),
              "Test\nVersion: Lace\n\nCast on 3 sts with MC.\n\nBody\nRow 1 (RS): k3.\n\n"
              "Holes\nRow 1 (WS): purl.\n");
    EXPECT_NE(wholeText(knit, {0, 0}).find("Plain\nRow 1 (WS): knit."), std::string::npos);
}

TEST(PatternText, SizesAreNamedAndWhoseCountsTheyAre)
{
    Knit knit(34);
    knit.pattern().head.sizes = {"Small", "Wide"};
    knit.pattern().head.castOn.stitches = Quantity(std::vector{34, 40});
    knit.rs("yo [ k ]end");
    const std::string text = wholeText(knit, {0, 1});
    EXPECT_NE(text.find("Sizes: Small (Wide)\nCounts after rows are those of size Wide.\n"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("Cast on 34 (40) sts with MC."), std::string::npos) << text;
    EXPECT_NE(text.find("yo, k to end. (41 sts)"), std::string::npos) << text;
    Style silent;
    silent.counts = CountsShown::Never;
    EXPECT_EQ(wholeText(knit, {0, 1}, silent).find("Counts"), std::string::npos);
}

TEST(PatternText, CastOn)
{
    Knit knit(34);
    Pattern& pattern = knit.pattern();
    EXPECT_EQ(castOnInWords(pattern), "Cast on 34 sts with MC.");
    pattern.head.sizes = {"Small", "Wide"};
    pattern.head.castOn.stitches = Quantity(std::vector{1, 40});
    pattern.head.castOn.method = "long-tail";
    EXPECT_EQ(castOnInWords(ofOneSize(pattern, 0)), "Cast on 1 st with MC (long-tail).");
    EXPECT_EQ(castOnInWords(ofOneSize(pattern, 1)), "Cast on 40 sts with MC (long-tail).");
    EXPECT_EQ(castOnInWords(pattern), "Cast on 1 (40) sts with MC (long-tail).");
    pattern.head.castOn = {Quantity(0), YarnId{2}, "", Side::WS};
    EXPECT_EQ(castOnInWords(pattern), "Begin without sts with CC. The WS faces for the first row.");
}

TEST(PatternText, YarnsWithoutACode)
{
    Knit knit(4);
    knit.pattern().head.yarns[0].code = "";
    EXPECT_EQ(castOnInWords(knit.pattern()), "Cast on 4 sts with main.");
    knit.pattern().head.yarns[0].name = "";
    EXPECT_EQ(castOnInWords(knit.pattern()), "Cast on 4 sts with yarn 1.");
}

TEST(PatternText, ASectionInTheDesignersWords)
{
    Knit knit(4);
    knit.rs("k*4");
    knit.pattern().sections[0].frame.words = "Work as you please.";
    const Pattern pattern = knit.done();
    EXPECT_EQ(writtenSection(pattern, knit.catalogue(), run(pattern, knit.catalogue()), 0, {}),
              "Body\nWork as you please.\n");
}
