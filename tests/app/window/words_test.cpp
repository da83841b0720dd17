// Words and chart in the window: typing over a row, reading rows, pasting them, and the style sheet.
#include "app/panels/read_rows_dialog.h"
#include "app/panels/row_words_editor.h"
#include "app/panels/words_panel.h"
#include "core/edits/rows.h"
#include "core/wording/style.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QTest>

namespace shawlwright::app {

namespace {

RowWordsEditor& editorOf(Seat& seat)
{
    RowWordsEditor* editor = seat.window().words().editor();
    EXPECT_NE(editor, nullptr);
    return *editor;
}

void typeOver(Seat& seat, const char* words)
{
    QPlainTextEdit& field = editorOf(seat).field();
    field.selectAll();
    QTest::keyClicks(&field, QString::fromUtf8(words));
    QTest::keyClick(&field, Qt::Key_Return);
    seat.settle();
}

} // namespace

TEST(Words, TypedOverChangeTheChartInOneStep)
{
    Seat seat(6, 4, 6);
    seat.paintRow(0, "k");
    seat.window().canvas().setCursor(At{0, 1});
    const int before = seat.document().undoStack().count();
    seat.act(ActionId::RowWords);
    EXPECT_EQ(editorOf(seat).words(), QStringLiteral("With MC, knit."));
    typeOver(seat, "k2, yo, k2tog, k2");
    EXPECT_EQ(seat.window().words().editor(), nullptr);
    EXPECT_EQ(seat.key(0, 3), "yo");
    EXPECT_EQ(seat.key(0, 4), "k2tog");
    EXPECT_EQ(seat.document().undoStack().count(), before + 1);
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.key(0, 3), "k");
}

TEST(Words, TheListIsGoneThroughByTheArrowsAndTheChartFollows)
{
    Seat seat(6, 4, 6);
    for (int row = 0; row < 4; ++row)
        seat.paintRow(row, row == 1 ? "yo" : "k"); // no two rows are told together
    seat.window().canvas().setCursor(At{0, 1});
    seat.settle();
    QListView* list = seat.window().words().list();
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Down);
    seat.settle();
    EXPECT_EQ(seat.window().canvas().cursor().row, 1);
    EXPECT_TRUE(list->hasFocus());
    QTest::keyClick(list, Qt::Key_Up);
    seat.settle();
    EXPECT_EQ(seat.window().canvas().cursor().row, 0);
    QTest::keyClick(list, Qt::Key_Escape);
    EXPECT_TRUE(seat.window().canvas().hasFocus());
}

TEST(Words, AMisspeltStitchTypedIntoTheChartIsTold)
{
    Seat seat;
    Canvas& canvas = seat.window().canvas();
    canvas.setFocus();
    canvas.setCursor(At{0, 1});
    seat.press(Qt::Key_Return);
    ASSERT_NE(canvas.entry(), nullptr);
    QTest::keyClicks(canvas.entry(), QStringLiteral("k3togg"));
    QTest::keyClick(canvas.entry(), Qt::Key_Return);
    seat.settle();
    EXPECT_EQ(seat.key(0, 1), "k3tog");
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("'k3togg'; taken as 'k3tog'")))
        << seat.window().statusLeft().toStdString();
}

TEST(Words, AMessageLongerThanTheStatusLineStandsWholeAboveIt)
{
    Seat seat;
    const QString sentence = QStringLiteral("Row 3 asks for more stitches than there are. ").repeated(12);
    seat.document().tell(sentence);
    auto* whole = seat.window().findChild<QLabel*>(QStringLiteral("saidWhole"));
    ASSERT_NE(whole, nullptr);
    EXPECT_EQ(whole->text(), sentence);
    EXPECT_TRUE(whole->isVisible());
    EXPECT_TRUE(seat.window().rect().contains(whole->geometry()));
    EXPECT_GE(whole->height(), whole->heightForWidth(whole->width()));
    // Beside it the panels have their tabs and buttons.
    EXPECT_GE(whole->geometry().left(), seat.window().centralWidget()->geometry().left());
    EXPECT_LE(whole->geometry().right(), seat.window().centralWidget()->geometry().right());
    seat.inDialog([&] { seat.act(ActionId::PatternSettings); },
                  [whole](QDialog& dialog) {
                      EXPECT_FALSE(whole->isVisible());
                      Seat::leave(dialog);
                  });
    seat.document().tell(sentence);
    EXPECT_TRUE(whole->isVisible());
    seat.act(ActionId::ZoomIn);
    EXPECT_FALSE(whole->isVisible());
    seat.document().tell(sentence);
    seat.document().tell(QStringLiteral("Row 3 is purled."));
    EXPECT_FALSE(whole->isVisible());
}

TEST(Words, ShowTheNoteOfARow)
{
    Seat seat(6, 2, 6);
    seat.paintRow(0, "k");
    Row noted = *seat.section().rows.front();
    noted.note = "Pin the middle here with a thread of another colour, and count what lies on either side of it.";
    seat.document().performOrTell(setRow(seat.document().pattern(), seat.section().id, 0, noted, "note"));
    seat.settle();
    EXPECT_TRUE(seat.window().words().text().contains(QStringLiteral("Pin the middle here")));
    QListView* list = seat.window().words().list();
    const int with = list->sizeHintForIndex(list->model()->index(0, 0)).height();
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_GT(with, list->sizeHintForIndex(list->model()->index(0, 0)).height()); // it is drawn
}

TEST(Words, ThatCanNotBeReadSayWhyAndChangeNothing)
{
    Seat seat(6, 4, 6);
    seat.paintRow(0, "k");
    const int before = seat.document().undoStack().count();
    seat.window().editWords(0);
    typeOver(seat, "k2, blub, k3");
    EXPECT_TRUE(editorOf(seat).wrong().contains(QStringLiteral("blub")));
    EXPECT_EQ(editorOf(seat).field().textCursor().position(), 4);
    EXPECT_EQ(seat.document().undoStack().count(), before);
    QTest::keyClick(&editorOf(seat).field(), Qt::Key_Escape);
    EXPECT_EQ(seat.window().words().editor(), nullptr);
    EXPECT_EQ(seat.document().undoStack().count(), before);
}

TEST(Words, LeftAsTheyWereMakeNoStep)
{
    Seat seat(6, 4, 6);
    seat.paintRow(0, "k");
    const int before = seat.document().undoStack().count();
    seat.window().editWords(0);
    QTest::keyClick(&editorOf(seat).field(), Qt::Key_Return);
    EXPECT_EQ(seat.window().words().editor(), nullptr);
    EXPECT_EQ(seat.document().undoStack().count(), before);
}

TEST(Words, OfTheDesignersOwnStayTheirOwn)
{
    Seat seat(6, 4, 6);
    seat.paintRow(0, "k");
    Row own = *seat.section().rows[0];
    own.words = "Knit a row.";
    seat.document().performOrTell(setRow(seat.pattern(), seat.section().id, 0, own, "own"));
    seat.window().editWords(0);
    EXPECT_EQ(editorOf(seat).words(), QStringLiteral("Knit a row."));
    typeOver(seat, "Knit all sts.");
    EXPECT_EQ(seat.section().rows[0]->words, "Knit all sts.");
    EXPECT_EQ(seat.key(0, 1), "k");
}

TEST(Words, PastedBecomeRowsFromTheCursorOn)
{
    Seat seat(6, 4, 6);
    seat.window().canvas().setCursor(At{0, 1});
    QGuiApplication::clipboard()->setText(QStringLiteral("Row 1 (RS): k2, yo, k2tog, k2\nRow 2 (WS): purl"));
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.key(0, 3), "yo");
    EXPECT_EQ(seat.key(1, 1), "k"); // purled on WS
    EXPECT_EQ(seat.document().undoStack().count(), 1);
}

TEST(Words, CopiedHereAreStitchesHereAndWordsElsewhere)
{
    Seat seat(6, 4, 6);
    seat.paintRow(0, "yo");
    seat.window().canvas().select(Area{0, 0, 2, 3});
    seat.act(ActionId::Copy);
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(QStringLiteral("Row 1 (RS)")));
    seat.window().canvas().select(std::nullopt);
    seat.window().canvas().setCursor(At{2, 1});
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.key(2, 1), "yo");
    EXPECT_EQ(seat.key(2, 2), "yo");
    EXPECT_EQ(seat.key(2, 3), "no_st");
}

TEST(ReadRows, TypedWithAMistakeAreMendedFromTheNoteAndBecomeAShawl)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::ReadRows); },
                  [](QDialog& dialog) {
                      auto& reading = dynamic_cast<ReadRowsDialog&>(dialog);
                      EXPECT_EQ(reading.focusWidget(), &reading.field()); // ready to be typed into
                      reading.field().setPlainText(QStringLiteral(
                          "Cast on 5 sts.\nRow 1 (RS): k2, yo, k to lst 2 sts, k2.\nRow 2: purl."));
                      reading.readNow();
                      ASSERT_EQ(reading.notes().count(), 1);
                      EXPECT_TRUE(reading.notes().item(0)->text().contains(QStringLiteral("line 2")));
                      reading.notes().setCurrentRow(0);
                      Q_EMIT reading.notes().itemActivated(reading.notes().item(0));
                      EXPECT_EQ(reading.field().textCursor().blockNumber(), 1);
                      reading.field().setPlainText(QStringLiteral(
                          "Cast on 5 sts.\nRow 1 (RS): k2, yo, k to last 2 sts, k2.\nRow 2: purl."));
                      reading.readNow();
                      EXPECT_EQ(reading.notes().count(), 0);
                      Seat::take(dialog);
                  });
    ASSERT_EQ(seat.section().rows.size(), 2u);
    EXPECT_EQ(seat.document().derived().ledger().lines.back().after, 6);
    EXPECT_EQ(seat.section().frame.title, "Section 1");
    EXPECT_TRUE(seat.document().modified()); // asked about before it is lost
}

TEST(ReadRows, AreTriedOnTheNeedleBeforeTheyAreCharted)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::ReadRows); },
                  [](QDialog& dialog) {
                      auto& reading = dynamic_cast<ReadRowsDialog&>(dialog);
                      reading.field().setPlainText(QStringLiteral(
                          "Cast on 5 sts.\nRow 1 (RS): k5. (6 sts)\nRow 2: p4, k2.\nRow 3: knit."));
                      reading.readNow();
                      ASSERT_EQ(reading.notes().count(), 2); // what only follows is not told
                      const QString stated = reading.notes().item(0)->text();
                      EXPECT_TRUE(stated.startsWith(QStringLiteral("On the needle, Row 1 (line 2"))) << qPrintable(stated);
                      EXPECT_TRUE(stated.contains(QStringLiteral("says 6 stitches"))) << qPrintable(stated);
                      const QString tooFew = reading.notes().item(1)->text();
                      EXPECT_TRUE(tooFew.contains(QStringLiteral("line 3"))) << qPrintable(tooFew);
                      EXPECT_TRUE(tooFew.contains(QStringLiteral("Row 2 (line 3, column 8): needs 6 stitches"))) << qPrintable(tooFew);
                      Q_EMIT reading.notes().itemActivated(reading.notes().item(1));
                      EXPECT_EQ(reading.field().textCursor().blockNumber(), 2);
                      dialog.reject();
                  });
}

TEST(ReadRows, WithoutARowStayOpen)
{
    Seat seat;
    const Pattern before = seat.pattern();
    seat.inDialog([&] { seat.act(ActionId::ReadRows); },
                  [](QDialog& dialog) {
                      dynamic_cast<ReadRowsDialog&>(dialog).field().setPlainText(
                          QStringLiteral("Lay it flat."));
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible());
                  });
    EXPECT_EQ(seat.pattern(), before);
}

TEST(ReadRows, LeftWithEscapeAreThereTheNextTime)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::ReadRows); },
                  [](QDialog& dialog) {
                      dynamic_cast<ReadRowsDialog&>(dialog).field().setPlainText(
                          QStringLiteral("Cast on 4 sts.\nRow 1 (RS): knit."));
                      QTest::keyClick(&dialog, Qt::Key_Escape);
                  });
    seat.inDialog([&] { seat.act(ActionId::ReadRows); },
                  [](QDialog& dialog) {
                      EXPECT_TRUE(dynamic_cast<ReadRowsDialog&>(dialog).field().toPlainText().startsWith(
                          QStringLiteral("Cast on 4")));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.pattern().head.castOn.stitches, Quantity(4));
    seat.inDialog([&] { seat.act(ActionId::ReadRows); },
                  [](QDialog& dialog) {
                      EXPECT_TRUE(dynamic_cast<ReadRowsDialog&>(dialog).field().toPlainText().isEmpty());
                  });
}

TEST(ReadRows, OpenedAsATextFileAreShownFirst)
{
    Seat seat;
    const QString path = seat.path("rows.txt");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("Cast on 4 sts.\nRow 1 (RS): knit.\n");
    file.close();
    seat.window().questions().openPath = [path] { return path; };
    seat.inDialog([&] { seat.act(ActionId::Open); },
                  [](QDialog& dialog) {
                      EXPECT_TRUE(dynamic_cast<ReadRowsDialog&>(dialog).field().toPlainText().startsWith(
                          QStringLiteral("Cast on 4")));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.pattern().head.castOn.stitches, Quantity(4));
}

TEST(WordStyle, IsSeenAtOnceAndKeptInThePattern)
{
    Seat seat(6, 4, 6);
    seat.paintRow(0, "k");
    seat.inDialog([&] { seat.act(ActionId::WordStyle); },
                  [](QDialog& dialog) {
                      auto* example = dialog.findChild<QPlainTextEdit*>(QStringLiteral("example"));
                      ASSERT_NE(example, nullptr);
                      EXPECT_TRUE(example->toPlainText().startsWith(QStringLiteral("Row 1 (RS):")));
                      dialog.findChild<QComboBox*>(QStringLiteral("labels"))
                          ->setCurrentIndex(static_cast<int>(LabelForm::Short));
                      EXPECT_TRUE(example->toPlainText().startsWith(QStringLiteral("R1 (RS):")));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(styleOf(seat.pattern().head).labels, LabelForm::Short);
    EXPECT_TRUE(seat.window().words().text().startsWith(QStringLiteral("R1 (RS):")));
    EXPECT_EQ(seat.document().undoStack().undoText(), QStringLiteral("how words are written"));
}

} // namespace shawlwright::app
