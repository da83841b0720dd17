// What happens when a file cannot be written: a sentence, and the old file as it was.

#include "app/exports/export_file.h"
#include "tests/commandline/program.h"
#include "tests/exports/lace.h"

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>

namespace shawlwright::app {

using namespace tests;

namespace {

QString path(const std::string& text)
{
    return QString::fromStdString(text);
}

TEST(Write, EveryKindByItsEnding)
{
    const Folder folder;
    for (const char* name : {"a.svg", "a.pdf", "a.png", "a.txt", "b.SVG"}) {
        const auto fault = exportTo(path(folder.at(name)), {}, smallShawl(), catalogue(), {});
        EXPECT_FALSE(fault) << fault->toStdString();
        EXPECT_FALSE(bytesOf(folder.at(name)).empty()) << name;
    }
    EXPECT_EQ(folder.names().size(), 5u);
    const auto fault = exportTo(path(folder.at("a.gif")), {}, smallShawl(), catalogue(), {});
    ASSERT_TRUE(fault);
    EXPECT_TRUE(fault->contains(QStringLiteral(".svg, .pdf, .png and .txt"))) << fault->toStdString();
}

TEST(Write, TheSameFileTwiceHasTheSameBytes)
{
    for (const ExportKind kind : {ExportKind::Svg, ExportKind::Png, ExportKind::Text})
        EXPECT_EQ(exported(smallShawl(), catalogue(), kind, {}).value(),
                  exported(smallShawl(), catalogue(), kind, {}).value());
}

TEST(Write, WhereNothingCanBeWritten)
{
    const Folder folder;
    folder.write("plain", "x");
    std::filesystem::create_directory(folder.at("dir.svg"));
    const auto before = folder.names();
    for (const std::string& target :
         {folder.at("dir.svg"), folder.at("plain/a.svg"), folder.at("no/a.svg"), std::string("/dev/full")}) {
        const auto fault = writeExported(path(target), "bytes");
        ASSERT_TRUE(fault) << target;
        EXPECT_TRUE(fault->contains(path(target))) << fault->toStdString();
        EXPECT_EQ(folder.names(), before);
    }
    EXPECT_TRUE(std::filesystem::is_character_file("/dev/full"));
}

// A limit on the size of files stands in for a disk that is full: the system takes a part and no more.
TEST(Write, AFullDiskLeavesTheOldFile)
{
    const Folder folder;
    const std::string file = folder.write("a.svg", "the old one");
    rlimit old{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &old), 0);
    const auto before = std::signal(SIGXFSZ, SIG_IGN);
    rlimit small = old;
    small.rlim_cur = 1000;
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto fault = writeExported(path(file), QByteArray(100000, 'x'));
    ::setrlimit(RLIMIT_FSIZE, &old);
    std::signal(SIGXFSZ, before);
    ASSERT_TRUE(fault);
    EXPECT_TRUE(fault->contains(path(file))) << fault->toStdString();
    EXPECT_EQ(bytesOf(file), "the old one");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"a.svg"});
    EXPECT_FALSE(writeExported(path(file), "new"));
    EXPECT_EQ(bytesOf(file), "new");
}

TEST(Write, NeverThePatternItself)
{
    const Folder folder;
    const std::string bytes = fileOf(smallShawl());
    const std::string file = folder.write("small.svg", bytes);
    std::filesystem::create_symlink(file, folder.at("link.svg"));
    for (const std::string& target : {file, folder.at("link.svg")})
        EXPECT_TRUE(exportTo(path(target), path(file), smallShawl(), catalogue(), {})) << target;
    EXPECT_EQ(bytesOf(file), bytes);
}

} // namespace

} // namespace shawlwright::app
