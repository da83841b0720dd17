// Stitches typed at a cell go on in the direction of knitting.

#include "tests/support/knit.h"

#include "core/derived/typed_stitches.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

struct Case {
    const char* typed;
    int row, column;
    const char* after; // keys of the row from the right edge
    int next;
};

Knit eight()
{
    Knit knit(8);
    knit.rs(". . . . . . . .").ws(". . . . . . . .");
    return knit;
}

} // namespace

TEST(TypedStitches, StandFromTheCellOn)
{
    const Case cases[] = {
        {"k", 0, 3, "- - k - - - - -", 4},
        {"p", 1, 3, "- - k - - - - -", 2}, // purled on WS
        {"k2tog, 2 k, yo", 0, 1, "k2tog k k yo - - - -", 5},
        {"[k, yo] 2 times, 2 k2tog", 0, 1, "k yo k yo k2tog k2tog - -", 7},
        {"k2tog", 0, 3, "- - k2tog - - - - -", 4},
        {"7 k", 0, 1, "k k k k k k k -", 8},
        {"k2, yo twice, ssk", 0, 2, "- k k yo2 ssk - -", 7},
        {"[yo, k2tog] 3 times", 0, 1, "yo k2tog yo k2tog yo k2tog - -", 7},
        {"3 k2tog", 0, 2, "- k2tog k2tog k2tog - - - -", 5},
        {"K2tog", 0, 1, "k2tog - - - - - - -", 2},
        {"knit two together", 0, 1, "k2tog - - - - - - -", 2},
        {"p3, k1", 1, 8, "- - - - p k k k", 4},   // WS: from the left edge on, as seen from RS
        {"yo twice", 1, 8, "- - - - - - yo2", 6}, // its two columns end at the cell
    };
    for (const Case& one : cases) {
        Knit knit = eight();
        Pattern pattern = knit.done();
        TypedStitches typed = typedStitches(pattern, knit.catalogue(), pattern.sections[0].id,
                                            At{one.row, one.column}, one.typed);
        ASSERT_TRUE(typed.edit.ok()) << one.typed << ": " << toText(typed.edit.fault());
        apply(pattern, typed.edit.value());
        EXPECT_EQ(chart(pattern, one.row, knit.catalogue()), one.after) << one.typed;
        EXPECT_EQ(typed.next, (At{one.row, one.next})) << one.typed;
    }
}

TEST(TypedStitches, ThatCanNotStandThereAreRefusedWithNumbers)
{
    const std::pair<const char*, const char*> cases[] = {
        {"9 k", "of 9 stitches 8 fit"}, {"k to end", "whole row"}, {"blub", "blub"},
        {"", "the end of the row"},     {"k2, turn", "whole row"},
    };
    for (const auto& [text, says] : cases) {
        Knit knit = eight();
        const Pattern pattern = knit.done();
        const TypedStitches typed =
            typedStitches(pattern, knit.catalogue(), pattern.sections[0].id, At{0, 1}, text);
        ASSERT_FALSE(typed.edit.ok()) << text;
        EXPECT_NE(typed.edit.fault().message.find(says), std::string::npos)
            << text << ": " << typed.edit.fault().message;
    }
}

// Too many to paint out: as the words of a whole row they may be drawn as repeats.
TEST(TypedStitches, ThatDoNotFitMayBeRepeats)
{
    Knit knit(40);
    knit.rs(". . . . . .");
    const Pattern pattern = knit.done();
    const auto typed = [&](const char* text) {
        return typedStitches(pattern, knit.catalogue(), pattern.sections[0].id, {0, 1}, text);
    };
    EXPECT_TRUE(typed("k2, [yo, k2tog] 18 times, k2").needsRow);
    EXPECT_FALSE(typed("k2, [yo, k2tog] 18 times, k2").edit.ok());
    EXPECT_FALSE(typed("k7").needsRow); // simply too long
    EXPECT_FALSE(typed("k7").edit.ok());
    EXPECT_FALSE(typed("7 k").needsRow); // nor is a number before it a repeat
    EXPECT_NE(typed("7 k").edit.fault().message.find("of 7 stitches 6 fit"), std::string::npos);
    EXPECT_TRUE(typed("k2, [yo, k2tog] twice").edit.ok());
}

TEST(TypedStitches, AWordTakenForAnotherIsTold)
{
    Knit knit = eight();
    const Pattern pattern = knit.done();
    const auto typed = [&](const char* text) {
        return typedStitches(pattern, knit.catalogue(), pattern.sections[0].id, At{0, 1}, text);
    };
    EXPECT_EQ(typed("k2tog").warning, "");
    ASSERT_TRUE(typed("k3togg").edit.ok());
    EXPECT_NE(typed("k3togg").warning.find("k3togg"), std::string::npos) << typed("k3togg").warning;
    EXPECT_NE(typed("k3togg").warning.find("taken as 'k3tog'"), std::string::npos) << typed("k3togg").warning;
}

// Brackets of the reader's own are no answer to somebody who typed none.
TEST(TypedStitches, SayWhatIsWrongWithWhatWasTyped)
{
    Knit knit = eight();
    const Pattern pattern = knit.done();
    const TypedStitches typed =
        typedStitches(pattern, knit.catalogue(), pattern.sections[0].id, At{0, 1}, "3 blub");
    ASSERT_FALSE(typed.edit.ok());
    EXPECT_NE(typed.edit.fault().message.find("blub"), std::string::npos);
    EXPECT_EQ(typed.edit.fault().message.find(']'), std::string::npos) << typed.edit.fault().message;
}

TEST(TypedStitches, PlaceMarkers)
{
    Knit knit = eight();
    Pattern pattern = knit.done();
    TypedStitches typed =
        typedStitches(pattern, knit.catalogue(), pattern.sections[0].id, At{0, 1}, "k3, pm, k2");
    ASSERT_TRUE(typed.edit.ok()) << toText(typed.edit.fault());
    apply(pattern, typed.edit.value());
    ASSERT_EQ(pattern.sections[0].rows[0]->moves.size(), 1u);
    EXPECT_EQ(pattern.sections[0].rows[0]->moves[0].boundary, 3);
    EXPECT_TRUE(faultsOf(pattern, knit.catalogue()).empty());
}

TEST(TypedStitches, ARowStartsOverTheRowBelow)
{
    Knit knit(5);
    knit.rs(". k*5 . .").ws(". . . . . . . .").rs(". . . . . . . .");
    const Pattern pattern = knit.done();
    EXPECT_EQ(startOfRow(pattern.sections[0], 0), (At{0, 1}));
    EXPECT_EQ(startOfRow(pattern.sections[0], 1), (At{1, 6}));
    EXPECT_EQ(startOfRow(pattern.sections[0], 2), (At{2, 1})); // nothing below
}
