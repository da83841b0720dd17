// The symbol of a stitch of one's own, drawn by hand: by mouse and by keys, taken back, kept in the pattern.
#include "app/panels/stitches_panel.h"
#include "app/panels/stroke_field.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

namespace shawlwright::app {

namespace {

void drag(StrokeField& field, chart::Point from, chart::Point to)
{
    const QPoint begin = field.placeOf(from), end = field.placeOf(to);
    QTest::mousePress(&field, Qt::LeftButton, {}, begin);
    QTest::mouseMove(&field, (begin + end) / 2);
    QTest::mouseMove(&field, end);
    QTest::mouseRelease(&field, Qt::LeftButton, {}, end);
}

StrokeField& fieldOf(QDialog& dialog)
{
    field<QComboBox>(dialog, "symbol").setCurrentIndex(1);
    QApplication::processEvents();
    auto& strokes = field<StrokeField>(dialog, "strokes");
    strokes.setFocus();
    return strokes;
}

void named(QDialog& dialog, const char* abbreviation, int takesUp = 1, int leaves = 1)
{
    field<QLineEdit>(dialog, "name").setText(QStringLiteral("a stitch"));
    field<QLineEdit>(dialog, "onRS").setText(QString::fromUtf8(abbreviation));
    field<QSpinBox>(dialog, "takesUp").setValue(takesUp);
    field<QSpinBox>(dialog, "leaves").setValue(leaves);
}

void press(QWidget& widget, std::initializer_list<Qt::Key> keys)
{
    for (const Qt::Key key : keys)
        QTest::keyClick(&widget, key);
}

std::string drawn(const StrokeField& field)
{
    return chart::writeStrokes(field.strokes());
}

} // namespace

TEST(OwnSymbol, IsDrawnByTheMouseAndKept)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                  [](QDialog& dialog) {
                      named(dialog, "tent");
                      StrokeField& strokes = fieldOf(dialog);
                      EXPECT_TRUE(strokes.isVisible());
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible()) << "nothing is drawn";
                      drag(strokes, {0.1, 0.84}, {0.5, 0.16});
                      drag(strokes, {0.5, 0.16}, {0.9, 0.84}); // on from its end: one bent stroke
                      drag(strokes, {0.3, 0.5}, {0.7, 0.5});
                      EXPECT_EQ(drawn(strokes), "0.1,0.84 0.5,0.16 0.9,0.84; 0.3,0.5 0.7,0.5");
                      Seat::take(dialog);
                  });
    ASSERT_EQ(seat.pattern().head.stitches.size(), 1u);
    const Stitch& made = seat.pattern().head.stitches[0];
    EXPECT_EQ(made.strokes, "0.1,0.84 0.5,0.16 0.9,0.84; 0.3,0.5 0.7,0.5");
    EXPECT_EQ(chart::symbolOf(made).shapes.size(), 2u);
    const std::string file = writePattern(seat.pattern(), builtInCatalogue());
    const auto read = readPattern(file, builtInCatalogue());
    ASSERT_TRUE(read.pattern);
    EXPECT_EQ(read.pattern->head.stitches[0].strokes, made.strokes);

    seat.inDialog([&] { seat.act(ActionId::ChangeOwnStitch); },
                  [](QDialog& dialog) {
                      auto& strokes = field<StrokeField>(dialog, "strokes");
                      EXPECT_EQ(strokes.strokes().size(), 2u);
                      QTest::mouseClick(&strokes, Qt::LeftButton, {}, strokes.placeOf({0.5, 0.5}));
                      press(strokes, {Qt::Key_Delete});
                      EXPECT_EQ(drawn(strokes), "0.1,0.84 0.5,0.16 0.9,0.84");
                      Seat::take(dialog);
                  });
    EXPECT_EQ(seat.pattern().head.stitches[0].strokes, "0.1,0.84 0.5,0.16 0.9,0.84");
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.pattern().head.stitches[0].strokes, "0.1,0.84 0.5,0.16 0.9,0.84; 0.3,0.5 0.7,0.5");
}

TEST(OwnSymbol, IsDrawnByKeysAlone)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                  [](QDialog& dialog) {
                      named(dialog, "hook");
                      StrokeField& strokes = fieldOf(dialog);
                      EXPECT_FALSE(strokes.accessibleName().isEmpty());
                      press(strokes, {Qt::Key_Space, Qt::Key_Right, Qt::Key_Right, Qt::Key_Space, Qt::Key_Down, Qt::Key_Space});
                      EXPECT_TRUE(strokes.accessibleDescription().contains(QStringLiteral("Return")));
                      press(strokes, {Qt::Key_Backspace, Qt::Key_Up, Qt::Key_Space, Qt::Key_Return}); // the last point elsewhere
                      EXPECT_EQ(drawn(strokes), "0.5,0.5 0.6,0.5 0.6,0.45");
                      EXPECT_TRUE(dialog.isVisible()) << "Return ended the dialog";
                      press(strokes, {Qt::Key_Return});
                      EXPECT_TRUE(dialog.isVisible());
                      const QString where = strokes.accessibleDescription();
                      QTest::keyClick(&strokes, Qt::Key_Left, Qt::ShiftModifier);
                      EXPECT_NE(strokes.accessibleDescription(), where);
                      press(strokes, {Qt::Key_Space, Qt::Key_Down, Qt::Key_Escape}); // a stroke that was begun is given up
                      EXPECT_TRUE(dialog.isVisible());
                      EXPECT_EQ(strokes.strokes().size(), 1u);
                      QTest::keyClick(&strokes, Qt::Key_Z, Qt::ControlModifier);
                      EXPECT_TRUE(strokes.strokes().empty());
                      press(strokes, {Qt::Key_Tab});
                      EXPECT_NE(dialog.focusWidget(), &strokes);
                  });
}

TEST(OwnSymbol, BeginsWithTheMadeOneAndIsTakenBack)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                  [](QDialog& dialog) {
                      named(dialog, "lean3", 3, 1);
                      StrokeField& strokes = fieldOf(dialog);
                      auto& back = field<QPushButton>(dialog, "takeBack");
                      EXPECT_FALSE(back.isEnabled());
                      field<QPushButton>(dialog, "beginWithMade").click();
                      const std::string made = drawn(strokes);
                      EXPECT_GE(strokes.strokes().size(), 3u);
                      field<QPushButton>(dialog, "ring").click();
                      EXPECT_GT(strokes.strokes().back().points.size(), 12u);
                      field<QPushButton>(dialog, "clear").click();
                      EXPECT_EQ(drawn(strokes), "");
                      back.click();
                      back.click();
                      EXPECT_EQ(drawn(strokes), made);
                      QTest::keyClick(&strokes, Qt::Key_Z, Qt::ControlModifier);
                      EXPECT_EQ(drawn(strokes), "");
                      EXPECT_FALSE(back.isEnabled());
                  });
}

TEST(OwnSymbol, OutsideOfANarrowerStitchIsToldAndNotLost)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                  [](QDialog& dialog) {
                      named(dialog, "wide", 1, 3);
                      StrokeField& strokes = fieldOf(dialog);
                      drag(strokes, {0.5, 0.5}, {2.5, 0.5});
                      drag(strokes, {0.2, 0.84}, {0.8, 0.84});
                      EXPECT_EQ(drawn(strokes), "0.5,0.5 2.5,0.5; 0.2,0.84 0.8,0.84");
                      field<QSpinBox>(dialog, "leaves").setValue(2);
                      EXPECT_EQ(strokes.outside(), 1);
                      EXPECT_EQ(strokes.strokes().size(), 2u);
                      Seat::take(dialog);
                      EXPECT_TRUE(dialog.isVisible());
                      field<QSpinBox>(dialog, "leaves").setValue(3);
                      EXPECT_EQ(strokes.outside(), 0);
                      Seat::take(dialog);
                      EXPECT_FALSE(dialog.isVisible());
                  });
    EXPECT_EQ(seat.pattern().head.stitches.size(), 1u);
}

TEST(OwnSymbol, MadeFromTheStitchAgainKeepsNoStrokes)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                  [](QDialog& dialog) {
                      named(dialog, "plain2");
                      drag(fieldOf(dialog), {0.1, 0.1}, {0.9, 0.9});
                      field<QComboBox>(dialog, "symbol").setCurrentIndex(0);
                      Seat::take(dialog);
                  });
    ASSERT_EQ(seat.pattern().head.stitches.size(), 1u);
    EXPECT_EQ(seat.pattern().head.stitches[0].strokes, "");
}

TEST(OwnStitch, HasTheMirrorImageThatIsChosenForIt)
{
    Seat seat;
    const auto make = [&](const char* abbreviation, Lean lean, const QString& mirror) {
        seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                      [&](QDialog& dialog) {
                          named(dialog, abbreviation, 4, 2);
                          field<QComboBox>(dialog, "lean").setCurrentIndex(static_cast<int>(lean));
                          auto& mirrors = field<QComboBox>(dialog, "mirror");
                          ASSERT_GE(mirrors.findText(mirror), 0) << qPrintable(mirror);
                          mirrors.setCurrentIndex(mirrors.findText(mirror));
                          Seat::take(dialog);
                      });
    };
    make("upright", Lean::None, QStringLiteral("itself"));
    make("hitch", Lean::Right, QStringLiteral("none, it stays as it is"));
    make("hatch", Lean::Left, QStringLiteral("hitch"));
    const Catalogue& catalogue = seat.document().catalogue();
    EXPECT_EQ(catalogue.mirrored(seat.stitch("upright")), seat.stitch("upright"));
    EXPECT_EQ(catalogue.mirrored(seat.stitch("hatch")), seat.stitch("hitch"));
    EXPECT_EQ(catalogue.mirrored(seat.stitch("hitch")), seat.stitch("hatch")) << "said of one it holds for both";
    seat.window().stitches().setChosen(seat.stitch("hatch"));
    seat.act(ActionId::Undo);
    EXPECT_EQ(seat.document().catalogue().mirrored(seat.stitch("hitch")), std::nullopt);
}

TEST(OwnStitch, TakenBackLeavesTheStitchThatWasChosenBefore)
{
    Seat seat;
    const StitchId before = seat.stitch("k2tog");
    Q_EMIT seat.window().stitches().stitchChosen(before);
    for (const char* name : {"first", "second"}) {
        seat.inDialog([&] { seat.act(ActionId::OwnStitch); },
                      [&](QDialog& dialog) {
                          named(dialog, name);
                          Seat::take(dialog);
                      });
    }
    const StitchId first = seat.pattern().head.stitches[0].id;
    EXPECT_EQ(seat.window().canvas().brush(), seat.pattern().head.stitches[1].id);
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_EQ(seat.window().canvas().brush(), first);
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_EQ(seat.window().canvas().brush(), before);
    EXPECT_EQ(seat.window().stitches().chosen(), before); // lit in the grid
    EXPECT_FALSE(seat.window().stitches().grid()->tileOf(before).isEmpty());
    seat.click(0, 3);
    EXPECT_EQ(seat.key(0, 3), "k2tog");
}

} // namespace shawlwright::app
