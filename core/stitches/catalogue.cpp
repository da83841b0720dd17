#include "core/stitches/catalogue.h"

#include <cassert>

namespace shawlwright {

namespace {

// What would break the sentence that the abbreviation is printed in.
std::string faultOfWord(const std::string& word)
{
    if (word.size() > mostWordBytes)
        return "an abbreviation is longer than " + std::to_string(mostWordBytes) + " letters; shorten it";
    for (const char c : word)
        if (static_cast<unsigned char>(c) < 0x20)
            return "an abbreviation holds a line break or tab; write it on one line";
    if (!word.empty() && (word.front() == ' ' || word.back() == ' '))
        return "the abbreviation '" + word + "' starts or ends with a blank; take it away";
    return {};
}

} // namespace

Result<Stitch> checked(Stitch stitch)
{
    const auto refuse = [&](std::string message) {
        const bool sayable = stitch.key.size() <= mostKeyLetters;
        return Fault{{}, sayable ? "stitch '" + stitch.key + "'" : "a stitch", std::move(message)};
    };
    if (stitch.key.empty())
        return refuse("has no key; give it a short name of lower case letters, digits and _");
    for (const char c : stitch.key)
        if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'))
            return refuse("the key may hold lower case letters, digits and _ only");
    if (stitch.key.size() > mostKeyLetters)
        return refuse("the key has " + std::to_string(stitch.key.size()) + " letters; at most " +
                      std::to_string(mostKeyLetters) + " are possible");
    if (stitch.onRS.empty() || stitch.onWS.empty())
        return refuse("has no abbreviation for one of the sides; say what it is called on RS and on WS");
    for (const std::string* word : {&stitch.onRS, &stitch.onWS, &stitch.onRSUK, &stitch.onWSUK})
        if (const auto fault = faultOfWord(*word); !fault.empty())
            return refuse(fault);
    if (stitch.takesUp < 0 || stitch.takesUp > mostLoopsPerStitch)
        return refuse("takes up " + std::to_string(stitch.takesUp) + " stitches; 0 to " +
                      std::to_string(mostLoopsPerStitch) + " are possible");
    if (stitch.leaves < 0 || stitch.leaves > mostLoopsPerStitch)
        return refuse("leaves " + std::to_string(stitch.leaves) + " stitches; 0 to " +
                      std::to_string(mostLoopsPerStitch) + " are possible");
    if (stitch.columns < 0 || stitch.columns > mostLoopsPerStitch)
        return refuse("is " + std::to_string(stitch.columns) + " columns wide; 0 to " +
                      std::to_string(mostLoopsPerStitch) + " are possible");
    if (!stitch.heads.empty() && static_cast<int>(stitch.heads.size()) != stitch.leaves)
        return refuse("leaves " + std::to_string(stitch.leaves) + " stitches but describes " +
                      std::to_string(stitch.heads.size()) + "; describe each of them or none");
    if (stitch.drawing == Drawing::Crossing &&
        (stitch.crossing.front < 1 || stitch.crossing.back < 1 ||
         stitch.crossing.front + stitch.crossing.back > stitch.takesUp))
        return refuse("crosses " + std::to_string(stitch.crossing.front) + " over " +
                      std::to_string(stitch.crossing.back) + " stitches but takes up " +
                      std::to_string(stitch.takesUp) +
                      "; cross at least 1 over 1 and no more than it takes up");
    return stitch;
}

Catalogue::Catalogue(std::vector<Stitch> builtIn) : m_builtIn(std::move(builtIn))
{
    assert(!m_builtIn.empty() && m_builtIn.size() < firstOwnStitch);
    for (std::size_t i = 0; i < m_builtIn.size(); ++i)
        m_builtIn[i].id = StitchId{static_cast<std::uint16_t>(i)};
    index();
}

Catalogue Catalogue::with(std::span<const Stitch> own) const
{
    Catalogue result = *this;
    result.m_own.clear();
    for (const Stitch& stitch : own) {
        assert(stitch.id.value >= firstOwnStitch);
        const std::size_t at = static_cast<std::size_t>(stitch.id.value) - firstOwnStitch;
        if (result.m_own.size() <= at)
            result.m_own.resize(at + 1, m_builtIn.front());
        result.m_own[at] = stitch;
    }
    result.index();
    return result;
}

void Catalogue::index()
{
    m_byKey.clear();
    m_byWord[0].clear();
    m_byWord[1].clear();
    const auto add = [this](const Stitch& stitch) {
        m_byKey.emplace(stitch.key, stitch.id);
        for (const Side side : {Side::RS, Side::WS}) {
            auto& words = m_byWord[static_cast<int>(side)];
            words.emplace(abbreviation(stitch, side, Words::US), stitch.id);
            words.emplace(abbreviation(stitch, side, Words::UK), stitch.id);
        }
    };
    // A pattern's own stitch comes first: the designer's meaning of a word beats ours.
    for (const Stitch& stitch : m_own)
        if (stitch.id.value >= firstOwnStitch)
            add(stitch);
    for (const Stitch& stitch : m_builtIn)
        add(stitch);
    // "yfwd" stands between knits and "yrn" between purls, on either side: such words are found on both,
    // after all others.
    for (const auto* stitches : {&m_own, &m_builtIn})
        for (const Stitch& stitch : *stitches)
            if (stitch.sameOnBothSides && known(stitch.id)) {
                m_byWord[static_cast<int>(Side::RS)].emplace(abbreviation(stitch, Side::WS, Words::UK),
                                                             stitch.id);
                m_byWord[static_cast<int>(Side::WS)].emplace(abbreviation(stitch, Side::RS, Words::UK),
                                                             stitch.id);
            }
}

bool Catalogue::known(StitchId id) const
{
    return id == noStitch || stitch(id).id == id;
}

std::optional<StitchId> Catalogue::find(std::string_view key) const
{
    const auto found = m_byKey.find(std::string(key));
    return found == m_byKey.end() ? std::nullopt : std::optional(found->second);
}

StitchId Catalogue::require(std::string_view key) const
{
    const auto found = find(key);
    assert(found.has_value());
    return found.value_or(noStitch);
}

std::optional<StitchId> Catalogue::worked(std::string_view word, Side side) const
{
    const auto& words = m_byWord[static_cast<int>(side)];
    const auto found = words.find(std::string(word));
    return found == words.end() ? std::nullopt : std::optional(found->second);
}

std::optional<StitchId> Catalogue::mirrored(StitchId id) const
{
    const std::string& key = stitch(id).mirror;
    return key.empty() ? std::nullopt : find(key);
}

const std::string& abbreviation(const Stitch& stitch, Side side, Words words)
{
    const std::string& uk = side == Side::RS ? stitch.onRSUK : stitch.onWSUK;
    if (words == Words::UK && !uk.empty())
        return uk;
    return side == Side::RS ? stitch.onRS : stitch.onWS;
}

} // namespace shawlwright
