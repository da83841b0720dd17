#include "core/edits/turn_moves.h"
#include "core/edits/marks.h"
#include "core/edits/paint.h"
#include "core/edits/rows.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

Pattern shortRows()
{
    Pattern pattern = patternOf({"k k k k - -", "- - k k k k"}, 6); // a right-side row, then one worked to the right
    for (const int at : {0, 1}) {
        Row row = rowOf(pattern, at);
        row.side = at == 0 ? Side::RS : Side::WS;
        row.finish.kind = FinishKind::TurnEarly;
        apply(pattern, setRow(pattern, body, at, row, "turn early").value());
    }
    return pattern;
}

std::string told(const Pattern& pattern, At cell, const char* stitch)
{
    const At cells[] = {cell};
    const auto edit = paint(pattern, smallCatalogue(), body, cells, st(stitch));
    EXPECT_TRUE(edit.ok());
    return turnMovesInWords(pattern, turnMoves(pattern, edit.value()));
}

TEST(TurnMoves, AStitchBeyondTheTurnTakesItAlong)
{
    const Pattern pattern = shortRows();
    EXPECT_EQ(told(pattern, {0, 5}, "k"), "Row 1 turns after stitch 5 now; it turned after stitch 4. "
              "Undo, or set the turn anew with the tool Turn (T).");
    EXPECT_EQ(told(pattern, {1, 2}, "k"), "Row 2 turns after stitch 2 now; it turned after stitch 3. "
              "Undo, or set the turn anew with the tool Turn (T).");
    EXPECT_EQ(told(pattern, {0, 2}, "p"), "") << "within the row nothing moves";
    EXPECT_EQ(told(pattern, {1, 6}, "p"), "") << "nor where the row begins";
}

TEST(TurnMoves, TheLastStitchTakenAwayMovesItBack)
{
    const Pattern pattern = shortRows();
    EXPECT_NE(told(pattern, {0, 4}, "no_st").find("turns after stitch 3 now; it turned after stitch 4"), std::string::npos);
}

TEST(TurnMoves, RowsBeyondTheFirstAreCounted)
{
    const Pattern pattern = shortRows();
    const At cells[] = {{0, 5}, {1, 2}};
    const auto edit = paint(pattern, smallCatalogue(), body, cells, st("k"));
    ASSERT_TRUE(edit.ok());
    const auto moves = turnMoves(pattern, edit.value());
    EXPECT_EQ(moves.size(), 2U);
    EXPECT_NE(turnMovesInWords(pattern, moves).find(", and so in 1 other row."), std::string::npos);
}

TEST(TurnMoves, AStitchWithinARepeatThatTheRowEndsWithMovesNothing)
{
    Pattern pattern = shortRows();
    Box box;
    box.firstRow = box.lastRow = rowOf(pattern, 0).id;
    box.firstColumn = 3;
    box.lastColumn = 5; // its last column holds no stitch
    const auto edit = addBox(pattern, body, box);
    ASSERT_TRUE(edit.ok());
    apply(pattern, edit.value());
    EXPECT_EQ(told(pattern, {0, 5}, "k"), "");
    EXPECT_NE(told(pattern, {0, 6}, "k").find("turns after stitch 6 now; it turned after stitch 5"), std::string::npos);
}

TEST(TurnMoves, RowsThatAreWorkedToTheirEndHaveNone)
{
    const Pattern pattern = patternOf({"k k k k - -"}, 6);
    EXPECT_EQ(told(pattern, {0, 5}, "k"), "");
}

} // namespace
} // namespace shawlwright
