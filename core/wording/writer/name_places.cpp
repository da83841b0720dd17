#include "core/wording/writer/name_places.h"

#include "core/wording/writer/needless_slips.h"
#include "core/wording/writer/stitch_words.h"

#include <algorithm>
#include <optional>

namespace shawlwright {
namespace {

class Namer {
public:
    Namer(Phrases& phrases, const std::vector<NamedPlace>& places, Side side, const Catalogue& catalogue,
          LongRuns longRuns)
        : m_phrases(phrases), m_places(places), m_side(side), m_catalogue(catalogue), m_longRuns(longRuns)
    {
    }

    void name()
    {
        int after = 0; // stitches taken up after the phrase
        for (std::size_t i = m_phrases.size(); i-- > 0;) {
            const auto takes = takenBy(m_phrases[i]);
            if (!takes)
                return;
            Phrase& phrase = m_phrases[i];
            if (auto* run = std::get_if<Stretch>(&phrase.is)) {
                if (m_longRuns == LongRuns::ToAPlace && endsRun(i) && lengthOfRun(i) > countedAtSight)
                    if (const auto to = nearest(after, i)) {
                        run->count = 0;
                        run->to = *to;
                    }
            } else if (auto* group = std::get_if<Group>(&phrase.is);
                       group && group->from == GroupFrom::FoundLeading && *takes > 0) {
                if (const auto to = nearest(after, i))
                    group->to = *to;
            }
            after += *takes;
        }
    }

private:
    // Nothing where only the needle tells.
    std::optional<int> takenBy(const Phrase& phrase) const
    {
        if (const auto* run = std::get_if<Stretch>(&phrase.is))
            return run->count == 0 ? std::nullopt
                                   : std::optional(run->count * m_catalogue.stitch(run->stitch).takesUp);
        if (const auto* group = std::get_if<Group>(&phrase.is)) {
            if (group->to.place != BoxUntil::Times || !group->times.single())
                return std::nullopt;
            long long once = 0;
            for (const Phrase& each : group->inside) {
                const auto takes = takenBy(each);
                if (!takes)
                    return std::nullopt;
                once += *takes;
            }
            return static_cast<int>(std::min<long long>(once * group->times.at(0), mostCount));
        }
        return 0;
    }

    const Stretch* plain(std::size_t i) const
    {
        const auto* run = std::get_if<Stretch>(&m_phrases[i].is);
        return run && run->count > 0 && plainlyWorked(m_catalogue.stitch(run->stitch), m_side) ? run
                                                                                               : nullptr;
    }

    // No more of it follows.
    bool endsRun(std::size_t i) const
    {
        const Stretch* run = plain(i);
        if (!run)
            return false;
        std::size_t next = i + 1;
        while (next < m_phrases.size() && isSlip(m_phrases[next]))
            ++next;
        const auto* more = next < m_phrases.size() ? std::get_if<Stretch>(&m_phrases[next].is) : nullptr;
        return !more || more->stitch != run->stitch || more->yarn != run->yarn;
    }

    int lengthOfRun(std::size_t i) const
    {
        const Stretch& last = *plain(i);
        int length = 0;
        for (;; --i) {
            if (!isSlip(m_phrases[i])) {
                const Stretch* run = plain(i);
                if (!run || run->stitch != last.stitch || run->yarn != last.yarn)
                    break;
                length += run->count;
            }
            if (i == 0)
                break;
        }
        return length;
    }

    static bool endsWithSlip(const Phrase& phrase)
    {
        const auto* group = std::get_if<Group>(&phrase.is);
        return isSlip(phrase) || (group && !group->inside.empty() && endsWithSlip(group->inside.back()));
    }

    std::optional<Reach> nearest(int after, std::size_t i) const
    {
        std::optional<Reach> best;
        int least = countedAtSight + 1;
        for (const NamedPlace& place : m_places) {
            const int leaving = after - place.fromEnd;
            if (leaving < 0 || leaving >= least)
                continue;
            // Past the gap the words would have to tell more; beside it, "to 1 st before last turn, k2tog,
            // k3".
            if (place.to.place == BoxUntil::LastTurn && i + 1 < m_phrases.size() && leaving > 1)
                continue;
            // "*k4, sm; rep from * to marker C" would stop before the last "sm".
            if (place.to.place == BoxUntil::Marker && endsWithSlip(m_phrases[i]))
                continue;
            least = leaving;
            best = place.to;
            best->leaving = leaving;
            best->countsDoubleStitch = best->countsDoubleStitch && leaving > 0;
        }
        return best;
    }

    Phrases& m_phrases;
    const std::vector<NamedPlace>& m_places;
    Side m_side;
    const Catalogue& m_catalogue;
    LongRuns m_longRuns;
};

} // namespace

bool namePlaces(Phrases& phrases, const std::vector<NamedPlace>& places, Side side,
                const Catalogue& catalogue, LongRuns longRuns)
{
    if (places.empty() || phrases.empty())
        return false;
    Namer(phrases, places, side, catalogue, longRuns).name();
    const auto* run = std::get_if<Stretch>(&phrases.back().is);
    return run && run->count == 0;
}

} // namespace shawlwright
