// Whole texts: heads, row repeats, cast-on, sizes, notes, and what is said where words are doubtful. Forms:
// Josephine Kush, Row Repeats; Kniterations, Indicating Stitch Count Changes; Craft Star Studios (sizes,
// counts); Interweave, German Short-Rows; the rest common practice, no source.

#include "core/files/builtin_catalogue.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/writer.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace shawlwright;

namespace {

struct Text {
    explicit Text(const std::string& text, const ReadOptions& options = {})
        : read(readText(text, builtInCatalogue(), options)),
          catalogue(builtInCatalogue().with(read.pattern.head.stitches)), ledger(run(read.pattern, catalogue))
    {
        EXPECT_TRUE(faultsOf(read.pattern, catalogue).empty()) << text;
    }
    std::vector<int> after() const
    {
        std::vector<int> counts;
        for (const LedgerLine& line : ledger.lines)
            counts.push_back(line.after);
        return counts;
    }
    std::string rows(int section = 0) const
    {
        std::string all;
        for (const WrittenRow& row : writtenRows(read.pattern, catalogue, ledger, section,
                                                 {Words::US, CountsShown::Never, RepeatForm::Asterisk}))
            all += toText(row) + "\n";
        return all;
    }
    bool says(const std::string& words) const
    {
        return std::any_of(read.notes.begin(), read.notes.end(), [&](const ReadingNote& note) {
            return toText(note).find(words) != std::string::npos;
        });
    }
    std::string notes() const
    {
        std::string all;
        for (const ReadingNote& note : read.notes)
            all += toText(note) + "\n";
        return all;
    }
    std::vector<std::string> errors() const
    {
        std::vector<std::string> all;
        for (const Finding& finding : ledger.findings)
            if (finding.severity == Severity::Error)
                all.push_back(finding.message);
        return all;
    }

    ReadText read;
    Catalogue catalogue;
    Ledger ledger;
};

using Counts = std::vector<int>;

} // namespace

TEST(TextsRead, AllWrongSideRowsBecomeRows)
{
    const Text text(
        "Cast on 9 sts.\nRow 1 (RS): k1, yo, k7, yo, k1.\nRow 2 and all following WS rows: purl.\n"
        "Row 3: k1, yo, k to last st, yo, k1.\nRow 5: Knit.\n");
    EXPECT_EQ(text.after(), (Counts{11, 11, 13, 13, 13, 13})) << text.rows();
    EXPECT_TRUE(text.says("followed by Row 6")) << text.notes();
    const Text before("CO 4\nAll WS rows: purl.\nRow 1 (RS): knit\nRow 3: k4\nRep Rows 1-4 once more.\n");
    EXPECT_EQ(before.rows(), "Row 1 (RS): knit.\nRow 2 (WS): purl.\nRow 3 (RS): knit.\nRow 4 (WS): "
                             "purl.\nRep Rows 1-4 once more.\n");
}

TEST(TextsRead, ListsOfRowsWaitForThoseBetween)
{
    const Text text("CO 4 sts\nRow 1 (RS): k4\nRows 2, 4 and 6: purl\nRow 3: k2, p2\nRow 5: p2, k2\n");
    EXPECT_EQ(text.rows(), "Row 1 (RS): knit.\nRow 2 (WS): purl.\nRow 3 (RS): k2, p2.\nRow 4 (WS): purl.\n"
                           "Row 5 (RS): p2, k2.\nRow 6 (WS): purl.\n");
    const Text range("CO 4 sts\nRows 1-4: Knit.\n");
    EXPECT_EQ(range.rows(), "Row 1 (RS): knit.\nRow 2 (WS): knit.\nRow 3 (RS): knit.\nRow 4 (WS): knit.\n");
}

TEST(TextsRead, RowRepeats)
{
    const std::string rows = "CO 4 sts.\nRow 1 (RS): k1, yo, k to end.\nRow 2: knit.\n";
    EXPECT_EQ(Text(rows + "Rep Rows 1-2 three more times.\n").after().back(), 8);
    EXPECT_EQ(Text(rows + "Rep Rows 1\xE2\x80\x93"
                          "2 another 3 times.\n")
                  .after()
                  .back(),
              8);
    EXPECT_EQ(Text(rows + "Work Rows 1 and 2 a total of 3 times.\n").after().back(), 7);
    EXPECT_EQ(Text(rows + "Repeat last 2 rows twice more.\n").after().back(), 7);
    EXPECT_EQ(Text(rows + "Rep these 2 rows until there are 20 sts.\n").after().back(), 20);
    EXPECT_EQ(Text("CO 4 sts.\nRow 1 (RS): k1, yo, k to end.\nRow 2: Knit. Rep Rows 1-2 once more.\n")
                  .after()
                  .back(),
              6);
}

// Josephine Kush, Row Repeats: "repeat rows 1-2 three times" is six rows to some, eight to others.
TEST(TextsRead, RepeatThreeTimesIsSaidToBeDoubtful)
{
    const std::string rows = "CO 4 sts.\nRow 1 (RS): k1, yo, k to end.\nRow 2: knit.\n";
    const Text bare(rows + "Rep Rows 1-2 three times.\n");
    EXPECT_EQ(bare.after().back(), 8);
    EXPECT_TRUE(bare.says(
        "4:1: warning: found 'Rep Rows 1-2 three times.'; expected '3 more times' or 'a total of 3 times'; "
        "taken as 3 more times"))
        << bare.notes();
    const Text counted(rows + "Rep Rows 1-2 three times. (7 sts)\n");
    EXPECT_EQ(counted.after().back(), 7);
    EXPECT_TRUE(counted.says("taken as 3 times in all, which gives the count that is stated"))
        << counted.notes();
}

TEST(TextsRead, RowsOfLongAgoAreWorkedAnew)
{
    const Text text("CO 4 sts.\nRow 1 (RS): k1, yo, k to end.\nRow 2: knit.\nRow 3: purl.\nRow 4: purl.\nRep "
                    "Rows 1-2 twice more.\n");
    EXPECT_EQ(text.after(), (Counts{5, 5, 5, 5, 6, 6, 7, 7})) << text.rows();
    EXPECT_TRUE(text.says("rows worked anew, as Rows 5-6"));
}

TEST(TextsRead, CastOnsWithMarkersYarnsAndSizes)
{
    const Text markers("Using MC, CO 34 sts, pm after 4 and 30 sts.\nRow 1 (RS): knit.\nRow 2: k4, sm, p to "
                       "marker, sm, k4.\n");
    EXPECT_TRUE(markers.errors().empty());
    EXPECT_EQ(markers.ledger.lines[0].segments, (Counts{4, 26, 4}));
    EXPECT_TRUE(markers.says("1:1: note: found 'pm after 4, 30 sts'"));
    const Text sizes("Sizes: S (M, L)\n\nCast on 34 (40, 46) sts with MC.\nRow 1 (RS): k4 (5, 6), k to end. "
                     "(34 (40, 46) sts)\n");
    EXPECT_EQ(sizes.read.pattern.head.sizes, (std::vector<std::string>{"S", "M", "L"}));
    for (int size = 0; size < 3; ++size)
        EXPECT_EQ(run(sizes.read.pattern, sizes.catalogue, {0, size}).lines[0].after, 34 + 6 * size);
    const Text wrong("Cast on 5 sts. The WS faces for the first row.\nRow 1: k2, p3.\n");
    EXPECT_EQ(wrong.rows(), "Row 1 (WS): k2, p3.\n");
    const Text none("Row 1 (RS): k2, *yo, k2tog; rep from * to end.\n");
    EXPECT_EQ(none.read.pattern.head.castOn.stitches, Quantity(3));
    const Text counted("Row 1 (RS): k2, [yo, k2tog] 3 times.\n");
    EXPECT_EQ(counted.read.pattern.head.castOn.stitches, Quantity(8)) << counted.notes();
    EXPECT_TRUE(counted.says("8 stitches, as this row works"));
}

TEST(TextsRead, RowsWithoutNumbers)
{
    const Text text(
        "CO 5 sts.\nEdge\nKnit 3 rows.\nNext row (WS): p2, yo, p3.\nRow 5 (RS) (inc): k1, m1L, k to end.\n");
    EXPECT_EQ(text.after(), (Counts{5, 5, 5, 6, 7})) << text.notes();
    EXPECT_EQ(rowLabels(text.read.pattern.sections[0]), (std::vector<std::string>{"1", "2", "3", "4", "5"}));
    const Text setup("CO 5 sts.\nSet-up row (WS): knit.\nRow 1 (RS): k2, yo, k3.\n");
    EXPECT_EQ(rowLabels(setup.read.pattern.sections[0]), (std::vector<std::string>{"0", "1"}));
}

TEST(TextsRead, OneBadRowDoesNotLoseTheOthers)
{
    const Text text("CO 4 sts.\nRow 1 (RS): k4.\nRow 2: k2, flurb.\nRow 3: k1, yo, k3.\n");
    EXPECT_EQ(text.read.rowsRead, 2);
    EXPECT_EQ(text.read.rowsNot, 1);
    ASSERT_EQ(text.read.pattern.sections[0].rows.size(), 3u);
    EXPECT_EQ(text.read.pattern.sections[0].rows[1]->words, "k2, flurb.");
    EXPECT_TRUE(text.says("3:12: error: found 'flurb'"));
}

TEST(TextsRead, LinesBrokenInsideARow)
{
    const Text text("CO 10 sts.\n\xE2\x80\xA2 Row 1 (RS): k2, *yo, k2tog;\n   rep from * to\n   last 2 sts, "
                    "k2.\nRow 2 (WS): Purl\nThe Edge\n\n"
                    "Row 1 (RS): knit\n");
    ASSERT_EQ(text.read.pattern.sections.size(), 2u) << text.notes();
    EXPECT_EQ(text.rows(0), "Row 1 (RS): k2, *yo, k2tog; rep from * to last 2 sts, k2.\nRow 2 (WS): purl.\n");
    EXPECT_EQ(text.read.pattern.sections[1].frame.title, "The Edge");
}

TEST(TextsRead, ShortRowsAndDoubleStitches)
{
    const Text text("CO 20 sts.\nRow 1 (RS): k15, turn.\nRow 2: DS, k to end.\nRow 3: k to 4 sts before last "
                    "turn, turn.\n"
                    "Row 4: DS, k to end.\nRep Rows 3-4 once more.\n");
    EXPECT_TRUE(text.errors().empty()) << text.errors().front();
    EXPECT_EQ(text.read.pattern.sections[0].rows[0]->finish.method, TurnMethod::DoubleStitch);
    EXPECT_EQ(text.ledger.lines[2].worked, 11);
    EXPECT_TRUE(text.says("counted from the gap, the double stitch among them")) << text.notes();
}

TEST(TextsRead, StitchesLeftUnworkedAreCompared)
{
    const Text text("CO 20 sts.\nRow 1 (RS): k15, turn, leaving 6 sts unworked.\n");
    EXPECT_TRUE(text.says("found 'leaving 6 sts unworked'; expected 5")) << text.notes();
    EXPECT_EQ(text.ledger.lines[0].resting, 5);
}

TEST(TextsRead, RoundsAndBrioche)
{
    const Text round("CO 8 sts.\nRnd 1: *yo, k2; rep from * to end.\nRnd 2: knit.\n");
    EXPECT_EQ(round.after(), (Counts{12, 12}));
    EXPECT_EQ(round.rows(), "Rnd 1: *yo, k2; rep from * to end.\nRnd 2: knit.\n");
    const Text brioche(
        "CO 7 sts.\nRow 1a (RS, MC): *k1, sl1yo; rep from * to last st, k1, slide.\n"
        "Row 1b (RS, CC): join CC, *sl1yo, brp1; rep from * to last st, sl1yo. Do not turn.\n");
    EXPECT_EQ(brioche.read.rowsNot, 0) << brioche.notes();
    EXPECT_EQ(rowLabels(brioche.read.pattern.sections[0])[0], "1a");
}

TEST(TextsRead, TheNeedleSettlesWhatItCan)
{
    const Text twice("CO 9 sts.\nRow 1 (RS): k3, k1, k2tog, twice.\n");
    EXPECT_EQ(twice.after(), Counts{7}) << twice.rows();
    EXPECT_TRUE(twice.says("the last two together, twice, the only reading that comes out")) << twice.notes();
    const Text last("CO 8 sts.\nRow 1 (RS): k3, k1, k2tog, twice.\n");
    EXPECT_EQ(last.after(), Counts{6}) << last.rows();
    EXPECT_TRUE(last.says("taken as the last stitch only, twice")) << last.notes();
    const Text more("CO 8 sts.\nRow 1 (RS): k2, *yo, k2tog; rep from * 3 times.\n");
    EXPECT_TRUE(more.errors().empty());
    EXPECT_TRUE(more.says("taken as 3 times in all, the only reading that comes out on the needle"))
        << more.notes();
}

TEST(TextsRead, KnitTheKnitsAndPurlThePurls)
{
    const Text text(
        "CO 6 sts.\nRow 1 (RS): k2, p3, k1.\nRow 2: Knit the knits and purl the purls.\nRow 3: as Row 1.\n");
    EXPECT_EQ(text.rows(), "Row 1 (RS): k2, p3, k1.\nRow 2 (WS): p1, k3, p2.\nRow 3 (RS): k2, p3, k1.\n");
}

TEST(TextsRead, MarkersBesideYarnOvers)
{
    const std::string start = "CO 12 sts.\nRow 1 (RS): k5, pm, k7.\nRow 2: purl.\n";
    EXPECT_EQ(Text(start + "Row 3: k to marker, yo, sm, k7.\n").ledger.lines[2].segments, (Counts{6, 7}));
    EXPECT_EQ(Text(start + "Row 3: k to marker, sm, yo, k7.\n").ledger.lines[2].segments, (Counts{5, 8}));
    const Text unsaid(start + "Row 3: k5, yo, k7.\n");
    EXPECT_EQ(unsaid.ledger.lines[2].segments, (Counts{5, 8}));
    EXPECT_TRUE(unsaid.says("a stitch made beside a marker")) << unsaid.notes();
    EXPECT_TRUE(Text(start + "Row 3: k3, sm, k9.\n").says("no marker to slip there"));
}

TEST(TextsRead, CountsOfRowsThatAreRepeated)
{
    const Text text(
        "CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (5 sts)\nRow 2: knit.\nRep Rows 1-2 twice more. (7 sts)\n");
    EXPECT_TRUE(text.errors().empty());
    EXPECT_TRUE(text.says("that of the first time")) << text.notes();
    const Text wrong("CO 4 sts.\nRow 1 (RS): k1, yo, k to end. (6 sts)\n");
    EXPECT_EQ(wrong.errors().size(), 1u);
    const Text after(
        "CO 4 sts.\nRow 1 (RS): k1, yo, k to end.\nRow 2: knit.\nRep Rows 1-2 twice more. (8 sts)\n");
    EXPECT_TRUE(after.says("expected 7, as the rows come out")) << after.notes();
}

// A stitch stands over what it takes up: the leaf of Mee, Exercises in Knitting (1846), e-text 21032, pattern
// 2, keeps its columns, the plain rows between too.
TEST(TextsRead, StitchesStandOverTheirParents)
{
    const Text text(
        "CO 8 sts.\nRow 1 (RS): k8.\nRow 2: p8.\nRow 3: k3, k2tog, k3.\nRow 4: p7.\nRow 5: k4, yo, k3.\n");
    const Section& section = text.read.pattern.sections[0];
    EXPECT_EQ(section.frame.columns, 8);
    int columnsOff = 0;
    for (std::size_t line = 0; line < text.ledger.lines.size(); ++line)
        for (const WorkedCell& cell :
             traceOf(text.ledger, text.read.pattern, text.catalogue, static_cast<int>(line)).cells) {
            const Needle& before = text.ledger.before[line];
            if (cell.takesUp == 1 && before.loops[static_cast<std::size_t>(cell.firstLoop)].column > 0)
                columnsOff +=
                    std::abs(before.loops[static_cast<std::size_t>(cell.firstLoop)].column - cell.column);
        }
    EXPECT_EQ(columnsOff, 0);
}

// "k to end" is one cell; its repeat is drawn over the columns it stands for, on either side, up to a marker.
TEST(TextsRead, RepeatsFillTheColumnsTheyStandFor)
{
    const Text text("CO 8 sts.\nRow 1 (RS): k8.\nRow 2: p2, k to last 2 sts, p2.\nRow 3: k4, pm, k4.\n"
                    "Row 4: p to marker, sm, p to end.\nRow 5: k to 2 sts before marker, turn.\n");
    const Section& section = text.read.pattern.sections[0];
    ASSERT_EQ(section.frame.boxes.size(), 4u);
    const auto columns = [&](std::size_t box) {
        return std::pair(section.frame.boxes[box].firstColumn, section.frame.boxes[box].lastColumn);
    };
    EXPECT_EQ(columns(0), std::pair(3, 6));
    // Both halves of row 4, the left one worked first, parted at the marker.
    EXPECT_EQ(columns(1).second, 8);
    EXPECT_EQ(columns(2).first, 1);
    EXPECT_EQ(columns(1).first, columns(2).second + 1);
    EXPECT_EQ(text.after(), (Counts{8, 8, 8, 8, 8}));
    EXPECT_EQ(text.ledger.lines[3].segments, (Counts{4, 4}));
    // Resting stitches lie beyond the last one.
    EXPECT_EQ(columns(3).first, 1);
    EXPECT_LT(columns(3).second, 8);
}

TEST(TextsRead, HostileTextsAreReadInBoundedTime)
{
    std::string repeats = "CO 2000 sts.\nRow 1 (RS): knit.\nRow 2: knit.\n";
    for (int i = 0; i < 50; ++i)
        repeats += "Rep Rows 1-2 9999 more times.\n";
    EXPECT_EQ(readText(repeats, builtInCatalogue()).rowsRead, 2);
    std::string bytes;
    for (int i = 0; i < 20000; ++i)
        bytes += static_cast<char>((i * 7919) % 256);
    readText(bytes, builtInCatalogue());
    readText("Row 1: [k99999] 9999 times, (yo 99999 times) 9999 times", builtInCatalogue());
    readText("Rows 1-99999999: knit\nRow 99999999999999999999: knit", builtInCatalogue());
    readText("Row 5 and all WS rows: purl\nRow 400000: knit", builtInCatalogue());
    EXPECT_EQ(readText("", builtInCatalogue()).rowsRead, 0);
    EXPECT_EQ(readText(std::string(mostTextBytes + 1, 'x'), builtInCatalogue()).notes.size(), 1u);
}

namespace {

ColumnSpan worked(const Section& section, int row)
{
    return usedColumns(*section.rows[static_cast<std::size_t>(row)], boxesOn(section, row));
}

} // namespace

// Pictures: each stitch of the needle has its column where rows are short, so that turns step as they are knitted.
TEST(TextsRead, ShortRowsStepOverTheStitchesTheyWork)
{
    const ReadText read = readText("CO 20 sts.\nRow 1 (RS): knit.\nRow 2 (WS): k15, turn.\nRow 3 (RS): k10, turn.\n"
                                   "Row 4 (WS): k12, turn.\nRow 5 (RS): k to end.\nRow 6 (WS): k to 2 sts before last turn, turn.\n"
                                   "Row 7 (RS): k to end.\n",
                                   builtInCatalogue());
    EXPECT_EQ(read.rowsNot, 0);
    const Section& section = read.pattern.sections.at(0);
    EXPECT_EQ(section.frame.columns, 20);
    // By hand: row 2 works the left 15 of 20; row 3 the 10 beside the turn; row 4 goes two farther than row 2, and so on.
    EXPECT_EQ(worked(section, 0), (ColumnSpan{1, 20}));
    EXPECT_EQ(worked(section, 1), (ColumnSpan{6, 20}));
    EXPECT_EQ(worked(section, 2), (ColumnSpan{6, 15}));
    EXPECT_EQ(worked(section, 3), (ColumnSpan{4, 15}));
    EXPECT_EQ(worked(section, 4), (ColumnSpan{4, 20}));
    EXPECT_EQ(worked(section, 5), (ColumnSpan{6, 20}));
    EXPECT_EQ(worked(section, 6), (ColumnSpan{6, 20}));
}

TEST(TextsRead, MarkersStandWhereTheEdgesEnd)
{
    const ReadText read = readText("CO 23 sts.\nRow 1 (RS): k2, *yo, k2tog; rep from * to last st, k1.\nRow 2 (WS): purl.\n"
                                   "Row 3 (RS): k3, pm, k to last 3 sts, pm, k3.\nRow 4 (WS): k3, sm, p17, sm, k3.\n",
                                   builtInCatalogue());
    EXPECT_EQ(read.rowsNot, 0);
    const Section& section = read.pattern.sections.at(0);
    EXPECT_EQ(section.frame.columns, 23);
    ASSERT_EQ(section.rows[2]->moves.size(), 2u);
    EXPECT_EQ(section.rows[2]->moves[0].boundary, 3);
    EXPECT_EQ(section.rows[2]->moves[1].boundary, 20);
    EXPECT_EQ(section.rows[0]->cells[22].stitch, builtInCatalogue().require("k")) << "the last stitch is the left one";
}

// What closes turns is done by the needle; the words are for the knitter. Forms: common practice, no source.
TEST(TextsRead, WordsAboutClosingTurnsAreANoteToTheRow)
{
    for (const char* closing : {"picking up wraps", "pick up wraps", "picking up all wraps as you come to them",
                                "working wraps tog with their sts", "hiding the wraps", "knitting the twin sts as one"}) {
        const ReadText read = readText(std::string("CO 12 sts.\nRow 1 (RS): k8, w&t.\nRow 2 (WS): k to end.\nRow 3 (RS): knit across, ") +
                                           closing + ". (12 sts)\nRow 4 (WS): k2, ssk, k to last 4 sts, k2tog, k2, " + closing + ".\n",
                                       builtInCatalogue());
        EXPECT_EQ(read.rowsNot, 0) << closing;
        const Section& section = read.pattern.sections.at(0);
        ASSERT_EQ(section.rows.size(), 4u);
        EXPECT_EQ(section.rows[2]->note, closing);
        EXPECT_EQ(section.rows[2]->stated, Quantity(12));
        EXPECT_EQ(section.rows[3]->note, closing);
        EXPECT_EQ(run(read.pattern, builtInCatalogue()).lines.back().after, 10);
    }
    // Stitches and turns are never part of it.
    for (const char* row : {"knit, picking up speed", "k10, work wrap tog with next st, w&t",
                            "k2, knitting the next 10 sts wrapping yarn twice around needle", "k4, lifting wrap, k4, yo, k2tog, k to end",
                            "k5, work double stitch, k5, turn", "k2, work in pattern to wrap, turn",
                            "k8, work to end picking up wraps"}) {
        const ReadText read = readText(std::string("CO 12 sts.\nRow 1 (RS): ") + row + ".\n", builtInCatalogue());
        EXPECT_EQ(read.rowsNot, 1) << row;
    }
    // What follows on the line is read as ever.
    const ReadText on = readText("CO 12 sts.\nRow 1 (RS): k8, w&t.\nRow 2 (WS): knit.\nRow 3 (RS): knit, picking up wraps. "
                                 "Row 4 (WS): k2, ssk, k to end, hiding wraps. Rep Rows 3-4 twice more.\n",
                                 builtInCatalogue());
    ASSERT_EQ(on.pattern.sections.size(), 1u);
    EXPECT_EQ(on.pattern.sections[0].rows.size(), 4u);
    ASSERT_EQ(on.pattern.sections[0].frame.brackets.size(), 1u);
    EXPECT_EQ(on.pattern.sections[0].frame.brackets[0].times, Quantity(3));
    EXPECT_EQ(on.pattern.sections[0].rows[2]->note, "picking up wraps");
    EXPECT_EQ(on.pattern.sections[0].rows[3]->note, "hiding wraps");
}

TEST(TextsRead, ASectionMayBeginWithShortRows)
{
    const ReadText read = readText("CO 30 sts.\nRow 1 (RS): k20, turn.\nRow 2 (WS): p10, turn.\n"
                                   "Row 3 (RS): k to last turn, k3, turn.\nRow 4 (WS): purl.\nRow 5 (RS): knit.\n",
                                   builtInCatalogue());
    EXPECT_EQ(read.rowsNot, 0);
    const Section& section = read.pattern.sections.at(0);
    ASSERT_EQ(section.rows.size(), 5u);
    // By hand: 20 of 30 from the right; 10 back; those 10 and 3 more; all to the right edge; all.
    EXPECT_EQ(worked(section, 0), (ColumnSpan{1, 20}));
    EXPECT_EQ(worked(section, 1), (ColumnSpan{11, 20}));
    EXPECT_EQ(worked(section, 2), (ColumnSpan{11, 23}));
    EXPECT_EQ(worked(section, 3), (ColumnSpan{1, 23}));
    EXPECT_EQ(worked(section, 4), (ColumnSpan{1, 30}));
}

TEST(TextsRead, OnlyTheStitchesBesideShortRowsMakeTheChartWide)
{
    std::string text = "CO 9 sts.\nRow 1 (RS): k5, turn.\nRow 2 (WS): knit.\nRow 3 (RS): k2, yo, k to last 2 sts, yo, k2.\n"
                       "Row 4 (WS): knit.\nRep Rows 3-4, 150 more times.\n";
    EXPECT_EQ(readText(text, builtInCatalogue()).pattern.sections.at(0).frame.columns, 9);
}
