#include "core/wording/reader/near_words.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool figure(char c)
{
    return c >= '0' && c <= '9';
}

bool lookAlike(char a, char b)
{
    const auto are = [&](char x, char y) { return (a == x && b == y) || (a == y && b == x); };
    return are('0', 'o') || are('1', 'l') || are('1', 'i') || are('5', 's');
}

enum class Slip { None, Rare, Common };

// How likely `typed`, which differs from it by one letter, is a slip for `meant`: a letter doubled, turned
// about or taken for one that looks like it is common.
Slip slip(std::string_view typed, std::string_view meant)
{
    std::size_t from = 0;
    while (from < typed.size() && from < meant.size() && typed[from] == meant[from])
        ++from;
    const bool brief = std::min(typed.size(), meant.size()) < 4;
    const std::string_view rest = typed.substr(from);
    const std::string_view other = meant.substr(from);
    const auto rare = [brief](bool withFigure) { return brief || withFigure ? Slip::None : Slip::Rare; };
    if (typed.size() == meant.size()) {
        if (rest.substr(1) == other.substr(1))
            return lookAlike(rest[0], other[0]) ? Slip::Common : rare(figure(rest[0]) || figure(other[0]));
        const bool turned = rest.size() > 1 && rest[0] == other[1] && rest[1] == other[0] &&
                            rest.substr(2) == other.substr(2);
        return turned && !brief ? Slip::Common : Slip::None;
    }
    const bool more = typed.size() > meant.size();
    if (more ? rest.substr(1) != other : rest != other.substr(1))
        return Slip::None;
    const char letter = more ? rest[0] : other[0];
    return more && from > 0 && typed[from - 1] == letter ? Slip::Common : rare(figure(letter));
}

template <typename Each>
void withoutOne(std::string_view word, const Each& each)
{
    each(std::string(word));
    for (std::size_t i = 0; i < word.size(); ++i)
        each(std::string(word.substr(0, i)) + std::string(word.substr(i + 1)));
}

} // namespace

void NearWords::add(std::string_view word)
{
    if (word.size() < 2 || word.size() > 20 || word.find(' ') != std::string_view::npos)
        return;
    m_words.emplace_back(word);
    withoutOne(word, [&](std::string key) {
        auto& all = m_without[std::move(key)];
        if (all.empty() || all.back() != m_words.size() - 1)
            all.push_back(m_words.size() - 1);
    });
}

std::optional<std::string> NearWords::near(std::string_view word) const
{
    if (word.size() < 2 || word.size() > 21)
        return std::nullopt;
    const std::string typed = lowered(word);
    std::vector<std::string> common, rare;
    withoutOne(typed, [&](const std::string& key) {
        const auto all = m_without.find(key);
        if (all == m_without.end())
            return;
        for (const std::size_t at : all->second) {
            const std::string& meant = m_words[at];
            const Slip how = meant == typed ? Slip::None : slip(typed, meant);
            auto& list = how == Slip::Common ? common : rare;
            if (how != Slip::None && std::find(list.begin(), list.end(), meant) == list.end())
                list.push_back(meant);
        }
    });
    const auto& likely = common.empty() ? rare : common;
    return likely.size() == 1 ? std::optional(likely.front()) : std::nullopt;
}

} // namespace shawlwright
