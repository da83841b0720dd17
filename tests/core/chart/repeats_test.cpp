#include "core/chart/chart.h"
#include "core/chart/draw.h"
#include "core/files/builtin_catalogue.h"
#include "tests/drawn/sample.h"

#include <gtest/gtest.h>

#include <set>

namespace shawlwright::chart {
namespace {

TEST(Repeats, LabelsAreTheTradesWords)
{
    PatternHead head;
    head.markers = {{MarkerId{1}, "A"}};
    Box box;
    box.times = 3;
    EXPECT_EQ(boxLabel(box, head), "× 3");
    box.times = Quantity(std::vector<int>{3, 4, 5});
    EXPECT_EQ(boxLabel(box, head), "× 3 (4, 5)");
    box.until = BoxUntil::RowEnd;
    EXPECT_EQ(boxLabel(box, head), "to end");
    box.leaving = 1;
    EXPECT_EQ(boxLabel(box, head), "to last 1");
    box.leaving = 5;
    EXPECT_EQ(boxLabel(box, head), "to last 5");
    box.until = BoxUntil::LastTurn;
    EXPECT_EQ(boxLabel(box, head), "to 5 before turn");
    box.until = BoxUntil::Marker;
    box.marker = MarkerId{1};
    EXPECT_EQ(boxLabel(box, head), "to 5 before A");
    box.leaving = 0;
    EXPECT_EQ(boxLabel(box, head), "to A");
}

std::vector<Rect> outlines(const std::vector<Shape>& shapes)
{
    std::vector<Rect> rects;
    for (const Shape& shape : shapes)
        if (const auto* stroke = std::get_if<Stroke>(&shape); stroke && stroke->width > 0.08) { // not that of a label
            const Point a = stroke->path.points[0], b = stroke->path.points[2];
            rects.push_back({a.x, a.y, b.x - a.x, b.y - a.y});
        }
    return rects;
}

TEST(Repeats, NestedBoxesAreBothSeen)
{
    const Catalogue& catalogue = builtInCatalogue();
    const Sample s = laceSample(catalogue);
    const auto rects = outlines(boxShapes(s.section, s.head, 1, &catalogue));
    ASSERT_EQ(rects.size(), 3u);
    for (std::size_t i = 0; i + 1 < rects.size(); ++i) { // right and lower borders are shared
        EXPECT_GE(rects[i].x + rects[i].width - rects[i + 1].x - rects[i + 1].width, 0.12);
        EXPECT_GE(rects[i].y + rects[i].height - rects[i + 1].y - rects[i + 1].height, 0.12);
    }
}

bool overlap(const Rect& a, const Rect& b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

TEST(Repeats, LabelsKeepClearOfSymbolsAndOfEachOther)
{
    const Catalogue& catalogue = builtInCatalogue();
    for (const Sample& s : {laceSample(catalogue), wedgeSample(catalogue)}) {
        std::vector<Rect> labels;
        for (const Shape& shape : boxShapes(s.section, s.head, 1, &catalogue))
            if (std::holds_alternative<Fill>(shape))
                labels.push_back(boundsOf({shape}));
        ASSERT_EQ(labels.size(), s.section.frame.boxes.size());
        for (std::size_t i = 0; i < labels.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k)
                EXPECT_FALSE(overlap(labels[i], labels[k]));
            for (int row = 0; row < static_cast<int>(s.section.rows.size()); ++row)
                for (int column = 1; column <= s.section.frame.columns; ++column) {
                    const Cell cell = cellAt(*s.section.rows[static_cast<std::size_t>(row)], column);
                    if (cell.stitch == noStitch || cell.part > 0)
                        continue;
                    const Symbol symbol = symbolOf(catalogue.stitch(cell.stitch));
                    const Rect drawn =
                        boundsOf(symbolIn(symbol, cellRect(s.section, 1, row, column, symbol.width)));
                    EXPECT_FALSE(drawn.width > 0 && overlap(drawn, labels[i])) << row << " " << column;
                }
        }
    }
}

TEST(Repeats, BracketsStandLeftOfZeroAndOuterOnesFurtherOut)
{
    const Sample s = wedgeSample(builtInCatalogue());
    const auto shapes = bracketShapes(s.section, 1);
    const Rect all = boundsOf(shapes);
    EXPECT_LE(all.x + all.width, 0);
    std::set<std::string> words;
    double inner = 0, outer = 0;
    for (const Shape& shape : shapes)
        if (const auto* text = std::get_if<Text>(&shape)) {
            words.insert(text->words);
            (text->words == "× 2" ? inner : outer) = text->at.x;
        }
    EXPECT_EQ(words, (std::set<std::string>{"× 2", "× 10"}));
    EXPECT_LT(outer, inner);
}

} // namespace
} // namespace shawlwright::chart
