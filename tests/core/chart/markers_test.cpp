#include "core/chart/chart.h"
#include "core/files/builtin_catalogue.h"
#include "tests/drawn/sample.h"

#include <gtest/gtest.h>

namespace shawlwright::chart {
namespace {

struct Line {
    double x, top, bottom, width;
    bool dashed;
    bool operator==(const Line&) const = default;
};

std::vector<Line> uprights(const std::vector<Shape>& shapes)
{
    std::vector<Line> lines;
    for (const Shape& shape : shapes)
        if (const auto* stroke = std::get_if<Stroke>(&shape)) {
            const auto& p = stroke->path.points;
            if (p.size() == 2 && p[0].x == p[1].x)
                lines.push_back({p[0].x, p[1].y, p[0].y, stroke->width, stroke->dashed});
        }
    return lines;
}

bool has(const std::vector<Line>& lines, const Line& line)
{
    return std::find(lines.begin(), lines.end(), line) != lines.end();
}

TEST(Markers, AreSolidWherePlacedThinWhereTheyStandCrossedWhereRemoved)
{
    const Sample s = wedgeSample(builtInCatalogue());
    const auto lines = uprights(markerShapes(s.section, s.head, 1));
    // A: placed in row 1 at boundary 14 (x = 8), stands through row 9a, removed in row 9b.
    EXPECT_TRUE(has(lines, {8, 9, 10, 0.15, false}));
    EXPECT_TRUE(has(lines, {8, 1, 9, 0.06, false}));
    EXPECT_TRUE(has(lines, {8, 0, 1, 0.1, true}));
    // B: placed in row 5 at 6, stands in row 6, moves to 7 in row 7, stands in row 8, removed in row 9a.
    EXPECT_TRUE(has(lines, {16, 5, 6, 0.15, false}));
    EXPECT_TRUE(has(lines, {16, 4, 5, 0.06, false}));
    EXPECT_TRUE(has(lines, {15, 3, 4, 0.15, false}));
    EXPECT_TRUE(has(lines, {15, 2, 3, 0.06, false}));
    EXPECT_TRUE(has(lines, {15, 1, 2, 0.1, true}));
    EXPECT_EQ(lines.size(), 8u);
}

TEST(Markers, OfOneNameAreToldApartByPlace)
{
    Sample s = laceSample(builtInCatalogue());
    s.head.markers = {{MarkerId{1}, "A"}};
    const auto withMoves = [&](std::size_t row, std::vector<MarkerMove> moves) {
        Row changed = *s.section.rows[row];
        changed.moves = std::move(moves);
        s.section.rows[row] = std::make_shared<const Row>(changed);
    };
    withMoves(0, {{MarkerId{1}, 3, MoveKind::Place, {}}, {MarkerId{1}, 10, MoveKind::Place, {}}});
    withMoves(2, {{MarkerId{1}, 10, MoveKind::Remove, {}}});
    const auto lines = uprights(markerShapes(s.section, s.head, 1));
    EXPECT_TRUE(has(lines, {12, 0, 5, 0.06, false})); // the one at 3 stands to the end
    EXPECT_TRUE(has(lines, {5, 4, 5, 0.06, false}));  // the one at 10 stands in row 2 alone
}

TEST(Markers, RemovedWithoutHavingBeenPlacedHereAreShownThereOnly)
{
    Sample s = laceSample(builtInCatalogue());
    Row row = *s.section.rows[1];
    row.moves = {{MarkerId{9}, 4, MoveKind::Remove, {}}};
    s.section.rows[1] = std::make_shared<const Row>(row);
    const auto lines = uprights(markerShapes(s.section, s.head, 1));
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_TRUE(lines[0].dashed);
}

} // namespace
} // namespace shawlwright::chart
