// "shawlwright read": written instructions become a pattern file; what is not understood is told by line and
// column.

#include "tests/commandline/program.h"

#include <gtest/gtest.h>

namespace shawlwright::tests {
namespace {

// Lambert, My Knitting Book (1843), e-text 33502, Shetland pattern: multiple of 6 and 4 over; 16 is ours.
const char* const lace = "Lace\n\nCast on 16 sts.\n\nEdging\nRow 1 (RS): k2, *yo, k1, yo, k1, sk2p, k1; rep "
                         "from * to last 2 sts, k2.\n"
                         "Row 2 (WS): k2, p to last 2 sts, k2.\n";

TEST(ReadCommand, WritesAPatternThatChecks)
{
    const Folder folder;
    const std::string text = folder.write("lace.txt", lace);
    const std::string out = folder.at("lace.shawl");
    const Ran read = shawlwright({"read", text, "-o", out});
    EXPECT_EQ(read.code, 0) << read.err;
    EXPECT_EQ(read.out, "");
    EXPECT_EQ(bytesOf(text), lace);
    const Ran check = shawlwright({"check", out});
    EXPECT_EQ(check.code, 0) << check.out << check.err;
    const Ran rows = shawlwright({"rows", out});
    EXPECT_NE(rows.out.find("*yo, k1, yo, k1, sk2p, k1; rep from * to last 2 sts"), std::string::npos)
        << rows.out;
}

TEST(ReadCommand, KeepsWhatItDoesNotUnderstandAsWords)
{
    const Folder folder;
    const std::string text = folder.write("lace.txt", std::string(lace) + "Row 3 (RS): k2, flurb, k2.\n");
    const std::string out = folder.at("lace.shawl");
    const Ran read = shawlwright({"read", text, "-o", out});
    EXPECT_EQ(read.code, 1);
    EXPECT_NE(read.err.find("8:17: error: found 'flurb'"), std::string::npos) << read.err;
    EXPECT_NE(bytesOf(out).find("k2, flurb, k2."), std::string::npos);
}

TEST(ReadCommand, RefusesItsOwnInputAndTextWithoutRows)
{
    const Folder folder;
    const std::string text = folder.write("lace.txt", lace);
    EXPECT_EQ(shawlwright({"read", text, "-o", text}).code, 2);
    EXPECT_EQ(bytesOf(text), lace);
    EXPECT_EQ(shawlwright({"read", text}).code, 2);
    const std::string poem = folder.write("poem.txt", "Rain again,\nwool again.\n");
    const std::string out = folder.at("poem.shawl");
    EXPECT_EQ(shawlwright({"read", poem, "-o", out}).code, 2);
    EXPECT_EQ(bytesOf(out), "");
}

TEST(ReadCommand, StandardInputToStandardOutput)
{
    const Ran read = shawlwright({"read", "-", "-o", "-"}, lace);
    EXPECT_EQ(read.code, 0) << read.err;
    EXPECT_NE(read.out.find("\"format\""), std::string::npos);
}

} // namespace
} // namespace shawlwright::tests
