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
    EXPECT_TRUE(desk.canvas.entry()->property("wrong").toBool());
    desk.canvas.entry()->clear();
    EXPECT_FALSE(desk.canvas.entry()->property("wrong").toBool());
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return); // the row above begins over the last stitch
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 5}));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Escape);
    EXPECT_EQ(desk.canvas.entry(), nullptr);
}

namespace {

void enter(Desk& desk, const char* words)
{
    if (!desk.canvas.entry())
        desk.type(Qt::Key_Return);
    ASSERT_NE(desk.canvas.entry(), nullptr);
    desk.canvas.entry()->setText(QString::fromUtf8(words));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return);
}

} // namespace

TEST(Keys, ReturnOpensTheFieldWithAnyTool)
{
    for (const CanvasTool tool : {CanvasTool::Paint, CanvasTool::Area, CanvasTool::Erase, CanvasTool::Marker,
                                  CanvasTool::Repeat, CanvasTool::RowRepeat, CanvasTool::Turn, CanvasTool::Select}) {
        Desk desk;
        desk.canvas.setTool(tool);
        enter(desk, "k2tog");
        EXPECT_EQ(desk.key(0, 1), "k2tog") << static_cast<int>(tool);
    }
}

// Words go where the cursor is; once the loops ahead of a row are used up, the next row's first stitch is next.
TEST(Keys, TypedWordsGoOnInTheNextRowWhenOneIsFull)
{
    Desk desk;
    const int castOn = desk.document.pattern().head.castOn.stitches.at(0);
    ASSERT_GT(castOn, 4);
    enter(desk, "2 k");
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 3}));
    enter(desk, (std::to_string(castOn - 2) + " k").c_str());
    EXPECT_EQ(desk.canvas.cursor(), (At{1, castOn})); // WS: from the left
    enter(desk, "p, pm, p to end"); // a whole row, from its first stitch
    EXPECT_EQ(desk.key(1, castOn), "k");
    EXPECT_EQ(desk.key(1, 1), "k"); // purled on the WS
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 1}));
    desk.canvas.setCursor(At{2, 3});
    const int steps = desk.steps();
    enter(desk, "k to end"); // not from here: told, and one step to where it begins
    EXPECT_EQ(desk.steps(), steps);
    EXPECT_EQ(desk.told.size(), 1);
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 1}));
    QTest::keyClick(desk.canvas.entry(), Qt::Key_Return);
    EXPECT_EQ(desk.canvas.cursor(), (At{3, castOn}));
    desk.canvas.setCursor(At{0, 2}); // in a row that is full the cursor goes on beside what was typed
    enter(desk, "k2tog");
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 3}));
}

TEST(Keys, HomeAndEndGoToTheRowsStitchesFirst)
{
    Desk desk;
    desk.brush("k");
    desk.drag(desk.middle(0, 3), desk.middle(0, 12));
    desk.canvas.setCursor(At{0, 6});
    for (const auto& [key, column] : {std::pair(Qt::Key_Home, 12), {Qt::Key_Home, 16}, {Qt::Key_End, 3}, {Qt::Key_End, 1}}) {
        desk.type(key);
        EXPECT_EQ(desk.canvas.cursor(), (At{0, column}));
    }
    desk.canvas.setCursor(At{1, 6}); // empty: where its stitches will stand
    desk.type(Qt::Key_Home);
    EXPECT_EQ(desk.canvas.cursor(), (At{1, 12}));
}

TEST(Keys, UndoAndRedoGoToWhatTheyChange)
{
    Desk desk;
    desk.canvas.setCursor(At{2, 4});
    enter(desk, "3 k");
    desk.canvas.setCursor(At{7, 2});
    desk.document.undoStack().undo();
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 4}));
    desk.canvas.setCursor(At{7, 2});
    desk.document.undoStack().redo();
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 4}));
    desk.canvas.setCursor(At{7, 2}); // far away: brought into view
    Desk large(300, 300);
    large.canvas.setCursor(At{250, 200});
    enter(large, "k");
    large.canvas.setCursor(At{0, 1});
    large.document.undoStack().undo();
    EXPECT_EQ(large.canvas.cursor(), (At{250, 200}));
    EXPECT_FALSE(large.canvas.cellRectOnViewport(250, 200).isEmpty());
}

TEST(Keys, ANewPatternBeginsAtItsFirstStitchWithNothingSelected)
{
    Desk desk;
    desk.brush("k");
    desk.canvas.setCursor(At{7, 9});
    desk.canvas.select(Area{2, 3, 2, 3});
    desk.document.startNew(Pattern(desk.document.pattern()));
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 1}));
    EXPECT_TRUE(desk.canvas.selected().empty());
    desk.drag(desk.middle(0, 3), desk.middle(0, 12)); // on a stitch, not beside it
    desk.document.startNew(Pattern(desk.document.pattern()));
    EXPECT_EQ(desk.canvas.cursor(), (At{0, 3}));
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
    const int left[] = {3, 8, 12, 16, 16};
    for (const int column : left) {
        desk.type(Qt::Key_Left, Qt::ControlModifier);
        EXPECT_EQ(desk.canvas.cursor().column, column);
    }
    const int right[] = {12, 7, 3, 1, 1};
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
