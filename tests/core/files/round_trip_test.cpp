#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "core/pattern/questions.h"
#include "tests/core/files/rich_pattern.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <sstream>

namespace shawlwright::tests {
namespace {

Pattern readBack(const std::string& text)
{
    ReadPattern read = readPattern(text, builtInCatalogue());
    for (const Fault& fault : read.faults)
        ADD_FAILURE() << toText(fault);
    return read.pattern.value_or(Pattern());
}

std::vector<std::string> lines(const std::string& text)
{
    std::vector<std::string> all;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        all.push_back(line);
    return all;
}

TEST(RoundTrip, ARichPatternComesBackWhole)
{
    const Pattern pattern = richPattern();
    ASSERT_EQ(faultsOf(pattern, builtInCatalogue().with(pattern.head.stitches)), Faults());
    const std::string text = writePattern(pattern, builtInCatalogue());
    const Pattern back = readBack(text);
    EXPECT_EQ(back.head, pattern.head);
    EXPECT_EQ(back, pattern);
    EXPECT_EQ(writePattern(back, builtInCatalogue()), text);
}

TEST(RoundTrip, FormatIsTheFirstKey)
{
    const std::string text = writePattern(richPattern(), builtInCatalogue());
    EXPECT_TRUE(text.starts_with("{\n  \"format\": 1,\n"));
    EXPECT_TRUE(text.ends_with("}\n"));
}

TEST(RoundTrip, OneEditedCellIsOneLine)
{
    Pattern pattern = richPattern();
    const auto before = lines(writePattern(pattern, builtInCatalogue()));
    Row row = *pattern.sections[0].rows[1];
    row.cells[3] = cellsOf("k").front();
    pattern.sections[0].rows[1] = std::make_shared<Row>(row);
    const auto after = lines(writePattern(pattern, builtInCatalogue()));
    ASSERT_EQ(before.size(), after.size());
    int differing = 0;
    for (std::size_t i = 0; i < before.size(); ++i)
        differing += before[i] != after[i] ? 1 : 0;
    EXPECT_EQ(differing, 1);
}

// Each single value that isn't the usual one is kept, whatever stands beside it.
TEST(RoundTrip, KeepsEachValueAlone)
{
    const std::vector<std::function<void(Row&)>> changes = {
        [](Row& r) { r.side = Side::WS; },
        [](Row& r) { r.start.kind = StartKind::AfterSlipping; },
        [](Row& r) { r.start.kind = StartKind::AtEdge; },
        [](Row& r) { r.start.slip = Quantity(4); }, // left over from a start that was changed
        [](Row& r) { r.start.joins = true; },
        [](Row& r) { r.finish.kind = FinishKind::Round; },
        [](Row& r) { r.finish.kind = FinishKind::TurnEarly; },
        [](Row& r) { r.finish.method = TurnMethod::DoubleStitch; },
        [](Row& r) { r.finish.method = TurnMethod::YarnOver; },
        [](Row& r) { r.finish.method = TurnMethod::PinnedYarn; },
        [](Row& r) { r.finish.method = TurnMethod::TwinStitch; },
        [](Row& r) { r.finish.breaksYarn = true; },
        [](Row& r) { r.stated = Quantity(0); },
        [](Row& r) { r.label = "7"; },
        [](Row& r) { r.unknown = R"({"a": {"b": []}})"; },
    };
    for (std::size_t i = 0; i < changes.size(); ++i) {
        Pattern pattern = richPattern();
        Row row = *pattern.sections[0].rows[2];
        changes[i](row);
        pattern.sections[0].rows[2] = std::make_shared<Row>(row);
        EXPECT_EQ(readBack(writePattern(pattern, builtInCatalogue())), pattern) << i;
    }
}

TEST(RoundTrip, KeepsKeysItDoesNotKnowWhereverTheyStand)
{
    // By hand: unknown keys first, with blanks of their own and a value over several lines.
    const std::string text =
        "{\"from\": {\"tomorrow\":[1,\n 2.0]},\"format\":1,"
        "\"castOn\":{\"new\": 1 ,\"stitches\":3,\"yarn\":\"MC\"},"
        "\"yarns\":[{\"spun\":\"S\",\"code\":\"MC\"}],"
        "\"sections\":[{\"id\":1,\"columns\":2,\"grid\":null,"
        "\"rows\":[{\"odd\":{},\"id\":1,\"side\":\"RS\",\"yarn\":\"MC\",\"cells\":\"k k\"}]}]}";
    const Pattern pattern = readBack(text);
    EXPECT_EQ(pattern.head.unknown, R"({"from": {"tomorrow": [1, 2.0]}})");
    EXPECT_EQ(pattern.head.castOn.unknown, R"({"new": 1})");
    EXPECT_EQ(pattern.head.yarns.at(0).unknown, R"({"spun": "S"})");
    EXPECT_EQ(pattern.sections.at(0).frame.unknown, R"({"grid": null})");
    EXPECT_EQ(pattern.sections.at(0).rows.at(0)->unknown, R"({"odd": {}})");
    EXPECT_EQ(readBack(writePattern(pattern, builtInCatalogue())), pattern);
}

TEST(RoundTrip, MotifsKeepTheirCells)
{
    Pattern pattern = richPattern();
    Motif leaf{"Leaf \"5\"", 5, {cellsOf("k", 2) + cellsOf("yo2", 1) + cellsOf("k", 1, YarnId{2}), {}}, R"({"by": "N"})"};
    leaf.rows[1].resize(5);
    pattern.head.motifs = {leaf, Motif{"Bud", 1, {cellsOf("k2tog", 1)}}};
    const std::string text = writePattern(pattern, builtInCatalogue());
    EXPECT_EQ(readBack(text), pattern);
    EXPECT_EQ(writePattern(readBack(text), builtInCatalogue()), text);
    const auto all = lines(text);
    EXPECT_EQ(std::count_if(all.begin(), all.end(), [](const std::string& line) { // a row of it per line
                  return line.find("\"k*2 yo2 k@") != std::string::npos && line.find(':') == std::string::npos;
              }),
              1);
}

TEST(RoundTrip, TheOrderOfKeysDoesNotMatter)
{
    const Pattern pattern = readBack(R"({"sections":[{"rows":[{"cells":"k@B","yarn":"A","side":"RS","id":4}],
        "boxes":[{"columns":[1,1],"rows":[4,4],"id":1}],"columns":1,"id":1}],
        "castOn":{"yarn":"B","stitches":3},"yarns":[{"code":"A"},{"code":"B"}],"format":1})");
    ASSERT_EQ(pattern.sections.size(), 1U);
    EXPECT_EQ(pattern.sections[0].rows[0]->cells, cellsOf("k", 1, YarnId{2}));
}

TEST(RoundTrip, AnOwnStitchGoesBeforeABuiltInOne)
{
    Pattern pattern = richPattern();
    pattern.head.stitches[0].key = "k2tog"; // a later program may come to know a stitch of a designer's key
    Row row = rowOf(50, Side::RS, {});
    for (std::uint8_t part = 0; part < 3; ++part)
        row.cells[part] = {StitchId{1001}, {}, part};
    pattern.sections[0].rows = {std::make_shared<Row>(row)};
    pattern.sections[0].frame.boxes.clear();
    pattern.sections[0].frame.brackets.clear();
    EXPECT_EQ(readBack(writePattern(pattern, builtInCatalogue())), pattern);
}

TEST(RoundTrip, ShortRowsAreReadAsWideAsTheSection)
{
    Pattern pattern = richPattern();
    Row row = *pattern.sections[0].rows[2];
    row.cells = cellsOf("k", 3);
    pattern.sections[0].rows[2] = std::make_shared<Row>(row);
    const Pattern back = readBack(writePattern(pattern, builtInCatalogue()));
    row.cells.resize(24);
    EXPECT_EQ(*back.sections.at(0).rows.at(2), row);
}

} // namespace
} // namespace shawlwright::tests
