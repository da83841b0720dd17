// The dialogs: what is asked becomes one edit, and what is typed changes nothing before.
#include "app/panels/new_shawl_dialog.h"
#include "app/panels/number_fields.h"
#include "app/panels/own_stitch_dialog.h"
#include "app/panels/quantity_edit.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "app/window/earlier_saves_dialog.h"
#include "app/window/questions.h"
#include "app/window/save_changes.h"
#include "core/edits/marks.h"
#include "core/edits/times.h"
#include "core/files/pattern_file.h"
#include "tests/app/window/every_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabWidget>
#include <QTest>

namespace shawlwright::app {

TEST(NewShawl, StartsFromWhatWasAsked)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::NewShawl); },
                  [](QDialog& dialog) {
                      field<QLineEdit>(dialog, "title").setText(QStringLiteral("Harbour lights"));
                      field<QSpinBox>(dialog, "castOn").setValue(9);
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.pattern().head.title, "Harbour lights");
    EXPECT_EQ(seat.pattern().head.castOn.stitches, Quantity(9));
    EXPECT_EQ(seat.pattern().head.yarns.size(), 2u);
    EXPECT_EQ(seat.section().rows.size(), 20u);
    EXPECT_FALSE(seat.document().modified());
    EXPECT_TRUE(seat.window().windowTitle().contains(QStringLiteral("Harbour lights")));
}

TEST(NewShawl, TheFieldsOfTheLeftColumnStandInLine)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::NewShawl); },
                  [](QDialog& dialog) {
                      const auto left = [&](QWidget& field) { return field.mapTo(&dialog, QPoint(0, 0)).x(); };
                      EXPECT_EQ(left(field<QLineEdit>(dialog, "title")), left(field<QSpinBox>(dialog, "castOn")));
                  });
}

TEST(NewShawl, WithoutATitleStaysOpenAndSaysWhy)
{
    Seat seat;
    const std::string title = seat.pattern().head.title;
    seat.inDialog([&] { seat.act(ActionId::NewShawl); },
                  [](QDialog& dialog) {
                      field<QLineEdit>(dialog, "title").clear();
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible());
                      EXPECT_TRUE(field<QLabel>(dialog, "fault").text().contains(QStringLiteral("no title")));
                  });
    EXPECT_EQ(seat.pattern().head.title, title);
}

TEST(StitchRepeat, ProposesANumberForEachSizeAndSaysHowTheyAreTold)
{
    Seat seat(14, 2, 6);
    PatternHead head = seat.pattern().head;
    head.sizes = {"Small", "Large"};
    head.castOn.stitches = Quantity(std::vector<int>{14, 22});
    seat.document().performOrTell(setHead(seat.pattern(), head, "sizes"));
    seat.paintRow(0, "k");
    seat.window().canvas().select(Area{0, 0, 3, 4});
    seat.settle();
    const auto hints = [](QDialog& dialog) {
        QStringList said;
        for (const QLabel* label : dialog.findChildren<QLabel*>())
            if (label->isVisible() && label->text().startsWith(QStringLiteral("Small, Large: one number for all")))
                said << label->text();
        return said.size();
    };
    seat.inDialog([&] { seat.act(ActionId::RepeatSelection); },
                  [&](QDialog& dialog) {
                      EXPECT_EQ(field<QLineEdit>(dialog, "times").text(), QStringLiteral("5, 9"));
                      EXPECT_EQ(hints(dialog), 1);
                      QStringList said;
                      for (const QLabel* label : dialog.findChildren<QLabel*>())
                          said << label->text();
                      EXPECT_TRUE(said.contains(QStringLiteral("Repeat stitches 3 to 4 of row 1"))) << qPrintable(said.join(QLatin1Char('|')));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.section().frame.boxes.front().times, Quantity(std::vector<int>{5, 9}));
    EXPECT_TRUE(seat.document().derived().ledger({0, 0}).findings.empty() ||
                seat.document().derived().ledger({0, 0}).findings.front().row != 0);
    seat.inDialog([&] { seat.act(ActionId::RepeatSelectedRows); }, [&](QDialog& dialog) { EXPECT_EQ(hints(dialog), 1); });
    seat.inDialog([&] { seat.act(ActionId::PatternSettings); },
                  [&](QDialog& dialog) {
                      dialog.findChild<QTabWidget*>()->setCurrentIndex(1);
                      EXPECT_EQ(hints(dialog), 1);
                      field<QLineEdit>(dialog, "sizes").setText(QString());
                      EXPECT_EQ(hints(dialog), 0);
                  });
}

TEST(RowSettings, AnEarlyTurnIsOneStep)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.window().canvas().setCursor(At{0, 1});
    const int steps = seat.document().undoStack().count();
    seat.inDialog(
        [&] { seat.act(ActionId::RowSettings); },
        [](QDialog& dialog) {
            field<QComboBox>(dialog, "finish").setCurrentIndex(static_cast<int>(FinishKind::TurnEarly));
            field<QComboBox>(dialog, "method").setCurrentIndex(static_cast<int>(TurnMethod::DoubleStitch));
            field<QLineEdit>(dialog, "note").setText(QStringLiteral("Mind the edge."));
            Seat::take(dialog);
        });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.section().rows[0]->finish.kind, FinishKind::TurnEarly);
    EXPECT_EQ(seat.section().rows[0]->finish.method, TurnMethod::DoubleStitch);
    EXPECT_EQ(seat.section().rows[0]->note, "Mind the edge.");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().rows[0]->finish.kind, FinishKind::Turn);
    EXPECT_TRUE(seat.section().rows[0]->note.empty());
}

TEST(RowSettings, OpenByADoubleClickOnTheNumber)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.inDialog([&] { seat.doubleClickNumber(0); },
                  [](QDialog& dialog) {
                      EXPECT_EQ(dialog.windowTitle(), QStringLiteral("Row settings"));
                      Seat::leave(dialog);
                  });
}

TEST(RowSettings, NothingChangedIsNoStep)
{
    Seat seat;
    const int steps = seat.document().undoStack().count();
    seat.inDialog([&] { seat.act(ActionId::RowSettings); }, [](QDialog& dialog) { Seat::take(dialog); });
    EXPECT_EQ(seat.document().undoStack().count(), steps);
}

TEST(Marker, IsPlacedByAClickAndRenamed)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.act(ActionId::ToolMarker);
    Canvas& canvas = seat.window().canvas();
    const QRect cell = canvas.cellRectOnViewport(0, 6);
    QTest::mouseClick(canvas.viewport(), Qt::LeftButton, {}, QPoint(cell.left() + 1, cell.center().y()));
    seat.settle();
    ASSERT_EQ(seat.section().rows[0]->moves.size(), 1u);
    EXPECT_EQ(seat.section().rows[0]->moves[0].boundary, 6);
    ASSERT_EQ(seat.pattern().head.markers.size(), 1u);
    seat.inDialog([&] { seat.act(ActionId::Markers); },
                  [](QDialog& dialog) {
                      auto* name = dialog.findChild<QLineEdit*>();
                      ASSERT_NE(name, nullptr);
                      name->setText(QStringLiteral("centre"));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.pattern().head.markers[0].name, "centre");
}

TEST(StitchRepeat, AsksUntilWhere)
{
    Seat seat;
    seat.paintRow(0, "k");
    shawlwright::Box box;
    box.firstRow = box.lastRow = seat.section().rows[0]->id;
    box.firstColumn = 3;
    box.lastColumn = 6;
    seat.document().performOrTell(addBox(seat.pattern(), seat.section().id, box));
    const BoxId id = seat.section().frame.boxes.front().id;
    seat.inDialog([&] { seat.window().openStitchRepeat(id); },
                  [](QDialog& dialog) {
                      field<QComboBox>(dialog, "until").setCurrentIndex(static_cast<int>(BoxUntil::RowEnd));
                      field<QLineEdit>(dialog, "leaving").setText(QStringLiteral("many"));
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible()); // "many" is no number
                      field<QLineEdit>(dialog, "leaving").setText(QStringLiteral("2"));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.section().frame.boxes.front().until, BoxUntil::RowEnd);
    EXPECT_EQ(seat.section().frame.boxes.front().leaving, Quantity(2));
}

TEST(StitchRepeat, DrawnWithItsToolIsOneStepAndOffersTheTimesThatFit)
{
    Seat seat;
    seat.paintRow(0, "no_st"); // 20 cast on: k2, 8 times two, k2
    const SectionId id = seat.section().id;
    const auto put = [&](int column, const char* key) {
        const At one[] = {At{0, column}};
        seat.document().performOrTell(
            paint(seat.pattern(), seat.document().catalogue(), id, one, seat.stitch(key), YarnId{}));
    };
    for (const int column : {1, 2, 19, 20})
        put(column, "k");
    put(3, "yo");
    put(4, "k2tog");
    const int before = seat.document().undoStack().count();
    seat.inDialog(
        [&] {
            Q_EMIT seat.window().canvas().repeatDrawn(Area{0, 0, 3, 4});
        },
        [](QDialog& dialog) { Seat::leave(dialog); });
    EXPECT_EQ(seat.document().undoStack().count(), before); // left: nothing was made

    seat.inDialog(
        [&] {
            Q_EMIT seat.window().canvas().repeatDrawn(Area{0, 0, 3, 4});
        },
        [](QDialog& dialog) {
            EXPECT_EQ(field<QLineEdit>(dialog, "times").text(), QStringLiteral("8"));
            Seat::take(dialog);
        });
    EXPECT_EQ(seat.document().undoStack().count(), before + 1);
    ASSERT_EQ(seat.section().frame.boxes.size(), 1u);
    EXPECT_EQ(seat.section().frame.boxes[0].times, Quantity(8));
    EXPECT_EQ(seat.document().derived().ledger().lines[0].after, 20);
}

TEST(StitchRepeat, ProposesWhatWasWantedLastAndTheMarkerAhead)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.paintRow(1, "k");
    PatternHead head = seat.pattern().head;
    head.markers = {{MarkerId{1}, "A"}, {MarkerId{2}, "B"}};
    seat.document().performOrTell(Edit{"markers", {SwapHead{head}}});
    for (const auto& [boundary, marker] : {std::pair{5, MarkerId{1}}, {15, MarkerId{2}}})
        seat.document().performOrTell(placeMarker(seat.pattern(), seat.section().id, 0, boundary, marker));
    const auto draw = [&](int row, int first, int last, const auto& answer) {
        seat.inDialog([&] { Q_EMIT seat.window().canvas().repeatDrawn(Area{row, row, first, last}); }, answer);
    };
    draw(1, 18, 19, [](QDialog& dialog) { // Row 2 is worked from the left: B is the next
        EXPECT_EQ(field<QComboBox>(dialog, "until").currentIndex(), static_cast<int>(BoxUntil::Times));
        EXPECT_EQ(field<QComboBox>(dialog, "marker").currentText(), QStringLiteral("B"));
        field<QComboBox>(dialog, "until").setCurrentIndex(static_cast<int>(BoxUntil::Marker));
        field<QLineEdit>(dialog, "leaving").setText(QStringLiteral("1"));
        Seat::take(dialog);
    });
    draw(1, 8, 9, [](QDialog& dialog) {
        EXPECT_EQ(field<QComboBox>(dialog, "until").currentIndex(), static_cast<int>(BoxUntil::Marker));
        EXPECT_EQ(field<QComboBox>(dialog, "marker").currentText(), QStringLiteral("A"));
        EXPECT_EQ(field<QLineEdit>(dialog, "leaving").text(), QStringLiteral("1"));
        Seat::take(dialog);
    });
    draw(1, 2, 3, [](QDialog& dialog) { // no marker is ahead
        EXPECT_EQ(field<QComboBox>(dialog, "until").currentIndex(), static_cast<int>(BoxUntil::Times));
        Seat::leave(dialog);
    });
    EXPECT_EQ(seat.section().frame.boxes.size(), 2u);
}

TEST(StitchRepeat, OneThatCrossesAnotherIsToldBeforeAnythingIsAsked)
{
    Seat seat;
    shawlwright::Box box;
    box.firstRow = box.lastRow = seat.section().rows[0]->id;
    box.firstColumn = 3;
    box.lastColumn = 6;
    seat.document().performOrTell(addBox(seat.pattern(), seat.section().id, box));
    const int before = seat.document().undoStack().count();
    seat.window().makeStitchRepeat(Area{0, 0, 5, 9}); // a dialog would never return here
    EXPECT_EQ(seat.document().undoStack().count(), before);
}

TEST(RowRepeat, OfTheSelectedRows)
{
    Seat seat;
    seat.window().canvas().select(Area{2, 3, 1, 4});
    seat.inDialog([&] { seat.act(ActionId::RepeatSelectedRows); },
                  [](QDialog& dialog) {
                      field<QLineEdit>(dialog, "times").setText(QStringLiteral("7"));
                      Seat::take(dialog);
                  });
    ASSERT_EQ(seat.section().frame.brackets.size(), 1u);
    EXPECT_EQ(seat.section().frame.brackets[0].times, Quantity(7));
    EXPECT_EQ(rowIndex(seat.section(), seat.section().frame.brackets[0].firstRow), 2);
}

TEST(PatternSettings, VersionsSizesAndCastOnTogether)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::PatternSettings); },
                  [](QDialog& dialog) {
                      field<QLineEdit>(dialog, "sizes").setText(QStringLiteral("Small, Large"));
                      field<QLineEdit>(dialog, "versions").setText(QStringLiteral("Garter, Brioche"));
                      field<QLineEdit>(dialog, "castOn").setText(QStringLiteral("20, 28"));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.pattern().head.sizes.size(), 2u);
    EXPECT_EQ(seat.pattern().head.castOn.stitches, Quantity(std::vector<int>{20, 28}));
    EXPECT_EQ(seat.window().sizeChooser()->count(), 2);
    EXPECT_TRUE(seat.window().versionChooser()->isVisibleTo(&seat.window()));
}

TEST(PatternSettings, StayOpenWithTheReasonWhereTheyCantBe)
{
    Seat seat;
    PatternHead head = seat.pattern().head;
    head.versions = {"garter", "lace"};
    ASSERT_TRUE(seat.document().performOrTell(setHead(seat.pattern(), head, "versions")));
    SectionFrame frame = seat.section().frame;
    frame.versions = {"lace"};
    ASSERT_TRUE(seat.document().performOrTell(setFrame(seat.pattern(), seat.section().id, frame, "version of a section")));
    seat.inDialog([&] { seat.act(ActionId::PatternSettings); },
                  [](QDialog& dialog) {
                      field<QLineEdit>(dialog, "sizes").setText(QStringLiteral("Small, Large"));
                      field<QLineEdit>(dialog, "versions").setText(QStringLiteral("garter"));
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible());
                      const auto& fault = field<QLabel>(dialog, "fault");
                      EXPECT_TRUE(fault.isVisible());
                      EXPECT_TRUE(fault.text().contains(QStringLiteral("belongs to version 'lace'"))) << qPrintable(fault.text());
                      field<QLineEdit>(dialog, "versions").setText(QStringLiteral("garter, lace"));
                      Seat::take(dialog);
                      EXPECT_FALSE(dialog.isVisible());
                  });
    EXPECT_EQ(seat.pattern().head.sizes.size(), 2u) << "what was typed beside it is kept";
}

TEST(NumberFields, SayOneStitchAndMoreStitches)
{
    QWidget parent;
    QSpinBox* box = stitchCount(1, 0, 9, &parent);
    EXPECT_EQ(box->text(), QStringLiteral("1 stitch"));
    box->setValue(2);
    EXPECT_EQ(box->text(), QStringLiteral("2 stitches"));
    setUnit(*box, {}, {});
    box->setValue(1);
    EXPECT_EQ(box->text(), QStringLiteral("1"));
}

TEST(OwnStitch, IsMadeAndChosen)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                  [](QDialog& dialog) {
                      field<QLineEdit>(dialog, "name").setText(QStringLiteral("gather five into three"));
                      field<QLineEdit>(dialog, "onRS").setText(QStringLiteral("k2tog"));
                      field<QSpinBox>(dialog, "takesUp").setValue(5);
                      field<QSpinBox>(dialog, "leaves").setValue(3);
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible()); // that abbreviation is taken
                      field<QLineEdit>(dialog, "onRS").setText(QStringLiteral("gather 5-3"));
                      Seat::take(dialog);
                  });
    ASSERT_EQ(seat.pattern().head.stitches.size(), 1u);
    const Stitch& made = seat.pattern().head.stitches[0];
    EXPECT_EQ(made.takesUp, 5);
    EXPECT_EQ(made.leaves, 3);
    EXPECT_EQ(made.key, "gather_5_3");
    EXPECT_EQ(seat.window().canvas().brush(), made.id);
    EXPECT_TRUE(seat.window().action(ActionId::ChangeOwnStitch)->isEnabled());
    EXPECT_FALSE(seat.window().stitches().grid()->tileOf(made.id).isEmpty());
}

TEST(Fields, TypingLeavesThePatternAlone)
{
    // Fault 6 of editors: letters and Ctrl+Z in a field are the field's.
    Seat seat;
    seat.paintRow(0, "k");
    const Pattern before = seat.pattern();
    const int steps = seat.document().undoStack().index();
    QLineEdit* find = seat.window().stitches().findField();
    seat.act(ActionId::FindStitch);
    QTest::keyClicks(find, QStringLiteral("k2tog p 4"));
    QTest::keyClick(find, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(seat.pattern() == before);
    EXPECT_EQ(seat.document().undoStack().index(), steps);
    EXPECT_EQ(seat.window().canvas().tool(), CanvasTool::Paint);

    for (const ActionId id :
         {ActionId::RowSettings, ActionId::PatternSettings, ActionId::SectionSettings, ActionId::Yarns}) {
        seat.inDialog([&] { seat.act(id); },
                      [&](QDialog& dialog) {
                          for (QLineEdit* edit : dialog.findChildren<QLineEdit*>())
                              if (edit->isVisible() && edit->isEnabled()) {
                                  QTest::keyClicks(edit, QStringLiteral("k2tog"));
                                  QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);
                                  QTest::keyClicks(edit, QStringLiteral("p"));
                              }
                          EXPECT_TRUE(seat.pattern() == before);
                          Seat::leave(dialog);
                      });
        EXPECT_TRUE(seat.pattern() == before);
        EXPECT_EQ(seat.document().undoStack().index(), steps);
    }
}

TEST(QuantityEdit, OneNumberOrOnePerSize)
{
    QuantityEdit edit({QStringLiteral("S"), QStringLiteral("M"), QStringLiteral("L")}, 0, 1000);
    const std::pair<const char*, std::optional<Quantity>> cases[] = {
        {"45", Quantity(45)},
        {"45, 51, 57", Quantity(std::vector<int>{45, 51, 57})},
        {"45 (51, 57)", Quantity(std::vector<int>{45, 51, 57})}, // as patterns print it
        {"45,45,45", Quantity(45)},
        {"45, 51", std::nullopt},
        {"45, 51, 57, 60", std::nullopt},
        {"", std::nullopt},
        {"4.5", std::nullopt},
        {"1001", std::nullopt},
        {"-1", std::nullopt},
    };
    for (const auto& [text, wanted] : cases) {
        edit.setText(QString::fromUtf8(text));
        EXPECT_EQ(edit.quantity(), wanted) << text;
        EXPECT_EQ(edit.whatWrong(QStringLiteral("Cast on")).has_value(), !wanted.has_value()) << text;
    }
}

TEST(QuantityEdit, GoesUpAndDownByArrowsAndKeys)
{
    QuantityEdit edit({QStringLiteral("S"), QStringLiteral("M")}, 0, 10);
    edit.setQuantity(Quantity(9));
    edit.resize(120, 30);
    edit.show();
    QTest::keyClick(&edit, Qt::Key_Up);
    EXPECT_EQ(edit.text(), QStringLiteral("10"));
    QTest::keyClick(&edit, Qt::Key_Up);
    EXPECT_EQ(edit.quantity(), Quantity(10)); // the most
    auto* less = edit.findChild<QAbstractButton*>(QStringLiteral("less"));
    ASSERT_NE(less, nullptr);
    EXPECT_TRUE(edit.rect().contains(less->geometry()));
    QTest::mouseClick(less, Qt::LeftButton);
    EXPECT_EQ(edit.quantity(), Quantity(9));
    edit.setText(QStringLiteral("4, 7"));
    QTest::keyClick(&edit, Qt::Key_Down);
    EXPECT_EQ(edit.text(), QStringLiteral("3, 6"));
    edit.setText(QStringLiteral("many"));
    QTest::keyClick(&edit, Qt::Key_Up);
    EXPECT_EQ(edit.text(), QStringLiteral("many"));
}

TEST(Stripes, ASecondOneIsSeenAtOnceAndIsAskedAbout)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::StripedRows); },
                  [](QDialog& dialog) {
                      auto& which = field<QComboBox>(dialog, "which");
                      which.setCurrentIndex(which.count() - 1); // all rows of the section
                      ASSERT_EQ(dialog.findChildren<QSpinBox*>(QStringLiteral("stripeRows")).size(), 1);
                      field<QPushButton>(dialog, "addStripe").click();
                      const auto rows = dialog.findChildren<QSpinBox*>(QStringLiteral("stripeRows"));
                      ASSERT_EQ(rows.size(), 2);
                      for (const QSpinBox* one : rows)
                          EXPECT_EQ(one->value(), 2);
                      EXPECT_EQ(dialog.focusWidget(), rows.last());
                      EXPECT_TRUE(rows.last()->findChild<QLineEdit*>()->hasSelectedText());
                      rows.last()->setValue(4);
                      field<QPushButton>(dialog, "addStripe").click(); // as many as the last, once there are several
                      EXPECT_EQ(dialog.findChildren<QSpinBox*>(QStringLiteral("stripeRows")).last()->value(), 4);
                  });
}

TEST(ShortRows, ASecondYarnIsAnotherThanTheRows)
{
    Seat seat;
    prepareForDialogs(seat);
    for (const ActionId id : {ActionId::ShortRowWedge, ActionId::ShortRowArch})
        seat.inDialog([&] { seat.act(id); },
                      [&](QDialog& dialog) {
                          auto& yarn = field<QComboBox>(dialog, "yarn");
                          auto& other = field<QComboBox>(dialog, "otherYarn");
                          for (int i = 0; i < yarn.count(); ++i) {
                              yarn.setCurrentIndex(i);
                              ASSERT_EQ(other.count(), yarn.count()); // "none" stands in place of its own
                              for (int j = 1; j < other.count(); ++j)
                                  EXPECT_NE(other.itemData(j).toInt(),
                                            seat.pattern().head.yarns[static_cast<std::size_t>(i)].id.value);
                          }
                      });
}

TEST(SeveralTimes, SaysWhatIsReplacedOnlyWhereSomethingIs)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.window().canvas().select(Area{0, 0, 1, 2});
    seat.settle();
    const auto said = [](QDialog& dialog) {
        QString words;
        for (const QLabel* label : dialog.findChildren<QLabel*>())
            words += label->text() + QLatin1Char('\n');
        return words;
    };
    seat.inDialog([&] { seat.act(ActionId::PutDownTimes); },
                  [&](QDialog& dialog) {
                      auto& along = field<QComboBox>(dialog, "along");
                      along.setCurrentIndex(static_cast<int>(Along::UpNewRows));
                      EXPECT_FALSE(said(dialog).contains(QStringLiteral("The copies replace"))) << qPrintable(said(dialog));
                      EXPECT_TRUE(said(dialog).contains(QStringLiteral("1 new row above"))) << qPrintable(said(dialog));
                      along.setCurrentIndex(static_cast<int>(Along::Up));
                      EXPECT_TRUE(said(dialog).contains(QStringLiteral("The copies replace"))) << qPrintable(said(dialog));
                      EXPECT_FALSE(said(dialog).contains(QStringLiteral("1 rows"))) << qPrintable(said(dialog));
                  });
}

TEST(EarlierSavesDialog, ShowsTheOpenShawlAlsoWithoutASave)
{
    Seat seat;
    const QString open = seat.path("open.shawl");
    const EarlierSave save{seat.path("copy.shawl"), QDateTime::currentDateTimeUtc()};
    EarlierSavesDialog dialog({ShawlSaves{seat.path("other.shawl"), {save}}}, open, nullptr);
    EXPECT_EQ(field<QComboBox>(dialog, "shawl").currentText(), QStringLiteral("open"));
    EXPECT_FALSE(dialog.findChild<QPushButton*>()->isEnabled()); // nothing to open
    field<QComboBox>(dialog, "shawl").setCurrentIndex(1);
    EXPECT_EQ(dialog.shawl(), seat.path("other.shawl"));
    EXPECT_TRUE(dialog.findChild<QPushButton*>()->isEnabled());

    EarlierSavesDialog known({ShawlSaves{seat.path("other.shawl"), {save}}, ShawlSaves{open, {save}}}, open, nullptr);
    EXPECT_EQ(field<QComboBox>(known, "shawl").count(), 2);
    EXPECT_EQ(known.shawl(), open);
}

TEST(EarlierSavesDialog, TellsSavesApartByWhatChanged)
{
    Seat seat(10, 4, 10);
    EarlierSaves kept(seat.path("kept"));
    const QString open = seat.path("open.shawl");
    QDateTime when = QDateTime::currentDateTimeUtc();
    const auto save = [&] {
        when = when.addSecs(60);
        const auto bytes = writePattern(seat.pattern(), seat.document().catalogue());
        EXPECT_EQ(kept.keep(open, QByteArray::fromStdString(bytes), when), std::nullopt);
    };
    seat.paintRow(0, "k");
    save();
    seat.paintRow(1, "p");
    seat.paintRow(2, "k");
    save();
    PatternHead head = seat.pattern().head;
    head.designer = "A. Knitter";
    seat.document().performOrTell(setHead(seat.pattern(), head, "pattern settings"));
    save();
    EarlierSavesDialog dialog(kept.all(), open, nullptr);
    auto& list = field<QListWidget>(dialog, "saves");
    ASSERT_EQ(list.count(), 3);
    EXPECT_TRUE(list.item(0)->text().endsWith(QStringLiteral("settings of the pattern changed"))) << qPrintable(list.item(0)->text());
    EXPECT_TRUE(list.item(1)->text().endsWith(QStringLiteral("1 section, 4 rows, 30 stitches charted \u00b7 2 rows changed")))
        << qPrintable(list.item(1)->text());
    EXPECT_TRUE(list.item(2)->text().endsWith(QStringLiteral("10 stitches charted"))) << qPrintable(list.item(2)->text());
    dialog.show();
    QApplication::processEvents();
    EXPECT_LE(list.geometry().bottom(), list.parentWidget()->height());
    const auto* body = dialog.findChild<QScrollArea*>(QStringLiteral("formBody"));
    EXPECT_LE(list.parentWidget()->height(), body->viewport()->height());
}

TEST(EarlierSaves, SectionsThatCameWentOrMovedAreSaid)
{
    Seat seat(10, 4, 10);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    const Pattern one = seat.pattern();
    Pattern two = one;
    two.sections.push_back(one.sections[0]); // of the same title
    two.sections[1].id = SectionId{99};
    EXPECT_EQ(changesInWords(one, one), QStringLiteral("nothing changed"));
    EXPECT_EQ(changesInWords(one, two), QStringLiteral("1 section came"));
    EXPECT_EQ(changesInWords(two, one), QStringLiteral("1 section went"));
    Pattern renamed = two;
    renamed.sections[1].frame.title = "Edge";
    EXPECT_EQ(changesInWords(two, renamed), QStringLiteral("repeats or settings of 1 section changed"));
    Pattern turned = renamed;
    std::swap(turned.sections[0], turned.sections[1]);
    EXPECT_EQ(changesInWords(renamed, turned), QStringLiteral("sections in another order"));
}

TEST(RowNote, IsAskedInAFieldForASentence)
{
    Seat seat;
    int width = 0;
    seat.inDialog([&] { askInDialogs(&seat.window()).words(QStringLiteral("Note of row 1"), QString()); },
                  [&](QDialog& dialog) { width = dialog.findChild<QLineEdit*>()->width(); });
    EXPECT_GE(width, QFontMetrics(QApplication::font()).horizontalAdvance(QStringLiteral("Place a marker after the third stitch of the border")));
}

TEST(LengthField, TakesCommaAndPoint)
{
    for (const QLocale::Language language : {QLocale::English, QLocale::German}) {
        std::unique_ptr<QDoubleSpinBox> box(lengthField(4, 0.5, 50, QStringLiteral(" mm"), nullptr));
        box->setLocale(QLocale(language));
        for (const char* typed : {"2,25", "2.25"}) {
            auto* line = box->findChild<QLineEdit*>();
            line->selectAll();
            QTest::keyClicks(line, QString::fromUtf8(typed));
            box->interpretText();
            EXPECT_DOUBLE_EQ(box->value(), 2.25) << typed;
            box->setValue(4);
        }
    }
}

} // namespace shawlwright::app
