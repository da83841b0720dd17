// "Key entries list only what the chart uses, and everything it uses": The Wrinkled Thistle and Tabatha
// Thomas, articles on chart keys. The form "RS: k; WS: p" is printed by Vogue Knitting. The order is common
// practice, no source.
#include "core/chart/chart.h"
#include "core/chart/draw.h"
#include "core/files/builtin_catalogue.h"
#include "tests/drawn/sample.h"

#include <gtest/gtest.h>

#include <set>

namespace shawlwright::chart {
namespace {

std::set<StitchId> used(const Section& section)
{
    std::set<StitchId> ids;
    for (const RowRef& row : section.rows)
        for (const Cell& cell : row->cells)
            if (cell.stitch != noStitch)
                ids.insert(cell.stitch);
    return ids;
}

TEST(Key, ListsWhatIsUsedAndNothingElse)
{
    const Catalogue& catalogue = builtInCatalogue();
    for (const Sample& s : {wedgeSample(catalogue), laceSample(catalogue)}) {
        std::set<StitchId> listed;
        for (const KeyEntry& entry : keyOf(s.section, catalogue))
            if (entry.kind == KeyKind::Stitch) {
                EXPECT_TRUE(listed.insert(entry.stitch).second);
            }
        EXPECT_EQ(listed, used(s.section));
    }
}

TEST(Key, StandsInTheUsualOrder)
{
    const Catalogue& catalogue = builtInCatalogue();
    const Sample s = wedgeSample(catalogue);
    std::vector<std::string> words;
    for (const KeyEntry& entry : keyOf({&s.section}, catalogue, {s.facts}))
        words.push_back(entry.words.empty() ? entry.name : entry.words);
    const std::vector<std::string> expected = {"RS: k; WS: p",
                                               "RS: p; WS: k",
                                               "yo",
                                               "RS: k2tog; WS: p2tog",
                                               "RS: s2kp; WS: cddp",
                                               "sl1",
                                               "DS",
                                               "no stitch",
                                               "stitch that rests, not worked",
                                               "turn",
                                               "turn, then make a double stitch",
                                               "slip to the right needle, not worked",
                                               "slide: do not turn, begin again at the other end",
                                               "bind off at the end of the row",
                                               "break the yarn",
                                               "place marker; thin line: it stands here",
                                               "remove marker",
                                               "stitch repeat",
                                               "row repeat"};
    EXPECT_EQ(words, expected);
}

TEST(Key, OfSeveralSectionsHasEachOnce)
{
    const Catalogue& catalogue = builtInCatalogue();
    const Sample a = wedgeSample(catalogue), b = laceSample(catalogue);
    const auto both = keyOf({&a.section, &b.section}, catalogue);
    std::set<StitchId> listed, all = used(a.section);
    all.merge(used(b.section));
    for (const KeyEntry& entry : both)
        if (entry.kind == KeyKind::Stitch)
            listed.insert(entry.stitch);
    EXPECT_EQ(listed, all);
}

TEST(Key, KeepsWithinItsWidthAndWithoutOverlap)
{
    const Catalogue& catalogue = builtInCatalogue();
    std::vector<KeyEntry> entries;
    for (const Stitch& stitch : catalogue.builtIn())
        entries.push_back({stitch.id, stitch.onRS, stitch.name, KeyKind::Stitch, TurnMethod::Plain});
    for (const double width : {7.0, 12.0, 20.0, 45.0}) {
        const Drawing key = keyDrawing(entries, catalogue, width);
        ASSERT_EQ(key.groups.size(), entries.size());
        std::vector<Rect> rects;
        for (const Group& group : key.groups) {
            const Rect rect = boundsOf(group.shapes);
            EXPECT_GE(rect.x, -0.03) << group.words << " in " << width;
            EXPECT_LE(rect.x + rect.width, width + 0.03) << group.words << " in " << width;
            EXPECT_LE(rect.y + rect.height, key.bounds.height + 0.2) << group.words;
            for (const Rect& other : rects)
                EXPECT_FALSE(rect.x < other.x + other.width && other.x < rect.x + rect.width &&
                             rect.y < other.y + other.height && other.y < rect.y + rect.height)
                    << group.words << " in " << width;
            rects.push_back(rect);
        }
    }
    EXPECT_TRUE(keyDrawing({}, catalogue, 20).groups.empty());
}

} // namespace
} // namespace shawlwright::chart
