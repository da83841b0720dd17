// A section worked out in full is knitted as the folded one, loop for loop.

#include "core/derived/unfolded.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "tests/support/big_shawl.h"
#include "tests/support/knit.h"
#include "tests/support/knit_text.h"
#include "tests/support/random_pattern.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

// All that the next row can ask of a needle, but the columns and names of rows, which are another chart's.
Needle withoutChart(Needle needle)
{
    for (Loop& loop : needle.loops) {
        loop.madeIn = RowId{};
        loop.column = 0;
    }
    for (MarkerAt& marker : needle.markers)
        marker.column = 0;
    std::stable_sort(needle.markers.begin(), needle.markers.end(), [](const MarkerAt& a, const MarkerAt& b) {
        return a.position != b.position ? a.position < b.position : a.marker < b.marker;
    });
    for (TurnAt& turn : needle.turns)
        turn.row = RowId{};
    needle.owed.fault = RowId{};
    return needle;
}

bool sound(const LedgerLine& line)
{
    return std::none_of(line.findings.begin(), line.findings.end(),
                        [](const Finding& finding) { return finding.severity == Severity::Error; });
}

bool placedSeveralTimes(const Needle& needle)
{
    for (std::size_t i = 0; i < needle.markers.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (needle.markers[i].marker == needle.markers[j].marker)
                return true;
    return false;
}

bool tooLarge(const Ledger& ledger, int section)
{
    long long rows = 0, most = 0;
    for (std::size_t line = 0; line < ledger.rows.size(); ++line)
        if (ledger.rows[line].section == section) {
            ++rows;
            most = std::max<long long>(most, ledger.lines[line].worked);
        }
    return most > 4000 || rows * most > mostUnfoldedCells / 4; // random repeats in repeats
}

// Knits the unfolded rows from where the section begins; after a row that doesn't come out from what the needle was then.
// Gives the number of rows gone through.
int knitAgain(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger, int section,
              std::string_view name)
{
    const Result<Unfolded> made = unfolded(pattern, catalogue, ledger, section);
    if (!made.ok()) {
        if (tooLarge(ledger, section))
            return 0;
        ADD_FAILURE() << name << ": " << toText(made.fault());
        return 0;
    }
    const Unfolded& out = made.value();
    const Section& alone = out.pattern.sections.front();
    EXPECT_TRUE(alone.frame.boxes.empty() && alone.frame.brackets.empty()) << name;
    if (out.rows.empty() || out.ledger.rows.size() != out.rows.size() || out.ledger.before.size() != out.rows.size() + 1) {
        ADD_FAILURE() << name << ": rows, lines and needles don't go together";
        return 0;
    }
    if (alone.frame.columns <= mostColumns)
        for (const Fault& fault : faultsOf(out.pattern, catalogue))
            ADD_FAILURE() << name << ": " << toText(fault);
    Needle needle = ledger.before[static_cast<std::size_t>(out.rows.front().line)];
    int compared = 0;
    for (std::size_t i = 0; i < out.rows.size(); ++i) {
        const auto folded = static_cast<std::size_t>(out.rows[i].line);
        // A row whose repeats are worked no times has no stitch to show; the needle takes it for one not painted yet.
        const bool blank = usedColumns(*alone.rows[i], {}).first == 0;
        // Only a stitch repeat may place one marker several times.
        if (blank || placedSeveralTimes(ledger.before[folded + 1]) || !sound(ledger.lines[folded])) {
            needle = out.ledger.before[i + 1];
            ++compared;
            continue;
        }
        const LedgerLine again = workRow(needle, *alone.rows[i], {catalogue, out.pattern.head, {}, 0, i == 0});
        const Needle& expected = ledger.before[folded + 1];
        if (!(withoutChart(needle) == withoutChart(expected))) {
            ADD_FAILURE() << name << ", section " << section << ", unfolded row " << i + 1 << " (row " << out.rows[i].row + 1
                          << "): " << dump(needle) << "\nfolded: " << dump(expected);
            return compared;
        }
        EXPECT_EQ(again.after, ledger.lines[folded].after);
        EXPECT_EQ(again.segments, ledger.lines[folded].segments);
        // What it says of loops and columns is what the needle finds.
        const Needle& kept = out.ledger.before[i + 1];
        for (int loop = 0; loop < kept.count() && loop < needle.count(); ++loop) {
            const Loop& is = kept.loops[static_cast<std::size_t>(loop)];
            if (is.madeIn.value > 0) {
                EXPECT_EQ(is.madeIn, needle.loops[static_cast<std::size_t>(loop)].madeIn);
                EXPECT_EQ(is.column, needle.loops[static_cast<std::size_t>(loop)].column);
            }
        }
        ++compared;
    }
    return compared;
}

Pattern loaded(const std::filesystem::path& path)
{
    std::ifstream in(path, std::ios::binary);
    std::stringstream text;
    text << in.rdbuf();
    return readPattern(text.str(), builtInCatalogue()).pattern.value_or(Pattern{});
}

} // namespace

TEST(Unfolded, SamplesAreKnittedLoopForLoop)
{
    int sections = 0;
    for (const auto& entry : std::filesystem::directory_iterator(SHAWLWRIGHT_SOURCE "/samples")) {
        if (entry.path().extension() != ".shawl")
            continue;
        const Pattern pattern = loaded(entry.path());
        const Catalogue catalogue = builtInCatalogue().with(pattern.head.stitches);
        for (int version = 0; version < versionCount(pattern); ++version)
            for (int size = 0; size < sizeCount(pattern); ++size) {
                const Ledger ledger = run(pattern, catalogue, {version, size});
                for (int section = 0; section < static_cast<int>(pattern.sections.size()); ++section) {
                    const int rows = static_cast<int>(std::count_if(
                        ledger.rows.begin(), ledger.rows.end(),
                        [section](const KnittedRow& row) { return row.section == section; }));
                    if (rows == 0)
                        continue;
                    EXPECT_EQ(knitAgain(pattern, catalogue, ledger, section, entry.path().string()), rows);
                    ++sections;
                }
            }
    }
    EXPECT_GE(sections, 5);
}

TEST(Unfolded, RandomPatternsAreKnittedLoopForLoop)
{
    int compared = 0;
    for (unsigned seed = 1; seed <= 1500 && !testing::Test::HasFailure(); ++seed) {
        std::mt19937 random(seed);
        const Pattern pattern = randomPattern(random);
        const Catalogue catalogue = builtInCatalogue().with(pattern.head.stitches);
        const Ledger ledger = run(pattern, catalogue);
        for (int section = 0; section < static_cast<int>(pattern.sections.size()); ++section)
            if (firstLineOf(ledger, section, 0) >= 0)
                compared += knitAgain(pattern, catalogue, ledger, section,
                                      "seed " + std::to_string(seed) + "\n" + asKnit(pattern, catalogue));
    }
    EXPECT_GT(compared, 500);
}

TEST(Unfolded, RepeatsAreWorkedOut)
{
    Knit lace(8);
    lace.rs("k [ yo k2tog ]*3 k").ws("[ p ]end").times(2, Quantity(3));
    const Ledger ledger = lace.run();
    const auto made = unfolded(lace.done(), lace.catalogue(), ledger, 0);
    ASSERT_TRUE(made.ok());
    const Unfolded& out = made.value();
    ASSERT_EQ(out.rows.size(), 6u);
    EXPECT_EQ(out.pattern.sections[0].frame.columns, 8);
    EXPECT_EQ(chart(out.pattern, 0, lace.catalogue()), "k yo k2tog yo k2tog yo k2tog k");
    EXPECT_EQ(out.pattern.sections[0].rows[4]->label, "1 (3)"); // worked the third time
    EXPECT_EQ(out.ledger.lines[5].after, 8);
}

TEST(Unfolded, StitchesStandOverThoseTheyAreWorkedInto)
{
    Knit wedge(10); // short rows step, and the rest of the needle waits where it is
    wedge.rs("k*10").ws("p*6 turn").rs("k*6").ws("p*10");
    const auto made = unfolded(wedge.done(), wedge.catalogue(), wedge.run(), 0);
    ASSERT_TRUE(made.ok());
    const Unfolded& out = made.value();
    EXPECT_EQ(out.pattern.sections[0].frame.columns, 10);
    const Row& back = *out.pattern.sections[0].rows[1];
    EXPECT_EQ(usedColumns(back, {}), (ColumnSpan{5, 10}));
    EXPECT_EQ(restingColumns(out.ledger, 1), (std::vector<int>{1, 2, 3, 4}));

    Knit growing(3); // increases at both edges leave the middle where it is
    growing.rs("k yo k yo k").ws("p*5").rs("k yo k*3 yo k").ws("p*7");
    const auto grown = unfolded(growing.done(), growing.catalogue(), growing.run(), 0);
    ASSERT_TRUE(grown.ok());
    EXPECT_EQ(grown.value().pattern.sections[0].frame.columns, 7);
    EXPECT_EQ(usedColumns(*grown.value().pattern.sections[0].rows[0], {}), (ColumnSpan{2, 6}));
}

TEST(Unfolded, CursorGoesToTheFirstWorkingAndBack)
{
    Knit lace(8);
    lace.rs("k [ yo k2tog ]*3 k").ws("p*8").times(2, Quantity(2)).rs("k*8");
    const Pattern pattern = lace.done();
    const auto made = unfolded(pattern, lace.catalogue(), lace.run(), 0);
    ASSERT_TRUE(made.ok());
    const Unfolded& out = made.value();
    EXPECT_EQ(unfoldedAt(out, At{0, 3}), (At{0, 3})); // the first of three
    EXPECT_EQ(foldedAt(out, At{2, 7}), (At{0, 3}));   // the third, on the second pass
    EXPECT_EQ(unfoldedAt(out, At{2, 8}), (At{4, 8}));
    for (int row = 0; row < 3; ++row)
        EXPECT_EQ(foldedAt(out, unfoldedAt(out, At{row, 2})).row, row);
}

TEST(Unfolded, TooLargeIsSaid)
{
    Knit endless(500);
    endless.rs("[ k ]end").ws("[ p ]end").times(2, Quantity(5000));
    const auto made = unfolded(endless.done(), endless.catalogue(), endless.run(), 0);
    ASSERT_FALSE(made.ok());
    EXPECT_NE(made.fault().message.find("10000 rows"), std::string::npos) << made.fault().message;
    EXPECT_NE(made.fault().message.find("500 stitches"), std::string::npos) << made.fault().message;

    Knit other(4);
    other.pattern().head.versions = {"lace", "plain"};
    other.rs("k*4").section("Edge", {"plain"}).rs("k*4");
    const auto inOther = unfolded(other.done(), other.catalogue(), other.run(), 1);
    ASSERT_FALSE(inOther.ok());
    EXPECT_EQ(inOther.fault().message,
              "is not knitted in version 'lace', which is shown; choose 'plain' to see it as knitted");
}

TEST(Unfolded, BigShawlComesOut)
{
    const Pattern big = bigShawl();
    const Ledger ledger = run(big, builtInCatalogue());
    EXPECT_EQ(knitAgain(big, builtInCatalogue(), ledger, 0, "big shawl"), static_cast<int>(ledger.rows.size()));
}
