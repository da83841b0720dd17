#include "core/wording/reader/shaping_words.h"

#include "core/base/text.h"

#include <array>

namespace shawlwright {
namespace {

bool figure(char c)
{
    return c >= '0' && c <= '9';
}

} // namespace

std::optional<std::string> shapingInWords(std::string_view text)
{
    for (std::size_t from = 0; from < text.size(); ++from) {
        if (!figure(text[from]) || (from > 0 && (figure(text[from - 1]) || text[from - 1] == '-')))
            continue;
        std::array<int, 3> numbers{};
        std::size_t at = from;
        std::size_t read = 0;
        while (read < numbers.size()) {
            const std::size_t start = at;
            while (at < text.size() && figure(text[at]))
                ++at;
            const auto number = readInt(text.substr(start, at - start));
            if (at == start || at - start > 3 || !number || *number == 0)
                break;
            numbers[read++] = *number;
            if (read == numbers.size() || at >= text.size() || text[at] != '-')
                break;
            ++at;
        }
        const bool ends = at >= text.size() || (!figure(text[at]) && text[at] != '-');
        if (read == numbers.size() && ends)
            return std::string(text.substr(from, at - from)) + " is " +
                   counted(numbers[1], "stitch", "stitches") +
                   (numbers[0] == 1 ? " every row, " : " every " + toText(numbers[0]) + " rows, ") +
                   (numbers[2] == 1 ? "once" : counted(numbers[2], "time"));
    }
    return std::nullopt;
}

std::optional<std::size_t> lengthToWorkTo(std::string_view text)
{
    const std::string low = lowered(text);
    const std::size_t until = low.find("until ");
    if (until == std::string::npos || (until > 0 && low[until - 1] != ' '))
        return std::nullopt;
    const std::string_view rest = std::string_view(low).substr(until);
    for (const char* measure : {" measures ", " measure ", " is long enough", " desired length", " reaches "})
        if (rest.find(measure) != std::string_view::npos)
            return until;
    // A number with a unit.
    for (std::size_t at = 0; at < rest.size(); ++at) {
        if (!figure(rest[at]) || (at + 1 < rest.size() && (figure(rest[at + 1]) || rest[at + 1] == '.')))
            continue;
        std::string_view unit = rest.substr(at + 1);
        while (!unit.empty() && unit.front() == ' ')
            unit.remove_prefix(1);
        for (const char* one : {"cm", "mm", "in.", "inch", "\"", "in,", "in from"})
            if (unit.starts_with(one))
                return until;
    }
    return std::nullopt;
}

} // namespace shawlwright
