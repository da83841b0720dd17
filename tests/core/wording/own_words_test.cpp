// A designer's own words against the chart they are printed for: common practice of technical editing (each
// chart row against each written row: Tabatha Thomas; Heddi Craft Designs), cases by hand.

#include "core/wording/own_words.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Case {
    const char* words;
    const char* says; // "row/column: message begins so"; "": nothing
};

std::string told(const std::vector<Finding>& findings)
{
    std::string text;
    for (const Finding& finding : findings)
        text += std::string(severityName(finding.severity)) + " " + std::to_string(finding.row) + "/" +
                std::to_string(finding.column) + ": " + finding.message + "\n";
    return text;
}

Pattern withWords(Pattern pattern, std::size_t row, const std::string& words)
{
    Row changed = *pattern.sections[0].rows[row];
    changed.words = words;
    pattern.sections[0].rows[row] = std::make_shared<const Row>(std::move(changed));
    return pattern;
}

std::string findingsOf(const Pattern& pattern, const Catalogue& catalogue)
{
    return told(ownWordsFindings(pattern, catalogue, run(pattern, catalogue)));
}

} // namespace

TEST(OwnWords, OfARowAreComparedWithItsChart)
{
    Knit knit(9);
    knit.rs("k*2 yo ssk k k2tog yo k*2").ws("p*9").rs("k*2 [ yo ssk ]*2 k*3");
    const Pattern pattern = knit.done();
    const Case cases[] = {
        {"k2, yo, ssk, k1, k2tog, yo, k2", ""},
        {"Knit 2, yarn over, ssk, knit 1, k2tog, yo, k to end.", ""},
        {"k2, yo, k2tog, k1, k2tog, yo, k2",
         "error 0/4: own words say k2tog where the chart has ssk at column 4; mend"},
        {"k2, yo, ssk, k1, k2tog, k2", "error 0/7: own words say k where the chart has yo at column 7; they "
                                       "come to 8 stitches, the chart to 9; mend"},
        {"k2, yo, ssk, k1, k2tog, yo, k1",
         "error 0/9: own words end where the chart goes on with k at column 9"},
        {"k2, yo, ssk, k1, k2tog, yo, k3", "error 0/9: own words go on with k where the chart's row ends"},
        {"k2, yo, ssk, k1, k2tog, yo, k2. (10 sts)",
         "error 0/0: own words state 10 stitches, the needle has 9 after it"},
        {"k2, yo, ssk, k1, k2tog, yo, k2. (9 sts)", ""},
        {"k2, yo, ssk, k1, k2tog, yo, k2, slide",
         "error 0/0: own words end with a slide, the chart with a turn at the end"},
        {"as the wind blows", "warning 0/0: own words can't be read (found 'as the wind blows'; expected"},
    };
    for (const Case& one : cases) {
        const std::string is = findingsOf(withWords(pattern, 0, one.words), knit.catalogue());
        if (std::string(one.says).empty()) {
            EXPECT_EQ(is, "") << one.words;
        } else {
            EXPECT_EQ(is.substr(0, std::string(one.says).size()), one.says) << one.words << "\n" << is;
        }
    }
    // Another way to say the same repeat; a wrong-side row.
    EXPECT_EQ(
        findingsOf(withWords(pattern, 2, "k2, *yo, ssk; rep from * to last 3 sts, k3"), knit.catalogue()),
        "");
    EXPECT_EQ(findingsOf(withWords(pattern, 1, "Purl"), knit.catalogue()), "");
    EXPECT_EQ(findingsOf(withWords(pattern, 1, "Knit"), knit.catalogue()).substr(0, 70),
              "error 1/9: own words say k where the chart has p at column 9; mend the");
    // A row kept as words has nothing to compare.
    Knit bare(5);
    bare.rs(".");
    EXPECT_EQ(findingsOf(withWords(bare.done(), 0, "as the wind blows"), bare.catalogue()), "");
}

TEST(OwnWords, AreTrueOfEveryTimeARowIsWorked)
{
    Knit knit(6);
    knit.rs("k yo [ k ]end-1 k").ws("[ p ]end").times(2, 3);
    EXPECT_EQ(findingsOf(withWords(knit.done(), 0, "k1, yo, k to end"), knit.catalogue()), "");
    const std::string fixed = findingsOf(withWords(knit.done(), 0, "k1, yo, k5"), knit.catalogue());
    EXPECT_NE(fixed.find("own words end where the chart goes on with k"), std::string::npos) << fixed;
    const std::vector<Finding> findings =
        ownWordsFindings(withWords(knit.done(), 0, "k1, yo, k5"), knit.catalogue(),
                         run(withWords(knit.done(), 0, "k1, yo, k5"), knit.catalogue()));
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings[0].line, 2); // the second time
}

TEST(OwnWords, MarkersAndShortRows)
{
    Knit knit(10);
    knit.rs("k*5 |A k*5").ws("p*10").rs("k*5 yo ~A k*5").ws("p*8 . . . turn");
    const Pattern pattern = knit.done();
    EXPECT_EQ(findingsOf(withWords(pattern, 2, "k to marker, yo, sm, k5"), knit.catalogue()), "");
    const std::string other = findingsOf(withWords(pattern, 2, "k to marker, sm, yo, k5"), knit.catalogue());
    EXPECT_NE(other.find("leave 5 and 6 stitches between the markers, the chart 6 and 5 stitches"),
              std::string::npos)
        << other;
    EXPECT_EQ(findingsOf(withWords(pattern, 3, "p8, turn"), knit.catalogue()), "");
    const std::string late = findingsOf(withWords(pattern, 3, "p9, turn"), knit.catalogue());
    EXPECT_NE(late.find("own words go on with p where the chart's row ends"), std::string::npos) << late;
}

TEST(OwnWords, OfASectionAreComparedRowByRow)
{
    Knit knit(6);
    knit.rs("k yo [ k ]end-1 k").ws("[ p ]end").times(2, 3);
    Pattern pattern = knit.done();
    pattern.sections[0].frame.words = "Row 1 (RS): k1, yo, k to end.\nRow 2: purl.\nRep Rows 1-2 twice more.";
    EXPECT_EQ(findingsOf(pattern, knit.catalogue()), "");
    pattern.sections[0].frame.words =
        "Row 1 (RS): k1, yo, k to end.\nRow 2: purl.\nRep Rows 1-2 three more times.";
    EXPECT_NE(findingsOf(pattern, knit.catalogue()).find("own words of the section tell 8 rows, the chart 6"),
              std::string::npos);
    pattern.sections[0].frame.words = "Row 1 (RS): k1, yo, k to end.\nRow 2: knit.\nRep Rows 1-2 twice more.";
    EXPECT_EQ(findingsOf(pattern, knit.catalogue()).substr(0, 61),
              "error 1/1: own words of the section say k where the chart has");
    pattern.sections[0].frame.words = "Knit as you please.";
    EXPECT_NE(
        findingsOf(pattern, knit.catalogue()).find("warning -1/0: own words of the section can't be read"),
        std::string::npos);
}
