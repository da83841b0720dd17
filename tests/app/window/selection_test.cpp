// Acts on a selection of more than one rectangle: all of it, or a sentence with numbers.
#include "tests/app/window/seat.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QSpinBox>
#include <QTest>

namespace shawlwright::app {

namespace {

void expectTold(Seat& seat, const char* part)
{
    EXPECT_TRUE(seat.window().statusLeft().contains(QString::fromUtf8(part)))
        << qPrintable(seat.window().statusLeft());
}

} // namespace

TEST(Selection, KeysSelectWholeRowsAndColumns)
{
    Seat seat;
    seat.window().canvas().setFocus();
    seat.window().canvas().setCursor(At{2, 3});
    seat.press(Qt::Key_W, Qt::ShiftModifier);
    EXPECT_EQ(seat.window().canvas().selection(), (Area{2, 2, 1, 20}));
    seat.press(Qt::Key_Escape);
    seat.press(Qt::Key_C, Qt::ShiftModifier);
    EXPECT_EQ(seat.window().canvas().selection(), (Area{0, 7, 3, 3}));
    seat.window().canvas().setCursor(At{0, 9});
    seat.press(Qt::Key_S, Qt::ShiftModifier);
    EXPECT_EQ(seat.window().canvas().selected().size(), 2u);
    EXPECT_EQ(seat.document().undoStack().count(), 0);
}

TEST(Selection, AKeyThatNeedsOneSaysSo)
{
    Seat seat;
    Canvas& canvas = seat.window().canvas();
    canvas.setFocus();
    int walked = 0;
    for (const ActionEntry& entry : actionTable()) {
        if (entry.needs != Needs::Selection)
            continue;
        ASSERT_FALSE(seat.window().action(entry.id)->isEnabled()) << entry.text;
        for (const QKeySequence& keys : seat.window().action(entry.id)->shortcuts()) {
            canvas.setCursor(At{4, 4});
            seat.window().action(ActionId::ZoomPlain)->trigger();
            const auto key = keys[0];
            QTest::keyClick(&canvas, key.key(), key.keyboardModifiers());
            expectTold(seat, "select stitches first");
            EXPECT_EQ(canvas.cursor(), (At{4, 4})) << entry.text;
            seat.document().tell(QStringLiteral("-"));
            ++walked;
        }
    }
    EXPECT_GE(walked, 14);
    seat.press(Qt::Key_G, Qt::ControlModifier);
    expectTold(seat, "Save the selection as a motif: select stitches first");
    seat.press(Qt::Key_Z, Qt::ControlModifier);
    expectTold(seat, "nothing was done");
    EXPECT_EQ(seat.document().undoStack().count(), 0);
}

TEST(Selection, AClickIsEnoughForAMotif)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.act(ActionId::ToolSelect);
    seat.click(0, 3);
    seat.window().questions().words = [](const QString&, const QString&) { return QStringLiteral("Dot"); };
    seat.press(Qt::Key_G, Qt::ControlModifier);
    ASSERT_EQ(seat.pattern().head.motifs.size(), 1u);
    EXPECT_EQ(seat.pattern().head.motifs[0].columns, 1);
}

TEST(Selection, SeveralRectanglesAreCopiedWithTheirDistances)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.paintRow(2, "p");
    seat.paintRow(5, "yo");
    seat.window().canvas().selectAreas({Area{0, 0, 1, 2}, Area{2, 2, 4, 5}});
    seat.act(ActionId::Copy);
    expectTold(seat, "4 cells in 2 rectangles");
    seat.window().canvas().select(std::nullopt);
    seat.window().canvas().setCursor(At{5, 11});
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.key(5, 11), "k");
    EXPECT_EQ(seat.key(5, 12), "k");
    EXPECT_EQ(seat.key(5, 13), "yo"); // between them nothing changes
    EXPECT_EQ(seat.key(5, 14), "yo");
    EXPECT_EQ(seat.key(7, 14), "p");
    EXPECT_EQ(seat.key(7, 15), "p");
    seat.window().canvas().selectAreas({Area{0, 0, 1, 2}, Area{2, 2, 4, 5}});
    const int steps = seat.document().undoStack().count();
    seat.act(ActionId::Cut);
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.key(0, 2), "no_st");
    EXPECT_EQ(seat.key(0, 3), "k");
    EXPECT_EQ(seat.key(2, 4), "no_st");
    EXPECT_EQ(seat.key(2, 3), "p");
}

TEST(Selection, WhatNeedsOneRectangleSaysSo)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.window().canvas().selectAreas({Area{0, 1, 1, 2}, Area{4, 4, 4, 5}});
    seat.settle();
    const Pattern before = seat.pattern();
    for (const ActionId id : {ActionId::Mirror, ActionId::RepeatSelection}) {
        seat.act(id);
        expectTold(seat, "2 are selected, 6 cells in all");
    }
    for (const ActionId id :
         {ActionId::RepeatSelectedRows, ActionId::DuplicateRow, ActionId::RowUp, ActionId::StripedRows}) {
        seat.act(id);
        expectTold(seat, "rows 1 to 2, 5 are selected");
    }
    EXPECT_EQ(seat.pattern(), before);
}

TEST(Selection, RowsAndColumnsWithGapsAreDeletedInOneStep)
{
    Seat seat;
    seat.paintRow(1, "p");
    seat.window().canvas().selectAreas({Area{0, 0, 1, 20}, Area{2, 3, 1, 20}});
    seat.settle();
    const int steps = seat.document().undoStack().count();
    seat.act(ActionId::DeleteRow);
    EXPECT_EQ(seat.section().rows.size(), 5u);
    EXPECT_EQ(seat.key(0, 1), "p");
    seat.document().undoStack().undo();
    EXPECT_EQ(seat.section().rows.size(), 8u);
    seat.window().canvas().selectAreas({Area{0, 7, 1, 1}, Area{0, 7, 4, 5}});
    seat.act(ActionId::DeleteColumn);
    EXPECT_EQ(seat.section().frame.columns, 17);
    seat.document().undoStack().undo();
    EXPECT_EQ(seat.section().frame.columns, 20);
    EXPECT_EQ(seat.document().undoStack().index(), steps);
}

TEST(Selection, FillReachesEveryRectangle)
{
    Seat seat;
    seat.window().canvas().setBrush(seat.stitch("yo"));
    seat.window().canvas().selectAreas({Area{0, 0, 1, 2}, Area{2, 2, 4, 5}});
    seat.settle();
    seat.act(ActionId::FillSelection);
    EXPECT_EQ(seat.key(0, 1), "yo");
    EXPECT_EQ(seat.key(2, 5), "yo");
    EXPECT_EQ(seat.key(1, 1), "no_st");
    EXPECT_EQ(seat.document().undoStack().count(), 1);
}

TEST(Selection, KeysMoveItCellByCell)
{
    Seat seat;
    seat.paintRow(0, "k");
    Canvas& canvas = seat.window().canvas();
    canvas.setFocus();
    canvas.select(Area{0, 0, 3, 4});
    seat.settle();
    const int steps = seat.document().undoStack().count();
    seat.press(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    seat.press(Qt::Key_Left, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(seat.key(1, 4), "k");
    EXPECT_EQ(seat.key(1, 5), "k");
    EXPECT_EQ(seat.key(0, 3), "no_st");
    EXPECT_EQ(canvas.selection(), (Area{1, 1, 4, 5}));
    EXPECT_EQ(seat.document().undoStack().index(), steps + 1); // one way, one step
    seat.press(Qt::Key_Down, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(seat.key(0, 3), "no_st");
    seat.press(Qt::Key_Right, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(seat.key(0, 3), "k");
    EXPECT_EQ(seat.key(0, 5), "k"); // what lies on the way is left alone
    EXPECT_EQ(seat.document().undoStack().index(), steps);
    seat.press(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    seat.press(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(seat.key(1, 3), "no_st");
    EXPECT_EQ(seat.key(2, 3), "k");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.key(0, 3), "k");
    EXPECT_EQ(canvas.selection(), (Area{0, 0, 3, 4})); // it goes back with its stitches
    seat.act(ActionId::Redo);
    EXPECT_EQ(seat.key(2, 3), "k");
    EXPECT_EQ(canvas.selection(), (Area{2, 2, 3, 4}));
}

TEST(Selection, IsRepeatedSeveralTimesByADialogThatTellsWhatFits)
{
    Seat seat; // 8 rows, 20 columns
    seat.paintRow(0, "k");
    seat.window().canvas().select(Area{0, 1, 1, 3});
    seat.settle();
    const int steps = seat.document().undoStack().count();
    seat.inDialog([&] { seat.act(ActionId::PutDownTimes); },
                  [](QDialog& dialog) {
                      EXPECT_EQ(field<QLabel>(dialog, "fit").text(), QStringLiteral("there is room for 3"));
                      field<QSpinBox>(dialog, "times").setValue(4);
                      EXPECT_TRUE(field<QLabel>(dialog, "preview")
                                      .text()
                                      .contains(QStringLiteral("4 times asked for, 3 fit")));
                      field<QSpinBox>(dialog, "times").setValue(2);
                      EXPECT_EQ(field<QLabel>(dialog, "preview").text(),
                                QStringLiteral("2 times more: 4 rows by 3 columns, rows 3 to 6, columns 1 to 3."));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.key(2, 3), "k");
    EXPECT_EQ(seat.key(4, 3), "k");
    EXPECT_EQ(seat.key(6, 3), "no_st");
    expectTold(seat, "rows 3 to 6");
    seat.window().canvas().select(Area{0, 2, 1, 20}); // an odd number of rows
    seat.settle();
    seat.inDialog([&] { seat.act(ActionId::PutDownTimes); },
                  [](QDialog& dialog) {
                      field<QComboBox>(dialog, "along").setCurrentIndex(1);
                      EXPECT_TRUE(field<QLabel>(dialog, "preview")
                                      .text()
                                      .contains(QStringLiteral("3 new rows above row 3")));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.section().rows.size(), 11u);
    EXPECT_EQ(seat.key(3, 20), "k");
    expectTold(seat, "look at the sides");
}

TEST(Selection, TurnedUpsideDownOrRefusedWithTheCell)
{
    Seat seat;
    seat.paintRow(0, "k");
    const At decrease[] = {{0, 2}}, hole[] = {{0, 3}};
    const auto paintAt = [&](std::span<const At> at, const char* key) {
        seat.document().performOrTell(
            paint(seat.pattern(), seat.document().catalogue(), seat.section().id, at, seat.stitch(key)));
    };
    paintAt(decrease, "k2tog");
    paintAt(hole, "yo");
    seat.window().canvas().select(Area{0, 2, 1, 20});
    seat.settle();
    seat.act(ActionId::UpsideDown);
    EXPECT_EQ(seat.key(2, 2), "ssk");
    EXPECT_EQ(seat.key(2, 3), "yo");
    EXPECT_EQ(seat.key(0, 2), "no_st");
    seat.window().canvas().select(Area{2, 2, 3, 20}); // the yarn over without its decrease
    seat.settle();
    const Pattern before = seat.pattern();
    seat.act(ActionId::UpsideDown);
    EXPECT_EQ(seat.pattern(), before);
    expectTold(seat, "Row 3, column 3: yo makes 1 of 0");
}

TEST(Selection, PartsOfARowMakeRoomAndCloseUp)
{
    Seat seat;
    seat.paintRow(0, "k");
    Canvas& canvas = seat.window().canvas();
    const At edges[] = {{0, 1}, {0, 19}, {0, 20}};
    seat.document().performOrTell(erase(seat.pattern(), seat.document().catalogue(), seat.section().id, edges));
    const At mark[] = {{0, 10}};
    seat.document().performOrTell(
        paint(seat.pattern(), seat.document().catalogue(), seat.section().id, mark, seat.stitch("yo")));
    canvas.setFocus();
    canvas.setCursor(At{0, 10});
    seat.press(Qt::Key_Insert);
    EXPECT_EQ(seat.key(0, 10), "no_st");
    EXPECT_EQ(seat.key(0, 11), "yo");
    EXPECT_EQ(seat.key(0, 19), "k");
    seat.press(Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(seat.key(0, 10), "yo");
    EXPECT_EQ(seat.key(0, 19), "no_st");
    seat.press(Qt::Key_Insert, Qt::ShiftModifier);
    EXPECT_EQ(seat.key(0, 10), "no_st");
    EXPECT_EQ(seat.key(0, 9), "yo");
    EXPECT_EQ(seat.key(0, 1), "k");
    seat.press(Qt::Key_Delete, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(seat.key(0, 10), "yo");
    EXPECT_EQ(seat.key(0, 1), "no_st");
    canvas.select(Area{0, 0, 10, 12}); // three columns don't fit on the left
    seat.settle();
    const Pattern before = seat.pattern();
    seat.act(ActionId::OpenLeft);
    expectTold(seat, "insert columns at that edge");
    EXPECT_EQ(seat.pattern(), before);
    seat.act(ActionId::CloseLeft);
    EXPECT_EQ(seat.key(0, 10), "k");
    EXPECT_EQ(seat.key(0, 15), "k");
    EXPECT_EQ(seat.key(0, 16), "no_st");
}

TEST(Selection, MirroringTellsWhatHasNoImage)
{
    Seat seat;
    seat.paintRow(0, "k5tog");
    seat.window().canvas().select(Area{0, 0, 1, 2});
    seat.settle();
    seat.act(ActionId::Mirror);
    expectTold(seat, "2 stitches have no mirror image and lean as before, the first: k5tog in row 1, column 2");
}

TEST(Selection, IsCopiedAsWordsDrawingAndPictureTogether)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.paintRow(1, "yo");
    seat.window().canvas().select(Area{0, 1, 1, 4});
    seat.window().action(ActionId::DarkTheme)->trigger();
    seat.act(ActionId::Copy);
    const QMimeData* copied = QApplication::clipboard()->mimeData();
    ASSERT_NE(copied, nullptr);
    EXPECT_TRUE(copied->text().contains(QStringLiteral("Row 1"))) << qPrintable(copied->text());
    const QByteArray svg = copied->data(QStringLiteral("image/svg+xml"));
    EXPECT_TRUE(svg.contains("2 rows of 4 columns")) << svg.left(600).constData();
    const QImage picture = QImage::fromData(copied->data(QStringLiteral("image/png")), "PNG");
    ASSERT_FALSE(picture.isNull());
    EXPECT_EQ(picture.pixelColor(0, 0), QColor(Qt::white)); // light in the dark theme, too
    // Of the pattern as it was when it was copied.
    seat.paintRow(0, "p");
    EXPECT_EQ(QApplication::clipboard()->mimeData()->data(QStringLiteral("image/svg+xml")), svg);
    seat.window().action(ActionId::LightTheme)->trigger();
    seat.window().canvas().select(Area{0, 1, 5, 8});
    seat.window().canvas().select(Area{4, 4, 1, 1});
    seat.act(ActionId::Paste); // and is still known here as stitches
    EXPECT_EQ(seat.key(5, 4), "yo");
}

} // namespace shawlwright::app
