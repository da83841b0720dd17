// Wordings of published patterns, each as a small text: what it comes to on the needle, the words it is told
// in again, and what is said about it. Sources: Josephine Kush, Row Repeats; Kate Atherley, 2006-08-13 (yarn
// overs beside markers); Interweave, German Short-Rows; Craft Star Studios (sizes); Mee, Exercises in
// Knitting, 1846, e-text 21032, p. 98 (binding off); dancingbarefoot.wordpress.com (Japanese shaping); the
// rest common practice, no source.

#include "core/base/text.h"
#include "core/files/builtin_catalogue.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/writer.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace shawlwright;

namespace {

struct Case {
    const char* text;
    const char* after;          // counts after each knitted row
    const char* says = "";      // each part, apart by |, stands in a note; "-": nothing is said at all
    const char* row1 = nullptr; // the words of the first row
};

struct Outcome {
    std::string after, notes, row1;
};

Outcome outcomeOf(const std::string& text)
{
    Outcome outcome;
    const ReadText read = readText(text, builtInCatalogue());
    const Catalogue catalogue = builtInCatalogue().with(read.pattern.head.stitches);
    const Ledger ledger = run(read.pattern, catalogue);
    for (const LedgerLine& line : ledger.lines)
        outcome.after += (outcome.after.empty() ? "" : " ") + toText(line.after);
    for (const ReadingNote& note : read.notes)
        outcome.notes += toText(note) + "\n";
    Style style;
    style.counts = CountsShown::Never;
    style.gathering = Gathering::RowByRow;
    if (!read.pattern.sections.empty() && !read.pattern.sections[0].rows.empty())
        outcome.row1 = writtenRows(read.pattern, catalogue, ledger, 0, style).front().text;
    EXPECT_TRUE(faultsOf(read.pattern, catalogue).empty()) << text;
    return outcome;
}

void expectAll(const std::vector<Case>& cases)
{
    for (const Case& one : cases) {
        const Outcome is = outcomeOf(one.text);
        EXPECT_EQ(is.after, one.after) << one.text << "\n" << is.notes;
        const std::string says = one.says;
        if (says == "-") {
            EXPECT_EQ(is.notes, "") << one.text;
        } else {
            for (std::size_t from = 0; from < says.size();) {
                const std::size_t end = std::min(says.find('|', from), says.size());
                EXPECT_NE(is.notes.find(says.substr(from, end - from)), std::string::npos)
                    << one.text << "\nwanted: " << says.substr(from, end - from) << "\n"
                    << is.notes;
                from = end + 1;
            }
        }
        if (one.row1) {
            EXPECT_EQ(is.row1, one.row1) << one.text;
        }
    }
}

} // namespace

TEST(Wordings, HeadsOfRows)
{
    expectAll({
        {"CO 5 sts.\nSet-up row (WS): knit.\nRow 1 (RS): k5.\n", "5 5", "-", "knit."},
        {"CO 5 sts.\nRnd 1: k2, yo, k3.\nRnd 2: knit.\n", "6 6", "-"},
        {"CO 5 sts\nRow 1 (RS) : K5\nROW 2 (WS): PURL\n", "5 5", "-"},
        {"CO 5 sts.\nRow 1 (RS): k1, yo, k4.\nRow 2: purl.\nRow 3 and all odd rows: knit.\nRow 4: k1, yo, "
         "k5.\n"
         "Row 6: k7.\n",
         "6 6 6 7 7 7 7", "followed by Row 7"},
        {"CO 5 sts.\nRow 1 (RS): k5.\nRow 2: p5.\nRow 3: k1, yo, k to end.\nRow 4: k to end.\nRow 5: k1, yo, "
         "k to "
         "end.\nRow 6: k to end.\nRep Rows 3-6 9 more times.\n",
         "5 5 6 6 7 7 8 8 9 9 10 10 11 11 12 12 13 13 14 14 15 15 16 16 17 17 18 18 19 19 20 20 21 21 22 22 "
         "23 23 24 "
         "24 25 25"},
        {"CO 4 sts.\n1st row (RS): knit.\n2nd row: purl.\n3rd row: k1, yo, k3.\n", "4 4 5", "-"},
        {"CO 4 sts.\nR1 (RS): knit.\nR2 (WS): purl.\n", "4 4", "-"},
    });
}

// The usual form of printed patterns: common practice, no source.
TEST(Wordings, RowsThatRepeatOthersByTheirNumbers)
{
    const std::string rows = "CO 4 sts.\nRow 1 (RS): knit.\nRow 2: purl.\nRow 3: k1, yo, k to end.\nRow 4: purl.\n";
    struct Told {
        const char *words, *after, *says;
    };
    const Told all[] = {
        {"Rows 5-8: Rep Rows 3 and 4 twice.\nRow 9: knit.\n", "4 4 5 5 6 6 7 7 7", "-"},
        {"Rows 5-8: Repeat Rows 3-4.\nRow 9: knit.\n", "4 4 5 5 6 6 7 7 7", "-"},
        {"Rows 5-8: Work as Rows 3-4.\nRow 9: knit.\n", "4 4 5 5 6 6 7 7 7", "-"},
        {"Rows 5-6: As Rows 3 and 4.\n", "4 4 5 5 6 6", "-"},
        {"Rows 5-8: Rep Rows 3-4 two more times. (7 sts)\n", "4 4 5 5 6 6 7 7", "-"},
        {"Rows 5-8: Rep last 2 rows.\n", "4 4 5 5 6 6 7 7", "-"},
        {"Rows 5-8: Rep Rows 3-4 five times.\n", "4 4 5 5 6 6 7 7", "expected 2 times: Rows 5-8 are 4 rows; taken as 2 times"},
        {"Row 5: knit.\nRow 6: purl.\nRows 7-10: Rep Rows 3-4.\n", "4 4 5 5 5 5 6 6 7 7", "rows worked anew"},
        // Rows by the numbers that they have as times of a repeat.
        {"Rows 5-8: Rep Rows 3-4.\nRow 9: knit.\nRow 10: purl.\nRows 11-12: Rep Rows 7-8.\n", "4 4 5 5 6 6 7 7 7 7 8 8",
         "rows worked anew"},
        {"Rows 5-7: Rep Rows 3-4.\n", "4 4 5 5 5 5 5", "Rows 5-7 to be a whole number of times 2 rows; they are 3"},
    };
    for (const Told& one : all)
        expectAll({{(rows + one.words).c_str(), one.after, one.says}});
    // Whichever way the next row is numbered, nothing is odd about it.
    for (const char* next : {"Row 5: knit.\n", "Row 9: knit.\n", "Row 7: knit.\n"}) {
        const ReadText read = readText(rows + "Rep Rows 3-4 twice more.\n" + next, builtInCatalogue());
        const Ledger ledger = run(read.pattern, builtInCatalogue());
        const bool odd = std::any_of(ledger.findings.begin(), ledger.findings.end(), [](const Finding& finding) {
            return finding.kind == FindingKind::NumberingGap;
        });
        EXPECT_EQ(odd, std::string(next) == "Row 7: knit.\n") << next;
    }
}

TEST(Wordings, MarkersByTheirLetterAlone)
{
    expectAll({{"CO 9 sts.\nRow 1 (RS): k3, pm A, k3, pm B, k3.\nRow 2: p.\nRow 3: k to A, sm, *yo, k2tog; rep from * to 1 st before "
                "B, k1, sm, k to end.\nRow 4: p to B, sm, p to A, sm, p to 1 st before end, p1.\n",
                "9 9 9 9", "-"}});
}

TEST(Wordings, BindingOffIsDrawn)
{
    const ReadText read = readText("CO 5 sts.\nRow 1 (RS): knit.\nRow 2: Bind off all sts loosely.\n", builtInCatalogue());
    const Section& section = read.pattern.sections.at(0);
    const auto boxes = boxesOn(section, 1);
    ASSERT_EQ(boxes.size(), 1u);
    EXPECT_EQ(boxes[0].until, BoxUntil::RowEnd);
    EXPECT_EQ(cellAt(*section.rows.at(1), boxes[0].firstColumn).stitch, builtInCatalogue().require("bo"));
    expectAll({{"CO 5 sts.\nRow 1 (RS): knit.\nRow 2: Bind off all sts.\n", "5 0", "-"}});
}

TEST(Wordings, ARepeatThatIsWorkedNoTimesIsTold)
{
    expectAll({
        {"CO 10 sts.\nRow 1 (RS): k4, pm A, k6.\nRow 2: purl.\nRow 3: k2, yo, *k2tog, yo; rep from * to 2 sts before A, k2, "
         "sm A, yo, k6.\n",
         "10 10 12", "found 'k2tog, yo'; expected room for it"},
        {"CO 10 sts.\nRow 1 (RS): k4, pm A, k6.\nRow 2: purl.\nRow 3: k4, k to marker A, sm A, k6.\n", "10 10 10", "-"},
        {"CO 10 sts.\nRow 1 (RS): k6, pm A, k4.\nRow 2: purl.\nRow 3: k2, *k2tog, yo; rep from * to 2 sts before A, k2, "
         "sm A, k4.\n",
         "10 10 10", "-"},
    });
}

TEST(Wordings, MarkersOfTheCastOn)
{
    expectAll({
        {"CO 34 sts, pm after 4 and 30 sts.\nRow 1 (RS): k to marker, sm, k1, yo, k to marker, sm, k4.\n",
         "35", "pm after 4, 30 sts"},
        {"CO 12 sts, pm after 4 sts.\nRow 1 (RS): k4, yo, sm, k to end.\nRow 2: purl.\n", "13 13", "",
         "k4, yo, pm, k to end."},
        {"CO 12 sts, pm after 4 and 8 sts.\nRow 1 (RS): [k1, yo, k3, sm] 3 times.\n", "15",
         "pm after 4, 8 sts"},
        {"CO 12 sts, pm after 4 and 8 sts.\nRow 1 (RS): k4, rm, k4, sm, k4.\n", "12", "", "k8, pm B, k4."},
        {"CO 8 sts, pm after 3 sts.\nRow 1 (RS): k2, k2tog, k4.\n", "7",
         "a first row that can be parted there"},
        // Repeated, the first row does not place them again.
        {"CO 8 sts, pm after 4 sts.\nRow 1 (RS): k to marker, sm, yo, k to end.\nRow 2: purl.\n"
         "Rep Rows 1-2 twice more.\n",
         "9 9 10 10 11 11", "the first time told by itself"},
        {"CO 8 sts, pm after 4 sts.\nRow 1 (RS): k to marker, sm, yo, k to end.\nRow 2: purl.\n"
         "Rep Rows 1-2 until there are 12 sts.\n",
         "9 9 10 10 11 11 12 12", "2 more times"},
        {"CO 8 sts, pm after 4 sts.\nRow 1 (RS): k to marker, sm, yo, k to end.\nRow 2: purl.\n"
         "Work Rows 1-2 a total of 2 times.\nRow 3: knit.\n",
         "9 9 10 10 10", "told by itself"},
    });
}

TEST(Wordings, MarkersWithinRows)
{
    expectAll({
        {"CO 8 sts.\nRow 1 (RS): k4, pm, k4.\nRow 2: p to m, sm, p to end.\nRow 3: k to marker, rm, k to "
         "end.\n",
         "8 8 8", "-"},
        // Moved by one stitch, it stays the same marker.
        {"CO 8 sts.\nRow 1 (RS): k4, pm, k4.\nRow 2: p to marker, rm, p1, pm, p to end.\nRow 3: k to marker, "
         "yo, k "
         "to end.\nRow 4: p to marker, rm, p1, pm, p to end.\n",
         "8 8 9 9"},
        {"CO 12 sts.\nRow 1 (RS): k5, pm, k7.\nRow 2: purl.\nRow 3: k5, yo, k7.\n", "12 12 13",
         "a stitch made beside a marker|'sm' before or after it|taken as the marker slipped first"},
    });
}

TEST(Wordings, TimesAndRepeats)
{
    expectAll({
        {"CO 8 sts.\nRow 1 (RS): k2tog 4 times.\n", "4", "-"},
        {"CO 5 sts.\nRow 1 (RS): k1, [k2tog] twice.\n", "3", "-"},
        {"CO 8 sts.\nRow 1 (RS): *yo, k2tog; rep from * once more, k4.\n", "8", "-",
         "[yo, k2tog] twice, k4."},
        {"CO 4 sts.\nRow 1 (RS): k2, yo 4 times, k2.\n", "8", "-"},
        {"CO 4 sts.\nRow 1 (RS): k2, yo twice, k2.\nRow 2: p2, k1, drop 1, p2.\n", "6 5", ""},
        {"CO 4 sts.\nRow 1 (RS): k2, [k1, p1] in next st, k1.\n", "5", "-"},
        // The star is the whole row: nothing is left.
        {"CO 12 sts.\nRow 1 (RS): *k2, p2; rep from *.\n", "12", "rep from *|to the end of the row"},
        {"CO 12 sts.\nRow 1 (RS): *k2, p2; rep from * 3 times.\n", "12",
         "'3 times more' or '3 times in all' said in full|taken as 3 times in all, the only reading that "
         "comes out"},
        {"CO 16 sts.\nRow 1 (RS): *k2, p2; rep from * 3 times.\n", "16", "taken as 3 times more"},
        // "Twice" after a comma: handbooks of 1843 to 1918 mean either.
        {"CO 9 sts.\nRow 1 (RS): k3, yo, k2tog, twice, k2. (9 sts)\n", "9",
         "'the last stitch only, twice' or 'the last two together, twice'|taken as the last two together, "
         "twice, the only "
         "reading"},
        {"CO 9 sts.\nRow 1 (RS): k3, yo, k2tog, twice, k2.\n", "8", "taken as the last stitch only, twice"},
        // One double yarn over and four decreases, unless only the pair comes out.
        {"CO 10 sts.\nRow 1 (RS): k2, yo twice, k2tog 4 times.\n", "8", "-",
         "k2, yo twice, [k2tog] 4 times."},
        // A remainder: "k2, p2 to end".
        {"CO 12 sts.\nRow 1 (RS): k2, p2 to end.\n", "12",
         "2:17: warning: found 'p2 to end'; expected 'the last two, repeated to there' or 'the last of them, "
         "repeated to "
         "there' said in full; taken as the last two",
         "*k2, p2; rep from * to end."},
        {"CO 14 sts.\nRow 1 (RS): k2, p2 to end.\n", "14",
         "taken as the last of them, repeated to there, the only reading", "k2, *p2; rep from * to end."},
        {"CO 13 sts.\nRow 1 (RS): k2, p2 to end.\n", "12", "said in full"},
        {"CO 12 sts.\nRow 1 (RS): *k2, p2 to end.\n", "12", "error: found '*'"},
    });
}

TEST(Wordings, BindingOffAndPassingOver)
{
    expectAll({
        {"CO 17 sts.\nRow 1 (RS): bo 5, k11.\n", "12", ""},
        {"CO 3 sts.\nRow 1 (RS): sl1, k2, psso.\n", "2", "-", "s1k2p."},
        {"CO 2 sts.\nRow 1 (RS): sl1, k1, psso.\n", "1", "-", "skp."},
        {"CO 3 sts.\nRow 1 (RS): sl1, k2tog, psso.\n", "1", "-", "sk2p."},
        {"CO 3 sts.\nRow 1 (RS): sl2, k1, psso.\n", "1", "-", "s2kp."},
        {"CO 4 sts.\nRow 1 (RS): sl1, k3, psso.\n", "3",
         "sl1-k3-psso|taken as a stitch of the pattern's own, 4 into 3"},
        // On the wrong side skp and sk2p are told as the decreases that lie the same way there.
        {"CO 4 sts.\nRow 1 (WS): k1, skp, k1.\n", "3", "ssk, which lies the same way on this side",
         "k1, ssk, k1."},
        {"CO 5 sts.\nRow 1 (WS): k1, sk2p, k1.\n", "3", "sssk, which lies the same way on this side",
         "k1, sssk, k1."},
    });
}

TEST(Wordings, ShortRows)
{
    expectAll({
        {"CO 20 sts.\nRow 1 (RS): k14, turn, leaving 6 sts unworked.\n", "20", "-"},
        {"CO 20 sts.\nRow 1 (RS): k16, turn.\nRow 2 (WS): ds, k to end.\nRow 3: k to 4 sts before last turn, "
         "turn.\n"
         "Row 4: DS, k to end.\nRow 5: k to ds, kds, k to ds, kds, k to end.\n",
         "20 20 20 20 20", "counted from the gap, the double stitch among them|to the next turn ahead"},
    });
}

TEST(Wordings, WholeRowsAndLongWords)
{
    expectAll({
        {"CO 6 sts.\nRow 1 (RS): Knit\nRow 2: Purl\n", "6 6", "-"},
        {"CO 6 sts.\nRow 1 (RS): knit two together, yarn over twice, slip one knitwise, knit three\n", "7",
         "-"},
        {"Cast on twelve sts.\nRow 1 (RS): knit three, purl nine.\n", "12", "-", "k3, p9."},
        {"CO 6 sts.\nRow 1 (RS): k2, p3, k1.\nRow 2: Knit the knits and purl the purls.\n", "6 6", "-"},
        {"CO 6 sts.\nRow 1 (RS): k2, p3, k1.\nRow 2: k the knits and p the purls.\n", "6 6", "-"},
        {"CO 6 sts.\nRow 1 (RS): k2, yo, k4.\nRow 2: Work even.\nRow 3: work 1 row even.\n", "7 7 7",
         "as the stitches show"},
        {"CO 6 sts.\nRow 1 (RS): k3, p3.\nRow 2: p3, k3.\nWork even for 4 rows.\n", "6 6 6 6 6 6",
         "as the stitches show"},
    });
}

TEST(Wordings, LettersOfAnyDress)
{
    expectAll({
        {"\xEF\xBB\xBF"
         "CAST ON 9 STS.\r\n\xE2\x80\xA2 ROW 1 (RS): K2,\xC2\xA0*YO, SSK; REP FROM * TO LAST ST, K1\r\n",
         "9", "-"},
        {"CO 5 sts.\nRow 1\xC2\xA0(RS): \xE2\x80\x9Ck5\xE2\x80\x9D\n", "5", "-"},
        {"CO 5 sts.\nRows 1\xE2\x80\x93"
         "2: knit\n",
         "5 5", "-"},
        {"CO 6 sts.\nRow 1 (RS): k2, *yo,\n  k2tog; rep from *\n  to end.\n", "6", "-"},
        {"CO 6 sts.\n- Row 1 (RS): k6\n- Row 2: p6\n", "6 6", "-"},
        {"CO 6 sts.\nRow 1 (RS): k6. Work should measure 2\xC2\xBD\xE2\x80\xB3 (6 cm).\nRow 2: p6.\n", "6 6",
         "a note to the row"},
        {"Sizes: S (M, L)\n\nCO 10 (12, 14) sts.\nRow 1 (RS): k2, [yo, k2tog] 3 (4, 5) times, k2. (10 (12, "
         "14) sts)\n",
         "10", "-"},
        {"CO 6 sts with yarn A.\nRow 1 (RS): with B, k6.\nRow 2: join CC, p6, break B.\n", "6 6", ""},
    });
}

TEST(Wordings, MisspeltAbbreviations)
{
    expectAll({
        {"CO 6 sts.\nRow 1 (RS): k2togg, sskk, y0, k2.\n", "5",
         "2:13: warning: found 'k2togg'|2:21|taken as 'k2tog'|'sskk'|'ssk'|'y0'|'yo'"},
        {"CO 6 sts.\nRow 1 (RS): k3, pm, k3.\nRow 2: p3, ssm, p3.\n", "6 6", "'ssm'|taken as 'sm'"},
        {"CO 6 sts.\nRow 1 (RS): k3, pm, k3.\nRow 2: p3, slm, p3.\n", "6 6", "-"},
        // More than one stitch is as near: not guessed.
        {"CO 6 sts.\nRow 1 (RS): k4, kxtog.\n", "6", "2:17: error: found 'kxtog'"},
    });
}

TEST(Wordings, LengthsAndWordsThatAreNoRows)
{
    expectAll({
        {"CO 6 sts.\nRow 1 (RS): knit.\nRow 2: purl.\nRep Rows 1-2 until piece measures 20 cm, ending with a "
         "WS row.\n",
         "6 6", "until piece measures 20 cm|how many times"},
        {"CO 6 sts.\nRow 1 (RS): knit.\nWork even until piece measures 20 cm.\nRow 2: purl.\n", "6 6",
         "until piece measures 20 cm"},
        {"CO 30 sts.\nRow 1 (RS): knit.\nDecrease 2-1-5, 4-1-3 at the neck edge.\nRow 2: purl.\n", "30 30",
         "2-1-5|1 stitch every 2 rows, 5 times"},
    });
}

// Found by the law of the two languages on random patterns.
TEST(Wordings, FoundByTheLaw)
{
    expectAll({
        {"CO 11 sts.\nRow 1 (RS): pm, k to end.\nRow 2: knit.\n", "11 11", "-", "pm, k to end."},
        {"CO 8 sts with MC.\nRow 1 (RS): k4, turn.\nRow 2: k4.\nRow 3: bo in CC to 1 st before last turn, "
         "k1, k to end.\n",
         "8 8 5"},
        {"CO 8 sts. The WS faces for the first row.\nRnd 1 and all odd rnds (WS): purl.\nRnd 2 (WS): knit.\n",
         "8 8 8", "followed by Row 3", "purl."},
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k3.\nRows 2 and 4 (WS): p1, yo, p to end.\nRow 3 (RS): knit.\nRow "
         "2a (RS): k1, "
         "k2tog, k to end.\nRep Rows 2-2a once more.\n",
         "5 6 6 7 6 7 7 8 7"},
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k3.\nRow 2 and all WS rows to Row 4: p1, yo, p to end.\nRow 3 (RS): "
         "knit.\n"
         "Row 2a (RS): k1, k2tog, k to end.\n",
         "5 6 6 7 6"},
    });
}

TEST(Wordings, CountsOfRowsThatAreRepeated)
{
    expectAll({
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (5 sts)\nRow 2: knit. (5 sts)\nRep Rows 1-2 twice more. "
         "(7 sts)\n",
         "5 5 6 6 7 7", "that of the first time"},
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (1 st inc)\nRow 2: knit.\nRep Rows 1-2 twice more.\n",
         "5 5 6 6 7 7", "-"},
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (2 sts inc)\nRow 2: knit.\n", "5 5",
         "found '(2 sts inc)'; expected 1 st inc, as the row comes out"},
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (5, 6, 7 sts)\nRow 2: knit.\nRep Rows 1-2 twice more.\n",
         "5 5 6 6 7 7", "-"},
        {"CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (5, 6, 8 sts)\nRow 2: knit.\nRep Rows 1-2 twice more.\n",
         "5 5 6 6 7 7", "the count of time 3, 8 sts'; expected 7"},
        {"CO 8 sts.\nRow 1 (RS): k5, turn. (5 sts worked, 4 unworked)\n", "8",
         "'(4 sts unworked)'; expected 3 sts"},
    });
}
