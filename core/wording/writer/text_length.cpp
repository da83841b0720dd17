#include "core/wording/writer/text_length.h"

#include "core/wording/writer/stitch_words.h"

namespace shawlwright {
namespace {

int digits(int number)
{
    int count = 1;
    for (; number >= 10; number /= 10)
        ++count;
    return count;
}

int timesLength(int times)
{
    return times == 2 ? 5 : digits(times) + 6; // "twice", "4 times"
}

constexpr int inYarn = 6; // " in CC"

} // namespace

const TextLength::Known& TextLength::known(StitchId stitch)
{
    for (const Known& one : m_known)
        if (one.stitch == stitch)
            return one;
    const Stitch& what = m_catalogue.stitch(stitch);
    const StitchWord word = stitchWord(what, m_side, Words::US);
    m_known.push_back({stitch, word.form == CountForm::Plain, word.form == CountForm::Edge,
                       isYarnOver(what) && what.leaves == 1,
                       static_cast<int>(word.word.size() + word.tail.size())});
    return m_known.back();
}

int TextLength::run(StitchId stitch, YarnId yarn, int count)
{
    const Known& word = known(stitch);
    const int one = word.letters + (yarn == YarnId{} ? 0 : inYarn);
    if (word.numbered)
        return one + digits(count);
    if (word.edge)
        return one + 1 + digits(count);
    if (word.told && count <= 3)
        return count * (one + comma) - comma;
    if (word.told)
        return one + 1 + timesLength(count); // "yo 4 times"
    return count == 1 ? one : one + 3 + timesLength(count);
}

int TextLength::group(int inside, int times) const
{
    return inside + 3 + timesLength(times);
}

int TextLength::phrase(const Phrase& phrase)
{
    if (const auto* stretch = std::get_if<Stretch>(&phrase.is))
        return run(stretch->stitch, stretch->yarn, stretch->count);
    if (const auto* marker = std::get_if<MarkerPhrase>(&phrase.is))
        return marker->act == MarkerPhrase::Act::Remove ? 13 : 2;
    if (const auto* inner = std::get_if<Group>(&phrase.is)) {
        const int inside = phrases(inner->inside);
        const bool once = inner->to.place == BoxUntil::Times && inner->times == Quantity(1);
        return once ? inside : group(inside, inner->times.at(0));
    }
    return 10;
}

int TextLength::phrases(const Phrases& phrases)
{
    int length = 0;
    for (const Phrase& each : phrases)
        length += phrase(each) + comma;
    return phrases.empty() ? 0 : length - comma;
}

} // namespace shawlwright
