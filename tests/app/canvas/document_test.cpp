// The document: steps, the saved state, and files that cannot be written.
#include "app/document/checked_save.h"
#include "app/document/pattern_document.h"
#include "core/edits/paint.h"
#include "core/edits/sections.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSignalSpy>
#include <QTemporaryDir>

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

struct Open {
    PatternDocument document;
    QTemporaryDir folder;
    int next = 0;

    QString path(const char* name = "wing.shawl") const { return folder.filePath(QString::fromUtf8(name)); }
    Result<Edit> paintAt(int row, int column, const char* key = "yo")
    {
        const At one[] = {At{row, column}};
        return shawlwright::paint(document.pattern(), document.catalogue(),
                                  document.pattern().sections.front().id, one,
                                  document.catalogue().require(key));
    }
    void edit(int stroke = 0)
    {
        const int at = next++;
        document.performOrTell(paintAt(at / 20, at % 20 + 1), stroke);
    }
};

} // namespace

TEST(Document, OneEditIsOneChange)
{
    Open open;
    int changes = 0;
    QObject::connect(&open.document, &PatternDocument::changed, [&](const Change& change, const Reworked&) {
        ++changes;
        EXPECT_EQ(change.rows.size(), 1u);
    });
    open.edit();
    EXPECT_EQ(changes, 1);
    open.document.undoStack().undo();
    open.document.undoStack().redo();
    EXPECT_EQ(changes, 3);
}

TEST(Document, AStrokeMergesByItsNumberAlone)
{
    Open open;
    const int first = open.document.newStroke();
    open.edit(first);
    open.edit(first);
    const int second = open.document.newStroke();
    EXPECT_NE(first, second);
    open.edit(second);
    open.edit();
    open.edit();
    EXPECT_EQ(open.document.undoStack().count(), 4);
}

TEST(Document, NothingMergesIntoTheStepAtWhichTheFileWasWritten)
{
    Open open;
    const int stroke = open.document.newStroke();
    open.edit(stroke);
    ASSERT_FALSE(open.document.save(open.path()));
    EXPECT_FALSE(open.document.modified());
    open.edit(stroke);
    EXPECT_TRUE(open.document.modified());
    open.document.undoStack().undo();
    EXPECT_FALSE(open.document.modified());
    EXPECT_EQ(open.document.bytes(), contentOf(open.path()));
    open.document.undoStack().redo();
    open.document.takeBackStroke(stroke); // Esc takes both parts back
    EXPECT_EQ(open.document.undoStack().count(), 0);
    EXPECT_TRUE(open.document.modified());
}

TEST(Document, AnEmptyEditNeverReachesTheStack)
{
    Open open;
    open.edit();
    open.edit();
    open.document.undoStack().undo();
    open.document.performOrTell(open.paintAt(0, 1)); // what is there already
    EXPECT_TRUE(open.document.undoStack().canRedo());
    EXPECT_EQ(open.document.undoStack().count(), 2);
}

// Every path of up to six acts, against a model that compares bytes: unmodified exactly where the step is the
// one that was written, and then the pattern equals the file.
TEST(Document, ModifiedIsTrueToTheFileOnEveryPath)
{
    constexpr int length = 6;
    int paths = 1;
    for (int at = 0; at < length; ++at)
        paths *= 5;
    QTemporaryDir folder;
    const QString nowhere = folder.filePath(QStringLiteral("no/such/folder/wing.shawl"));
    const QString path = folder.filePath(QStringLiteral("wing.shawl"));
    for (int code = 0; code < paths; ++code) {
        if (code % 7 != 0) // a seventh of them; 7 and 5 share no factor, so every act comes at every place
            continue;
        Open open;
        QByteArray written = open.document.bytes(); // a new pattern counts as saved
        int rest = code;
        for (int at = 0; at < length; ++at, rest /= 5) {
            switch (rest % 5) {
            case 0:
                open.edit();
                break;
            case 1:
                open.document.undoStack().undo();
                break;
            case 2:
                open.document.undoStack().redo();
                break;
            case 3:
                ASSERT_FALSE(open.document.save(path));
                written = contentOf(path);
                break;
            case 4:
                EXPECT_TRUE(open.document.save(nowhere));
                break;
            }
            if (!open.document.modified()) {
                EXPECT_EQ(open.document.bytes(), written) << code;
            }
            if (open.document.bytes() != written) {
                EXPECT_TRUE(open.document.modified()) << code;
            }
        }
    }
}

TEST(Document, SavesAndLoadsTheSamePattern)
{
    Open open;
    open.edit();
    const QString path = open.path("Gr\u00fc\u00dfe t\u00e6st & co.shawl");
    ASSERT_FALSE(open.document.save(path));
    EXPECT_EQ(open.document.path(), path);
    EXPECT_EQ(open.document.onDisk(), OnDisk::Same);
    PatternDocument again;
    QSignalSpy changed(&again, &PatternDocument::changed);
    ASSERT_FALSE(again.load(path));
    EXPECT_EQ(again.pattern(), open.document.pattern());
    EXPECT_FALSE(again.modified());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(again.bytes(), contentOf(path));
}

TEST(Document, TellsWhenSomebodyElseWroteTheFile)
{
    Open open;
    open.edit();
    ASSERT_FALSE(open.document.save(open.path()));
    open.edit();
    EXPECT_EQ(open.document.onDisk(), OnDisk::Same);
    writeRaw(open.path(), "{}");
    EXPECT_EQ(open.document.onDisk(), OnDisk::Changed);
    QFile::remove(open.path());
    EXPECT_EQ(open.document.onDisk(), OnDisk::Gone);
}

TEST(Document, AFileThatCannotBeReadLeavesEverythingAsItWas)
{
    Open open;
    open.edit();
    const Pattern before = open.document.pattern();
    const QString broken = open.path("broken.shawl");
    writeRaw(broken, "{\"format\": 1, \"title\": 3");
    const auto expectRefused = [&](const QString& path) {
        const auto fault = open.document.load(path);
        ASSERT_TRUE(fault);
        EXPECT_GT(fault->size(), 20);
        EXPECT_LE(fault->count(QLatin1Char('\n')), 14);
        EXPECT_EQ(open.document.pattern(), before);
        EXPECT_TRUE(open.document.modified());
        EXPECT_TRUE(open.document.path().isEmpty());
    };
    expectRefused(broken);
    EXPECT_EQ(contentOf(broken), "{\"format\": 1, \"title\": 3");
    expectRefused(open.path("nowhere.shawl"));
    expectRefused(open.folder.path());
    QFile huge(open.path("huge.shawl"));
    ASSERT_TRUE(huge.open(QIODevice::WriteOnly));
    ASSERT_TRUE(huge.resize(static_cast<qint64>(2) << 30)); // sparse: takes no room
    expectRefused(huge.fileName());
}

TEST(CheckedSave, RefusesWhatCannotBeAPlaceForAFile)
{
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a file"));
    writeRaw(file, "old");
    for (const QString& path :
         {folder.path(), folder.filePath(QStringLiteral("no/wing.shawl")),
          file + QStringLiteral("/wing.shawl"), QStringLiteral("/proc/wing.shawl"), QString()}) {
        const auto fault = saveChecked(path, "new");
        ASSERT_TRUE(fault) << path.toStdString();
        EXPECT_TRUE(fault->contains(QStringLiteral("saved"))) << fault->toStdString();
    }
    EXPECT_EQ(contentOf(file), "old");
}

// A limit on the size of files stands for a full disk: the write stops half-way and the old file must be
// whole.
TEST(CheckedSave, ADiskThatTakesOnlyAPartLeavesTheOldFile)
{
    Open open;
    open.edit();
    ASSERT_FALSE(open.document.save(open.path()));
    const QByteArray old = contentOf(open.path());
    open.edit();
    ASSERT_TRUE(open.document.modified());
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit tight = before;
    tight.rlim_cur = 100;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &tight), 0);
    const auto fault = open.document.save(open.path());
    const auto large = saveChecked(open.path("large"), QByteArray(3000000, 'x'));
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    EXPECT_TRUE(fault);
    EXPECT_TRUE(large);
    EXPECT_EQ(contentOf(open.path()), old);
    EXPECT_FALSE(QFileInfo::exists(open.path("large")));
    EXPECT_TRUE(open.document.modified());
    EXPECT_EQ(QDir(open.folder.path()).entryList(QDir::Files).size(),
              1); // nothing half-written is left lying
    EXPECT_FALSE(open.document.save(open.path()));
    EXPECT_FALSE(open.document.modified());
}

TEST(CheckedSave, FollowsALinkAndKeepsPermissions)
{
    QTemporaryDir folder;
    const QString target = folder.filePath(QStringLiteral("target")),
                  link = folder.filePath(QStringLiteral("link"));
    writeRaw(target, "old");
    ASSERT_TRUE(QFile::setPermissions(target, QFile::ReadOwner | QFile::WriteOwner | QFile::ReadGroup));
    const auto permissions = QFile::permissions(target);
    ASSERT_TRUE(QFile::link(target, link));
    ASSERT_FALSE(saveChecked(link, "new"));
    EXPECT_EQ(contentOf(target), "new");
    EXPECT_TRUE(QFileInfo(link).isSymLink());
    EXPECT_EQ(QFile::permissions(target), permissions);
}

} // namespace shawlwright::app
