// Saving, opening, exporting, and what is asked before work is lost.
#include "tests/app/window/seat.h"

#include <gtest/gtest.h>

#include <QCloseEvent>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QComboBox>
#include <QSettings>

namespace shawlwright::app {

static QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

TEST(Files, SavedAndReopenedIsTheSame)
{
    Seat seat;
    seat.paintRow(0, "k");
    seat.paintRow(1, "p");
    const QString path = seat.path("Gr\xc3\xbc\xc3\x9f"
                                   "e & co.shawl");
    seat.window().questions().savePath = [&](const QString& suggested) {
        EXPECT_TRUE(suggested.endsWith(QStringLiteral(".shawl")));
        return path;
    };
    seat.act(ActionId::Save);
    EXPECT_FALSE(seat.document().modified());
    EXPECT_TRUE(seat.window().statusRight().contains(QStringLiteral("saved")));
    const Pattern saved = seat.pattern();
    NewPattern other;
    other.title = "Another";
    ASSERT_TRUE(seat.window().newShawl(other));
    ASSERT_TRUE(seat.window().openPath(path));
    EXPECT_TRUE(seat.pattern() == saved);
    EXPECT_FALSE(seat.document().modified());
    const QStringList recent = QSettings().value(QStringLiteral("recent")).toStringList();
    ASSERT_FALSE(recent.isEmpty());
    EXPECT_EQ(recent.first(), QFileInfo(path).absoluteFilePath());
}

TEST(Files, ClosingWithUnsavedWorkAsks)
{
    Seat seat;
    int asked = 0;
    Unsaved answer = Unsaved::GoOnEditing;
    seat.window().questions().unsaved = [&](const QString&) {
        ++asked;
        return answer;
    };
    EXPECT_TRUE(seat.window().close());
    EXPECT_EQ(asked, 0) << "nothing was changed";
    seat.window().show();
    seat.paintRow(0, "k");
    EXPECT_FALSE(seat.window().close());
    EXPECT_EQ(asked, 1);
    EXPECT_TRUE(seat.window().isVisible());
    EXPECT_TRUE(seat.document().modified());

    answer = Unsaved::Save;
    seat.window().questions().savePath = [](const QString&) {
        return QString();
    }; // and then no name is given
    EXPECT_FALSE(seat.window().close());
    const QString path = seat.path("kept.shawl");
    seat.window().questions().savePath = [&](const QString&) { return path; };
    EXPECT_TRUE(seat.window().close());
    EXPECT_TRUE(QFile::exists(path));
}

TEST(Files, NewAndOpenAskToo)
{
    Seat seat;
    seat.paintRow(0, "k");
    const Pattern before = seat.pattern();
    int asked = 0;
    seat.window().questions().unsaved = [&](const QString&) {
        ++asked;
        return Unsaved::GoOnEditing;
    };
    EXPECT_FALSE(seat.window().newShawl({}));
    EXPECT_FALSE(seat.window().openPath(seat.path("other.shawl")));
    EXPECT_EQ(asked, 2);
    EXPECT_TRUE(seat.pattern() == before);
}

TEST(Files, ABrokenFileIsToldAndChangesNothing)
{
    Seat seat;
    const Pattern before = seat.pattern();
    const QString path = seat.path("broken.shawl");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{\"format\": 1, \"title\": ");
    file.close();
    QString told;
    seat.window().questions().failed = [&](const QString& heading, const QString& sentence) {
        told = heading + QLatin1Char('\n') + sentence;
    };
    EXPECT_FALSE(seat.window().openPath(path));
    EXPECT_TRUE(told.contains(QStringLiteral("broken.shawl"))) << qPrintable(told);
    EXPECT_TRUE(told.contains(QStringLiteral("line"))) << qPrintable(told);
    EXPECT_TRUE(seat.pattern() == before);
    EXPECT_FALSE(seat.window().openPath(seat.path("not there.shawl")));
}

TEST(Files, AFileThatSomebodyElseChangedIsNotWrittenOverUnasked)
{
    Seat seat;
    const QString path = seat.path("shared.shawl");
    seat.window().questions().savePath = [&](const QString&) { return path; };
    seat.act(ActionId::Save);
    seat.paintRow(0, "k");
    const QByteArray theirs = "not ours";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(theirs);
    file.close();
    int asked = 0;
    seat.window().questions().changedOnDisk = [&](const QString&) {
        ++asked;
        return Overwrite::GoOnEditing;
    };
    seat.act(ActionId::Save);
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(contentOf(path), theirs);
    EXPECT_TRUE(seat.document().modified());
    seat.window().questions().changedOnDisk = [](const QString&) { return Overwrite::WriteOver; };
    seat.act(ActionId::Save);
    EXPECT_NE(contentOf(path), theirs);
    EXPECT_FALSE(seat.document().modified());
}

TEST(Files, ExportsChartAndWords)
{
    Seat seat;
    seat.paintRow(0, "k");
    const struct {
        ExportSubject subject;
        ExportKind kind;
        const char* name;
        const char* begins;
    } cases[] = {
        {ExportSubject::Chart, ExportKind::Svg, "chart.svg", "<?xml"},
        {ExportSubject::Chart, ExportKind::Png, "chart.png", "\x89PNG"},
        {ExportSubject::Words, ExportKind::Text, "words.txt", ""},
        {ExportSubject::Pattern, ExportKind::Pdf, "pattern.pdf", "%PDF"},
    };
    for (const auto& one : cases) {
        const QString path = seat.path(one.name);
        seat.window().questions().exportPath = [&](const QString&, const QString&) { return path; };
        EXPECT_TRUE(seat.window().exportAs(one.subject, one.kind, {})) << one.name;
        const QByteArray bytes = contentOf(path);
        EXPECT_TRUE(bytes.startsWith(one.begins)) << one.name;
        EXPECT_GT(bytes.size(), 30) << one.name;
    }
    EXPECT_TRUE(seat.document().path().isEmpty()) << "an export is not the shawl's file";
    EXPECT_TRUE(seat.document().modified());
}

TEST(Files, AnExportIsOfTheVersionAndSizeThatAreAskedFor)
{
    Seat seat;
    Pattern pattern = seat.pattern();
    pattern.head.title = "Dunes";
    pattern.head.versions = {"Lace", "Plain"};
    pattern.head.sizes = {"Small", "Large"};
    pattern.head.castOn.stitches = Quantity(std::vector<int>{9, 13});
    seat.document().startNew(pattern);
    seat.settle();
    QString proposed;
    const QString path = seat.path("sizes.txt");
    seat.window().questions().exportPath = [&](const QString& name, const QString&) {
        proposed = name;
        return path;
    };
    const auto exportWords = [&](int version, int size) {
        seat.inDialog([&] { seat.act(ActionId::ExportWords); },
                      [&](QDialog& dialog) {
                          auto& versions = field<QComboBox>(dialog, "version");
                          auto& sizes = field<QComboBox>(dialog, "size");
                          EXPECT_EQ(versions.count(), 3);
                          EXPECT_EQ(sizes.count(), 3);
                          versions.setCurrentIndex(version);
                          sizes.setCurrentIndex(size);
                          Seat::take(dialog);
                      });
        return contentOf(path);
    };
    EXPECT_TRUE(exportWords(1, 0).contains("Cast on 9 (13) sts"));
    EXPECT_EQ(proposed, QStringLiteral("Dunes - Plain.txt"));
    EXPECT_TRUE(exportWords(0, 2).contains("Cast on 13 sts"));
    EXPECT_EQ(proposed, QStringLiteral("Dunes - Lace - Large.txt"));
    exportWords(2, 0);
    EXPECT_EQ(proposed, QStringLiteral("Dunes.txt"));
}

TEST(Files, AnExportNeverWritesOverTheShawl)
{
    Seat seat;
    const QString path = seat.path("own.svg"); // an odd name for a shawl, but it is his
    seat.window().questions().savePath = [&](const QString&) { return path; };
    seat.act(ActionId::Save);
    const QByteArray before = contentOf(path);
    QString told;
    seat.window().questions().failed = [&](const QString&, const QString& sentence) { told = sentence; };
    seat.window().questions().exportPath = [&](const QString&, const QString&) { return path; };
    EXPECT_FALSE(seat.window().exportAs(ExportSubject::Chart, ExportKind::Svg, {}));
    EXPECT_FALSE(told.isEmpty());
    EXPECT_EQ(contentOf(path), before);
}

TEST(Files, GeometryAndFavouritesAreKept)
{
    Seat seat;
    seat.window().resize(1100, 700);
    seat.settle();
    ASSERT_TRUE(seat.window().close());
    const QSettings settings;
    EXPECT_FALSE(settings.value(QStringLiteral("geometry")).toByteArray().isEmpty());
    EXPECT_FALSE(settings.value(QStringLiteral("favourites")).toStringList().isEmpty());
}

} // namespace shawlwright::app
