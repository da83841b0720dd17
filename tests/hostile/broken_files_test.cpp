#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "core/pattern/questions.h"
#include "tests/hostile/broken_files.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <random>

namespace shawlwright::tests {
namespace {

std::string faultsAsText(const ReadPattern& read)
{
    std::string text;
    for (const Fault& fault : read.faults)
        text += (text.empty() ? "" : "\n") + toText(fault);
    return text;
}

TEST(BrokenFiles, TheSoundOneIsRead)
{
    const ReadPattern read = readPattern(soundFile(), builtInCatalogue());
    EXPECT_EQ(faultsAsText(read), "");
    EXPECT_TRUE(read.pattern.has_value());
}

TEST(BrokenFiles, EachIsRefusedWithItsPlace)
{
    for (const BrokenFile& file : brokenFiles()) {
        const ReadPattern read = readPattern(file.text, builtInCatalogue());
        EXPECT_FALSE(read.pattern.has_value()) << file.name;
        EXPECT_EQ(faultsAsText(read), file.expected) << file.name;
    }
}

// The ones the schema must refuse too are left for tests/formats/validate.py.
TEST(BrokenFiles, AreLeftForTheSchema)
{
    const std::filesystem::path folder = std::filesystem::path(SHAWLWRIGHT_BUILD) / "refused";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    for (const BrokenFile& file : brokenFiles())
        if (file.schemaSees && file.text.size() < 1'000'000) {
            std::ofstream out(folder / (file.name + ".shawl"), std::ios::binary);
            out << file.text;
            EXPECT_TRUE(out.good()) << file.name;
        }
}

TEST(BrokenFiles, DepthIsTakenUpToTheLimit)
{
    for (const int levels : {1, 10, mostFileDepth - 1}) { // the pattern itself is one more
        std::string text = soundFile();
        text.insert(1, "\"extra\": " + std::string(levels, '[') + std::string(levels, ']') + ",");
        EXPECT_TRUE(readPattern(text, builtInCatalogue()).pattern.has_value()) << levels;
    }
}

TEST(BrokenFiles, AFileOverTheLimitIsNotLookedInto)
{
    const std::string text(static_cast<std::size_t>(mostFileBytes) + 1, ' ');
    EXPECT_EQ(faultsAsText(readPattern(text, builtInCatalogue())),
              "the file has 67108865 bytes; a pattern has at most 67108864");
}

// Wide and empty: what a small file asks for must not be given.
TEST(BrokenFiles, RowsAreCountedBeforeTheyAreMade)
{
    std::string text =
        R"({"format": 1, "yarns": [{"code": "M"}], "castOn": {"stitches": 1, "yarn": "M"}, "sections": [)"
        R"({"id": 1, "columns": 2000, "rows": [)";
    for (int row = 1; row <= 10'001; ++row)
        text += (row > 1 ? ",\n" : "\n") + (R"({"id": )" + std::to_string(row)) +
                R"(, "side": "RS", "yarn": "M"})";
    EXPECT_EQ(faultsAsText(readPattern(text + "]}]}", builtInCatalogue())),
              "line 10002, column 1, sections[0].rows[10000]: the rows up to here have more than 20000000 "
              "cells; divide the "
              "pattern, or make its sections narrower");
}

TEST(BrokenFiles, TwentyFaultsAreEnough)
{
    std::string text = R"({"format": 1, "yarns": [)";
    for (int yarn = 0; yarn < 200; ++yarn)
        text += yarn == 0 ? "{}" : ",\n{}";
    const ReadPattern read = readPattern(text + "]}", builtInCatalogue());
    ASSERT_EQ(read.faults.size(), 20U);
    for (std::size_t i = 1; i < read.faults.size(); ++i)
        EXPECT_LE(read.faults[i - 1].at.line, read.faults[i].at.line);
}

// Crossing each with each would be two million faults.
TEST(BrokenFiles, ManyCrossingRepeatsStaySmall)
{
    std::string boxes;
    for (int id = 1; id <= 2000; ++id)
        boxes += (id > 1 ? "," : "") + (R"({"id": )" + std::to_string(id)) +
                 R"(, "rows": [1, 1], "columns": [)" + std::to_string(1 + id % 3) + ", " +
                 std::to_string(4 + id % 3) + "]}";
    std::string text = soundFile();
    const std::size_t from = text.find("{\"id\": 1, \"rows\"");
    text.replace(from, text.find('\n', from) - from, boxes);
    const ReadPattern read = readPattern(text, builtInCatalogue());
    EXPECT_EQ(read.faults.size(), 20U);
}

// Sound files, broken at random: a fault or a sound pattern, never a crash. The seed is fixed; a case that
// fails names its number.
TEST(BrokenFiles, MutationsGiveAFaultOrAPattern)
{
    std::ifstream in(SHAWLWRIGHT_SOURCE "/tests/data/formats/format-1.shawl", std::ios::binary);
    const std::string rich{std::istreambuf_iterator<char>(in), {}};
    ASSERT_FALSE(rich.empty());
    const std::string pieces[] = {"\"",
                                  "{",
                                  "}",
                                  "[",
                                  "]",
                                  ",",
                                  ":",
                                  "0",
                                  "-1",
                                  "1e9",
                                  "null",
                                  "true",
                                  "\\",
                                  "\\u0000",
                                  "\xFF",
                                  "*",
                                  "@",
                                  " ",
                                  "99999999999999999999",
                                  "\"id\": 1, ",
                                  "k*2000",
                                  "2000"};
    std::mt19937 random(20260);
    int patterns = 0, faults = 0;
    for (int number = 0; number < 4000; ++number) {
        std::string text = number % 2 == 0 ? rich : soundFile();
        for (auto changes = 1 + random() % 3; changes > 0; --changes) {
            const std::size_t at = random() % text.size();
            switch (random() % 4) {
            case 0:
                text.erase(at, 1 + random() % 12);
                break;
            case 1:
                text.insert(at, pieces[random() % std::size(pieces)]);
                break;
            case 2: // a stretch stands twice, or elsewhere
                text.insert(random() % text.size(), text.substr(at, random() % 80));
                break;
            default:
                text[at] = static_cast<char>(random());
            }
        }
        const ReadPattern read = readPattern(text, builtInCatalogue());
        ASSERT_NE(read.pattern.has_value(), !read.faults.empty()) << number;
        ASSERT_LE(read.faults.size(), 20U) << number;
        for (const Fault& fault : read.faults)
            ASSERT_FALSE(fault.message.empty()) << number;
        if (!read.pattern) {
            ++faults;
            continue;
        }
        ++patterns;
        const std::string written = writePattern(*read.pattern, builtInCatalogue());
        const ReadPattern again = readPattern(written, builtInCatalogue());
        ASSERT_TRUE(again.pattern.has_value()) << number << ": " << faultsAsText(again);
        ASSERT_EQ(*again.pattern, *read.pattern) << number;
        ASSERT_EQ(writePattern(*again.pattern, builtInCatalogue()), written) << number;
    }
    EXPECT_GT(patterns, 100); // both kinds were met
    EXPECT_GT(faults, 100);
}

} // namespace
} // namespace shawlwright::tests
