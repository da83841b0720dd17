#include "core/base/text.h"

#include <gtest/gtest.h>

#include <climits>
#include <clocale>
#include <cmath>
#include <limits>
#include <locale>
#include <sstream>

namespace shawlwright {
namespace {

TEST(Numbers, WholeOnesReadAsTheyAreWritten)
{
    for (const int number : {0, 1, -1, 42, INT_MAX, INT_MIN})
        EXPECT_EQ(readInt(toText(number)), number);
}

TEST(Numbers, NothingButAWholeNumberIsRead)
{
    for (const char* text : {"", " ", "7 ", " 7", "+7", "7.", "7.0", "7,5", "1e3", "0x10", "seven", "--1",
                             "2147483648", "-2147483649", "99999999999999999999"})
        EXPECT_FALSE(readInt(text).has_value()) << text;
    EXPECT_EQ(readInt("-0"), 0);
    EXPECT_EQ(readInt("007"), 7);
    EXPECT_FALSE(readInt(std::string_view("7\0", 2)).has_value());
}

TEST(Numbers, BrokenOnesAreShortAndExact)
{
    struct Case {
        double number;
        const char* text;
    };
    // The shortest text that reads back the same; 9.80665 is the standard gravity of ISO 80000-3, a number
    // that long forms show as 9.8066499999999994.
    const Case cases[] = {{2.25, "2.25"}, {4.0, "4"}, {0.1, "0.1"}, {9.80665, "9.80665"}, {-17.5, "-17.5"}};
    for (const Case& c : cases) {
        EXPECT_EQ(toText(c.number), c.text);
        EXPECT_EQ(readDouble(c.text), c.number);
    }
    for (const double number : {1.0 / 3.0, std::numeric_limits<double>::max(),
                                std::numeric_limits<double>::denorm_min(), std::nextafter(1.0, 2.0), -1e-300})
        EXPECT_EQ(readDouble(toText(number)), number);
}

TEST(Numbers, NoCommaNoInfinityNoRest)
{
    for (const char* text : {"", "2,25", "2.25 mm", " 2", "inf", "nan", "-inf", "1e999", ".", "e5"})
        EXPECT_FALSE(readDouble(text).has_value()) << text;
}

namespace {

struct Comma : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
};

} // namespace

TEST(Numbers, DontFollowTheLocale)
{
    const std::string before = std::setlocale(LC_ALL, nullptr);
    // Streams have a comma everywhere; the C functions too where such a locale is installed, as tests/run
    // sees to.
    const std::locale streams = std::locale::global(std::locale(std::locale::classic(), new Comma));
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "fr_FR.utf8"})
        if (std::setlocale(LC_ALL, name))
            break;
    std::ostringstream followed;
    followed << 2.25;
    EXPECT_EQ(followed.str(), "2,25");
    EXPECT_EQ(toText(2.25), "2.25");
    EXPECT_EQ(readDouble("2.25"), 2.25);
    std::locale::global(streams);
    std::setlocale(LC_ALL, before.c_str());
}

TEST(Words, Counted)
{
    EXPECT_EQ(counted(1, "stitch"), "1 stitch");
    EXPECT_EQ(counted(3, "stitch"), "3 stitches");
    EXPECT_EQ(counted(0, "row"), "0 rows");
    EXPECT_EQ(counted(2, "class"), "2 classes");
    EXPECT_EQ(counted(2, "yarn over", "yarn overs"), "2 yarn overs");
    EXPECT_EQ(counted(-1, "column"), "-1 columns");
}

TEST(Words, Joined)
{
    EXPECT_EQ(joined({}), "");
    EXPECT_EQ(joined({"a"}), "a");
    EXPECT_EQ(joined({"a", "b"}), "a and b");
    EXPECT_EQ(joined({"a", "b", "c"}), "a, b and c");
}

TEST(Utf8, WellFormedOrNot)
{
    // Table 3-7 of the Unicode Standard (well-formed UTF-8 byte sequences): the ends of its ranges, and just
    // beyond.
    for (const char* text : {"", "plain",
                             "Gr\xC3\xBC\xC3\x9F"
                             "e",
                             "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
                             "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_TRUE(validUtf8(text)) << text;
    for (const char* text :
         {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xE1\x80",
          "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF",
          "\xFE", "ab\xE6\xB8", "\xF0\x9F\xA7"})
        EXPECT_FALSE(validUtf8(text));
    EXPECT_FALSE(validUtf8(std::string_view("a\0b", 3)));
}

TEST(Utf8, LengthIsInCodePoints)
{
    EXPECT_EQ(codePoints(""), 0);
    EXPECT_EQ(codePoints("k2tog"), 5);
    EXPECT_EQ(codePoints("Gr\xC3\xBC\xC3\x9F"
                         "e"),
              5);
    EXPECT_EQ(codePoints("\xF0\x9F\xA7\xB6\xE6\xB8\xAC"), 2);
}

TEST(Text, LoweredAndTrimmed)
{
    EXPECT_EQ(lowered("Row 3: SSK, Gr\xC3\x9C"), "row 3: ssk, gr\xC3\x9C"); // letters outside ASCII stay
    EXPECT_EQ(trimmed("  \t k2 \r\n"), "k2");
    EXPECT_EQ(trimmed("\n \t"), "");
    EXPECT_EQ(trimmed("a b"), "a b");
}

} // namespace
} // namespace shawlwright
