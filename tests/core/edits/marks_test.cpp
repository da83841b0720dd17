#include "core/edits/marks.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

using namespace test;

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

TEST(Markers, PlacedRemovedShiftedMovedAndTakenOut)
{
    Pattern pattern = patternOf({"k k yo2 k", "k k k k k"}, 5);
    EXPECT_EQ(placeMarker(pattern, body, 0, 2, MarkerId{1}).value().name, "place marker A");
    applied(pattern, placeMarker(pattern, body, 0, 2, MarkerId{1}));
    EXPECT_TRUE(placeMarker(pattern, body, 0, 2, MarkerId{1}).value().empty()); // stands there already
    applied(pattern, removeMarker(pattern, body, 1, 2, MarkerId{1}));
    applied(pattern, shiftMarker(pattern, body, 1, 3, MarkerId{2}));
    const std::vector<MarkerMove> expected{{MarkerId{1}, 2, MoveKind::Remove},
                                           {MarkerId{2}, 3, MoveKind::Shift}};
    EXPECT_EQ(rowOf(pattern, 1).moves, expected);
    EXPECT_EQ(moveMarkerMove(pattern, body, 1, 1, 4).value().name, "move marker B");
    applied(pattern, moveMarkerMove(pattern, body, 1, 1, 4));
    EXPECT_EQ(rowOf(pattern, 1).moves[1].boundary, 4);
    EXPECT_TRUE(moveMarkerMove(pattern, body, 1, 1, 4).value().empty());
    applied(pattern, deleteMarkerMove(pattern, body, 1, 0));
    EXPECT_EQ(rowOf(pattern, 1).moves.size(), 1u);

    EXPECT_FALSE(placeMarker(pattern, body, 0, 3, MarkerId{1}).ok()); // inside the double yarn over
    EXPECT_FALSE(moveMarkerMove(pattern, body, 0, 0, 3).ok());
    EXPECT_FALSE(placeMarker(pattern, body, 0, 6, MarkerId{1}).ok());
    EXPECT_FALSE(placeMarker(pattern, body, 2, 1, MarkerId{1}).ok());
    EXPECT_FALSE(removeMarker(pattern, body, 0, 1, MarkerId{8}).ok());
    EXPECT_FALSE(deleteMarkerMove(pattern, body, 1, 1).ok());
    EXPECT_FALSE(moveMarkerMove(pattern, body, 1, -1, 1).ok());
}

TEST(Markers, NewOnesGetTheNextFreeLetter)
{
    Pattern pattern = patternOf({"k k k"}, 3);
    EXPECT_EQ(placeNewMarker(pattern, body, 0, 1).value().name, "place marker C");
    applied(pattern, placeNewMarker(pattern, body, 0, 1));
    EXPECT_EQ(pattern.head.markers.back().name, "C");
    EXPECT_EQ(rowOf(pattern, 0).moves[0].marker, pattern.head.markers.back().id);
    for (int i = 0; i < 24; ++i)
        applied(pattern, placeNewMarker(pattern, body, 0, 2));
    EXPECT_EQ(pattern.head.markers.back().name, "A2");
}

TEST(Markers, Renamed)
{
    Pattern pattern = patternOf({"k"}, 1);
    EXPECT_EQ(renameMarker(pattern, MarkerId{1}, " spine ").value().name, "rename marker A to spine");
    applied(pattern, renameMarker(pattern, MarkerId{1}, " spine "));
    EXPECT_EQ(pattern.head.markers[0].name, "spine");
    EXPECT_TRUE(renameMarker(pattern, MarkerId{1}, "spine").value().empty());
    EXPECT_FALSE(renameMarker(pattern, MarkerId{1}, "B").ok());
    EXPECT_FALSE(renameMarker(pattern, MarkerId{1}, "  ").ok());
    EXPECT_FALSE(renameMarker(pattern, MarkerId{7}, "C").ok());
}

TEST(Boxes, NestAndNeverCross)
{
    Pattern pattern = patternOf({"k k k k k k k k", "k k k k k k k k", "k k k k c4"}, 8);
    applied(pattern, addBox(pattern, body, box(1, 2, 2, 5, 0)));
    EXPECT_EQ(pattern.sections[0].frame.boxes[0].id, BoxId{1});
    applied(pattern, addBox(pattern, body, box(1, 1, 3, 4, 0)));
    EXPECT_EQ(pattern.sections[0].frame.boxes[1].id, BoxId{2});

    const auto crossing = addBox(pattern, body, box(2, 3, 4, 6, 0));
    ASSERT_FALSE(crossing.ok());
    EXPECT_NE(crossing.fault().message.find("columns 2 to 5 and 4 to 6 would cross"), std::string::npos)
        << crossing.fault().message;
    applied(pattern, addBox(pattern, body, box(3, 3, 4, 8, 0))); // same columns, other rows
    const auto cut = addBox(pattern, body, box(3, 3, 5, 6, 0));
    ASSERT_FALSE(cut.ok());
    EXPECT_EQ(cut.fault().where, "Section 'Body', Row 3");
    EXPECT_FALSE(addBox(pattern, body, box(1, 2, 0, 3, 0)).ok());
    EXPECT_FALSE(addBox(pattern, body, box(1, 2, 7, 9, 0)).ok());
    EXPECT_FALSE(addBox(pattern, body, box(2, 1, 7, 8, 0)).ok());
    EXPECT_FALSE(addBox(pattern, body, box(1, 9, 7, 8, 0)).ok());
}

TEST(Boxes, ChangedAndDeleted)
{
    Pattern pattern = patternOf({"k k k k k k k k"}, 8);
    applied(pattern, addBox(pattern, body, box(1, 1, 2, 5, 0)));
    Box now = pattern.sections[0].frame.boxes[0];
    EXPECT_TRUE(setBox(pattern, body, now).value().empty());
    now.times = 7;
    applied(pattern, setBox(pattern, body, now));
    EXPECT_EQ(pattern.sections[0].frame.boxes[0].times, Quantity(7));
    now.times = mostRepeats + 1;
    EXPECT_FALSE(setBox(pattern, body, now).ok());
    now.times = Quantity(std::vector<int>{1, 2});
    EXPECT_FALSE(setBox(pattern, body, now).ok());
    now.times = 1;
    now.until = BoxUntil::Marker;
    now.marker = MarkerId{9};
    EXPECT_FALSE(setBox(pattern, body, now).ok());
    now.marker = MarkerId{2};
    now.leaving = 3;
    applied(pattern, setBox(pattern, body, now));
    applied(pattern, deleteBox(pattern, body, now.id));
    EXPECT_FALSE(deleteBox(pattern, body, now.id).ok());
    EXPECT_FALSE(setBox(pattern, body, now).ok());
}

TEST(Boxes, NestNoDeeperThanTheLimit)
{
    Pattern pattern = patternOf({"k"}, 30);
    for (int i = 0; i < mostNesting; ++i)
        applied(pattern, addBox(pattern, body, box(1, 1, 1 + i, 30 - i, 0)));
    EXPECT_FALSE(addBox(pattern, body, box(1, 1, 14, 15, 0)).ok());
}

TEST(Brackets, NestAndNeverCross)
{
    Pattern pattern = patternOf({"k", "k", "k", "k", "k"}, 1);
    applied(pattern, addBracket(pattern, body, 0, 2, 4));
    applied(pattern, addBracket(pattern, body, 1, 2, 3));
    EXPECT_FALSE(addBracket(pattern, body, 1, 2, 5).ok()); // these very rows
    const auto crossing = addBracket(pattern, body, 2, 3, 2);
    ASSERT_FALSE(crossing.ok());
    EXPECT_NE(crossing.fault().message.find("cross"), std::string::npos);
    EXPECT_FALSE(addBracket(pattern, body, 3, 5, 2).ok());
    EXPECT_FALSE(addBracket(pattern, body, 3, 4, -1).ok());
    Bracket now = pattern.sections[0].frame.brackets[0];
    EXPECT_TRUE(setBracket(pattern, body, 0, now).value().empty());
    now.times = 9;
    applied(pattern, setBracket(pattern, body, 0, now));
    EXPECT_FALSE(setBracket(pattern, body, 2, now).ok());
    applied(pattern, deleteBracket(pattern, body, 1));
    EXPECT_EQ(pattern.sections[0].frame.brackets.size(), 1u);
    EXPECT_FALSE(deleteBracket(pattern, body, 1).ok());
}

} // namespace
} // namespace shawlwright
