// Where the keys go: into the first field of each dialog, and to a menu while it is open.
#include "app/panels/form_dialog.h"
#include "core/edits/marks.h"
#include "tests/app/window/every_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QSpinBox>
#include <QTabWidget>
#include <QTest>

#include <algorithm>

namespace shawlwright::app {

TEST(Dialogs, OpenInTheirFirstFieldWithItsTextSelected)
{
    Seat seat;
    prepareForDialogs(seat);
    int walked = 0;
    for (const ActionId id : askingActions()) {
        const std::string name = actionEntry(id).text;
        ASSERT_TRUE(seat.window().action(id)->isEnabled()) << name;
        seat.inDialog([&] { seat.act(id); },
                      [&](QDialog& dialog) {
                          QWidget* focus = dialog.focusWidget();
                          ASSERT_NE(focus, nullptr) << name;
                          const auto* buttons = dialog.findChild<QDialogButtonBox*>();
                          ASSERT_NE(buttons, nullptr) << name;
                          const bool nothingToAsk = id == ActionId::EarlierSaves; // nothing is saved yet
                          EXPECT_EQ(buttons->isAncestorOf(focus), nothingToAsk) << name;
                          EXPECT_FALSE(qobject_cast<QPushButton*>(focus) && !nothingToAsk) << name;
                          const auto* text = qobject_cast<QPlainTextEdit*>(focus);
                          EXPECT_FALSE(text && text->isReadOnly()) << name;
                          if (const auto* line = qobject_cast<QLineEdit*>(focus)) {
                              EXPECT_EQ(line->selectedText(), line->text()) << name;
                          }
                          if (const auto* number = qobject_cast<QSpinBox*>(focus)) {
                              EXPECT_TRUE(number->findChild<QLineEdit*>()->hasSelectedText()) << name;
                          }
                          ++walked;
                      });
    }
    EXPECT_GE(walked, 18);
}

TEST(Dialogs, WhatIsTypedAtOnceIsTheAnswer)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::NewShawl); },
                  [](QDialog& dialog) {
                      QTest::keyClicks(dialog.focusWidget(), QStringLiteral("Sea foam"));
                      EXPECT_TRUE(dialog.isVisible()) << "the space pressed a button";
                      EXPECT_EQ(field<QLineEdit>(dialog, "title").text(), QStringLiteral("Sea foam"));
                  });
    seat.window().canvas().select(Area{0, 1, 1, 4});
    seat.settle();
    seat.inDialog([&] { seat.act(ActionId::RepeatSelectedRows); },
                  [](QDialog& dialog) {
                      QTest::keyClicks(dialog.focusWidget(), QStringLiteral("3"));
                      EXPECT_EQ(field<QLineEdit>(dialog, "times").text(), QStringLiteral("3"));
                      Seat::take(dialog);
                  });
    ASSERT_EQ(seat.section().frame.brackets.size(), 1u);
    EXPECT_EQ(seat.section().frame.brackets.front().times, Quantity(3));
}

TEST(Dialogs, CtrlTabGoesThroughTheTabs)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::PatternSettings); },
                  [](QDialog& dialog) {
                      auto* tabs = dialog.findChild<QTabWidget*>();
                      ASSERT_NE(tabs, nullptr);
                      const int count = tabs->count();
                      QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab, Qt::ControlModifier);
                      EXPECT_EQ(tabs->currentIndex(), 1);
                      dialog.findChild<QPushButton*>()->setFocus();
                      QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab, Qt::ControlModifier);
                      EXPECT_EQ(tabs->currentIndex(), 2 % count);
                  });
}

TEST(Dialogs, FitTheScreenAndKeepTheirButtonsInSightAtAnySize)
{
    Seat seat;
    prepareForDialogs(seat);
    while (seat.window().action(ActionId::LargerText)->isEnabled() && QApplication::font().pixelSize() < 32) {
        const int before = QApplication::font().pixelSize();
        seat.act(ActionId::LargerText);
        if (QApplication::font().pixelSize() == before)
            break;
    }
    ASSERT_GE(QApplication::font().pixelSize(), 26);
    const QRect screen = seat.window().screen()->availableGeometry();
    for (const ActionId id : askingActions()) {
        const std::string name = actionEntry(id).text;
        seat.inDialog([&] { seat.act(id); },
                      [&](QDialog& dialog) {
                          EXPECT_LE(dialog.width(), screen.width()) << name;
                          EXPECT_LE(dialog.height(), screen.height()) << name;
                          const auto* buttons = dialog.findChild<QDialogButtonBox*>();
                          const QRect at(buttons->mapTo(&dialog, QPoint()), buttons->size());
                          EXPECT_TRUE(dialog.rect().contains(at)) << name;
                          EXPECT_GE(buttons->height(), buttons->sizeHint().height()) << name;
                      });
    }
    while (QApplication::font().pixelSize() > 13) {
        const int before = QApplication::font().pixelSize();
        seat.act(ActionId::SmallerText);
        if (QApplication::font().pixelSize() == before)
            break;
    }
}

TEST(ChartAlone, SaysHowTheRestComesBackAndEscBringsIt)
{
    Seat seat;
    seat.window().canvas().setFocus();
    seat.act(ActionId::ChartAlone);
    EXPECT_FALSE(seat.window().menuBar()->isVisible());
    const auto labels = seat.window().findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().contains(QStringLiteral("Esc"));
    }));
    QTest::keyClick(&seat.window().canvas(), Qt::Key_Escape);
    EXPECT_TRUE(seat.window().menuBar()->isVisible());
    EXPECT_FALSE(seat.window().action(ActionId::ChartAlone)->isChecked());
}

TEST(Copy, OfSomeStitchesGivesOtherProgramsThoseAlone)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.window().canvas().setFocus();
    seat.window().canvas().select(Area{0, 0, 4, 6});
    seat.settle();
    seat.act(ActionId::Copy);
    const QString part = QApplication::clipboard()->text();
    EXPECT_TRUE(part.contains(QStringLiteral("k3"))) << qPrintable(part);
    EXPECT_FALSE(part.contains(QStringLiteral("sts"))) << qPrintable(part);
    seat.window().canvas().select(Area{0, 0, 1, 20});
    seat.settle();
    seat.act(ActionId::Copy);
    EXPECT_FALSE(QApplication::clipboard()->text().contains(QStringLiteral("k3"))); // a whole row, as it is written
}

TEST(Menus, LettersAndDigitsAreTheirsWhileOneIsOpen)
{
    Seat seat;
    Canvas& canvas = seat.window().canvas();
    canvas.setFocus();
    const StitchId brush = canvas.brush();
    QMenu* view = nullptr;
    for (QAction* one : seat.window().menuBar()->actions())
        if (one->text() == menuTitle(MenuId::View))
            view = one->menu();
    ASSERT_NE(view, nullptr);
    view->popup(seat.window().mapToGlobal(QPoint(20, 20)));
    ASSERT_EQ(QApplication::activePopupWidget(), view);
    // The override goes to the focus, as a desktop's key does; what is taken is no shortcut any more.
    for (const int key : {Qt::Key_S, Qt::Key_A, Qt::Key_M, Qt::Key_6, Qt::Key_0}) {
        QKeyEvent override(QEvent::ShortcutOverride, key, Qt::NoModifier, QString(QChar(key)));
        override.ignore();
        QApplication::sendEvent(&canvas, &override);
        EXPECT_TRUE(override.isAccepted()) << key;
        if (view->isVisible() && key != Qt::Key_A)
            QTest::keyClick(&canvas, static_cast<Qt::Key>(key));
    }
    view->close();
    EXPECT_EQ(canvas.tool(), CanvasTool::Paint);
    EXPECT_EQ(canvas.brush(), brush);
    QTest::keyClick(&canvas, Qt::Key_S); // closed, they are tools again
    EXPECT_EQ(canvas.tool(), CanvasTool::Select);
}

TEST(Focus, UndoPressedInAFieldWithNothingToTakeBackIsThePatterns)
{
    Seat seat;
    seat.act(ActionId::FindStitch);
    auto* field = seat.window().findChild<QLineEdit*>(QStringLiteral("find"));
    ASSERT_NE(field, nullptr);
    const auto takes = [field] {
        QKeyEvent override(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier, QString());
        override.ignore();
        QApplication::sendEvent(field, &override);
        return override.isAccepted();
    };
    EXPECT_FALSE(takes());
    QTest::keyClicks(field, QStringLiteral("yo"));
    EXPECT_TRUE(takes()); // its own letters first
}

// An override that is taken is no key press any more on a display: Return would not choose.
TEST(Menus, ReturnInAnOpenListIsTheLists)
{
    Seat seat;
    seat.inDialog([&] { seat.act(ActionId::ShortRowWedge); },
                  [](QDialog& dialog) {
                      auto* list = dialog.findChild<QComboBox*>();
                      ASSERT_NE(list, nullptr);
                      list->showPopup();
                      ASSERT_NE(QApplication::activePopupWidget(), nullptr);
                      QKeyEvent override(QEvent::ShortcutOverride, Qt::Key_Return, Qt::NoModifier);
                      override.ignore();
                      QApplication::sendEvent(list->view(), &override);
                      EXPECT_FALSE(override.isAccepted());
                      list->hidePopup();
                      dialog.reject();
                  });
}

} // namespace shawlwright::app
