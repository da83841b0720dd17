#include "core/wording/reader/cursor.h"

#include "core/base/text.h"
#include "core/wording/writer/quantity_words.h"

#include <algorithm>
#include <unordered_map>

namespace shawlwright {

std::optional<int> numberWord(std::string_view word)
{
    static const auto words = [] {
        std::unordered_map<std::string, int> all{{"a", 1}, {"an", 1}, {"zero", 0}};
        for (int n = 0; n < 100; ++n) {
            std::string text = numberInWords(n);
            all.emplace(text, n);
            std::replace(text.begin(), text.end(), '-', ' ');
            all.emplace(text, n);
        }
        return all;
    }();
    const auto found = words.find(std::string(word));
    return found == words.end() ? std::nullopt : std::optional(found->second);
}

bool Cursor::letterOrDigit(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           static_cast<unsigned char>(c) >= 0x80;
}

void Cursor::blanks()
{
    while (peek() == ' ') {
        ++m_at;
        ++m_steps;
    }
}

bool Cursor::take(char c)
{
    const std::size_t from = m_at;
    blanks();
    if (peek() == c && c != '\0') {
        ++m_at;
        return true;
    }
    m_at = from;
    return false;
}

bool Cursor::word(std::string_view words)
{
    ++m_steps;
    const std::size_t from = m_at;
    blanks();
    for (const char c : words) {
        if (c == ' ') {
            if (peek() != ' ') {
                m_at = from;
                return false;
            }
            blanks();
            continue;
        }
        const char here = peek();
        const char low = here >= 'A' && here <= 'Z' ? static_cast<char>(here - 'A' + 'a') : here;
        if (low != c) {
            m_at = from;
            return false;
        }
        ++m_at;
    }
    if (letterOrDigit(words.back()) && letterOrDigit(peek())) {
        m_at = from;
        return false;
    }
    return true;
}

bool Cursor::anyOf(std::initializer_list<std::string_view> words)
{
    return std::any_of(words.begin(), words.end(), [this](std::string_view w) { return word(w); });
}

std::optional<int> Cursor::figures()
{
    const std::size_t from = m_at;
    blanks();
    std::size_t end = m_at;
    while (end < text().size() && text()[end] >= '0' && text()[end] <= '9')
        ++end;
    const auto value = readInt(std::string_view(text()).substr(m_at, end - m_at));
    if (!value || *value > mostCount) {
        m_at = from;
        return std::nullopt;
    }
    m_at = end;
    return value;
}

std::optional<int> Cursor::number()
{
    if (const auto value = figures())
        return value;
    const std::size_t from = m_at;
    blanks();
    const std::string ahead = lowered(std::string_view(text()).substr(m_at, 14));
    for (std::size_t length = ahead.size(); length > 0; --length) {
        const bool whole = m_at + length >= text().size() || !letterOrDigit(text()[m_at + length]);
        if (!whole || !letterOrDigit(ahead[length - 1]))
            continue;
        if (const auto value = numberWord(std::string_view(ahead).substr(0, length))) {
            m_at += length;
            return value;
        }
    }
    m_at = from;
    return std::nullopt;
}

std::optional<Quantity> Cursor::quantity(int sizes)
{
    const auto first = number();
    if (!first)
        return std::nullopt;
    const std::size_t after = m_at;
    std::vector<int> values{*first};
    blanks();
    const char closer = peek() == '(' ? ')' : peek() == '[' ? ']' : '\0';
    if (closer != '\0' && m_at < text().size()) {
        ++m_at;
        bool all = true;
        do {
            const auto next = figures();
            all = next.has_value();
            if (next)
                values.push_back(*next);
        } while (all && (take(',') || take(':') || take(';')));
        const bool fits = sizes > 1 ? static_cast<int>(values.size()) == sizes : values.size() > 2;
        if (all && take(closer) && fits && values.size() <= 100)
            return Quantity(std::move(values));
    }
    m_at = after;
    return Quantity(*first);
}

std::optional<Quantity> Cursor::times(int sizes)
{
    if (word("once") || word("one time"))
        return Quantity(1);
    if (anyOf({"twice", "two times"}))
        return Quantity(2);
    if (word("thrice"))
        return Quantity(3);
    const std::size_t from = m_at;
    anyOf({"a total of", "for a total of"});
    const auto many = quantity(sizes);
    if (many && (anyOf({"times", "time", "x"}) || (peek() == 'x' && !letterOrDigit(peek(1)) && take('x'))))
        return many;
    m_at = from;
    blanks();
    if (peek() == 'x' && (peek(1) == ' ' || (peek(1) >= '0' && peek(1) <= '9'))) { // "[k1, p1] x 4"
        ++m_at;
        if (const auto after = quantity(sizes))
            return after;
    }
    m_at = from;
    return std::nullopt;
}

std::string Cursor::upTo(std::string_view stops) const
{
    std::size_t end = std::min(text().find_first_of(stops, m_at), text().size());
    m_steps += static_cast<long long>(end - std::min(end, m_at));
    return std::string(trimmed(std::string_view(text()).substr(m_at, end - m_at)));
}

} // namespace shawlwright
