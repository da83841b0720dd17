// Folders include lower levels only; the core knows no Qt, and JSON is known to its files folder alone.

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <regex>
#include <sstream>

namespace {

namespace fs = std::filesystem;

// The levels of the core, and those of the app above it.
const std::map<std::string, int> levels = {
    {"core/base", 1},     {"core/stitches", 2},    {"core/pattern", 3}, {"core/edits", 4},
    {"core/needle", 4},   {"core/chart", 4},       {"core/files", 4},   {"core/wording", 5},
    {"core/fabric", 5},   {"core/proof", 6},       {"core/booklet", 6}, {"core/derived", 7},
    {"app/document", 11}, {"app/painting", 12},    {"app/exports", 13}, {"app/canvas", 13},
    {"app/panels", 14},   {"app/commandline", 14}, {"app/window", 15}};

struct Include {
    std::string file; // of the including file, from the project's root
    std::string what; // as written, without quotes or brackets
    bool quoted = false;
};

std::string folderOf(const std::string& path)
{
    const auto first = path.find('/');
    const auto second = path.find('/', first + 1);
    return second == std::string::npos ? path.substr(0, first) : path.substr(0, second);
}

std::vector<Include> includesOf(const fs::path& root, const std::string& top)
{
    static const std::regex line(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])");
    std::vector<Include> found;
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
        const auto ending = entry.path().extension();
        if (ending != ".h" && ending != ".cpp")
            continue;
        std::ifstream file(entry.path());
        for (std::string text; std::getline(file, text);) {
            std::smatch match;
            if (std::regex_search(text, match, line))
                found.push_back(
                    {fs::relative(entry.path(), root).generic_string(), match[2], match[1] == "\""});
        }
    }
    return found;
}

// What is wrong with one include, or nothing.
std::optional<std::string> fault(const Include& include)
{
    const std::string from = folderOf(include.file);
    const auto said = [&](const char* why) {
        return include.file + " includes " + include.what + ": " + why;
    };
    const bool core = from.starts_with("core/");
    if (!include.quoted) {
        if (core && std::regex_search(include.what, std::regex("^Q[A-Z]|^Qt")))
            return said("the core knows no Qt");
        if (include.what.find("nlohmann") != std::string::npos && from != "core/files")
            return said("only core/files knows JSON");
        return std::nullopt;
    }
    if (include.what.find('/') == std::string::npos)
        return include.what.ends_with(".moc") ? std::nullopt
                                              : std::optional(said("is not named from the project's root"));
    const std::string to = folderOf(include.what);
    if (from == to || include.file == "app/main.cpp")
        return std::nullopt;
    const auto fromLevel = levels.find(from), toLevel = levels.find(to);
    if (fromLevel == levels.end() || toLevel == levels.end())
        return said("one of the folders has no level");
    if (toLevel->second >= fromLevel->second)
        return said("not of a lower level");
    return std::nullopt;
}

class Levels : public testing::TestWithParam<const char*> {};

TEST_P(Levels, EveryIncludeGoesDown)
{
    const auto includes = includesOf(SHAWLWRIGHT_SOURCE, GetParam());
    ASSERT_GT(includes.size(), 50u) << "hardly anything was read";
    for (const Include& include : includes)
        if (const auto wrong = fault(include))
            ADD_FAILURE() << *wrong;
}

INSTANTIATE_TEST_SUITE_P(Folders, Levels, testing::Values("core", "app"),
                         [](const auto& param) { return std::string(param.param); });

TEST(LevelRules, SeeWhatIsWrong)
{
    EXPECT_FALSE(fault({"core/needle/run.cpp", "core/pattern/row.h", true}));
    EXPECT_FALSE(fault({"core/wording/writer/writer.cpp", "core/needle/ledger.h", true}));
    EXPECT_FALSE(fault({"core/files/json_tree.cpp", "nlohmann/json.hpp", false}));
    EXPECT_TRUE(fault({"core/pattern/row.h", "core/needle/ledger.h", true}));
    EXPECT_TRUE(fault({"core/needle/run.cpp", "core/chart/chart.h", true})) << "neighbours of one level";
    EXPECT_TRUE(fault({"core/chart/chart.cpp", "QString", false}));
    EXPECT_TRUE(fault({"core/chart/chart.cpp", "app/painting/theme.h", true}));
    EXPECT_TRUE(fault({"app/exports/svg_export.cpp", "nlohmann/json.hpp", false}));
    EXPECT_TRUE(fault({"app/exports/svg_export.cpp", "app/window/window.h", true}));
}

} // namespace
