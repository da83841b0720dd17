#include "core/edits/marks.h"
#include "core/edits/paint.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

#include <cmath>

namespace shawlwright {
namespace {

using namespace test;

void applied(Pattern& pattern, const Result<Edit>& edit)
{
    ASSERT_TRUE(edit.ok()) << toText(edit.fault());
    const Pattern before = pattern;
    const Edit takeBack = apply(pattern, edit.value()).takeBack;
    const Catalogue catalogue = smallCatalogue().with(pattern.head.stitches);
    EXPECT_EQ(faultsOf(pattern, catalogue), Faults{}) << edit.value().name;
    Pattern back = pattern;
    apply(back, takeBack);
    EXPECT_EQ(back, before) << edit.value().name;
}

std::string titles(const Pattern& pattern)
{
    std::string text;
    for (const Section& section : pattern.sections)
        text += section.frame.title + "/";
    return text;
}

TEST(NewPattern, IsAnEmptyGridWithoutFaults)
{
    NewPattern wishes;
    wishes.castOn.firstSide = Side::WS;
    const Pattern pattern = newPattern(wishes);
    EXPECT_EQ(faultsOf(pattern, smallCatalogue()), Faults{});
    ASSERT_EQ(pattern.sections.size(), 1u);
    EXPECT_EQ(pattern.sections[0].rows.size(), 20u);
    EXPECT_EQ(pattern.head.yarns.size(), 2u);
    EXPECT_EQ(rowOf(pattern, 0).side, Side::WS);
    EXPECT_EQ(rowOf(pattern, 1).side, Side::RS);
    for (const RowRef& row : pattern.sections[0].rows)
        EXPECT_EQ(row->cells, std::vector<Cell>(20));
    wishes.rows = -4;
    wishes.columns = 1 << 30;
    EXPECT_EQ(faultsOf(newPattern(wishes), smallCatalogue()), Faults{});
}

TEST(Sections, AddedRenamedMovedDuplicatedDeleted)
{
    Pattern pattern = patternOf({"k k", "k k", "k k"}, 2);
    pattern.sections[0].frame.brackets = {{RowId{1}, RowId{2}, 3}};
    pattern.sections[0].frame.boxes = {box(1, 3, 1, 2)};
    EXPECT_EQ(addSection(pattern, 1, "Left wing", 2, 4).value().name, "add section 'Left wing'");
    applied(pattern, addSection(pattern, 1, "Left wing", 2, 4));
    EXPECT_EQ(pattern.sections[1].rows[0]->side, Side::WS); // goes on after an RS row
    applied(pattern, renameSection(pattern, pattern.sections[1].id, " Edge "));
    EXPECT_EQ(titles(pattern), "Body/Edge/");
    EXPECT_TRUE(renameSection(pattern, body, "Body").value().empty());
    applied(pattern, duplicateSection(pattern, body));
    EXPECT_EQ(titles(pattern), "Body/Body (copy)/Edge/");
    const Section& copy = pattern.sections[1];
    EXPECT_EQ(dump(copy, copy.frame.boxes[0]), "rows 1-3, columns 1-2");
    EXPECT_EQ(dump(copy, copy.frame.brackets[0]), "rows 1-2");
    EXPECT_EQ(rowIndex(pattern.sections[0], copy.rows[0]->id), -1); // ids of its own
    applied(pattern, moveSection(pattern, body, 2));
    EXPECT_EQ(titles(pattern), "Body (copy)/Edge/Body/");
    EXPECT_TRUE(moveSection(pattern, body, 2).value().empty());
    applied(pattern, deleteSection(pattern, body));
    applied(pattern, deleteSection(pattern, pattern.sections[0].id));
    EXPECT_EQ(titles(pattern), "Edge/");
    EXPECT_FALSE(deleteSection(pattern, pattern.sections[0].id).ok());
    EXPECT_FALSE(deleteSection(pattern, body).ok()); // long gone
    EXPECT_FALSE(addSection(pattern, 0, "  ", 1, 1).ok());
    EXPECT_FALSE(addSection(pattern, 2, "Far", 1, 1).ok());
    EXPECT_FALSE(addSection(pattern, 0, "Big", 1, mostColumns + 1).ok());
    EXPECT_FALSE(renameSection(pattern, pattern.sections[0].id, "").ok());
}

TEST(SetFrame, WidensAndNarrowsWithoutCutting)
{
    Pattern pattern = patternOf({"k k", "k k k"}, 5);
    SectionFrame frame = pattern.sections[0].frame;
    frame.columns = 9;
    applied(pattern, setFrame(pattern, body, frame, "width"));
    EXPECT_EQ(rowOf(pattern, 0).cells.size(), 9u);
    frame.columns = 3;
    applied(pattern, setFrame(pattern, body, frame, "width"));
    EXPECT_EQ(rowOf(pattern, 1).cells.size(), 3u);
    frame.columns = 2;
    const auto cut = setFrame(pattern, body, frame, "width");
    ASSERT_FALSE(cut.ok());
    EXPECT_EQ(cut.fault().where, "Section 'Body', Row 2");
    EXPECT_NE(cut.fault().message.find("column 3"), std::string::npos);

    frame.columns = 4;
    applied(pattern, setFrame(pattern, body, frame, "width"));
    applied(pattern, placeMarker(pattern, body, 0, 4, MarkerId{1}));
    frame.columns = 3;
    EXPECT_FALSE(setFrame(pattern, body, frame, "width").ok()); // the marker
    frame = pattern.sections[0].frame;
    frame.versions = {"plain"};
    EXPECT_FALSE(setFrame(pattern, body, frame, "versions").ok()); // the pattern has no versions
}

TEST(SetHead, RefusesToDropWhatIsInUse)
{
    Pattern pattern = patternOf({"k k", "k k"}, 2);
    pattern.head.yarns.push_back(Yarn{YarnId{3}, "C3", "rust", 0xAA5522});
    const At cell[] = {{0, 1}};
    applied(pattern, setCellYarn(pattern, body, cell, YarnId{2}));
    applied(pattern, placeMarker(pattern, body, 1, 1, MarkerId{1}));

    PatternHead head = pattern.head;
    EXPECT_TRUE(setHead(pattern, head, "").value().empty());
    std::swap(head.yarns[0], head.yarns[1]);
    EXPECT_TRUE(setHead(pattern, head, "").ok()); // order is free
    head = pattern.head;
    head.yarns.erase(head.yarns.begin() + 1);
    const auto worked = setHead(pattern, head, "");
    ASSERT_FALSE(worked.ok());
    EXPECT_EQ(worked.fault().where, "Section 'Body', Row 1");
    EXPECT_NE(worked.fault().message.find("CC"), std::string::npos);
    head = pattern.head;
    head.yarns.erase(head.yarns.begin() + 2); // nobody works it
    applied(pattern, setHead(pattern, head, "take out yarn C3"));
    head = pattern.head;
    head.markers.erase(head.markers.begin());
    EXPECT_FALSE(setHead(pattern, head, "").ok());
    head = pattern.head;
    head.markers.erase(head.markers.begin() + 1);
    EXPECT_TRUE(setHead(pattern, head, "").ok());
}

TEST(SetHead, OwnStitches)
{
    Pattern pattern = patternOf({"k k k k", "k k k k"}, 4);
    PatternHead head = pattern.head;
    Stitch shell = stitch("shell", 1, 3);
    shell.id = freshStitchId(head);
    head.stitches.push_back(shell);
    applied(pattern, setHead(pattern, head, "add stitch shell"));
    const Catalogue catalogue = smallCatalogue().with(pattern.head.stitches);
    const At cell[] = {{0, 2}};
    applied(pattern, paint(pattern, catalogue, body, cell, shell.id));

    head = pattern.head;
    head.stitches.clear();
    EXPECT_FALSE(setHead(pattern, head, "").ok());
    head.stitches = {shell};
    head.stitches[0].leaves = 2;
    EXPECT_FALSE(setHead(pattern, head, "").ok()); // its width in the chart would change
    head.stitches[0] = shell;
    head.stitches[0].takesUp = 2;
    applied(pattern, setHead(pattern, head, "change stitch shell"));
    head.stitches[0].takesUp = -1;
    EXPECT_FALSE(setHead(pattern, head, "").ok());
}

TEST(SetHead, VersionsAndSizesTakeTheirNumbersAlong)
{
    Pattern pattern = patternOf({"k k", "k k"}, 2);
    PatternHead head = pattern.head;
    head.versions = {"garter", "brioche"};
    head.sizes = {"small", "large"};
    applied(pattern, setHead(pattern, head, "versions and sizes"));
    SectionFrame frame = pattern.sections[0].frame;
    frame.versions = {"brioche"};
    applied(pattern, setFrame(pattern, body, frame, "version"));
    Row row = rowOf(pattern, 0);
    row.stated = Quantity(std::vector<int>{40, 60});
    applied(pattern, setRow(pattern, body, 0, row, "stated"));
    Box made = box(1, 1, 1, 2, 0);
    made.times = Quantity(std::vector<int>{4, 6});
    applied(pattern, addBox(pattern, body, made));

    head = pattern.head;
    head.versions[1] = "two-colour brioche";
    head.sizes = {"large", "small", "huge"};
    applied(pattern, setHead(pattern, head, "rename"));
    EXPECT_EQ(pattern.sections[0].frame.versions, std::vector<std::string>{"two-colour brioche"});
    EXPECT_EQ(rowOf(pattern, 0).stated->values, (std::vector<int>{60, 40, 60}));
    EXPECT_EQ(pattern.sections[0].frame.boxes[0].times.values, (std::vector<int>{6, 4, 6}));

    head = pattern.head;
    head.sizes = {"small"};
    applied(pattern, setHead(pattern, head, "one size"));
    EXPECT_EQ(*rowOf(pattern, 0).stated, Quantity(40));
    head = pattern.head;
    head.versions = {"garter"};
    EXPECT_FALSE(setHead(pattern, head, "").ok());
}

TEST(SetHead, RefusesNonsense)
{
    const Pattern pattern = patternOf({"k"}, 1);
    const auto refused = [&](auto change) {
        PatternHead head = pattern.head;
        change(head);
        return !setHead(pattern, head, "").ok();
    };
    EXPECT_TRUE(refused([](PatternHead& h) { h.title = " "; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.needleMm = 0; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.gauge.rows = std::nan(""); }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.yarns.clear(); }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.yarns[1].code = "MC"; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.yarns[1].code = "M C"; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.yarns[1].weight = 8; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.castOn.stitches = -1; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.castOn.yarn = YarnId{9}; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.markers[1].name = "A"; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.versions = {"a", "a"}; }));
    EXPECT_TRUE(refused([](PatternHead& h) { h.notes = "\xc3"; }));
}

} // namespace
} // namespace shawlwright
