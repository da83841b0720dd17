// A mend that one click carries out takes its finding away.

#include "tests/support/knit.h"

#include "core/derived/mends.h"

#include <gtest/gtest.h>

#include <set>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::set<MendKind>& mended()
{
    static std::set<MendKind> kinds;
    return kinds;
}

// Mends the first finding that has a mend; the findings that then stand on their own.
std::vector<std::string> afterMending(Knit& knit, FindingKind kind)
{
    Pattern pattern = knit.done();
    const Ledger before = run(pattern, knit.catalogue());
    for (const Finding& finding : before.findings) {
        if (finding.kind != kind || finding.mend.kind == MendKind::None)
            continue;
        const Result<Edit> edit = mendEdit(pattern, knit.catalogue(), finding, {});
        if (!edit.ok())
            return {"fault: " + toText(edit.fault())};
        EXPECT_FALSE(edit.value().empty());
        EXPECT_FALSE(finding.mend.label.empty());
        apply(pattern, edit.value());
        mended().insert(finding.mend.kind);
        EXPECT_TRUE(faultsOf(pattern, knit.catalogue()).empty());
        return kinds(run(pattern, knit.catalogue()));
    }
    return {"no such mend; " + told(before, pattern)};
}

const std::vector<std::string> nothing;

} // namespace

TEST(Mends, EachTakesItsFindingAway)
{
    Knit hole(6);
    hole.rs("k*2 yo2 k2tog k*2").ws("p*7");
    EXPECT_EQ(afterMending(hole, FindingKind::DoubleYarnOverClosed), nothing);

    Knit hidden(6); // both loops purled on a row where the first is told
    hidden.rs("k*2 yo2 k2tog k*2").ws("k*7");
    EXPECT_EQ(afterMending(hidden, FindingKind::DoubleYarnOverClosed), nothing);

    Knit times(20);
    times.rs("k [ yo k*4 k2tog ]*4 k");
    EXPECT_EQ(afterMending(times, FindingKind::RepeatDoesNotFit), nothing);

    Knit join(8);
    join.rs("k*8").ws("k*8", "CC");
    EXPECT_EQ(afterMending(join, FindingKind::YarnNotJoined), nothing);

    Knit elsewhere(8);
    elsewhere.rs("k*8 slide").rs("k*8");
    EXPECT_EQ(afterMending(elsewhere, FindingKind::YarnElsewhere), nothing);

    Knit side(5);
    side.rs("k*5").rs("k*5");
    EXPECT_EQ(afterMending(side, FindingKind::SameSideTwice), nothing);

    Knit twoColours(5); // CC waits where a slide leads
    twoColours.rs("k*5 slide").rs("join k*5", "CC").ws("k*5").ws("k*5", "CC");
    EXPECT_EQ(afterMending(twoColours, FindingKind::SameSideTwice), nothing);

    Knit afterSlide(5);
    afterSlide.rs("k*5 slide").ws("join k*5", "CC");
    EXPECT_EQ(afterMending(afterSlide, FindingKind::SameSideTwice), nothing);

    Knit stated(5);
    stated.rs("k*4 kfb").stated(7);
    EXPECT_EQ(afterMending(stated, FindingKind::StatedCountDiffers), nothing);

    Knit drift(5);
    drift.rs("k*5").ws(". p*5").rs(". . k*5");
    EXPECT_EQ(afterMending(drift, FindingKind::RowDrifts), nothing);

    Knit swallowed(7);
    swallowed.rs("k*3 |A k*4").ws("p*7").rs("k*2 sk2p k*2");
    EXPECT_EQ(afterMending(swallowed, FindingKind::MarkerStraddled), nothing);

    Knit swallowedPast(7);
    swallowedPast.rs("k*3 |A k*4").ws("p*7").rs("k*2 . sk2p k*2");
    EXPECT_EQ(afterMending(swallowedPast, FindingKind::MarkerStraddled), nothing);

    Knit swallowedBack(7);
    swallowedBack.rs("k*3 |A k*4").ws("p*3 p3tog p");
    EXPECT_EQ(afterMending(swallowedBack, FindingKind::MarkerStraddled), nothing);

    Knit twice(6);
    twice.rs("k*3 |A k*3").ws("p*2 |A p*4");
    EXPECT_EQ(afterMending(twice, FindingKind::MarkerPlacedTwice), nothing);

    Knit gone(6);
    gone.rs("k*3 |A k*3").ws("p -A p*5");
    EXPECT_EQ(afterMending(gone, FindingKind::MarkerNotThere), nothing);

    Knit doubled(10);
    doubled.rs("k*6 turn:ds").ws("k*6").rs("k*10");
    EXPECT_EQ(afterMending(doubled, FindingKind::DoubleStitchMissing), nothing);

    Knit pair(6);
    pair.rs("k [ sl1yo k ]*2 k").ws("k k brp k k k");
    EXPECT_EQ(afterMending(pair, FindingKind::PairWorkedAsTwo), nothing);

    Knit again(8);
    again.rs("k*8").ws("k*8").rs("join k*8");
    EXPECT_EQ(afterMending(again, FindingKind::YarnJoinedAgain), nothing);

    Knit gap(5);
    gap.rs("k*5").ws("p*5").rs("k*5");
    Row row = *gap.pattern().sections[0].rows[2];
    row.label = "5";
    gap.pattern().sections[0].rows[2] = std::make_shared<const Row>(row);
    EXPECT_EQ(afterMending(gap, FindingKind::NumberingGap), nothing);

    for (const MendKind kind :
         {MendKind::ReplaceCell, MendKind::SetBoxTimes, MendKind::JoinYarn, MendKind::SetSide,
          MendKind::SetStated, MendKind::ShiftRow, MendKind::RemoveMarkerFirst, MendKind::DeleteMarkerMove,
          MendKind::SetLabel, MendKind::SlideBefore, MendKind::CarryYarn})
        EXPECT_TRUE(mended().contains(kind)) << static_cast<int>(kind);
}
