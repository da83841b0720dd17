// Broken lists of stitches: a fault with its place, never a crash, never half a list.
#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>

namespace shawlwright {
namespace {

const std::string none =
    R"({"key": "no_st", "name": "no stitch", "family": "basic", "takesUp": 0, "leaves": 0, "onRS": "-", "onWS": "-", "howToRS": "Skip.", "source": "here"})";

// A list of no_st and one more stitch, whose text has `from` replaced by `to`.
std::string listWith(std::string_view from, std::string_view to)
{
    std::string fern =
        R"({"key": "fern", "name": "fern", "family": "decrease", "takesUp": 3, "leaves": 2, "lean": "left", "heads": ["knit", "purl"], "onRS": "fern", "onWS": "fern p", "howToRS": "Work it.", "mirror": "fern", "source": "here", "drawing": "by-loops"})";
    if (!from.empty()) {
        const std::size_t at = fern.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        fern.replace(at, from.size(), to);
    }
    return "{\"stitches\": [\n" + none + ",\n" + fern + "\n]}";
}

Fault faultOf(const std::string& text)
{
    const auto result = readStitches(text);
    EXPECT_FALSE(result.ok()) << text;
    return result.ok() ? Fault{} : result.fault();
}

TEST(StitchFile, reads)
{
    const auto result = readStitches(listWith("", ""));
    ASSERT_TRUE(result.ok()) << toText(result.fault());
    ASSERT_EQ(result.value().size(), 2u);
    const Stitch& fern = result.value().back();
    EXPECT_EQ(fern.id.value, 1);
    EXPECT_EQ(fern.key, "fern");
    EXPECT_EQ(fern.family, Family::Decrease);
    EXPECT_EQ(fern.takesUp, 3);
    EXPECT_EQ(fern.leaves, 2);
    EXPECT_EQ(fern.lean, Lean::Left);
    EXPECT_EQ(fern.heads, (std::vector{HeadKind::Knit, HeadKind::Purl}));
    EXPECT_EQ(fern.onWS, "fern p");
    EXPECT_FALSE(fern.sameOnBothSides);
    EXPECT_EQ(fern.drawing, Drawing::ByLoops);
}

struct Wrong {
    const char* from;
    const char* to;
    const char* where;
    const char* says;
};

TEST(StitchFile, wrongMembersAreToldWithTheirPlace)
{
    const Wrong cases[] = {
        {R"("takesUp": 3)", R"("takesUp": "3")", "stitches[1].takesUp", "whole number"},
        {R"("takesUp": 3)", R"("takesUp": 3.0)", "stitches[1].takesUp", "whole number"},
        {R"("takesUp": 3)", R"("takesUp": true)", "stitches[1].takesUp", "whole number"},
        {R"("takesUp": 3)", R"("takesUp": -1)", "stitches[1].takesUp", "-1"},
        {R"("takesUp": 3)", R"("takesUp": 99999999999999999999)", "stitches[1].takesUp",
         "99999999999999999999"},
        {R"("takesUp": 3, )", "", "stitches[1]", "takesUp"},
        {R"("leaves": 2)", R"("leaves": 65)", "stitches[1].leaves", "65"},
        {R"("leaves": 2)", R"("leaves": 3)", "stitches[1]", "leaves 3 stitches but describes 2"},
        {R"("lean": "left")", R"("lean": "sideways")", "stitches[1].lean", "sideways"},
        {R"("lean": "left")", R"("lean": null)", "stitches[1].lean", "null"},
        {R"("lean": "left")", R"("manner": "felted")", "stitches[1].manner", "felted"},
        {R"("family": "decrease")", R"("family": "crochet")", "stitches[1].family", "crochet"},
        {R"("family": "decrease", )", "", "stitches[1]", "family"},
        {R"(["knit", "purl"])", R"(["knit", "felt"])", "stitches[1].heads[1]", "felt"},
        {R"(["knit", "purl"])", R"("knit")", "stitches[1].heads", "list"},
        {R"("drawing": "by-loops")", R"("drawing": "by heart")", "stitches[1].drawing", "by heart"},
        {R"("drawing": "by-loops")", R"("drawing": "crossing")", "stitches[1]", "crosses 0 over 0"},
        {R"("onWS": "fern p")", R"("onWS": "")", "stitches[1]", "no abbreviation"},
        {R"("onWS": "fern p")", R"("onWS": 7)", "stitches[1].onWS", "text in quotes"},
        {R"("onWS": "fern p")", R"("onWS": "fern p", "sameOnBothSides": "no")", "stitches[1].sameOnBothSides",
         "true or false"},
        {R"("onWS": "fern p")", R"("onWS": "fern p", "colums": 3)", "stitches[1]", "colums"},
        {R"("key": "fern")", R"("key": "Fern")", "stitches[1]", "lower case"},
        {R"("key": "fern")", R"("key": "no_st")", "stitches[1]", "taken by stitches[0]"},
        {R"("mirror": "fern")", R"("mirror": "moss")", "stitches[1]", "moss"},
        {R"("howToRS": "Work it.", )", "", "stitches[1]", "howToRS"},
        {R"("source": "here", )", "", "stitches[1]", "source"},
    };
    for (const Wrong& one : cases) {
        const Fault fault = faultOf(listWith(one.from, one.to));
        EXPECT_EQ(fault.where, one.where) << one.to;
        EXPECT_NE(fault.message.find(one.says), std::string::npos) << one.to << " -> " << fault.message;
        EXPECT_EQ(fault.at.line, 3) << one.to;
        EXPECT_GE(fault.at.column, 1) << one.to;
    }
}

TEST(StitchFile, notJson)
{
    struct Broken {
        const char* text;
        Place at;
    };
    const Broken cases[] = {{"{\"stitches\": [}", {1, 15}}, {"{\n \"stitches\" [] }", {2, 13}}};
    for (const Broken& one : cases)
        EXPECT_EQ(faultOf(one.text).at, one.at) << one.text << " -> " << toText(faultOf(one.text));
    const std::string whole = listWith("", "");
    for (std::size_t length = 1; length + 1 < whole.size(); length += 7)
        EXPECT_GT(faultOf(whole.substr(0, length)).at.line, 0) << length;
}

TEST(StitchFile, otherJson)
{
    for (const char* text : {"", "null", "[]", "7", "\"stitches\"", "{}", R"({"stitches": {}})",
                             R"({"stitches": []})", R"({"stitches": [7]})", R"({"stitches": [[]]})"})
        EXPECT_FALSE(faultOf(text).message.empty()) << text;
    EXPECT_FALSE(faultOf(std::string(100000, '[')).message.empty()) << "deeply nested";
}

TEST(StitchFile, noStitchMustComeFirst)
{
    const std::string fernFirst =
        R"({"stitches": [{"key": "k", "name": "knit", "family": "basic", "takesUp": 1, "leaves": 1, "onRS": "k", "onWS": "p", "howToRS": "Knit.", "source": "here"}, )" +
        none + "]}";
    EXPECT_NE(faultOf(fernFirst).message.find("no_st"), std::string::npos);
}

TEST(StitchFile, tooManyStitches)
{
    std::string text = "{\"stitches\": [" + none;
    for (int i = 0; i < 1000; ++i)
        text += "," + none;
    EXPECT_NE(faultOf(text + "]}").message.find("1001"), std::string::npos);
}

} // namespace
} // namespace shawlwright
