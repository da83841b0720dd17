// Two needles written apart from each other must agree.

#include "tests/laws/naive_needle.h"
#include "tests/support/knit.h"
#include "tests/support/random_pattern.h"

#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

const char* const twelve[] = {"k", "p", "yo", "yo2", "k2tog", "s2kp", "kfb", "kpk", "sl", "bo", "s2k3p", "sl1yo"};

// The keys of what a line left, in the order worked.
std::vector<std::string> madeBy(const Ledger& ledger, std::size_t line)
{
    const LedgerLine& at = ledger.lines[line];
    std::vector<std::string> keys;
    for (int i = at.restingRight; i < at.restingRight + at.worked; ++i)
        keys.push_back(builtInCatalogue().stitch(ledger.before[line + 1].loops[static_cast<std::size_t>(i)].stitch).key);
    if (at.side == Side::WS)
        std::reverse(keys.begin(), keys.end());
    return keys;
}

Pattern oneRow(const std::vector<StitchId>& stitches, Side side)
{
    Pattern pattern;
    pattern.head.yarns = {{YarnId{1}, "MC", "", 0, -1, 0, 0}};
    Row row;
    row.id = RowId{1};
    row.side = side;
    row.yarn = YarnId{1};
    int takes = 0;
    for (const StitchId id : stitches) {
        const Stitch& stitch = builtInCatalogue().stitch(id);
        takes += stitch.takesUp;
        for (int part = 0; part < stitch.width(); ++part)
            row.cells.push_back({id, {}, static_cast<std::uint8_t>(part)});
    }
    pattern.head.castOn = {Quantity(takes), YarnId{1}, "", side};
    Section section;
    section.id = SectionId{1};
    section.frame.columns = static_cast<int>(row.cells.size());
    section.rows.push_back(std::make_shared<const Row>(std::move(row)));
    pattern.sections.push_back(std::move(section));
    return pattern;
}

} // namespace

TEST(NeedlesAgree, OnEveryRowOfUpToFiveStitchesOfTwelve)
{
    std::vector<StitchId> ids;
    for (const char* key : twelve)
        ids.push_back(builtInCatalogue().require(key));
    int rows = 0;
    for (int length = 1; length <= 5; ++length) {
        std::vector<std::size_t> digits(static_cast<std::size_t>(length), 0);
        for (bool more = true; more;) {
            std::vector<StitchId> stitches;
            for (const std::size_t digit : digits)
                stitches.push_back(ids[digit]);
            const Side side = rows % 2 == 0 ? Side::RS : Side::WS;
            const Pattern pattern = oneRow(stitches, side);
            const std::vector<KnittedRow> knitted = knittedRows(pattern, 0, 0);
            NaiveNeedle naive(pattern, builtInCatalogue(), 0);
            const auto expected = naive.work(knitted[0]);
            Needle needle = castOn(pattern.head.castOn.stitches.at(0), YarnId{1}, side);
            const RowContext context{builtInCatalogue(), pattern.head, *knitted[0].boxes, 0, false};
            const LedgerLine line = workRow(needle, *knitted[0].ref, context);
            ASSERT_TRUE(expected.has_value());
            std::vector<std::string> made;
            for (const Loop& loop : needle.loops)
                made.push_back(builtInCatalogue().stitch(loop.stitch).key);
            if (side == Side::WS)
                std::reverse(made.begin(), made.end());
            ASSERT_EQ(line.after, expected->after);
            ASSERT_EQ(line.worked, expected->worked);
            ASSERT_EQ(made, expected->made);
            ++rows;
            more = false;
            for (std::size_t& digit : digits) {
                if (++digit < std::size(twelve)) {
                    more = true;
                    break;
                }
                digit = 0;
            }
        }
    }
    EXPECT_EQ(rows, 12 + 144 + 1728 + 20736 + 248832);
}

TEST(NeedlesAgree, OnRandomPatternsAsFarAsTheyComeOut)
{
    int linesCompared = 0;
    for (unsigned seed = 1; seed <= 3000; ++seed) {
        std::mt19937 random(seed);
        const Pattern pattern = randomPattern(random);
        for (int size = 0; size < sizeCount(pattern); ++size) {
            const Ledger ledger = run(pattern, builtInCatalogue(), {0, size});
            NaiveNeedle naive(pattern, builtInCatalogue(), size);
            bool sure = true;
            for (std::size_t i = 0; i < ledger.rows.size(); ++i) {
                const Row& row = *ledger.rows[i].ref;
                const bool nothing = std::all_of(row.cells.begin(), row.cells.end(), [](const Cell& c) { return c.stitch == noStitch; });
                if (nothing)
                    break;
                const bool error = std::any_of(ledger.lines[i].findings.begin(), ledger.lines[i].findings.end(), [](const Finding& f) {
                    return f.severity == Severity::Error && f.kind != FindingKind::YarnElsewhere &&
                           f.kind != FindingKind::StatedCountDiffers && f.kind != FindingKind::PairWorkedAsTwo &&
                           f.kind != FindingKind::WrongColourWorked;
                });
                const auto expected = naive.work(ledger.rows[i]);
                if (!expected || error)
                    break;
                sure = sure && !expected->sideUnsure;
                ASSERT_EQ(ledger.lines[i].after, expected->after) << "seed " << seed << " line " << i;
                ASSERT_EQ(ledger.lines[i].worked, expected->worked) << "seed " << seed << " line " << i;
                ASSERT_EQ(madeBy(ledger, i), expected->made) << "seed " << seed << " line " << i;
                if (sure) {
                    ASSERT_EQ(ledger.lines[i].segments, expected->segments) << "seed " << seed << " line " << i;
                }
                ++linesCompared;
            }
        }
    }
    EXPECT_GT(linesCompared, 300);
}
