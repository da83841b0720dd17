// Rows as designers write them, read and told again in the writer's words. Forms of rows: Interweave, Pattern
// Play; Remade by Hand (brackets); Josephine Kush, Row Repeats; Yours UK shawl, 2017 (* and **); older words:
// common practice, no source.

#include "core/files/builtin_catalogue.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/phrase_text.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace shawlwright;

namespace {

PatternHead head()
{
    PatternHead head;
    head.yarns = {{YarnId{1}, "MC", "moss", 0x556b2f, 1, 400, 100},
                  {YarnId{2}, "CC", "chalk", 0xf0ead6, -1, 0, 0}};
    head.markers = {{MarkerId{1}, "A"}, {MarkerId{2}, "B"}};
    return head;
}

std::string told(const char* text, Side side, const PatternHead& known = head())
{
    const RowReading read = readRow(text, side, builtInCatalogue(), known);
    std::string notes;
    for (const ReadingNote& note : read.notes)
        if (note.weight == ReadingNote::Weight::Error)
            notes += toText(note);
    if (!read.understood)
        return notes.empty() ? "not understood" : notes;
    const Catalogue catalogue = builtInCatalogue().with(read.head.stitches);
    return inWords(read.phrases, {read.head, catalogue, side, {}});
}

struct Case {
    const char* text;
    const char* told;
    Side side = Side::RS;
};

void expectTold(const std::vector<Case>& cases)
{
    for (const Case& one : cases)
        EXPECT_EQ(told(one.text, one.side), one.told) << one.text;
}

constexpr Side WS = Side::WS;

} // namespace

TEST(RowsRead, StitchesInAnyDress)
{
    expectTold({
        {"k3", "k3."},
        {"K3.", "k3."},
        {"k 3, P 2", "k3, p2."},
        {"knit 3, purl two, yarn over, knit two together", "k3, p2, yo, k2tog."},
        {"Knit three sts, then purl 1 st", "k3, p1."},
        {"k1; yo; k1", "k1, yo, k1."},
        {"k1 yo k1", "k1, yo, k1."},
        {"K2, YO, SSK, k1", "k2, yo, ssk, k1."},
        {"yfwd, k2tog", "yo, k2tog."},
        {"yarn over twice, k2tog", "yo twice, k2tog."},
        {"yo twice, yo 3 times", "yo twice, yo 3 times."},
        {"sl1 wyif, k2", "sl1 wyif, k2."},
        {"slip one stitch with yarn in front, k2", "sl1 wyif, k2."},
        {"slip one knitwise, k2", "sl1k, k2."},
        {"sl 1 purlwise, k2", "sl1, k2."},
        {"k1 tbl, p2 through the back loops", "k1 tbl, p2 tbl."},
        {"k2tog through the back loops", "k2tog tbl."},
        {"knit two together through the back loops", "k2tog tbl."},
        {"kf&b, pfb", "kfb, pfb."},
        {"m1 left, m1R", "m1L, m1R."},
        {"2/2 RC, k1, 1/1 LPC", "2/2 RC, k1, 1/1 LPC."},
        {"C4F, k1", "2/2 LC, k1."},
        {"MB, k1", "MB, k1."},
        {"sl1yo, brk1", "sl1yo, brk1."},
        {"k2tog, p2tog", "k2tog, p2tog.", WS},
        {"knit two together", "k2tog.", WS},
        {"k1, drop 1, k1", "k1, drop 1, k1."},
        {"k1, drop wrap, k1", "k1, drop 1, k1."},
        {"k1, drop 2 wraps, k1", "k1, drop 2, k1."},
        {"k1, drop 1 st, k1", "k1, drop st, k1."},
        {"co 28, pu 17, k3", "co 28, pu 17, k3."},
        {"cast on 28 sts, pick up and knit 17", "co 28, pu 17."},
        {"k2tgo", "k2tog."},
    });
}

TEST(RowsRead, PassingOver)
{
    expectTold({
        {"sl1, k1, psso", "skp."},
        {"sl1, k2tog, psso, k1", "sk2p, k1."},
        {"sl 1, k2, psso", "s1k2p."},
        {"sl2, k1, p2sso", "s2kp."},
        {"slip 1, knit 1, pass slipped stitch over, k3", "skp, k3."},
        {"k4, sl1, k3tog, psso", "k4, sk3p."},
        {"sp2p, k1", "sp2p, k1.", WS},
        {"sl1, p2tog, psso", "sl1-p2tog-psso.", WS},
        {"[k1, p1] in next st", "k1-p1 in next st."},
        {"(k1, yo, k1) into same st, k2", "kyok, k2."},
        {"[k1, p1] in double yo", "k1-p1 in double yo."},
    });
}

TEST(RowsRead, Repeats)
{
    expectTold({
        {"*yo, k2tog; rep from * to end", "*yo, k2tog; rep from * to end."},
        {"*yo, k2tog, repeat from * to end of row", "*yo, k2tog; rep from * to end."},
        {"*yo, k2tog*; rep from * to * to last 3 sts, k3", "*yo, k2tog; rep from * to last 3 sts, k3."},
        {"*yo, k2tog* 4 times, k1", "[yo, k2tog] 4 times, k1."},
        {"*yo, k2tog; rep from * 3 more times, k1", "[yo, k2tog] 4 times, k1."},
        {"*yo, k2tog; rep from * once more", "[yo, k2tog] twice."},
        {"*k2, p2; rep from * until 2 sts remain, k2", "*k2, p2; rep from * to last 2 sts, k2."},
        {"*yo, k2tog; rep from * to 3 sts before marker A, **k1, p1; rep from ** to end",
         "*yo, k2tog; rep from * to 3 sts before marker A, **k1, p1; rep from ** to end."},
        {"*sl 1, k1; rep from * across, ending with k3", "*sl1, k1; rep from * to last 3 sts, k3."},
        {"[yo, k2tog] 4 times", "[yo, k2tog] 4 times."},
        {"(yo, k2tog) twice", "[yo, k2tog] twice."},
        {"[yo, k2tog] x 3", "[yo, k2tog] 3 times."},
        {"(yo, k2tog)3x", "[yo, k2tog] 3 times."},
        {"[k1, (yo, k2tog) twice] 3 times", "[k1, (yo, k2tog) twice] 3 times."},
        {"[k2tog] twice", "[k2tog] twice."},
        {"k2tog 4 times", "[k2tog] 4 times."},
        {"rep [yo, k2tog] to marker B, k1", "*yo, k2tog; rep from * to marker B, k1."},
        {"[yo, k2tog] to last 2 sts, k2", "*yo, k2tog; rep from * to last 2 sts, k2."},
        {"*k3, rep [p1, k1] to marker A; rep from * to end",
         "*k3, rep [p1, k1] to marker A; rep from * to end."},
    });
}

TEST(RowsRead, HowFar)
{
    expectTold({
        {"knit", "knit."},
        {"Knit across.", "knit."},
        {"Purl all sts", "purl."},
        {"k to end of row", "knit."},
        {"k2, p to last 2 sts, k2", "k2, p to last 2 sts, k2."},
        {"knit to last st, kfb", "k to last st, kfb."},
        {"k to marker A, yo, k to end", "k to marker A, yo, k to end."},
        {"k until 4 sts rem, k4", "k to last 4 sts, k4."},
        {"k to 2 sts before marker, k2tog", "k to 2 sts before marker, k2tog."},
        {"k to within 3 sts of marker B, k3", "k to 3 sts before marker B, k3."},
        {"k to 4 sts before last turn, turn", "k to 4 sts before last turn, turn."},
        {"knit to 1 st before gap, k2tog, k3, turn", "k to 1 st before last turn, k2tog, k3, turn."},
        {"knit to last turn, k3, w&t", "k to last turn, k3, w&t."},
        {"k in CC to end", "k in CC to end."},
    });
}

TEST(RowsRead, StartsAndEnds)
{
    expectTold({
        {"With CC, k10", "With CC, k10."},
        {"Join MC, k10. Break MC.", "Join MC, k10. Break MC."},
        {"Change to CC, k10", "With CC, k10."},
        {"Slip first 6 sts to right needle, join CC, k3, slide",
         "Slip first 6 sts to right needle, join CC, k3, slide."},
        {"Move all sts to left needle, k3", "Move all sts to left needle, k3."},
        {"k10, w&t", "k10, w&t."},
        {"k10, wrap and turn", "k10, w&t."},
        {"k70, turn", "k70, turn."},
        {"k70, turn, leaving 44 sts unworked", "k70, turn, leaving 44 sts unworked."},
        {"k10, turn for DS", "k10, turn for DS."},
        {"k10, turn, yo", "k10, turn, yo."},
        {"k10, turn, pin yarn", "k10, turn, pin yarn."},
        {"k10, make twin st, turn", "k10, make twin st, turn."},
        {"k to end, turn", "knit."},
        {"bind off all sts", "bind off all sts."},
        {"BO", "bind off all sts."},
        {"k3, cast off rem sts", "k3, bind off rem sts."},
        {"work no sts", "not drawn yet."},
        {"k3 in CC, k2", "k3 in CC, k2."},
        {"pm A, k3, sm B, k2, remove marker A, k1", "pm A, k3, sm B, k2, remove marker A, k1."},
    });
}

// The stitch that stays on the right needle is not among those that follow: Mee, Exercises in Knitting, 1846
// (e-text 21032), p. 98, vandyke border, row 20.
TEST(RowsRead, BindingOffWithinARow)
{
    expectTold({
        {"bo 5, k11", "bo 5, k11."},
        {"cast off 5, k11", "bo 5, k11."},
        {"bo 5 (st on right needle counts as next st), k2tog",
         "bo 5 (st on right needle counts as next st), k2tog."},
        {"bo 5, k to end", "bo 5, k to end."},
    });
    const RowReading read = readRow("bo 5, k11", WS, builtInCatalogue(), head());
    ASSERT_EQ(read.phrases.size(), 2u);
    EXPECT_EQ(std::get<Stretch>(read.phrases[1].is).count, 12);
}

TEST(RowsRead, LettersOfAWordProcessor)
{
    expectTold({
        {"k2\xE2\x80\x94\xC2\xA0k3",
         "1:3: error: found '- k3'; expected a stitch, a marker, a repeat or the end of the row"},
        {"k2,\xC2\xA0yo,\xE2\x80\xA8 k3", "k2, yo, k3."},
        {"\xEF\xBC\x8Ayo, k2tog; rep from \xEF\xBC\x8A to end", "*yo, k2tog; rep from * to end."},
        {"(yo, k2tog) \xC3\x97 3", "[yo, k2tog] 3 times."},
        {"k2,\nyo, k2tog,\nk1", "k2, yo, k2tog, k1."},
    });
}

TEST(RowsRead, SizesInParentheses)
{
    PatternHead sized = head();
    sized.sizes = {"S", "M", "L"};
    EXPECT_EQ(told("k4 (5, 6), yo, k to last 3 (4, 5) sts", Side::RS, sized),
              "k4 (5, 6), yo, k to last 3 (4, 5) sts.");
    EXPECT_EQ(told("[yo, k2tog] 4 (5, 6) times", Side::RS, sized), "[yo, k2tog] 4 (5, 6) times.");
    const RowReading read = readRow("k to end. (45 (51, 57) sts)", Side::RS, builtInCatalogue(), sized);
    ASSERT_TRUE(read.stated.has_value());
    EXPECT_EQ(read.stated->values, (std::vector<int>{45, 51, 57}));
}

TEST(RowsRead, CountsAndNotes)
{
    const auto read = [](const char* text) { return readRow(text, Side::RS, builtInCatalogue(), head()); };
    for (const char* text : {"k45. (45 sts)", "k45 (45 sts)", "k45 \xE2\x80\x94 45 sts", "k45; 45 sts.",
                             "k45. [45 sts]", "k45. 45 sts total"})
        EXPECT_EQ(read(text).stated, Quantity(45)) << text;
    for (const char* text : {"k43, yo, yo. (2 sts inc)", "k4, turn. (4 sts worked, 5 unworked)", "k4"})
        EXPECT_EQ(read(text).stated, std::nullopt) << text;
    EXPECT_EQ(read("k45. (45 sts) Keep an eye on the edge.").note, "Keep an eye on the edge.");
    EXPECT_EQ(read("k45. Keep an eye on the edge.").note, "Keep an eye on the edge.");
    EXPECT_EQ(read("k2. Yo, k2tog.").phrases.size(), 3u);
}

TEST(RowsRead, FaultsHavePlaceAndWhatWasExpected)
{
    expectTold({
        {"k2, flurb, k3",
         "1:5: error: found 'flurb'; expected a stitch, a marker, a repeat or the end of the row"},
        {"k2, [yo, k2tog", "1:15: error: found 'the end of the row'; expected ']'"},
        {"k2, *yo, k2tog", "1:5: error: found '*'; expected 'rep from * to ...' later in the row"},
        {"k2, bo, k3", "1:5: error: found 'bo'; expected how many stitches"},
        {"psso", "1:1: error: found 'psso'; expected a slipped stitch and what it is passed over before it"},
        {"k2-p2", "1:1: error: found 'k2-p2'; expected a stitch, a marker, a repeat or the end of the row"},
        {"turn, k3", "1:7: error: found 'k3'; expected nothing more after the end of the row"},
        {"", "1:1: error: found 'the end of the row'; expected what is worked in this row"},
    });
}

TEST(RowsRead, DoubtsAreSaid)
{
    const auto doubts = [](const char* text) {
        std::string all;
        for (const ReadingNote& note : readRow(text, Side::RS, builtInCatalogue(), head()).notes)
            all += sentence(note) + "|";
        return all;
    };
    EXPECT_NE(doubts("*yo, k2tog; rep from * 3 times").find("3 times more"), std::string::npos);
    EXPECT_NE(doubts("k1, yo, k2tog, twice").find("the last stitch only"), std::string::npos);
    EXPECT_NE(doubts("k1, m1, k1").find("which way it leans"), std::string::npos);
    EXPECT_NE(doubts("*yo, k2tog; rep from *").find("to the end of the row"), std::string::npos);
    EXPECT_NE(doubts("k2tgo").find("'k2tog'"), std::string::npos);
    EXPECT_EQ(doubts("k1, yo, k2tog"), "");
}

TEST(RowsRead, DeepAndLongRowsAreRefusedQuickly)
{
    std::string deep;
    for (int i = 0; i < 20000; ++i)
        deep += "[";
    EXPECT_NE(told((deep + "k1").c_str(), Side::RS).find("nested no deeper than 8"), std::string::npos);
    std::string stars;
    for (int i = 0; i < 20000; ++i)
        stars += "*k1, ";
    EXPECT_FALSE(readRow(stars, Side::RS, builtInCatalogue(), head()).understood);
    std::string longRow = "k1";
    for (int i = 0; i < 50000; ++i)
        longRow += ", yo, k2tog";
    EXPECT_EQ(readRow(longRow, Side::RS, builtInCatalogue(), head()).phrases.size(), 100001u);
}
