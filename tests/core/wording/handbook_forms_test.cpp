// Rows of printed handbooks, painted as charts, come out in the words in which they are told today. The rows
// are facts of the books named, in today's abbreviations.

#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Printed {
    const char* source;
    Side side;
    int castOn;
    const char* row;
    const char* text;
};

const Printed printed[] = {
    {"Mee, Exercises in Knitting (1846), e-text 21032, pattern 3, row 1", Side::RS, 26,
     "k*4 [ yo k*5 k2tog yo2 k2tog ]end-4 k*4",
     "k4, *yo, k5, k2tog, yo twice, k2tog; rep from * to last 4 sts, k4."},
    {"Mee (1846), pattern 2, row 2", Side::WS, 24, "k*4 [ p ]end-4 k*4", "k4, p to last 4 sts, k4."},
    {"Mee (1846), pattern 4, row 1", Side::RS, 44,
     "k*4 k2tog [ [ yo k2tog ]*2 yo k yo k*2 skp k*4 k2tog k*2 ]end-8 [ yo k2tog ]*2 yo k*4",
     "k4, k2tog, *[yo, k2tog] twice, yo, k1, yo, k2, skp, k4, k2tog, k2; rep from * to last 8 sts, [yo, "
     "k2tog] twice, "
     "yo, k4."},
    {"Mee (1846), pattern 6, row 1", Side::RS, 42, "k*4 [ k2tog*4 [ yo k ]*8 k2tog*4 k ]end-4 k*4",
     "k4, *[k2tog] 4 times, [yo, k1] 8 times, [k2tog] 4 times, k1; rep from * to last 4 sts, k4."},
    {"Mee (1846), vandyke border, p. 98, row 20", Side::WS, 24, "bo*13 k*5 yo k2tog k yo k2tog",
     "bo 13, k4, yo, k2tog, k1, yo, k2tog."},
    {"Mee (1846), collar edging, row 4", Side::WS, 15, "bo*5 k*10", "bo 5, k9."},
    {"Mee (1846), collar edging, row 1", Side::RS, 7, "sl1 k [ yo2 k2tog ]*1 yo2 k*3",
     "sl1, k1, yo twice, k2tog, yo twice, k3."},
    {"Lambert, My Knitting Book (1843), e-text 33502, rose leaf, row 4", Side::WS, 21,
     "k p2tog [ yo p*7 yo p3tog ]end-10 yo p*7 yo p2tog k",
     "k1, p2tog, *yo, p7, yo, p3tog; rep from * to last 10 sts, yo, p7, yo, p2tog, k1."},
    {"Beeton's Book of Needlework (1870), e-text 15147, 329, row 1", Side::RS, 9, "sl1 [ yo k ]end",
     "sl1, *yo, k1; rep from * to end."},
    {"Beeton (1870), 312, row 1", Side::RS, 9, "[ k ]end-1 kfb", "k to last st, kfb."},
    {"Beeton (1870), 322 knee cap, row 1", Side::RS, 114, "k*70 turn", "k70, turn, leaving 44 sts unworked."},
    {"Beeton (1870), 301 brioche, row 1", Side::RS, 9, "[ sl1yo k2tog ]end",
     "*sl1yo, k2tog; rep from * to end."},
    {"Handbook of Wool Knitting and Crochet (1918), e-text 26113, bootee instep, row 2", Side::RS, 57,
     "sl1*18 k*21 turn", "sl18, k21, turn, leaving 18 sts unworked."},
    {"Handbook of Wool Knitting and Crochet (1918), bootee instep, row 36", Side::RS, 57,
     "pu*17 k*21 pu*17 [ k ]end", "pu 17, k21, pu 17, k to end."},
    {"Dillmont, Encyclopedia of Needlework (1886), e-text 20776, 396, row 10", Side::WS, 20,
     "bo*8 k*11 p_tbl k", "bo 8, k10, k1 tbl, k1."},
};

} // namespace

TEST(HandbookForms, AreWrittenAsTheyAreTold)
{
    for (const Printed& one : printed)
        EXPECT_EQ(textOf(one.side, one.row, one.castOn), one.text) << one.source;
}
