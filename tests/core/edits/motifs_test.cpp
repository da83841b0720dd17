// Motifs: saved, named, mirrored, stamped; the chart grows where one reaches over its edge.

#include "core/edits/motifs.h"
#include "core/edits/sections.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

std::string dumpOf(const Motif& motif)
{
    std::string text;
    for (const std::vector<Cell>& cells : motif.rows) {
        Row row;
        row.cells = cells;
        text += (text.empty() ? "" : " | ") + dump(row);
    }
    return text;
}

Motif leaf(const Pattern& pattern)
{
    return motifOf(pattern, smallCatalogue(), body, Area{0, 1, 2, 5}, " Leaf ").take();
}

void perform(Pattern& pattern, const Result<Edit>& edit)
{
    ASSERT_TRUE(edit.ok()) << toText(edit.fault());
    const Pattern before = pattern;
    const Edit back = apply(pattern, edit.value()).takeBack;
    EXPECT_EQ(faultsOf(pattern, smallCatalogue()), Faults{});
    Pattern undone = pattern;
    apply(undone, back);
    EXPECT_EQ(undone, before);
}

TEST(Motifs, HoldTheWholeStitchesOfAnArea)
{
    const Pattern pattern = patternOf({"k k c4 k", "p yo2 k k2tog"}, 7);
    // The area cuts the cable of the first row in two.
    EXPECT_EQ(dumpOf(leaf(pattern)), "k - - - | yo2 k k2tog");
    EXPECT_EQ(leaf(pattern).name, "Leaf");
    const auto none = motifOf(pattern, smallCatalogue(), body, Area{0, 0, 4, 5}, "Half");
    ASSERT_FALSE(none.ok());
    EXPECT_NE(none.fault().message.find("no whole stitch"), std::string::npos);
    EXPECT_FALSE(motifOf(pattern, smallCatalogue(), body, Area{0, 2, 1, 1}, "Far").ok());
    EXPECT_FALSE(motifOf(pattern, smallCatalogue(), body, Area{0, 1, 1, 9}, "Wide").ok());
}

TEST(Motifs, AreNamedRenamedAndDeleted)
{
    Pattern pattern = patternOf({"k k k k k k k", "p yo2 k k2tog"}, 7);
    perform(pattern, addMotif(pattern, leaf(pattern)));
    EXPECT_FALSE(addMotif(pattern, leaf(pattern)).ok()); // the name is taken
    perform(pattern, renameMotif(pattern, 0, "Petal"));
    EXPECT_EQ(pattern.head.motifs[0].name, "Petal");
    EXPECT_TRUE(renameMotif(pattern, 0, " Petal").value().empty());
    EXPECT_FALSE(renameMotif(pattern, 0, " ").ok());
    EXPECT_FALSE(renameMotif(pattern, 1, "Bud").ok());
    perform(pattern, addMotif(pattern, leaf(pattern)));
    EXPECT_FALSE(renameMotif(pattern, 1, "Petal").ok());
    perform(pattern, deleteMotif(pattern, 0));
    ASSERT_EQ(pattern.head.motifs.size(), 1u);
    EXPECT_EQ(pattern.head.motifs[0].name, "Leaf");
}

TEST(Motifs, StampedLeaveWhatTheyDontHold)
{
    Pattern pattern = patternOf({"k - k2tog -", "- yo k -", "p p p p p p p", "p p p p p p p"}, 7);
    const Motif motif = motifOf(pattern, smallCatalogue(), body, Area{0, 1, 1, 3}, "Leaf").take();
    perform(pattern, stampMotif(pattern, smallCatalogue(), body, At{2, 4}, motif));
    EXPECT_EQ(dump(rowOf(pattern, 2)), "p p p k p k2tog p");
    EXPECT_EQ(dump(rowOf(pattern, 3)), "p p p p yo k p");
}

TEST(Motifs, OverTheEdgeTheChartGrows)
{
    Pattern pattern = patternOf({"k k2tog k", "p yo p"}, 3);
    const Motif motif = motifOf(pattern, smallCatalogue(), body, Area{0, 1, 1, 3}, "Leaf").take();
    perform(pattern, stampMotif(pattern, smallCatalogue(), body, At{1, 3}, motif));
    const Section& section = pattern.sections.front();
    EXPECT_EQ(section.frame.columns, 5);
    ASSERT_EQ(section.rows.size(), 3u);
    EXPECT_EQ(dump(rowOf(pattern, 1)), "p yo k k2tog k");
    EXPECT_EQ(dump(rowOf(pattern, 2)), "- - p yo p");
    EXPECT_EQ(section.rows[2]->side, Side::RS);
    const auto far = stampMotif(pattern, smallCatalogue(), body, At{0, mostColumns}, motif);
    ASSERT_FALSE(far.ok());
    EXPECT_NE(far.fault().message.find("2002"), std::string::npos) << far.fault().message;
    EXPECT_FALSE(stampMotif(pattern, smallCatalogue(), body, At{4, 1}, motif).ok());
}

TEST(Motifs, MirroredSwapTheirLeans)
{
    std::vector<Stitch> stitches = smallCatalogue().builtIn();
    stitches[4].mirror = "ssk";
    stitches.push_back(stitch("ssk", 2, 1));
    stitches.back().mirror = "k2tog";
    const Catalogue catalogue{stitches};
    Motif motif;
    motif.columns = 5;
    motif.rows = {cellsOf("k k2tog yo2 -")};
    const Motif mirrored = mirroredMotif(motif, catalogue);
    std::string keys;
    for (const Cell& cell : mirrored.rows[0])
        keys += catalogue.stitch(cell.stitch).key + (cell.part ? "' " : " ");
    EXPECT_EQ(keys, "no_st yo2 yo2' ssk k ");
    EXPECT_EQ(mirroredMotif(mirrored, catalogue), motif);
}

TEST(Motifs, KeepTheirYarnsAndStitches)
{
    Pattern pattern = patternOf({"k k k"}, 3);
    Motif motif = motifOf(pattern, smallCatalogue(), body, Area{0, 0, 1, 3}, "Leaf").take();
    motif.rows[0][1].yarn = YarnId{2};
    perform(pattern, addMotif(pattern, motif));
    PatternHead head = pattern.head;
    head.yarns.pop_back();
    const auto gone = setHead(pattern, head, "yarns");
    ASSERT_FALSE(gone.ok());
    EXPECT_EQ(toText(gone.fault()), "Motif 'Leaf': works yarn CC; change its yarn first, or delete the motif");
}

} // namespace
} // namespace shawlwright
