// What every dialog promises: Tab goes as the eye does, no letter is there twice, and all of it is seen whatever is chosen.
#include "app/panels/form_dialog.h"
#include "tests/app/window/every_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPointer>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>

#include <map>

namespace shawlwright::app {

namespace {

std::string called(const QWidget* widget)
{
    return std::string(widget->metaObject()->className()) + " " + widget->objectName().toStdString() + " " +
           widget->accessibleName().toStdString();
}

// Lines go downwards, each from the left; a column to its end before the next.
bool isBefore(const QRect& one, const QRect& other)
{
    const bool onOneLine = one.top() <= other.center().y() && other.top() <= one.center().y();
    if (onOneLine)
        return one.left() < other.left();
    return other.top() > one.top() || other.left() > one.right();
}

void walkByTab(const std::string& name, QDialog& dialog)
{
    QWidget* first = dialog.focusWidget();
    ASSERT_NE(first, nullptr) << name;
    const auto* buttons = dialog.findChild<QDialogButtonBox*>();
    QWidget* at = first;
    int steps = 0;
    for (; steps < 80; ++steps) {
        QTest::keyClick(at, Qt::Key_Tab);
        QWidget* next = dialog.focusWidget();
        if (next == first || next == at)
            break;
        const auto placed = [&](const QWidget* widget) { return QRect(widget->mapTo(&dialog, QPoint()), widget->size()); };
        // Behind the last button it begins anew; a bar of tabs may come first.
        if (at != buttons->buttons().last() && !qobject_cast<QTabBar*>(at)) {
            EXPECT_TRUE(isBefore(placed(at), placed(next))) << name << ": from " << called(at) << " to " << called(next);
        }
        at = next;
    }
    EXPECT_LT(steps, 80) << name << " never comes round";
}

void lettersOnce(const std::string& name, const QDialog& dialog)
{
    static const QRegularExpression letter(QStringLiteral("(?<!&)&([^&\\s])"));
    std::map<QString, QString> letters;
    for (const QWidget* widget : dialog.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&dialog))
            continue;
        const auto* label = qobject_cast<const QLabel*>(widget);
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const QString text = label && label->buddy() ? label->text() : button ? button->text() : QString();
        if (const auto match = letter.match(text); match.hasMatch()) {
            const auto [before, fresh] = letters.emplace(match.captured(1).toLower(), text);
            EXPECT_TRUE(fresh) << name << ": " << qPrintable(before->second) << " and " << qPrintable(text);
        }
    }
}

void allIsSeen(const std::string& name, QDialog& dialog)
{
    auto* body = dialog.findChild<QScrollArea*>(QStringLiteral("formBody"));
    if (!body)
        return;
    const QSize room = dialog.screen()->availableGeometry().size() - QSize(20, 52);
    if (dialog.width() < room.width()) {
        EXPECT_LE(body->widget()->minimumSizeHint().width(), body->viewport()->width()) << name << " is cut at its sides";
        EXPECT_FALSE(body->horizontalScrollBar()->isVisible()) << name << " scrolls sideways";
    }
    if (dialog.height() >= room.height())
        return;
    EXPECT_FALSE(body->verticalScrollBar()->isVisible())
        << name << " scrolls with room to spare: " << dialog.height() << " of " << room.height() << ", shows "
        << body->viewport()->height() << " of " << body->widget()->height();
    for (const QLabel* label : dialog.findChildren<QLabel*>()) // words are shown whole
        if (label->isVisible() && label->wordWrap() && !label->text().isEmpty()) {
            const int needed = label->heightForWidth(label->width());
            EXPECT_GE(label->height(), needed) << name << ": " << qPrintable(label->text());
            if (label->parentWidget()->objectName() == QStringLiteral("formInside") && label->objectName() == QStringLiteral("soft")) {
                EXPECT_LE(label->height(), needed + 8) << name << " has gaps around " << qPrintable(label->text());
            }
        }
}

// Each choice of each box, as many as show lines of their own.
void withEveryChoice(QDialog& dialog, const std::function<void()>& look)
{
    QList<QPointer<QComboBox>> boxes; // a choice may put other fields in place of these
    for (QComboBox* box : dialog.findChildren<QComboBox*>())
        boxes << box;
    for (const QPointer<QComboBox>& box : boxes) {
        if (!box)
            continue;
        const int was = box->currentIndex();
        for (int choice = 0; choice < std::min(6, box->count()); ++choice) {
            if (!box->isVisible() || !box->isEnabled())
                continue;
            box->setCurrentIndex(choice);
            QApplication::processEvents();
            look();
        }
        box->setCurrentIndex(was);
        QApplication::processEvents();
    }
}

} // namespace

TEST(EveryDialog, TabGoesInTheOrderOfReading)
{
    Seat seat;
    prepareForDialogs(seat);
    int walked = 0;
    inEveryDialog(seat, [&](const std::string& name, QDialog& dialog) {
        ++walked;
        walkByTab(name, dialog);
        if (auto* until = dialog.findChild<QComboBox*>(QStringLiteral("until"))) { // lines that come and go
            until->setCurrentIndex(until->count() - 1);
            QApplication::processEvents();
            walkByTab(name, dialog);
        }
    });
    EXPECT_GE(walked, 21);
}

TEST(EveryDialog, HasNoLetterTwice)
{
    Seat seat;
    prepareForDialogs(seat);
    inEveryDialog(seat, [&](const std::string& name, QDialog& dialog) {
        lettersOnce(name, dialog);
        if (auto* tabs = dialog.findChild<QTabWidget*>())
            for (int page = 0; page < tabs->count(); ++page) {
                tabs->setCurrentIndex(page);
                lettersOnce(name, dialog);
            }
        withEveryChoice(dialog, [&] { lettersOnce(name, dialog); });
    });
}

TEST(EveryDialog, GrowsWithWhatIsChosen)
{
    Seat seat;
    prepareForDialogs(seat);
    inEveryDialog(seat, [&](const std::string& name, QDialog& dialog) {
        QApplication::processEvents();
        allIsSeen(name, dialog);
        withEveryChoice(dialog, [&] { allIsSeen(name, dialog); });
    });
}

TEST(EveryDialog, GrowsWithWhatIsChosenInLargeText)
{
    Seat seat;
    prepareForDialogs(seat);
    const auto textTo = [&](ActionId act, int pixels) {
        for (int i = 0; i < 12 && seat.window().action(act)->isEnabled() && QApplication::font().pixelSize() != pixels; ++i)
            seat.act(act);
    };
    textTo(ActionId::LargerText, 26);
    ASSERT_EQ(QApplication::font().pixelSize(), 26);
    inEveryDialog(seat, [&](const std::string& name, QDialog& dialog) {
        QApplication::processEvents();
        allIsSeen(name, dialog);
        withEveryChoice(dialog, [&] { allIsSeen(name, dialog); });
    });
    textTo(ActionId::SmallerText, 13);
}

TEST(Dialogs, LeaveTheRowInSightThatIsAskedAbout)
{
    Seat seat;
    seat.window().resize(780, 700);
    prepareForDialogs(seat);
    for (const int row : {0, 7}) { // below in the window, and above
        seat.window().activateWindow();
        seat.window().canvas().setFocus();
        seat.window().canvas().setCursor(At{row, 10});
        seat.window().canvas().select(Area{row, row, 3, 4});
        seat.settle();
        seat.inDialog([&] { seat.act(ActionId::RepeatSelection); },
                      [&](QDialog& dialog) {
                          Canvas& canvas = seat.window().canvas();
                          const QRect cell = canvas.cellRectOnViewport(canvas.cursor().row, canvas.cursor().column);
                          const QRect onScreen(canvas.viewport()->mapToGlobal(cell.topLeft()), cell.size());
                          const QRect at = dialog.frameGeometry();
                          EXPECT_FALSE(at.intersects(onScreen))
                              << "row at " << onScreen.top() << ", dialog from " << at.top() << " to " << at.bottom();
                      });
    }
}

} // namespace shawlwright::app
