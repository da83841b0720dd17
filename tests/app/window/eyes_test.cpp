// What helps to see and to find: places found, the chart as knitted and in black and white, phrases and cells that light
// each other, the head of a row, zoom kept with its file.
#include "app/painting/grey_theme.h"
#include "app/panels/count_thread.h"
#include "app/panels/find_bar.h"
#include "app/panels/words_panel.h"
#include "app/panels/yarn_rows.h"
#include "core/edits/sections.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QToolBar>
#include <QFontMetrics>
#include <QFontInfo>
#include <QLineEdit>
#include <QListView>
#include <QApplication>
#include <QMenu>
#include <QTest>
#include <QTimer>

namespace shawlwright::app {

namespace {

void look(Seat& seat, const char* words)
{
    seat.act(ActionId::FindPlace);
    QLineEdit& field = seat.window().findBar().field();
    field.selectAll();
    QTest::keyClicks(&field, QString::fromUtf8(words));
    seat.settle();
}

void hit(Seat& seat, Qt::Key key, Qt::KeyboardModifiers modifiers = {})
{
    QTest::keyClick(&seat.window().findBar().field(), key, modifiers);
    seat.settle();
}

// Runs the entry of that name in the menu that `act` opens.
void inMenu(Seat& seat, ActionId act, const QString& menuStart, const QString& entry)
{
    bool found = false;
    QTimer::singleShot(0, qApp, [&] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        for (QAction* one : menu->actions())
            if (QString(one->text()).remove(QLatin1Char('&')).startsWith(menuStart)) {
                if (!one->menu()) {
                    found = true;
                    one->trigger();
                } else {
                    for (QAction* inner : one->menu()->actions())
                        if (inner->text() == entry) {
                            found = true;
                            inner->trigger();
                        }
                }
            }
        menu->close();
    });
    seat.act(act);
    seat.settle();
    EXPECT_TRUE(found) << qPrintable(menuStart + entry);
}

} // namespace

TEST(FindBar, GoesFromStitchToStitchAndBack)
{
    Seat seat(8, 4, 8);
    seat.paintRow(0, "k");
    seat.paintRow(2, "k2tog");
    look(seat, "k2tog");
    EXPECT_EQ(seat.window().findBar().place(), QStringLiteral("1 of 8"));
    EXPECT_EQ(seat.window().canvas().cursor(), (At{2, 1}));
    EXPECT_EQ(seat.window().canvas().lit(), (Area{2, 2, 1, 1})); // seen while the field has the keys
    hit(seat, Qt::Key_Return);
    EXPECT_EQ(seat.window().canvas().cursor(), (At{2, 2}));
    hit(seat, Qt::Key_Return, Qt::ShiftModifier);
    hit(seat, Qt::Key_Return, Qt::ShiftModifier); // round to the last
    EXPECT_EQ(seat.window().findBar().place(), QStringLiteral("8 of 8"));
    EXPECT_EQ(seat.window().canvas().cursor(), (At{2, 8}));
    hit(seat, Qt::Key_Escape);
    EXPECT_TRUE(seat.window().findBar().isHidden());
    EXPECT_FALSE(seat.window().canvas().lit());
    EXPECT_EQ(seat.document().undoStack().count(), 2); // nothing was changed
}

TEST(FindBar, GoesToRowsOfOtherSections)
{
    Seat seat(8, 4, 8);
    ASSERT_TRUE(seat.document().performOrTell(addSection(seat.pattern(), 1, "Border", 6, 8)));
    seat.settle();
    look(seat, "3 of border");
    EXPECT_EQ(seat.window().findBar().place(), QStringLiteral("1 of 1"));
    EXPECT_EQ(seat.window().canvas().section(), seat.section(1).id);
    EXPECT_EQ(seat.window().canvas().cursor().row, 2);
    look(seat, "row 99");
    EXPECT_EQ(seat.window().findBar().place(), QStringLiteral("nothing found"));
}

TEST(AsKnittedInTheWindow, SaysThatItIsToLookAt)
{
    Seat seat(8, 4, 8);
    seat.paintRow(0, "k");
    EXPECT_TRUE(seat.window().lookOnly().isEmpty());
    seat.act(ActionId::AsKnitted);
    seat.settle();
    EXPECT_TRUE(seat.window().lookOnly().contains(QStringLiteral("Ctrl+U")));
    EXPECT_FALSE(seat.window().action(ActionId::ToolPaint)->isEnabled());
    EXPECT_FALSE(seat.window().action(ActionId::DeleteRow)->isEnabled());
    EXPECT_TRUE(seat.window().action(ActionId::Undo)->isEnabled());
    seat.act(ActionId::AsKnitted);
    EXPECT_TRUE(seat.window().lookOnly().isEmpty());
    EXPECT_TRUE(seat.window().action(ActionId::ToolPaint)->isEnabled());
}

TEST(BlackAndWhite, HasNoColourAndTellsYarnsApart)
{
    Seat seat(8, 2, 8);
    PatternHead head = seat.pattern().head;
    if (head.yarns.size() < 2) {
        head.yarns.push_back(head.yarns.front());
        head.yarns.back().id = YarnId{2};
        head.yarns.back().code = "CC";
    }
    head.yarns[0].colour = 0xC0392B;
    head.yarns[1].colour = 0x1F6FB2; // of one lightness
    ASSERT_TRUE(seat.document().performOrTell(setHead(seat.pattern(), head, "yarns")));
    seat.paintRow(0, "k");
    seat.document().performOrTell(paint(seat.pattern(), seat.document().catalogue(), seat.section().id,
                                        std::vector<At>{{0, 2}}, seat.stitch("k"), YarnId{2}));
    Canvas& canvas = seat.window().canvas();
    canvas.setCursor(At{1, 8});
    seat.act(ActionId::BlackAndWhite);
    seat.settle();
    const QImage seen = canvas.viewport()->grab().toImage();
    const QRect grid = canvas.cellRectOnViewport(1, 8) | canvas.cellRectOnViewport(0, 1); // letters beside it may be smoothed
    int coloured = 0;
    for (int y = grid.top(); y <= grid.bottom(); ++y)
        for (int x = grid.left(); x <= grid.right(); ++x)
            coloured += seen.pixelColor(x, y).saturation() > 8;
    EXPECT_EQ(coloured, 0);
    const auto ground = [&](int column) {
        return seen.pixelColor(canvas.cellRectOnViewport(0, column).center()).lightness();
    };
    EXPECT_GT(std::abs(ground(1) - ground(2)), 16);
    seat.act(ActionId::BlackAndWhite);
}

TEST(Phrases, LightTheirCellsAndAreLitByThem)
{
    Seat seat(8, 2, 8);
    ASSERT_TRUE(seat.document().performOrTell(fill(seat.pattern(), seat.document().catalogue(), seat.section().id,
                                                   Area{0, 0, 1, 8}, seat.stitch("k"))));
    for (const auto& [column, key] : {std::pair(3, "yo"), std::pair(4, "ssk")})
        ASSERT_TRUE(seat.document().performOrTell(paint(seat.pattern(), seat.document().catalogue(), seat.section().id,
                                                        std::vector<At>{{0, column}}, seat.stitch(key))));
    seat.settle();
    seat.window().canvas().setCursor(At{0, 4});
    seat.settle();
    EXPECT_EQ(seat.window().words().litWords(), QStringLiteral("ssk"));
    seat.window().canvas().setCursor(At{0, 7});
    seat.settle();
    EXPECT_EQ(seat.window().words().litWords(), QStringLiteral("k4"));

    // The pointer goes along the line: each phrase lights cells, all of them in the row.
    QListView* list = seat.window().words().list();
    const QRect line = list->visualRect(list->model()->index(0, 0));
    std::vector<std::pair<int, int>> lit;
    for (int y = line.top() + 6; y < line.bottom(); y += 6)
        for (int x = line.left(); x < line.right(); x += 3) {
            QTest::mouseMove(list->viewport(), QPoint(x, y));
            if (const auto area = seat.window().canvas().lit()) {
                EXPECT_EQ(area->firstRow, 0);
                if (lit.empty() || lit.back() != std::pair(area->firstColumn, area->lastColumn))
                    lit.emplace_back(area->firstColumn, area->lastColumn);
            }
        }
    EXPECT_NE(std::find(lit.begin(), lit.end(), std::pair(3, 3)), lit.end());
    EXPECT_NE(std::find(lit.begin(), lit.end(), std::pair(5, 8)), lit.end());
}

TEST(RowHead, SetsSideYarnStartEndAndNoteInOneStepEach)
{
    Seat seat(8, 4, 8);
    seat.paintRow(0, "k");
    seat.window().canvas().setCursor(At{1, 1});
    const int steps = seat.document().undoStack().count();
    const Side was = seat.section().rows[1]->side;
    inMenu(seat, ActionId::RowHead, QStringLiteral("Side"),
           was == Side::RS ? QStringLiteral("Wrong side (WS)") : QStringLiteral("Right side (RS)"));
    EXPECT_NE(seat.section().rows[1]->side, was);
    inMenu(seat, ActionId::RowHead, QStringLiteral("At its end"), QStringLiteral("slide"));
    EXPECT_EQ(seat.section().rows[1]->finish.kind, FinishKind::Slide);
    inMenu(seat, ActionId::RowHead, QStringLiteral("Starts"), QStringLiteral("at the edge"));
    EXPECT_EQ(seat.section().rows[1]->start.kind, StartKind::AtEdge);
    inMenu(seat, ActionId::RowHead, QStringLiteral("Starts"), QStringLiteral("the yarn is joined here"));
    EXPECT_TRUE(seat.section().rows[1]->start.joins);
    EXPECT_EQ(seat.section().rows[1]->start.kind, StartKind::AtEdge);
    seat.window().questions().words = [](const QString&, const QString&) { return QStringLiteral("mind the edge"); };
    inMenu(seat, ActionId::RowHead, QStringLiteral("Note"), {});
    EXPECT_EQ(seat.section().rows[1]->note, "mind the edge");
    EXPECT_EQ(seat.document().undoStack().count(), steps + 5);
}

TEST(RowHead, IsOfAllSelectedRows)
{
    Seat seat(8, 4, 8);
    seat.window().canvas().setCursor(At{1, 1});
    seat.window().canvas().select(Area{0, 2, 1, 8});
    inMenu(seat, ActionId::RowHead, QStringLiteral("At its end"), QStringLiteral("round"));
    for (std::size_t row = 0; row < 3; ++row)
        EXPECT_EQ(seat.section().rows[row]->finish.kind, FinishKind::Round);
    EXPECT_NE(seat.section().rows[3]->finish.kind, FinishKind::Round);
    seat.act(ActionId::Undo);
    EXPECT_NE(seat.section().rows[0]->finish.kind, FinishKind::Round);
}

TEST(Zoom, IsKeptWithItsFile)
{
    Seat seat(8, 40, 60);
    const QString one = seat.path("one.shawl"), two = seat.path("two.shawl");
    ASSERT_FALSE(seat.document().save(one));
    seat.window().canvas().setZoomPercent(150);
    const double zoom = seat.window().canvas().zoomPercent();
    ASSERT_FALSE(seat.document().save(two));
    ASSERT_TRUE(seat.window().openPath(one));
    seat.window().canvas().setZoomPercent(50);
    ASSERT_TRUE(seat.window().openPath(two)); // what was open when it was left
    EXPECT_NEAR(seat.window().canvas().zoomPercent(), zoom, 1);
    ASSERT_TRUE(seat.window().openPath(one));
    EXPECT_NEAR(seat.window().canvas().zoomPercent(), 50, 1);
}

TEST(StatusBar, ForgetsWhatWasToldWhenTheChartChanges)
{
    Seat seat(8, 4, 8);
    seat.paintRow(0, "k");
    seat.document().tell(QStringLiteral("It can't be done."));
    EXPECT_EQ(seat.window().statusLeft(), QStringLiteral("It can't be done."));
    seat.act(ActionId::Undo);
    seat.settle();
    EXPECT_NE(seat.window().statusLeft(), QStringLiteral("It can't be done."));
}

TEST(YarnsDialog, NamesYarnsThatLookAlike)
{
    std::vector<Yarn> yarns(2);
    yarns[0].id = YarnId{1};
    yarns[0].code = "MC";
    yarns[0].colour = 0x1F4E79;
    yarns[1].id = YarnId{2};
    yarns[1].code = "CC";
    yarns[1].colour = 0x23527D;
    const YarnRows alike(yarns);
    EXPECT_TRUE(alike.whatIsAlike().contains(QStringLiteral("MC and CC look alike"))) << qPrintable(alike.whatIsAlike());
    yarns[1].colour = 0xF2E8CF;
    EXPECT_TRUE(YarnRows(yarns).whatIsAlike().isEmpty());
}

// At twice the size what the menus have too gives way, and the tools stay whole.
TEST(LargeText, LeavesRoomForTheToolsAndTheThreadsTitles)
{
    Seat seat;
    seat.window().resize(1280, 800);
    seat.window().show();
    const auto whole = [&](ActionId id) {
        const auto* bar = seat.window().findChild<QToolBar*>(QStringLiteral("tools"));
        const QWidget* button = bar->widgetForAction(seat.window().action(id));
        return button && button->isVisible() && button->width() >= button->sizeHint().width() &&
               bar->rect().contains(button->geometry());
    };
    using enum ActionId;
    seat.settle();
    for (const ActionId id : {NewShawl, Undo, ToolPaint, ToolRowRepeat, ZoomIn})
        EXPECT_TRUE(whole(id)) << actionEntry(id).text;
    for (int step = 0; step < 4; ++step)
        seat.act(LargerText);
    seat.settle();
    for (const ActionId id : {ToolPaint, ToolArea, ToolErase, ToolSelect, ToolMarker, ToolTurn, ToolStitchRepeat,
                              ToolRowRepeat})
        EXPECT_TRUE(whole(id)) << actionEntry(id).text;
    const CountThread& thread = seat.window().thread();
    EXPECT_GT(thread.pointOf(0).y(), QFontMetrics(thread.font()).height() * 0.7); // below the titles
    EXPECT_GE(thread.height(), thread.minimumSizeHint().height());
    while (seat.window().action(SmallerText)->isEnabled() && QFontInfo(thread.font()).pixelSize() > 13)
        seat.act(SmallerText);
    seat.settle();
    for (const ActionId id : {NewShawl, Undo, ToolRowRepeat, ZoomIn}) // back again
        EXPECT_TRUE(whole(id)) << actionEntry(id).text;
}

} // namespace shawlwright::app
