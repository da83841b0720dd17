#include "core/wording/reader/vocabulary.h"

#include "core/base/text.h"
#include "core/wording/writer/stitch_words.h"

#include <algorithm>
#include <array>

namespace shawlwright {
namespace {

struct Other {
    std::string_view word, as; // as: the abbreviation as worked on the same side
    std::string_view remark{};
};
constexpr Other others[] = {
    {"k2 tog", "k2tog"},
    {"k 2 tog", "k2tog"},
    {"k2 together", "k2tog"},
    {"k 2 together", "k2tog"},
    {"k3 tog", "k3tog"},
    {"k 3 tog", "k3tog"},
    {"k3 together", "k3tog"},
    {"k 3 together", "k3tog"},
    {"p2 tog", "p2tog"},
    {"p 2 tog", "p2tog"},
    {"p2 together", "p2tog"},
    {"p 2 together", "p2tog"},
    {"p3 tog", "p3tog"},
    {"p 3 tog", "p3tog"},
    {"p3 together", "p3tog"},
    {"p 3 together", "p3tog"},
    {"k2 tog tbl", "k2tog tbl"},
    {"knit 2 together through the back loops", "k2tog tbl"},
    {"knit two together through the back loops", "k2tog tbl"},
    {"p2 tog tbl", "p2tog tbl"},
    {"sl, sl, k", "ssk"},
    {"slip slip knit", "ssk"},
    {"slip, slip, purl", "ssp"},
    {"skpo", "skp"},
    {"skpsso", "skp"},
    {"sl1-k1-psso", "skp"},
    {"sl 1-k1-psso", "skp"},
    {"s1-k1-psso", "skp"},
    {"sk2po", "sk2p"},
    {"sk2togp", "sk2p"},
    {"sk2psso", "sk2p"},
    {"sl1-k2tog-psso", "sk2p"},
    {"s2kpo", "s2kp"},
    {"s2k1p", "s2kp"},
    {"s2kpsso", "s2kp"},
    {"cdd", "s2kp"},
    {"sl2-k1-p2sso", "s2kp"},
    {"yarn over", "yo"},
    {"yarnover", "yo"},
    {"yarn-over", "yo"},
    {"yon", "yo"},
    {"yfwd", "yo"},
    {"yrn", "yo"},
    {"yarn forward", "yo"},
    {"yarn round needle", "yo"},
    {"y.o.", "yo"},
    {"y/o", "yo"},
    {"yfrn", "yo"},
    {"yfon", "yo"},
    {"double yarn over", "yo2", "two loops, each a stitch of the next row"},
    {"double yo", "yo2", "two loops, each a stitch of the next row"},
    {"m1", "m1L", "m1L: the words don't say which way it leans"},
    {"make 1", "m1L", "m1L: the words don't say which way it leans"},
    {"make one", "m1L", "m1L: the words don't say which way it leans"},
    {"make one left", "m1L"},
    {"make 1 left", "m1L"},
    {"m1-l", "m1L"},
    {"m1 left", "m1L"},
    {"make one right", "m1R"},
    {"make 1 right", "m1R"},
    {"m1-r", "m1R"},
    {"m1 right", "m1R"},
    {"m1p", "m1Lp", "m1Lp: the words don't say which way it leans"},
    {"m1lp", "m1Lp"},
    {"m1rp", "m1Rp"},
    {"kf&b", "kfb"},
    {"k1fb", "kfb"},
    {"k1f&b", "kfb"},
    {"kfab", "kfb"},
    {"k1fab", "kfb"},
    {"pf&b", "pfb"},
    {"p1fb", "pfb"},
    {"p1f&b", "pfb"},
    {"sl1 knitwise", "sl1k"},
    {"sl 1 knitwise", "sl1k"},
    {"slip 1 knitwise", "sl1k"},
    {"slip one knitwise", "sl1k"},
    {"slip 1 st knitwise", "sl1k"},
    {"sl1 kwise", "sl1k"},
    {"sl 1 kwise", "sl1k"},
    {"sl1 kw", "sl1k"},
    {"slip 1 stitch knitwise", "sl1k"},
    {"slip first st knitwise", "sl1k"},
    {"slip the first st knitwise", "sl1k"},
    {"sl1-yo", "sl1yo"},
    {"sl1 yo", "sl1yo"},
    {"slip 1 yo", "sl1yo"},
    {"slip 1 with yo", "sl1yo"},
    {"double stitch", "DS"},
    {"ds", "DS"},
    {"make ds", "DS"},
    {"kds", "k", "one stitch: both legs of the double stitch, which knitting it closes"},
    {"k ds", "k", "one stitch: both legs of the double stitch, which knitting it closes"},
    {"knit ds", "k", "one stitch: both legs of the double stitch, which knitting it closes"},
    {"k ds as one stitch", "k"},
    {"knit ds as one stitch", "k"},
    {"k ds tog", "k"},
    {"pds", "p", "one stitch: both legs of the double stitch, which purling it closes"},
    {"p ds", "p", "one stitch: both legs of the double stitch, which purling it closes"},
    {"p ds as one stitch", "p"},
    {"p ds tog", "p"},
    {"k wrap tog with st", "k"},
    {"k st with its wrap", "k"},
    {"knit st with its wrap", "k"},
    {"k next st with its wrap", "k"},
    {"knit next st with its wrap", "k"},
    {"p st with its wrap", "p"},
    {"p next st with its wrap", "p"},
    {"k yo tog with next st", "k"},
    {"p yo tog with next st", "p"},
    {"make bobble", "MB"},
    {"drop next st", "drop st"},
    {"drop wrap", "drop 1"},
    {"drop 1 st", "drop st"},
    {"drop stitch", "drop st"},
};

// Words that a side lacks but that have a stitch of the same structure there.
constexpr Other alike[] = {{"skp", "ssk"}, {"sk2p", "sssk"}};

struct Letters {
    std::string_view said, as;
};
constexpr Letters otherLetters[] = {{"knit", "k"},
                                    {"purl", "p"},
                                    {"slip", "sl"},
                                    {"s", "sl"},
                                    {"knit next", "k"},
                                    {"purl next", "p"},
                                    {"bind off", "bo"},
                                    {"bind-off", "bo"},
                                    {"bo", "bo"},
                                    {"cast off", "bo"},
                                    {"cast on", "co"},
                                    {"cast-on", "co"},
                                    {"pick up and knit", "pu"},
                                    {"pick up & knit", "pu"},
                                    {"pick up", "pu"},
                                    {"slip next", "sl"},
                                    {"brioche knit", "brk"},
                                    {"brioche purl", "brp"}};
constexpr Letters otherTails[] = {{" through back loop", " tbl"},
                                  {" through back loops", " tbl"},
                                  {" through the back loop", " tbl"},
                                  {" through the back loops", " tbl"},
                                  {"tbl", " tbl"},
                                  {"-tbl", " tbl"},
                                  {" with yarn in front", " wyif"},
                                  {" with yarn in back", " wyib"},
                                  {" with yarn at front", " wyif"},
                                  {" with yarn at back", " wyib"},
                                  {" yif", " wyif"},
                                  {" yib", " wyib"},
                                  {" wyf", " wyif"},
                                  {" wyb", " wyib"},
                                  {" purlwise", ""},
                                  {" pwise", ""},
                                  {" purlwise wyif", " wyif"},
                                  {" purlwise wyib", " wyib"},
                                  {" pwise wyif", " wyif"},
                                  {" pwise wyib", " wyib"},
                                  {" wyif purlwise", " wyif"},
                                  {" wyib purlwise", " wyib"}};

bool letterOrDigit(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

// A word may end before `at`: "k1" does not end before "-p1", "yo" before "2".
bool endsBefore(std::string_view text, std::size_t at)
{
    if (at >= text.size())
        return true;
    if (letterOrDigit(text[at]))
        return !letterOrDigit(text[at - 1]);
    return !((text[at] == '-' || text[at] == '/' || text[at] == '&') && at + 1 < text.size() &&
             letterOrDigit(text[at + 1]));
}

std::string withFigures(std::string name)
{
    constexpr std::array<std::pair<std::string_view, std::string_view>, 5> words{
        {{"two", "2"}, {"three", "3"}, {"four", "4"}, {"five", "5"}, {"seven", "7"}}};
    for (const auto& [word, figure] : words)
        if (const auto at = name.find(word); at != std::string::npos)
            name.replace(at, word.size(), figure);
    return name;
}

std::string keyFrom(const std::string& word)
{
    std::string key;
    for (const char c : lowered(word))
        key += letterOrDigit(c) ? c : '_';
    return key.substr(0, mostKeyLetters - 8);
}

} // namespace

Vocabulary::Vocabulary(const Catalogue& catalogue, PatternHead head)
    : m_builtIn(catalogue), m_catalogue(catalogue.with(head.stitches)), m_head(std::move(head))
{
    index();
}

void Vocabulary::addLiteral(Side side, std::string_view word, StitchId stitch, std::string_view remark)
{
    auto& entries = m_literals[static_cast<int>(side)][lowered(word)];
    m_longest = std::max(m_longest, word.size());
    for (const Entry& one : entries)
        if (one.exact == word)
            return;
    entries.push_back({std::string(word), stitch, std::string(remark)});
}

void Vocabulary::addNumbered(Side side, const Stitch& stitch, Words words)
{
    const StitchWord said = stitchWord(stitch, side, words);
    if (said.form == CountForm::Other)
        return;
    auto& list = m_numbered[static_cast<int>(side)];
    // The word goes to the stitch that the catalogue gives for it.
    const StitchId id = m_catalogue.worked(abbreviation(stitch, side, words), side).value_or(stitch.id);
    const auto add = [&](std::string letters, std::string tail) {
        const bool there = std::any_of(list.begin(), list.end(), [&](const Numbered& one) {
            return one.letters == letters && one.tail == tail;
        });
        if (!there)
            list.push_back({std::move(letters), std::move(tail), id, said.form == CountForm::Edge});
    };
    const std::string letters(trimmed(said.word));
    add(letters, said.tail);
    for (const Letters& other : otherLetters)
        if (other.as == letters || (said.form == CountForm::Edge && m_catalogue.worked(other.as, side) == id))
            add(std::string(other.said), said.tail);
}

void Vocabulary::index()
{
    for (auto& near : m_near)
        near.reset();
    for (auto& literals : m_literals)
        literals.clear();
    for (auto& numbered : m_numbered)
        numbered.clear();
    std::vector<const Stitch*> all;
    for (const auto* stitches : {&m_catalogue.own(), &m_catalogue.builtIn()})
        for (const Stitch& stitch : *stitches)
            if (stitch.id != noStitch)
                all.push_back(&stitch);
    for (const Side side : {Side::RS, Side::WS}) {
        const auto sideWord = [&](std::string_view word) { return m_catalogue.worked(word, side); };
        for (const Stitch* stitch : all)
            for (const Words words : {Words::US, Words::UK}) {
                addNumbered(side, *stitch, words);
                const std::string& word = abbreviation(*stitch, side, words);
                if (const auto id = sideWord(word))
                    addLiteral(side, word, *id);
                if (const auto at = word.rfind(" tbl"); at != std::string::npos && at + 4 == word.size())
                    for (const char* loops :
                         {" through back loop", " through back loops", " through the back loop",
                          " through the back loops", "-tbl", "tbl"})
                        if (const auto id = sideWord(word))
                            addLiteral(side, word.substr(0, at) + loops, *id);
                if (isYarnOver(*stitch) && stitch->leaves > 1)
                    addLiteral(side, stitchWord(*stitch, side, words).word, stitch->id);
            }
        for (const Other& other : others)
            if (const auto id = sideWord(other.as))
                addLiteral(side, other.word, *id, other.remark);
        // "Knit two together" is what is done, whichever side faces.
        for (const Stitch* stitch : all)
            if (const auto id =
                    stitch->sameOnBothSides ? std::optional(stitch->id) : sideWord(stitch->onRS)) {
                addLiteral(side, stitch->name, *id);
                addLiteral(side, withFigures(stitch->name), *id);
            }
        for (const Other& one : alike)
            if (const auto id = sideWord(one.as); id && !sideWord(one.word))
                addLiteral(side, one.word, *id,
                           std::string(one.as) + ", which lies the same way on this side");
        auto& numbered = m_numbered[static_cast<int>(side)];
        std::vector<Numbered> more;
        for (const Letters& tail : otherTails)
            for (const Numbered& one : numbered)
                if (one.tail == tail.as && !one.edge)
                    more.push_back({one.letters, std::string(tail.said), one.stitch, false});
        for (Numbered& one : more)
            if (std::none_of(numbered.begin(), numbered.end(), [&](const Numbered& n) {
                    return n.letters == one.letters && n.tail == one.tail;
                }))
                numbered.push_back(std::move(one));
        std::stable_sort(numbered.begin(), numbered.end(), [](const Numbered& a, const Numbered& b) {
            return a.letters.size() + a.tail.size() > b.letters.size() + b.tail.size();
        });
    }
}

const Vocabulary::Entry* Vocabulary::entry(std::string_view key, std::string_view exact, Side side) const
{
    const auto found = m_literals[static_cast<int>(side)].find(std::string(key));
    if (found == m_literals[static_cast<int>(side)].end())
        return nullptr;
    for (const Entry& one : found->second)
        if (one.exact == exact)
            return &one;
    return &found->second.front();
}

std::optional<Vocabulary::Literal> Vocabulary::literal(std::string_view text, std::size_t from,
                                                       Side side) const
{
    const std::string_view ahead = text.substr(from, m_longest);
    const std::string key = lowered(ahead);
    for (std::size_t length = ahead.size(); length > 0; --length)
        if (ahead[length - 1] != ' ' && endsBefore(text, from + length))
            if (const Entry* found =
                    entry(std::string_view(key).substr(0, length), ahead.substr(0, length), side))
                return Literal{found->stitch, from + length, found->remark};
    return std::nullopt;
}

std::optional<std::string> Vocabulary::meantBy(std::string_view word, Side side) const
{
    auto& near = m_near[static_cast<int>(side)];
    if (!near) {
        near.emplace();
        for (const auto& [known, entries] : m_literals[static_cast<int>(side)])
            near->add(known);
        for (const char* known :
             {"knit", "purl", "slip", "turn", "slide", "pm", "sm", "rm", "psso", "repeat"})
            near->add(known);
    }
    return near->near(word);
}

std::optional<StitchId> Vocabulary::worked(std::string_view word, Side side) const
{
    return m_catalogue.worked(word, side);
}

StitchId Vocabulary::own(const std::string& word, Side side, int takesUp, int leaves, const std::string& name)
{
    if (const auto known = m_catalogue.worked(word, side))
        return *known;
    Stitch stitch;
    stitch.id = freshStitchId(m_head);
    stitch.key = keyFrom(word) + (side == Side::RS ? "" : "_ws");
    while (m_catalogue.find(stitch.key))
        stitch.key += "x";
    stitch.name = name;
    stitch.family = takesUp > leaves ? Family::Decrease : takesUp < leaves ? Family::Increase : Family::Basic;
    stitch.takesUp = takesUp;
    stitch.leaves = leaves;
    stitch.sameOnBothSides = true;
    // The other side must not have this word for something else.
    const bool clash = m_catalogue.worked(word, otherSide(side)).has_value();
    const std::string elsewhere = clash ? word + (side == Side::RS ? " as on RS" : " as on WS") : word;
    stitch.onRS = side == Side::RS ? word : elsewhere;
    stitch.onWS = side == Side::WS ? word : elsewhere;
    stitch.howToRS = name;
    stitch.source = "the text that was read";
    const auto fit = checked(stitch);
    if (!fit.ok() || m_head.stitches.size() >= 500)
        return noStitch;
    m_head.stitches.push_back(fit.value());
    m_catalogue = m_builtIn.with(m_head.stitches);
    addLiteral(Side::RS, stitch.onRS, stitch.id);
    addLiteral(Side::WS, stitch.onWS, stitch.id);
    for (auto& near : m_near)
        near.reset();
    return stitch.id;
}

void Vocabulary::nameSizes(const Quantity& numbers)
{
    if (numbers.single() || sizes() > 1)
        return;
    m_head.sizes.clear(); // what looked like the name of one
    for (std::size_t i = 0; i < numbers.values.size(); ++i)
        m_head.sizes.push_back("size " + toText(static_cast<int>(i) + 1));
}

std::optional<YarnId> Vocabulary::knownYarn(std::string_view name) const
{
    for (const bool exactly : {true, false})
        for (const Yarn& yarn : m_head.yarns)
            for (const std::string& called : {yarn.code, yarn.name})
                if (!called.empty() && (exactly ? called == name : lowered(called) == lowered(name)))
                    return yarn.id;
    // As the writer calls a yarn without a code or name.
    for (const Yarn& yarn : m_head.yarns)
        if (yarn.code.empty() && yarn.name.empty() && lowered(name) == "yarn " + toText(yarn.id.value))
            return yarn.id;
    return std::nullopt;
}

YarnId Vocabulary::yarn(const std::string& name)
{
    if (const auto known = knownYarn(name))
        return *known;
    if (m_head.yarns.size() >= 200)
        return m_head.yarns.front().id;
    constexpr std::array<std::uint32_t, 6> colours{0xf0ead6, 0x556b2f, 0x8b3a3a,
                                                   0x2f4f6f, 0xc9b58a, 0x6a5acd};
    Yarn yarn;
    yarn.id = freshYarnId(m_head);
    yarn.code = name;
    yarn.colour = colours[m_head.yarns.size() % colours.size()];
    m_head.yarns.push_back(yarn);
    return yarn.id;
}

std::optional<MarkerId> Vocabulary::knownMarker(std::string_view name) const
{
    if (m_markersKnown > m_head.markers.size()) {
        m_markersKnown = 0;
        m_markers[0].clear();
        m_markers[1].clear();
    }
    for (; m_markersKnown < m_head.markers.size(); ++m_markersKnown) {
        const Marker& marker = m_head.markers[m_markersKnown];
        const std::string called = marker.name.empty() ? toText(marker.id.value) : marker.name;
        m_markers[0].emplace(called, marker.id);
        m_markers[1].emplace(lowered(called), marker.id);
    }
    if (const auto exactly = m_markers[0].find(std::string(name)); exactly != m_markers[0].end())
        return exactly->second;
    const auto alike = m_markers[1].find(lowered(name));
    return alike == m_markers[1].end() ? std::nullopt : std::optional(alike->second);
}

MarkerId Vocabulary::marker(const std::string& name)
{
    if (const auto known = knownMarker(name))
        return *known;
    if (m_head.markers.size() >= 2000)
        return m_head.markers.front().id;
    Marker marker;
    marker.id = freshMarkerId(m_head);
    marker.name = name;
    m_head.markers.push_back(marker);
    return marker.id;
}

} // namespace shawlwright
