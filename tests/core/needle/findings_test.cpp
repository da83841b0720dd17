// Every kind of finding is provoked here or in the other tests of the needle; the last test sees to it.

#include "tests/support/knit.h"

#include "core/needle/findings/checks.h"

#include <gtest/gtest.h>

#include <set>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

using Kinds = std::vector<std::string>;

Finding only(const Ledger& ledger)
{
    EXPECT_EQ(ledger.findings.size(), 1u);
    return ledger.findings.empty() ? Finding() : ledger.findings.front();
}

} // namespace

TEST(Findings, TooFewAndLeftOverSayByHowMany)
{
    Knit few(10);
    few.rs("k*13");
    EXPECT_EQ(only(few.run()).kind, FindingKind::TooFewStitches);
    EXPECT_EQ(only(few.run()).message,
              "needs 13 stitches, 10 are there: 3 too few; take out stitches here or cast on 3 more");
    EXPECT_EQ(only(few.run()).column, 11);
    EXPECT_EQ(few.run().lines[0].after, 13); // goes on as if it had come out

    Knit later(10);
    later.rs("k*10").ws("k*13");
    EXPECT_EQ(only(later.run()).message,
              "needs 13 stitches, 10 are there: 3 too few; take out stitches here or add them in a row before");

    Knit over(10);
    over.rs("k*8");
    EXPECT_EQ(only(over.run()).kind, FindingKind::StitchesLeftOver);
    EXPECT_NE(only(over.run()).message.find("works 8 of 10 stitches: 2 are left over"), std::string::npos);
    EXPECT_EQ(over.run().lines[0].after, 8);
}

TEST(Findings, ARepeatThatDoesNotFitSaysHowOftenItWould)
{
    Knit counted(20);
    counted.rs("k [ yo k*4 k2tog ]*4 k");
    const Finding a = only(counted.run());
    EXPECT_EQ(a.kind, FindingKind::RepeatDoesNotFit);
    EXPECT_NE(a.message.find("needs 26 stitches"), std::string::npos);
    EXPECT_NE(a.message.find("it fits 3 times"), std::string::npos);
    EXPECT_EQ(a.mend.kind, MendKind::SetBoxTimes);
    EXPECT_EQ(a.mend.number, 3);

    Knit until(22);
    until.rs("k*2 [ yo k*3 k2tog ]end-2 k*2");
    const Finding b = only(until.run());
    EXPECT_EQ(b.kind, FindingKind::RepeatDoesNotFit);
    EXPECT_NE(b.message.find("it fits 3 times and 3 are left"), std::string::npos);

    Knit tooMuch(3);
    tooMuch.rs("[ [ [ [ yo k ]*10000 ]*10000 ]*10000 ]*10000 k*3");
    EXPECT_EQ(kinds(tooMuch.run()), Kinds{"too-many-stitches"});
}

TEST(Findings, OneFaultDoesNotDrownInItsConsequences)
{
    // Row 3 forgets a yarn over; row 5 is worked for what was meant. Row 5 trips, nothing after it does.
    Knit knit(9);
    knit.rs("k yo k2tog k*6").ws("p*9").rs("k*2 k2tog k*5").ws("[ p ]end").rs("k*9").ws("p*9").rs("k*9");
    const Ledger ledger = knit.run();
    EXPECT_EQ(kinds(ledger), Kinds{"too-few-stitches"});
    EXPECT_EQ(ledger.findings[0].row, 4);
    EXPECT_EQ(ledger.lines[5].restsOn, ledger.rows[4].ref->id);
    EXPECT_EQ(ledger.lines[3].restsOn, RowId{});

    // Row 1 asks for one too many; row 2 was counted on the real stitches: it only follows.
    Knit folded(9);
    folded.rs("k*10").ws("p*9").rs("k*9");
    const Ledger second = folded.run();
    ASSERT_EQ(second.findings.size(), 2u);
    EXPECT_EQ(second.findings[0].followsFrom, -1);
    EXPECT_EQ(second.findings[1].followsFrom, 0);
    EXPECT_EQ(second.lines[2].restsOn, RowId{});

    // Two faults of their own are two.
    Knit two(9);
    two.rs("k*10").ws("p*10").rs("k*12");
    EXPECT_EQ(kinds(two.run()), (Kinds{"too-few-stitches", "too-few-stitches"}));
}

TEST(Findings, ARowRepeatTellsItsFaultOnce)
{
    Knit knit(5);
    knit.rs("k*5 yo").ws("[ p ]end").times(2, 5);
    const Ledger ledger = knit.run();
    EXPECT_EQ(kinds(ledger), Kinds{"stitches-left-over"});
    EXPECT_EQ(ledger.findings.size(), 4u);
}

TEST(Findings, BothLoopsOfADoubleYarnOverAlike)
{
    Knit knit(6);
    knit.rs("k*2 yo2 k2tog k*2").ws("p*7");
    const Ledger ledger = knit.run();
    const Finding finding = only(ledger);
    EXPECT_EQ(finding.kind, FindingKind::DoubleYarnOverClosed);
    EXPECT_EQ(finding.column, 3);
    EXPECT_EQ(finding.mend.kind, MendKind::ReplaceCell);
    Knit well(6);
    well.rs("k*2 yo2 k2tog k*2").ws("p*3 p k p*2");
    EXPECT_EQ(kinds(well.run()), Kinds{}) << told(well.run(), well.pattern());
}

TEST(Findings, AColumnOfARibBrokenInOneRow)
{
    // As it was printed in Beeton's Book of Needlework (1870), no. 321, rows 6 to 9: row 7 purls the first two stitches of
    // each rib, which stand as knit in the rows below and above.
    const auto border = [](const char* row7) {
        Knit knit(12);
        knit.pattern().head.castOn.firstSide = Side::WS;
        knit.ws("[ k*2 p*4 ]*2").rs(row7).ws("[ k*2 p*5 ]*2").rs("[ k*2 yo k yo k*2 p*2 ]*2");
        return knit;
    };
    const Finding finding = only(border("[ p*2 yo k*2 p*2 ]*2").run());
    EXPECT_EQ(finding.kind, FindingKind::ColumnBroken);
    EXPECT_EQ(finding.severity, Severity::Note);
    EXPECT_EQ(finding.row, 1);
    EXPECT_EQ(finding.line, 1);
    EXPECT_EQ(finding.column, 1);
    EXPECT_NE(finding.message.find("4 stitches show purl on the RS"), std::string::npos) << finding.message;
    EXPECT_EQ(kinds(border("[ k*2 yo k*2 p*2 ]*2").run()), Kinds{}); // as the book must have meant

    Knit knitOverPurl(12); // the other way round
    knitOverPurl.rs("[ k*4 p*2 ]*2").ws("[ k p p*4 ]*2").rs("[ k*4 p*2 ]*2");
    EXPECT_EQ(only(knitOverPurl.run()).kind, FindingKind::ColumnBroken);

    Knit bumps(12); // on a plain ground they are meant
    bumps.rs("k*12").ws("[ k p*5 ]*2").rs("k*12");
    EXPECT_EQ(kinds(bumps.run()), Kinds{});

    Knit ridge(12); // a whole row of purl over a rib is a ridge
    ridge.rs("[ k*4 p*2 ]*2").ws("k*12").rs("[ k*4 p*2 ]*2");
    EXPECT_EQ(kinds(ridge.run()), Kinds{});

    const auto waves = [](int often) { // row after row: a pattern
        Knit knit(12);
        knit.rs("[ k*4 p*2 ]*2");
        for (int n = 0; n < often; ++n)
            knit.ws("[ k*2 k p*3 ]*2").rs("[ k*4 p*2 ]*2");
        return knit;
    };
    EXPECT_EQ(kinds(waves(1).run()), Kinds{"column-broken"});
    EXPECT_EQ(kinds(waves(2).run()), Kinds{});
}

TEST(Findings, YarnsThatHangElsewhere)
{
    Knit knit(8);
    knit.rs("k*8").ws("k*8", "CC");
    EXPECT_EQ(only(knit.run()).kind, FindingKind::YarnNotJoined);
    EXPECT_EQ(only(knit.run()).mend.kind, MendKind::JoinYarn);

    Knit elsewhere(8);
    elsewhere.rs("k*8 slide").rs("k*8");
    EXPECT_EQ(only(elsewhere.run()).kind, FindingKind::YarnElsewhere);
    EXPECT_NE(only(elsewhere.run()).message.find("MC hangs at the left edge"), std::string::npos);

    Knit slipped(8);
    slipped.rs("slip:3 k*5");
    EXPECT_EQ(only(slipped.run()).kind, FindingKind::YarnElsewhere);

    Knit carried(8); // stripes of two rows: each colour waits at the right edge
    carried.rs("k*8").ws("k*8").rs("join k*8", "CC").ws("k*8", "CC").rs("k*8").ws("k*8").rs("k*8", "CC");
    EXPECT_EQ(kinds(carried.run()), Kinds{});

    Knit again(8); // the yarn waits where the row starts
    again.rs("k*8").ws("k*8").rs("join k*8");
    EXPECT_EQ(only(again.run()).kind, FindingKind::YarnJoinedAgain);
    EXPECT_NE(only(again.run()).message.find("joins MC, which hangs here already, at the right edge"), std::string::npos);
    Knit anew(8); // after breaking it, or at the other end, joining is due
    anew.rs("k*8").ws("k*8 break").rs("join k*8 slide").rs("join k*8");
    EXPECT_EQ(kinds(anew.run()), Kinds{}) << told(anew.run(), anew.pattern());

    Knit broken(8);
    broken.rs("k*8").ws("k*8 break").rs("k*8");
    EXPECT_EQ(kinds(broken.run()), Kinds{"yarn-not-joined"});
}

TEST(Findings, BriochePairs)
{
    Knit asTwo(6);
    asTwo.rs("k [ sl1yo k ]*2 k").ws("k k2tog k brp k");
    EXPECT_EQ(kinds(asTwo.run()), Kinds{"pair-worked-as-two"});

    Knit noPair(4);
    noPair.rs("k*4").ws("k brp brp k");
    EXPECT_EQ(kinds(noPair.run()), (Kinds{"not-a-pair", "not-a-pair"}));

    Knit colour(4);
    colour.rs("k*4 slide").rs("join k sl1yo*2 k", "CC").ws("k brk*2 k", "CC");
    EXPECT_EQ(kinds(colour.run()), (Kinds{"wrong-colour-worked", "wrong-colour-worked"}));
}

TEST(Findings, RowsThatDrift)
{
    Knit knit(5);
    knit.rs("k*5").ws(". p*5").rs(". . k*5");
    const Ledger ledger = knit.run();
    // Knit pads at the left, so the wrong-side row stands in columns 1..5 and the last one two to the left.
    EXPECT_EQ(kinds(ledger), Kinds{"row-drifts"});
    EXPECT_EQ(ledger.findings[0].mend.kind, MendKind::ShiftRow);
    EXPECT_EQ(ledger.findings[0].mend.number, -2);
}

TEST(Findings, StatedCounts)
{
    Knit knit(5);
    knit.rs("k*4 kfb").stated(7);
    EXPECT_EQ(only(knit.run()).kind, FindingKind::StatedCountDiffers);
    EXPECT_EQ(only(knit.run()).mend.number, 6);
    Knit right(5);
    right.rs("k*4 kfb").stated(6);
    EXPECT_EQ(kinds(right.run()), Kinds{});
}

TEST(Findings, TwoRowsOnOneSideAndEmptyRowsAndNumbering)
{
    Knit knit(5);
    knit.rs("k*5").rs("k*5");
    EXPECT_EQ(kinds(knit.run()), (Kinds{"same-side-twice", "yarn-elsewhere"}));

    Knit afterSlide(5);
    afterSlide.rs("k*5 slide").ws("k*5");
    EXPECT_EQ(kinds(afterSlide.run()), Kinds{"same-side-twice"});

    Knit empty(5);
    empty.rs("k*5").ws(". .").rs(". .").ws("p*5");
    EXPECT_EQ(only(empty.run()).kind, FindingKind::EmptyRow);

    Knit oneSideFirst(5); // RS rows are drawn before WS rows
    oneSideFirst.rs("k*5").ws("").rs("k2tog k*3").ws("").rs("k*4");
    EXPECT_EQ(kinds(oneSideFirst.run()), (Kinds{"empty-row", "empty-row"}));
    EXPECT_EQ(afterEach(oneSideFirst.run()), (std::vector<int>{5, 5, 4, 4, 4}));

    Knit gap(5);
    gap.rs("k*5").ws("p*5").rs("k*5");
    Row row = *gap.pattern().sections[0].rows[2];
    row.label = "5";
    gap.pattern().sections[0].rows[2] = std::make_shared<const Row>(row);
    EXPECT_EQ(only(gap.run()).kind, FindingKind::NumberingGap);
    gap.pattern().sections[0].frame.brackets.push_back(
        {gap.pattern().sections[0].rows[0]->id, gap.pattern().sections[0].rows[1]->id, Quantity(2), {}});
    EXPECT_EQ(kinds(gap.run()), Kinds{}); // Rows 1-2 and again as 3-4
}

TEST(Findings, OfThePatternsOwnStitches)
{
    Knit knit(5);
    Stitch own;
    own.id = StitchId{firstOwnStitch};
    own.key = "own";
    own.onRS = own.onWS = "k2tog";
    knit.pattern().head.stitches.push_back(own);
    knit.rs("k*5");
    Row row = *knit.pattern().sections[0].rows[0];
    row.cells[2].stitch = own.id;
    knit.pattern().sections[0].rows[0] = std::make_shared<const Row>(row);
    const Pattern pattern = knit.done();
    const Catalogue catalogue = knit.catalogue().with(pattern.head.stitches);
    EXPECT_EQ(kinds(run(pattern, catalogue)), (Kinds{"not-in-key", "abbreviation-twice", "abbreviation-twice"}));
}

TEST(Findings, VersionsAndSizesThatDisagree)
{
    Knit knit(10);
    knit.pattern().head.versions = {"garter", "lace"};
    knit.section("Plain", {"garter"}).rs("k*10").ws("k*10");
    knit.section("Holes", {"lace"}).rs("k yo k*9").ws("k*11");
    knit.section("Edge").rs("[ k ]end").ws("[ k ]end");
    const Pattern pattern = knit.done();
    const std::vector<Ledger> ledgers{run(pattern, knit.catalogue(), {0, 0}), run(pattern, knit.catalogue(), {1, 0})};
    std::vector<Finding> findings;
    findVersionsDisagree(ledgers, pattern, findings);
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings[0].section, pattern.sections.back().id);
    EXPECT_NE(findings[0].message.find("the garter version has 10 stitches, the lace version 11"), std::string::npos);

    std::vector<Ledger> ofSizes;
    for (const RunChoice choice : {RunChoice{0, 0}, RunChoice{0, 1}, RunChoice{1, 0}, RunChoice{1, 1}}) {
        ofSizes.push_back(run(pattern, knit.catalogue(), {choice.version, 0}));
        ofSizes.back().choice.size = choice.size;
    }
    findings.clear();
    findVersionsDisagree(ofSizes, pattern, findings);
    EXPECT_EQ(findings.size(), 1u) << "the same numbers in both sizes are told once";

    Knit sized(10);
    sized.pattern().head.sizes = {"S", "L"};
    sized.pattern().head.castOn.stitches = Quantity(std::vector<int>{10, 12});
    sized.rs("k*10");
    const Pattern sizes = sized.done();
    const std::vector<Ledger> both{run(sizes, sized.catalogue(), {0, 0}), run(sizes, sized.catalogue(), {0, 1})};
    std::vector<Finding> found;
    findSizesDisagree(both, sizes, {0, 0}, found);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].message, "comes out in S, but not in L (there: " + both[1].findings.at(0).message + ")");
    EXPECT_NE(found[0].message.find("works 10 of 12 stitches"), std::string::npos) << found[0].message;
    found.clear();
    findSizesDisagree(both, sizes, {0, 1}, found);
    EXPECT_TRUE(found.empty()) << "the shown size has the finding itself";

    // A section that the shown version doesn't have is still told of.
    Pattern versions = sizes;
    versions.head.versions = {"A", "B"};
    versions.sections[0].frame.versions = {"A"};
    const std::vector<Ledger> four = runEvery(versions, sized.catalogue());
    for (const RunChoice shown : {RunChoice{1, 0}, RunChoice{1, 1}}) {
        found.clear();
        findSizesDisagree(four, versions, shown, found);
        ASSERT_EQ(found.size(), 1u);
        EXPECT_EQ(found[0].row, 0);
    }
}

TEST(Findings, MarkersOutsideOfTheChart)
{
    Knit knit(5);
    knit.rs("k*5");
    knit.pattern().head.markers.push_back({MarkerId{1}, "A"});
    Row row = *knit.pattern().sections[0].rows[0];
    row.moves.push_back({MarkerId{1}, 9, MoveKind::Place, MoveReach::Once});
    knit.pattern().sections[0].rows[0] = std::make_shared<const Row>(row);
    EXPECT_EQ(kinds(knit.run()), Kinds{"marker-outside"});
}

TEST(Findings, EachKindHasANameOfItsOwn)
{
    std::set<std::string_view> names;
    for (int kind = 0; kind < findingKinds; ++kind)
        names.insert(kindName(static_cast<FindingKind>(kind)));
    EXPECT_EQ(names.size(), static_cast<std::size_t>(findingKinds));
}
