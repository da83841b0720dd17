// Stitches moved, copied along, put down several times, and parts of rows that make room or close up.

#include "core/edits/chart_clip.h"
#include "core/edits/move_stitches.h"
#include "core/edits/times.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

std::vector<std::string> rowsOf(const Pattern& pattern)
{
    std::vector<std::string> rows;
    for (std::size_t at = 0; at < pattern.sections[0].rows.size(); ++at)
        rows.push_back(dump(rowOf(pattern, static_cast<int>(at))));
    return rows;
}
using Rows = std::vector<std::string>;

// Applies it and looks that taking back gives the pattern from before.
Rows after(const Pattern& pattern, const Result<Edit>& edit)
{
    if (!edit.ok())
        return {toText(edit.fault())};
    Pattern changed = pattern;
    const Applied applied = apply(changed, edit.value());
    const Rows rows = rowsOf(changed);
    EXPECT_TRUE(faultsOf(changed, smallCatalogue()).empty());
    apply(changed, applied.takeBack);
    EXPECT_EQ(changed, pattern);
    return rows;
}

TEST(MoveStitches, LeavesNoStitchBehindAndReplacesWhatItMeets)
{
    const Pattern pattern = patternOf({"k p k2tog - -", "yo yo p p p"}, 5);
    const auto moved = [&](const Areas& areas, int rows, int columns, Leaving leaving) {
        return after(pattern, moveStitches(pattern, smallCatalogue(), body, areas, rows, columns, leaving));
    };
    EXPECT_EQ(moved({Area{0, 0, 1, 3}}, 0, 1, Leaving::NoStitch), (Rows{"- k p k2tog -", "yo yo p p p"}));
    EXPECT_EQ(moved({Area{0, 0, 1, 3}}, 1, 2, Leaving::NoStitch), (Rows{"- - - - -", "yo yo k p k2tog"}));
    EXPECT_EQ(moved({Area{0, 0, 1, 3}}, 1, 2, Leaving::TheStitches),
              (Rows{"k p k2tog - -", "yo yo k p k2tog"}));
    // Two rectangles keep their distance, and what lies between them stays.
    EXPECT_EQ(moved({Area{0, 0, 1, 1}, Area{0, 0, 3, 3}}, 1, 1, Leaving::NoStitch),
              (Rows{"- p - - -", "yo k p k2tog p"}));
}

TEST(MoveStitches, WideStitchesGoWholeOrNotAtAll)
{
    const Pattern pattern = patternOf({"k c4 k - -", "- - c4 k -"}, 8);
    auto cut = moveStitches(pattern, smallCatalogue(), body, {Area{0, 0, 1, 3}}, 0, 2, Leaving::NoStitch);
    ASSERT_FALSE(cut.ok());
    EXPECT_EQ(cut.fault().where, "Section 'Body', Row 1, column 3");
    EXPECT_EQ(cut.fault().message, "c4 over columns 2 to 5 is selected in part; select all of it or none");
    EXPECT_EQ(after(pattern, moveStitches(pattern, smallCatalogue(), body, {Area{0, 0, 1, 5}}, 1, 0,
                                          Leaving::NoStitch)),
              (Rows{"- - - - - k - -", "k c4 - k -"})); // the one met in part is gone whole
}

// "A at 2 of row 1": what the rows do with markers.
std::string markersOf(const Pattern& pattern)
{
    std::string text;
    for (std::size_t at = 0; at < pattern.sections[0].rows.size(); ++at)
        for (const MarkerMove& move : pattern.sections[0].rows[at]->moves)
            text += (text.empty() ? "" : ", ") + pattern.head.markers[move.marker.value - 1u].name + " at " +
                    std::to_string(move.boundary) + " of row " + std::to_string(at + 1);
    return text;
}

std::string boxesOf(const Pattern& pattern)
{
    std::string text;
    for (const Box& one : pattern.sections[0].frame.boxes)
        text += (text.empty() ? "" : "; ") + dump(pattern.sections[0], one);
    return text;
}

Pattern moved(Pattern pattern, const Areas& areas, int rows, int columns, Leaving leaving = Leaving::NoStitch)
{
    const auto edit = moveStitches(pattern, smallCatalogue(), body, areas, rows, columns, leaving);
    EXPECT_TRUE(edit.ok()) << toText(edit.fault());
    const Pattern before = pattern;
    const Applied applied = apply(pattern, edit.value());
    EXPECT_EQ(faultsOf(pattern, smallCatalogue()), Faults{});
    Pattern back = pattern;
    apply(back, applied.takeBack);
    EXPECT_EQ(back, before);
    return pattern;
}

TEST(MoveStitches, MarkersInsideGoAlong)
{
    Pattern pattern = patternOf({"k k k k - -", "p p p p - -", "- - - - - -", "- - - - - -"}, 6);
    Row row = rowOf(pattern, 0);
    row.moves = {{MarkerId{1}, 2}, {MarkerId{2}, 4}}; // in the middle, at the edge
    pattern.sections[0].rows[0] = std::make_shared<const Row>(row);
    const Areas both{Area{0, 1, 1, 4}};
    EXPECT_EQ(markersOf(moved(pattern, both, 0, 2)), "B at 4 of row 1, A at 4 of row 1");
    EXPECT_EQ(markersOf(moved(pattern, both, 2, 0)), "B at 4 of row 1, A at 2 of row 3");
    EXPECT_EQ(markersOf(moved(pattern, both, 2, 0, Leaving::TheStitches)), "A at 2 of row 1, B at 4 of row 1");
    EXPECT_EQ(markersOf(moved(pattern, {Area{0, 1, 1, 2}}, 0, 4)), "A at 2 of row 1, B at 4 of row 1"); // its edge
    EXPECT_EQ(markersOf(moved(pattern, {Area{0, 0, 1, 6}}, 2, 0)), "A at 2 of row 3, B at 4 of row 3"); // as wide
}

TEST(MoveStitches, StitchRepeatsInsideGoAlong)
{
    Pattern pattern = patternOf({"k k k k - -", "p p p p - -", "- - - - - -", "- - - - - -"}, 6);
    pattern.sections[0].frame.boxes = {box(1, 2, 2, 3)};
    const Areas both{Area{0, 1, 1, 4}};
    EXPECT_EQ(boxesOf(moved(pattern, both, 0, 2)), "rows 1-2, columns 4-5");
    EXPECT_EQ(boxesOf(moved(pattern, both, 2, 1)), "rows 3-4, columns 3-4");
    EXPECT_EQ(boxesOf(moved(pattern, both, 2, 0, Leaving::TheStitches)),
              "rows 1-2, columns 2-3; rows 3-4, columns 2-3");
    EXPECT_EQ(boxesOf(moved(pattern, {Area{0, 0, 1, 4}}, 0, 1)), "rows 1-2, columns 2-3"); // not wholly inside
    // What they come to stand on is replaced; what they would cross is not.
    pattern.sections[0].frame.boxes = {box(1, 2, 2, 3), box(3, 4, 2, 3, 2)};
    EXPECT_EQ(boxesOf(moved(pattern, both, 2, 0)), "rows 3-4, columns 2-3");
    const auto crossing = moveStitches(pattern, smallCatalogue(), body, both, 2, 1, Leaving::NoStitch);
    ASSERT_FALSE(crossing.ok());
    EXPECT_NE(crossing.fault().message.find("would cross"), std::string::npos) << crossing.fault().message;
}

TEST(MoveStitches, PastTheEdgesIsRefusedWithNumbers)
{
    const Pattern pattern = patternOf({"k k k", "p p p"}, 3);
    struct Line {
        int rows, columns;
        const char* says;
    };
    for (const Line& line : {Line{2, 0, "2 rows up, the stitches would reach 1 row past the upper edge"},
                             Line{-1, 0, "1 row down, the stitches would reach 1 row past the lower edge"},
                             Line{0, 3, "reach 2 columns past the left edge"},
                             Line{0, -1, "reach 1 column past the right edge"}}) {
        const auto edit = moveStitches(pattern, smallCatalogue(), body, {Area{0, 0, 1, 2}}, line.rows,
                                       line.columns, Leaving::NoStitch);
        ASSERT_FALSE(edit.ok());
        EXPECT_NE(edit.fault().message.find(line.says), std::string::npos) << edit.fault().message;
    }
}

TEST(ShiftPart, MakesRoomAndClosesUpOnEitherSide)
{
    const Pattern pattern = patternOf({"- k p yo k -"}, 6);
    const auto shifted = [&](Area area, Part part, Gap gap) {
        return after(pattern, shiftPart(pattern, smallCatalogue(), body, area, part, gap)).front();
    };
    EXPECT_EQ(shifted({0, 0, 3, 3}, Part::Left, Gap::Open), "- k - p yo k");
    EXPECT_EQ(shifted({0, 0, 3, 3}, Part::Right, Gap::Open), "k p - yo k -");
    EXPECT_EQ(shifted({0, 0, 3, 3}, Part::Left, Gap::Close), "- k yo k - -");
    EXPECT_EQ(shifted({0, 0, 3, 3}, Part::Right, Gap::Close), "- - k yo k -");
    EXPECT_EQ(shifted({0, 0, 3, 4}, Part::Left, Gap::Close), "- k k - - -");
    EXPECT_EQ(shifted({0, 0, 3, 4}, Part::Left, Gap::Open),
              "Section 'Body', Row 1, column 5: k would fall off the left edge when this part of the row moves by 2 "
              "columns; insert columns at that edge first");
}

TEST(ShiftPart, OpeningAndClosingTakeEachOtherBack)
{
    const Pattern pattern = patternOf({"- - c4 k p - -", "- k k - yo2 - - -"}, 9);
    for (const Part part : {Part::Left, Part::Right})
        for (const Area area : {Area{0, 0, 3, 3}, Area{0, 0, 7, 8}, Area{1, 1, 3, 3}}) {
            if (area.firstRow == 0 && area.firstColumn == 3 && part == Part::Right)
                continue; // it would open inside the wide stitch
            Pattern changed = pattern;
            const auto open = shiftPart(changed, smallCatalogue(), body, area, part, Gap::Open);
            if (!open.ok())
                continue; // no room for two on that side
            apply(changed, open.value());
            EXPECT_NE(changed, pattern);
            const auto close = shiftPart(changed, smallCatalogue(), body, area, part, Gap::Close);
            ASSERT_TRUE(close.ok());
            apply(changed, close.value());
            EXPECT_EQ(rowsOf(changed), rowsOf(pattern));
        }
    const auto cut = shiftPart(pattern, smallCatalogue(), body, {0, 0, 4, 4}, Part::Left, Gap::Open);
    ASSERT_FALSE(cut.ok());
    EXPECT_NE(cut.fault().message.find("columns 3 to 6"), std::string::npos);
}

TEST(ShiftPart, MarkersOfThePartGoWithIt)
{
    Pattern pattern = patternOf({"- k k k k -"}, 6);
    Row row = rowOf(pattern, 0);
    for (const int boundary : {1, 2, 3, 4})
        row.moves.push_back({MarkerId{1}, boundary});
    pattern.sections[0].rows[0] = std::make_shared<const Row>(row);
    const auto boundaries = [&](Part part, Gap gap) {
        Pattern changed = pattern;
        const auto edit = shiftPart(changed, smallCatalogue(), body, {0, 0, 3, 3}, part, gap);
        EXPECT_TRUE(edit.ok());
        apply(changed, edit.value());
        std::vector<int> result;
        for (const MarkerMove& move : rowOf(changed, 0).moves)
            result.push_back(move.boundary);
        return result;
    };
    EXPECT_EQ(boundaries(Part::Left, Gap::Open), (std::vector<int>{1, 2, 4, 5}));
    EXPECT_EQ(boundaries(Part::Right, Gap::Open), (std::vector<int>{0, 1, 3, 4}));
    EXPECT_EQ(boundaries(Part::Left, Gap::Close), (std::vector<int>{1, 2, 2, 3}));
    EXPECT_EQ(boundaries(Part::Right, Gap::Close), (std::vector<int>{2, 3, 3, 4}));
}

Result<Edit> times(const Pattern& pattern, const Area& area, Along along, int count)
{
    auto made = putDownTimes(pattern, smallCatalogue(), body, area, along, count);
    return made.ok() ? Result<Edit>(made.value().edit) : Result<Edit>(made.fault());
}

TEST(Times, UpwardsAndToTheSides)
{
    const Pattern pattern = patternOf({"k p - - - -", "yo k - - - -", "p p p p p p", "- - - - - -"}, 6);
    EXPECT_EQ(after(pattern, times(pattern, {0, 1, 1, 2}, Along::Up, 1)),
              (Rows{"k p - - - -", "yo k - - - -", "k p p p p p", "yo k - - - -"}));
    EXPECT_EQ(after(pattern, times(pattern, {0, 1, 1, 2}, Along::Left, 2)),
              (Rows{"k p k p k p", "yo k yo k yo k", "p p p p p p", "- - - - - -"}));
    EXPECT_EQ(after(pattern, times(pattern, {0, 0, 1, 1}, Along::Up, 3)),
              (Rows{"k p - - - -", "k k - - - -", "k p p p p p", "k - - - - -"}));
    const Pattern right = patternOf({"- - - - k p"}, 6);
    EXPECT_EQ(after(right, times(right, {0, 0, 5, 6}, Along::Right, 2)), (Rows{"k p k p k p"}));
    const auto many = times(pattern, {0, 1, 1, 2}, Along::Left, 3);
    ASSERT_FALSE(many.ok());
    EXPECT_EQ(many.fault().message, "3 times asked for, 2 fit");
    EXPECT_EQ(timesThatFit(pattern, body, {0, 2, 1, 2}, Along::Up), 0);
    const auto none = times(pattern, {0, 2, 1, 2}, Along::Up, 1);
    ASSERT_FALSE(none.ok());
    EXPECT_NE(none.fault().message.find("no room for 3 rows"), std::string::npos);
}

TEST(Times, NewRowsAlternateAndKeepTheYarn)
{
    Pattern pattern = patternOf({"k p -", "yo k -", "p p p"}, 3);
    Row row = rowOf(pattern, 1);
    row.yarn = YarnId{2};
    row.note = "once";
    pattern.sections[0].rows[1] = std::make_shared<const Row>(row);
    EXPECT_EQ(after(pattern, times(pattern, {0, 1, 1, 2}, Along::UpNewRows, 2)),
              (Rows{"k p -", "yo k -", "k p -", "yo k -", "k p -", "yo k -", "p p p"}));
    auto made = putDownTimes(pattern, smallCatalogue(), body, {0, 1, 1, 2}, Along::UpNewRows, 2);
    ASSERT_TRUE(made.ok());
    EXPECT_EQ(made.value().over, (Area{2, 5, 1, 2}));
    EXPECT_FALSE(made.value().otherSide);
    apply(pattern, made.value().edit);
    for (int at = 0; at < 6; ++at) {
        EXPECT_EQ(rowOf(pattern, at).side, at % 2 == 0 ? Side::RS : Side::WS) << at;
        EXPECT_EQ(rowOf(pattern, at).yarn, (at % 2 == 0 ? YarnId{1} : YarnId{2})) << at;
    }
    EXPECT_EQ(rowOf(pattern, 3).note, "");
    auto odd = putDownTimes(pattern, smallCatalogue(), body, {0, 0, 1, 2}, Along::UpNewRows, 1);
    ASSERT_TRUE(odd.ok());
    EXPECT_TRUE(odd.value().otherSide);
}

} // namespace
} // namespace shawlwright
