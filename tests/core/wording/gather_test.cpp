// Rows that say the same are told together. Sources: "n more times", and relative words where the count
// changes: Josephine Kush, Row Repeats. The change in a repeated row, the total after the block:
// Kniterations; Craft Star Studios. "Row 4 and all following WS rows", lists of rows, garter ridges as a
// checkpoint: common practice, no source.

#include "core/wording/reader/reader.h"
#include "core/wording/writer/gather.h"
#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

using Lines = std::vector<std::string>;

Knit knitting(int castOn)
{
    Knit knit(castOn);
    knit.pattern().head.yarns.resize(1);
    return knit;
}

std::vector<WrittenLine> gatheredLines(Knit& knit, const Style& style = {})
{
    const Pattern pattern = knit.done();
    const Ledger ledger = run(pattern, knit.catalogue());
    const auto rows = writtenRows(pattern, knit.catalogue(), ledger, 0, style);
    return gathered(pattern, ledger, 0, style, rows);
}

Lines linesOf(Knit& knit, const Style& style = {})
{
    Lines lines;
    for (const WrittenLine& line : gatheredLines(knit, style))
        lines.push_back(toText(line));
    return lines;
}

Style silent()
{
    Style style;
    style.counts = CountsShown::Never;
    return style;
}

void readsBack(Knit& knit)
{
    const Pattern pattern = knit.done();
    ReadOptions options;
    options.head = pattern.head;
    const std::string text = writtenPattern(pattern, knit.catalogue(), run(pattern, knit.catalogue()), {});
    for (const ReadingNote& note : readText(text, knit.catalogue(), options).notes)
        ADD_FAILURE() << toText(note);
}

} // namespace

TEST(Gather, ARunOfRows)
{
    Knit knit = knitting(4);
    knit.rs("k*4").ws("p*4").rs("p*4").ws("p*4").rs("yo k*4");
    EXPECT_EQ(linesOf(knit, silent()),
              (Lines{"Row 1 (RS): knit.", "Rows 2-4: purl.", "Row 5 (RS): yo, k4."}));
    Knit first(4, Side::WS);
    first.pattern().head.yarns.resize(1);
    first.ws("k*4").rs("k*4");
    EXPECT_EQ(linesOf(first, silent()), Lines{"Rows 1 and 2 (WS first): knit."});
}

TEST(Gather, RowsOfOneSideAmongOthers)
{
    Knit knit = knitting(8);
    knit.rs("k*8")
        .ws("p*8")
        .rs("k*2 yo k2tog k*4")
        .ws("p*8")
        .rs("k*4 yo k2tog k*2")
        .ws("p*8")
        .rs("k*5 yo k2tog k");
    EXPECT_EQ(linesOf(knit, silent()),
              (Lines{"Row 1 (RS): knit.", "Rows 2, 4 and 6 (WS): purl.", "Row 3 (RS): k2, yo, k2tog, k4.",
                     "Row 5 (RS): k4, yo, k2tog, k2.", "Row 7 (RS): k5, yo, k2tog, k1."}));
    knit.ws("p*8");
    EXPECT_EQ(linesOf(knit, silent())[1], "Row 2 and all following WS rows: purl.");
    // The section goes on with another row: the last of them is named.
    knit.rs("k*6 yo k2tog");
    EXPECT_EQ(linesOf(knit, silent())[1], "Row 2 and all WS rows to Row 8: purl.");
}

// In words that count from the last turn every two rows of a wedge are the same, painted out or not.
TEST(Gather, NoRowIsToldTwice)
{
    Knit knit = knitting(12);
    for (const char* row : {"k*2 yo k2tog k*8", "k*3 yo k2tog k*7", "k*4 yo k2tog k*6", "k*5 yo k2tog k*5", "k*6 yo k2tog k*4"})
        knit.rs(row).ws("k*12");
    knit.rs("k*12").ws("p*12"); // Rows 10 and 11 are a run
    const Lines lines = linesOf(knit, silent());
    EXPECT_EQ(lines[1], "Row 2 and all WS rows to Row 8: knit.");
    EXPECT_EQ(std::count_if(lines.begin(), lines.end(), [](const std::string& line) { return line.find("10") != line.npos; }), 1);
    readsBack(knit);
}

TEST(Gather, AWedgePaintedOutThatTurnsEarlierEachTime)
{
    Knit knit = knitting(60);
    knit.rs("k*57 turn").ws("[ k ]end");
    for (int n = 0; n < 18; ++n)
        knit.rs("[ k ]turn-3 turn").ws("[ k ]end");
    Lines lines = linesOf(knit, silent());
    lines.erase(lines.begin());
    EXPECT_EQ(lines, (Lines{"Rows 2 and 4 (WS): knit.", "Row 3 (RS): k to 3 sts before last turn, turn.",
                            "Rep Rows 3-4 seventeen more times."}));
}

TEST(Gather, LabelsOfRowsBehindStayTrue)
{
    Knit knit = knitting(6);
    for (int n = 0; n < 10; ++n)
        knit.rs("k yo k2tog k*3").ws("p*6").rs("k*6").ws("k*6");
    knit.rs("p*6");
    EXPECT_EQ(linesOf(knit, silent()),
              (Lines{"Row 1 (RS): k1, yo, k2tog, k3.", "Row 2 (WS): purl.", "Rows 3 and 4: knit.",
                     "Rep Rows 1-4 nine more times.", "Row 41 (RS): purl."}));
}

// Stripes laid over rows that are still empty.
TEST(Gather, RowsNotDrawnYetAreNoRepeat)
{
    Knit knit(6);
    knit.rs("k*6").ws("k*6");
    for (int n = 0; n < 3; ++n)
        knit.rs(". .", "CC").ws(". .", "CC").rs(". .", "MC").ws(". .", "MC");
    for (const std::string& line : linesOf(knit, silent())) {
        EXPECT_EQ(line.find("Rep Rows"), std::string::npos) << line;
        EXPECT_EQ(line.find("no sts worked"), std::string::npos) << line;
    }
}

TEST(Gather, RepeatsWithinRepeats)
{
    Knit knit = knitting(6);
    for (int outer = 0; outer < 3; ++outer) {
        for (int inner = 0; inner < 4; ++inner)
            knit.rs("k yo k2tog k*3").ws("p*2 yo p2tog p*2");
        knit.rs("p*6").ws("p*3 p2tog yo p");
    }
    EXPECT_EQ(linesOf(knit, silent()),
              (Lines{"Row 1 (RS): k1, yo, k2tog, k3.", "Row 2 (WS): p2, yo, p2tog, p2.",
                     "Rep Rows 1-2 three more times.", "Row 9 (RS): purl.", "Row 10 (WS): p3, p2tog, yo, p1.",
                     "Rep Rows 1-10 (repeats included) two more times."}));
}

TEST(Gather, CountsStaySaid)
{
    Knit knit = knitting(4);
    for (int n = 0; n < 5; ++n)
        knit.rs("k yo [ k ]end-1 yo k").ws("[ p ]end");
    EXPECT_EQ(linesOf(knit), (Lines{"Row 1 (RS): k1, yo, k to last st, yo, k1. (2 sts inc)",
                                    "Row 2 (WS): purl.", "Rep Rows 1-2 four more times. (14 sts)"}));
    Knit run = knitting(4);
    run.rs("k yo [ k ]end").ws("k yo [ k ]end").rs("k yo [ k ]end").ws("p*7");
    EXPECT_EQ(linesOf(run), (Lines{"Rows 1-3 (RS first): k1, yo, k to end. (1 st inc each row)",
                                   "You have 7 sts.", "Row 4 (WS): purl."}));
}

TEST(Gather, NotesStatedCountsAndTypedLabelsAreNotSwallowed)
{
    Knit knit = knitting(4);
    knit.rs("k*4").ws("p*4").rs("k*4").ws("p*4");
    changeLast(knit, [](Row& row) { row.note = "Try it on."; });
    knit.rs("k*4").ws("p*4");
    changeLast(knit, [](Row& row) { row.stated = Quantity(4); });
    knit.rs("k*4").ws("p*4");
    changeLast(knit, [](Row& row) { row.label = "20"; });
    std::string text;
    Style style;
    style.counts = CountsShown::Always;
    for (const std::string& line : linesOf(knit, style))
        text += line + "\n";
    EXPECT_NE(text.find("Try it on."), std::string::npos) << text;
    EXPECT_NE(text.find("Row 20 (WS): purl."), std::string::npos) << text;
    EXPECT_EQ(text.find("Rep"), std::string::npos) << text;
}

TEST(Gather, TheDesignersRowRepeatsStay)
{
    Knit knit = knitting(4);
    knit.rs("k*4").ws("p*4").times(2, 3).rs("k*4").ws("p*4").times(2, 3);
    Lines lines = linesOf(knit, silent());
    EXPECT_EQ(std::count(lines.begin(), lines.end(), "Rep Rows 1-2 two more times."), 1);
    for (const WrittenLine& line : gatheredLines(knit, silent()))
        if (line.kind == WrittenLine::Kind::Repeat && line.rows.empty()) {
            EXPECT_EQ(line.lastRow - line.firstRow, 1);
        }
}

TEST(Gather, EveryRowFindsItsLine)
{
    Knit knit = knitting(6);
    for (int n = 0; n < 4; ++n)
        knit.rs("k yo k2tog k*3").ws("p*6").rs("k*3 k2tog yo k").ws("p*6");
    const auto lines = gatheredLines(knit, silent());
    for (int row = 0; row < 16; ++row) {
        const int at = lineTelling(lines, row);
        ASSERT_GE(at, 0);
        EXPECT_EQ(lines[static_cast<std::size_t>(at)].firstRow, row % 2 == 1 ? 1 : row % 4) << row;
    }
    EXPECT_EQ(lineTelling(lines, 16), -1);
    EXPECT_EQ(lines.back().kind, WrittenLine::Kind::Repeat);
    EXPECT_EQ(lines.back().rows.size(), 12u);
}

TEST(Gather, WhatTheKnitterHasAtTheEnd)
{
    Knit knit = knitting(6);
    knit.rs("k*6").ws("k*6").rs("k2tog k*4").ws("p*5").rs("k*5").ws("k*5").rs("k2tog k*3").ws("k*4");
    EXPECT_EQ(linesOf(knit).back(), "You have 3 garter ridges.");
    EXPECT_EQ(linesOf(knit, silent()).back(), "Row 8 (WS): knit.");
}

TEST(Gather, ARowBehindOneThatBindsOffIsTold)
{
    Knit knit = knitting(11);
    knit.rs("yo2 turn:ds").ws("pfb bindoff").times(2, 4).rs("kfb bindoff").ws("pfb bindoff");
    const Lines lines = linesOf(knit, silent());
    EXPECT_TRUE(lines.back().starts_with("Row 4 (WS):")) << lines.back();
    readsBack(knit);
}

TEST(Gather, RidgesOfEachYarn)
{
    Knit knit(6);
    knit.rs("k*6").ws("k*6").rs("join k*6", "CC").ws("k*6", "CC").rs("k*6").ws("k*5 yo k");
    EXPECT_EQ(linesOf(knit).back(), "You have 2 garter ridges in MC and 1 in CC.");
    knit.ws("k*6");
    readsBack(knit);
}

TEST(Gather, RowByRowWhereTheStyleAsksForIt)
{
    Knit knit = knitting(4);
    knit.rs("k*4").ws("k*4").rs("k*4").ws("k*4");
    Style style = silent();
    style.gathering = Gathering::RowByRow;
    EXPECT_EQ(linesOf(knit, style).size(), 4u);
}

TEST(Gather, FormsOfLabels)
{
    Knit knit = knitting(8);
    knit.rs("k*8")
        .ws("p*8")
        .rs("k*2 yo k2tog k*4")
        .ws("p*8")
        .rs("k*4 yo k2tog k*2")
        .ws("p*8")
        .rs("k*8")
        .ws("k*8");
    struct Case {
        LabelForm form;
        SidesShown sides;
        Lines labels;
    };
    const Case cases[] = {
        {LabelForm::FullStop,
         SidesShown::EveryRow,
         {"Row 1 (RS).", "Rows 2, 4 and 6 (WS).", "Row 3 (RS).", "Row 5 (RS).", "Rows 7 and 8."}},
        {LabelForm::Short,
         SidesShown::WhereDoubtful,
         {"R1 (RS):", "R2, 4 and 6 (WS):", "R3:", "R5:", "R7 and 8:"}},
        {LabelForm::Ordinal,
         SidesShown::Never,
         {"1st row:", "2nd, 4th and 6th rows:", "3rd row:", "5th row:", "7th and 8th rows:"}}};
    for (const Case& one : cases) {
        Style style = silent();
        style.labels = one.form;
        style.sides = one.sides;
        Lines labels;
        for (const WrittenLine& line : gatheredLines(knit, style))
            labels.push_back(line.label);
        EXPECT_EQ(labels, one.labels);
    }
}

TEST(Gather, AWrongNumberAtTheEndIsFoundWhenRead)
{
    Knit knit(4);
    const ReadText right =
        readText("Cast on 4 sts with MC.\n\nRow 1 (RS): knit.\nYou have 4 sts.\n", knit.catalogue());
    EXPECT_TRUE(right.notes.empty());
    const ReadText wrong =
        readText("Cast on 4 sts with MC.\n\nRow 1 (RS): knit.\nYou have 5 sts.\n", knit.catalogue());
    ASSERT_EQ(wrong.notes.size(), 1u);
    EXPECT_EQ(wrong.notes[0].weight, ReadingNote::Weight::Warning);
    EXPECT_EQ(wrong.notes[0].at.line, 4);
    EXPECT_EQ(wrong.rowsNot, 0);
}
