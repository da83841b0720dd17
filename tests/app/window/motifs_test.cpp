// Motifs saved, stamped and undone; painting on both sides of a line.
#include "app/panels/motifs_panel.h"
#include "core/edits/marks.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QDockWidget>
#include <QImage>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QSet>
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

int darkPixels(const QImage& picture)
{
    int dark = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            dark += qAlpha(picture.pixel(x, y)) > 200 && qGray(picture.pixel(x, y)) < 100;
    return dark;
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
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("The section is 21 columns wide and 4 rows high now.")))
        << qPrintable(seat.window().statusLeft());
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().frame.columns, 20);
    EXPECT_EQ(seat.section().rows.size(), 3u);
}

TEST(Motifs, WhatIsCoveredDoesNotShowThroughBeforeItIsStamped)
{
    Seat seat(20, 8, 20);
    paintLeaf(seat);
    seat.window().canvas().select(Area{0, 0, 1, 2});
    nameIt(seat, "Leaf");
    seat.settle();
    seat.act(ActionId::SaveMotif);
    seat.settle();
    seat.window().canvas().select(std::nullopt);
    for (const char* under : {"k", "sk2p"}) // plain, and full of lines
        seat.paintRow(4, under);
    seat.document().performOrTell(placeNewMarker(seat.pattern(), seat.section().id, 4, 10));
    Canvas& canvas = seat.window().canvas();
    seat.act(ActionId::ToolMotif);
    const auto ghostOver = [&](const char* under) {
        seat.paintRow(4, under);
        canvas.setCursor(At{4, 10});
        seat.settle();
        const QRect cells = canvas.cellRectOnViewport(4, 10) | canvas.cellRectOnViewport(4, 11);
        return canvas.viewport()->grab(cells.adjusted(2, 2, -2, -2)).toImage();
    };
    EXPECT_EQ(ghostOver("k"), ghostOver("sk2p"));
    // Past the edge the columns to come are seen beside the chart.
    const auto beside = [&](int column) {
        canvas.setCursor(At{4, column});
        seat.settle();
        const QRect edge = canvas.cellRectOnViewport(4, 20);
        const QImage seen = canvas.viewport()->grab(edge.translated(-edge.width(), 0).adjusted(3, 3, -3, -3)).toImage();
        QSet<QRgb> colours;
        for (int y = 0; y < seen.height(); ++y)
            for (int x = 0; x < seen.width(); ++x)
                colours << seen.pixel(x, y);
        return colours.size();
    };
    EXPECT_LE(beside(19), 2);
    EXPECT_GT(beside(20), 2); // a yarn over
}

TEST(Motifs, AreToldApartInTheTrayHoweverLongTheirNamesAndHoweverWide)
{
    Seat seat(40, 8, 40);
    paintLeaf(seat);
    for (int row = 0; row < 6; ++row)
        seat.paintRow(row, "k2tog");
    const auto save = [&](const Area& area, const char* name) {
        seat.window().canvas().select(area);
        nameIt(seat, name);
        seat.settle();
        seat.act(ActionId::SaveMotif);
        seat.settle();
    };
    const char* longName = "Leaf with a rib down its middle that goes on and on, as it was in the first sketch of this border";
    save(Area{0, 0, 1, 25}, longName);
    save(Area{0, 5, 1, 25}, "Wide");
    save(Area{0, 0, 1, 1}, "Dot");
    QListWidget* list = seat.window().motifs().list();
    seat.window().findChild<QDockWidget*>(QStringLiteral("motifs"))->raise();
    seat.settle();
    EXPECT_FALSE(list->horizontalScrollBar()->isVisible());
    for (int i = 0; i < list->count(); ++i)
        EXPECT_LE(list->visualItemRect(list->item(i)).right(), list->viewport()->width()) << i;
    EXPECT_TRUE(list->item(0)->toolTip().startsWith(QString::fromUtf8(longName)));
    EXPECT_EQ(list->item(0)->data(Qt::UserRole).toString(), QStringLiteral("25 sts, 1 row"));
    EXPECT_EQ(list->item(1)->data(Qt::UserRole).toString(), QStringLiteral("25 sts, 6 rows"));
    EXPECT_EQ(list->item(2)->data(Qt::UserRole).toString(), QStringLiteral("1 st, 1 row"));
    // An excerpt with cells that can be read: the same cells as of a motif that has no more of them.
    const Theme theme = lightTheme();
    const Catalogue& catalogue = seat.document().catalogue();
    const QSize size = list->iconSize();
    const Motif& wide = seat.pattern().head.motifs[1];
    Motif small = wide;
    small.columns = 8;
    small.rows.resize(5);
    for (auto& row : small.rows)
        row.resize(8);
    const QRect corner(size.width() - 44, size.height() - 33, 40, 30);
    const QImage cut = motifPicture(wide, catalogue, theme, size, 1).toImage().copy(corner);
    EXPECT_LT(std::abs(darkPixels(cut) - darkPixels(motifPicture(small, catalogue, theme, size, 1).toImage().copy(corner))), 60);
    EXPECT_GT(darkPixels(cut), 60);
}

TEST(Motifs, TheKeyOfAPanelBehindAnotherBringsItToTheFront)
{
    Seat seat;
    auto* motifs = seat.window().findChild<QDockWidget*>(QStringLiteral("motifs"));
    auto* stitches = seat.window().findChild<QDockWidget*>(QStringLiteral("stitches"));
    ASSERT_TRUE(motifs && stitches);
    ASSERT_TRUE(seat.window().tabifiedDockWidgets(stitches).contains(motifs));
    stitches->raise();
    seat.settle();
    const auto inFront = [](const QDockWidget& dock) { return !dock.visibleRegion().isEmpty(); };
    ASSERT_FALSE(inFront(*motifs));
    motifs->toggleViewAction()->trigger();
    seat.settle();
    EXPECT_TRUE(inFront(*motifs));
    motifs->toggleViewAction()->trigger();
    seat.settle();
    EXPECT_TRUE(motifs->isHidden());
    motifs->toggleViewAction()->trigger();
    seat.settle();
    EXPECT_TRUE(inFront(*motifs));
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
