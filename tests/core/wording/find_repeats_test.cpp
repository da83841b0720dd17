// Rows painted out in full: the shortest true text. Forms: Interweave, Pattern Play (asterisk, leftover
// stitches named); Remade by Hand (brackets in brackets); Josephine Kush, Row Repeats ("twice more").

#include "tests/core/wording/written.h"

#include "core/wording/writer/find_repeats.h"

#include <gtest/gtest.h>

#include <random>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Case {
    const char* row;
    int castOn;
    const char* text;
};

// The same stitches so many times over.
std::string again(int times, const std::string& words)
{
    std::string all;
    for (int i = 0; i < times; ++i)
        all += words + " ";
    return all;
}

std::string paintedText(Side side, const std::string& words, int castOn, const Style& style = {})
{
    return textOf(side, words.c_str(), castOn, style);
}

void collect(const Phrases& phrases, std::vector<StitchId>& out)
{
    for (const Phrase& phrase : phrases) {
        if (const auto* run = std::get_if<Stretch>(&phrase.is))
            out.insert(out.end(), static_cast<std::size_t>(run->count), run->stitch);
        if (const auto* group = std::get_if<Group>(&phrase.is))
            for (int time = 0; time < group->times.at(0); ++time)
                collect(group->inside, out);
    }
}

int deepestOf(const Phrases& phrases)
{
    int depth = 0;
    for (const Phrase& phrase : phrases)
        if (const auto* group = std::get_if<Group>(&phrase.is))
            depth = std::max(depth, 1 + deepestOf(group->inside));
    return depth;
}

} // namespace

TEST(FindRepeats, InARowPaintedOutInFull)
{
    const Case cases[] = {
        // A group is told where its text is shorter.
        {"k yo k2tog k", 4, "k1, yo, k2tog, k1."},
        {"yo k yo k", 2, "yo, k1, yo, k1."}, // as long as "[yo, k1] twice"
        {"yo k2tog yo k2tog k*2", 6, "[yo, k2tog] twice, k2."},
        {"k yo k2tog yo k2tog yo k2tog k*3", 10, "k1, [yo, k2tog] 3 times, k3."},
        {"yo p2tog yo p2tog yo p2tog k p k p", 10, "[yo, p2tog] 3 times, k1, p1, k1, p1."},
        // A run may belong to the edge in part.
        {"k yo k2tog k*2 yo k2tog k*2 yo k2tog k*3", 14, "k1, *yo, k2tog, k2; rep from * to last st, k1."},
        {"k*4 yo k2tog k yo k2tog", 9, "k4, yo, k2tog, k1, yo, k2tog."}, // cutting k4 saves too little
        // Groups in groups.
        {"yo k2tog yo k2tog k*3 yo k2tog yo k2tog k*3", 14, "[(yo, k2tog) twice, k3] twice."},
        // A run of one stitch told as a group already.
        {"k2tog*4 yo k2tog*4 yo", 16, "[(k2tog) 4 times, yo] twice."},
    };
    for (const Case& c : cases)
        EXPECT_EQ(textOf(Side::RS, c.row, c.castOn), c.text) << c.row;
}

TEST(FindRepeats, TheGroupThatCarriesTheRowHasTheAsterisk)
{
    EXPECT_EQ(paintedText(Side::RS, again(20, "yo k2tog"), 40), "*yo, k2tog; rep from * to end.");
    EXPECT_EQ(paintedText(Side::RS, "k " + again(20, "yo k2tog") + "k*5", 46),
              "k1, *yo, k2tog; rep from * to last 5 sts, k5.");
    EXPECT_EQ(paintedText(Side::WS, again(20, "p*2 k*2") + "p*2", 82),
              "*p2, k2; rep from * to last 2 sts, p2.");
    EXPECT_EQ(paintedText(Side::RS, again(20, "k2tog"), 40), "*k2tog; rep from * to end.");
    // Where no place can be named (thirty stitches are too many to count back) it is told how often.
    EXPECT_EQ(paintedText(Side::RS, again(20, "yo k2tog") + "p*15 k*15", 70),
              "*yo, k2tog; rep from * nineteen more times, p15, k to end.");
    EXPECT_EQ(paintedText(Side::RS, again(3, "yo k2tog p k*2 p*2 k*9") + "p*15", 63),
              "*yo, k2tog, p1, k2, p2, k9; rep from * twice more, p to end.");
    // Too little for an asterisk.
    EXPECT_EQ(paintedText(Side::RS, again(4, "yo k2tog") + "k*5", 13), "[yo, k2tog] 4 times, k5.");
}

TEST(FindRepeats, AsteriskOrBracketIsAMatterOfStyle)
{
    Style style;
    style.repeats = RepeatForm::Bracket;
    EXPECT_EQ(paintedText(Side::RS, "k " + again(20, "yo k2tog") + "k*5", 46, style),
              "k1, [yo, k2tog] 20 times, k5.");
    EXPECT_EQ(paintedText(Side::RS, again(20, "k2tog"), 40, style), "[k2tog] 20 times.");
    EXPECT_EQ(paintedText(Side::RS, again(8, again(3, "yo k2tog") + "p*3"), 72, style),
              "[(yo, k2tog) 3 times, p3] 8 times.");
}

TEST(FindRepeats, NestedThreeDeepAndNoDeeper)
{
    const std::string one = again(3, "yo k2tog") + "p*2 ";
    const std::string two = again(3, one) + "k*7 ";
    const std::string three = again(3, two) + "ssk ";
    Style style;
    style.repeats = RepeatForm::Bracket;
    EXPECT_EQ(paintedText(Side::RS, again(3, two), 93, style),
              "[([yo, k2tog] 3 times, p2) 3 times, k7] 3 times.");
    Knit knit(285);
    knit.rs(again(3, three));
    EXPECT_LE(deepestOf(written(knit)[0].phrases), 3);
}

TEST(FindRepeats, DrawnBoxesStay)
{
    EXPECT_EQ(textOf(Side::RS, "k [ yo k2tog ]*4 yo k2tog k", 12), "k1, [yo, k2tog] 4 times, yo, k2tog, k1.");
    // Inside of one, beside one, around one.
    EXPECT_EQ(textOf(Side::RS, "[ yo k2tog yo k2tog yo k2tog k ]end", 14),
              "*[yo, k2tog] 3 times, k1; rep from * to end.");
    EXPECT_EQ(textOf(Side::RS, "ssk yo ssk yo ssk yo [ k p ]end", 16),
              "[ssk, yo] 3 times, *k1, p1; rep from * to end.");
    EXPECT_EQ(textOf(Side::RS, "[ yo k2tog ]*2 k*5 [ yo k2tog ]*2 k*5 [ yo k2tog ]*2 k*5", 27),
              "*[yo, k2tog] twice, k5; rep from * to end.");
    // What goes to a place is in no found group: the place is another the next time.
    Knit knit(16);
    knit.rs("k*8 |A k*8").rs("k*2 [ p ]A k*2 [ p ]end");
    EXPECT_EQ(textOf(knit, 1), "k2, p to marker, sm, k2, p to end.");
}

TEST(FindRepeats, MarkersBetweenRepetitions)
{
    // "Slip markers as you come to them": Yours UK shawl, 2017.
    Knit knit(16);
    knit.rs("k*4 |A k*4 |B k*4 |C k*4");
    knit.rs(again(4, "k2tog yo k*2"));
    knit.rs(again(3, "k2tog yo k*2") + "p*4");
    knit.rs(again(4, "yo k2tog k*2"));
    EXPECT_EQ(textOf(knit, 1), "*k2tog, yo, k2; rep from * to end."); // none need be told
    EXPECT_EQ(textOf(knit, 2), "*k2tog, yo, k2, sm; rep from * to last 4 sts, p4.");
    // Beside a yarn over the side must be told.
    EXPECT_EQ(textOf(knit, 3), "*yo, k2tog, k2, sm; rep from * to last 4 sts, yo, k2tog, k2.");
}

TEST(FindRepeats, FramedByMarkers)
{
    Knit knit(48);
    knit.rs("k*4 |A k*40 |B k*4").rs("k*4 " + again(20, "yo k2tog") + "k*4");
    EXPECT_EQ(textOf(knit, 1), "k4, sm A, *yo, k2tog; rep from * to marker B, sm B, k4.");
    Knit after(48);
    after.rs("k*4 |A k*40 |B k*4").rs("k*4 ~A " + again(20, "k2tog yo") + "~B k*4");
    EXPECT_EQ(textOf(after, 1), "k4, sm A, *k2tog, yo; rep from * to marker B, sm B, k4.");
}

TEST(FindRepeats, ALongPlainRunIsToldByThePlaceWhereItEnds)
{
    EXPECT_EQ(textOf(Side::RS, "k*83 k2tog k*2", 87), "k to last 4 sts, k2tog, k2.");
    EXPECT_EQ(textOf(Side::RS, "k*12 k2tog k*2", 16), "k12, k2tog, k2."); // a dozen is counted at sight
    EXPECT_EQ(textOf(Side::RS, "k*13 k2tog k*2", 17), "k to last 4 sts, k2tog, k2.");
    EXPECT_EQ(textOf(Side::RS, "k*30 p*13", 43), "k30, p to end."); // thirteen are too many to count back
    EXPECT_EQ(textOf(Side::RS, "k*83 k2tog k*2", 90), "k83, k2tog, k2."); // three are left over
    Knit knit(60);
    knit.rs("k*30 |A k*30").rs("k*28 k2tog k*2 ssk k*26").ws("p*27 k p*30").rs("k*26 k2tog yo k*30");
    EXPECT_EQ(textOf(knit, 1), "k to 2 sts before marker, k2tog, sm, k2, ssk, k to end.");
    EXPECT_EQ(textOf(knit, 2), "p to 2 sts before marker, k1, p to end.");
    Knit turned(60);
    turned.rs("k*50 turn").ws("p*40 turn").rs("k*36 turn").ws("p*30 k*2 turn").rs("k*26 k2tog k*2 turn");
    EXPECT_EQ(textOf(turned, 0), "With MC, k to last 10 sts, turn.");
    EXPECT_EQ(textOf(turned, 1), "p to last 10 sts, turn.");
    EXPECT_EQ(textOf(turned, 2), "k to 4 sts before last turn, turn.");
    EXPECT_EQ(textOf(turned, 3), "p30, k2, turn, leaving 14 sts unworked.");
    // fiberdreams, "K to 1 st before gap, k2tog, k3, turn"; here the gap is farther on.
    EXPECT_EQ(textOf(turned, 4), "k26, k2tog, k2, turn, leaving 16 sts unworked.");
}

TEST(FindRepeats, APlaceIsNamedOnlyWhereItIsTheSameEachTime)
{
    const auto textAfter = [](int times) {
        Knit knit(40);
        knit.rs("k*20 |A k*20").rs("kfb k*18 p*19 k2tog").ws("p*40").times(2, times);
        return textOf(knit, 1);
    };
    EXPECT_EQ(textAfter(1), "kfb, k to 1 st before marker, p to last 2 sts, k2tog.");
    EXPECT_EQ(textAfter(2), "kfb, k18, p to last 2 sts, k2tog."); // the marker has moved the second time
    Knit sizes(40);
    sizes.pattern().head.sizes = {"S", "M"};
    sizes.rs("k*20 p*20");
    EXPECT_EQ(textOf(sizes, 0), "With MC, k20, p20."); // only one size was seen
}

TEST(FindRepeats, AfterBindingOffTheNumberStaysWithTheRun)
{
    EXPECT_EQ(textOf(Side::RS, "bo*5 k*3 yo k2tog k*3 yo k2tog k*3 yo k2tog", 20),
              "bo 5, k2, [yo, k2tog, k3] twice, yo, k2tog.");
}

TEST(FindRepeats, GroupsHoldTheColumnsOfAllTheirTimes)
{
    Knit knit(14);
    knit.pattern().head.yarns.resize(1);
    const std::string row = "k yo k2tog k*2 . yo k2tog k*2 yo k2tog k*3";
    knit.rs(row).ws(row);
    const auto rows = written(knit);
    for (const WrittenRow& one : rows) {
        ASSERT_EQ(one.text, "k1, *yo, k2tog, k2; rep from * to last st, k1.");
        const auto columns = [&](const Phrase& phrase) {
            return std::pair(phrase.firstColumn, phrase.lastColumn);
        };
        const auto mirrored = [&](int first, int last) {
            return one.firstRow == 0 ? std::pair(first, last) : std::pair(16 - last, 16 - first);
        };
        EXPECT_EQ(columns(one.phrases[0]), mirrored(1, 1));
        EXPECT_EQ(columns(one.phrases[1]), mirrored(2, 14));
        EXPECT_EQ(columns(one.phrases[2]), mirrored(15, 15));
        const auto& inside = std::get<Group>(one.phrases[1].is).inside;
        EXPECT_EQ(columns(inside[0]), mirrored(2, 2));
        EXPECT_EQ(columns(inside[2]), mirrored(4, 5));
    }
}

// What is told is what is painted, stitch for stitch, whatever is found.
TEST(FindRepeats, TellsEachStitchOnceMoreInRandomRows)
{
    const Catalogue& catalogue = Knit(1).catalogue();
    const StitchId stitches[] = {catalogue.require("k"), catalogue.require("yo"), catalogue.require("k2tog"),
                                 catalogue.require("p")};
    int found = 0;
    for (unsigned seed = 1; seed <= 3000; ++seed) {
        std::mt19937 random(seed);
        const auto among = [&](int from, int to) {
            return std::uniform_int_distribution<int>(from, to)(random);
        };
        Row row;
        row.side = seed % 2 == 0 ? Side::RS : Side::WS;
        std::vector<StitchId> worked;
        const int length = among(1, 60);
        while (static_cast<int>(worked.size()) < length) {
            std::vector<StitchId> part;
            for (int n = among(1, 5); n > 0; --n)
                part.push_back(stitches[among(0, 3)]);
            for (int times = among(1, 4); times > 0; --times)
                worked.insert(worked.end(), part.begin(), part.end());
        }
        Phrases phrases;
        const int columns = static_cast<int>(worked.size());
        row.cells.resize(worked.size());
        for (int i = 0; i < columns; ++i) {
            const int column = row.side == Side::RS ? i + 1 : columns - i;
            row.cells[static_cast<std::size_t>(column) - 1].stitch = worked[static_cast<std::size_t>(i)];
            auto* run = phrases.empty() ? nullptr : std::get_if<Stretch>(&phrases.back().is);
            if (run && run->stitch == worked[static_cast<std::size_t>(i)]) {
                ++run->count;
                phrases.back().firstColumn = std::min(phrases.back().firstColumn, column);
                phrases.back().lastColumn = std::max(phrases.back().lastColumn, column);
            } else {
                phrases.push_back({Stretch{worked[static_cast<std::size_t>(i)], {}, 1, {}}, column, column});
            }
        }
        findRepeats(phrases, row, catalogue);
        std::vector<StitchId> told;
        collect(phrases, told);
        ASSERT_EQ(told, worked) << "seed " << seed;
        ASSERT_LE(deepestOf(phrases), 3) << "seed " << seed;
        int next = 1; // the columns lie side by side, without a gap
        for (std::size_t i = 0; i < phrases.size(); ++i) {
            const Phrase& phrase = phrases[row.side == Side::RS ? i : phrases.size() - 1 - i];
            ASSERT_EQ(phrase.firstColumn, next) << "seed " << seed;
            next = phrase.lastColumn + 1;
        }
        ASSERT_EQ(next, columns + 1) << "seed " << seed;
        found += deepestOf(phrases) > 0 ? 1 : 0;
    }
    EXPECT_GT(found, 1500);
}
