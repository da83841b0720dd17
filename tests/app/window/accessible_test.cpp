// What a screen reader finds: the chart as a table of stitches, and a name on every control.
#include "app/canvas/accessible_chart.h"
#include "app/window/start_page.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QScrollBar>

#include <set>

namespace shawlwright::app {

namespace {

QAccessibleTableInterface& tableOf(Seat& seat)
{
    QAccessibleInterface* chart = QAccessible::queryAccessibleInterface(&seat.window().canvas());
    return *chart->tableInterface();
}

QString nameOf(QAccessibleInterface* of)
{
    return of ? of->text(QAccessible::Name) : QStringLiteral("(none)");
}

// What somebody acts on; a frame or a text needs no name of its own.
bool isControl(QAccessible::Role role)
{
    static const std::set<QAccessible::Role> controls = {
        QAccessible::PushButton, QAccessible::CheckBox, QAccessible::RadioButton, QAccessible::ComboBox,
        QAccessible::EditableText, QAccessible::SpinBox, QAccessible::Slider, QAccessible::List,
        QAccessible::Table, QAccessible::Tree, QAccessible::MenuItem, QAccessible::ButtonMenu,
        QAccessible::PageTab, QAccessible::ListItem, QAccessible::Cell};
    return controls.contains(role);
}

// Names what has none. A chart's stitches are looked at elsewhere.
int controlsBelow(QAccessibleInterface* of, const QString& path, int depth = 0)
{
    if (!of || !of->isValid() || depth > 40 || of->state().invisible)
        return 0;
    const QObject* object = of->object();
    const QString here =
        path + QLatin1Char('/') +
        (object ? QLatin1String(object->metaObject()->className()) + QLatin1Char('#') + object->objectName()
                : QString::number(of->role()));
    int found = 0;
    // A field within a field (of a spin box, of a list of choices) is named by the outer one.
    const bool inner = of->parent() && isControl(of->parent()->role());
    if (isControl(of->role()) && !inner) {
        ++found;
        EXPECT_FALSE(of->text(QAccessible::Name).trimmed().isEmpty()) << qPrintable(here);
    }
    if (dynamic_cast<AccessibleChart*>(of) || of->role() == QAccessible::List || of->role() == QAccessible::Table)
        return found;
    for (int i = 0; i < of->childCount(); ++i)
        found += controlsBelow(of->child(i), here, depth + 1);
    return found;
}

} // namespace

TEST(Accessible, TheChartIsATableOfStitches)
{
    Seat seat(12, 6, 12);
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    seat.window().canvas().setFocus();
    QAccessibleInterface* chart = QAccessible::queryAccessibleInterface(&seat.window().canvas());
    ASSERT_NE(chart, nullptr);
    EXPECT_EQ(chart->role(), QAccessible::Table);
    EXPECT_FALSE(nameOf(chart).isEmpty());
    QAccessibleTableInterface& table = tableOf(seat);
    EXPECT_EQ(table.rowCount(), 6);
    EXPECT_EQ(table.columnCount(), 12);
    EXPECT_EQ(chart->childCount(), 72);

    // Row, place and stitch, in the words of the chart; row 0 is knitted first, column 0 is at its start.
    QAccessibleInterface* stitch = table.cellAt(0, 4);
    ASSERT_NE(stitch, nullptr);
    EXPECT_EQ(stitch->role(), QAccessible::Cell);
    EXPECT_EQ(nameOf(stitch), QStringLiteral("Row 1 (RS), stitch 5: k, knit"));
    EXPECT_EQ(nameOf(table.cellAt(1, 0)), QStringLiteral("Row 2 (WS), stitch 1: k, purl"))
        << "purl on the chart is knitted on the wrong side";
    EXPECT_EQ(nameOf(table.cellAt(5, 11)), QStringLiteral("Row 6 (WS), stitch 12: no stitch"));
    EXPECT_EQ(stitch->text(QAccessible::Description), QStringLiteral("Row 1 (RS), 12 sts before, 12 after"));
    EXPECT_EQ(table.rowDescription(0), stitch->text(QAccessible::Description));
    EXPECT_EQ(table.columnDescription(4), QStringLiteral("Stitch 5"));

    // The tree leads back.
    EXPECT_EQ(stitch->parent(), chart);
    EXPECT_EQ(chart->indexOfChild(stitch), 4);
    EXPECT_EQ(chart->child(4), stitch);
    ASSERT_NE(stitch->tableCellInterface(), nullptr);
    EXPECT_EQ(stitch->tableCellInterface()->rowIndex(), 0);
    EXPECT_EQ(stitch->tableCellInterface()->columnIndex(), 4);
    const QRect place = stitch->rect();
    EXPECT_FALSE(place.isEmpty());
    EXPECT_EQ(chart->childAt(place.center().x(), place.center().y()), stitch);
    EXPECT_EQ(table.cellAt(6, 0), nullptr);
    EXPECT_EQ(table.cellAt(0, 12), nullptr);
}

TEST(Accessible, FollowsCursorSelectionAndEdits)
{
    Seat seat(12, 6, 12);
    Canvas& canvas = seat.window().canvas();
    canvas.setFocus();
    canvas.setCursor(At{2, 3});
    QAccessibleInterface* chart = QAccessible::queryAccessibleInterface(&canvas);
    QAccessibleInterface* focused = chart->focusChild();
    ASSERT_NE(focused, nullptr);
    EXPECT_TRUE(focused->state().focused);
    EXPECT_EQ(nameOf(focused), QStringLiteral("Row 3 (RS), stitch 3: no stitch"));
    seat.press(Qt::Key_Space);
    EXPECT_TRUE(nameOf(focused).endsWith(QStringLiteral(": k, knit"))) << qPrintable(nameOf(focused));
    canvas.select(Area{0, 1, 2, 4});
    QAccessibleTableInterface& table = tableOf(seat);
    EXPECT_EQ(table.selectedCellCount(), 6);
    EXPECT_EQ(table.selectedCells().size(), 6);
    EXPECT_TRUE(table.cellAt(1, 3)->state().selected);
    EXPECT_FALSE(table.cellAt(2, 3)->state().selected);
    EXPECT_TRUE(table.selectRow(4));
    EXPECT_EQ(table.selectedRows(), QList<int>{4});

    // A screen reader can go to a stitch.
    table.cellAt(3, 7)->actionInterface()->doAction(QAccessibleActionInterface::setFocusAction());
    EXPECT_EQ(canvas.cursor(), (At{3, 8}));
}

TEST(Accessible, RowsThatComeAndGoLeaveNoOldStitches)
{
    Seat seat(12, 6, 12);
    QAccessibleTableInterface& table = tableOf(seat);
    for (int row = 0; row < 6; ++row)
        ASSERT_NE(table.cellAt(row, 11), nullptr);
    seat.act(ActionId::AddColumn);
    EXPECT_EQ(table.columnCount(), 13);
    EXPECT_EQ(table.cellAt(5, 12)->tableCellInterface()->columnIndex(), 12);
    for (int index = 0; index < 6 * 13; ++index) {
        QAccessibleInterface* stitch = QAccessible::queryAccessibleInterface(&seat.window().canvas())->child(index);
        ASSERT_NE(stitch, nullptr);
        EXPECT_EQ(stitch->tableCellInterface()->rowIndex() * 13 + stitch->tableCellInterface()->columnIndex(),
                  index);
        EXPECT_FALSE(nameOf(stitch).isEmpty());
    }
    NewPattern small;
    small.rows = 2;
    small.columns = 3;
    ASSERT_TRUE(seat.window().newShawl(small));
    EXPECT_EQ(table.rowCount(), 2);
    EXPECT_EQ(table.cellAt(5, 2), nullptr);
}

TEST(Accessible, ABigChartMakesOnlyTheStitchesThatAreAskedFor)
{
    Seat seat(500, 600, 500);
    auto* chart =
        dynamic_cast<AccessibleChart*>(QAccessible::queryAccessibleInterface(&seat.window().canvas()));
    ASSERT_NE(chart, nullptr);
    EXPECT_EQ(chart->childCount(), 300000);
    const int before = chart->cellsMade();
    EXPECT_LT(before, 10);
    seat.window().canvas().setFocus();
    for (int i = 0; i < 20; ++i)
        seat.press(Qt::Key_Left);
    EXPECT_NE(chart->cellAt(599, 499), nullptr);
    EXPECT_LE(chart->cellsMade(), before + 22);
}

TEST(Accessible, EveryControlOfTheWindowHasAName)
{
    Seat seat;
    const int controls = controlsBelow(QAccessible::queryAccessibleInterface(&seat.window()), QString());
    EXPECT_GT(controls, 30);
    seat.window().showStartPage();
    EXPECT_GE(controlsBelow(QAccessible::queryAccessibleInterface(seat.window().startPage()), QString()), 4);
}

TEST(Accessible, EveryControlOfTheDialogsHasAName)
{
    Seat seat;
    using enum ActionId;
    for (const ActionId id : {NewShawl, ReadRows, ActionId::EarlierSaves, ExportChart, ExportWords, ExportPattern,
                              ReplaceStitch, PatternSettings, WordStyle, Yarns, SectionSettings, RowSettings,
                              PlainRows, StripedRows, ShortRowWedge, OwnStitch})
        seat.inDialog([&] { seat.act(id); },
                      [&](QDialog& dialog) {
                          const QString title = dialog.windowTitle();
                          EXPECT_FALSE(title.isEmpty());
                          EXPECT_GT(controlsBelow(QAccessible::queryAccessibleInterface(&dialog), title), 1)
                              << qPrintable(title);
                      });
}

} // namespace shawlwright::app
