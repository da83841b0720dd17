#include "core/wording/style.h"

namespace shawlwright {
namespace {

template <typename Value>
struct Entry {
    Value value;
    const char* word;
};

constexpr Entry<Words> wordNames[] = {{Words::US, "us"}, {Words::UK, "uk"}};
constexpr Entry<CountsShown> countNames[] = {{CountsShown::Always, "always"},
                                             {CountsShown::WhereTheyChange, "where they change"},
                                             {CountsShown::Never, "never"}};
constexpr Entry<RepeatForm> repeatNames[] = {{RepeatForm::Bracket, "bracket"},
                                             {RepeatForm::Asterisk, "asterisk"}};

template <typename Value, std::size_t N>
void read(const std::map<std::string, std::string>& words, const char* key, const Entry<Value> (&names)[N],
          Value& value)
{
    const auto found = words.find(key);
    if (found == words.end())
        return;
    for (const Entry<Value>& entry : names)
        if (found->second == entry.word)
            value = entry.value;
}

template <typename Value, std::size_t N>
std::string named(const Entry<Value> (&names)[N], Value value)
{
    for (const Entry<Value>& entry : names)
        if (entry.value == value)
            return entry.word;
    return names[0].word;
}

} // namespace

Style styleOf(const PatternHead& head)
{
    Style style;
    read(head.style, "words", wordNames, style.words);
    read(head.style, "counts", countNames, style.counts);
    read(head.style, "repeats", repeatNames, style.repeats);
    return style;
}

std::map<std::string, std::string> toWords(const Style& style)
{
    return {{"words", named(wordNames, style.words)},
            {"counts", named(countNames, style.counts)},
            {"repeats", named(repeatNames, style.repeats)}};
}

} // namespace shawlwright
