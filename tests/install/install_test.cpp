// What lies on a desktop after `cmake --install`, checked by the programs that desktops themselves use:
// desktop-file-validate (Desktop Entry Specification), update-mime-database (Shared MIME-info Specification),
// groff with all warnings of its man macros, and the sizes of the Icon Theme Specification.
#include "tests/commandline/program.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>

namespace shawlwright::tests {
namespace {

struct Installed {
    Installed() { done = tool({"cmake", "--install", SHAWLWRIGHT_BUILD, "--prefix", folder.at("usr")}); }
    std::string at(const std::string& name) const { return folder.at("usr/" + name); }
    bool has(const std::string& name) const { return std::filesystem::is_regular_file(at(name)); }

    Folder folder;
    Ran done;
};

class Install : public testing::Test {
protected:
    static const Installed& desktop()
    {
        static const Installed installed;
        return installed;
    }
    void SetUp() override { ASSERT_EQ(desktop().done.code, 0) << desktop().done.err; }
};

std::set<std::string> optionsIn(const std::string& text)
{
    std::set<std::string> options;
    const std::regex word("(^|[^-A-Za-z])(--[a-z]+|-o)(?![a-z])");
    for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at)
        options.insert((*at)[2]);
    return options;
}

TEST_F(Install, TheProgramRunsFromItsPlace)
{
    const Ran version = run({desktop().at("bin/shawlwright"), "--version"});
    EXPECT_EQ(version.code, 0);
    EXPECT_TRUE(version.out.starts_with("shawlwright ")) << version.out;
}

TEST_F(Install, TheMenuEntryIsValid)
{
    const std::string entry = desktop().at("share/applications/shawlwright.desktop");
    const Ran checked = tool({"desktop-file-validate", entry});
    EXPECT_EQ(checked.code, 0) << checked.out << checked.err;
    EXPECT_EQ(checked.out + checked.err, "");
    const std::string text = bytesOf(entry);
    EXPECT_NE(text.find("\nExec=shawlwright %F\n"), std::string::npos) << "files are handed over";
    EXPECT_NE(text.find("\nMimeType=application/x-shawlwright;\n"), std::string::npos);
}

TEST_F(Install, FilesThatEndInShawlAreKnown)
{
    const std::string kind = desktop().at("share/mime/packages/shawlwright.xml");
    EXPECT_EQ(tool({"xmllint", "--noout", kind}).code, 0);
    const Ran made = tool({"update-mime-database", desktop().at("share/mime")});
    EXPECT_EQ(made.code, 0) << made.err;
    const std::string globs = bytesOf(desktop().at("share/mime/globs2"));
    EXPECT_NE(globs.find(":application/x-shawlwright:*.shawl"), std::string::npos) << globs;
}

TEST_F(Install, IconsOfAllSizes)
{
    for (const char* size : {"16", "22", "24", "32", "48", "64", "128", "256", "512"})
        for (const char* name : {"apps/shawlwright", "mimetypes/application-x-shawlwright"}) {
            const std::string icon = std::string("share/icons/hicolor/") + size + "x" + size + "/" + name + ".png";
            ASSERT_TRUE(desktop().has(icon)) << icon;
            const std::string bytes = bytesOf(desktop().at(icon));
            ASSERT_GT(bytes.size(), 60u);
            // PNG, 5.2 and 11.2.2: eight bytes of signature, then IHDR with width and height, big end first.
            EXPECT_EQ(bytes.substr(0, 8), "\x89PNG\r\n\x1A\n");
            const auto number = [&](std::size_t from) {
                int value = 0;
                for (std::size_t i = from; i < from + 4; ++i)
                    value = value * 256 + static_cast<unsigned char>(bytes[i]);
                return value;
            };
            EXPECT_EQ(number(16), std::stoi(size)) << icon;
            EXPECT_EQ(number(20), std::stoi(size)) << icon;
        }
    EXPECT_TRUE(desktop().has("share/icons/hicolor/scalable/apps/shawlwright.svg"));
    EXPECT_EQ(tool({"xmllint", "--noout", desktop().at("share/icons/hicolor/scalable/apps/shawlwright.svg")}).code,
              0);
}

TEST_F(Install, TheManPageSaysWhatHelpSays)
{
    const std::string page = desktop().at("share/man/man1/shawlwright.1");
    const Ran warned = tool({"groff", "-man", "-ww", "-z", "-Tutf8", "-k", page});
    EXPECT_EQ(warned.code, 0);
    EXPECT_EQ(warned.err, "");
    const Ran shown = tool({"groff", "-man", "-Tascii", "-P-cbou", "-rLL=100n", page});
    ASSERT_EQ(shown.code, 0);
    const Ran help = shawlwright({"--help"});
    std::set<std::string> said = optionsIn(help.out), printed = optionsIn(shown.out);
    EXPECT_GE(said.size(), 10u);
    said.insert("--help"); // which doesn't list itself
    EXPECT_EQ(printed, said);
    for (const char* command : {"check", "counts", "rows", "read", "export"}) {
        EXPECT_NE(shown.out.find("shawlwright " + std::string(command)), std::string::npos) << command;
        EXPECT_NE(help.out.find("shawlwright " + std::string(command)), std::string::npos) << command;
    }
}

TEST_F(Install, SamplesComeAlong)
{
    int samples = 0;
    for (const auto& sample :
         std::filesystem::directory_iterator(desktop().at("share/shawlwright/samples"))) {
        EXPECT_EQ(sample.path().extension(), ".shawl");
        ++samples;
    }
    EXPECT_GE(samples, 3);
}

} // namespace
} // namespace shawlwright::tests
