// What a designer does in the window, from the empty grid on.
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "core/edits/rows.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>
#include <QTest>

#include <set>

namespace shawlwright::app {

TEST(Window, ChoosesAStitchBySearchAndPaintsIt)
{
    Seat seat;
    StitchesPanel& stitches = seat.window().stitches();
    seat.act(ActionId::FindStitch);
    QTest::keyClicks(stitches.findField(), QStringLiteral("k3tog"));
    QTest::keyClick(stitches.findField(), Qt::Key_Return);
    seat.settle();
    EXPECT_EQ(seat.window().canvas().brush(), seat.stitch("k3tog"));
    EXPECT_TRUE(stitches.findField()->text().isEmpty());
    EXPECT_TRUE(seat.window().canvas().hasFocus());
    seat.click(0, 3);
    EXPECT_EQ(seat.key(0, 3), "k3tog");
    EXPECT_TRUE(stitches.description().contains(QStringLiteral("takes up 3, leaves 1")))
        << qPrintable(stitches.description());
}

TEST(Window, ChoosesAStitchFromItsTile)
{
    Seat seat;
    StitchGrid* grid = seat.window().stitches().grid();
    EXPECT_GT(grid->tileOf(seat.stitch("yo2_k1drop")).width(), 2 * grid->tileOf(seat.stitch("yo")).width()); // its name
    const QRect tile = grid->tileOf(seat.stitch("yo"));
    ASSERT_FALSE(tile.isEmpty());
    QTest::mouseClick(grid, Qt::LeftButton, {}, tile.center());
    EXPECT_EQ(seat.window().canvas().brush(), seat.stitch("yo"));
}

TEST(Window, FavouritesHaveTheirDigit)
{
    Seat seat;
    seat.window().canvas().setFocus();
    seat.press(Qt::Key_4);
    EXPECT_EQ(seat.window().canvas().brush(), seat.stitch("k2tog"));
    seat.window().stitches().setFavourite(4, seat.stitch("ssk")); // they change places
    seat.press(Qt::Key_4);
    EXPECT_EQ(seat.window().canvas().brush(), seat.stitch("ssk"));
    seat.press(Qt::Key_5);
    EXPECT_EQ(seat.window().canvas().brush(), seat.stitch("k2tog"));
    seat.press(Qt::Key_0);
    EXPECT_EQ(seat.window().canvas().brush(), noStitch);
}

TEST(Window, UndoNamesTheAct)
{
    Seat seat;
    seat.window().canvas().setBrush(seat.stitch("k2tog"));
    seat.click(1, 4);
    const QString undo = seat.window().action(ActionId::Undo)->text();
    // On a wrong-side row the stitch that shows as k2tog is worked as p2tog, and is called so.
    EXPECT_TRUE(undo.contains(QStringLiteral("p2tog"))) << qPrintable(undo);
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_EQ(seat.key(1, 4), "no_st");
    EXPECT_TRUE(seat.window().action(ActionId::Redo)->text().contains(QStringLiteral("p2tog")));
    seat.act(ActionId::Redo);
    EXPECT_EQ(seat.key(1, 4), "k2tog");
}

TEST(Window, WordsFollowAnEditAndItsUndo)
{
    Seat seat;
    seat.paintRow(0, "k");
    const QString before = seat.window().words().text();
    seat.window().canvas().setBrush(seat.stitch("yo"));
    seat.click(0, 5);
    const QString after = seat.window().words().text();
    EXPECT_NE(before, after);
    EXPECT_TRUE(after.contains(QStringLiteral("yo"))) << qPrintable(after);
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_EQ(seat.window().words().text(), before);
}

TEST(Window, WordsMarkTheRowAtTheCursorAndGoToARow)
{
    Seat seat;
    for (int row = 0; row < 4; ++row)
        seat.paintRow(row, row % 2 == 0 ? "k" : "p");
    seat.window().canvas().setCursor(At{0, 3});
    seat.settle();
    EXPECT_EQ(seat.window().words().markedItem(), 0);
    QListView* list = seat.window().words().list();
    const QModelIndex last = list->model()->index(list->model()->rowCount() - 1, 0);
    list->scrollTo(last);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(last).center());
    seat.settle();
    EXPECT_NE(seat.window().canvas().cursor().row, 0);
}

TEST(Window, StatusSaysWhatIsAtTheCursor)
{
    Seat seat;
    seat.window().canvas().setBrush(seat.stitch("k2tog"));
    seat.click(0, 6);
    seat.window().canvas().setCursor(At{0, 7});
    seat.window().canvas().setCursor(At{0, 6});
    seat.settle();
    const QString words = seat.window().statusLeft();
    EXPECT_TRUE(words.startsWith(QStringLiteral("Row 1 (RS), stitch 6: k2tog"))) << qPrintable(words);
    EXPECT_TRUE(words.contains(QStringLiteral("takes up 2, leaves 1, leans right"))) << qPrintable(words);
    EXPECT_TRUE(seat.window().statusRight().contains(QStringLiteral("not saved")));
}

TEST(Window, SectionsComeGoAndMove)
{
    Seat seat;
    seat.window().questions().words = [](const QString&, const QString&) {
        return QStringLiteral("Left wing");
    };
    seat.act(ActionId::AddSection);
    seat.settle();
    ASSERT_EQ(seat.pattern().sections.size(), 2u);
    EXPECT_EQ(seat.pattern().sections[1].frame.title, "Left wing");
    EXPECT_EQ(seat.window().canvas().section(), seat.pattern().sections[1].id);
    QListView* list = seat.window().sections().list();
    EXPECT_EQ(list->currentIndex().row(), 1);

    // Renamed in place: nothing changes before Return.
    seat.act(ActionId::RenameSection);
    auto* field = qobject_cast<QLineEdit*>(list->indexWidget(list->currentIndex()));
    if (!field)
        field = list->findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("Right wing"));
    EXPECT_EQ(seat.pattern().sections[1].frame.title, "Left wing");
    QTest::keyClick(field, Qt::Key_Return);
    seat.settle();
    EXPECT_EQ(seat.pattern().sections[1].frame.title, "Right wing");

    seat.act(ActionId::SectionEarlier);
    seat.settle();
    EXPECT_EQ(seat.pattern().sections[0].frame.title, "Right wing");
    EXPECT_EQ(list->currentIndex().row(), 0);
    seat.act(ActionId::DuplicateSection);
    seat.settle();
    ASSERT_EQ(seat.pattern().sections.size(), 3u);
    EXPECT_EQ(list->model()->rowCount(), 3);
    seat.act(ActionId::DeleteSection);
    seat.settle();
    ASSERT_EQ(seat.pattern().sections.size(), 2u);
    EXPECT_GE(seat.window().canvas().sectionIndex(), 0);
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_EQ(seat.pattern().sections.size(), 3u);
}

TEST(Window, ASectionIsMovedByDragging)
{
    Seat seat;
    for (const char* title : {"B", "C"}) {
        seat.window().questions().words = [title](const QString&, const QString&) {
            return QString::fromUtf8(title);
        };
        seat.act(ActionId::AddSection);
        seat.settle();
    }
    QAbstractItemModel* model = seat.window().sections().list()->model();
    std::unique_ptr<QMimeData> dragged(model->mimeData({model->index(0, 0)}));
    model->dropMimeData(dragged.get(), Qt::MoveAction, 3, 0, {}); // below the last
    seat.settle();
    EXPECT_EQ(seat.pattern().sections[0].frame.title, "B");
    EXPECT_EQ(seat.pattern().sections[2].frame.title, "Section 1");
    EXPECT_EQ(model->rowCount(), 3);
}

TEST(Window, SectionsAreChosenByAClick)
{
    Seat seat;
    seat.window().questions().words = [](const QString&, const QString&) { return QStringLiteral("Border"); };
    seat.act(ActionId::AddSection);
    seat.settle();
    QListView* list = seat.window().sections().list();
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                      list->visualRect(list->model()->index(0, 0)).center());
    seat.settle();
    EXPECT_EQ(seat.window().canvas().section(), seat.pattern().sections[0].id);
}

TEST(Window, VersionsAndSizesAreSwitched)
{
    Seat seat;
    PatternHead head = seat.pattern().head;
    head.versions = {"Garter", "Brioche"};
    head.sizes = {"Small", "Large"};
    head.castOn.stitches = Quantity(std::vector<int>{20, 24});
    seat.document().performOrTell(setHead(seat.pattern(), head, "versions"));
    seat.settle();
    QComboBox* version = seat.window().versionChooser();
    ASSERT_EQ(version->count(), 2);
    EXPECT_EQ(version->itemText(1), QStringLiteral("Brioche"));
    version->setCurrentIndex(1);
    Q_EMIT version->activated(1);
    seat.settle();
    EXPECT_EQ(seat.document().derived().choice().version, 1);
    QComboBox* size = seat.window().sizeChooser();
    size->setCurrentIndex(1);
    Q_EMIT size->activated(1);
    seat.settle();
    EXPECT_EQ(seat.document().derived().choice().size, 1);
    EXPECT_EQ(seat.document().derived().ledger().before.front().count(), 24);
}

TEST(Window, CopiesMirrorsAndPastes)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.window().canvas().setBrush(seat.stitch("k2tog"));
    seat.click(0, 1);
    seat.window().canvas().setBrush(seat.stitch("yo"));
    seat.click(0, 2);
    seat.window().canvas().select(Area{0, 0, 1, 4});
    seat.act(ActionId::Mirror);
    EXPECT_EQ(seat.key(0, 4), "ssk");
    EXPECT_EQ(seat.key(0, 3), "yo");
    EXPECT_EQ(seat.key(0, 1), "k");
    seat.act(ActionId::Copy);
    seat.window().canvas().select(std::nullopt);
    seat.window().canvas().setCursor(At{2, 5});
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.key(2, 8), "ssk");
    EXPECT_EQ(seat.key(2, 7), "yo");
    seat.window().canvas().setCursor(At{2, 19}); // 4 columns don't fit
    const int steps = seat.document().undoStack().count();
    seat.act(ActionId::Paste);
    EXPECT_EQ(seat.document().undoStack().count(), steps);
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("2 are left")))
        << qPrintable(seat.window().statusLeft());
}

TEST(Window, RowsAreInsertedMovedAndDeleted)
{
    Seat seat;
    seat.paintRow(0, "p");
    seat.window().canvas().setCursor(At{0, 1});
    seat.act(ActionId::RowAbove);
    EXPECT_EQ(seat.section().rows.size(), 9u);
    EXPECT_EQ(seat.key(0, 1), "p");
    EXPECT_EQ(seat.window().canvas().cursor().row, 1);
    seat.settle();
    seat.act(ActionId::RowDown);
    EXPECT_EQ(seat.key(1, 1), "p");
    EXPECT_EQ(seat.window().canvas().cursor().row, 0);
    seat.act(ActionId::DeleteRow);
    EXPECT_EQ(seat.section().rows.size(), 8u);
    seat.act(ActionId::RowBelow);
    EXPECT_EQ(seat.section().rows.size(), 9u);
}

TEST(Window, EveryActionInTheMiddleOfAStrokeEndsIt)
{
    // Fault 4 of editors: press, move, an action, move, release; undone, everything is as it was.
    for (const ActionEntry& entry : actionTable()) {
        using enum ActionId;
        const std::set<ActionId> dialogs = {NewShawl,
                                            Open,
                                            Save,
                                            SaveAs,
                                            ExportChart,
                                            ExportWords,
                                            ExportPattern,
                                            PatternSettings,
                                            Yarns,
                                            Markers,
                                            SectionSettings,
                                            RowSettings,
                                            RowHead,
                                            OwnStitch,
                                            ShortcutSheet,
                                            About,
                                            RepeatSelection,
                                            RepeatSelectedRows,
                                            AddSection,
                                            CloseWindow,
                                            Quit,
                                            ReadRows,
                                            WordStyle,
                                            PlainRows,
                                            StripedRows,
                                            ShortRowWedge,
                                            ShortRowArch,
                                            IncreaseRows,
                                            SaveMotif,
                                            RenameMotif,
                                            ReplaceStitch,
                                            ChangeOwnStitch,
                                            EarlierSaves,
                                            StartPage}; // which covers the chart
        if (dialogs.count(entry.id))
            continue;
        Seat seat;
        seat.paintRow(0, "k");
        const Pattern before = seat.pattern();
        Canvas& canvas = seat.window().canvas();
        canvas.setBrush(seat.stitch("yo"));
        canvas.showCell(2, 2);
        QTest::mousePress(canvas.viewport(), Qt::LeftButton, {}, canvas.cellRectOnViewport(2, 2).center());
        QTest::mouseMove(canvas.viewport(), canvas.cellRectOnViewport(2, 4).center());
        if (seat.window().action(entry.id)->isEnabled())
            seat.act(entry.id);
        seat.settle();
        const QRect there = canvas.cellRectOnViewport(2, 6);
        if (!there.isEmpty())
            QTest::mouseMove(canvas.viewport(), there.center());
        QTest::mouseRelease(canvas.viewport(), Qt::LeftButton, {},
                            there.isEmpty() ? QPoint(5, 5) : there.center());
        seat.settle();
        EXPECT_FALSE(canvas.strokeOpen()) << entry.text;
        while (seat.document().undoStack().index() > 1)
            seat.document().undoStack().undo();
        EXPECT_TRUE(seat.pattern() == before) << entry.text;
    }
}

} // namespace shawlwright::app
