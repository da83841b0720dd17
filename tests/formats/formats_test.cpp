// Every format ever written: opens, means what it meant, and is saved to exactly today's bytes.

#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "tests/core/files/rich_pattern.h"
#include "tests/support/random_pattern.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace shawlwright::tests {
namespace {

std::string bytesOf(const std::filesystem::path& path)
{
    std::ifstream in(path, std::ios::binary);
    EXPECT_TRUE(in.good()) << path;
    return {std::istreambuf_iterator<char>(in), {}};
}

TEST(Formats, Format1OpensAndIsSavedAsItWas)
{
    const std::string bytes = bytesOf(SHAWLWRIGHT_SOURCE "/tests/data/formats/format-1.shawl");
    const ReadPattern read = readPattern(bytes, builtInCatalogue());
    for (const Fault& fault : read.faults)
        ADD_FAILURE() << toText(fault);
    ASSERT_TRUE(read.pattern.has_value());
    EXPECT_EQ(*read.pattern, richPattern());
    EXPECT_EQ(writePattern(*read.pattern, builtInCatalogue()), bytes);
}

TEST(Formats, EachSampleIsSavedAsItWas)
{
    for (const auto& entry : std::filesystem::recursive_directory_iterator(SHAWLWRIGHT_SOURCE "/samples")) {
        if (entry.path().extension() != ".shawl")
            continue;
        const std::string bytes = bytesOf(entry.path());
        const ReadPattern read = readPattern(bytes, builtInCatalogue());
        for (const Fault& fault : read.faults)
            ADD_FAILURE() << entry.path() << ": " << toText(fault);
        if (read.pattern) {
            EXPECT_EQ(writePattern(*read.pattern, builtInCatalogue()), bytes) << entry.path();
        }
    }
}

// Left for validate.py: what the program writes, in many shapes.
TEST(Formats, FilesAreLeftForTheSchema)
{
    const std::filesystem::path folder = std::filesystem::path(SHAWLWRIGHT_BUILD) / "written";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "rich.shawl", std::ios::binary) << writePattern(richPattern(), builtInCatalogue());
    for (unsigned seed = 1; seed <= 40; ++seed) {
        std::mt19937 random(seed);
        const Pattern pattern = randomPattern(random);
        const std::string text = writePattern(pattern, builtInCatalogue());
        const ReadPattern read = readPattern(text, builtInCatalogue());
        ASSERT_TRUE(read.pattern.has_value()) << "seed " << seed << ": " << toText(read.faults.front());
        EXPECT_EQ(*read.pattern, pattern) << "seed " << seed;
        std::ofstream out(folder / ("random-" + std::to_string(seed) + ".shawl"), std::ios::binary);
        out << text;
        EXPECT_TRUE(out.good());
    }
}

} // namespace
} // namespace shawlwright::tests
