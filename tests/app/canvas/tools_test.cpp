#include "app/canvas/turn_cut.h"
#include "core/edits/rows.h"
#include "core/edits/marks.h"
#include "tests/app/canvas/desk.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace shawlwright::app {

TEST(PaintTool, AClickPaintsOneCellAndIsOneStep)
{
    Desk desk;
    desk.brush("k2tog");
    desk.click(desk.middle(2, 5));
    EXPECT_EQ(desk.key(2, 5), "k2tog");
    EXPECT_EQ(desk.key(2, 4), "no_st");
    EXPECT_EQ(desk.key(2, 6), "no_st");
    EXPECT_EQ(desk.key(3, 5), "no_st");
    EXPECT_EQ(desk.steps(), 1);
    EXPECT_EQ(desk.canvas.cursor(), (At{2, 5}));
    EXPECT_FALSE(desk.document.undoStack().undoText().isEmpty());
}

TEST(PaintTool, AQuickDragLeavesNoGapAndIsOneStep)
{
    Desk desk(60, 60, QSize(1700, 1600));
    desk.brush("yo");
    const Pattern before = desk.document.pattern();
    desk.press(desk.middle(3, 50));
    desk.move(desk.middle(3, 20)); // two events, thirty cells
    desk.move(desk.middle(23, 10));
    desk.release(desk.middle(23, 10));
    for (int column = 20; column <= 50; ++column)
        EXPECT_EQ(desk.key(3, column), "yo") << column;
    for (int row = 3; row <= 23; ++row) {
        int painted = 0;
        for (int column = 1; column <= 20; ++column)
            painted += desk.key(row, column) == "yo";
        EXPECT_GE(painted, 1) << row;
    }
    EXPECT_EQ(desk.steps(), 1);
    desk.document.undoStack().undo();
    EXPECT_EQ(desk.document.pattern(), before);
    EXPECT_FALSE(desk.document.modified());
}

TEST(PaintTool, TwoStrokesAtOnceAreTwoSteps)
{
    Desk desk;
    desk.brush("yo");
    desk.click(desk.middle(0, 1));
    desk.click(desk.middle(0, 2));
    EXPECT_EQ(desk.steps(), 2);
    desk.document.undoStack().undo();
    EXPECT_EQ(desk.key(0, 1), "yo");
    EXPECT_EQ(desk.key(0, 2), "no_st");
}

TEST(PaintTool, PaintingWhatIsThereMakesNoStepAndLeavesRedoAlive)
{
    Desk desk;
    desk.brush("yo");
    desk.click(desk.middle(0, 1));
    desk.click(desk.middle(0, 2));
    desk.document.undoStack().undo();
    desk.click(desk.middle(0, 1));
    EXPECT_TRUE(desk.document.undoStack().canRedo());
    EXPECT_EQ(desk.steps(), 2);
}

TEST(PaintTool, TheRightButtonAndTheEraserTakeAway)
{
    Desk desk;
    desk.brush("k");
    desk.drag(desk.middle(1, 1), desk.middle(1, 8));
    desk.drag(desk.middle(1, 3), desk.middle(1, 4), Qt::RightButton);
    EXPECT_EQ(desk.key(1, 2), "k");
    EXPECT_EQ(desk.key(1, 3), "no_st");
    EXPECT_EQ(desk.key(1, 4), "no_st");
    desk.canvas.setTool(CanvasTool::Erase);
    desk.click(desk.middle(1, 7));
    EXPECT_EQ(desk.key(1, 7), "no_st");
    EXPECT_EQ(desk.steps(), 3);
}

TEST(PaintTool, AWideStitchLandsToTheLeftAndIsRefusedOverTheEdge)
{
    Desk desk;
    desk.brush("yo2");
    ASSERT_EQ(desk.document.catalogue().stitch(desk.stitch("yo2")).width(), 2);
    desk.click(desk.middle(0, 4));
    EXPECT_EQ(desk.key(0, 4), "yo2");
    EXPECT_EQ(desk.key(0, 5), "yo2");
    EXPECT_EQ(desk.cell(0, 4).part, 0);
    EXPECT_EQ(desk.cell(0, 5).part, 1);
    EXPECT_EQ(desk.key(0, 3), "no_st");
    desk.click(desk.middle(0, 16));
    EXPECT_EQ(desk.key(0, 16), "no_st");
    ASSERT_EQ(desk.told.size(), 1);
    EXPECT_FALSE(desk.told.front().isEmpty());
    desk.drag(desk.middle(2, 1), desk.middle(2, 6)); // side by side: 1-2, 3-4, 5-6
    for (int column = 1; column <= 6; ++column) {
        EXPECT_EQ(desk.key(2, column), "yo2") << column;
        EXPECT_EQ(desk.cell(2, column).part, (column - 1) % 2) << column;
    }
}

TEST(PaintTool, TakesTheYarnChosenForTheBrush)
{
    Desk desk;
    ASSERT_GE(desk.document.pattern().head.yarns.size(), 2u);
    const YarnId contrast = desk.document.pattern().head.yarns[1].id;
    desk.brush("k");
    desk.canvas.setBrushYarn(contrast);
    desk.click(desk.middle(0, 1));
    EXPECT_EQ(desk.cell(0, 1).yarn, contrast);
}

TEST(PaintTool, EscapeTakesTheWholeStrokeBack)
{
    Desk desk;
    desk.brush("k");
    desk.click(desk.middle(5, 5));
    const Pattern before = desk.document.pattern();
    desk.press(desk.middle(1, 1));
    desk.move(desk.middle(1, 9));
    desk.move(desk.middle(6, 9));
    EXPECT_NE(desk.document.pattern(), before);
    desk.type(Qt::Key_Escape);
    EXPECT_EQ(desk.document.pattern(), before);
    EXPECT_FALSE(desk.document.undoStack().canRedo());
    EXPECT_EQ(desk.steps(), 1);
    desk.move(desk.middle(9, 9)); // the button is still down: nothing more is painted
    desk.release(desk.middle(9, 9));
    EXPECT_EQ(desk.document.pattern(), before);
}

TEST(PaintTool, UndoInTheMiddleOfADragEndsIt)
{
    Desk desk;
    desk.brush("k");
    const Pattern before = desk.document.pattern();
    desk.press(desk.middle(1, 1));
    desk.move(desk.middle(1, 9));
    desk.document.undoStack().undo();
    EXPECT_EQ(desk.document.pattern(), before);
    EXPECT_FALSE(desk.canvas.strokeOpen());
    desk.move(desk.middle(1, 12));
    desk.release(desk.middle(1, 12));
    EXPECT_EQ(desk.document.pattern(), before);
    desk.document.undoStack().redo();
    EXPECT_EQ(desk.key(1, 9), "k");
    EXPECT_EQ(desk.key(1, 12), "no_st");
}

// Every tool's drag, and everything that can happen in the middle of it.
TEST(Tools, WhateverHappensInTheMiddleOfADragTheStepsUndo)
{
    for (const CanvasTool tool :
         {CanvasTool::Paint, CanvasTool::Area, CanvasTool::Erase, CanvasTool::Marker, CanvasTool::Repeat,
          CanvasTool::RowRepeat, CanvasTool::Turn, CanvasTool::Select})
        for (int act = 0; act < 9; ++act) {
            Desk desk;
            desk.brush("k");
            desk.drag(desk.middle(0, 1), desk.middle(0, 12));
            desk.canvas.setTool(CanvasTool::Marker);
            desk.click(desk.boundary(0, 6));
            desk.canvas.setTool(tool);
            desk.press(desk.boundary(0, 6));
            desk.move(desk.middle(4, 9));
            switch (act) {
            case 0:
                desk.document.undoStack().undo();
                break;
            case 1:
                desk.document.undoStack().undo();
                desk.document.undoStack().redo();
                break;
            case 2:
                desk.canvas.setTool(CanvasTool::Paint);
                break;
            case 3:
                desk.canvas.clearFocus();
                break;
            case 4:
                desk.type(Qt::Key_Delete);
                break;
            case 5:
                (void)desk.document.performOrTell(
                    deleteRows(desk.document.pattern(), desk.section().id, 0, 5));
                break;
            case 6:
                desk.document.startNew(desk.document.pattern());
                break;
            case 7:
                desk.type(Qt::Key_Escape);
                break;
            case 8:
                desk.canvas.setSection(desk.section().id);
                break;
            }
            desk.move(desk.middle(3, 3));
            desk.release(desk.middle(3, 3));
            EXPECT_FALSE(desk.canvas.strokeOpen());
            desk.settle();
            const Pattern after = desk.document.pattern();
            const int steps = desk.document.undoStack().index();
            while (desk.document.undoStack().canUndo())
                desk.document.undoStack().undo();
            while (desk.document.undoStack().index() < steps)
                desk.document.undoStack().redo();
            EXPECT_EQ(desk.document.pattern(), after) << static_cast<int>(tool) << ' ' << act;
        }
}

TEST(AreaTool, FillsTheRectangleInOneStep)
{
    Desk desk;
    desk.brush("p");
    desk.canvas.setTool(CanvasTool::Area);
    desk.drag(desk.middle(2, 9), desk.middle(5, 4));
    for (int row = 0; row < 12; ++row)
        for (int column = 1; column <= 16; ++column) {
            const bool inside = row >= 2 && row <= 5 && column >= 4 && column <= 9;
            EXPECT_EQ(desk.key(row, column), inside ? "p" : "no_st") << row << ' ' << column;
        }
    EXPECT_EQ(desk.steps(), 1);
}

TEST(MarkerTool, PlacesMovesAndTakesAway)
{
    Desk desk;
    desk.brush("k");
    desk.drag(desk.middle(0, 1), desk.middle(0, 16));
    desk.canvas.setTool(CanvasTool::Marker);
    desk.click(desk.boundary(0, 6));
    const auto moves = [&](int row) { return desk.section().rows[static_cast<std::size_t>(row)]->moves; };
    ASSERT_EQ(moves(0).size(), 1u);
    EXPECT_EQ(moves(0)[0].boundary, 6);
    EXPECT_EQ(moves(0)[0].kind, MoveKind::Place);
    ASSERT_EQ(desk.document.pattern().head.markers.size(), 1u);
    EXPECT_EQ(desk.document.pattern().head.markers[0].name, "A");

    desk.drag(desk.boundary(0, 6), desk.boundary(0, 9));
    ASSERT_EQ(moves(0).size(), 1u);
    EXPECT_EQ(moves(0)[0].boundary, 9);

    desk.click(desk.boundary(0, 3)); // another marker
    EXPECT_EQ(moves(0).size(), 2u);
    EXPECT_EQ(desk.document.pattern().head.markers.size(), 2u);
    desk.click(desk.boundary(0, 3), Qt::RightButton);
    EXPECT_EQ(moves(0).size(), 1u);

    desk.click(desk.boundary(0, 9)); // chosen
    desk.type(Qt::Key_Delete);
    EXPECT_TRUE(moves(0).empty());
    EXPECT_EQ(desk.key(0, 9), "k"); // Delete took the marker, not a stitch
    EXPECT_EQ(desk.steps(), 6);
}

TEST(MarkerTool, ALineFromBelowIsMovedWhereItWasPlacedAndTakenAwayWhereOneClicks)
{
    Desk desk;
    desk.brush("k");
    for (int row = 0; row < 3; ++row)
        desk.drag(desk.middle(row, 1), desk.middle(row, 16));
    desk.canvas.setTool(CanvasTool::Marker);
    desk.click(desk.boundary(0, 6));
    desk.drag(desk.boundary(2, 6), desk.boundary(2, 8));
    EXPECT_EQ(desk.section().rows[0]->moves.at(0).boundary, 8);
    EXPECT_TRUE(desk.section().rows[2]->moves.empty());
    desk.click(desk.boundary(2, 8), Qt::RightButton);
    ASSERT_EQ(desk.section().rows[2]->moves.size(), 1u);
    EXPECT_EQ(desk.section().rows[2]->moves[0].kind, MoveKind::Remove);
}

TEST(RepeatTool, DraggingAsksForAStitchRepeatAndAClickInOneOpensIt)
{
    Desk desk;
    desk.canvas.setTool(CanvasTool::Repeat);
    QSignalSpy drawn(&desk.canvas, &Canvas::repeatDrawn);
    QSignalSpy activated(&desk.canvas, &Canvas::boxActivated);
    desk.drag(desk.middle(1, 4), desk.middle(3, 9));
    ASSERT_EQ(drawn.count(), 1);
    EXPECT_EQ(drawn[0][0].value<Area>(), (Area{1, 3, 4, 9}));
    EXPECT_EQ(desk.steps(), 0); // whoever listens makes it

    shawlwright::Box box;
    box.firstRow = desk.section().rows[1]->id;
    box.lastRow = desk.section().rows[3]->id;
    box.firstColumn = 4;
    box.lastColumn = 9;
    ASSERT_TRUE(desk.document.performOrTell(addBox(desk.document.pattern(), desk.section().id, box)));
    box.id = desk.section().frame.boxes[0].id;
    for (const QPoint at : {desk.boundary(2, 9), desk.middle(2, 6)}) {
        desk.click(at);
        ASSERT_GE(activated.count(), 1);
        EXPECT_EQ(activated.takeFirst()[0].value<BoxId>(), box.id);
    }
    desk.click(desk.middle(2, 12)); // beside it
    EXPECT_EQ(activated.count(), 0);
    EXPECT_EQ(desk.told.size(), 1);

    desk.canvas.setTool(CanvasTool::Select); // selects inside, so only the edge opens it
    desk.click(desk.middle(2, 6));
    EXPECT_EQ(activated.count(), 0);
    desk.click(desk.boundary(2, 9));
    EXPECT_EQ(activated.count(), 1);
}

TEST(RowRepeatTool, DraggingOverRowsAsksForARowRepeat)
{
    Desk desk;
    desk.canvas.setTool(CanvasTool::RowRepeat);
    QSignalSpy drawn(&desk.canvas, &Canvas::rowRepeatDrawn);
    desk.drag(desk.middle(6, 4), desk.middle(3, 4));
    ASSERT_EQ(drawn.count(), 1);
    EXPECT_EQ(drawn[0][0].toInt(), 3);
    EXPECT_EQ(drawn[0][1].toInt(), 6);
}

TEST(TurnTool, CutsTheRowBeyondTheTurnOnEitherSide)
{
    Desk desk;
    desk.brush("k");
    for (int row = 0; row < 2; ++row)
        desk.drag(desk.middle(row, 1), desk.middle(row, 16));
    ASSERT_EQ(desk.section().rows[0]->side, Side::RS);
    ASSERT_EQ(desk.section().rows[1]->side, Side::WS);
    desk.canvas.setTool(CanvasTool::Turn);
    desk.canvas.setTurnMethod(TurnMethod::DoubleStitch);
    const int before = desk.steps();
    desk.click(desk.boundary(0, 11));
    desk.click(desk.boundary(1, 5));
    for (int column = 1; column <= 16; ++column) {
        EXPECT_EQ(desk.key(0, column), column <= 11 ? "k" : "no_st") << column; // leftwards
        EXPECT_EQ(desk.key(1, column), column > 5 ? "k" : "no_st") << column;   // rightwards
    }
    EXPECT_EQ(desk.section().rows[0]->finish.kind, FinishKind::TurnEarly);
    EXPECT_EQ(desk.section().rows[0]->finish.method, TurnMethod::DoubleStitch);
    EXPECT_EQ(desk.steps(), before + 2);
    desk.told.clear();
    desk.canvas.setTool(CanvasTool::Paint);
    desk.click(desk.middle(0, 12));
    ASSERT_EQ(desk.told.size(), 1);
    EXPECT_TRUE(desk.told.last().startsWith(QStringLiteral("Row 1 turns after stitch 12 now; it turned after stitch 11.")))
        << qPrintable(desk.told.last());
    desk.canvas.setTool(CanvasTool::Turn);
    desk.click(desk.middle(0, 3), Qt::RightButton);
    EXPECT_EQ(desk.section().rows[0]->finish.kind, FinishKind::Turn);
}

TEST(TurnTool, CutsNoStitchInTwo)
{
    Desk desk;
    desk.brush("yo2");
    desk.drag(desk.middle(0, 1), desk.middle(0, 16));
    desk.canvas.setTool(CanvasTool::Turn);
    desk.click(desk.boundary(0, 5)); // in the middle of columns 5 and 6
    EXPECT_EQ(desk.key(0, 4), "yo2");
    EXPECT_EQ(desk.key(0, 5), "no_st");
    EXPECT_EQ(desk.key(0, 6), "no_st");
    EXPECT_TRUE(faultsOf(desk.document.pattern(), desk.document.catalogue()).empty());
}

TEST(SelectTool, SelectsAndDeletes)
{
    Desk desk;
    desk.brush("k");
    desk.drag(desk.middle(1, 1), desk.middle(1, 8));
    desk.canvas.setTool(CanvasTool::Select);
    desk.drag(desk.middle(0, 2), desk.middle(2, 4));
    EXPECT_EQ(desk.canvas.selection(), (Area{0, 2, 2, 4}));
    desk.type(Qt::Key_Delete);
    EXPECT_EQ(desk.key(1, 1), "k");
    EXPECT_EQ(desk.key(1, 2), "no_st");
    EXPECT_EQ(desk.key(1, 4), "no_st");
    EXPECT_EQ(desk.key(1, 5), "k");
    desk.type(Qt::Key_Escape);
    EXPECT_FALSE(desk.canvas.selection());
}

TEST(SelectTool, SelectionAndCursorStayWithinAChartThatShrinks)
{
    Desk desk;
    desk.canvas.select(Area{8, 11, 10, 16});
    desk.canvas.setCursor(At{11, 16});
    const SectionId section = desk.section().id;
    (void)desk.document.performOrTell(deleteRows(desk.document.pattern(), section, 9, 11));
    EXPECT_EQ(desk.canvas.selection(), (Area{8, 8, 10, 16}));
    EXPECT_EQ(desk.canvas.cursor(), (At{8, 16}));
    desk.document.undoStack().undo();
    desk.document.undoStack().redo();
    desk.settle();
    EXPECT_LE(desk.canvas.cursor().row, 8);
}

TEST(Tools, AltAndClickTakesTheStitchUp)
{
    Desk desk;
    desk.brush("yo");
    desk.click(desk.middle(0, 3));
    QSignalSpy picked(&desk.canvas, &Canvas::picked);
    desk.press(desk.middle(0, 3), Qt::LeftButton, Qt::AltModifier);
    desk.release(desk.middle(0, 3));
    ASSERT_EQ(picked.count(), 1);
    EXPECT_EQ(picked[0][0].value<StitchId>(), desk.stitch("yo"));
    EXPECT_EQ(desk.steps(), 1);
}

} // namespace shawlwright::app
