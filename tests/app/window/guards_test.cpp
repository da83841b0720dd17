// Nothing lost: files that another window holds or another program changes, earlier saves, failed saves, and
// settings that a killed program still knows.
#include "app/document/earlier_saves.h"
#include "app/window/earlier_saves_dialog.h"
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QListWidget>
#include <QProcess>
#include <QSettings>
#include <QTest>

#include <csignal>
#include <sys/resource.h>

namespace shawlwright::app {

namespace {

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void writeRaw(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

// A seat at a saved shawl.
struct Saved {
    explicit Saved(const char* name = "shared.shawl") : path(seat.path(name))
    {
        seat.paintRow(0, "k");
        seat.window().questions().savePath = [this](const QString&) { return path; };
        seat.act(ActionId::Save);
        seat.window().questions().differs = [this](const QString&, OnDisk now, bool) {
            ++asked;
            told = now;
            return answer;
        };
        look();
    }
    void look() // as often as it takes for a change to be taken for one that is over
    {
        for (int i = 0; i < 3; ++i)
            seat.window().lookAtFile();
    }
    // Another program's change: the same shawl with another title.
    void changeOutside(const char* title)
    {
        Pattern theirs = seat.pattern();
        theirs.head.title = title;
        PatternDocument other;
        other.startNew(theirs);
        writeRaw(path, other.bytes());
    }

    Seat seat;
    QString path;
    int asked = 0;
    OnDisk told = OnDisk::Same;
    Differs answer = Differs::KeepMine;
};

} // namespace

TEST(Guards, ASecondWindowOpensToReadOnlyOrAsACopy)
{
    Saved first;
    MainWindow second;
    QString holder;
    OpenElsewhere answer = OpenElsewhere::NotNow;
    int asked = 0;
    second.questions().openElsewhere = [&](const QString& name, const QString& by) {
        EXPECT_EQ(name, QStringLiteral("shared"));
        holder = by;
        ++asked;
        return answer;
    };
    second.questions().savePath = [](const QString&) { return QString(); };
    EXPECT_FALSE(second.openPath(first.path));
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(holder, QStringLiteral("this computer"));

    answer = OpenElsewhere::ReadOnly;
    ASSERT_TRUE(second.openPath(first.path));
    EXPECT_TRUE(second.document().readOnly());
    EXPECT_TRUE(second.windowTitle().contains(QStringLiteral("read only"))) << qPrintable(second.windowTitle());
    const Pattern before = second.document().pattern();
    second.canvas().selectAll();
    second.action(ActionId::FillSelection)->trigger();
    EXPECT_TRUE(second.document().pattern() == before) << "it is to be read only";
    EXPECT_TRUE(second.statusLeft().contains(QStringLiteral("read only"))) << qPrintable(second.statusLeft());
    int named = 0;
    const QString elsewhere = first.seat.path("elsewhere.shawl");
    second.questions().savePath = [&](const QString&) {
        ++named;
        return named == 1 ? first.path : elsewhere; // at first the very file
    };
    QString told;
    second.questions().failed = [&](const QString&, const QString& sentence) { told = sentence; };
    const QByteArray held = contentOf(first.path);
    second.action(ActionId::Save)->trigger();
    EXPECT_TRUE(told.contains(QStringLiteral("another window"))) << qPrintable(told);
    EXPECT_EQ(contentOf(first.path), held);
    second.action(ActionId::Save)->trigger();
    EXPECT_TRUE(QFile::exists(elsewhere));
    EXPECT_FALSE(second.document().readOnly());

    answer = OpenElsewhere::Copy;
    ASSERT_TRUE(second.openPath(first.path));
    EXPECT_TRUE(second.document().path().isEmpty());
    EXPECT_TRUE(second.document().displayName().contains(QStringLiteral("copy")));
    EXPECT_FALSE(second.document().readOnly());

    // Once the first window has something else, the file is free.
    ASSERT_TRUE(first.seat.window().newShawl({}));
    asked = 0;
    ASSERT_TRUE(second.openPath(first.path));
    EXPECT_EQ(asked, 0);
    EXPECT_TRUE(second.close());
    EXPECT_FALSE(QFile::exists(lockPath(first.path))) << "nothing is left lying";
}

TEST(Guards, ALinkIsTheSameFile)
{
    Saved first;
    const QString link = first.seat.path("link.shawl");
    ASSERT_TRUE(QFile::link(first.path, link));
    FileLock other;
    EXPECT_EQ(other.take(link), Hold::TakenByAnother);
}

TEST(Guards, TheLockOfAProcessThatIsGoneIsTakenOver)
{
    Seat seat;
    const QString path = seat.path("left.shawl");
    writeRaw(path, seat.document().bytes());
    QProcess gone; // its number is free again once it has been waited for
    gone.start(QStringLiteral("/bin/true"), QStringList());
    ASSERT_TRUE(gone.waitForStarted());
    const qint64 process = gone.processId();
    gone.waitForFinished();
    writeRaw(lockPath(path), QByteArray::number(process) + "\nshawlwright\n" +
                                 QSysInfo::machineHostName().toUtf8() + "\n" + QSysInfo::machineUniqueId() +
                                 "\n" + QSysInfo::bootUniqueId() + "\n");
    seat.window().questions().openElsewhere = [](const QString&, const QString&) {
        ADD_FAILURE() << "nobody has it";
        return OpenElsewhere::NotNow;
    };
    EXPECT_TRUE(seat.window().openPath(path));
    EXPECT_FALSE(seat.document().readOnly());
}

TEST(Guards, OnesOwnSaveAndATouchedFileRaiseNothing)
{
    Saved shawl;
    for (int i = 0; i < 3; ++i) {
        shawl.seat.paintRow(i + 1, "p");
        shawl.seat.act(ActionId::Save);
        shawl.look();
    }
    const QByteArray bytes = contentOf(shawl.path);
    QTest::qWait(5);
    writeRaw(shawl.path, bytes); // a new time, the same content
    shawl.look();
    EXPECT_EQ(shawl.asked, 0);
}

TEST(Guards, AChangedFileIsAskedAboutOnce)
{
    Saved shawl;
    const Pattern mine = shawl.seat.pattern();
    shawl.changeOutside("Theirs");
    shawl.seat.window().lookAtFile();
    EXPECT_EQ(shawl.asked, 0) << "somebody may still be writing it";
    shawl.look();
    shawl.look();
    EXPECT_EQ(shawl.asked, 1);
    EXPECT_EQ(shawl.told, OnDisk::Changed);
    EXPECT_TRUE(shawl.seat.pattern() == mine);
    EXPECT_TRUE(shawl.seat.document().modified()) << "what is kept is not what the file has";

    // Kept on purpose: the save writes over it and doesn't ask again.
    shawl.seat.window().questions().changedOnDisk = [](const QString&) {
        ADD_FAILURE() << "asked twice";
        return Overwrite::GoOnEditing;
    };
    shawl.seat.act(ActionId::Save);
    EXPECT_EQ(contentOf(shawl.path), shawl.seat.document().bytes());
    shawl.look();
    EXPECT_EQ(shawl.asked, 1);

    shawl.changeOutside("Theirs again");
    shawl.answer = Differs::ReadAgain;
    shawl.look();
    EXPECT_EQ(shawl.asked, 2);
    EXPECT_EQ(shawl.seat.pattern().head.title, "Theirs again");
    EXPECT_FALSE(shawl.seat.document().modified());

    shawl.changeOutside("A third time");
    shawl.answer = Differs::SaveElsewhere;
    const QString other = shawl.seat.path("mine.shawl");
    shawl.seat.window().questions().savePath = [&](const QString&) { return other; };
    shawl.look();
    EXPECT_EQ(shawl.seat.document().path(), other);
    EXPECT_TRUE(contentOf(shawl.path).contains("A third time"));
}

TEST(Guards, AFileThatWentIsToldAndSavedAnew)
{
    Saved shawl;
    ASSERT_TRUE(QFile::remove(shawl.path));
    shawl.look();
    shawl.look();
    EXPECT_EQ(shawl.asked, 1);
    EXPECT_EQ(shawl.told, OnDisk::Gone);
    EXPECT_TRUE(shawl.seat.document().modified());
    shawl.seat.act(ActionId::Save);
    EXPECT_TRUE(QFile::exists(shawl.path));
    EXPECT_FALSE(shawl.seat.document().modified());
}

TEST(Guards, AChangedFileThatCantBeReadLeavesWhatWasOpen)
{
    Saved shawl;
    const Pattern mine = shawl.seat.pattern();
    writeRaw(shawl.path, "{\"format\": 1, ");
    shawl.answer = Differs::ReadAgain;
    QString told;
    shawl.seat.window().questions().failed = [&](const QString& heading, const QString&) { told = heading; };
    shawl.look();
    EXPECT_FALSE(told.isEmpty());
    EXPECT_TRUE(shawl.seat.pattern() == mine);
    EXPECT_TRUE(shawl.seat.document().modified());
}

TEST(Guards, AWindowThatOnlyReadsFollowsTheOther)
{
    Saved first;
    MainWindow second;
    second.questions().openElsewhere = [](const QString&, const QString&) { return OpenElsewhere::ReadOnly; };
    second.questions().differs = [](const QString&, OnDisk, bool) {
        ADD_FAILURE() << "there is nothing of one's own to lose";
        return Differs::KeepMine;
    };
    ASSERT_TRUE(second.openPath(first.path));
    first.seat.paintRow(1, "p");
    first.seat.act(ActionId::Save);
    for (int i = 0; i < 3; ++i)
        second.lookAtFile();
    EXPECT_TRUE(second.document().pattern() == first.seat.pattern());
    EXPECT_TRUE(second.document().readOnly());
}

TEST(EarlierSaves, TheLastFiveAreKeptWithTheirTimes)
{
    QTemporaryDir folder;
    shawlwright::app::EarlierSaves saves(folder.filePath(QStringLiteral("saves")));
    const QString path = folder.filePath(QStringLiteral("wing.shawl"));
    const QDateTime begin(QDate(2026, 3, 1), QTime(10, 0), Qt::UTC);
    for (int i = 0; i < 8; ++i)
        ASSERT_FALSE(saves.keep(path, QByteArray::number(i), begin.addSecs(60 * i)));
    ASSERT_FALSE(saves.keep(path, "7", begin.addDays(1))); // the same again
    const auto kept = saves.of(path);
    ASSERT_EQ(kept.size(), 5u);
    for (int i = 0; i < 5; ++i) {
        EXPECT_EQ(contentOf(kept[static_cast<std::size_t>(i)].copy), QByteArray::number(7 - i));
        EXPECT_EQ(kept[static_cast<std::size_t>(i)].saved, begin.addSecs(60 * (7 - i)));
    }
    // A clock that was set back doesn't hide the newest.
    ASSERT_FALSE(saves.keep(path, "new", begin.addYears(-1)));
    EXPECT_EQ(contentOf(saves.of(path).front().copy), "new");

    const QString other = folder.filePath(QStringLiteral("other.shawl"));
    ASSERT_FALSE(saves.keep(other, "x", begin.addYears(1)));
    const auto all = saves.all();
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].path, other);
    EXPECT_EQ(all[1].saves.size(), 5u);
}

TEST(EarlierSaves, OneIsOpenedAsACopy)
{
    Saved shawl;
    QTemporaryDir folder;
    shawl.seat.window().keepEarlierSaves(folder.path());
    shawl.seat.paintRow(1, "p");
    shawl.seat.act(ActionId::Save); // keeps what was there before, too
    shawl.seat.paintRow(2, "yo");
    shawl.seat.act(ActionId::Save);
    const Pattern latest = shawl.seat.pattern();
    const QByteArray inFile = contentOf(shawl.path);
    shawl.seat.inDialog([&] { shawl.seat.act(ActionId::EarlierSaves); },
                        [&](QDialog& dialog) {
                            auto& list = field<QListWidget>(dialog, "saves");
                            ASSERT_EQ(list.count(), 3);
                            EXPECT_TRUE(list.item(0)->text().contains(QStringLiteral("8 rows")))
                                << qPrintable(list.item(0)->text());
                            list.setCurrentRow(1);
                            Seat::take(dialog);
                        });
    EXPECT_TRUE(shawl.seat.document().path().isEmpty());
    EXPECT_EQ(shawl.seat.key(1, 1), "p");
    EXPECT_EQ(shawl.seat.key(2, 1), "no_st") << "from before the last save";
    EXPECT_EQ(contentOf(shawl.path), inFile);
    EXPECT_FALSE(shawl.seat.pattern() == latest);
}

TEST(EarlierSaves, AreNamedWhereAFileIsCutShort)
{
    Saved shawl;
    QTemporaryDir folder;
    shawl.seat.window().keepEarlierSaves(folder.path());
    shawl.seat.paintRow(1, "p");
    shawl.seat.act(ActionId::Save);
    const QByteArray whole = contentOf(shawl.path);
    writeRaw(shawl.path, whole.left(whole.size() / 2));
    MainWindow next;
    next.keepEarlierSaves(folder.path());
    QString told;
    next.questions().failed = [&](const QString&, const QString& sentence) { told = sentence; };
    next.questions().openElsewhere = [](const QString&, const auto&) { return OpenElsewhere::ReadOnly; };
    EXPECT_FALSE(next.openPath(shawl.path));
    EXPECT_TRUE(told.contains(QStringLiteral("cut short"))) << qPrintable(told);
    EXPECT_TRUE(told.contains(QStringLiteral("Earlier saves (Ctrl+Alt+S)"))) << qPrintable(told);
    EXPECT_EQ(contentOf(shawl.path), whole.left(whole.size() / 2)); // left alone
}

TEST(EarlierSaves, WhatSomebodyElseWroteIsKeptWhenWrittenOver)
{
    Saved shawl;
    QTemporaryDir folder;
    shawl.seat.window().keepEarlierSaves(folder.path());
    shawl.changeOutside("Theirs");
    const QByteArray theirs = contentOf(shawl.path);
    shawl.look();
    ASSERT_EQ(shawl.asked, 1);
    shawl.seat.act(ActionId::Save);
    const auto kept = shawlwright::app::EarlierSaves(folder.path()).of(shawl.path);
    ASSERT_EQ(kept.size(), 2u);
    EXPECT_EQ(contentOf(kept[1].copy), theirs);
}

TEST(EarlierSaves, WithoutAnySaveTheListSaysSo)
{
    Seat seat;
    QTemporaryDir folder;
    seat.window().keepEarlierSaves(folder.path());
    seat.inDialog([&] { seat.act(ActionId::EarlierSaves); },
                  [&](QDialog& dialog) {
                      EXPECT_FALSE(field<QListWidget>(dialog, "saves").isEnabled());
                      Seat::leave(dialog);
                  });
}

// A limit on the size of files stands for a full disk, a file in a folder's place for one that takes nothing
// (root may write anywhere).
TEST(Guards, AFailedSaveKeepsTheWorkAndSaysSo)
{
    Saved shawl;
    const QByteArray before = contentOf(shawl.path);
    shawl.seat.paintRow(1, "p");
    const Pattern work = shawl.seat.pattern();
    QString told;
    shawl.seat.window().questions().failed = [&](const QString& heading, const QString& sentence) {
        told = heading + sentence;
    };
    rlimit old{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &old), 0);
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit tight = old;
    tight.rlim_cur = 100;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &tight), 0);
    shawl.seat.act(ActionId::Save);
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &old), 0);
    EXPECT_TRUE(told.contains(QStringLiteral("not saved"))) << qPrintable(told);
    EXPECT_TRUE(told.contains(QStringLiteral("could be written"))) << qPrintable(told);
    EXPECT_EQ(contentOf(shawl.path), before);
    EXPECT_TRUE(shawl.seat.pattern() == work);
    EXPECT_TRUE(shawl.seat.document().modified());
    EXPECT_TRUE(shawl.seat.window().statusRight().contains(QStringLiteral("not saved")));

    told.clear();
    shawl.seat.window().questions().savePath = [&](const QString&) { return shawl.path + QStringLiteral("/x.shawl"); };
    shawl.seat.act(ActionId::SaveAs);
    EXPECT_TRUE(told.contains(QStringLiteral("a file, not a folder"))) << qPrintable(told);
    EXPECT_TRUE(shawl.seat.document().modified());
    EXPECT_EQ(shawl.seat.document().path(), shawl.path) << "it keeps its own file";
    shawl.seat.act(ActionId::Save);
    EXPECT_FALSE(shawl.seat.document().modified());
}

TEST(Guards, SettingsAreOnTheDiskAtOnce)
{
    Seat seat;
    const QString file = QSettings().fileName();
    seat.act(ActionId::DarkTheme);
    EXPECT_TRUE(contentOf(file).contains("darkTheme=true"));
    seat.act(ActionId::LightTheme);
    EXPECT_TRUE(contentOf(file).contains("darkTheme=false"));
    seat.act(ActionId::YarnTints);
    EXPECT_TRUE(contentOf(file).contains("yarnTints=false"));
    seat.window().canvas().setZoomPercent(200);
    EXPECT_TRUE(QTest::qWaitFor([&] { return contentOf(file).contains("zoom=200"); }));
    MainWindow next;
    EXPECT_EQ(next.canvas().zoomPercent(), 200);
}

TEST(Guards, SeveralFilesOpenAWindowEach)
{
    Seat seat;
    const QString one = seat.path("one.shawl"), two = seat.path("two.shawl"), three = seat.path("three.shawl");
    for (const QString& path : {one, two, three})
        writeRaw(path, seat.document().bytes());
    QStringList elsewhere;
    QObject::connect(&seat.window(), &MainWindow::anotherWindowWanted,
                     [&](const QString& path) { elsewhere << path; });
    seat.window().openFiles({one, two, three});
    EXPECT_EQ(seat.document().path(), one);
    EXPECT_EQ(elsewhere, (QStringList{two, three}));
}

} // namespace shawlwright::app
