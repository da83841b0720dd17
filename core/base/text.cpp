#include "core/base/text.h"

#include <charconv>
#include <cmath>

namespace shawlwright {

std::string toText(int number)
{
    char digits[16];
    const auto end = std::to_chars(digits, digits + sizeof digits, number).ptr;
    return std::string(digits, end);
}

std::string toText(double number)
{
    char digits[64];
    const auto end = std::to_chars(digits, digits + sizeof digits, number).ptr;
    return std::string(digits, end);
}

std::optional<int> readInt(std::string_view text)
{
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || text.empty())
        return std::nullopt;
    return number;
}

std::optional<double> readDouble(std::string_view text)
{
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || text.empty() || !std::isfinite(number))
        return std::nullopt;
    return number;
}

std::string counted(int number, std::string_view noun, std::string_view plural)
{
    std::string text = toText(number) + " ";
    if (number == 1)
        return text.append(noun);
    if (!plural.empty())
        return text.append(plural);
    text.append(noun);
    return noun.ends_with("ch") || noun.ends_with("s") ? text + "es" : text + "s";
}

std::string joined(const std::vector<std::string>& parts)
{
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0)
            text += i + 1 == parts.size() ? " and " : ", ";
        text += parts[i];
    }
    return text;
}

namespace {

// How many bytes the code point at the front takes; 0 where the bytes are ill-formed.
std::size_t leadingCodePoint(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80)
        return lead == 0 ? 0 : 1;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length)
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(i) & 0xC0) != 0x80)
            return 0;
    const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
    const bool surrogate = lead == 0xED && byte(1) >= 0xA0;
    const bool tooHigh = lead == 0xF4 && byte(1) >= 0x90;
    return overlong || surrogate || tooHigh ? 0 : length;
}

} // namespace

bool validUtf8(std::string_view text)
{
    while (!text.empty()) {
        const std::size_t length = leadingCodePoint(text);
        if (length == 0)
            return false;
        text.remove_prefix(length);
    }
    return true;
}

int codePoints(std::string_view validText)
{
    int count = 0;
    for (const char c : validText)
        if ((static_cast<unsigned char>(c) & 0xC0) != 0x80)
            ++count;
    return count;
}

std::string lowered(std::string_view text)
{
    std::string result(text);
    for (char& c : result)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return result;
}

std::string_view trimmed(std::string_view text)
{
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return text;
}

} // namespace shawlwright
