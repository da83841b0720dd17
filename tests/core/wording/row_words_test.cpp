#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

#include <set>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Case {
    const char* row; // in the notation of tests/support/knit.h
    int castOn;
    const char* text;
};

const Case rightSide[] = {
    // Runs: Interweave, Pattern Play, for commas; [ ] n times: Remade by Hand.
    {"k*3 yo k2tog k", 6, "k3, yo, k2tog, k1."},
    {"k p k p*2", 5, "k1, p1, k1, p2."},
    {"sl1*3 k*2", 5, "sl3, k2."},
    {"sl_wyif*2 sl_wyib k", 4, "sl2 wyif, sl1 wyib, k1."},
    {"k_tbl k_tbl k", 3, "k2 tbl, k1."},
    {"k2tog*4", 8, "[k2tog] 4 times."},
    {"k2tog*2", 4, "[k2tog] twice."},
    {"k yo*4 k", 2, "k1, yo 4 times, k1."}, // four loops at one place
    {"k yo*2 k", 2, "k1, yo, yo, k1."},     // "yo twice" is one stitch
    {"brk*2 brp", 3, "brk2, brp1."},
    {"k1b*2", 2, "[k1b] twice."},
    {"kfb k", 2, "kfb, k1."},
    {"ds_close_k*2 k", 3, "[k DS] twice, k1."},
    {"k . . k . k", 3, "knit."}, // no-stitch cells: Anni's Knitting Blog
    {"k . yo . . k2tog", 3, "k1, yo, k2tog."},
    // Yarn overs: loops at one place, and single ones side by side.
    {"k yo2 k", 2, "k1, yo twice, k1."},
    {"k yo3 k", 2, "k1, yo 3 times, k1."},
    {"k yo yo k", 2, "k1, yo, yo, k1."},
    {"k yo2*2 k", 2, "k1, [yo twice] twice, k1."},
    {"co*3 k*2", 2, "co 3, k2."},
    {"k pu*2 k", 2, "k1, pu 2, k1."},
    // Whole rows.
    {"k*12", 12, "knit."},
    {"p*12", 12, "purl."},
    {"k*12", 14, "k12."}, // two are left over: that row isn't "knit"
    {"k*12", 10, "k12."}, // two too few
    {"k2tog*6", 12, "[k2tog] 6 times."},
    {"[ k ]end", 9, "knit."},
    {"[ p ]end", 9, "purl."},
    {"[ k ]*9", 9, "k9."},
    // Binding off: the stitch that stays on the right needle is not among the next run.
    {"bo*5 k*12", 17, "bo 5, k11."},
    {"bo*5 p*3 k", 9, "bo 5, p2, k1."},
    {"bo*5 k yo k2tog", 8, "bo 5 (st on right needle counts as next st), k1, yo, k2tog."},
    {"bo*5 k2tog k", 8, "bo 5 (st on right needle counts as next st), k2tog, k1."},
    {"bo*5 [ k yo k ]end", 9, "bo 5 (st on right needle counts as next st), *k1, yo, k1; rep from * to end."},
    {"bo*5 [ k ]end-2 p*2", 12, "bo 5, k to last 2 sts, p2."},
    {"k*4 bo*5", 9, "k4, bo 5."},
    {"bo*5 turn", 9, "bo 5, turn, leaving 4 sts unworked."},
    {"bo*5 bo*2 k*3", 10, "bo 7, k2."},
    {"[ k*2 bo*2 ]*2 k", 9, "[k2, bo 2 (st on right needle counts as next st)] twice, k1."},
    {"[ bo ]end-3 k*3", 9, "bo to last 3 sts (st on right needle counts as next st), k3."},
    // Stitch repeats.
    {"k [ yo k2tog ]*4 k", 10, "k1, [yo, k2tog] 4 times, k1."},
    {"k [ yo k2tog ]*2 k", 6, "k1, [yo, k2tog] twice, k1."},
    {"k [ yo k2tog ]*1 k", 4, "k1, yo, k2tog, k1."},
    {"k [ yo k2tog ]end-1 k", 10, "k1, *yo, k2tog; rep from * to last st, k1."},
    {"k [ yo k2tog ]end-5 k*5", 12, "k1, *yo, k2tog; rep from * to last 5 sts, k5."},
    {"[ yo k2tog ]end", 10, "*yo, k2tog; rep from * to end."},
    {"k*2 [ k ]end-5 k2tog k*3", 12, "k to last 5 sts, k2tog, k3."},
    {"k [ p ]end-1 k", 8, "k1, p to last st, k1."},
    {"[ sl_wyif ]end-1 k", 8, "sl wyif to last st, k1."},
    {"[ k_tbl ]end-2 k*2", 8, "k tbl to last 2 sts, k2."},
    {"[ k2tog ]end", 8, "*k2tog; rep from * to end."},
    {"[ k*2 ]end", 8, "*k2; rep from * to end."},
    {"[ k2tog ]*3", 6, "[k2tog] 3 times."},
    // Boxes in boxes: [ ] outside, ( ) inside (Remade by Hand; how-to-make69).
    {"[ k [ yo ]*3 k2tog ]*2", 6, "[k1, (yo) 3 times, k2tog] twice."},
    {"[ [ yo k2tog ]*2 k ]*2", 10, "[(yo, k2tog) twice, k1] twice."},
    {"[ [ [ yo k2tog ]*2 k ]*2 p ]*2", 22, "[([yo, k2tog] twice, k1) twice, p1] twice."},
    {"k2tog [ [ yo k2tog ]*2 k ]end", 12, "k2tog, *[yo, k2tog] twice, k1; rep from * to end."},
    {"[ k2tog*2 k ]*2", 10, "[(k2tog) twice, k1] twice."},
    // Turns: b8 of the trade's forms; "leaving 6 sts unworked" as in handbook wool-bootee-instep (1918).
    {"k*12 turn", 18, "k12, turn, leaving 6 sts unworked."},
    {"k*12 turn", 13, "k12, turn, leaving 1 st unworked."},
    {"[ k ]end-6 turn", 18, "k to last 6 sts, turn."},
    {"k*12 turn:wt", 18, "k12, w&t, leaving 6 sts unworked."},
    {"k*12 turn:ds", 18, "k12, turn for DS, leaving 6 sts unworked."},
    {"k*12 turn:yo", 18, "k12, turn, yo, leaving 6 sts unworked."},
    {"k*12 turn:pin", 18, "k12, turn, pin yarn, leaving 6 sts unworked."},
    {"k*12 turn:twin", 18, "k12, make twin st, turn, leaving 6 sts unworked."},
    {"k*12 turn", 12, "k12, turn."},
    // Starts and finishes.
    {"slip:6 k*4", 10, "Slip first 6 sts to right needle, k to end."},
    {"slip:6 k p k*2", 10, "Slip first 6 sts to right needle, k1, p1, k2."},
    {"slip:1 k*4", 5, "Slip first st to right needle, k to end."},
    {"edge k*4", 4, "Move all sts to left needle, knit."},
    {"k*4 slide", 4, "knit, slide."},
    {"k*2 p*2 slide", 4, "k2, p2, slide."},
    {"k*4 break", 4, "knit. Break MC."},
    {"k*2 turn break", 4, "k2, turn, leaving 2 sts unworked. Break MC."},
    {"bindoff", 9, "bind off all sts."},
    {"k*2 bindoff", 9, "k2, bind off rem sts."},
    {"bindoff break", 9, "bind off all sts. Break MC."},
    {"join k*2 p*2", 4, "Join MC, k2, p2."},
    {". . .", 0, "not drawn yet."},
    {". . turn", 4, "turn."},
};

const Case wrongSide[] = {
    {"k*12", 12, "knit."},
    {"p*12", 12, "purl."},
    {"k*2 p2tog yo p", 5, "k2, p2tog, yo, p1."},
    {"p [ yo p2tog ]end-2 p*2", 9, "p1, *yo, p2tog; rep from * to last 2 sts, p2."},
    {"p [ yo p2tog ]*3 p*2", 9, "p1, [yo, p2tog] 3 times, p2."},
    {"k*4 turn", 12, "k4, turn, leaving 8 sts unworked."},
    {"bo*5 p*7", 12, "bo 5, p6."},
    {"slip:2 k p", 4, "Slip first 2 sts to right needle, k1, p1."},
    {"k*2 bindoff", 9, "k2, bind off rem sts."},
    {"sl_wyib k", 2, "sl1 wyif, k1."},
};

} // namespace

TEST(RowWords, RightSide)
{
    for (const Case& c : rightSide)
        EXPECT_EQ(textOf(Side::RS, c.row, c.castOn), c.text) << c.row;
}

TEST(RowWords, WrongSide)
{
    for (const Case& c : wrongSide)
        EXPECT_EQ(textOf(Side::WS, c.row, c.castOn), c.text) << c.row;
}

TEST(RowWords, TwoStarredRepeatsHaveTwoMarks) // Yours UK shawl (2017): * before the marker and ** after it
{
    Knit knit(12);
    knit.rs("k*6 |A k*6").ws("p*12").rs("[ yo k2tog ]A [ k2tog yo ]end");
    EXPECT_EQ(textOf(knit, 2), "*yo, k2tog; rep from * to marker, sm, **k2tog, yo; rep from ** to end.");
}

TEST(RowWords, AThirdRepeatIsInBrackets)
{
    Knit knit(12);
    knit.rs("k*4 |A k*4 |B k*4").rs("[ yo k2tog ]A [ k2tog yo ]B [ ssk yo ]end");
    EXPECT_EQ(textOf(knit, 1),
              "*yo, k2tog; rep from * to marker A, sm A, **k2tog, yo; rep from ** to marker B, sm B, "
              "rep [ssk, yo] to end.");
}

TEST(RowWords, ARepeatToAPlaceWithinARepeatIsInBrackets)
{
    Knit knit(12);
    knit.rs("k*4 |A k*8").rs("[ [ yo k2tog ]A k*8 ]*1");
    EXPECT_EQ(textOf(knit, 1), "*yo, k2tog; rep from * to marker, sm, k8.");
    Knit twice(12);
    twice.rs("[ k [ ssk yo ]end-4 k*3 ]end");
    EXPECT_EQ(textOf(twice), "With MC, *k1, rep [ssk, yo] to last 4 sts, k3; rep from * to end.");
    Knit bracketed(12);
    bracketed.rs("[ k [ ssk yo ]end-4 k*3 ]*1").rs("[ k*2 [ ssk yo ]end-4 ]*2");
    EXPECT_EQ(textOf(bracketed, 1), "[k2, rep (ssk, yo) to last 4 sts] twice.");
}

TEST(RowWords, BracketsWhereTheStyleAsksForThem)
{
    Style style;
    style.repeats = RepeatForm::Bracket;
    EXPECT_EQ(textOf(Side::RS, "k [ yo k2tog ]end-5 k*5", 12, style),
              "k1, rep [yo, k2tog] to last 5 sts, k5.");
    EXPECT_EQ(textOf(Side::RS, "[ [ yo k2tog ]*2 k ]end", 10, style), "rep [(yo, k2tog) twice, k1] to end.");
    EXPECT_EQ(textOf(Side::RS, "k*2 [ p ]end-2 k*2", 10, style), "k2, p to last 2 sts, k2.");
}

TEST(RowWords, PlacesOnTheNeedle)
{
    Knit knit(20);
    knit.rs("k*12 |A k*8")
        .ws("[ k ]A-4 turn")
        .rs("[ k ]A-1 k2tog [ k ]end")
        .ws("[ k ]turn-2 turn")
        .rs("[ k ]end");
    EXPECT_EQ(textOf(knit, 1), "k to 4 sts before marker, turn.");
    EXPECT_EQ(textOf(knit, 3), "k to 2 sts before last turn, turn.");
    Knit turns(20);
    turns.rs("k*16 turn")
        .ws("k*12 turn")
        .rs("[ k ]turn turn")
        .ws("[ k ]turn-1 turn")
        .rs("[ yo k2tog ]turn-2 turn");
    EXPECT_EQ(textOf(turns, 1), "k12, turn, leaving 4 sts unworked.");
    EXPECT_EQ(textOf(turns, 2), "k to last turn, turn.");
    EXPECT_EQ(textOf(turns, 3), "k to 1 st before last turn, turn.");
    EXPECT_EQ(textOf(turns, 4), "*yo, k2tog; rep from * to 2 sts before last turn, turn.");
}

// Interweave, German Short-Rows: a double stitch is one stitch; the words say that it counts.
TEST(RowWords, ADoubleStitchBeforeTheTurnIsCounted)
{
    Knit knit(20);
    knit.rs("k*16 turn:ds").ws("ds k*10 turn:ds").rs("ds [ k ]turn-3 turn:ds");
    EXPECT_EQ(textOf(knit, 1), "DS, k10, turn for DS, leaving 5 sts unworked.");
    EXPECT_EQ(textOf(knit, 2), "DS, k to 3 sts before last turn (counting the DS), turn for DS.");
    Knit wrapped(20);
    wrapped.rs("k*16 turn:wt").ws("k*10 turn:wt").rs("[ k ]turn-3 turn:wt");
    EXPECT_EQ(textOf(wrapped, 2), "k to 3 sts before last turn, w&t.");
}

TEST(RowWords, EveryTurnStartAndFinishHasWordsOfItsOwn)
{
    std::set<std::string> texts;
    const char* rows[] = {"k*4",           "k*4 turn",        "k*4 turn:wt",  "k*4 turn:ds", "k*4 turn:yo",
                          "k*4 turn:pin",  "k*4 turn:twin",   "k*4 slide",    "k*4 bindoff", "k*4 break",
                          "edge k*4 turn", "slip:2 k*4 turn", "join k*4 turn"};
    for (const char* row : rows)
        EXPECT_TRUE(texts.insert(textOf(Side::RS, row, 8)).second) << row << ": " << textOf(Side::RS, row, 8);
}

TEST(RowWords, RoundsAreLabelledSo) // Frasier Knits: round or row must match the knitting
{
    Knit knit(4);
    knit.rs("k*4 round").rs("k*4 round").rs("bindoff");
    const auto rows = written(knit);
    EXPECT_EQ(rows[0].label, "Rnd 1:");
    EXPECT_EQ(rows[1].label, "Rnd 2:");
    EXPECT_EQ(rows[2].label, "Rnd 3:");
    EXPECT_EQ(rows[2].text, "bind off all sts.");
}

TEST(RowWords, LabelsSayTheSide)
{
    Knit knit(4);
    knit.rs("k*4 slide").rs("p*4").ws("k*4").rs("k*4");
    changeLast(knit, [](Row& row) { row.label = "7x"; });
    const auto rows = written(knit);
    EXPECT_EQ(rows[0].label, "Row 1a (RS):");
    EXPECT_EQ(rows[1].label, "Row 1b (RS):");
    EXPECT_EQ(rows[2].label, "Row 2 (WS):");
    EXPECT_EQ(rows[3].label, "Row 7x (RS):");
}

TEST(RowWords, YarnIsNamedWhereItChanges)
{
    Knit knit(4);
    knit.rs("k*4").ws("p*4").rs("join k*4", "CC").ws("k p k p", "CC").rs("k*4").ws("k*4", "CC");
    const auto rows = written(knit);
    EXPECT_EQ(rows[0].text, "With MC, knit.");
    EXPECT_EQ(rows[1].text, "purl.");
    EXPECT_EQ(rows[2].text, "Join CC, knit.");
    EXPECT_EQ(rows[3].text, "k1, p1, k1, p1.");
    EXPECT_EQ(rows[4].text, "With MC, knit.");
    EXPECT_EQ(rows[5].text, "With CC, knit.");
}

TEST(RowWords, AYarnThatComesBackInARowRepeatIsNamedOnItsFirstRow)
{
    Knit knit(4);
    knit.rs("k*4").ws("p*4").rs("k*4").ws("k*4", "CC").times(2, 3);
    EXPECT_EQ(textOf(knit, 2), "With MC, knit."); // the first time it is MC still, later the row before is CC
}

TEST(RowWords, YarnJoinedWhereTheNeedleIsEnteredMidway)
{
    Knit knit(10);
    knit.rs("k*10").rs("slip:6 join k*4", "CC");
    EXPECT_EQ(textOf(knit, 1), "Slip first 6 sts to right needle, join CC, k to end.");
}

TEST(RowWords, ACellMayNameItsYarn)
{
    Knit knit(7);
    knit.rs("k*3 k*2 k2tog");
    changeLast(knit, [](Row& row) {
        row.cells[3].yarn = row.cells[4].yarn = row.cells[5].yarn = YarnId{2};
        row.cells[0].yarn = YarnId{1}; // the row's own, said outright
    });
    EXPECT_EQ(textOf(knit), "With MC, k3, k2 in CC, k2tog in CC.");
    Knit all(3);
    all.rs("[ k ]end");
    changeLast(all, [](Row& row) { row.cells[0].yarn = YarnId{2}; });
    EXPECT_EQ(textOf(all), "With MC, k in CC to end.");
    Knit group(4);
    group.rs("[ k k ]*2");
    changeLast(group, [](Row& row) { row.cells[0].yarn = YarnId{2}; });
    EXPECT_EQ(textOf(group), "With MC, [k1 in CC, k1] twice.");
    Knit runs(4);
    runs.rs("k2tog*2");
    changeLast(runs, [](Row& row) { row.cells[0].yarn = row.cells[1].yarn = YarnId{2}; });
    EXPECT_EQ(textOf(runs), "With MC, [k2tog in CC] twice.");
}

TEST(RowWords, OwnWordsStandAsTheyAre)
{
    Knit knit(4);
    knit.rs("k*4");
    changeLast(knit, [](Row& row) {
        row.words = "Knit round the corner";
        row.note = "Take it slowly.";
    });
    const auto rows = written(knit);
    EXPECT_EQ(rows[0].text, "Knit round the corner");
    EXPECT_EQ(toText(rows[0]), "Row 1 (RS): Knit round the corner Take it slowly.");
}

TEST(RowWords, TheNoteFollowsTheCount)
{
    Knit knit(4);
    knit.pattern().head.yarns.resize(1);
    knit.rs("k*2 yo k*2");
    changeLast(knit, [](Row& row) { row.note = "A hole has opened."; });
    EXPECT_EQ(toText(written(knit)[0]), "Row 1 (RS): k2, yo, k2. (5 sts) A hole has opened.");
}

TEST(RowWords, UnitedKingdom)
{
    Style uk;
    uk.words = Words::UK;
    EXPECT_EQ(textOf(Side::RS, "bindoff", 4, uk), "cast off all sts.");
    EXPECT_EQ(textOf(Side::RS, "bo*2 k*3", 5, uk), "cast off 2, k2.");
    EXPECT_EQ(textOf(Side::RS, "k yo skp", 3, uk), "k1, yfwd, skpo.");
    EXPECT_EQ(textOf(Side::RS, "sl_wyif*2 k", 3, uk), "[sl1p wyf] twice, k1.");
}

TEST(RowWords, SizesStandInParentheses) // Craft Star Studios; The Knitter (2018-04)
{
    Knit knit(10);
    Pattern& pattern = knit.pattern();
    pattern.head.yarns.resize(1);
    pattern.head.sizes = {"S", "M", "L"};
    knit.rs("k [ yo k2tog ]*4 k").rs("[ k ]*4 [ yo k2tog ]end-2 k*2").rs("slip:2 [ k2tog ]*2 [ k ]end");
    auto& boxes = pattern.sections[0].frame.boxes;
    boxes[0].times = Quantity(std::vector{4, 5, 6});
    boxes[1].times = Quantity(std::vector{4, 5, 6});
    boxes[2].leaving = Quantity(std::vector{2, 3, 4});
    boxes[3].times = Quantity(std::vector{2, 2, 2});
    changeLast(knit, [](Row& row) { row.start.slip = Quantity(std::vector{2, 4, 6}); });
    EXPECT_EQ(textOf(knit, 0), "k1, [yo, k2tog] 4 (5, 6) times, k1.");
    EXPECT_EQ(textOf(knit, 1), "k4 (5, 6), *yo, k2tog; rep from * to last 2 (3, 4) sts, k2.");
    EXPECT_EQ(textOf(knit, 2), "Slip first 2 (4, 6) sts to right needle, [k2tog] twice, k to end.");
    // What only one size was seen to do is not said for all.
    Knit plain(4);
    plain.pattern().head.sizes = {"S", "M"};
    plain.pattern().head.yarns.resize(1);
    plain.rs("k*4").ws("k*2 turn");
    EXPECT_EQ(textOf(plain, 0), "k4.");
    EXPECT_EQ(textOf(plain, 1), "k2, turn.");
}

TEST(RowWords, PhrasesKnowTheirColumns)
{
    Knit knit(9);
    knit.pattern().head.yarns.resize(1);
    knit.rs("k*2 . [ yo k2tog ]*3 k").ws("k*2 p*7");
    const auto rows = written(knit);
    const auto columns = [](const Phrase& phrase) {
        return std::pair(phrase.firstColumn, phrase.lastColumn);
    };
    ASSERT_EQ(rows[0].phrases.size(), 3u);
    EXPECT_EQ(columns(rows[0].phrases[0]), std::pair(1, 2));
    EXPECT_EQ(columns(rows[0].phrases[1]), std::pair(4, 5));
    EXPECT_EQ(columns(std::get<Group>(rows[0].phrases[1].is).inside[1]), std::pair(5, 5));
    EXPECT_EQ(columns(rows[0].phrases[2]), std::pair(6, 6));
    ASSERT_EQ(rows[1].phrases.size(), 2u);
    EXPECT_EQ(columns(rows[1].phrases[0]), std::pair(8, 9));
    EXPECT_EQ(columns(rows[1].phrases[1]), std::pair(1, 7));
}
