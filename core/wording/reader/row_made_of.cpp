// Stitches told by what they are made of: "sl1, k2tog, psso", "[k1, p1] in next st".

#include "core/wording/reader/row_parser.h"

#include "core/base/text.h"
#include "core/wording/writer/stitch_words.h"

namespace shawlwright {

// "sl1, k2tog, psso": what lies before it, back to the slip, is one stitch.
RowParser::Got RowParser::passOver(Phrases& out)
{
    const std::size_t from = m_cursor.at();
    if (!m_cursor.anyOf({"psso", "p2sso", "p3sso", "pass slipped stitch over", "pass slipped st over",
                         "pass slipped sts over", "pass slipped stitches over", "pass sl st over",
                         "pass sl sts over", "pass the slipped stitch over", "pass over"}))
        return Got::Nothing;
    std::size_t slip = out.size();
    while (slip > 0) {
        const auto* run = std::get_if<Stretch>(&out[slip - 1].is);
        if (!run || run->count == 0)
            break;
        --slip;
        if (stitchOf(run->stitch).manner == Manner::Slipped)
            break;
    }
    const auto* slipped = slip < out.size() ? std::get_if<Stretch>(&out[slip].is) : nullptr;
    if (!slipped || stitchOf(slipped->stitch).manner != Manner::Slipped || slip + 1 == out.size())
        return fault(from, "psso", "a slipped stitch and what it is passed over before it");
    int takes = 0;
    int leaves = 0;
    std::string word = "sl" + toText(slipped->count);
    for (std::size_t i = slip; i < out.size(); ++i) {
        const auto& run = std::get<Stretch>(out[i].is);
        takes += run.count * stitchOf(run.stitch).takesUp;
        leaves += i > slip ? run.count * stitchOf(run.stitch).leaves : 0;
        if (i > slip) {
            StitchWord said = stitchWord(stitchOf(run.stitch), m_side, Words::US);
            word +=
                "-" + (said.form == CountForm::Other && run.count > 1 ? toText(run.count) + "x" + said.word
                       : said.form == CountForm::Other                ? said.word
                                                                      : said.times(toText(run.count)));
        }
    }
    if (takes > mostLoopsPerStitch || leaves > mostLoopsPerStitch)
        return fault(from, "psso", "at most " + toText(mostLoopsPerStitch) + " stitches to pass over");
    struct Known {
        std::string_view told, word;
    };
    constexpr Known known[] = {{"sl1-k1", "skp"},      {"sl1-k2tog", "sk2p"}, {"sl1-k2", "s1k2p"},
                               {"sl1-k3tog", "sk3p"},  {"sl2-k1", "s2kp"},    {"sl2-k2tog", "s2k2p"},
                               {"sl2-k3tog", "s2k3p"}, {"sl3-k2tog", "s3k2p"}};
    std::optional<StitchId> stitch;
    for (const Known& one : known)
        if (one.told == word)
            if (const auto literal = m_words.literal(one.word, 0, m_side))
                stitch = literal->stitch;
    const YarnId yarn = slipped->yarn;
    if (!stitch && !m_words.worked(word + "-psso", m_side))
        remark(ReadingNote::Weight::Note, from, word + "-psso",
               "a stitch of the pattern's own, " + toText(takes) + " into " + toText(leaves));
    if (!stitch)
        stitch =
            m_words.own(word + "-psso", m_side, takes, leaves,
                        word + ", slipped " + (slipped->count > 1 ? "stitches" : "stitch") + " passed over");
    out.erase(out.begin() + static_cast<std::ptrdiff_t>(slip), out.end());
    if (*stitch == noStitch)
        return fault(from, "psso", "fewer stitches of the pattern's own");
    out.push_back({Stretch{*stitch, yarn, 1, {}}, 0, 0});
    return Got::Something;
}

// "[k1, p1] in next st", "[k1, p1] in double yo".
RowParser::Got RowParser::gathered(Phrases& out, Phrases&& inside, std::size_t from)
{
    const std::size_t here = m_cursor.at();
    m_cursor.word("all");
    if (!m_cursor.anyOf({"in", "into", "in to"})) {
        m_cursor.to(here);
        return Got::Nothing;
    }
    const bool overYarn = m_cursor.anyOf(
        {"double yo", "double yarn over", "the double yo", "next double yo", "yo twice", "yo2"});
    if (!overYarn &&
        !m_cursor.anyOf({"next st", "next stitch", "same st", "same stitch", "one st", "one stitch", "1 st",
                         "1 stitch", "the next st", "the next stitch", "the same st", "st"})) {
        m_cursor.to(here);
        return Got::Nothing;
    }
    std::string word;
    int leaves = 0;
    for (const Phrase& phrase : inside) {
        const auto* run = std::get_if<Stretch>(&phrase.is);
        if (!run || run->count == 0 || run->count > mostLoopsPerStitch)
            return fault(from, "brackets worked into one stitch", "single stitches in them");
        for (int i = 0; i < run->count; ++i)
            word += (word.empty() ? "" : "-") + wordOf(*run);
        leaves += run->count * stitchOf(run->stitch).leaves;
    }
    if (leaves > mostLoopsPerStitch)
        return fault(from, word.substr(0, 40),
                     "at most " + toText(mostLoopsPerStitch) + " stitches worked into one");
    struct Known {
        std::string_view told, word;
    };
    constexpr Known known[] = {
        {"k1-yo-k1", "kyok"}, {"p1-yo-p1", "pyop"}, {"k1-k1 tbl", "kfb"}, {"p1-p1 tbl", "pfb"}};
    std::optional<StitchId> stitch =
        m_words.worked(word + (overYarn ? " in double yo" : " in next st"), m_side);
    for (const Known& one : known)
        if (!stitch && !overYarn && one.told == word)
            stitch = m_words.worked(one.word, m_side);
    if (!stitch)
        stitch = m_words.own(word + (overYarn ? " in double yo" : " in next st"), m_side, overYarn ? 2 : 1,
                             leaves, word + (overYarn ? " in double yarn over" : " in one stitch"));
    return afterWord(out, *stitch, from);
}

} // namespace shawlwright
