#include "core/wording/writer/needless_slips.h"

#include "core/wording/writer/phrase_columns.h"

namespace shawlwright {
namespace {

bool takesSome(const Phrases& phrases, std::size_t i, const Catalogue& catalogue)
{
    const auto* run = i < phrases.size() ? std::get_if<Stretch>(&phrases[i].is) : nullptr;
    return run && catalogue.stitch(run->stitch).takesUp > 0;
}

} // namespace

bool isSlip(const Phrase& phrase)
{
    const auto* marker = std::get_if<MarkerPhrase>(&phrase.is);
    return marker && marker->act == MarkerPhrase::Act::Slip;
}

Phrases withoutNeedlessSlips(const Phrases& phrases, const Catalogue& catalogue, std::vector<NeedlessSlip>& slips)
{
    Phrases out;
    int places = 0;
    for (std::size_t i = 0; i < phrases.size(); ++i) {
        const Phrase& phrase = phrases[i];
        if (isSlip(phrase) && i > 0 && takesSome(phrases, i - 1, catalogue) && takesSome(phrases, i + 1, catalogue)) {
            slips.push_back({places, phrase});
            continue;
        }
        const auto* run = std::get_if<Stretch>(&phrase.is);
        append(out, phrase);
        places += run && run->count > 0 ? run->count : 1;
    }
    return out;
}

} // namespace shawlwright
