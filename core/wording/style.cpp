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
constexpr Entry<TimesForm> timesNames[] = {
    {TimesForm::Mixed, "mixed"}, {TimesForm::Figures, "figures"}, {TimesForm::Words, "words"}};
constexpr Entry<Capitals> capitalNames[] = {
    {Capitals::Small, "small"}, {Capitals::RowStart, "row start"}, {Capitals::Stitches, "stitches"}};
constexpr Entry<SidesShown> sideNames[] = {{SidesShown::EveryRow, "every row"},
                                           {SidesShown::WhereDoubtful, "where doubtful"},
                                           {SidesShown::Never, "never"}};
constexpr Entry<RepeatWord> repeatWordNames[] = {{RepeatWord::Rep, "rep"}, {RepeatWord::Repeat, "repeat"}};
constexpr Entry<LabelForm> labelNames[] = {{LabelForm::Colon, "colon"},
                                           {LabelForm::FullStop, "full stop"},
                                           {LabelForm::Short, "short"},
                                           {LabelForm::Ordinal, "ordinal"}};
constexpr Entry<CountMarks> countMarkNames[] = {{CountMarks::Parentheses, "parentheses"},
                                                {CountMarks::Brackets, "brackets"},
                                                {CountMarks::Dash, "dash"},
                                                {CountMarks::None, "none"}};
constexpr Entry<Gathering> gatheringNames[] = {{Gathering::Gathered, "gathered"},
                                               {Gathering::RowByRow, "row by row"}};
constexpr Entry<LongRuns> longRunNames[] = {{LongRuns::ToAPlace, "to a place"}, {LongRuns::Counted, "counted"}};
constexpr Entry<MarkersSlipped> markerNames[] = {{MarkersSlipped::Said, "said"},
                                                 {MarkersSlipped::WhereNeeded, "where needed"}};
constexpr Entry<VersionsTold> versionNames[] = {{VersionsTold::Apart, "apart"},
                                                {VersionsTold::SideBySide, "side by side"}};

// Each field of a style with its key and its words.
template <typename AnyStyle, typename Visit>
void eachField(AnyStyle& style, const Visit& visit)
{
    visit("words", wordNames, style.words);
    visit("counts", countNames, style.counts);
    visit("repeats", repeatNames, style.repeats);
    visit("times", timesNames, style.times);
    visit("capitals", capitalNames, style.capitals);
    visit("sides", sideNames, style.sides);
    visit("repeat word", repeatWordNames, style.repeatWord);
    visit("labels", labelNames, style.labels);
    visit("count marks", countMarkNames, style.countMarks);
    visit("rows", gatheringNames, style.gathering);
    visit("long runs", longRunNames, style.longRuns);
    visit("markers slipped", markerNames, style.markers);
    visit("versions", versionNames, style.versions);
}

} // namespace

Style styleOf(const PatternHead& head)
{
    Style style;
    eachField(style, [&](const char* key, const auto& names, auto& value) {
        const auto found = head.style.find(key);
        if (found == head.style.end())
            return;
        for (const auto& entry : names)
            if (found->second == entry.word)
                value = entry.value;
    });
    return style;
}

std::map<std::string, std::string> toWords(const Style& style)
{
    std::map<std::string, std::string> words;
    eachField(style, [&](const char* key, const auto& names, const auto& value) {
        for (const auto& entry : names)
            if (value == entry.value)
                words[key] = entry.word;
    });
    return words;
}

} // namespace shawlwright
