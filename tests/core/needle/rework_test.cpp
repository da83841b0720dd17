// What is kept after an edit equals what a run from scratch gives, and costs a few rows.

#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

Pattern longPattern()
{
    Knit knit(40);
    for (int i = 0; i < 20; ++i)
        knit.rs("k*2 [ yo k2tog ]end-2 k*2").ws("[ p ]end");
    return knit.done();
}

void expectEqual(const Ledger& kept, const Ledger& scratch)
{
    EXPECT_TRUE(kept.before == scratch.before);
    EXPECT_TRUE(kept.lines == scratch.lines);
    EXPECT_TRUE(kept.findings == scratch.findings);
    EXPECT_EQ(kept.rows.size(), scratch.rows.size());
}

RowRef withCell(const RowRef& ref, std::size_t column, StitchId stitch)
{
    Row row = *ref;
    row.cells[column].stitch = stitch;
    return std::make_shared<const Row>(row);
}

} // namespace

TEST(Rework, AnEditedStitchCostsAFewRows)
{
    const Catalogue catalogue = Knit(1).catalogue();
    Pattern pattern = longPattern();
    Ledger ledger = run(pattern, catalogue);
    auto& rows = pattern.sections[0].rows;
    rows[10] = withCell(rows[10], 0, catalogue.require("p"));
    const Reworked worked = rework(ledger, pattern, catalogue, pattern.head);
    EXPECT_EQ(worked.first, 10);
    EXPECT_EQ(worked.last, 13); // a loop also knows what it was worked into
    expectEqual(ledger, run(pattern, catalogue));
}

TEST(Rework, ACountThatChangesGoesOnToTheEnd)
{
    const Catalogue catalogue = Knit(1).catalogue();
    Pattern pattern = longPattern();
    Ledger ledger = run(pattern, catalogue);
    auto& rows = pattern.sections[0].rows;
    rows[10] = withCell(rows[10], 0, catalogue.require("kfb"));
    rework(ledger, pattern, catalogue, pattern.head);
    expectEqual(ledger, run(pattern, catalogue));
}

TEST(Rework, AFaultCostsAFewRowsThoughAllCountsAfterItRestOnIt)
{
    // Rows with their stitches painted out go on as if the row had come out: their loops are what they were.
    Knit knit(8);
    for (int i = 0; i < 20; ++i)
        knit.rs("k*8").ws("p*8");
    Pattern pattern = knit.done();
    const Catalogue catalogue = knit.catalogue();
    Ledger ledger = run(pattern, catalogue);
    auto& rows = pattern.sections[0].rows;
    rows[10] = withCell(rows[10], 3, catalogue.require("kfb"));
    const Reworked worked = rework(ledger, pattern, catalogue, pattern.head);
    EXPECT_EQ(worked.first, 10);
    EXPECT_LE(worked.last, 14);
    EXPECT_EQ(ledger.lines.back().restsOn, rows[11]->id); // leaves one over
    expectEqual(ledger, run(pattern, catalogue));

    // A row that needs one more makes good the first: that one is to blame for both, and nothing rests on them after it.
    rows[30] = withCell(rows[30], 3, catalogue.require("k2tog"));
    rework(ledger, pattern, catalogue, pattern.head);
    EXPECT_TRUE(ledger.lines[30].makesGood);
    EXPECT_EQ(ledger.lines.back().restsOn, RowId{});
    expectEqual(ledger, run(pattern, catalogue));

    // The first one mended: the second stands on its own.
    rows[10] = withCell(rows[10], 3, catalogue.require("k"));
    EXPECT_LE(rework(ledger, pattern, catalogue, pattern.head).last, 14);
    EXPECT_FALSE(ledger.lines[30].makesGood);
    EXPECT_EQ(ledger.lines.back().restsOn, rows[30]->id);
    expectEqual(ledger, run(pattern, catalogue));
}

TEST(Rework, RowsInsertedDeletedAndAtTheEnds)
{
    const Catalogue catalogue = Knit(1).catalogue();
    for (const int at : {0, 10, 38}) {
        Pattern pattern = longPattern();
        Ledger ledger = run(pattern, catalogue);
        auto& rows = pattern.sections[0].rows;
        const std::vector<RowRef> two(rows.begin() + at, rows.begin() + at + 2);
        rows.erase(rows.begin() + at, rows.begin() + at + 2);
        rework(ledger, pattern, catalogue, pattern.head);
        expectEqual(ledger, run(pattern, catalogue));
        rows.insert(rows.begin() + at, two.begin(), two.end());
        rework(ledger, pattern, catalogue, pattern.head);
        expectEqual(ledger, run(pattern, catalogue));
        rows.clear();
        rework(ledger, pattern, catalogue, pattern.head);
        expectEqual(ledger, run(pattern, catalogue));
    }
}

TEST(Rework, TheCastOnChangesEverything)
{
    const Catalogue catalogue = Knit(1).catalogue();
    Pattern pattern = longPattern();
    Ledger ledger = run(pattern, catalogue);
    const PatternHead old = pattern.head;
    pattern.head.castOn.stitches = Quantity(44);
    EXPECT_TRUE(rework(ledger, pattern, catalogue, old).headChanged);
    expectEqual(ledger, run(pattern, catalogue));
}
