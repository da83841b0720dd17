// What is typed over the words of a row becomes the chart.

#include "tests/support/knit.h"

#include "core/derived/row_words.h"
#include "core/wording/writer/writer.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Typed {
    explicit Typed(Knit& knit) : catalogue(knit.catalogue()), pattern(knit.done()) {}

    bool type(int row, std::string_view text, BadRows bad = BadRows::RefuseAll)
    {
        const std::vector<Ledger> ledgers{run(pattern, catalogue.with(pattern.head.stitches))};
        RowsFromWords made = rowsFromWords(pattern, catalogue.with(pattern.head.stitches), ledgers, 0,
                                           pattern.sections[0].id, row, text, bad);
        notes = made.notes;
        leftOut = made.leftOut;
        if (!made.edit.ok()) {
            fault = made.edit.fault();
            return false;
        }
        before = pattern;
        takeBack = apply(pattern, made.edit.value()).takeBack;
        EXPECT_TRUE(faultsOf(pattern, catalogue.with(pattern.head.stitches)).empty());
        Pattern undone = pattern;
        apply(undone, takeBack);
        EXPECT_EQ(undone, before);
        return true;
    }
    std::string row(int at) const { return chart(pattern, at, catalogue.with(pattern.head.stitches)); }
    std::vector<int> counts() const { return afterEach(run(pattern, catalogue.with(pattern.head.stitches))); }

    Catalogue catalogue;
    Pattern pattern, before;
    Edit takeBack;
    Fault fault;
    std::vector<ReadingNote> notes;
    std::vector<Fault> leftOut;
};

} // namespace

TEST(RowWords, ChangeTheStitchesOfTheirRowOnly)
{
    Knit knit(9);
    knit.rs("k*9").ws("p*9");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(0, "k2, yo, k2tog, k to end."));
    EXPECT_EQ(desk.row(0), "k k yo k2tog k k k k k"); // painted out, as the row had no stitch repeat
    EXPECT_EQ(desk.row(1), "k k k k k k k k k");
    EXPECT_TRUE(desk.pattern.sections[0].frame.boxes.empty());
    EXPECT_EQ(desk.counts(), (std::vector<int>{9, 9}));
}

TEST(RowWords, MayBringTheLabelAndAreWorkedOnTheirOwnSide)
{
    Knit knit(6);
    knit.rs("k*6").ws("p*6");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(1, "Row 2 (WS): k2, p to last 2 sts, k2."));
    EXPECT_EQ(desk.row(1), "p p k k p p");
}

TEST(RowWords, StandOverTheLoopsTheyTakeUp)
{
    Knit knit(10);
    knit.rs("k*10").ws("p*10");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(1, "p4, turn."));
    EXPECT_EQ(desk.row(1), "- - - - - - k k k k"); // a WS row begins at the left edge
    EXPECT_EQ(desk.pattern.sections[0].rows[1]->finish.kind, FinishKind::TurnEarly);
}

TEST(RowWords, WidenTheChartWhereTheyNeedIt)
{
    Knit knit(4);
    knit.rs("k*4").ws("p*4");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(0, "k1, yo, k1, yo, k1, yo, k1"));
    EXPECT_EQ(desk.pattern.sections[0].frame.columns, 7);
    EXPECT_EQ(desk.counts().front(), 7);
}

TEST(RowWords, KeepARepeatThatTheChartHas)
{
    Knit knit(12);
    knit.rs("k*2 [ yo k2tog ]end-2 k*2").ws("p*12");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(0, "k2, *yo, ssk; rep from * to last 2 sts, k2"));
    ASSERT_EQ(desk.pattern.sections[0].frame.boxes.size(), 1u);
    EXPECT_EQ(desk.pattern.sections[0].frame.boxes[0].until, BoxUntil::RowEnd);
    EXPECT_EQ(desk.counts(), (std::vector<int>{12, 12}));
}

TEST(RowWords, ARepeatWorkedDifferentlyEachTimeStaysOne)
{
    Knit knit(6);
    knit.rs("k*3 kfb k*2").ws("p*7").times(2, 3); // 6, then 7, then 8 stitches
    Typed desk(knit);
    ASSERT_TRUE(desk.type(0, "k1, yo, k to end"));
    EXPECT_EQ(desk.pattern.sections[0].frame.boxes.size(), 1u);
    ASSERT_TRUE(desk.type(1, "p to end"));
    EXPECT_EQ(desk.counts(), (std::vector<int>{7, 7, 8, 8, 9, 9}));
}

TEST(RowWords, CutARepeatOverMoreRowsWhereTheyNoLongerSayIt)
{
    Knit knit(8);
    knit.rs("k*8").ws("p*8").rs("k*8");
    Pattern& pattern = knit.pattern();
    Box box;
    box.id = BoxId{1};
    box.firstRow = pattern.sections[0].rows[0]->id;
    box.lastRow = pattern.sections[0].rows[2]->id;
    box.firstColumn = 3;
    box.lastColumn = 4;
    box.times = 1;
    pattern.sections[0].frame.boxes.push_back(box);
    Typed desk(knit);
    ASSERT_TRUE(desk.type(1, "k8"));
    const Section& section = desk.pattern.sections[0];
    ASSERT_EQ(section.frame.boxes.size(), 2u);
    EXPECT_EQ(rowIndex(section, section.frame.boxes[0].lastRow), 0);
    EXPECT_EQ(rowIndex(section, section.frame.boxes[1].firstRow), 2);
    EXPECT_NE(section.frame.boxes[0].id, section.frame.boxes[1].id);
}

TEST(RowWords, BringNewMarkersYarnsAndStitches)
{
    Knit knit(8);
    knit.rs("k*8").ws("p*8");
    Typed desk(knit);
    const std::size_t yarns = desk.pattern.head.yarns.size();
    ASSERT_TRUE(desk.type(0, "Join CD, k4, pm, k4"));
    EXPECT_EQ(desk.pattern.head.yarns.size(), yarns + 1);
    EXPECT_EQ(desk.pattern.head.markers.size(), 1u);
    ASSERT_TRUE(desk.type(1, "p4, sm, [k1, p1, k1, p1, k1, p1, k1] in next st, p3"));
    EXPECT_EQ(desk.counts().back(), 14);
}

TEST(RowWords, WithAFaultChangeNothingAndSayWhere)
{
    Knit knit(8);
    knit.rs("k*8").ws("p*8");
    Typed desk(knit);
    const Pattern was = desk.pattern;
    EXPECT_FALSE(desk.type(0, "k2, blub, k5"));
    EXPECT_EQ(desk.pattern, was);
    EXPECT_EQ(desk.fault.at, (Place{1, 5})); // in the text as it was typed
    EXPECT_NE(desk.fault.message.find("blub"), std::string::npos);
    EXPECT_FALSE(desk.type(0, ""));
    EXPECT_FALSE(desk.type(0, "Lay the shawl flat."));
    EXPECT_EQ(desk.pattern, was);
}

TEST(RowWords, OfSeveralRowsFillTheRowsThatFollowAndAddWhatIsMissing)
{
    Knit knit(6);
    knit.rs("k*6").ws("p*6").rs("k*6");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(
        1, "Row 2 (WS): k6\nRow 3 (RS): k1, kfb, k to end\nRow 4: purl\nRow 5: k to last 2 sts, k2tog"));
    ASSERT_EQ(desk.pattern.sections[0].rows.size(), 5u);
    EXPECT_EQ(desk.counts(), (std::vector<int>{6, 6, 7, 7, 6}));
    EXPECT_EQ(desk.pattern.sections[0].rows[3]->side, Side::WS);
}

TEST(RowWords, ThatAreNotUnderstoodAreLeftOutWhereAsked)
{
    Knit knit(6);
    knit.rs("[ k ]*6").ws("[ p ]*6").rs("k*6").ws("p*6");
    Pattern start = knit.done();
    start.sections[0].frame.boxes = {start.sections[0].frame.boxes[0]};
    start.sections[0].frame.boxes[0].lastRow = start.sections[0].rows[1]->id; // one repeat over rows 1 and 2
    Knit same(6);
    Typed desk(same);
    desk.pattern = start;
    const std::string text = "Row 1 (RS): k1, yo, k2tog, k3.\nRow 2 (WS): flumm 6, p.\nRow 3 (RS): k3, ssk, yo, k1.";
    EXPECT_FALSE(desk.type(0, text));
    EXPECT_EQ(desk.fault.at.line, 2);
    EXPECT_EQ(desk.pattern, start);
    ASSERT_TRUE(desk.type(0, text, BadRows::LeaveOut));
    EXPECT_EQ(desk.row(0), "k yo k2tog k k k");
    EXPECT_EQ(desk.row(2), "k k k ssk yo k");
    EXPECT_EQ(desk.pattern.sections[0].rows[1], start.sections[0].rows[1]); // as it was
    ASSERT_EQ(desk.pattern.sections[0].frame.boxes.size(), 1u);             // its repeat stays on it
    EXPECT_EQ(desk.pattern.sections[0].frame.boxes[0].firstRow, start.sections[0].rows[1]->id);
    ASSERT_EQ(desk.leftOut.size(), 1u);
    EXPECT_EQ(desk.leftOut[0].at.line, 2);
    EXPECT_NE(toText(desk.leftOut[0]).find("flumm"), std::string::npos) << toText(desk.leftOut[0]);
    // Past the last row nothing is there to stay: its words are kept.
    ASSERT_TRUE(desk.type(3, "Row 4 (WS): p6.\nRow 5 (RS): flumm.\nRow 6 (WS): p6.", BadRows::LeaveOut));
    ASSERT_EQ(desk.pattern.sections[0].rows.size(), 6u);
    EXPECT_EQ(desk.pattern.sections[0].rows[4]->words, "flumm.");
    EXPECT_EQ(desk.row(4), "- - - - - -");
    EXPECT_EQ(desk.leftOut.size(), 1u);
    // Where none is understood nothing is changed.
    EXPECT_FALSE(desk.type(0, "Row 1 (RS): flumm.\nRow 2 (WS): flumm.", BadRows::LeaveOut));
}

TEST(RowWords, OfTheOtherSideAreRefused)
{
    Knit knit(6);
    knit.rs("k*6").ws("p*6");
    Typed desk(knit);
    const Pattern was = desk.pattern;
    EXPECT_FALSE(desk.type(1, "Row 7 (RS): k2, yo, k4\nRow 8 (WS): purl"));
    EXPECT_NE(desk.fault.message.find("a WS row, the words for it tell an RS row"), std::string::npos);
    EXPECT_FALSE(desk.type(0, "Row 1 (RS): knit\nRow 2 (WS): gribble"));
    EXPECT_EQ(desk.fault.where, "the words");
    EXPECT_EQ(desk.fault.at, (Place{2, 13}));
    EXPECT_EQ(desk.pattern, was);
}

TEST(RowWords, RowsAreAddedAfterTheLast)
{
    Knit knit(6);
    knit.rs("k*6").ws("p*6");
    Typed desk(knit);
    ASSERT_TRUE(desk.type(2, "k2, k2tog, k2"));
    ASSERT_EQ(desk.pattern.sections[0].rows.size(), 3u);
    EXPECT_EQ(desk.pattern.sections[0].rows[2]->side, Side::RS);
    EXPECT_EQ(desk.counts().back(), 5);
}

TEST(RowWords, AsTheyAreTypedOverHaveStatedCountAndNote)
{
    Row row;
    EXPECT_EQ(wordsToEdit(row, "k8."), "k8.");
    row.stated = Quantity(std::vector<int>{8, 10, 12});
    row.note = "Mind the gap.";
    EXPECT_EQ(wordsToEdit(row, "k8."), "k8. (8 (10, 12) sts) Mind the gap.");
}

TEST(RowWords, TypedOverUnchangedChangeNothing)
{
    Knit knit(20);
    knit.rs("k*2 [ yo k2tog ]end-2 k*2")
        .ws("p*20")
        .rs("k*4 |A k*12 |B k*4")
        .ws("p*20")
        .rs("k*12 turn")
        .ws("p*12")
        .rs("k*2 yo k2tog k*16");
    Typed desk(knit);
    const Ledger ledger = run(desk.pattern, desk.catalogue);
    const auto written = writtenRows(desk.pattern, desk.catalogue, ledger, 0, Style{});
    for (const WrittenRow& row : written) {
        if (row.repeat)
            continue;
        const Pattern was = desk.pattern;
        ASSERT_TRUE(
            desk.type(row.firstRow,
                      wordsToEdit(*was.sections[0].rows[static_cast<std::size_t>(row.firstRow)], row.text)))
            << row.text << ": " << toText(desk.fault);
        EXPECT_EQ(desk.pattern, was) << row.text;
    }
}
