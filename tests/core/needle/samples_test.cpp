// The samples that come with the program: nothing is found in any version or size, and every row can be
// written.

#include "core/derived/derived.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

Pattern loaded(const std::filesystem::path& path)
{
    std::ifstream in(path, std::ios::binary);
    std::stringstream text;
    text << in.rdbuf();
    ReadPattern read = readPattern(text.str(), builtInCatalogue());
    for (const Fault& fault : read.faults)
        ADD_FAILURE() << path << ": " << toText(fault);
    return read.pattern.value_or(Pattern{});
}

std::vector<std::filesystem::path> samples()
{
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(SHAWLWRIGHT_SOURCE "/samples"))
        if (entry.path().extension() == ".shawl")
            paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    return paths;
}

} // namespace

TEST(Samples, NothingIsFoundAndEveryRowIsWritten)
{
    ASSERT_GE(samples().size(), 3u);
    for (const auto& path : samples()) {
        const Pattern pattern = loaded(path);
        EXPECT_FALSE(pattern.head.introduction.empty()) << path;
        Derived derived(builtInCatalogue(), pattern);
        for (int version = 0; version < versionCount(pattern); ++version)
            for (int size = 0; size < sizeCount(pattern); ++size) {
                derived.show(pattern, {version, size});
                EXPECT_EQ(told(derived.ledger(), pattern), "") << path;
                EXPECT_TRUE(derived.findings().empty()) << path; // nor do versions disagree
                for (std::size_t s = 0; s < pattern.sections.size(); ++s) {
                    if (!belongsTo(pattern.sections[s], pattern, version))
                        continue;
                    const auto& rows = derived.written(pattern, static_cast<int>(s));
                    EXPECT_FALSE(rows.empty()) << path;
                    for (const WrittenRow& row : rows)
                        EXPECT_FALSE(row.text.empty()) << path << ", " << row.label;
                }
            }
    }
}

// The large one holds what a designer of such shawls needs; if someone simplifies it, this tells.
TEST(Samples, TheLargeShawlHasItsHardParts)
{
    const Pattern pattern = loaded(SHAWLWRIGHT_SOURCE "/samples/the-saltings-at-ebb.shawl");
    ASSERT_EQ(versionCount(pattern), 2);
    int slides = 0, slipped = 0, lastTurnsInRepeats = 0, swallowed = 0, beganOnWrongSide = 0, boundOff = 0;
    std::vector<std::string> keys;
    for (const Section& section : pattern.sections) {
        for (const Box& box : section.frame.boxes)
            if (box.until == BoxUntil::LastTurn)
                for (const Bracket& bracket : section.frame.brackets) {
                    const int row = rowIndex(section, box.firstRow);
                    const bool inside = rowIndex(section, bracket.firstRow) <= row &&
                                        row <= rowIndex(section, bracket.lastRow);
                    lastTurnsInRepeats += inside ? 1 : 0;
                    beganOnWrongSide +=
                        inside && section.rows[static_cast<std::size_t>(row)]->side == Side::WS ? 1 : 0;
                }
        for (const RowRef& row : section.rows) {
            slides += row->finish.kind == FinishKind::Slide ? 1 : 0;
            slipped += row->start.kind == StartKind::AfterSlipping ? 1 : 0;
            boundOff += row->finish.kind == FinishKind::BindOff ? 1 : 0;
            for (const MarkerMove& off : row->moves)
                swallowed += off.kind == MoveKind::Remove &&
                             std::any_of(row->moves.begin(), row->moves.end(), [&](const MarkerMove& on) {
                                 return on.kind == MoveKind::Place && on.marker == off.marker;
                             });
            for (const Cell& cell : row->cells)
                keys.push_back(builtInCatalogue().stitch(cell.stitch).key);
        }
    }
    EXPECT_GE(slides, 8);
    EXPECT_GE(slipped, 3);
    EXPECT_GE(lastTurnsInRepeats, 4);
    EXPECT_GE(beganOnWrongSide, 2);
    EXPECT_GE(swallowed, 2);
    EXPECT_EQ(boundOff, 1);
    for (const char* key :
         {"yo2", "k2tog", "ssk", "k3tog", "k5tog", "s2kp", "yo2_k1p1", "yo2_k1p1k1p1", "sl1yo", "brkyobrk"})
        EXPECT_NE(std::find(keys.begin(), keys.end(), key), keys.end()) << key;

    const Ledger ridged = run(pattern, builtInCatalogue(), {0, 0});
    const Ledger ribbed = run(pattern, builtInCatalogue(), {1, 0});
    const auto countAt = [&](const Ledger& ledger, const std::string& title) {
        for (std::size_t i = 0; i < ledger.lines.size(); ++i)
            if (pattern.sections[static_cast<std::size_t>(ledger.rows[i].section)].frame.title == title)
                return ledger.lines[i].before;
        return -1;
    };
    EXPECT_EQ(countAt(ridged, "Sandbanks"), 225);
    EXPECT_EQ(countAt(ribbed, "Sandbanks"), 225);
}
