#include "core/edits/paint.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

struct Case {
    const char* before;
    int column;
    const char* stitch;
    const char* after;
};

TEST(Paint, OneStitchAndItsNeighbours)
{
    const Case cases[] = {
        {"k k k k k k", 2, "p", "k p k k k k"}, {"k k k k k k", 3, "yo2", "k k yo2 k k"},
        {"k c4 k", 3, "p", "k - p - - k"},      // what is left of a cut stitch is no stitch
        {"k c4 k", 1, "yo2", "yo2 - - - k"},    // covered in part from the right
        {"k c4 k", 5, "yo2", "k - - - yo2"},    // and from the left
        {"yo2 yo2 yo2", 2, "c4", "- c4 -"},     // both neighbours cut
        {"yo2 yo2 yo2", 1, "c4", "c4 yo2"},     // covered whole
        {"c4 k k", 2, "c4", "- c4 k"},          // over a part of itself
        {"k k k k k k", 6, "p", "k k k k k p"}, // at the edge
    };
    for (const Case& c : cases) {
        Pattern pattern = patternOf({c.before}, 6);
        const At cell[] = {{0, c.column}};
        const auto edit = paint(pattern, smallCatalogue(), body, cell, st(c.stitch));
        ASSERT_TRUE(edit.ok()) << c.before << ": " << edit.fault().message;
        apply(pattern, edit.value());
        EXPECT_EQ(dump(rowOf(pattern, 0)), c.after);
    }
}

TEST(Paint, SaysTheStitchInTheNameAsWorkedOnThatSide)
{
    const Pattern pattern = patternOf({"k", "k"}, 1);
    const At right[] = {{0, 1}}, wrong[] = {{1, 1}};
    EXPECT_EQ(paint(pattern, smallCatalogue(), body, right, st("k2tog")).value().name, "paint k2tog");
    EXPECT_EQ(paint(pattern, smallCatalogue(), body, wrong, st("p")).value().name, "paint k");
}

TEST(Paint, WhatStandsThereAlreadyIsNoEdit)
{
    const Pattern pattern = patternOf({"k c4 k"}, 8);
    const At cells[] = {{0, 2}};
    EXPECT_TRUE(paint(pattern, smallCatalogue(), body, cells, st("c4")).value().empty());
    const At blank[] = {{0, 8}};
    EXPECT_TRUE(erase(pattern, smallCatalogue(), body, blank).value().empty());
    EXPECT_TRUE(setCellYarn(pattern, body, cells, YarnId{}).value().empty());
    EXPECT_TRUE(setCellYarn(pattern, body, cells, YarnId{1}).value().empty()); // the row's own yarn
    EXPECT_TRUE(fill(pattern, smallCatalogue(), body, {0, 0, 1, 1}, st("k")).value().empty());
    EXPECT_TRUE(shiftRow(pattern, smallCatalogue(), body, 0, 0).value().empty());
}

TEST(Paint, AStrokePutsWideStitchesSideBySide)
{
    Pattern pattern = patternOf({"k k k k k k k k", "k k k k k k k k"}, 8);
    const At cells[] = {{0, 4}, {0, 3}, {0, 2}, {0, 1}, {1, 5}, {0, 5}};
    apply(pattern, paint(pattern, smallCatalogue(), body, cells, st("yo2")).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "yo2 yo2 yo2 k k");
    EXPECT_EQ(dump(rowOf(pattern, 1)), "k k k k yo2 k k");
}

TEST(Paint, RefusesWithNumbersAndChangesNothing)
{
    const Pattern pattern = patternOf({"k k k k k", "k k k k k"}, 5);
    const At pastEdge[] = {{0, 1}, {1, 4}};
    const auto edit = paint(pattern, smallCatalogue(), body, pastEdge, st("c4"));
    ASSERT_FALSE(edit.ok());
    EXPECT_EQ(edit.fault().where, "Section 'Body', Row 2, column 4");
    EXPECT_NE(edit.fault().message.find("4 columns wide, 2 are left"), std::string::npos)
        << edit.fault().message;
    for (const At at : {At{-1, 1}, At{2, 1}, At{0, 0}, At{0, 6}}) {
        const At cell[] = {at};
        EXPECT_FALSE(paint(pattern, smallCatalogue(), body, cell, st("k")).ok());
        EXPECT_FALSE(erase(pattern, smallCatalogue(), body, cell).ok());
        EXPECT_FALSE(setCellYarn(pattern, body, cell, YarnId{2}).ok());
    }
    const At cell[] = {{0, 1}};
    EXPECT_FALSE(paint(pattern, smallCatalogue(), SectionId{9}, cell, st("k")).ok());
    EXPECT_FALSE(paint(pattern, smallCatalogue(), body, cell, StitchId{500}).ok());
    EXPECT_FALSE(paint(pattern, smallCatalogue(), body, cell, st("p"), YarnId{7}).ok());
}

TEST(Paint, YarnOfACell)
{
    Pattern pattern = patternOf({"k yo2 - k"}, 5);
    const At cells[] = {{0, 3}, {0, 4}, {0, 5}};
    apply(pattern, setCellYarn(pattern, body, cells, YarnId{2}).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "k yo2@2 - k@2"); // the whole stitch; no stitch has no yarn
    apply(pattern, setCellYarn(pattern, body, cells, YarnId{}).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "k yo2 - k");
    const At cell[] = {{0, 1}};
    apply(pattern, paint(pattern, smallCatalogue(), body, cell, st("p"), YarnId{2}).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "p@2 yo2 - k");
}

TEST(Fill, AsOftenAsItFits)
{
    Pattern pattern = patternOf({"k k k k k k k", "c4 c4", "k k k k k k k"}, 8);
    const Edit edit = fill(pattern, smallCatalogue(), body, {0, 1, 2, 6}, st("yo2")).value();
    EXPECT_EQ(edit.name, "fill with yo2");
    apply(pattern, edit);
    EXPECT_EQ(dump(rowOf(pattern, 0)), "k yo2 yo2 - k -");
    EXPECT_EQ(dump(rowOf(pattern, 1)), "- yo2 yo2 - - -"); // both cables reached out of the area
    EXPECT_EQ(dump(rowOf(pattern, 2)), "k k k k k k k -");
    const auto narrow = fill(pattern, smallCatalogue(), body, {0, 0, 2, 4}, st("c4"));
    ASSERT_FALSE(narrow.ok());
    EXPECT_NE(narrow.fault().message.find("4 columns wide, the area 3"), std::string::npos);
    EXPECT_FALSE(fill(pattern, smallCatalogue(), body, {0, 3, 1, 4}, st("k")).ok());
    EXPECT_FALSE(fill(pattern, smallCatalogue(), body, {0, 0, 4, 3}, st("k")).ok());
}

TEST(Erase, TakesTheWholeStitch)
{
    Pattern pattern = patternOf({"k c4 k"}, 6);
    const At cells[] = {{0, 4}};
    apply(pattern, erase(pattern, smallCatalogue(), body, cells).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "k - - - - k");
}

TEST(ShiftRow, MovesStitchesAndMarkersAndRefusesToDropThem)
{
    Pattern pattern = patternOf({"k yo2 k - -"}, 6);
    Row row = rowOf(pattern, 0);
    row.moves = {{MarkerId{1}, 3, MoveKind::Place, MoveReach::Once}};
    apply(pattern, Edit{"", {SwapRows{body, {{0, std::make_shared<const Row>(row)}}}}});

    apply(pattern, shiftRow(pattern, smallCatalogue(), body, 0, 2).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "- - k yo2 k");
    EXPECT_EQ(rowOf(pattern, 0).moves[0].boundary, 5);
    const auto off = shiftRow(pattern, smallCatalogue(), body, 0, 1);
    ASSERT_FALSE(off.ok());
    EXPECT_NE(off.fault().message.find("column 6 would fall off the left edge"), std::string::npos)
        << off.fault().message;
    apply(pattern, shiftRow(pattern, smallCatalogue(), body, 0, -2).value());
    EXPECT_EQ(dump(rowOf(pattern, 0)), "k yo2 k - -");
    EXPECT_FALSE(shiftRow(pattern, smallCatalogue(), body, 0, -1).ok());
    EXPECT_FALSE(shiftRow(pattern, smallCatalogue(), body, 1, 1).ok());
}

} // namespace
} // namespace shawlwright
