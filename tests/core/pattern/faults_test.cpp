#include "core/pattern/questions.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace shawlwright {
namespace {

using namespace test;

Row& rowToBreak(Pattern& pattern, int at)
{
    RowRef& ref = pattern.sections[0].rows[static_cast<std::size_t>(at)];
    auto copy = std::make_shared<Row>(*ref);
    ref = copy;
    return *copy;
}

Box& addBox(Pattern& pattern, const Box& made)
{
    pattern.sections[0].frame.boxes.push_back(made);
    return pattern.sections[0].frame.boxes.back();
}

struct Case {
    const char* name;
    std::function<void(Pattern&)> breaks;
    const char* where;
    const char* says;
};

TEST(FaultsOf, EachThingThatCanBeBroken)
{
    const Quantity two(std::vector<int>{1, 2});
    const Case cases[] = {
        {"no yarns", [](Pattern& p) { p.head.yarns.clear(); }, "yarns", "at least one yarn"},
        {"cast-on yarn", [](Pattern& p) { p.head.castOn.yarn = YarnId{9}; }, "castOn",
         "name one of its yarns"},
        {"cast-on count", [](Pattern& p) { p.head.castOn.stitches = -1; }, "castOn", "is -1; 0 to 100000"},
        {"cast-on sizes", [&](Pattern& p) { p.head.castOn.stitches = two; }, "castOn",
         "2 numbers for 1 size"},
        {"markers alike", [](Pattern& p) { p.head.markers[1].name = "A"; }, "markers", "two are called 'A'"},
        {"too wide", [](Pattern& p) { p.sections[0].frame.columns = mostColumns + 1; }, "Section 'Body'",
         "2001 columns"},
        {"row yarn", [](Pattern& p) { rowToBreak(p, 1).yarn = YarnId{}; }, "Section 'Body', Row 2", "yarn"},
        {"row too wide", [](Pattern& p) { rowToBreak(p, 0).cells.resize(9); }, "Section 'Body', Row 1",
         "9 columns in a section of 8"},
        {"slip sizes",
         [&](Pattern& p) {
             rowToBreak(p, 0).start = {StartKind::AfterSlipping, two, false};
         },
         "Section 'Body', Row 1", "2 numbers for 1 size"},
        {"slip count",
         [](Pattern& p) {
             rowToBreak(p, 0).start = {StartKind::AfterSlipping, -2, false};
         },
         "Section 'Body', Row 1", "is -2"},
        {"stated", [](Pattern& p) { rowToBreak(p, 2).stated = mostCount + 1; }, "Section 'Body', Row 3",
         "100001"},
        {"marker outside",
         [](Pattern& p) {
             rowToBreak(p, 0).moves = {{MarkerId{1}, 9}};
         },
         "Section 'Body', Row 1", "after column 9 of 8"},
        {"marker unknown",
         [](Pattern& p) {
             rowToBreak(p, 0).moves = {{MarkerId{7}, 2}};
         },
         "Section 'Body', Row 1", "name one of its markers"},
        {"stitch cut",
         [](Pattern& p) {
             rowToBreak(p, 3).cells[5] = Cell{st("k"), {}, 0};
         },
         "Section 'Body', Row 4", "a part of a stitch"},
        {"stitch of two yarns", [](Pattern& p) { rowToBreak(p, 3).cells[5].yarn = YarnId{2}; },
         "Section 'Body', Row 4", "a part of a stitch"},
        {"unknown stitch", [](Pattern& p) { rowToBreak(p, 0).cells[0].stitch = StitchId{900}; },
         "Section 'Body', Row 1", "a part of a stitch"},
        {"box outside", [](Pattern& p) { addBox(p, box(1, 2, 7, 9)); }, "Section 'Body'",
         "columns 7 to 9 of 8"},
        {"box upside down", [](Pattern& p) { addBox(p, box(2, 1, 1, 2)); }, "Section 'Body'",
         "outside of the chart"},
        {"box without rows", [](Pattern& p) { addBox(p, box(1, 77, 1, 2)); }, "Section 'Body'",
         "outside of the chart"},
        {"box times", [](Pattern& p) { addBox(p, box(1, 2, 1, 2)).times = -1; }, "Section 'Body'",
         "times of a stitch repeat"},
        {"box leaving", [&](Pattern& p) { addBox(p, box(1, 2, 1, 2)).leaving = two; }, "Section 'Body'",
         "left by"},
        {"box marker",
         [](Pattern& p) {
             Box& made = addBox(p, box(1, 2, 1, 2));
             made.until = BoxUntil::Marker;
             made.marker = MarkerId{7};
         },
         "Section 'Body'", "goes to a marker"},
        {"boxes cross",
         [](Pattern& p) {
             addBox(p, box(1, 2, 1, 4, 1));
             addBox(p, box(2, 3, 3, 6, 2));
         },
         "Section 'Body'", "columns 1 to 4 and 3 to 6 share rows"},
        {"bracket outside",
         [](Pattern& p) {
             p.sections[0].frame.brackets = {{RowId{3}, RowId{9}, 2}};
         },
         "Section 'Body'", "row repeat lies outside"},
        {"bracket times",
         [](Pattern& p) {
             p.sections[0].frame.brackets = {{RowId{1}, RowId{2}, mostRepeats + 1}};
         },
         "Section 'Body'", "10001"},
        {"brackets cross",
         [](Pattern& p) {
             p.sections[0].frame.brackets = {{RowId{1}, RowId{3}, 2}, {RowId{2}, RowId{4}, 2}};
         },
         "Section 'Body'", "Rows 1 to 3 and 2 to 4"},
        {"brackets deep",
         [](Pattern& p) {
             for (int i = 0; i <= mostNesting; ++i)
                 p.sections[0].frame.brackets.push_back({RowId{1}, RowId{2}, 1});
         },
         "Section 'Body'", "more than 8 deep"},
        {"boxes deep",
         [](Pattern& p) {
             for (int i = 0; i <= mostNesting; ++i)
                 addBox(p, box(1, 2, 1, 4, static_cast<std::uint32_t>(i) + 1));
         },
         "Section 'Body'", "more than 8 deep"},
    };
    for (const Case& c : cases) {
        Pattern pattern = patternOf({"k k k k k k k k", "k k k k", "yo2 yo2", "k k k c4"}, 8);
        ASSERT_EQ(faultsOf(pattern, smallCatalogue()), Faults{});
        c.breaks(pattern);
        const Faults faults = faultsOf(pattern, smallCatalogue());
        const bool told = std::any_of(faults.begin(), faults.end(), [&](const Fault& fault) {
            return fault.where == c.where && fault.message.find(c.says) != std::string::npos;
        });
        std::string all;
        for (const Fault& fault : faults)
            all += toText(fault) + "\n";
        EXPECT_TRUE(told) << c.name << " gives:\n" << all;
    }
}

TEST(FaultsOf, NestedRepeatsAndQuantitiesBySizeAreWell)
{
    Pattern pattern = patternOf({"k k k k k k k k", "k k k k k k k k", "k k k k k k k k"}, 8);
    pattern.head.sizes = {"S", "M", "L"};
    const Quantity three(std::vector<int>{1, 2, 3});
    pattern.head.castOn.stitches = three;
    addBox(pattern, box(1, 3, 1, 8, 1)).times = three;
    addBox(pattern, box(1, 2, 2, 4, 2));
    addBox(pattern, box(1, 2, 5, 7, 3)).leaving = three;
    addBox(pattern, box(3, 3, 3, 6, 4));
    pattern.sections[0].frame.brackets = {
        {RowId{1}, RowId{3}, three}, {RowId{1}, RowId{1}, 4}, {RowId{2}, RowId{3}, 5}};
    EXPECT_EQ(faultsOf(pattern, smallCatalogue()), Faults{});
}

TEST(Patterns, AreEqualByTheValuesOfTheirRows)
{
    const Pattern one = patternOf({"k k", "p p"}, 2);
    Pattern other = patternOf({"k k", "p p"}, 2);
    EXPECT_EQ(one, other);
    rowToBreak(other, 1).cells[0].stitch = st("k");
    EXPECT_FALSE(one == other);
}

} // namespace
} // namespace shawlwright
