#include "core/files/json_out.h"

#include "core/base/text.h"

#include <cmath>

namespace shawlwright::files {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";

// The letter at the front of the text, and how many bytes it takes: one that isn't UTF-8 is replaced.
std::string_view leadingLetter(std::string_view text, std::size_t& taken)
{
    for (taken = 1; taken <= 4 && taken <= text.size(); ++taken)
        if (validUtf8(text.substr(0, taken)))
            return text.substr(0, taken);
    taken = 1;
    return replacement;
}

void addControl(std::string& out, char c)
{
    constexpr char digits[] = "0123456789abcdef";
    out += "\\u00";
    out += digits[static_cast<unsigned char>(c) >> 4];
    out += digits[static_cast<unsigned char>(c) & 15];
}

} // namespace

std::string inQuotes(std::string_view text)
{
    std::string out = "\"";
    while (!text.empty()) {
        const char c = text.front();
        std::size_t taken = 1;
        if (c == '"' || c == '\\')
            (out += '\\') += c;
        else if (c == '\n')
            out += "\\n";
        else if (c == '\t')
            out += "\\t";
        else if (c > 0 && c < ' ')
            addControl(out, c);
        else
            out += leadingLetter(text, taken);
        text.remove_prefix(taken);
    }
    return out += '"';
}

std::string numeral(double number)
{
    return std::isfinite(number) ? toText(number) : "0";
}

std::string numeral(const Quantity& quantity)
{
    if (quantity.single())
        return toText(quantity.values.front());
    std::vector<std::string> items;
    for (const int value : quantity.values)
        items.push_back(toText(value));
    return listText(items);
}

std::string listText(const std::vector<std::string>& items)
{
    std::string text = "[";
    for (const std::string& item : items)
        (text += text.size() > 1 ? ", " : "") += item;
    return text += ']';
}

void ObjectText::separate()
{
    const bool first = m_text.size() == 1;
    if (!first)
        m_text += ',';
    if (m_indent > 0)
        m_text.append("\n").append(static_cast<std::size_t>(m_indent), ' ');
    else if (!first)
        m_text += ' ';
}

void ObjectText::raw(std::string_view key, std::string_view json)
{
    separate();
    m_text.append(inQuotes(key)).append(": ").append(json);
}

void ObjectText::text(std::string_view key, std::string_view value)
{
    if (!value.empty())
        raw(key, inQuotes(value));
}

void ObjectText::word(std::string_view key, std::string_view value, std::string_view usual)
{
    if (value != usual)
        raw(key, inQuotes(value));
}

void ObjectText::whole(std::string_view key, long long value, long long usual)
{
    if (value != usual)
        whole(key, value);
}

void ObjectText::number(std::string_view key, double value, double usual)
{
    if (value != usual)
        raw(key, numeral(value));
}

void ObjectText::quantity(std::string_view key, const Quantity& value, const Quantity& usual)
{
    if (value != usual)
        raw(key, numeral(value));
}

void ObjectText::truth(std::string_view key, bool value)
{
    if (value)
        raw(key, "true");
}

void ObjectText::texts(std::string_view key, const std::vector<std::string>& values)
{
    if (values.empty())
        return;
    std::vector<std::string> items;
    for (const std::string& value : values)
        items.push_back(inQuotes(value));
    raw(key, listText(items));
}

void ObjectText::lines(std::string_view key, const std::vector<std::string>& items)
{
    if (items.empty())
        return;
    const std::string indent(static_cast<std::size_t>(m_indent), ' ');
    std::string list = "[";
    for (const std::string& item : items)
        list.append(list.size() > 1 ? ",\n" : "\n").append(indent).append("  ").append(item);
    raw(key, list.append("\n").append(indent).append("]"));
}

void ObjectText::unknown(std::string_view object)
{
    if (object.size() <= 2)
        return;
    separate();
    m_text += object.substr(1, object.size() - 2);
}

std::string ObjectText::done() &&
{
    if (m_indent > 0)
        m_text.append("\n").append(static_cast<std::size_t>(m_indent) - 2, ' ');
    return std::move(m_text) + '}';
}

} // namespace shawlwright::files
