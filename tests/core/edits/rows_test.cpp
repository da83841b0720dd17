#include "core/edits/rows.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

Pattern withRepeats(int rows, std::vector<Box> boxes, std::vector<Bracket> brackets = {}, int columns = 8)
{
    Pattern pattern =
        patternOf(std::vector<std::string>(static_cast<std::size_t>(rows), "k k k k k k k k"), columns);
    pattern.sections[0].frame.boxes = std::move(boxes);
    pattern.sections[0].frame.brackets = std::move(brackets);
    return pattern;
}

Bracket bracket(std::uint32_t first, std::uint32_t last)
{
    return Bracket{RowId{first}, RowId{last}, 2};
}

std::string repeats(const Pattern& pattern)
{
    const Section& section = pattern.sections[0];
    std::string text;
    for (const Box& each : section.frame.boxes)
        text += "[" + dump(section, each) + "]";
    for (const Bracket& each : section.frame.brackets)
        text += "{" + dump(section, each) + "}";
    return text;
}

std::string sides(const Pattern& pattern)
{
    std::string text;
    for (const RowRef& row : pattern.sections[0].rows)
        text += row->side == Side::RS ? 'R' : 'W';
    return text;
}

std::string ids(const Pattern& pattern)
{
    std::string text;
    for (const RowRef& row : pattern.sections[0].rows)
        text += std::to_string(row->id.value) + " ";
    return text;
}

void applied(Pattern& pattern, const Result<Edit>& edit)
{
    ASSERT_TRUE(edit.ok()) << toText(edit.fault());
    const Pattern before = pattern;
    const Edit takeBack = apply(pattern, edit.value()).takeBack;
    EXPECT_EQ(faultsOf(pattern, smallCatalogue()), Faults{}) << edit.value().name;
    Pattern back = pattern;
    apply(back, takeBack);
    EXPECT_EQ(back, before) << edit.value().name;
}

TEST(SetRow, KeepsTheIdAndIsNothingWhenNothingChanged)
{
    Pattern pattern = withRepeats(2, {});
    Row row = rowOf(pattern, 1);
    EXPECT_TRUE(setRow(pattern, body, 1, row, "note").value().empty());
    row.id = RowId{77};
    row.note = "purl loosely";
    applied(pattern, setRow(pattern, body, 1, row, "note"));
    EXPECT_EQ(rowOf(pattern, 1).id, RowId{2});
    EXPECT_EQ(rowOf(pattern, 1).note, "purl loosely");
}

TEST(SetRow, RefusesWhatCannotBe)
{
    const Pattern pattern = withRepeats(2, {});
    const auto refused = [&](auto change) {
        Row row = rowOf(pattern, 0);
        change(row);
        return !setRow(pattern, body, 0, row, "").ok();
    };
    EXPECT_TRUE(refused([](Row& row) { row.yarn = YarnId{5}; }));
    EXPECT_TRUE(refused([](Row& row) { row.cells.resize(9); }));
    EXPECT_TRUE(refused([](Row& row) { row.stated = -1; }));
    EXPECT_TRUE(refused([](Row& row) {
        row.stated = Quantity(std::vector<int>{1, 2});
    })); // there is one size
    EXPECT_TRUE(refused([](Row& row) { row.moves = {{MarkerId{1}, 9}}; }));
    EXPECT_TRUE(refused([](Row& row) { row.moves = {{MarkerId{9}, 1}}; }));
    EXPECT_TRUE(refused([](Row& row) { row.note = "\xff"; }));
    EXPECT_TRUE(refused([](Row& row) { row.start = {StartKind::AfterSlipping, -3, false}; }));
    EXPECT_FALSE(setRow(pattern, body, 2, rowOf(pattern, 0), "").ok());
}

TEST(InsertRows, SidesGoOnAndTheYarnIsThatOfTheRowBelow)
{
    Pattern pattern = withRepeats(3, {});
    Row row = rowOf(pattern, 1);
    row.yarn = YarnId{2};
    applied(pattern, setRow(pattern, body, 1, row, ""));
    const auto edit = insertRows(pattern, body, 2, 3);
    EXPECT_EQ(edit.value().name, "insert 3 rows");
    applied(pattern, edit);
    EXPECT_EQ(sides(pattern), "RWRWRR");
    EXPECT_EQ(rowOf(pattern, 2).yarn, YarnId{2});
    EXPECT_EQ(dump(rowOf(pattern, 2)), "- - - - - - - -");
    applied(pattern, insertRows(pattern, body, 0, 2));
    EXPECT_EQ(sides(pattern), "RWRWRWRR"); // two rows lead to the first one
    applied(pattern, insertRows(pattern, body, 0, 1));
    EXPECT_EQ(sides(pattern), "WRWRWRWRR");
}

TEST(InsertRows, AfterASlideTheSideStays)
{
    Pattern pattern = withRepeats(1, {});
    Row row = rowOf(pattern, 0);
    row.finish.kind = FinishKind::Slide;
    applied(pattern, setRow(pattern, body, 0, row, ""));
    applied(pattern, insertRows(pattern, body, 1, 2));
    EXPECT_EQ(sides(pattern), "RRW");
    row.finish.kind = FinishKind::Round;
    applied(pattern, setRow(pattern, body, 0, row, ""));
    applied(pattern, insertRows(pattern, body, 1, 2));
    EXPECT_EQ(sides(pattern).substr(0, 3), "RRR");
}

TEST(InsertRows, InsideARepeatTheyBelongToIt)
{
    Pattern pattern = withRepeats(4, {box(2, 3, 3, 4)}, {bracket(2, 3)});
    applied(pattern, insertRows(pattern, body, 2, 2));
    EXPECT_EQ(repeats(pattern), "[rows 2-5, columns 3-4]{rows 2-5}");
    applied(pattern, insertRows(pattern, body, 1, 1));
    EXPECT_EQ(repeats(pattern), "[rows 3-6, columns 3-4]{rows 3-6}");
    applied(pattern, insertRows(pattern, body, 6, 1));
    EXPECT_EQ(repeats(pattern), "[rows 3-6, columns 3-4]{rows 3-6}");
}

TEST(InsertRows, PastedRowsGetFreshIdsAndWidenTheChart)
{
    Pattern pattern = withRepeats(2, {});
    Row wide = rowOf(pattern, 0);
    wide.cells = cellsOf("k k k k k k k k k k");
    applied(pattern, insertRows(pattern, body, 1, std::vector<Row>{wide, rowOf(pattern, 1)}, "paste 2 rows"));
    EXPECT_EQ(ids(pattern), "1 3 4 2 ");
    EXPECT_EQ(pattern.sections[0].frame.columns, 10);
    for (const RowRef& row : pattern.sections[0].rows)
        EXPECT_EQ(row->cells.size(), 10u);
}

TEST(InsertRows, RefusesWithNumbers)
{
    const Pattern pattern = withRepeats(2, {});
    EXPECT_FALSE(insertRows(pattern, body, -1, 1).ok());
    EXPECT_FALSE(insertRows(pattern, body, 3, 1).ok());
    EXPECT_FALSE(insertRows(pattern, body, 0, 0).ok());
    const auto many = insertRows(pattern, body, 0, mostRows);
    ASSERT_FALSE(many.ok());
    EXPECT_NE(many.fault().message.find("19998"), std::string::npos) << many.fault().message;
}

TEST(DeleteRows, RepeatsShrinkToTheRowsThatStay)
{
    struct Case {
        int first, last;
        const char* after;
    };
    const Case cases[] = {
        {0, 0, "[rows 1-3, columns 3-4]{rows 1-2}"}, // before them
        {1, 1, "[rows 2-3, columns 3-4]{rows 2-2}"}, // their first row
        {2, 2, "[rows 2-3, columns 3-4]{rows 2-2}"},
        {3, 4, "[rows 2-3, columns 3-4]{rows 2-3}"}, // the box's last row and one more
        {1, 2, "[rows 2-2, columns 3-4]"},           // the bracket whole
        {1, 4, ""},
    };
    for (const Case& c : cases) {
        Pattern pattern = withRepeats(6, {box(2, 4, 3, 4)}, {bracket(2, 3)});
        applied(pattern, deleteRows(pattern, body, c.first, c.last));
        EXPECT_EQ(repeats(pattern), c.after) << c.first << " to " << c.last;
    }
}

TEST(DeleteRows, NamesThemByTheirLabels)
{
    Pattern pattern = withRepeats(6, {});
    EXPECT_EQ(deleteRows(pattern, body, 2, 4).value().name, "delete rows 3 to 5");
    EXPECT_EQ(deleteRows(pattern, body, 2, 2).value().name, "delete row 3");
    EXPECT_FALSE(deleteRows(pattern, body, 0, 5).ok()); // one has to stay
    EXPECT_FALSE(deleteRows(pattern, body, 3, 2).ok());
    EXPECT_FALSE(deleteRows(pattern, body, 4, 6).ok());
}

TEST(DuplicateRows, RepeatsGoWithTheirRows)
{
    Pattern pattern =
        withRepeats(4, {box(2, 3, 3, 4, 1), box(1, 3, 6, 7, 2)}, {bracket(2, 3), bracket(1, 4)});
    applied(pattern, duplicateRows(pattern, body, 1, 2));
    EXPECT_EQ(ids(pattern), "1 2 3 5 6 4 ");
    EXPECT_EQ(repeats(pattern), "[rows 2-3, columns 3-4][rows 1-5, columns 6-7][rows 4-5, columns 3-4]"
                                "{rows 2-3}{rows 1-6}{rows 4-5}");
    const auto& boxes = pattern.sections[0].frame.boxes;
    EXPECT_EQ(boxes[2].id, BoxId{3});
}

TEST(MoveRows, RepeatsKeepTheirRowsOrLetThemGo)
{
    struct Case {
        int first, last, before;
        const char* order;
        const char* repeats;
    };
    const Case cases[] = {
        {0, 0, 6, "2 3 4 5 6 1 ", "[rows 1-3, columns 3-4]"},
        {1, 3, 6, "1 5 6 2 3 4 ", "[rows 4-6, columns 3-4]"}, // the box whole
        {1, 1, 4, "1 3 4 2 5 6 ", "[rows 2-4, columns 3-4]"}, // within the box
        {1, 1, 6, "1 3 4 5 6 2 ", "[rows 2-3, columns 3-4]"}, // out of it
        {5, 5, 2, "1 2 6 3 4 5 ", "[rows 2-5, columns 3-4]"}, // into it
        {2, 4, 0, "3 4 5 1 2 6 ", "[rows 5-5, columns 3-4]"},
    };
    for (const Case& c : cases) {
        Pattern pattern = withRepeats(6, {box(2, 4, 3, 4)});
        applied(pattern, moveRows(pattern, body, c.first, c.last, c.before));
        EXPECT_EQ(ids(pattern), c.order);
        EXPECT_EQ(repeats(pattern), c.repeats) << c.order;
    }
    const Pattern pattern = withRepeats(6, {});
    EXPECT_TRUE(moveRows(pattern, body, 1, 2, 1).value().empty());
    EXPECT_TRUE(moveRows(pattern, body, 1, 2, 3).value().empty());
    EXPECT_FALSE(moveRows(pattern, body, 1, 2, 7).ok());
}

TEST(InsertColumns, BoxesAndMarkersBeyondMove)
{
    struct Case {
        int boundary;
        const char* boxes;
        const char* cells;
        int marker;
    };
    const Case cases[] = {
        {0, "[rows 1-1, columns 5-6]", "- - k k c4 k", 6}, {2, "[rows 1-1, columns 5-6]", "k k - - c4 k", 6},
        {3, "[rows 1-1, columns 3-6]", "k k c4 - - k", 4}, // inside the box; the cable stays whole
        {4, "[rows 1-1, columns 3-4]", "k k c4 - - k", 4}, {7, "[rows 1-1, columns 3-4]", "k k c4 k - -", 4},
    };
    for (const Case& c : cases) {
        Pattern pattern = patternOf({"k k c4 k"}, 7);
        pattern.sections[0].frame.boxes = {box(1, 1, 3, 4)};
        Row row = rowOf(pattern, 0);
        row.moves = {{MarkerId{1}, 4}};
        applied(pattern, setRow(pattern, body, 0, row, ""));
        applied(pattern, insertColumns(pattern, body, c.boundary, 2));
        EXPECT_EQ(repeats(pattern), c.boxes) << c.boundary;
        EXPECT_EQ(dump(rowOf(pattern, 0)), c.cells) << c.boundary;
        EXPECT_EQ(rowOf(pattern, 0).moves[0].boundary, c.marker) << c.boundary;
        EXPECT_EQ(pattern.sections[0].frame.columns, 9);
    }
    const Pattern pattern = patternOf({"k"}, 7);
    EXPECT_EQ(insertColumns(pattern, body, 2, 1).value().name, "insert 1 column");
    EXPECT_FALSE(insertColumns(pattern, body, 8, 1).ok());
    EXPECT_FALSE(insertColumns(pattern, body, 0, mostColumns).ok());
}

TEST(DeleteColumns, BoxesShrinkMarkersStayInTheChart)
{
    struct Case {
        int first, last;
        const char* boxes;
        const char* cells;
        int marker;
    };
    const Case cases[] = {
        {1, 1, "[rows 1-1, columns 2-5]", "k c4 k", 4},    {3, 6, "", "k k k", 2},
        {2, 3, "[rows 1-1, columns 2-4]", "k - - - k", 3}, // the cable cut: the rest is no stitch
        {6, 7, "[rows 1-1, columns 3-5]", "k k - - -", 5}, {7, 7, "[rows 1-1, columns 3-6]", "k k c4", 5},
    };
    for (const Case& c : cases) {
        Pattern pattern = patternOf({"k k c4 k"}, 7);
        pattern.sections[0].frame.boxes = {box(1, 1, 3, 6)};
        Row row = rowOf(pattern, 0);
        row.moves = {{MarkerId{1}, 5}};
        applied(pattern, setRow(pattern, body, 0, row, ""));
        applied(pattern, deleteColumns(pattern, smallCatalogue(), body, c.first, c.last));
        EXPECT_EQ(repeats(pattern), c.boxes) << c.first;
        EXPECT_EQ(dump(rowOf(pattern, 0)), c.cells) << c.first;
        EXPECT_EQ(rowOf(pattern, 0).moves[0].boundary, c.marker) << c.first;
    }
    const Pattern pattern = patternOf({"k"}, 7);
    EXPECT_EQ(deleteColumns(pattern, smallCatalogue(), body, 3, 5).value().name, "delete columns 3 to 5");
    EXPECT_FALSE(deleteColumns(pattern, smallCatalogue(), body, 1, 7).ok());
    EXPECT_FALSE(deleteColumns(pattern, smallCatalogue(), body, 0, 2).ok());
    EXPECT_FALSE(deleteColumns(pattern, smallCatalogue(), body, 5, 4).ok());
}

} // namespace
} // namespace shawlwright
