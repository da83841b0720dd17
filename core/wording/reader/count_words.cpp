#include "core/wording/reader/count_words.h"

namespace shawlwright {
namespace {

// "45 sts", "2 sts inc'd", "12 sts worked, 5 unworked", "4 sts inc; 45 sts"
std::optional<CountWords> inside(Cursor& cursor, int sizes)
{
    CountWords count;
    bool any = false;
    do {
        cursor.word("now");
        cursor.word("total of");
        const auto number = cursor.quantity(sizes);
        if (!number)
            return std::nullopt;
        const bool stitches = cursor.anyOf({"sts", "st", "stitches", "stitch", "sts.", "loops"});
        if (!stitches && !any)
            return std::nullopt;
        any = true;
        const bool partly =
            cursor.anyOf({"inc'd", "incd", "inc", "increased", "dec'd", "decd", "dec", "decreased", "worked",
                          "unworked", "bound off", "rem unworked", "remain unworked", "cast off", "cast on",
                          "each side", "before marker", "between markers", "made"});
        cursor.anyOf({"in total", "total", "on needle", "on the needle", "on needles", "remain", "remaining",
                      "rem", "left"});
        if (!partly)
            count.total = number;
    } while (cursor.take(',') || cursor.take(';') || cursor.word("and"));
    return count;
}

} // namespace

std::optional<CountWords> countWords(Cursor& cursor, int sizes)
{
    const std::size_t from = cursor.at();
    while (cursor.take('-') || cursor.take('='))
        ;
    const char closer = cursor.take('(') ? ')' : cursor.take('[') ? ']' : '\0';
    auto count = inside(cursor, sizes);
    const bool closed = closer == '\0' || cursor.take(closer);
    if (count && closed) {
        cursor.take('.');
        cursor.blanks();
        return count;
    }
    cursor.to(from);
    return std::nullopt;
}

} // namespace shawlwright
