#include "core/wording/reader/count_words.h"

namespace shawlwright {
namespace {

// The rest of "45, 47, 49 sts"; nothing is taken where it is no such list.
void eachTime(Cursor& cursor, int first, std::vector<int>& counts)
{
    const std::size_t from = cursor.at();
    std::vector<int> all{first};
    while (all.size() < 1000 && cursor.take(',')) {
        cursor.word("then");
        const auto next = cursor.figures();
        if (!next)
            break;
        all.push_back(*next);
    }
    const std::size_t end = cursor.at();
    if (all.size() > 1 && cursor.anyOf({"sts", "stitches"})) {
        counts = std::move(all);
        cursor.to(end);
    } else {
        cursor.to(from);
    }
}

// "10 garter ridges in MC, 6 in CC": said for the eye, they are counted as they come out. `more`: behind others.
bool ridges(Cursor& cursor, bool more)
{
    const std::size_t from = cursor.at();
    const bool named = cursor.anyOf({"garter ridges", "garter ridge", "ridges", "ridge"});
    if (!cursor.word("in")) {
        if (!named)
            cursor.to(from);
        return named;
    }
    if (!named && !more) {
        cursor.to(from);
        return false;
    }
    const std::string& text = cursor.text();
    std::size_t end = cursor.at();
    while (end < text.size() && std::string_view(",;)].").find(text[end]) == std::string_view::npos) {
        const bool next = text.compare(end, 5, " and ") == 0 && end + 5 < text.size() &&
                          text[end + 5] >= '0' && text[end + 5] <= '9';
        if (next)
            break;
        ++end;
    }
    cursor.to(end);
    return true;
}

// "45 sts", "2 sts inc'd", "12 sts worked, 5 unworked", "4 sts inc; 45 sts"
std::optional<CountWords> inside(Cursor& cursor, int sizes)
{
    CountWords count;
    bool any = false;
    bool inRidges = false;
    do {
        cursor.word("now");
        cursor.word("total of");
        const auto number = cursor.quantity(sizes);
        if (!number)
            return std::nullopt;
        if (ridges(cursor, inRidges)) {
            any = inRidges = true;
            continue;
        }
        if (!any)
            eachTime(cursor, number->at(0), count.eachTime);
        const bool stitches = cursor.anyOf({"sts", "st", "stitches", "stitch", "sts.", "loops"});
        if (!stitches && !any)
            return std::nullopt;
        any = true;
        if (!count.eachTime.empty())
            continue;
        const bool more = cursor.anyOf({"inc'd", "incd", "inc", "increased", "made"});
        const bool fewer = !more && cursor.anyOf({"dec'd", "decd", "dec", "decreased"});
        const bool worked = !more && !fewer && cursor.word("worked");
        const bool unworked =
            !more && !fewer && !worked && cursor.anyOf({"unworked", "rem unworked", "remain unworked"});
        const bool partly = more || fewer || worked || unworked ||
                            cursor.anyOf({"bound off", "cast off", "cast on", "each side", "before marker",
                                          "between markers", "between the turns", "between turns"});
        cursor.anyOf({"each row", "each rnd", "each round"});
        const bool ofAll = !cursor.anyOf({"each side", "before marker", "between markers"});
        cursor.anyOf({"in total", "total", "on needle", "on the needle", "on needles", "remain", "remaining",
                      "rem", "left"});
        if (!partly)
            count.total = number;
        if ((more || fewer) && ofAll) {
            count.change = number;
            for (int& n : count.change->values)
                n = more ? n : -n;
        }
        if (worked)
            count.worked = number;
        if (unworked)
            count.unworked = number;
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

std::optional<CountWords> reachedWords(const NormalText& line, int sizes)
{
    Cursor cursor(line);
    if (!cursor.anyOf({"you have", "you now have", "you should have", "you should now have"}))
        return std::nullopt;
    auto count = inside(cursor, sizes);
    cursor.take('.');
    cursor.blanks();
    return count && cursor.done() ? count : std::nullopt;
}

} // namespace shawlwright
