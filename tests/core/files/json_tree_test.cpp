#include "core/files/json_tree.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace shawlwright::tests {
namespace {

using namespace files;

TEST(JsonTree, RemembersWhereEachValueStands)
{
    const std::string text = "{\n  \"größe\": [1, -2.50e1 , true,\n\t\"a\\\"b\", {}],\n  \"last\": null}";
    const auto tree = readTree(text, 16);
    ASSERT_TRUE(tree.ok());
    struct Case {
        std::uint32_t node;
        JsonKind kind;
        int line, column;
        const char* path;
        const char* written;
    };
    const Case cases[] = {
        {1, JsonKind::Key, 2, 3, "größe", "\"größe\""},
        {2, JsonKind::List, 2, 12, "größe", R"([1, -2.50e1, true, "a\"b", {}])"},
        {3, JsonKind::Whole, 2, 13, "größe[0]", "1"},
        {4, JsonKind::Number, 2, 16, "größe[1]", "-2.50e1"},
        {5, JsonKind::Boolean, 2, 26, "größe[2]", "true"},
        {6, JsonKind::Text, 3, 2, "größe[3]", R"("a\"b")"},
        {7, JsonKind::Object, 3, 10, "größe[4]", "{}"},
        {8, JsonKind::Key, 4, 3, "last", "\"last\""},
        {9, JsonKind::Null, 4, 11, "last", "null"},
    };
    ASSERT_EQ(tree.value().nodes.size(), 1 + std::size(cases));
    for (const Case& c : cases) {
        const JsonNode& node = tree.value().nodes[c.node];
        EXPECT_EQ(node.kind, c.kind) << c.node;
        EXPECT_EQ(tree.value().placeOf(node.at), (Place{c.line, c.column})) << c.node;
        EXPECT_EQ(tree.value().pathOf(c.node), c.path) << c.node;
        EXPECT_EQ(tree.value().onOneLine(c.node), c.written) << c.node;
    }
    EXPECT_EQ(tree.value().items(2), (std::vector<std::uint32_t>{3, 4, 5, 6, 7}));
}

TEST(JsonTree, SkipsAByteOrderMark)
{
    const auto tree = readTree("\xEF\xBB\xBF[7]", 16);
    ASSERT_TRUE(tree.ok());
    EXPECT_EQ(tree.value().placeOf(tree.value().nodes[1].at), (Place{1, 2}));
}

// What is put on one line still says the same to another reader.
TEST(JsonTree, OneLineKeepsTheMeaning)
{
    const std::string text = "[ {\"a : b\" :\n[1,2 , \"x,  y\\\\\" ]} ,\t\"\\u00e9\\n\", 1e5 , [ ], { } ]";
    const auto tree = readTree(text, 16);
    ASSERT_TRUE(tree.ok());
    const std::string line = tree.value().onOneLine(0);
    EXPECT_EQ(line.find('\n'), std::string::npos);
    EXPECT_EQ(nlohmann::json::parse(line), nlohmann::json::parse(text));
}

} // namespace
} // namespace shawlwright::tests
