// The rescue copy: what a crash leaves behind is offered until somebody says what becomes of it.
#include "app/window/rescue_copy.h"
#include "core/edits/paint.h"
#include "core/edits/sections.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTest>

namespace shawlwright::app {

namespace {

// A document with unsaved work, as it stands when its program is killed.
struct Killed {
    explicit Killed(const QString& folder, const char* title = "Harbour lights", const QString& savedAs = {})
    {
        NewPattern wishes;
        wishes.title = title;
        document.startNew(newPattern(wishes));
        if (!savedAs.isEmpty()) {
            EXPECT_EQ(document.save(savedAs), std::nullopt);
        }
        RescueCopy copy(document, folder);
        const At one[] = {At{0, 1}};
        document.performOrTell(shawlwright::paint(document.pattern(), document.catalogue(),
                                                  document.pattern().sections.front().id, one,
                                                  document.catalogue().require("k2tog")));
        copy.writeNow();
        bytes = document.bytes();
        // The copy of a killed program stays; here it is put back after the clean end has taken it.
        QFile file(copy.path());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray held = file.readAll();
        EXPECT_EQ(held, bytes);
        left = QDir(folder).filePath(QStringLiteral("left-behind.shawl"));
        QFile stays(left);
        EXPECT_TRUE(stays.open(QIODevice::WriteOnly));
        stays.write(held);
        QFile::copy(copy.path() + QStringLiteral(".name"), left + QStringLiteral(".name"));
        path = copy.path();
    }
    PatternDocument document;
    QByteArray bytes;
    QString left, path;
};

} // namespace

TEST(RescueCopy, GoesOnACleanEnd)
{
    QTemporaryDir folder;
    const Killed killed(folder.path());
    EXPECT_FALSE(QFile::exists(killed.path));
    EXPECT_FALSE(QFile::exists(killed.path + QStringLiteral(".lock")));
}

TEST(RescueCopy, IsWrittenByItselfAndGoesWhenSaved)
{
    Seat seat;
    QTemporaryDir folder;
    seat.window().keepRescueCopies(folder.path());
    RescueCopy& copy = *seat.window().rescueCopy();
    copy.setDelay(10);
    EXPECT_FALSE(QFile::exists(copy.path()));
    seat.paintRow(0, "k");
    EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(copy.path()); }));
    const QString path = seat.path("kept.shawl");
    seat.window().questions().savePath = [&](const QString&) { return path; };
    seat.act(ActionId::Save);
    EXPECT_FALSE(QFile::exists(copy.path()));
}

TEST(RescueCopy, ARunningWindowsCopyIsNotOffered)
{
    QTemporaryDir folder;
    Seat seat;
    seat.window().keepRescueCopies(folder.path());
    seat.paintRow(0, "k");
    seat.window().rescueCopy()->writeNow();
    ASSERT_TRUE(QFile::exists(seat.window().rescueCopy()->path()));
    PatternDocument other;
    const RescueCopy second(other, folder.path());
    EXPECT_TRUE(second.leftBehind().empty());
}

TEST(RescueCopy, IsOfferedAgainUntilAnswered)
{
    QTemporaryDir folder;
    const Killed killed(folder.path());
    Seat seat;
    seat.window().keepRescueCopies(folder.path());
    int asked = 0;
    Rescued answer = Rescued::AskAgain;
    seat.window().questions().rescued = [&](const QString& name, const QDateTime&) {
        EXPECT_EQ(name, QStringLiteral("Harbour lights"));
        ++asked;
        return answer;
    };
    seat.window().offerRescued();
    seat.window().offerRescued();
    EXPECT_EQ(asked, 2);
    EXPECT_TRUE(QFile::exists(killed.left));

    answer = Rescued::OpenIt;
    seat.window().offerRescued();
    EXPECT_EQ(seat.document().bytes(), killed.bytes);
    EXPECT_TRUE(seat.document().modified()) << "what was rescued is not saved yet";
    EXPECT_TRUE(seat.document().path().isEmpty());
    EXPECT_FALSE(QFile::exists(killed.left));
    EXPECT_TRUE(QFile::exists(seat.window().rescueCopy()->path())) << "the work has a copy at every moment";
    seat.window().offerRescued();
    EXPECT_EQ(asked, 3);
}

// What a copy is called must not decide whether it is offered.
TEST(RescueCopy, IsOfferedWithoutATitleAndUnderItsFilesName)
{
    QTemporaryDir folder, files;
    const Killed untitled(folder.path(), "");
    PatternDocument other;
    {
        const RescueCopy next(other, folder.path());
        const std::vector<LeftBehind> left = next.leftBehind();
        ASSERT_EQ(left.size(), 1u);
        EXPECT_TRUE(left.front().name.isEmpty());
    }
    QFile::remove(untitled.left);
    const Killed saved(folder.path(), "", files.filePath(QStringLiteral("rockpool.shawl")));
    {
        const RescueCopy next(other, folder.path());
        const std::vector<LeftBehind> left = next.leftBehind();
        ASSERT_EQ(left.size(), 1u);
        EXPECT_EQ(left.front().name, QStringLiteral("rockpool"));
    }
    Seat seat;
    seat.window().keepRescueCopies(folder.path());
    int asked = 0;
    seat.window().questions().rescued = [&](const QString& name, const QDateTime&) {
        EXPECT_EQ(name, QStringLiteral("rockpool"));
        ++asked;
        return Rescued::OpenIt;
    };
    seat.window().offerRescued();
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(seat.document().bytes(), saved.bytes);
    EXPECT_EQ(seat.document().displayName(), QStringLiteral("rockpool"));
    EXPECT_TRUE(seat.document().path().isEmpty()) << "the saved file stays as it is";
    EXPECT_FALSE(QFile::exists(saved.left + QStringLiteral(".name")));
}

TEST(RescueCopy, ThatCantBeReadIsOfferedTooAndStaysWithTheReasonTold)
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("half.shawl"));
    {
        QFile half(path);
        ASSERT_TRUE(half.open(QIODevice::WriteOnly));
        half.write("{ \"format\": 1, \"sec");
    }
    Seat seat;
    seat.window().keepRescueCopies(folder.path());
    int told = 0;
    seat.window().questions().rescued = [](const QString&, const QDateTime&) { return Rescued::OpenIt; };
    seat.window().questions().failed = [&](const QString&, const QString& why) {
        EXPECT_FALSE(why.isEmpty());
        ++told;
    };
    seat.window().offerRescued();
    EXPECT_EQ(told, 1);
    EXPECT_TRUE(QFile::exists(path));
}

TEST(RescueCopy, IsThrownAwayWhereWanted)
{
    QTemporaryDir folder;
    const Killed killed(folder.path());
    Seat seat;
    seat.window().keepRescueCopies(folder.path());
    seat.window().questions().rescued = [](const QString&, const QDateTime&) { return Rescued::ThrowAway; };
    seat.window().offerRescued();
    EXPECT_FALSE(QFile::exists(killed.left));
    EXPECT_EQ(seat.pattern().head.title, "New shawl");
}

} // namespace shawlwright::app
