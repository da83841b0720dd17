// The start page: how to begin, files that are there and gone, samples, and files that are dropped.
#include "app/window/start_page.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QDropEvent>
#include <QFile>
#include <QListWidget>
#include <QMimeData>
#include <QSettings>
#include <QTest>
#include <QUrl>

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
    lately.recent().setCurrentRow(0);
    QTest::keyClick(&lately.recent(), Qt::Key_Return);
    lately.seat.settle();
    EXPECT_TRUE(lately.seat.window().startPageShown()) << "there is nothing to open";

    QTest::keyClick(&lately.recent(), Qt::Key_Delete);
    EXPECT_EQ(lately.recent().count(), 1);
    EXPECT_EQ(QSettings().value(QStringLiteral("recent")).toStringList(), QStringList{lately.there});

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
    samples.setCurrentRow(0);
    QTest::keyClick(&samples, Qt::Key_Return);
    lately.seat.settle();
    EXPECT_FALSE(lately.seat.window().startPageShown());
    EXPECT_TRUE(lately.seat.document().path().isEmpty()) << "the sample stays as it came";
    EXPECT_FALSE(lately.seat.document().modified());
    EXPECT_GT(lately.seat.pattern().sections.size(), 1u);
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
