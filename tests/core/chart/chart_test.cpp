// Where things stand on the chart. The sample is our own invention; tests/drawn keeps the whole of it as
// text.
#include "core/chart/chart.h"
#include "core/chart/draw.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "tests/drawn/sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

namespace shawlwright::chart {
namespace {

const Group* groupNamed(const Drawing& drawing, const std::string& name)
{
    for (const Group& group : drawing.groups)
        if (group.name == name)
            return &group;
    return nullptr;
}

std::vector<Text> textsOf(const Group& group)
{
    std::vector<Text> texts;
    for (const Shape& shape : group.shapes)
        if (const auto* text = std::get_if<Text>(&shape))
            texts.push_back(*text);
    return texts;
}

Drawing wedge(const ChartOptions& options = {})
{
    const Sample s = wedgeSample(builtInCatalogue());
    return chartOf({s.section, s.head, builtInCatalogue(), s.facts}, options);
}

TEST(Chart, CellsLieWhereTheHeaderSays)
{
    const Sample s = wedgeSample(builtInCatalogue()); // 22 columns, 10 rows
    EXPECT_EQ(cellRect(s.section, 1, 0, 1), (Rect{21, 9, 1, 1}));
    EXPECT_EQ(cellRect(s.section, 0.5, 9, 22), (Rect{0, 0, 1, 0.5}));
    EXPECT_EQ(cellRect(s.section, 1, 2, 5, 2), (Rect{16, 7, 2, 1}));
}

// The number stands at the side where the row starts: right-side rows at the right (Berroco, lace tutorial
// KB204).
TEST(Chart, RowNumbersStandWhereTheRowStarts)
{
    const Drawing drawing = wedge();
    const auto texts = textsOf(*groupNamed(drawing, "row numbers"));
    const auto number = [&](const std::string& label) {
        return std::find_if(texts.begin(), texts.end(), [&](const Text& t) { return t.words == label; });
    };
    for (const char* rs : {"1", "3", "5", "7", "9a", "9b"}) {
        ASSERT_NE(number(rs), texts.end()) << rs;
        EXPECT_GT(number(rs)->at.x, 22) << rs;
    }
    for (const char* ws : {"2", "4", "6", "8"}) {
        ASSERT_NE(number(ws), texts.end()) << ws;
        EXPECT_LT(number(ws)->at.x, 0) << ws;
    }
    EXPECT_NE(number("join, sl 3"), texts.end());
}

// Stitch 1 at the right (a how-to by Mouse in a Maze Fiber, 2009).
TEST(Chart, StitchNumbersRunFromTheRight)
{
    const auto texts = textsOf(*groupNamed(wedge(), "stitch numbers"));
    std::string words;
    double last = 100;
    for (const Text& text : texts) {
        words += text.words + " ";
        EXPECT_LT(text.at.x, last);
        last = text.at.x;
        EXPECT_NEAR(text.at.x, 22 - std::stoi(text.words) + 0.5, 1e-9);
    }
    EXPECT_EQ(words, "1 5 10 15 20 22 ");
}

TEST(Chart, RowsThatAreWorkedAgainTellTheCountsOfTheFirstAndTheLastTime)
{
    Sample s = wedgeSample(builtInCatalogue());
    s.facts[1].after = 23;
    s.facts[1].atLast = 219;
    const auto texts = textsOf(*groupNamed(chartOf({s.section, s.head, builtInCatalogue(), s.facts}, {}), "stitch counts"));
    const auto says = [&](const std::string& words) {
        return std::count_if(texts.begin(), texts.end(), [&](const Text& text) { return text.words == words; });
    };
    EXPECT_EQ(says("23–219"), 1);
    EXPECT_EQ(says("first–last time"), 1);
}

TEST(Chart, LabelsLeaveTheNamesOfMarkersFree)
{
    // The section of the big sample with stitch repeats to markers on rows full of symbols.
    std::ifstream in(SHAWLWRIGHT_SOURCE "/samples/the-saltings-at-ebb.shawl", std::ios::binary);
    std::stringstream bytes;
    bytes << in.rdbuf();
    const Pattern pattern = readPattern(bytes.str(), builtInCatalogue()).pattern.value();
    const auto section = std::find_if(pattern.sections.begin(), pattern.sections.end(),
                                      [](const Section& one) { return one.frame.title == "Tideline"; });
    ASSERT_NE(section, pattern.sections.end());
    std::vector<Rect> names, labels;
    for (const Shape& shape : markerShapes(*section, pattern.head, 1))
        if (const auto* text = std::get_if<Text>(&shape))
            names.push_back(boundsOf({*text}));
    for (const Shape& shape : boxShapes(*section, pattern.head, 1, &builtInCatalogue()))
        if (const auto* text = std::get_if<Text>(&shape))
            labels.push_back(boundsOf({*text}));
    EXPECT_EQ(names.size(), 4u);
    EXPECT_GE(labels.size(), 9u);
    for (const Rect& name : names)
        for (const Rect& label : labels)
            EXPECT_FALSE(label.x < name.x + name.width && name.x < label.x + label.width &&
                         label.y < name.y + name.height && name.y < label.y + label.height);
}

TEST(Chart, AreasOfOneColourAreOneFill)
{
    const Drawing drawing = wedge();
    EXPECT_EQ(groupNamed(drawing, "yarn tints")->shapes.size(), 2u);
    EXPECT_EQ(groupNamed(drawing, "no stitch")->shapes.size(), 1u);
    EXPECT_EQ(groupNamed(drawing, "resting stitches")->shapes.size(), 1u);
}

double area(const Path& path) // of rectangles
{
    double sum = 0;
    for (std::size_t i = 0; i + 3 < path.points.size(); i += 4)
        sum += (path.points[i + 1].x - path.points[i].x) * (path.points[i + 2].y - path.points[i + 1].y);
    return sum;
}

TEST(Chart, TintsAndNoStitchCoverEachCellOnce)
{
    const Sample s = wedgeSample(builtInCatalogue());
    const Drawing drawing = wedge();
    double covered = 0;
    for (const char* name : {"yarn tints", "no stitch"})
        for (const Shape& shape : groupNamed(drawing, name)->shapes)
            covered += area(std::get<Fill>(shape).path);
    std::size_t resting = 0;
    for (const RowFacts& facts : s.facts)
        resting += facts.restingColumns.size();
    EXPECT_NEAR(covered, 22.0 * 10 - static_cast<double>(resting), 1e-9);
}

TEST(Chart, NoStitchAreasHaveNoLinesInside)
{
    Sample s = laceSample(builtInCatalogue());
    const Drawing drawing = chartOf({s.section, s.head, builtInCatalogue(), {}}, {});
    // Columns 14 of the rows 1 to 3 are no stitch: no line between them at x 1..2, y 4 and y 5.
    for (const Shape& shape : groupNamed(drawing, "grid")->shapes) {
        const Path& path = std::get<Stroke>(shape).path;
        for (std::size_t i = 0; i + 1 < path.points.size(); i += 2) {
            const Point a = path.points[i], b = path.points[i + 1];
            const bool level = a.y == b.y && (a.y == 4 || a.y == 5);
            EXPECT_FALSE(level && std::min(a.x, b.x) < 1.5 && std::max(a.x, b.x) > 1.5)
                << a.x << " " << b.x << " " << a.y;
        }
    }
}

TEST(Chart, RowsAreGroupsWithWordsForThoseWhoCannotSeeThem)
{
    const Drawing drawing = wedge();
    const Group* group = groupNamed(drawing, "row 2");
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->row, 1);
    EXPECT_EQ(group->words, "Row 2, wrong side, 62 stitches");
    EXPECT_EQ(groupNamed(drawing, "row 9b")->words, "Row 9b, right side, 0 stitches");
}

TEST(Chart, BoundsHoldEverything)
{
    for (const double height : {0.5, 1.0, 1.4}) {
        ChartOptions options;
        options.cellHeight = height;
        const Drawing drawing = wedge(options);
        const Rect& b = drawing.bounds;
        for (const Group& group : drawing.groups) {
            const Rect g = boundsOf(group.shapes);
            EXPECT_GE(g.x, b.x) << group.name;
            EXPECT_GE(g.y, b.y) << group.name;
            EXPECT_LE(g.x + g.width, b.x + b.width) << group.name;
            EXPECT_LE(g.y + g.height, b.y + b.height) << group.name;
        }
    }
}

TEST(Chart, PartOfAChartKeepsItsTrueNumbers)
{
    ChartOptions options;
    options.firstRow = 3;
    options.lastRow = 6;
    options.firstColumn = 8;
    options.lastColumn = 17;
    options.key = false;
    const Drawing drawing = wedge(options);
    EXPECT_EQ(groupNamed(drawing, "row 3"), nullptr);
    EXPECT_NE(groupNamed(drawing, "row 4"), nullptr);
    EXPECT_NE(groupNamed(drawing, "row 7"), nullptr);
    EXPECT_EQ(groupNamed(drawing, "row 8"), nullptr);
    std::string numbers;
    for (const Text& text : textsOf(*groupNamed(drawing, "stitch numbers")))
        numbers += text.words + " ";
    EXPECT_EQ(numbers, "8 10 15 17 ");
    const Rect paper = boundsOf(groupNamed(drawing, "paper")->shapes);
    EXPECT_EQ(paper, (Rect{5, 3, 10, 4}));
}

TEST(Chart, FinishesStandAtTheEndOfTheRow)
{
    const Drawing drawing = wedge();
    // Row 9a slides, row 9b binds off and breaks the yarn: all right-side rows, so at the left.
    int left = 0, right = 0;
    for (const Shape& shape : groupNamed(drawing, "row numbers")->shapes)
        if (const auto* stroke = std::get_if<Stroke>(&shape))
            (stroke->path.points.front().x < 0 ? left : right) += 1;
    EXPECT_EQ(left, 3 + 3 + 3); // arrow, arches, break
    EXPECT_EQ(right, 3);        // row 8 breaks its yarn at the right
}

TEST(Chart, TurnsStandBeyondTheLastWorkedCell)
{
    const Sample s = wedgeSample(builtInCatalogue());
    const auto shapes = turnShapes(s.section, 1);
    // Row 1 works columns 1 to 20: the mark lies between x = 1 and the border at x = 2.
    const auto* flag = std::get_if<Fill>(&shapes.front());
    ASSERT_NE(flag, nullptr);
    for (const Point& p : flag->path.points) {
        EXPECT_GT(p.x, 1);
        EXPECT_LT(p.x, 2);
        EXPECT_GT(p.y, 9);
    }
}

TEST(Chart, WorkedColumnsFollowTheKnitting)
{
    const Sample s = wedgeSample(builtInCatalogue());
    EXPECT_EQ(workedColumns(s.section, 0)->first, 1);
    EXPECT_EQ(workedColumns(s.section, 0)->last, 20);
    EXPECT_EQ(workedColumns(s.section, 1)->first, 20);
    EXPECT_EQ(workedColumns(s.section, 1)->last, 1);
    Section empty;
    empty.rows.push_back(std::make_shared<const Row>());
    EXPECT_FALSE(workedColumns(empty, 0).has_value());
}

TEST(Chart, AStitchRepeatIsWorkedOverItsWholeWidth)
{
    Section section;
    section.frame.columns = 9;
    Row row;
    row.id = RowId{1};
    row.cells.resize(9);
    row.cells[1].stitch = builtInCatalogue().require("k"); // the other columns of the repeat only make room
    section.rows.push_back(std::make_shared<const Row>(row));
    Box box;
    box.id = BoxId{1};
    box.firstRow = box.lastRow = RowId{1};
    box.firstColumn = 2;
    box.lastColumn = 6;
    box.until = BoxUntil::RowEnd;
    section.frame.boxes.push_back(box);
    EXPECT_EQ(workedColumns(section, 0)->first, 2);
    EXPECT_EQ(workedColumns(section, 0)->last, 6);
}

TEST(Chart, EmptySectionGivesAnEmptyChart)
{
    Section section;
    PatternHead head;
    const Drawing drawing = chartOf({section, head, builtInCatalogue(), {}}, {});
    EXPECT_TRUE(drawing.groups.empty());
    section.frame.columns = 5;
    section.frame.title = "Nothing yet";
    EXPECT_EQ(chartOf({section, head, builtInCatalogue(), {}}, {}).groups.size(), 1u);
}

// The yarn's letter stands once at the start of each run of rows, on either side: colour is never the only
// signal.
TEST(Chart, YarnLettersStandOncePerRun)
{
    int mc = 0, cc = 0;
    for (const Text& text : textsOf(*groupNamed(wedge(), "yarns")))
        (text.words == "MC" ? mc : cc) += 1;
    EXPECT_EQ(mc, 2 * 3); // rows 1-2, 5-6, 9a
    EXPECT_EQ(cc, 2 * 3); // rows 3-4, 7-8, 9b
}

} // namespace
} // namespace shawlwright::chart
