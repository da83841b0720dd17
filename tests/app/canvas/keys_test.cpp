#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

namespace shawlwright::app {

TEST(Keys, ArrowsMoveTheCursorAndStopAtTheEdges)
{
    Desk desk;
    QSignalSpy moved(&desk.canvas, &Canvas::cursorMoved);
    desk.type(Qt::Key_Up);
    desk.type(Qt::Key_Left);
    desk.type(Qt::Key_Left);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 3}));
    EXPECT_EQ(moved.count(), 3);
    desk.type(Qt::Key_Home);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 16}));
    desk.type(Qt::Key_Left);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 16}));
    desk.type(Qt::Key_End);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 1}));
    desk.type(Qt::Key_Home, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.cursor(), (At{11, 16}));
    desk.type(Qt::Key_End, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 1}));
    desk.type(Qt::Key_Down);
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 1}));
}

TEST(Keys, TheCursorStaysInView)
{
    Desk desk(300, 300);
    desk.type(Qt::Key_Home, Qt::ControlModifier);
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(299, 300).isEmpty());
    desk.type(Qt::Key_PageDown);
    const At now = desk.canvas.cursor();
    EXPECT_LT(now.row, 290);
    EXPECT_FALSE(desk.canvas.cellRectOnViewport(now.row, now.column).isEmpty());
}

TEST(Keys, SpacePaintsAndGoesOnAsOneKnits)
{
    Desk desk;
    desk.brush("k");
    desk.canvas.setCursor(At{0, 1}); // a right-side row: leftwards
    desk.type(Qt::Key_Space);
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.key(0, 1), "k");
    EXPECT_EQ(desk.key(0, 2), "k");
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 3}));
    desk.canvas.setCursor(At{1, 16}); // a wrong-side row: rightwards
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.key(1, 16), "k");
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 15}));
    EXPECT_EQ(desk.steps(), 3);
    desk.canvas.setCursor(At{1, 1});
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 1}));
}

TEST(Keys, ReturnOpensAFieldForStitchesThatGoOnAsOneKnits)
{
    Desk desk;
    desk.canvas.setCursor(At{0, 1});
    desk.type(Qt::Key_Return);
    ASSERT_NE(desk.canvas.entry(), nullptr);
    QTest::keyClicks(desk.canvas.entry(), QStringLiteral("3 k"));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return);
    QTest::keyClicks(desk.canvas.entry(), QStringLiteral("yo, k2tog"));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return);
    EXPECT_EQ(desk.key(0, 3), "k");
    EXPECT_EQ(desk.key(0, 4), "yo");
    EXPECT_EQ(desk.key(0, 5), "k2tog");
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 6}));
    EXPECT_EQ(desk.steps(), 2);
    QTest::keyClicks(desk.canvas.entry(), QStringLiteral("blub"));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return);
    EXPECT_EQ(desk.steps(), 2);
    EXPECT_EQ(desk.told.size(), 1);
    EXPECT_EQ(desk.canvas.entry()->text(), QStringLiteral("blub")); // to be mended
    desk.canvas.entry()->clear();
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return); // the row above begins over the last stitch
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 5}));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Escape);
    EXPECT_EQ(desk.canvas.entry(), nullptr);
}

TEST(Keys, CtrlAndArrowsGoToTheNextEdge)
{
    Desk desk;
    desk.brush("k");
    desk.drag(desk.middle(0, 3), desk.middle(0, 12));
    desk.canvas.setTool(CanvasTool::Marker);
    desk.click(desk.boundary(0, 7));
    desk.canvas.setTool(CanvasTool::Paint);
    desk.canvas.setCursor(At{0, 1});
    const int left[] = {3, 12, 16, 16};
    for (const int column : left) {
        desk.type(Qt::Key_Left, Qt::ControlModifier);
        EXPECT_EQ(desk.canvas.cursor().column, column);
    }
    const int right[] = {12, 3, 1, 1};
    for (const int column : right) {
        desk.type(Qt::Key_Right, Qt::ControlModifier);
        EXPECT_EQ(desk.canvas.cursor().column, column);
    }
    desk.brush("p");
    desk.canvas.setCursor(At{1, 1}); // in the row above the marker is on the needle
    desk.type(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.cursor().column, 8);
    desk.type(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(desk.canvas.cursor().column, 7);
}

TEST(Keys, AWideBrushGoesOnByItsWidth)
{
    Desk desk;
    desk.brush("yo2");
    desk.canvas.setCursor(At{0, 3});
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 5}));
    EXPECT_EQ(desk.key(0, 4), "yo2");
}

TEST(Keys, DeleteTakesAway)
{
    Desk desk;
    desk.brush("k");
    desk.type(Qt::Key_Space);
    desk.canvas.setCursor(At{0, 1});
    desk.type(Qt::Key_Backspace);
    EXPECT_EQ(desk.key(0, 1), "no_st");
}

TEST(Keys, ShiftAndArrowsSelect)
{
    Desk desk;
    desk.canvas.setCursor(At{2, 4});
    desk.type(Qt::Key_Left, Qt::ShiftModifier);
    desk.type(Qt::Key_Left, Qt::ShiftModifier);
    desk.type(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(desk.canvas.selection(), (Area{2, 3, 4, 6}));
}

TEST(Keys, EveryToolCanBeUsedWithoutAMouse)
{
    Desk desk;
    desk.brush("k");
    desk.canvas.select(Area{0, 1, 1, 16});
    desk.canvas.setTool(CanvasTool::Area);
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.key(1, 16), "k");
    desk.canvas.select(Area{0, 1, 3, 6});
    QSignalSpy repeat(&desk.canvas, &Canvas::repeatDrawn);
    QSignalSpy rowRepeat(&desk.canvas, &Canvas::rowRepeatDrawn);
    desk.canvas.setTool(CanvasTool::Repeat);
    desk.type(Qt::Key_Space);
    ASSERT_EQ(repeat.count(), 1);
    EXPECT_EQ(repeat[0][0].value<Area>(), (Area{0, 1, 3, 6}));
    desk.canvas.setTool(CanvasTool::RowRepeat);
    desk.type(Qt::Key_Space);
    ASSERT_EQ(rowRepeat.count(), 1);
    EXPECT_EQ(rowRepeat[0][1].toInt(), 1);
    desk.canvas.setTool(CanvasTool::Marker);
    desk.canvas.setCursor(At{0, 9});
    desk.type(Qt::Key_Space);
    ASSERT_EQ(desk.section().rows[0]->moves.size(), 1u);
    EXPECT_EQ(desk.section().rows[0]->moves[0].boundary, 8); // before the stitch
    desk.canvas.setTool(CanvasTool::Turn);
    desk.canvas.setCursor(At{0, 12});
    desk.type(Qt::Key_Space);
    EXPECT_EQ(desk.key(0, 12), "k");
    EXPECT_EQ(desk.key(0, 13), "no_st");
}

TEST(Keys, LettersAndDigitsAreLeftToTheWindow)
{
    Desk desk;
    for (const int key : {Qt::Key_K, Qt::Key_1, Qt::Key_F3}) {
        QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier, QString(QChar(key < 256 ? key : 0)));
        QApplication::sendEvent(&desk.canvas, &event);
        EXPECT_FALSE(event.isAccepted());
    }
    EXPECT_EQ(desk.steps(), 0);
}

TEST(Keys, TabLeavesTheCanvas)
{
    PatternDocument document;
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* canvas = new Canvas(document);
    auto* field = new QLineEdit;
    layout->addWidget(canvas);
    layout->addWidget(field);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    canvas->setFocus();
    QTest::keyClick(canvas, Qt::Key_Tab);
    EXPECT_TRUE(field->hasFocus());
}

} // namespace shawlwright::app
