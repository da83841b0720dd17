// Motifs saved, stamped and undone; painting on both sides of a line.
#include "app/panels/motifs_panel.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

namespace shawlwright::app {

namespace {

void nameIt(Seat& seat, const char* name)
{
    seat.window().questions().words = [name](const QString&, const QString&) { return QString::fromUtf8(name); };
}

// k2tog yo in columns 1 and 2, a row higher k k2tog.
void paintLeaf(Seat& seat)
{
    seat.document().perform(shawlwright::paint(seat.pattern(), seat.document().catalogue(), seat.section().id,
                                               std::vector<At>{{0, 1}, {1, 2}}, seat.stitch("k2tog"))
                                .value());
    seat.document().perform(shawlwright::paint(seat.pattern(), seat.document().catalogue(), seat.section().id,
                                               std::vector<At>{{0, 2}}, seat.stitch("yo"))
                                .value());
}

} // namespace

TEST(Motifs, AreSavedStampedAndTakenBack)
{
    Seat seat(20, 8, 20);
    paintLeaf(seat);
    EXPECT_FALSE(seat.window().action(ActionId::ToolMotif)->isEnabled());
    seat.window().canvas().select(Area{0, 1, 1, 2});
    nameIt(seat, "Leaf");
    seat.settle();
    seat.act(ActionId::SaveMotif);
    ASSERT_EQ(seat.pattern().head.motifs.size(), 1u);
    ASSERT_EQ(seat.window().motifs().list()->count(), 1);
    EXPECT_EQ(seat.window().motifs().list()->item(0)->text(), QStringLiteral("Leaf"));
    seat.settle();
    seat.act(ActionId::ToolMotif);
    EXPECT_EQ(seat.window().canvas().tool(), CanvasTool::Stamp);
    const int steps = seat.document().undoStack().count();
    seat.click(4, 10);
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.key(4, 10), "k2tog");
    EXPECT_EQ(seat.key(4, 11), "yo");
    EXPECT_EQ(seat.key(5, 10), "no_st"); // a motif leaves what it has no stitch for
    EXPECT_EQ(seat.key(5, 11), "k2tog");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.key(4, 10), "no_st");
}

TEST(Motifs, MirroredAndByTheKeyboard)
{
    Seat seat(20, 8, 20);
    paintLeaf(seat);
    seat.window().canvas().select(Area{0, 1, 1, 2});
    nameIt(seat, "Leaf");
    seat.settle();
    seat.act(ActionId::SaveMotif);
    seat.settle();
    seat.act(ActionId::MotifMirrored);
    seat.act(ActionId::ToolMotif);
    seat.window().canvas().setCursor(At{3, 5});
    seat.press(Qt::Key_Space);
    EXPECT_EQ(seat.key(3, 5), "yo");
    EXPECT_EQ(seat.key(3, 6), "ssk");
    EXPECT_EQ(seat.key(4, 5), "ssk");
    EXPECT_EQ(seat.window().canvas().cursor(), (At{3, 7})); // on beside it
}

TEST(Motifs, OverTheEdgeTheChartGrowsInTheSameStep)
{
    Seat seat(20, 3, 20);
    paintLeaf(seat);
    seat.window().canvas().select(Area{0, 1, 1, 2});
    nameIt(seat, "Leaf");
    seat.settle();
    seat.act(ActionId::SaveMotif);
    seat.settle();
    seat.act(ActionId::ToolMotif);
    const int steps = seat.document().undoStack().count();
    seat.click(2, 20);
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.section().frame.columns, 21);
    EXPECT_EQ(seat.section().rows.size(), 4u);
    EXPECT_EQ(seat.key(2, 21), "yo");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().frame.columns, 20);
    EXPECT_EQ(seat.section().rows.size(), 3u);
}

TEST(Motifs, AreRenamedAndDeletedAndWhatIsUndoneLeavesTheTray)
{
    Seat seat(20, 4, 20);
    paintLeaf(seat);
    seat.window().canvas().select(Area{0, 0, 1, 2});
    nameIt(seat, "Leaf");
    seat.settle();
    seat.act(ActionId::SaveMotif);
    seat.settle();
    nameIt(seat, "Petal");
    seat.act(ActionId::RenameMotif);
    EXPECT_EQ(seat.window().motifs().list()->item(0)->text(), QStringLiteral("Petal"));
    seat.act(ActionId::ToolMotif);
    seat.act(ActionId::DeleteMotif);
    EXPECT_EQ(seat.window().motifs().list()->count(), 0);
    seat.settle();
    const int steps = seat.document().undoStack().count();
    seat.click(2, 5); // nothing to stamp, and that is said
    EXPECT_EQ(seat.document().undoStack().count(), steps);
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("No motif is chosen")));
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_EQ(seat.window().motifs().list()->count(), 1);
    EXPECT_TRUE(seat.window().motifs().chosen().has_value());
}

TEST(PaintMirrored, PaintsErasesAndTypesOnBothSides)
{
    Seat seat(20, 4, 20);
    Canvas& canvas = seat.window().canvas();
    canvas.setCursor(At{0, 8});
    seat.act(ActionId::PaintMirrored);
    EXPECT_TRUE(seat.window().statusRight().contains(QStringLiteral("mirrored about column 8")));
    canvas.setBrush(seat.stitch("k2tog"));
    const int steps = seat.document().undoStack().count();
    seat.click(0, 5);
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.key(0, 5), "k2tog");
    EXPECT_EQ(seat.key(0, 11), "ssk");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.key(0, 5), "no_st");
    EXPECT_EQ(seat.key(0, 11), "no_st");
    seat.act(ActionId::Redo);
    seat.act(ActionId::ToolErase);
    seat.click(0, 11);
    EXPECT_EQ(seat.key(0, 5), "no_st");
    seat.act(ActionId::ToolPaint);
    canvas.setCursor(At{2, 1});
    canvas.openEntry();
    QTest::keyClicks(canvas.entry(), QStringLiteral("ssk, yo"));
    QTest::keyClick(canvas.entry(), Qt::Key_Return);
    EXPECT_EQ(seat.key(2, 1), "ssk");
    EXPECT_EQ(seat.key(2, 2), "yo");
    EXPECT_EQ(seat.key(2, 14), "yo");
    EXPECT_EQ(seat.key(2, 15), "k2tog");
    seat.act(ActionId::PaintMirrored);
    EXPECT_FALSE(seat.window().statusRight().contains(QStringLiteral("mirrored")));
    seat.click(3, 3);
    EXPECT_EQ(seat.key(3, 13), "no_st");
}

TEST(PaintMirrored, AboutTheSelectionsMiddleOrAMarker)
{
    Seat seat(20, 3, 20);
    Canvas& canvas = seat.window().canvas();
    canvas.select(Area{0, 0, 3, 6});
    seat.act(ActionId::PaintMirrored);
    EXPECT_TRUE(seat.window().statusRight().contains(QStringLiteral("mirrored between columns 4 and 5")));
    canvas.setBrush(seat.stitch("ssk"));
    seat.click(1, 3);
    EXPECT_EQ(seat.key(1, 6), "k2tog");
    seat.act(ActionId::PaintMirrored);
    canvas.select(std::nullopt);
    for (int row = 0; row < 2; ++row)
        seat.paintRow(row, "k");
    canvas.setTool(CanvasTool::Marker);
    seat.click(0, 11); // a marker beside this stitch
    canvas.setTool(CanvasTool::Paint);
    canvas.setCursor(At{1, 11});
    seat.act(ActionId::PaintMirrored);
    ASSERT_TRUE(canvas.paintMirror()->marker.has_value());
    EXPECT_TRUE(seat.window().statusRight().contains(QStringLiteral("mirrored about marker A")));
    const int boundary = seat.section().rows[0]->moves.front().boundary;
    seat.click(1, boundary - 2);
    EXPECT_EQ(seat.key(1, boundary - 2), "ssk");
    EXPECT_EQ(seat.key(1, boundary + 3), "k2tog");
}

} // namespace shawlwright::app
