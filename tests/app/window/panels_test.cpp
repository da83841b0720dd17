// Findings, facts of a row, and the thread of counts.
#include "app/panels/count_thread.h"
#include "app/panels/findings_panel.h"
#include "app/panels/kept_list.h"
#include "app/panels/row_facts_panel.h"
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/window/menu_place.h"
#include "core/edits/marks.h"
#include "core/edits/paint.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QDockWidget>
#include <QListView>
#include <QMouseEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include <random>

namespace shawlwright::app {

namespace {

class Numbers : public KeptList<int> {
public:
    QVariant data(const QModelIndex& index, int) const override
    {
        return index.isValid() ? item(index.row()) : QVariant();
    }
};

// A row that asks for more stitches than there are.
void makeFault(Seat& seat, int row)
{
    seat.paintRow(row, "k2tog");
}

int itemWith(FindingsPanel& panel, MendKind kind)
{
    for (int i = 0; panel.finding(i); ++i)
        if (panel.finding(i)->mend.kind == kind)
            return i;
    return -1;
}

} // namespace

TEST(KeptList, ComesToTheNewItemsAndKeepsWhatStays)
{
    std::mt19937 random(20260);
    for (int round = 0; round < 300; ++round) {
        Numbers model;
        std::vector<int> items;
        for (int i = 0; i < static_cast<int>(random() % 40); ++i)
            items.push_back(i);
        model.setItems(items);
        std::vector<int> next;
        for (const int item : items)
            switch (random() % 6) {
            case 0:
                break;
            case 1:
                next.push_back(1000 + item);
                break;
            case 2:
                next.push_back(2000 + item);
                [[fallthrough]];
            default:
                next.push_back(item);
            }
        model.setItems(next);
        EXPECT_EQ(model.items(), next) << "seed 20260, round " << round;
    }
    Numbers model;
    model.setItems({1, 2, 3, 4, 5});
    const QPersistentModelIndex four = model.index(3);
    model.setItems({9, 1, 3, 4, 5});
    EXPECT_EQ(four.row(), 3);
    EXPECT_EQ(four.data().toInt(), 4);
}

TEST(FindingsPanel, AClickGoesToTheCell)
{
    Seat seat;
    makeFault(seat, 2);
    FindingsPanel& panel = seat.window().findings();
    ASSERT_GT(panel.count(), 0);
    int item = -1;
    for (int i = 0; panel.finding(i); ++i)
        if (panel.finding(i)->row == 2)
            item = i;
    ASSERT_GE(item, 0);
    seat.window().canvas().setCursor(At{7, 1});
    seat.settle();
    const QModelIndex index = panel.list()->model()->index(item, 0);
    panel.list()->scrollTo(index);
    QTest::mouseClick(panel.list()->viewport(), Qt::LeftButton, {},
                      panel.list()->visualRect(index).topLeft() + QPoint(60, 12));
    seat.settle();
    EXPECT_EQ(seat.window().canvas().cursor().row, 2);
    EXPECT_TRUE(panel.sentence(item).startsWith(QStringLiteral("Row 3"))) << qPrintable(panel.sentence(item));
}

TEST(FindingsPanel, OneClickMends)
{
    Seat seat;
    for (int row = 0; row < 8; ++row)
        seat.paintRow(row, "k");
    Row row = *seat.section().rows[1];
    row.stated = Quantity(23);
    seat.document().performOrTell(setRow(seat.pattern(), seat.section().id, 1, row, "count"));
    seat.settle();
    FindingsPanel& panel = seat.window().findings();
    const int item = itemWith(panel, MendKind::SetStated);
    ASSERT_GE(item, 0) << "a stated count that the needle contradicts has its mend";
    const int before = panel.count();
    panel.list()->scrollTo(panel.list()->model()->index(item, 0));
    const QRect link = panel.mendRect(item);
    ASSERT_FALSE(link.isEmpty());
    QTest::mouseClick(panel.list()->viewport(), Qt::LeftButton, {}, link.center());
    seat.settle();
    EXPECT_EQ(seat.section().rows[1]->stated, Quantity(20));
    EXPECT_LT(panel.count(), before);
}

TEST(FindingsPanel, TheChosenFindingStaysChosenWhenOthersGo)
{
    Seat seat;
    for (int row = 0; row < 8; ++row)
        seat.paintRow(row, "k");
    for (const int at : {1, 3, 5}) {
        Row row = *seat.section().rows[static_cast<std::size_t>(at)];
        row.stated = Quantity(30 + at);
        seat.document().performOrTell(setRow(seat.pattern(), seat.section().id, at, row, "count"));
    }
    seat.settle();
    FindingsPanel& panel = seat.window().findings();
    int chosen = -1;
    for (int i = 0; panel.finding(i); ++i)
        if (panel.finding(i)->row == 5)
            chosen = i;
    ASSERT_GE(chosen, 0);
    panel.list()->setCurrentIndex(panel.list()->model()->index(chosen, 0));
    Row row = *seat.section().rows[1];
    row.stated.reset();
    seat.document().performOrTell(setRow(seat.pattern(), seat.section().id, 1, row, "count"));
    seat.settle();
    ASSERT_TRUE(panel.list()->currentIndex().isValid());
    EXPECT_EQ(panel.finding(panel.list()->currentIndex().row())->row, 5);
}

TEST(RowFacts, SayWhatTheNeedleHolds)
{
    Seat seat(19); // 20 columns: 19 knits and a yarn over
    seat.paintRow(0, "k");
    seat.window().canvas().setBrush(seat.stitch("yo"));
    seat.click(0, 4);
    const QString words = seat.window().rowFacts().text();
    EXPECT_TRUE(words.contains(QStringLiteral("Stitches: 19 to 20 (+1)"))) << qPrintable(words);
    EXPECT_TRUE(words.contains(QStringLiteral("Worked / resting: 20 / 0"))) << qPrintable(words);
    EXPECT_TRUE(words.contains(QStringLiteral("MC stitches worked: 20"))) << qPrintable(words);
}

TEST(RowFacts, TakeTheRoomThatTheFindingsLeaveEmpty)
{
    Seat seat(40, 4, 40);
    for (int row = 0; row < 4; ++row)
        seat.paintRow(row, "k");
    for (const int boundary : {5, 12, 20, 28})
        seat.document().performOrTell(placeNewMarker(seat.pattern(), seat.section().id, 0, boundary));
    auto* row = seat.window().findChild<QDockWidget*>(QStringLiteral("row"));
    auto* findings = seat.window().findChild<QDockWidget*>(QStringLiteral("findings"));
    seat.window().resizeDocks({findings, row}, {300, 60}, Qt::Vertical);
    seat.settle();
    seat.window().canvas().setCursor(At{2, 3});
    seat.settle();
    QTest::qWait(0);
    RowFactsPanel& facts = seat.window().rowFacts();
    EXPECT_GE(facts.height(), facts.heightWanted());
    EXPECT_EQ(facts.findChild<QScrollArea*>()->verticalScrollBar()->maximum(), 0);
    EXPECT_GE(seat.window().findings().height(), seat.window().findings().heightWanted());
}

TEST(StitchesPanel, ShowsAFewLinesOnAStitchWithoutAScrollBar)
{
    Seat seat;
    seat.act(ActionId::PanelsAsFirst);
    seat.settle();
    for (const char* key : {"k", "yo", "k2tog", "ssk"}) {
        seat.window().canvas().setBrush(seat.stitch(key));
        seat.window().stitches().setChosen(seat.stitch(key));
        seat.settle();
        for (const QScrollArea* area : seat.window().stitches().findChildren<QScrollArea*>())
            if (area->verticalScrollBarPolicy() == Qt::ScrollBarAsNeeded) {
                EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << key << ", " << area->height();
            }
    }
}

TEST(MenuPlace, IsBesideThePointAndNoHigherThanItMust)
{
    const QRect room(0, 50, 1280, 750);
    EXPECT_EQ(menuPlace({300, 100}, {200, 400}, room), QPoint(302, 101));
    EXPECT_EQ(menuPlace({300, 700}, {200, 400}, room), QPoint(302, 400)); // its lower edge at that of the room
    EXPECT_EQ(menuPlace({300, 700}, {200, 900}, room), QPoint(302, 50));
    const QPoint left = menuPlace({1270, 100}, {200, 400}, room);
    EXPECT_FALSE(QRect(left, QSize(200, 400)).contains(QPoint(1270, 100))); // no entry under the button that is held
    EXPECT_TRUE(room.contains(QRect(left, QSize(200, 400))));
}

TEST(SectionsPanel, ShowsStitchesAtStartAndEnd)
{
    Seat seat(19);
    for (int row = 0; row < 8; ++row)
        seat.paintRow(row, "k");
    const At one[] = {At{0, 7}};
    seat.document().performOrTell(shawlwright::paint(seat.pattern(), seat.document().catalogue(),
                                                     seat.section().id, one, seat.stitch("yo")));
    seat.settle();
    EXPECT_EQ(seat.window().sections().countsOf(0), QString::fromUtf8("19 \xe2\x80\x93 20"));
}

TEST(SectionsPanel, AFewSectionsAreAllSeenWithoutScrolling)
{
    for (const char* inFront : {"stitches", "motifs"}) {
        Seat seat;
        auto* dock = seat.window().findChild<QDockWidget*>(QString::fromUtf8(inFront));
        ASSERT_NE(dock, nullptr);
        dock->raise();
        seat.settle();
        QListView* list = seat.window().sections().list();
        for (int sections = 1; sections <= 7; ++sections) {
            if (sections > 1)
                seat.document().performOrTell(addSection(seat.pattern(), sections - 1, "More of it", 4, 20));
            seat.settle();
            QTest::qWait(0);
            EXPECT_FALSE(list->verticalScrollBar()->isVisible()) << inFront << ", " << sections;
            EXPECT_EQ(list->verticalScrollBar()->maximum(), 0) << inFront << ", " << sections;
        }
    }
}

TEST(SectionsPanel, OnlyTheLineBelowItFixesItsHeight)
{
    Seat seat;
    QListView* list = seat.window().sections().list();
    QMouseEvent stray(QEvent::MouseButtonRelease, QPointF(600, 400), QPointF(600, 400), Qt::LeftButton, Qt::NoButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&seat.window(), &stray);
    for (int sections = 2; sections <= 5; ++sections)
        seat.document().performOrTell(addSection(seat.pattern(), sections - 1, "More of it", 4, 20));
    seat.settle();
    EXPECT_EQ(list->verticalScrollBar()->maximum(), 0);
}

TEST(CountThread, AClickGoesToTheRow)
{
    Seat seat;
    for (int row = 0; row < 8; ++row)
        seat.paintRow(row, "k");
    CountThread& thread = seat.window().thread();
    const QPointF point = thread.pointOf(5);
    QTest::mouseClick(&thread, Qt::LeftButton, {}, point.toPoint());
    seat.settle();
    EXPECT_EQ(seat.window().canvas().cursor().row, 5);
}

} // namespace shawlwright::app
