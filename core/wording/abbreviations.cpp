#include "core/wording/abbreviations.h"

#include "core/base/text.h"
#include "core/wording/writer/stitch_words.h"
#include "core/wording/writer/turn_words.h"

#include <algorithm>
#include <array>
#include <set>

namespace shawlwright {
namespace {

// The name, which is that of the stitch as worked on RS, and what to do on a side.
std::string meaning(const Stitch& stitch, Side side)
{
    const std::string& howTo = side == Side::WS && !stitch.howToWS.empty() ? stitch.howToWS : stitch.howToRS;
    if (howTo.empty())
        return stitch.name;
    return side == Side::RS ? stitch.name + ". " + howTo : howTo;
}

using Used = std::set<std::pair<StitchId, Side>>;

void collect(const Phrases& phrases, Side side, Used& used)
{
    for (const Phrase& phrase : phrases)
        if (const auto* run = std::get_if<Stretch>(&phrase.is))
            used.insert({run->stitch, side});
        else if (const auto* group = std::get_if<Group>(&phrase.is))
            collect(group->inside, side, used);
}

bool letterOrFigure(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           static_cast<unsigned char>(c) >= 0x80;
}

// The word stands in the text, whole; `numbered`: with a number behind it or not.
bool says(std::string_view text, std::string_view word, bool numbered)
{
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        if (at > 0 && letterOrFigure(text[at - 1]))
            continue;
        std::size_t end = at + word.size();
        while (numbered && end < text.size() && text[end] >= '0' && text[end] <= '9')
            ++end;
        if (end >= text.size() || !letterOrFigure(text[end]))
            return true;
    }
    return false;
}

void collectTurns(const Phrases& phrases, std::set<TurnMethod>& turns)
{
    for (const Phrase& phrase : phrases)
        if (const auto* end = std::get_if<FinishPhrase>(&phrase.is);
            end && end->finish.kind == FinishKind::TurnEarly)
            turns.insert(end->finish.method);
}

// What is done at the turn and, as no row says it, in the row that crosses it. Wraps may stay in garter stitch: Carol
// Feller. The yarn over and the pinned yarn are worked with the next stitch: Craft Star Studios; Knit 1 Knit All. The
// twin as one stitch: Brooklyn Tweed.
std::string turnMeaning(TurnMethod method)
{
    switch (method) {
    case TurnMethod::WrapAndTurn:
        return "wrap and turn: slip the next stitch, bring the yarn to the other side of the work, slip the stitch back, "
               "turn. In the row that crosses the turn lift the wrap and work it together with its stitch; in garter "
               "stitch it may stay";
    case TurnMethod::YarnOver:
        return "turn and begin with a yarn over, which is not counted. In the row that crosses the turn work the yarn over "
               "together with the unworked stitch beside it";
    case TurnMethod::PinnedYarn:
        return "turn and hang a pin on the yarn; the next row begins with a slipped stitch. In the row that crosses the turn lift the "
               "pinned yarn onto the needle and work it together with the unworked stitch beside it";
    case TurnMethod::TwinStitch:
        return "work a second loop into the stitch below the next one, put both on the left needle as one stitch, turn. In "
               "the row that crosses the turn work the twin stitch as one";
    case TurnMethod::DoubleStitch:
        return "double stitch: after the turn, yarn in front, slip the first stitch as if to purl and pull the yarn up and "
               "over the needle until both legs of the stitch below show; it counts as one. In the row that crosses the "
               "turn work both legs as one";
    case TurnMethod::Plain:
        break;
    }
    return {};
}

struct General {
    std::string_view word, shortForm, meaning;
};
constexpr std::array<General, 17> general{{
    {"RS", "RS", "right side"},
    {"WS", "WS", "wrong side"},
    {"st", "st(s)", "stitch(es)"},
    {"sts", "st(s)", "stitch(es)"},
    {"rnd", "rnd(s)", "round(s)"},
    {"Rnd", "rnd(s)", "round(s)"},
    {"rnds", "rnd(s)", "round(s)"},
    {"Rnds", "rnd(s)", "round(s)"},
    {"rep", "rep", "repeat"},
    {"Rep", "rep", "repeat"},
    {"rem", "rem", "remaining"},
    {"inc", "inc", "increased"},
    {"dec", "dec", "decreased"},
    {"pm", "pm", "place marker"},
    {"sm", "sm", "slip marker"},
    {"w&t", "w&t", "wrap and turn"}, // in words that were typed
    {"DS", "DS", "double stitch"},
}};

} // namespace

std::vector<Abbreviation> abbreviationsIn(std::string_view text, std::span<const SaidRow> rows,
                                          const Catalogue& catalogue, const Style& style,
                                          std::span<const Yarn> yarns)
{
    Used used;
    for (const SaidRow& row : rows)
        collect(row.phrases, row.side, used);
    std::map<std::string, std::string> found;
    // The stitch of that name explains it best: "k" from knit worked on RS, not from purl worked on WS.
    for (const Side side : {Side::RS, Side::WS})
        for (const auto& [id, workedOn] : used) {
            if (workedOn != side)
                continue;
            // "yo twice", as the text has it, rather than "yo2".
            const StitchWord said = stitchWord(catalogue.stitch(id), side, style.words, style.times);
            const std::string& word = said.form == CountForm::Other
                                          ? said.word
                                          : abbreviation(catalogue.stitch(id), side, style.words);
            if (word.empty() || found.contains(word))
                continue;
            // "knit" to the end of a row says no "k".
            if (plainlyWorked(catalogue.stitch(id), side)) {
                std::string capital = word;
                capital.front() = static_cast<char>(capital.front() - 'a' + 'A');
                if (!says(text, word, true) && !says(text, capital, true))
                    continue;
            }
            const auto own = catalogue.worked(word, Side::RS);
            if (plainlyWorked(catalogue.stitch(id), side)) {
                found.emplace(word, word == "k" ? "knit" : "purl");
                continue;
            }
            found.emplace(word, side == Side::WS && own ? meaning(catalogue.stitch(*own), Side::RS)
                                                        : meaning(catalogue.stitch(id), side));
        }
    std::set<TurnMethod> turns;
    for (const SaidRow& row : rows)
        collectTurns(row.phrases, turns);
    for (const TurnMethod method : turns)
        if (const std::string means = turnMeaning(method); !means.empty())
            found.emplace(method == TurnMethod::DoubleStitch ? "DS" : turnInWords(method), means);
    for (const General& one : general)
        if (says(text, one.word, false))
            found.emplace(one.shortForm, one.meaning);
    for (const Yarn& yarn : yarns)
        if (!yarn.name.empty() && yarn.name != yarn.code && says(text, yarn.code, true))
            found.emplace(yarn.code, yarn.name);
    if (says(text, "R1", true) && style.labels == LabelForm::Short)
        found.emplace("R", "row");
    std::vector<Abbreviation> list;
    for (const auto& [shortForm, means] : found)
        list.push_back({shortForm, means});
    std::ranges::stable_sort(list, {}, [](const Abbreviation& it) { return lowered(it.shortForm); });
    return list;
}

} // namespace shawlwright
