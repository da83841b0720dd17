#include "core/wording/reader/head_facts.h"

#include "core/base/text.h"
#include "core/wording/style.h"

#include <algorithm>

namespace shawlwright {
namespace {

// Takes words off the front of a line, whatever the case of their letters.
class HeadWords {
public:
    explicit HeadWords(std::string_view line) : m_rest(trimmed(line)) {}

    bool any(std::initializer_list<std::string_view> words)
    {
        return std::any_of(words.begin(), words.end(), [this](std::string_view word) { return one(word); });
    }

    std::optional<double> number()
    {
        const std::size_t end = std::min(m_rest.find_first_not_of("0123456789.,"), m_rest.size());
        std::string figures(m_rest.substr(0, end));
        std::replace(figures.begin(), figures.end(), ',', '.');
        const auto value = readDouble(figures);
        if (value)
            advance(end);
        return value;
    }

    std::string_view rest() const { return m_rest; }
    bool done() const { return m_rest.empty() || m_rest == "."; }

private:
    bool one(std::string_view word)
    {
        if (lowered(m_rest.substr(0, word.size())) != word)
            return false;
        const bool letters = word.back() >= 'a' && word.back() <= 'z';
        if (letters && m_rest.size() > word.size() && lowered(m_rest.substr(word.size(), 1)).front() >= 'a' &&
            lowered(m_rest.substr(word.size(), 1)).front() <= 'z')
            return false;
        advance(word.size());
        return true;
    }

    void advance(std::size_t letters) { m_rest = trimmed(m_rest.substr(letters)); }

    std::string_view m_rest;
};

bool needles(HeadWords words, PatternHead& head)
{
    if (!words.any({"needles", "needle"}))
        return false;
    words.any({":"});
    const auto size = words.number();
    if (!size || *size < 0.5 || *size > 50 || !words.any({"mm"}))
        return false;
    words.any({", or the size that gives the gauge", "or the size that gives the gauge"});
    if (!words.done())
        return false;
    head.needleMm = *size;
    return true;
}

bool gauge(HeadWords words, PatternHead& head)
{
    if (!words.any({"gauge", "tension"}))
        return false;
    words.any({":"});
    const auto stitches = words.number();
    if (!stitches || !words.any({"sts", "stitches"}) || !words.any({"and", "x", "&", ","}))
        return false;
    const auto rows = words.number();
    if (!rows || !words.any({"rows"}) || !words.any({"to", "=", "per", "over"}) || *stitches <= 0 || *rows <= 0)
        return false;
    if (!words.any({"10 cm (4 in)", "10 cm (4\")", "10 cm", "4 in", "4 inches"}))
        return false;
    std::string over;
    if (words.any({"in", "over"}))
        over = std::string(words.rest());
    else if (!words.done())
        return false;
    if (over.ends_with('.'))
        over.pop_back();
    head.gauge.stitches = *stitches;
    head.gauge.rows = *rows;
    head.gauge.over = over;
    return true;
}

bool designer(HeadWords words, PatternHead& head)
{
    if (!head.designer.empty() || words.rest().size() >= 60 || !words.any({"by", "designed by"}) || words.done())
        return false;
    head.designer = std::string(words.rest());
    return true;
}

bool needlessSlips(HeadWords words, PatternHead& head)
{
    if (!words.any({"slip markers as you come to them", "slip all markers as you come to them",
                    "slip the markers as you come to them"}) ||
        !words.done())
        return false;
    Style style = styleOf(head);
    style.markers = MarkersSlipped::WhereNeeded;
    head.style = toWords(style);
    return true;
}

} // namespace

bool readHeadFact(const std::string& line, PatternHead& head)
{
    const HeadWords words(line);
    return designer(words, head) || needles(words, head) || gauge(words, head) || needlessSlips(words, head);
}

} // namespace shawlwright
