// The small JSON writer, read back by nlohmann_json, which is not ours.

#include "core/files/json_out.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace shawlwright::tests {
namespace {

using namespace files;

TEST(JsonOut, QuotesWhatAnotherReaderUnquotes)
{
    std::string all;
    for (int c = 0; c < 0x80; ++c)
        all += static_cast<char>(c);
    all += "Grüße 測 \xF0\x9F\xA7\xB6";
    const std::string back = nlohmann::json::parse(inQuotes(all)).get<std::string>();
    EXPECT_EQ(back.substr(0, 3), "\xEF\xBF\xBD"); // a NUL is no letter
    EXPECT_EQ(back.substr(3), all.substr(1));
}

TEST(JsonOut, ReplacesWhatIsNotUtf8)
{
    struct Case {
        const char* bytes;
        const char* json;
    };
    const Case cases[] = {
        {"a\x80z", "\"a\xEF\xBF\xBDz\""},                             // a continuation alone
        {"\xC3", "\"\xEF\xBF\xBD\""},                                 // cut short
        {"\xED\xA0\x80", "\"\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD\""}, // half a surrogate pair
        {"\xC0\xAF", "\"\xEF\xBF\xBD\xEF\xBF\xBD\""},                 // overlong
    };
    for (const Case& c : cases) {
        EXPECT_EQ(inQuotes(c.bytes), c.json);
        EXPECT_TRUE(nlohmann::json::accept(inQuotes(c.bytes)));
    }
}

TEST(JsonOut, NumbersAreTheShortestThatReadBack)
{
    EXPECT_EQ(numeral(9.80665), "9.80665");
    EXPECT_EQ(numeral(0.1), "0.1");
    EXPECT_EQ(numeral(4.0), "4");
    EXPECT_EQ(numeral(std::nan("")), "0");
    EXPECT_EQ(numeral(HUGE_VAL), "0");
    for (const double number : {1.0 / 3, 1e-300, 123456789.123, 5e-324, 1.7976931348623157e308})
        EXPECT_EQ(nlohmann::json::parse(numeral(number)).get<double>(), number);
    EXPECT_EQ(numeral(Quantity(7)), "7");
    EXPECT_EQ(numeral(Quantity({7, 9, 11})), "[7, 9, 11]");
}

TEST(JsonOut, PutsMembersInTheOrderOfTheCalls)
{
    ObjectText inner;
    inner.whole("b", 2);
    inner.text("empty", "");
    inner.truth("no", false);
    inner.unknown(R"({"z": 1, "y": [2]})");
    ObjectText out(2);
    out.raw("inner", std::move(inner).done());
    out.lines("list", {"1", "2"});
    out.lines("none", {});
    out.unknown("{}");
    EXPECT_EQ(std::move(out).done(),
              "{\n  \"inner\": {\"b\": 2, \"z\": 1, \"y\": [2]},\n  \"list\": [\n    1,\n    2\n  ]\n}");
}

} // namespace
} // namespace shawlwright::tests
