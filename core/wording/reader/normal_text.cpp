#include "core/wording/reader/normal_text.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace shawlwright {
namespace {

struct Letter {
    std::uint32_t code = '?';
    std::size_t bytes = 1;
};

Letter letterAt(std::string_view text, std::size_t at)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(at);
    if (first < 0x80)
        return {first, 1};
    const std::size_t bytes = first >= 0xF0 && first < 0xF5 ? 4 : first >= 0xE0 ? 3 : first >= 0xC2 ? 2 : 1;
    if (bytes == 1 || first >= 0xF5 || at + bytes > text.size())
        return {};
    std::uint32_t code = first & (0xFFu >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(at + i) & 0xC0) != 0x80)
            return {};
        code = (code << 6) | (byte(at + i) & 0x3Fu);
    }
    return {code, bytes};
}

struct Plain {
    std::uint32_t from, to; // code points, both in
    const char* as;
};
constexpr std::array<Plain, 23> plain{{
    {0x09, 0x09, " "},                              // tab
    {0xA0, 0xA0, " "},                              // no-break space
    {0xAD, 0xAD, ""},                               // soft hyphen
    {0xB4, 0xB4, "'"},                              // accent for an apostrophe
    {0xD7, 0xD7, "x"},                              // times
    {0x2000, 0x200A, " "},                          // spaces of any width
    {0x200B, 0x200F, ""},                           // of no width
    {0x2010, 0x2015, "-"},                          // hyphens and dashes
    {0x2018, 0x201B, "'"},                          // quotes
    {0x201C, 0x201F, "\""},                         // double quotes
    {0x2026, 0x2026, "..."},                        // ellipsis
    {0x2028, 0x2029, " "},                          // soft breaks
    {0x202F, 0x202F, " "},   {0x2032, 0x2032, "'"}, // primes
    {0x2033, 0x2033, "\""},  {0x204E, 0x204E, "*"}, // asterisks
    {0x2060, 0x2060, ""},    {0x2212, 0x2212, "-"}, // minus
    {0x2217, 0x2217, "*"},   {0x2731, 0x2731, "*"},
    {0x3000, 0x3000, " "},   {0xFEFF, 0xFEFF, ""}, // byte order mark
    {0xFF0A, 0xFF0A, "*"},
}};

bool bullet(std::uint32_t code)
{
    return code == 0x2022 || code == 0xB7 || code == 0x25AA || code == 0x25CF || code == 0x25E6 ||
           code == 0x2043;
}

NormalText normalLine(std::string_view line, int number)
{
    NormalText result;
    int column = 0;
    for (std::size_t i = 0; i < line.size();) {
        const Letter letter = letterAt(line, i);
        ++column;
        std::string as = letter.code == '?' ? "?" : std::string(line.substr(i, letter.bytes));
        for (const Plain& one : plain)
            if (one.from <= letter.code && letter.code <= one.to)
                as = one.as;
        if (letter.code < 0x20 && letter.code != 0x09)
            as = letter.code == 0 ? "?" : " ";
        const bool first = result.text.find_first_not_of(' ') == std::string::npos;
        const bool dash = letter.code == '-' || letter.code == 0x2013;
        const bool listDash = dash && i + letter.bytes < line.size() && line[i + letter.bytes] == ' ';
        if (first && (bullet(letter.code) || listDash))
            as = " ";
        for (const char c : as) {
            result.text += c;
            result.at.push_back({number, column});
        }
        i += letter.bytes;
    }
    result.at.push_back({number, column + 1});
    return result;
}

} // namespace

std::vector<std::string_view> typedLines(std::string_view text)
{
    std::vector<std::string_view> lines;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t end = std::min(text.find_first_of("\n\r\f", from), text.size());
        lines.push_back(text.substr(from, end - from));
        const bool crlf = end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n';
        from = end + (crlf ? 2 : 1);
    }
    return lines;
}

std::vector<NormalText> normalLines(std::string_view text)
{
    std::vector<NormalText> lines;
    for (const std::string_view line : typedLines(text))
        lines.push_back(normalLine(line, static_cast<int>(lines.size()) + 1));
    return lines;
}

NormalText part(const NormalText& whole, std::size_t from, std::size_t to)
{
    to = std::min(to, whole.text.size());
    from = std::min(from, to);
    while (from < to && whole.text[from] == ' ')
        ++from;
    while (to > from && whole.text[to - 1] == ' ')
        --to;
    NormalText result;
    result.text = whole.text.substr(from, to - from);
    result.at.assign(whole.at.begin() + static_cast<std::ptrdiff_t>(from),
                     whole.at.begin() + static_cast<std::ptrdiff_t>(to) + 1);
    return result;
}

void append(NormalText& text, const NormalText& more)
{
    if (text.text.empty()) {
        text = more;
        return;
    }
    text.text += ' ';
    text.text += more.text;
    text.at.insert(text.at.end(), more.at.begin(), more.at.end());
}

} // namespace shawlwright
