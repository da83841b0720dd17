// The built program under an empty environment: exit codes, what goes to which stream, and files left alone.

#include "tests/commandline/program.h"
#include "tests/commandline/sample.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cstdlib>
#include <sys/stat.h>

namespace shawlwright::tests {

namespace {

using Json = nlohmann::json;

const std::vector<std::string> commands = {"check", "counts", "rows"};

TEST(CommandLine, VersionAndHelpStandAlone)
{
    const Ran version = shawlwright({"--version"});
    EXPECT_EQ(version.code, 0);
    EXPECT_TRUE(version.out.starts_with("shawlwright ")) << version.out;
    EXPECT_EQ(version.err, "");
    for (const char* word : {"--help", "-h"}) {
        const Ran help = shawlwright({word});
        EXPECT_EQ(help.code, 0);
        for (const char* command : {"check FILE", "counts FILE", "rows FILE", "export FILE"})
            EXPECT_NE(help.out.find(command), std::string::npos) << command;
        EXPECT_EQ(help.err, "");
    }
    EXPECT_EQ(shawlwright({"check", "--help"}).code, 0);
}

TEST(CommandLine, CheckOfASoundPattern)
{
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    const Ran plain = shawlwright({"check", file});
    EXPECT_EQ(plain.code, 0) << plain.out << plain.err;
    EXPECT_EQ(plain.err, "");
    const Ran json = shawlwright({"check", file, "--json"});
    EXPECT_EQ(json.code, 0);
    for (const Json& finding : Json::parse(json.out))
        EXPECT_NE(finding.at("severity"), "error") << finding;
}

TEST(CommandLine, CheckOfAFaultyPatternExitsWithOne)
{
    const Folder folder;
    const std::string file = folder.write("faulty.shawl", fileOf(faultyShawl()));
    const Ran plain = shawlwright({"check", file});
    EXPECT_EQ(plain.code, 1);
    EXPECT_NE(plain.out.find("Border, Row 1"), std::string::npos) << plain.out;
    EXPECT_EQ(plain.err, "");

    const Ran ran = shawlwright({"check", "--json", file});
    EXPECT_EQ(ran.code, 1);
    int errors = 0;
    for (const Json& finding : Json::parse(ran.out)) {
        std::vector<std::string> keys;
        for (const auto& [key, value] : finding.items())
            keys.push_back(key);
        EXPECT_EQ(keys, (std::vector<std::string>{"column", "index", "kind", "message", "row", "section",
                                                  "severity"}));
        if (finding.at("severity") != "error")
            continue;
        ++errors;
        EXPECT_EQ(finding.at("section"), "Border");
        EXPECT_EQ(finding.at("row"), "1");
        EXPECT_EQ(finding.at("index"), 1);
        EXPECT_EQ(finding.at("kind"), "too-few-stitches");
    }
    EXPECT_EQ(errors, 1) << ran.out;
}

// Worked out by hand: 7 cast on, a yarn over before the third stitch, a short row of three at the left edge,
// and two rows of the border three times.
TEST(CommandLine, CountsAreThoseWorkedOutByHand)
{
    struct Line {
        const char *section, *row;
        int index, pass;
        const char* side;
        int before, after, worked, resting;
        std::vector<int> segments;
    };
    const Line expected[] = {
        {"Wing", "1", 1, 1, "RS", 7, 7, 7, 0, {3, 4}},   {"Wing", "2", 2, 1, "WS", 7, 7, 7, 0, {3, 4}},
        {"Wing", "3", 3, 1, "RS", 7, 8, 8, 0, {4, 4}},   {"Wing", "4", 4, 1, "WS", 8, 8, 3, 5, {4, 4}},
        {"Wing", "5", 5, 1, "RS", 8, 8, 3, 5, {4, 4}},   {"Wing", "6", 6, 1, "WS", 8, 8, 8, 0, {4, 4}},
        {"Border", "1", 1, 1, "RS", 8, 8, 8, 0, {4, 4}}, {"Border", "2", 2, 1, "WS", 8, 8, 8, 0, {4, 4}},
        {"Border", "1", 3, 2, "RS", 8, 8, 8, 0, {4, 4}}, {"Border", "2", 4, 2, "WS", 8, 8, 8, 0, {4, 4}},
        {"Border", "1", 5, 3, "RS", 8, 8, 8, 0, {4, 4}}, {"Border", "2", 6, 3, "WS", 8, 8, 8, 0, {4, 4}}};
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    const Ran ran = shawlwright({"counts", file, "--json"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    const Json lines = Json::parse(ran.out);
    ASSERT_EQ(lines.size(), std::size(expected)) << ran.out;
    for (std::size_t i = 0; i < std::size(expected); ++i) {
        const Line& line = expected[i];
        const Json wanted = {
            {"section", line.section}, {"row", line.row},          {"index", line.index},
            {"pass", line.pass},       {"side", line.side},        {"yarn", lines[i].at("yarn")},
            {"before", line.before},   {"after", line.after},      {"worked", line.worked},
            {"resting", line.resting}, {"segments", line.segments}};
        EXPECT_EQ(lines[i], wanted);
    }
    const Ran plain = shawlwright({"counts", file});
    EXPECT_EQ(plain.code, 0);
    EXPECT_EQ(std::ranges::count(plain.out, '\n'), 13) << plain.out; // a heading and twelve rows
    EXPECT_NE(plain.out.find("4 | 4"), std::string::npos);
}

TEST(CommandLine, RowsOfAllAndOfOneSection)
{
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    const Ran all = shawlwright({"rows", file});
    EXPECT_EQ(all.code, 0) << all.err;
    EXPECT_NE(all.out.find("Wing"), std::string::npos);
    EXPECT_NE(all.out.find("Border"), std::string::npos);
    const Ran one = shawlwright({"rows", file, "--section", "Border"});
    EXPECT_EQ(one.code, 0) << one.err;
    EXPECT_EQ(one.out.find("Wing"), std::string::npos) << one.out;
    EXPECT_NE(one.out.find("Row 1"), std::string::npos) << one.out;
    const Ran none = shawlwright({"rows", file, "--section", "Hood"});
    EXPECT_EQ(none.code, 2);
    EXPECT_EQ(none.out, "");
    EXPECT_NE(none.err.find("\"Wing\" and \"Border\""), std::string::npos) << none.err;
}

TEST(CommandLine, StandardInputAndOutput)
{
    const std::string bytes = fileOf(smallShawl());
    const Folder folder;
    const std::string file = folder.write("small.shawl", bytes);
    for (const std::string& command : commands)
        EXPECT_EQ(shawlwright({command, "-"}, bytes).out, shawlwright({command, file}).out) << command;
    const Ran text = shawlwright({"export", "-", "-o", "-", "--as", "txt"}, bytes);
    EXPECT_EQ(text.code, 0) << text.err;
    // The export has designer, yarns, needles and gauge below the title, so that no abbreviation needs to tell the yarns;
    // the rows are the same.
    const auto fromCastOn = [](const std::string& all) { return all.substr(std::min(all.find("Cast on "), all.size())); };
    EXPECT_NE(text.out.find("by A. Tester\nYarn MC: main\nYarn CC: contrast\nNeedles: 4 mm"), std::string::npos) << text.out;
    EXPECT_EQ(text.out.find("\nMC: main"), std::string::npos);
    EXPECT_EQ(fromCastOn(text.out), fromCastOn(shawlwright({"rows", file}).out));
    EXPECT_NE(fromCastOn(text.out), "");
    const Ran unsaid = shawlwright({"export", "-", "-o", "-"}, bytes);
    EXPECT_EQ(unsaid.code, 2);
    EXPECT_NE(unsaid.err.find("--as"), std::string::npos);
}

TEST(CommandLine, EveryKindIsExportedWithoutADisplay)
{
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    struct Kind {
        const char *name, *begin;
    };
    for (const Kind& kind :
         {Kind{"a.svg", "<?xml"}, Kind{"a.pdf", "%PDF-"}, Kind{"a.png", "\x89PNG"}, Kind{"a.txt", ""}}) {
        const Ran ran = shawlwright({"export", file, "-o", folder.at(kind.name)});
        EXPECT_EQ(ran.code, 0) << kind.name << ran.err;
        EXPECT_EQ(ran.out, "") << kind.name;
        EXPECT_EQ(ran.err, "") << kind.name;
        const std::string bytes = bytesOf(folder.at(kind.name));
        EXPECT_GT(bytes.size(), 100u) << kind.name;
        EXPECT_TRUE(bytes.starts_with(kind.begin)) << kind.name;
    }
}

TEST(CommandLine, ExportNeverOverwritesItsInput)
{
    const Folder folder;
    const std::string bytes = fileOf(smallShawl());
    const std::string file = folder.write("small.svg", bytes);
    std::filesystem::create_symlink(file, folder.at("link.svg"));
    std::filesystem::create_hard_link(file, folder.at("twin.svg"));
    for (const std::string& out :
         {file,
          folder.at("../" + std::filesystem::path(file).parent_path().filename().string() + "/small.svg"),
          folder.at("link.svg"), folder.at("twin.svg")}) {
        const Ran ran = shawlwright({"export", file, "-o", out});
        EXPECT_EQ(ran.code, 2) << out;
        EXPECT_NE(ran.err, "") << out;
        EXPECT_EQ(bytesOf(file), bytes) << out;
    }
    EXPECT_EQ(shawlwright({"export", folder.at("link.svg"), "-o", file}).code, 2);
    EXPECT_EQ(bytesOf(file), bytes);
}

TEST(CommandLine, AnExportThatCannotBeWrittenSaysSo)
{
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    folder.write("plain", "x");
    std::filesystem::create_directory(folder.at("dir.svg"));
    const auto before = folder.names();
    for (const std::string& out : {folder.at("dir.svg"), folder.at("plain/a.svg"), folder.at("nowhere/a.pdf"),
                                   folder.at("a.docx"), folder.at("a.html"), folder.at("none")}) {
        const Ran ran = shawlwright({"export", file, "-o", out});
        EXPECT_EQ(ran.code, 2) << out;
        EXPECT_EQ(ran.out, "") << out;
        EXPECT_NE(ran.err, "") << out;
        EXPECT_EQ(folder.names(), before) << out;
    }
    const Ran unknown = shawlwright({"export", file, "-o", folder.at("a.docx")});
    for (const char* ending : {".svg", ".pdf", ".png", ".txt"})
        EXPECT_NE(unknown.err.find(ending), std::string::npos) << ending;
    const Ran full = shawlwright({"export", file, "-o", "/dev/full", "--as", "svg"});
    EXPECT_EQ(full.code, 2) << full.err;
    struct stat about {};
    ASSERT_EQ(::stat("/dev/full", &about), 0);
    EXPECT_TRUE(S_ISCHR(about.st_mode)) << "a device must stay what it is";
}

TEST(CommandLine, AResultThatDoesNotGetOutIsNoSuccess)
{
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    const Ran ran = run({"/bin/sh", "-c", "exec \"$0\" counts \"$1\" --json >/dev/full",
                         SHAWLWRIGHT_BUILD "/app/shawlwright", file});
    EXPECT_EQ(ran.code, 2);
    EXPECT_NE(ran.err, "");
}

TEST(CommandLine, FilesThatCannotBeReadGiveTwoAndStayAsTheyAre)
{
    const std::string good = fileOf(smallShawl());
    std::string newer = good;
    const auto format = newer.find("\"format\": 1");
    ASSERT_NE(format, std::string::npos);
    newer.replace(format, 11, "\"format\": 7");
    struct Bad {
        const char* name;
        std::string bytes;
        const char* mentions;
    };
    const Bad cases[] = {
        {"empty.shawl", "", ""},
        {"brace.shawl", "{", "line 1"},
        {"words.shawl", "Row 1: k3", "line 1"},
        {"zeros.shawl", std::string(1000, '\0'), ""},
        {"half.shawl", good.substr(0, good.size() / 2), "line "},
        {"newer.shawl", newer, "7"},
        {"list.shawl", "[]", ""},
        {"number.shawl", "{\"format\": \"1\"}", "format"},
        {"deep.shawl", std::string(200000, '['), ""},
        {"latin.shawl", "{\"format\": 1, \"title\": \"\xe4\"}", ""},
    };
    const Folder folder;
    for (const Bad& bad : cases) {
        const std::string file = folder.write(bad.name, bad.bytes);
        for (std::vector<std::string> words : {std::vector<std::string>{"check", file},
                                               {"check", file, "--json"},
                                               {"counts", file, "--json"},
                                               {"rows", file},
                                               {"export", file, "-o", folder.at("out.svg")}}) {
            const Ran ran = shawlwright(words);
            EXPECT_EQ(ran.code, 2) << bad.name << " " << words.front();
            EXPECT_EQ(ran.out, "") << bad.name;
            EXPECT_NE(ran.err.find(bad.name), std::string::npos) << ran.err;
            EXPECT_NE(ran.err.find(bad.mentions), std::string::npos) << bad.name << ": " << ran.err;
            EXPECT_LT(ran.err.size(), 5000u) << bad.name;
        }
        EXPECT_EQ(bytesOf(file), bad.bytes) << bad.name;
    }
    EXPECT_FALSE(std::filesystem::exists(folder.at("out.svg")));
    for (const std::string& file : {folder.at("missing.shawl"), folder.at(".")}) {
        const Ran ran = shawlwright({"check", file});
        EXPECT_EQ(ran.code, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err, "");
    }
}

TEST(CommandLine, WrongUsageIsTold)
{
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(smallShawl()));
    const std::vector<std::vector<std::string>> wrong = {
        {"check"},
        {"check", file, file},
        {"check", file, "--jsn"},
        {"counts", file, "--section", "Wing"},
        {"rows", file, "--section"},
        {"export", file},
        {"export", file, "-o"},
        {"rows", file, "--json"},
        {"--nonsense"},
        {"--version", "x"},
        {"frobnicate"},
        {file, file},
        {"check", ""},
        {"check", file, "--json=1"},
        {"export", file, "-o", folder.at("a.png"), "--dpi", "many"},
        {"export", file, "-o", folder.at("a.svg"), "--cell", "0"},
        {"export", file, "-o", folder.at("a.pdf"), "--paper", "a0"},
        {"export", file, "-o", "-", "--as", "gif"}};
    for (const auto& words : wrong) {
        const Ran ran = shawlwright(words);
        std::string shown;
        for (const std::string& word : words)
            shown += word + " ";
        EXPECT_EQ(ran.code, 2) << shown;
        EXPECT_EQ(ran.out, "") << shown;
        EXPECT_TRUE(ran.err.ends_with(".\n")) << shown << ran.err;
    }
    EXPECT_EQ(folder.names(), std::vector<std::string>{"small.shawl"});
}

TEST(CommandLine, VersionsAndSizesByName)
{
    Knit knit(3);
    knit.pattern().head.versions = {"garter", "brioche"};
    knit.pattern().head.sizes = {"small", "large"};
    knit.pattern().head.castOn.stitches = Quantity(std::vector<int>{3, 5});
    knit.pattern().sections.front().frame.title = "Start";
    knit.rs("[ k ]end-0");
    knit.section("Garter", {"garter"})
        .rs("[ k ]end-0")
        .section("Brioche", {"brioche"})
        .rs("[ k ]end-0")
        .ws("[ k ]end-0");
    const Folder folder;
    const std::string file = folder.write("two.shawl", fileOf(knit.done()));
    const auto lines = [&](const std::vector<std::string>& more) {
        std::vector<std::string> words = {"counts", file, "--json"};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = shawlwright(words);
        EXPECT_EQ(ran.code, 0) << ran.err;
        return Json::parse(ran.out);
    };
    EXPECT_EQ(lines({}).size(), 2u);
    EXPECT_EQ(lines({"--version", "brioche"}).size(), 3u);
    EXPECT_EQ(lines({"--version=brioche"})[1].at("section"), "Brioche");
    EXPECT_EQ(lines({})[0].at("after"), 3);
    EXPECT_EQ(lines({"--size", "large"})[0].at("after"), 5);
    const Ran version = shawlwright({"check", file, "--version", "lace"});
    EXPECT_EQ(version.code, 2);
    EXPECT_NE(version.err.find("\"garter\" and \"brioche\""), std::string::npos) << version.err;
    const Ran size = shawlwright({"rows", file, "--size", "huge"});
    EXPECT_EQ(size.code, 2);
    EXPECT_NE(size.err.find("\"small\" and \"large\""), std::string::npos) << size.err;
    EXPECT_EQ(shawlwright({"rows", file, "--section", "Brioche"}).code, 2);
    EXPECT_EQ(shawlwright({"rows", file, "--section", "Brioche", "--version", "brioche"}).code, 0);
}

TEST(CommandLine, NamesOfAnyLetters)
{
    const Folder folder;
    const std::string file = folder.write("Grüße 測 & co.shawl", fileOf(smallShawl()));
    const Ran ran = shawlwright({"export", file, "-o", folder.at("Grüße 測 & co.svg")});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    EXPECT_TRUE(std::filesystem::exists(folder.at("Grüße 測 & co.svg")));
}

// Under the settings that the tests themselves run with, a decimal comma among them, nothing is written
// differently.
TEST(CommandLine, SettingsOfTheUserChangeNothing)
{
    Environment environment;
    for (const char* name : {"LC_ALL", "LOCPATH"})
        if (const char* value = std::getenv(name))
            environment.push_back(std::string(name) + "=" + value);
    Pattern pattern = smallShawl();
    pattern.head.needleMm = 2.25;
    const Folder folder;
    const std::string file = folder.write("small.shawl", fileOf(pattern));
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"check", file},
          {"counts", file, "--json"},
          {"rows", file},
          {"export", file, "-o", "-", "--as", "svg", "--cell", "4.25"}}) {
        const Ran plain = shawlwright(words), local = shawlwright(words, {}, environment);
        EXPECT_EQ(plain.code, local.code);
        EXPECT_EQ(plain.out, local.out) << words.front();
    }
}

} // namespace

} // namespace shawlwright::tests
