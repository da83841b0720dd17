// Shawls in their usual shapes against closed forms: counts, rows and stitches worked, for a range of sizes.
//
// S is the count after a row; T the stitches worked so far, the sum of what each row leaves on the right
// needle. Where a source is named the rate of shaping or the figure is its; the forms for T are derived: a
// cycle of two rows at S0 + q i stitches works 2 (S0 + q i), and the sum over k cycles is 2 k S0 + q k (k +
// 1).

#include "tests/support/knit.h"

#include <gtest/gtest.h>

#include <array>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

int worked(const Ledger& ledger, std::size_t rows = SIZE_MAX)
{
    int all = 0;
    for (std::size_t i = 0; i < std::min(rows, ledger.lines.size()); ++i)
        all += ledger.lines[i].worked;
    return all;
}

int after(const Ledger& ledger, std::size_t row)
{
    return ledger.lines[row - 1].after;
}

std::string n(int number)
{
    return std::to_string(number);
}

// Increases at both edges and on either side of a spine stitch, every second row.
Ledger triangle(int k, int castOn = 9)
{
    Knit knit(castOn);
    const std::string half = n((castOn - 5) / 2);
    knit.rs("k*2 yo k*" + half + " yo |A k yo k*" + half + " yo k*2").ws("[ k ]end");
    if (k > 1)
        knit.rs("k*2 yo [ k ]A yo ~A k yo [ k ]end-2 yo k*2").ws("[ k ]end").times(2, k - 1);
    return knit.run();
}

struct Figures {
    int k, s, t;
};

} // namespace

TEST(ShawlMaths, TriangleFourInTwoRows)
{
    // Holly Chayes, Shawl Geometry (right triangle: both edges and both sides of the spine); S0 = 9 is a
    // garter tab.
    for (const Figures f : {Figures{1, 13, 26},
                            {5, 29, 210},
                            {10, 49, 620},
                            {25, 109, 3050},
                            {50, 209, 11100},
                            {60, 249, 15720}}) {
        const Ledger ledger = triangle(f.k);
        ASSERT_EQ(ledger.findings.size(), 0u);
        EXPECT_EQ(static_cast<int>(ledger.lines.size()), 2 * f.k);
        EXPECT_EQ(ledger.lines.back().after, f.s);
        EXPECT_EQ(worked(ledger), f.t);
        EXPECT_EQ(f.t, 18 * f.k + 4 * f.k * (f.k + 1));
        for (std::size_t row = 2; row <= ledger.lines.size(); row += 2)
            EXPECT_EQ(after(ledger, row), 9 + 2 * static_cast<int>(row));
        const std::vector<int> halves{2 * f.k + 4, 2 * f.k + 5}; // the spine stitch stands left of its marker
        EXPECT_EQ(ledger.lines.back().segments, halves);
    }
}

TEST(ShawlMaths, PublishedTotalsOfATriangle)
{
    // Yours magazine (UK), 10 October 2017, triangular shawl: cast on 10, two plain rows, then 4 more on
    // every RS row from row 3; it prints 110 after row 52, then 114, 118, and 238 and 242 after rows 116 and
    // 118.
    Knit knit(10);
    knit.rs("[ k ]end").ws("[ k ]end").rs("k*2 yo k yo [ k ]end-3 yo k yo k*2").ws("[ k ]end").times(2, 58);
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.findings.size(), 0u);
    const std::pair<std::size_t, int> printed[] = {{52, 110}, {54, 114}, {56, 118}, {116, 238}, {118, 242}};
    for (const auto& [row, count] : printed)
        EXPECT_EQ(after(ledger, row), count) << row;
    // The lace that follows: k1, yo, k4, s2kp, k4, yo over 12 stitches, ten times in each half, an edge
    // stitch each.
    knit.rs("k [ k yo k*4 s2kp k*4 yo ]end-1 k");
    EXPECT_EQ(knit.run().lines.back().after, 242);
    EXPECT_EQ(knit.run().findings.size(), 0u);
}

TEST(ShawlMaths, CrescentsGrowAlikeButTakeOtherYarn)
{
    struct Shape {
        const char* rs;
        const char* ws;
        int castOn, s, t;
    };
    const char* plain = "[ k ]end";
    const Shape shapes[] = {
        // Rhyflower Knits, Basic Top-Down Crescent: one more at each end of every row.
        {"k yo [ k ]end-1 yo k", "k yo [ k ]end-1 yo k", 9, 209, 11000},
        // The Knitting Circle, garter tab for crescent shawls: four on the RS row, two on the WS row.
        {"k yo k yo [ k ]end-2 yo k yo k", "k yo [ k ]end-1 yo k", 9, 309, 16100},
        // Holly Chayes, Wedge Crescent: eight wedges from 13 stitches, eight more on each RS row.
        {"k [ yo k ]*4 [ k ]end-4 [ yo k ]*4", plain, 13, 413, 21700},
        // The triangle of the same final count, for comparison: 9 stitches, four more in two rows.
        {"k yo k yo [ k ]end-2 yo k yo k", plain, 9, 209, 11100},
    };
    for (const Shape& shape : shapes) {
        Knit knit(shape.castOn);
        knit.rs(shape.rs).ws(shape.ws).times(2, 50);
        const Ledger ledger = knit.run();
        EXPECT_EQ(ledger.findings.size(), 0u);
        EXPECT_EQ(ledger.lines.size(), 100u);
        EXPECT_EQ(ledger.lines.back().after, shape.s);
        EXPECT_EQ(worked(ledger), shape.t);
    }
    Knit shallow(9); // 4, 0, 2, 0: common practice, no source
    shallow.rs("k yo k yo [ k ]end-2 yo k yo k").ws(plain).rs("k yo [ k ]end-1 yo k").ws(plain).times(4, 25);
    EXPECT_EQ(shallow.run().lines.back().after, 159);
    EXPECT_EQ(worked(shallow.run()), 8600);
}

TEST(ShawlMaths, SidewaysAndWingedTriangles)
{
    // Holly Chayes, Side to Side Triangle: cast on 3, one more at one edge every second row.
    for (const Figures f : {Figures{10, 13, 170}, {50, 53, 2850}, {100, 103, 10700}}) {
        Knit knit(3);
        knit.rs("k yo [ k ]end").ws("[ k ]end").times(2, f.k);
        EXPECT_EQ(knit.run().lines.back().after, f.s);
        EXPECT_EQ(worked(knit.run()), f.t);
        EXPECT_EQ(f.t, 6 * f.k + f.k * (f.k + 1));
    }
    // Holly Chayes, Triangle with Wings: 4 per two rows, then 6 per two rows; from 7 stitches.
    Knit wings(7);
    wings.rs("k yo k yo [ k ]end-2 yo k yo k").ws("[ k ]end").times(2, 20);
    wings.rs("k yo k yo [ k ]end-2 yo k yo k").ws("k yo [ k ]end-1 yo k").times(2, 20);
    const Ledger ledger = wings.run();
    EXPECT_EQ(after(ledger, 40), 87);
    EXPECT_EQ(worked(ledger, 40), 1960);
    EXPECT_EQ(after(ledger, 80), 207);
    EXPECT_EQ(worked(ledger), 7920);
}

TEST(ShawlMaths, CirclesThatDouble)
{
    // The doubling circle as Knitty (Wavedeck) tells it: 9, a plain round, then doubling with 3, 6, 12 ...
    // plain rounds.
    Knit knit(9);
    knit.rs("[ k ]end round");
    std::size_t rounds = 1;
    const std::vector<std::pair<int, int>> expected{{18, 81},    {36, 333},    {72, 1269},
                                                    {144, 4869}, {288, 18981}, {576, 74853}};
    int plain = 3;
    for (const auto& [s, t] : expected) {
        knit.rs("[ yo k ]end round").rs("[ k ]end round").times(1, plain);
        rounds += 1 + static_cast<std::size_t>(plain);
        plain *= 2;
        const Ledger ledger = knit.run();
        EXPECT_EQ(ledger.findings.size(), 0u);
        EXPECT_EQ(ledger.lines.size(), rounds);
        EXPECT_EQ(ledger.lines.back().after, s);
        EXPECT_EQ(worked(ledger), t);
    }
}

TEST(ShawlMaths, HalfCircleThatDoubles)
{
    // Rhyflower Knits, Half Pi: 17, 29, 53, 101, 197; five edge stitches are not doubled after the first
    // time.
    Knit knit(9);
    knit.rs("k [ yo k ]end").ws("[ k ]end").rs("[ k ]end").ws("[ k ]end");
    const std::vector<Figures> expected{
        {4, 17, 68}, {12, 29, 300}, {28, 53, 1148}, {60, 101, 4380}, {124, 197, 16988}};
    int rows = 4;
    for (std::size_t i = 0; i < expected.size(); ++i) {
        if (i > 0) {
            const int plain = expected[i].k - rows - 2;
            knit.rs("k*3 [ yo k ]end-2 k*2").ws("[ k ]end").rs("[ k ]end").ws("[ k ]end").times(2, plain / 2);
            rows = expected[i].k;
        }
        const Ledger ledger = knit.run();
        EXPECT_EQ(ledger.findings.size(), 0u);
        EXPECT_EQ(static_cast<int>(ledger.lines.size()), expected[i].k);
        EXPECT_EQ(ledger.lines.back().after, expected[i].s);
        EXPECT_EQ(worked(ledger), expected[i].t);
    }
}

TEST(ShawlMaths, WedgesOfShortRows)
{
    struct Wedge {
        int w, s, turns, t;
    };
    // Out and back pair i works w - i s each way: 2 N w - s N (N + 1) in 2 N rows.
    for (const Wedge& wedge : {Wedge{60, 3, 19, 1140}, {40, 2, 19, 760}, {50, 4, 12, 576}})
        for (const char* method : {"turn", "turn:wt", "turn:pin"}) {
            Knit knit(wedge.w);
            knit.rs("[ k ]end-" + n(wedge.s) + " " + method).ws("[ k ]end");
            knit.rs("[ k ]turn-" + n(wedge.s) + " " + method).ws("[ k ]end").times(2, wedge.turns - 1);
            knit.rs("[ k ]end").ws("[ k ]end"); // the closing ridge
            const Ledger ledger = knit.run();
            const auto rows = static_cast<std::size_t>(2 * wedge.turns);
            ASSERT_EQ(ledger.lines.size(), rows + 2);
            EXPECT_EQ(ledger.findings.size(), 0u) << method;
            EXPECT_EQ(ledger.lines[rows - 1].worked, wedge.w - wedge.turns * wedge.s);
            EXPECT_EQ(worked(ledger, rows), wedge.t);
            EXPECT_EQ(worked(ledger, rows),
                      2 * wedge.turns * wedge.w - wedge.s * wedge.turns * (wedge.turns + 1));
            EXPECT_EQ(worked(ledger), wedge.t + 2 * wedge.w);
            EXPECT_EQ(ledger.lines.back().after, wedge.w);
        }
    // Growing: the first pair works s, each further one s past the last turn. 20 turns at 3: 40 rows, 1,260
    // stitches.
    for (const Wedge& wedge : {Wedge{60, 3, 20, 1260}, {40, 4, 10, 440}}) {
        Knit knit(wedge.w);
        knit.rs("k*" + n(wedge.s) + " turn").ws("[ k ]end");
        knit.rs("[ k ]turn k*" + n(wedge.s) + " turn").ws("[ k ]end").times(2, wedge.turns - 2);
        knit.rs("[ k ]turn k*" + n(wedge.s)).ws("[ k ]end");
        const Ledger ledger = knit.run();
        EXPECT_EQ(ledger.findings.size(), 0u);
        EXPECT_EQ(static_cast<int>(ledger.lines.size()), 2 * wedge.turns);
        EXPECT_EQ(worked(ledger), wedge.t);
        EXPECT_EQ(wedge.t, wedge.s * wedge.turns * (wedge.turns + 1));
    }
}

TEST(ShawlMaths, ArchesOfShortRows)
{
    struct Arch {
        int w, s, rows, last, t, closing;
    };
    // Row j works w - j s: M w - s M (M + 1) / 2 in M rows; the row that closes them works w - s M / 2, the
    // next all.
    for (const Arch& arch :
         {Arch{80, 4, 16, 16, 736, 48}, {101, 5, 18, 11, 963, 56}, {64, 3, 20, 4, 650, 34}}) {
        Knit knit(arch.w);
        const std::string s = n(arch.s);
        knit.rs("[ k ]end-" + s + " turn").ws("[ k ]end-" + s + " turn");
        knit.rs("[ k ]turn-" + s + " turn").ws("[ k ]turn-" + s + " turn").times(2, arch.rows / 2 - 1);
        knit.rs("[ k ]end").ws("[ k ]end");
        const Ledger ledger = knit.run();
        const auto rows = static_cast<std::size_t>(arch.rows);
        EXPECT_EQ(ledger.findings.size(), 0u);
        ASSERT_EQ(ledger.lines.size(), rows + 2);
        EXPECT_EQ(ledger.lines[0].worked, arch.w - arch.s);
        EXPECT_EQ(ledger.lines[rows - 1].worked, arch.last);
        EXPECT_EQ(ledger.lines[rows - 1].betweenTurns, arch.last);
        EXPECT_EQ(ledger.lines[rows - 1].restingLeft, arch.s * arch.rows / 2);
        EXPECT_EQ(ledger.lines[rows - 1].restingRight, arch.s * arch.rows / 2);
        EXPECT_EQ(worked(ledger, rows), arch.t);
        EXPECT_EQ(ledger.lines[rows].worked, arch.closing);
        EXPECT_EQ(ledger.lines[rows + 1].worked, arch.w);
    }
}

TEST(ShawlMaths, SlippedStitchesMakeNoFabric)
{
    Knit knit(60);
    knit.rs("slip:22 join k*16 turn", "CC").ws("k*16 turn", "CC").rs("[ k ]end", "CC");
    const Ledger ledger = knit.run();
    EXPECT_EQ(ledger.findings.size(), 0u);
    EXPECT_EQ(worked(ledger), 16 + 16 + 38);
    EXPECT_EQ(ledger.lines[0].restingRight, 22);
    EXPECT_EQ(ledger.lines[0].after, 60);
}

TEST(ShawlMaths, YarnShares)
{
    // Stripes of two rows over the triangle with K = 50: 5,450 and 5,650 of 11,100, so equal stripes don't
    // take equal yarn.
    Knit knit(9);
    const std::string grow = "k yo k yo [ k ]end-2 yo k yo k";
    knit.rs(grow).ws("[ k ]end").rs("join " + grow, "CC").ws("[ k ]end", "CC").times(4, 25);
    const Ledger ledger = knit.run();
    int yarn[2] = {0, 0};
    for (const LedgerLine& line : ledger.lines)
        for (std::size_t i = 0; i < 2; ++i)
            yarn[i] += line.perYarn[i];
    EXPECT_EQ(yarn[0], 5450);
    EXPECT_EQ(yarn[1], 5650);
    EXPECT_EQ(worked(ledger), 11100);

    // Half of all stitches is passed in row 13 of 20, 34 of 50, 70 of 100, 84 of 120 and 140 of 200: towards
    // 0.7071, the root of a half (QTPi, Triangles and Triangular Shawls: the yarn used goes with the square
    // of the rows).
    const std::pair<int, std::size_t> halfway[] = {{10, 13}, {25, 34}, {50, 70}, {60, 84}, {100, 140}};
    for (const auto& [k, row] : halfway) {
        const Ledger shawl = triangle(k);
        EXPECT_LT(2 * worked(shawl, row - 1), worked(shawl)) << k;
        EXPECT_GE(2 * worked(shawl, row), worked(shawl)) << k;
    }
    EXPECT_EQ(worked(triangle(35)), 5670);
}

TEST(ShawlMaths, LaceBalance)
{
    // A repeat that takes up 12 and leaves 14, over 67 stitches with 7 at the edges: 5 repeats, 77 stitches.
    Knit knit(67);
    knit.rs("k*4 [ k*2 yo k2tog yo k*4 yo ssk yo k*2 ]end-3 k*3");
    EXPECT_EQ(knit.run().lines.back().after, 77);
    EXPECT_EQ(knit.run().findings.size(), 0u);

    // La Visch Designs: k2tog, yo2, skp keeps the count if the next row works two stitches into the double
    // yarn over. If a wrap is dropped instead, the row is one short, and only the row above tells.
    Knit kept(10);
    kept.rs("k*3 k2tog yo2 skp k*3").ws("p*4 p k p*4");
    EXPECT_EQ(afterEach(kept.run()), (std::vector<int>{10, 10}));
    EXPECT_EQ(kept.run().findings.size(), 0u);
    Knit dropped(10);
    dropped.rs("k*3 k2tog yo2 skp k*3").ws("p*4 yo2_k1drop p*4");
    EXPECT_EQ(afterEach(dropped.run()), (std::vector<int>{10, 9}));
}

TEST(ShawlMaths, GarterTabs)
{
    // Cast on c, knit t ridges, pick up t along the side and c along the cast-on edge: 2 c + t. c 3 and t 3
    // give 9 (West Knits, July 2011); c 2 and t 6 give 10 (La Visch Designs).
    for (const auto& [c, t, total] : {std::array{3, 3, 9}, {2, 6, 10}, {3, 5, 11}}) {
        Knit knit(c);
        knit.rs("[ k ]end").ws("[ k ]end").times(2, t);
        knit.rs("[ k ]end pu*" + n(t) + " pu*" + n(c));
        EXPECT_EQ(knit.run().lines.back().after, total);
        EXPECT_EQ(knit.run().findings.size(), 0u);
    }
}
