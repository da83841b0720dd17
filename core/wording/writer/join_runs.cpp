#include "core/wording/writer/join_runs.h"

#include "core/wording/writer/needless_slips.h"
#include "core/wording/writer/phrase_columns.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool toPlace(const Phrase& phrase)
{
    const auto* stretch = std::get_if<Stretch>(&phrase.is);
    return stretch && stretch->count == 0;
}

// One past the run of one stitch that begins at `first`, and its last phrase that goes to a place.
struct Run {
    std::size_t end;
    std::size_t lastToPlace; // = end where there is none
};

Run runFrom(const Phrases& phrases, std::size_t first)
{
    const Stretch& begun = std::get<Stretch>(phrases[first].is);
    std::size_t end = first + 1;
    std::size_t last = toPlace(phrases[first]) ? first : phrases.size();
    for (std::size_t i = first + 1; i < phrases.size(); ++i) {
        if (isSlip(phrases[i]))
            continue;
        const auto* stretch = std::get_if<Stretch>(&phrases[i].is);
        if (!stretch || stretch->stitch != begun.stitch || stretch->yarn != begun.yarn)
            break;
        end = i + 1;
        if (toPlace(phrases[i]))
            last = i;
    }
    return {end, last == phrases.size() ? end : last};
}

// "k to last 7 sts, k4" is "k to last 3 sts": takes up what follows the place, as far as it was left before
// it. Gives one past what was taken up.
std::size_t takeUpRest(const Phrases& phrases, const Run& run, Reach& to)
{
    std::size_t end = run.lastToPlace + 1;
    if (!to.leaving.single())
        return end;
    int left = to.leaving.at(0);
    for (std::size_t i = end; i < run.end && left > 0; ++i) {
        const auto* stretch = std::get_if<Stretch>(&phrases[i].is);
        if (!stretch && to.place != BoxUntil::RowEnd)
            break;
        if (stretch && stretch->count > left)
            break;
        left -= stretch ? stretch->count : 0;
        end = stretch ? i + 1 : end;
    }
    to.leaving = Quantity(left);
    to.countsDoubleStitch = to.countsDoubleStitch && left > 0;
    return end;
}

} // namespace

void joinRuns(Phrases& phrases, const std::function<bool(StitchId)>& runs)
{
    for (std::size_t first = 0; first < phrases.size(); ++first) {
        const auto* begun = std::get_if<Stretch>(&phrases[first].is);
        if (!begun || !runs(begun->stitch))
            continue;
        const Run run = runFrom(phrases, first);
        if (run.lastToPlace == run.end)
            continue;
        Phrase joined = phrases[run.lastToPlace];
        const std::size_t end = takeUpRest(phrases, run, std::get<Stretch>(joined.is).to);
        for (std::size_t i = first; i < end; ++i)
            cover(joined, phrases[i]);
        const auto begin = phrases.begin() + static_cast<std::ptrdiff_t>(first);
        phrases.erase(begin + 1, phrases.begin() + static_cast<std::ptrdiff_t>(end));
        phrases[first] = std::move(joined);
    }
}

} // namespace shawlwright
