// What fills or makes whole rows at once: each is one step, and can be taken back.
#include "core/derived/increase_plan.h"
#include "core/derived/plain_rows.h"
#include "core/derived/short_row_wedge.h"
#include "core/edits/marks.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

namespace shawlwright::app {

TEST(PlainRows, FillTheSelectedRowsInOneStep)
{
    Seat seat(20, 8, 20);
    seat.window().canvas().select(Area{0, 3, 1, 4});
    const int steps = seat.document().undoStack().count();
    seat.inDialog([&] { seat.act(ActionId::PlainRows); },
                  [](QDialog& dialog) {
                      EXPECT_EQ(field<QComboBox>(dialog, "which").itemText(0), QStringLiteral("rows 1 to 4"));
                      field<QComboBox>(dialog, "how").setCurrentIndex(static_cast<int>(PlainStitch::Knit));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.key(0, 20), "k");
    EXPECT_EQ(seat.key(1, 1), "p"); // knit on the wrong side
    EXPECT_EQ(seat.key(3, 20), "p");
    EXPECT_EQ(seat.key(4, 1), "no_st");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.key(0, 1), "no_st");
    EXPECT_EQ(seat.key(3, 20), "no_st");
}

TEST(PlainRows, FillAllEmptyWrongSideRows)
{
    Seat seat(20, 4, 20);
    seat.paintRow(0, "k");
    seat.paintRow(2, "p");
    seat.inDialog([&] { seat.act(ActionId::PlainRows); },
                  [](QDialog& dialog) {
                      field<QComboBox>(dialog, "which").setCurrentIndex(1);
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.key(1, 5), "k");
    EXPECT_EQ(seat.key(3, 5), "p");
    EXPECT_TRUE(seat.document().derived().findings().empty());
    seat.inDialog([&] { seat.act(ActionId::PlainRows); },
                  [](QDialog& dialog) { // none is left, so none is offered
                      EXPECT_EQ(field<QComboBox>(dialog, "which").count(), 1);
                  });
}

TEST(Stripes, LieOverTheWholeSectionInOneStep)
{
    Seat seat(20, 8, 20);
    for (int row = 0; row < 8; ++row)
        seat.paintRow(row, row % 2 == 0 ? "k" : "p");
    const int steps = seat.document().undoStack().count();
    seat.inDialog([&] { seat.act(ActionId::StripedRows); },
                  [](QDialog& dialog) {
                      auto& which = field<QComboBox>(dialog, "which");
                      EXPECT_EQ(which.currentText(), QStringLiteral("row 1")); // at the cursor
                      which.setCurrentIndex(which.count() - 1);
                      EXPECT_EQ(field<QSpinBox>(dialog, "stripeRows").value(), 8); // as it is now
                      field<QSpinBox>(dialog, "stripeRows").setValue(2);
                      field<QPushButton>(dialog, "addStripe").click();
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    std::string yarns;
    for (const RowRef& row : seat.section().rows)
        yarns += (row->start.joins ? "+" : "") + yarnOf(seat.pattern().head, row->yarn)->code + " ";
    EXPECT_EQ(yarns, "MC MC +CC CC MC MC CC CC ");
    EXPECT_TRUE(seat.document().derived().findings().empty());
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().rows[2]->yarn, seat.section().rows[0]->yarn);
    EXPECT_FALSE(seat.section().rows[2]->start.joins);
}

TEST(Stripes, OfTheSelectedRowsLeaveTheOthers)
{
    Seat seat(20, 6, 20);
    for (int row = 0; row < 6; ++row)
        seat.paintRow(row, "k");
    seat.window().canvas().select(Area{2, 3, 1, 20});
    seat.inDialog([&] { seat.act(ActionId::StripedRows); },
                  [](QDialog& dialog) {
                      EXPECT_EQ(field<QComboBox>(dialog, "which").itemText(0), QStringLiteral("rows 3 to 4"));
                      field<QComboBox>(dialog, "stripeYarn").setCurrentIndex(1);
                      Seat::take(dialog);
                  });
    std::string yarns;
    for (const RowRef& row : seat.section().rows)
        yarns += yarnOf(seat.pattern().head, row->yarn)->code + " ";
    EXPECT_EQ(yarns, "MC MC CC CC MC MC ");
}

TEST(Stripes, LeaveNoGapWhereOneIsRemoved)
{
    Seat seat(20, 6, 20);
    seat.inDialog([&] { seat.act(ActionId::StripedRows); },
                  [](QDialog& dialog) {
                      const int height = dialog.height();
                      for (int i = 0; i < 3; ++i)
                          field<QPushButton>(dialog, "addStripe").click();
                      EXPECT_GT(dialog.height(), height);
                      for (int i = 0; i < 3; ++i)
                          for (QPushButton* button : dialog.findChildren<QPushButton*>())
                              if (button->text() == QStringLiteral("Remove") && button->isVisible()) {
                                  button->click();
                                  break;
                              }
                      EXPECT_LE(dialog.height(), height);
                  });
}

TEST(Wedge, IsToldBeforeItIsMadeAndIsOneStep)
{
    Seat seat(40, 4, 40);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    seat.window().canvas().setCursor(At{1, 5});
    const int steps = seat.document().undoStack().count();
    seat.inDialog(
        [&] { seat.act(ActionId::ShortRowWedge); },
        [](QDialog& dialog) {
            field<QComboBox>(dialog, "growing").setCurrentIndex(1);
            field<QComboBox>(dialog, "method").setCurrentIndex(static_cast<int>(TurnMethod::DoubleStitch));
            field<QSpinBox>(dialog, "step").setValue(3);
            field<QSpinBox>(dialog, "turns").setValue(20);
            const QString tooMany = field<QLabel>(dialog, "preview").text();
            EXPECT_TRUE(tooMany.contains(QStringLiteral("would"))) << qPrintable(tooMany);
            Seat::take(dialog);
            EXPECT_TRUE(dialog.isVisible()); // it says why, once, and can't be made
            EXPECT_TRUE(field<QLabel>(dialog, "preview").property("wrong").toBool());
            EXPECT_TRUE(field<QLabel>(dialog, "fault").isHidden());
            EXPECT_FALSE(dialog.findChild<QDialogButtonBox*>()->buttons().front()->isEnabled());
            field<QSpinBox>(dialog, "turns").setValue(10);
            const QString words = field<QLabel>(dialog, "preview").text();
            // 40 - 10 * 3 and the double stitch; a closing row over all
            EXPECT_EQ(words, QStringLiteral("Rows 3 to 23: 10 turns, the last short row works 11 and 29 "
                                            "rest. 2 empty rows are filled."));
            Seat::take(dialog);
        });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.section().rows.size(), 23u);
    EXPECT_EQ(seat.key(3, 38), "ds"); // 40 - 3 and one, worked first on the way back
    EXPECT_TRUE(seat.document().derived().findings().empty());
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().rows.size(), 4u);
    EXPECT_EQ(seat.key(2, 1), "no_st");
}

TEST(Wedge, AboutAMarkerSaysThatItsTurnsAreOnEachSide)
{
    Seat seat(40, 4, 40);
    seat.paintRow(0, "k");
    seat.document().performOrTell(placeNewMarker(seat.pattern(), seat.section().id, 0, 20));
    seat.paintRow(1, "p");
    seat.window().canvas().setCursor(At{1, 5});
    seat.inDialog(
        [&] { seat.act(ActionId::ShortRowWedge); },
        [](QDialog& dialog) {
            auto& until = field<QComboBox>(dialog, "until");
            EXPECT_EQ(until.currentText(), QStringLiteral("as many turns as"));
            auto& closing = field<QCheckBox>(dialog, "closing");
            closing.setChecked(false);
            field<QComboBox>(dialog, "at").setCurrentIndex(2);
            EXPECT_EQ(until.currentText(), QStringLiteral("as many turns on each side as"));
            EXPECT_FALSE(field<QComboBox>(dialog, "otherYarn").toolTip().isEmpty()); // why it can't be chosen
            EXPECT_FALSE(closing.isEnabled());
            EXPECT_TRUE(closing.isChecked()); // as it is made
            EXPECT_FALSE(closing.toolTip().isEmpty());
            field<QSpinBox>(dialog, "turns").setValue(3);
            const QString words = field<QLabel>(dialog, "preview").text();
            EXPECT_TRUE(words.contains(QStringLiteral("6 turns, 3 on each side"))) << qPrintable(words);
            field<QSpinBox>(dialog, "turns").setValue(30);
            const QString tooMany = field<QLabel>(dialog, "preview").text();
            EXPECT_TRUE(tooMany.contains(QStringLiteral("30 turns on each side"))) << qPrintable(tooMany);
            EXPECT_TRUE(tooMany.endsWith(QLatin1Char('.'))) << qPrintable(tooMany);
            field<QComboBox>(dialog, "at").setCurrentIndex(0);
            EXPECT_TRUE(closing.isEnabled());
            EXPECT_FALSE(closing.isChecked());
            // What the method settles is shown as it will be, what was chosen is remembered.
            auto& slip = field<QCheckBox>(dialog, "slip");
            slip.setChecked(true);
            auto& method = field<QComboBox>(dialog, "method");
            method.setCurrentIndex(static_cast<int>(TurnMethod::DoubleStitch));
            EXPECT_FALSE(slip.isEnabled());
            EXPECT_FALSE(slip.isChecked());
            EXPECT_FALSE(slip.toolTip().isEmpty());
            method.setCurrentIndex(static_cast<int>(TurnMethod::PinnedYarn));
            EXPECT_FALSE(slip.isEnabled());
            EXPECT_TRUE(slip.isChecked());
            method.setCurrentIndex(static_cast<int>(TurnMethod::WrapAndTurn));
            EXPECT_TRUE(slip.isEnabled());
            EXPECT_TRUE(slip.isChecked());
        });
}

TEST(Wedge, BeginsBeforeAPaintedRowWhereThatIsAsked)
{
    Seat seat(20, 2, 20);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    seat.window().canvas().setCursor(At{0, 1});
    const RowId first = seat.section().rows[0]->id;
    seat.inDialog([&] { seat.act(ActionId::ShortRowWedge); },
                  [](QDialog& dialog) {
                      field<QComboBox>(dialog, "place").setCurrentIndex(1);
                      field<QComboBox>(dialog, "until").setCurrentIndex(1);
                      field<QSpinBox>(dialog, "left").setValue(8);
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.section().rows.size(), 12u); // 4 pairs of rows leave 8, closed there and back
    EXPECT_EQ(seat.section().rows[10]->id, first);
    EXPECT_TRUE(seat.document().derived().findings().empty());
}

TEST(Arch, IsToldBeforeItIsMadeAndIsOneStep)
{
    Seat seat(80, 4, 80);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    seat.window().canvas().setCursor(At{1, 20});
    const int steps = seat.document().undoStack().count();
    seat.inDialog(
        [&] { seat.act(ActionId::ShortRowArch); },
        [](QDialog& dialog) {
            auto& places = field<QListWidget>(dialog, "places");
            EXPECT_EQ(places.item(0)->text(), QStringLiteral("the middle of the 80 stitches"));
            EXPECT_EQ(places.item(1)->text(), QStringLiteral("stitch 20, at the cursor"));
            field<QSpinBox>(dialog, "width").setValue(10);
            field<QSpinBox>(dialog, "step").setValue(4);
            field<QSpinBox>(dialog, "rows").setValue(40);
            const QString tooMany = field<QLabel>(dialog, "preview").text();
            EXPECT_TRUE(tooMany.contains(QStringLiteral("would do"))) << qPrintable(tooMany);
            Seat::take(dialog);
            EXPECT_TRUE(dialog.isVisible());
            field<QSpinBox>(dialog, "rows").setValue(6);
            // 35 and 10 stitches of 80, four more in each row: 10, 14, 18, 22, 26
            EXPECT_EQ(field<QLabel>(dialog, "preview").text(),
                      QStringLiteral("Rows 3 to 10: an arch of 6 short rows, each with a turn. Stitches from turn to "
                                     "turn: 10, 14, 18, 22, 26. After the last of them 27 to the right and 27 to the "
                                     "left rest. 2 empty rows are filled."));
            places.item(0)->setCheckState(Qt::Unchecked);
            field<QLineEdit>(dialog, "others").setText(QStringLiteral("20, 60"));
            EXPECT_TRUE(field<QLabel>(dialog, "preview").text().contains(QStringLiteral("2 arches of 6 short rows, "
                                                                                        "12 turns in all")));
            field<QLineEdit>(dialog, "others").setText(QStringLiteral("20, x"));
            EXPECT_TRUE(field<QLabel>(dialog, "preview").text().startsWith(QStringLiteral("\"x\" is no stitch number. ")));
            field<QLineEdit>(dialog, "others").setText(QStringLiteral("20 60"));
            Seat::take(dialog);
        });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.section().rows.size(), 16u);
    EXPECT_TRUE(seat.document().derived().findings().empty());
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("2 arches")));
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().rows.size(), 4u);
}

TEST(Increases, AreToldBeforeTheyAreMadeAndAreOneStep)
{
    Seat seat(9, 2, 9);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    seat.window().canvas().setCursor(At{1, 5});
    const int steps = seat.document().undoStack().count();
    seat.inDialog(
        [&] { seat.act(ActionId::IncreaseRows); },
        [](QDialog& dialog) {
            field<QComboBox>(dialog, "until").setCurrentIndex(1);
            field<QSpinBox>(dialog, "wanted").setValue(30);
            const QString never = field<QLabel>(dialog, "preview").text();
            EXPECT_TRUE(never.contains(QStringLiteral("29 after 5 rows with increases, 33 after 6"))) << qPrintable(never);
            Seat::take(dialog);
            EXPECT_TRUE(dialog.isVisible());
            field<QSpinBox>(dialog, "wanted").setValue(29);
            EXPECT_EQ(field<QLabel>(dialog, "preview").text(),
                      QStringLiteral("Rows 3 to 12: 9 stitches become 29 in 5 rows with increases. After row 3: 13, "
                                     "row 5: 17, row 7: 21, row 9: 25, row 11: 29. 210 stitches are worked in all."));
            Seat::take(dialog);
        });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.section().rows.size(), 12u);
    EXPECT_EQ(seat.section().frame.columns, 29);
    EXPECT_TRUE(seat.document().derived().findings().empty());
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.section().rows.size(), 2u);
    EXPECT_EQ(seat.section().frame.columns, 9);
}

TEST(Increases, EvenlyOverARow)
{
    Seat seat(20, 3, 20);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    seat.window().canvas().setCursor(At{2, 5});
    seat.inDialog([&] { seat.act(ActionId::IncreaseRows); },
                  [](QDialog& dialog) {
                      field<QComboBox>(dialog, "kind").setCurrentIndex(1);
                      field<QSpinBox>(dialog, "spread").setValue(5);
                      field<QComboBox>(dialog, "increase").setCurrentIndex(static_cast<int>(Increase::MadeStitch));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.document().derived().ledger().lines.back().after, 25);
    EXPECT_EQ(seat.section().rows.size(), 3u); // the empty row is filled
}

TEST(ReplaceStitch, InTheSelectionSaysHowMany)
{
    Seat seat(20, 4, 20);
    seat.paintRow(0, "k");
    seat.paintRow(1, "k");
    seat.window().canvas().select(Area{0, 1, 3, 5});
    seat.window().canvas().setBrush(seat.stitch("p"));
    const int steps = seat.document().undoStack().count();
    seat.inDialog([&] { seat.act(ActionId::ReplaceStitch); },
                  [](QDialog& dialog) {
                      EXPECT_EQ(field<QComboBox>(dialog, "from").count(), 1);
                      EXPECT_TRUE(
                          field<QComboBox>(dialog, "to").currentText().startsWith(QStringLiteral("p ")));
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.document().undoStack().count(), steps + 1);
    EXPECT_EQ(seat.key(0, 3), "p");
    EXPECT_EQ(seat.key(1, 5), "p");
    EXPECT_EQ(seat.key(0, 2), "k");
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("6 stitches are replaced")));
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.key(0, 3), "k");
}

TEST(ReplaceStitch, ChoosesNoOtherByItselfAndSaysWhereCountsChange)
{
    Seat seat(20, 4, 20);
    seat.paintRow(0, "k");
    seat.window().canvas().setBrush(seat.stitch("k")); // can't take its own place
    seat.inDialog([&] { seat.act(ActionId::ReplaceStitch); },
                  [&](QDialog& dialog) {
                      auto& to = field<QComboBox>(dialog, "to");
                      EXPECT_EQ(to.currentIndex(), -1);
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible());
                      to.setCurrentIndex(to.findData(static_cast<uint>(seat.stitch("k2tog").value)));
                      const auto labels = dialog.findChildren<QLabel*>();
                      EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
                          return label->isVisible() &&
                                 label->text().contains(QStringLiteral("k2tog takes up 2"));
                      }));
                  });
    EXPECT_EQ(seat.key(0, 1), "k");
}

TEST(ReplaceStitch, WithNothingPaintedStaysOpenAndSaysWhy)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::ReplaceStitch); },
                  [](QDialog& dialog) {
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible());
                      EXPECT_TRUE(
                          field<QLabel>(dialog, "fault").text().contains(QStringLiteral("no stitches")));
                  });
}

} // namespace shawlwright::app
