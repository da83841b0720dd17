#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QScrollBar>

namespace shawlwright::app {

TEST(Repaint, AFullFrameIsWhatIsSeenAndAnEditIsItsRow)
{
    Desk desk(500, 600);
    desk.brush("k");
    const qint64 start = desk.canvas.cellsPainted();
    desk.canvas.viewport()->update();
    desk.settle();
    const qint64 frame = desk.canvas.cellsPainted() - start;
    EXPECT_GT(frame, 100);
    EXPECT_LT(frame, 45 * 35); // 900 x 700 pixels of 24 a cell, not 300,000 cells

    const qint64 before = desk.canvas.cellsPainted();
    desk.click(desk.middle(10, 10));
    desk.settle();
    EXPECT_GT(desk.canvas.cellsPainted(), before);
    EXPECT_LT(desk.canvas.cellsPainted() - before, frame); // the rows touched, not the frame
}

TEST(Repaint, AnEditOfASectionThatIsNotShownPaintsNothing)
{
    Desk desk;
    ASSERT_TRUE(desk.document.performOrTell(addSection(desk.document.pattern(), 1, "Edging", 6, 8)));
    const SectionId other = desk.document.pattern().sections[1].id;
    desk.settle();
    const qint64 before = desk.canvas.cellsPainted();
    const At one[] = {At{0, 1}};
    ASSERT_TRUE(desk.document.performOrTell(
        paint(desk.document.pattern(), desk.document.catalogue(), other, one, desk.stitch("yo"))));
    desk.settle();
    EXPECT_EQ(desk.canvas.cellsPainted(), before);
}

// Whatever was painted piece by piece must look like a fresh frame, also when the chart is moved under the
// pointer.
TEST(Repaint, PiecesLookLikeAFreshFrame)
{
    Desk desk(80, 90);
    const auto check = [&](const char* after) {
        desk.settle();
        const QImage pieces = desk.canvas.viewport()->grab().toImage();
        desk.canvas.viewport()->update();
        desk.settle();
        EXPECT_EQ(pieces, desk.canvas.viewport()->grab().toImage()) << after;
    };
    desk.brush("k2tog");
    desk.drag(desk.middle(2, 3), desk.middle(8, 20));
    check("a stroke");
    desk.move(desk.middle(9, 9), Qt::NoButton);
    check("hovering");
    desk.canvas.verticalScrollBar()->setValue(desk.canvas.verticalScrollBar()->value() - 31);
    check("scrolling");
    desk.canvas.setTool(CanvasTool::Marker);
    desk.click(desk.canvas.cellRectOnViewport(6, 6).topLeft() + QPoint(1, 10));
    check("a marker");
    desk.document.undoStack().undo();
    check("undo");
    desk.wheel(QPoint(300, 300), -240);
    check("zoom");
}

TEST(Repaint, OpensAtTheLowerRightWhereKnittingStarts)
{
    Desk desk(300, 300);
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(0, 1).isEmpty());
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(299, 300).isEmpty());
}

TEST(Repaint, UndoGoesToWhereItWas)
{
    Desk desk(300, 300);
    desk.brush("yo");
    desk.click(desk.middle(0, 1));
    desk.canvas.showRow(290);
    EXPECT_TRUE(desk.canvas.cellRectOnViewport(0, 1).isEmpty());
    desk.document.undoStack().undo();
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(0, 1).isEmpty());
}

TEST(Repaint, DrawsEveryZoomAndBothThemes)
{
    Desk desk(40, 50);
    int at = 1;
    for (const Stitch& stitch : desk.document.catalogue().builtIn()) {
        const At one[] = {At{at / 40, at % 40 + 1}};
        at += 3;
        (void)desk.document.performOrTell(
            paint(desk.document.pattern(), desk.document.catalogue(), desk.section().id, one, stitch.id));
    }
    for (const Theme& theme : {lightTheme(), darkTheme()}) {
        desk.canvas.setTheme(theme);
        for (const double percent : {8.0, 17.0, 30.0, 100.0, 300.0}) {
            desk.canvas.setZoomPercent(percent);
            const QImage seen = desk.canvas.viewport()->grab().toImage();
            bool paper = false;
            for (int y = 0; y < seen.height() && !paper; ++y)
                for (int x = 0; x < seen.width() && !paper; ++x)
                    paper = seen.pixelColor(x, y) == theme.noStitch;
            EXPECT_TRUE(paper) << percent;
        }
    }
}

TEST(Repaint, GridLinesAreOnePixelAndEvenlyApart)
{
    Desk desk(10, 10);
    desk.canvas.setTheme(lightTheme());
    desk.canvas.setYarnTints(false);
    desk.canvas.clearFocus();
    const SectionId section = desk.section().id;
    ASSERT_TRUE(desk.document.performOrTell(fill(desk.document.pattern(), desk.document.catalogue(), section,
                                                 Area{0, 9, 1, 10}, desk.stitch("k"))));
    desk.settle();
    const QImage seen = desk.canvas.viewport()->grab().toImage();
    const QRect left = desk.canvas.cellRectOnViewport(5, 9), right = desk.canvas.cellRectOnViewport(5, 2);
    std::vector<int> lines;
    for (int x = left.left(); x <= right.right(); ++x)
        if (seen.pixelColor(x, left.center().y()) == lightTheme().line)
            lines.push_back(x);
    ASSERT_EQ(lines.size(), 8u); // the right side of each of eight cells
    for (std::size_t at = 1; at < lines.size(); ++at)
        EXPECT_EQ(lines[at] - lines[at - 1], desk.canvas.cellPixels());
}

} // namespace shawlwright::app
