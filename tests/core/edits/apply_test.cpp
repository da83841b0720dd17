#include "core/edits/paint.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

// Applies an edit, takes it back, does it again; the pattern is left with it.
Change performed(Pattern& pattern, const Edit& edit)
{
    const Pattern before = pattern;
    const Applied done = apply(pattern, edit);
    const Pattern after = pattern;
    const Applied undone = apply(pattern, done.takeBack);
    EXPECT_EQ(pattern, before) << edit.name;
    apply(pattern, undone.takeBack);
    EXPECT_EQ(pattern, after) << edit.name;
    EXPECT_EQ(done.takeBack.name, edit.name);
    EXPECT_EQ(undone.takeBack.name, edit.name);
    return done.change;
}

TEST(Apply, ChangeNamesTheRowsThatWereTouched)
{
    Pattern pattern = patternOf({"k k k", "k k k", "k k k", "k k k"}, 3);
    const At cells[] = {{1, 1}, {3, 2}};
    const Change change = performed(pattern, paint(pattern, smallCatalogue(), body, cells, st("p")).value());
    ASSERT_EQ(change.rows.size(), 1u);
    EXPECT_EQ(change.rows[0].first, 1);
    EXPECT_EQ(change.rows[0].last, 3);
    EXPECT_FALSE(change.rows[0].spliced || change.rows[0].frame || change.all || change.head);
}

TEST(Apply, ChangeSaysWhereRowsCameOrWent)
{
    Pattern pattern = patternOf({"k", "k", "k", "k"}, 1);
    Change change = performed(pattern, insertRows(pattern, body, 2, 3).value());
    ASSERT_EQ(change.rows.size(), 1u);
    EXPECT_TRUE(change.rows[0].spliced);
    EXPECT_EQ(change.rows[0].first, 2);
    EXPECT_EQ(change.rows[0].last, 4);
    change = performed(pattern, deleteRows(pattern, body, 1, 2).value());
    ASSERT_EQ(change.rows.size(), 1u);
    EXPECT_TRUE(change.rows[0].spliced);
    EXPECT_EQ(change.rows[0].first, 1);
}

TEST(Apply, TouchedRowsMoveWithRowsThatCome)
{
    Pattern pattern = patternOf({"k", "k", "k"}, 1);
    Row row = rowOf(pattern, 2);
    row.note = "mind the gap";
    Edit edit = setRow(pattern, body, 2, row, "note").value();
    const Edit more = insertRows(pattern, body, 0, 2).value();
    edit.steps.insert(edit.steps.end(), more.steps.begin(), more.steps.end());
    const Change change = performed(pattern, edit);
    EXPECT_EQ(change.rows[0].first, 0);
    EXPECT_EQ(change.rows[0].last, 4); // the row with the note stands there now
    EXPECT_EQ(rowOf(pattern, 4).note, "mind the gap");
}

TEST(Apply, HeadAndSectionsAreTold)
{
    Pattern pattern = patternOf({"k"}, 1);
    PatternHead head = pattern.head;
    head.designer = "Nobody";
    EXPECT_TRUE(performed(pattern, setHead(pattern, head, "designer").value()).head);
    EXPECT_TRUE(performed(pattern, addSection(pattern, 1, "Edge", 2, 3).value()).all);
}

TEST(Apply, UntouchedRowsStaySharedInMemory)
{
    Pattern pattern = patternOf({"k", "k", "k"}, 1);
    const RowRef below = pattern.sections[0].rows[0];
    const At cell[] = {{1, 1}};
    apply(pattern, paint(pattern, smallCatalogue(), body, cell, st("p")).value());
    EXPECT_EQ(pattern.sections[0].rows[0], below);
}

TEST(Composed, TakingBackAStrokeGivesTheOlderRows)
{
    Pattern pattern = patternOf({"k k k", "k k k"}, 3);
    const Pattern before = pattern;
    Edit takeBack;
    for (const At at : {At{0, 1}, At{0, 2}, At{1, 2}, At{0, 2}}) {
        const StitchId next = at == At{1, 2} ? st("yo") : st("p");
        const At cell[] = {at};
        const Edit edit = paint(pattern, smallCatalogue(), body, cell, next).value();
        if (!edit.empty())
            takeBack = composed(apply(pattern, edit).takeBack, takeBack);
    }
    EXPECT_EQ(takeBack.steps.size(), 1u); // one stroke, one swap of rows
    const Pattern after = pattern;
    const Edit again = apply(pattern, takeBack).takeBack;
    EXPECT_EQ(pattern, before);
    apply(pattern, again);
    EXPECT_EQ(pattern, after);
}

TEST(Composed, LaterStandsAndRowsThatComeAreNotPassed)
{
    Pattern pattern = patternOf({"k", "p"}, 1);
    const At first[] = {{0, 1}};
    const Edit one = paint(pattern, smallCatalogue(), body, first, st("yo")).value();
    Pattern stepwise = pattern;
    apply(stepwise, one);
    const Edit two = insertRows(stepwise, body, 0, 1).value();
    apply(stepwise, two);
    const Edit three = paint(stepwise, smallCatalogue(), body, first, st("p")).value();
    apply(stepwise, three);

    const Edit all = composed(composed(one, two), three);
    EXPECT_EQ(all.steps.size(), 3u);
    apply(pattern, all);
    EXPECT_EQ(pattern, stepwise);
    EXPECT_EQ(all.name, one.name);
}

} // namespace
} // namespace shawlwright
