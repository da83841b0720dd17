// Plain WS rows hidden by the window's actions; fill and paste while it is painted mirrored.
#include "tests/app/window/seat.h"

#include <QFile>

namespace shawlwright::app {

namespace {

// Eight rows of 20 stitches, the even ones WS and purled.
struct Hiding : Seat {
    Hiding()
    {
        for (int row = 0; row < 8; ++row)
            paintRow(row, "k");
        act(ActionId::HidePlainRows);
        settle();
    }
    Canvas& canvas() { return window().canvas(); }
    int rows() { return static_cast<int>(section().rows.size()); }
};

} // namespace

TEST(HiddenRowsInTheWindow, AreToldAndKeptWithTheFile)
{
    Hiding seat;
    EXPECT_TRUE(seat.canvas().hidesRow(1));
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("4 WS rows (purl)")))
        << qPrintable(seat.window().statusLeft());
    const QString hides = seat.path("hides.shawl"), shows = seat.path("shows.shawl");
    QFile file(shows);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(seat.document().bytes());
    file.close();
    QFile::copy(shows, hides);
    seat.document().undoStack().setClean();
    ASSERT_TRUE(seat.window().openPath(hides));
    EXPECT_FALSE(seat.window().action(ActionId::HidePlainRows)->isChecked());
    seat.act(ActionId::HidePlainRows);
    ASSERT_TRUE(seat.window().openPath(shows));
    EXPECT_FALSE(seat.canvas().plainRowsHidden());
    ASSERT_TRUE(seat.window().openPath(hides));
    EXPECT_TRUE(seat.window().action(ActionId::HidePlainRows)->isChecked());
    EXPECT_TRUE(seat.canvas().hidesRow(1));
}

TEST(HiddenRowsInTheWindow, GoWithWholeRows)
{
    Hiding seat;
    seat.canvas().setCursor(At{2, 1});
    const RowId third = seat.section().rows[2]->id, fourth = seat.section().rows[3]->id;
    seat.settle();
    seat.act(ActionId::RowDown);
    EXPECT_EQ(seat.section().rows[0]->id, third);
    EXPECT_EQ(seat.section().rows[1]->id, fourth);
    EXPECT_EQ(seat.canvas().cursor().row, 0);
    seat.settle();
    seat.act(ActionId::RowUp);
    EXPECT_EQ(seat.section().rows[2]->id, third);
    seat.act(ActionId::DuplicateRow);
    EXPECT_EQ(seat.rows(), 10);
    seat.act(ActionId::DeleteRow);
    EXPECT_EQ(seat.rows(), 8);
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("hidden WS row above was deleted")))
        << qPrintable(seat.window().statusLeft());
}

TEST(HiddenRowsInTheWindow, StayAsTheyAreWhereStitchesAreFilledAndPasted)
{
    Hiding seat;
    const auto plain = [&] {
        return std::vector<RowRef>{seat.section().rows[1], seat.section().rows[3], seat.section().rows[5]};
    };
    const auto before = plain();
    seat.canvas().select(Area{0, 4, 3, 8});
    seat.window().canvas().setBrush(seat.stitch("yo"));
    seat.act(ActionId::FillSelection);
    EXPECT_EQ(seat.key(4, 3), "yo");
    seat.act(ActionId::Copy);
    seat.canvas().select(std::nullopt);
    seat.canvas().setCursor(At{2, 10});
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.key(6, 12), "yo");
    seat.canvas().select(Area{0, 2, 3, 3});
    seat.act(ActionId::CloseLeft);
    EXPECT_EQ(seat.key(2, 8), "k"); // closed up by one
    EXPECT_EQ(plain(), before);
    // A nudge goes to the next row that is seen.
    seat.canvas().select(Area{0, 0, 3, 4});
    seat.act(ActionId::NudgeUp);
    EXPECT_EQ(seat.canvas().selection(), std::optional(Area{2, 2, 3, 4}));
    EXPECT_EQ(plain(), before);
    // Painted mirrored, they are filled and pasted on both sides.
    seat.canvas().setPaintMirror(PaintMirror{{}, 21});
    seat.canvas().select(Area{6, 6, 18, 18});
    seat.act(ActionId::FillSelection);
    EXPECT_EQ(seat.key(6, 18), "yo");
    EXPECT_EQ(seat.key(6, 3), "yo");
    seat.act(ActionId::Copy);
    seat.canvas().select(std::nullopt);
    seat.canvas().setCursor(At{6, 20});
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.key(6, 20), "yo");
    EXPECT_EQ(seat.key(6, 1), "yo");
    seat.canvas().setPaintMirror(std::nullopt);
    EXPECT_EQ(plain(), before);
    // To acts on the fabric as a whole it is one rectangle.
    seat.canvas().select(Area{0, 4, 3, 8});
    seat.act(ActionId::Mirror);
    EXPECT_FALSE(seat.window().statusLeft().contains(QStringLiteral("one rectangle")))
        << qPrintable(seat.window().statusLeft());
}

} // namespace shawlwright::app
