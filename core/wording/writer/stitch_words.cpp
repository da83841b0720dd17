#include "core/wording/writer/stitch_words.h"

#include "core/base/text.h"
#include "core/wording/writer/quantity_words.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace shawlwright {
namespace {

struct Plain {
    std::string_view letters;
    bool goesTo;
};
constexpr std::array<Plain, 6> plain{
    {{"k", true}, {"p", true}, {"brk", true}, {"brp", true}, {"sl", true}, {"drop", false}}};
constexpr std::array<std::string_view, 7> tails{"", " tbl", " wyif", " wyib", " wyf", " wyb", " st"};

} // namespace

std::string StitchWord::times(const std::string& number) const
{
    return form == CountForm::Edge ? word + " " + number : word + number + tail;
}

StitchWord stitchWord(const Stitch& stitch, Side side, Words words, TimesForm times)
{
    const std::string& called = abbreviation(stitch, side, words);
    const bool bindsOff = stitch.manner == Manner::BoundOff && stitch.takesUp == 1 && stitch.leaves == 0;
    const bool castsOn = stitch.manner == Manner::CastOn && stitch.takesUp == 0 && stitch.leaves == 1;
    if (bindsOff || castsOn)
        return {CountForm::Edge, called, {}, bindsOff};
    // The double yarn over by what the hands do: "yo2" may be taken for two stitches or for one.
    if (isYarnOver(stitch) && stitch.leaves > 1 && called == "yo" + toText(stitch.leaves))
        return {CountForm::Other, "yo " + timesInWords(stitch.leaves, times), {}, false};
    const std::string_view whole = called;
    for (const Plain& kind : plain) {
        if (!whole.starts_with(kind.letters))
            continue;
        std::string_view rest = whole.substr(kind.letters.size());
        const bool numbered = rest.starts_with("1") || rest.starts_with(" 1");
        std::string word(kind.letters);
        if (numbered) {
            word += rest.starts_with(" ") ? " " : "";
            rest.remove_prefix(rest.starts_with(" ") ? 2 : 1);
        }
        // "drop st" has no place for a number, "sl" alone has.
        if (std::find(tails.begin(), tails.end(), rest) == tails.end() || (rest == " st" && !numbered))
            continue;
        return {CountForm::Plain, std::move(word), std::string(rest), kind.goesTo};
    }
    return {CountForm::Other, called, {}, false};
}

bool isYarnOver(const Stitch& stitch)
{
    return stitch.family == Family::YarnOver && stitch.takesUp == 0;
}

bool plainlyWorked(const Stitch& stitch, Side side)
{
    const std::string& called = abbreviation(stitch, side);
    return stitch.takesUp == 1 && stitch.leaves == 1 && stitch.manner == Manner::Worked &&
           (called == "k" || called == "p");
}

} // namespace shawlwright
