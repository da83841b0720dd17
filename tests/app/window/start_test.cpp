// The start page: how to begin, files that are there and gone, samples, and files that are dropped.
#include "app/window/start_page.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QGuiApplication>
#include <QLabel>
#include <QListWidget>
#include <QMenuBar>
#include <QMimeData>
#include <QPushButton>
#include <QSettings>
#include <QTest>
#include <QToolButton>
#include <QUrl>

#include <map>

namespace shawlwright::app {

namespace {

// Saved lately: one that is there, and one that is gone.
struct Lately {
    Lately() : there(seat.path("there.shawl")), gone(seat.path("gone.shawl"))
    {
        seat.window().questions().savePath = [this](const QString&) { return there; };
        seat.paintRow(0, "k");
        seat.act(ActionId::Save);
        QSettings().setValue(QStringLiteral("recent"), QStringList{gone, there});
        seat.window().newShawl({});
        seat.window().showStartPage();
        seat.settle();
    }
    QListWidget& recent() { return *seat.window().startPage()->recentList(); }

    Seat seat;
    QString there, gone;
};

} // namespace

TEST(StartPage, ListsWhatIsThereAndWhatIsGone)
{
    Lately lately;
    ASSERT_TRUE(lately.seat.window().startPageShown());
    ASSERT_EQ(lately.recent().count(), 2);
    EXPECT_TRUE(lately.recent().item(0)->text().contains(QStringLiteral("no longer")))
        << "the colour alone says nothing to some";
    EXPECT_NE(lately.recent().item(0)->foreground(), lately.recent().item(1)->foreground());
    lately.recent().setFocus();
    lately.recent().setCurrentRow(0);
    QTest::keyClick(&lately.recent(), Qt::Key_Return);
    lately.seat.settle();
    EXPECT_TRUE(lately.seat.window().startPageShown()) << "there is nothing to open";

    QTest::keyClick(&lately.recent(), Qt::Key_Delete);
    EXPECT_EQ(lately.recent().count(), 1);
    EXPECT_EQ(QSettings().value(QStringLiteral("recent")).toStringList(), QStringList{lately.there});

    lately.recent().setFocus();
    lately.recent().setCurrentRow(0);
    QTest::keyClick(&lately.recent(), Qt::Key_Return);
    lately.seat.settle();
    EXPECT_FALSE(lately.seat.window().startPageShown());
    EXPECT_EQ(lately.seat.document().path(), lately.there);
}

TEST(StartPage, KeepsKeysFromWhatItCovers)
{
    Lately lately;
    EXPECT_FALSE(lately.seat.window().canvas().isEnabled());
    EXPECT_FALSE(lately.seat.window().canvas().hasFocus());
    lately.seat.window().startPage()->setFocus();
    lately.seat.press(Qt::Key_Escape);
    EXPECT_FALSE(lately.seat.window().startPageShown());
    EXPECT_TRUE(lately.seat.window().canvas().isEnabled());
    EXPECT_TRUE(lately.seat.window().canvas().hasFocus());
    lately.seat.act(ActionId::StartPage);
    EXPECT_TRUE(lately.seat.window().startPageShown());
}

TEST(StartPage, ASampleIsOpenedAsACopy)
{
    Lately lately;
    const QString sample = QStringLiteral(SHAWLWRIGHT_SOURCE "/samples/rockpool.shawl");
    lately.seat.window().startPage()->setSamples({sample});
    QListWidget& samples = *lately.seat.window().startPage()->sampleList();
    ASSERT_EQ(samples.count(), 1);
    samples.setFocus();
    samples.setCurrentRow(0);
    QTest::keyClick(&samples, Qt::Key_Return);
    lately.seat.settle();
    EXPECT_FALSE(lately.seat.window().startPageShown());
    EXPECT_TRUE(lately.seat.document().path().isEmpty()) << "the sample stays as it came";
    EXPECT_FALSE(lately.seat.document().modified());
    EXPECT_GT(lately.seat.pattern().sections.size(), 1u);
}

TEST(StartPage, ReturnPressesTheButtonThatHasTheKeys)
{
    Lately lately;
    lately.seat.window().startPage()->setFocus();
    for (QPushButton* button : lately.seat.window().startPage()->findChildren<QPushButton*>())
        if (button->text().contains(QStringLiteral("chart")))
            button->setFocus(Qt::TabFocusReason);
    lately.seat.press(Qt::Key_Return);
    EXPECT_FALSE(lately.seat.window().startPageShown());
    // Those of the panels as well.
    for (QToolButton* button : lately.seat.window().findChildren<QToolButton*>(QStringLiteral("quiet")))
        if (button->text() == QStringLiteral("Copy"))
            button->setFocus(Qt::TabFocusReason);
    QGuiApplication::clipboard()->clear();
    lately.seat.press(Qt::Key_Return);
    EXPECT_FALSE(QGuiApplication::clipboard()->text().isEmpty());
}

TEST(StartPage, ItsLettersAreNotTakenByTheMenus)
{
    Seat seat;
    std::map<QKeySequence, QString> taken;
    for (const QAction* menu : seat.window().menuBar()->actions())
        taken[QKeySequence::mnemonic(menu->text())] = menu->text();
    for (const ActionEntry& entry : actionTable())
        for (const QKeySequence& keys : seat.window().action(entry.id)->shortcuts())
            taken[keys] = seat.window().action(entry.id)->text();
    seat.window().showStartPage();
    int seen = 0;
    const auto check = [&](const QString& text) {
        const QKeySequence letter = QKeySequence::mnemonic(text);
        if (letter.isEmpty())
            return;
        ++seen;
        const auto [at, fresh] = taken.emplace(letter, text);
        EXPECT_TRUE(fresh) << qPrintable(letter.toString()) << ": " << qPrintable(at->second) << " and " << qPrintable(text);
    };
    for (const QPushButton* button : seat.window().startPage()->findChildren<QPushButton*>())
        check(button->text());
    for (const QLabel* label : seat.window().startPage()->findChildren<QLabel*>())
        check(label->text());
    EXPECT_GE(seen, 6);
}

TEST(StartPage, ADroppedPictureIsToldWhatCanBeDropped)
{
    Seat seat;
    QMimeData dropped;
    dropped.setUrls({QUrl::fromLocalFile(seat.path("swatch.jpg"))});
    QDragEnterEvent enter(QPoint(100, 300), Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&seat.window(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(100, 300), Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    drop.setAccepted(false);
    QCoreApplication::sendEvent(&seat.window(), &drop);
    EXPECT_FALSE(drop.isAccepted());
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral("swatch.jpg"))) << qPrintable(seat.window().statusLeft());
    EXPECT_TRUE(seat.window().statusLeft().contains(QStringLiteral(".shawl")));
}

TEST(StartPage, DroppedFilesOpen)
{
    Lately lately;
    QMimeData dropped;
    dropped.setUrls({QUrl::fromLocalFile(lately.there), QUrl::fromLocalFile(lately.gone)});
    QStringList elsewhere;
    QObject::connect(&lately.seat.window(), &MainWindow::anotherWindowWanted,
                     [&](const QString& path) { elsewhere << path; });
    QDragEnterEvent enter(QPoint(100, 300), Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&lately.seat.window(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(100, 300), Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&lately.seat.window(), &drop);
    lately.seat.settle();
    EXPECT_EQ(lately.seat.document().path(), lately.there);
    EXPECT_EQ(elsewhere, QStringList{lately.gone});
}

} // namespace shawlwright::app
