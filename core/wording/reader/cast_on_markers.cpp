#include "core/wording/reader/cast_on_markers.h"

#include <algorithm>

namespace shawlwright {
namespace {

constexpr int mostSteps = 20000;

class Placer {
public:
    Placer(std::vector<CastOnMarker> markers, int stitches, const Catalogue& catalogue)
        : m_markers(std::move(markers)), m_placed(m_markers.size(), false),
          m_slipped(m_markers.size(), false), m_stitches(stitches), m_catalogue(catalogue)
    {
    }

    MarkersPlaced place(const Phrases& phrases)
    {
        findSlips(phrases);
        for (const Phrase& phrase : phrases)
            tell(phrase);
        placeHere();
        MarkersPlaced result{std::move(m_out), {}};
        for (std::size_t i = 0; i < m_markers.size(); ++i)
            if (!m_placed[i])
                result.left.push_back(m_markers[i].after);
        return result;
    }

private:
    // A marker with a "sm" of its own is placed there, whatever is made beside it.
    void findSlips(const Phrases& phrases)
    {
        for (const Phrase& phrase : phrases)
            if (const auto* group = std::get_if<Group>(&phrase.is))
                findSlips(group->inside);
            else if (const auto* marker = std::get_if<MarkerPhrase>(&phrase.is))
                for (std::size_t i = 0; i < m_markers.size(); ++i)
                    m_slipped[i] = m_slipped[i] || m_markers[i].marker == marker->marker;
    }

    int takes(StitchId stitch) const { return m_catalogue.stitch(stitch).takesUp; }

    int placeOf(const Reach& to) const
    {
        if (to.place == BoxUntil::RowEnd)
            return m_stitches - to.leaving.at(0);
        for (const CastOnMarker& one : m_markers)
            if (to.place == BoxUntil::Marker && one.marker == to.marker)
                return one.after - to.leaving.at(0);
        return m_at;
    }

    // Where the needle is after phrases that are worked from `at` on; how often a group is worked.
    int after(const Phrases& phrases, int at)
    {
        for (const Phrase& phrase : phrases) {
            if (const auto* run = std::get_if<Stretch>(&phrase.is))
                at += times(*run, at) * takes(run->stitch);
            else if (const auto* group = std::get_if<Group>(&phrase.is))
                for (int n = times(*group, at); n > 0; --n)
                    at = after(group->inside, at);
        }
        return at;
    }
    int times(const Stretch& run, int at) const
    {
        if (run.count > 0)
            return run.count;
        return takes(run.stitch) > 0 ? std::max(0, placeOf(run.to) - at) / takes(run.stitch) : 0;
    }
    int times(const Group& group, int at)
    {
        if (group.to.place == BoxUntil::Times)
            return group.times.at(0);
        int done = 0;
        for (const int end = placeOf(group.to); at < end && ++m_steps < mostSteps; ++done) {
            const int next = after(group.inside, at);
            if (next == at)
                break;
            at = next;
        }
        return done;
    }

    void add(Phrase phrase) { m_out.push_back(std::move(phrase)); }

    void placeMarker(std::size_t i)
    {
        m_placed[i] = true;
        add({MarkerPhrase{MarkerPhrase::Act::Place, m_markers[i].marker}, 0, 0});
    }
    void placeHere()
    {
        for (std::size_t i = 0; i < m_markers.size(); ++i)
            if (!m_placed[i] && !m_slipped[i] && m_markers[i].after == m_at)
                placeMarker(i);
    }
    // The nearest marker still to be placed in [m_at, end), as a distance; end: none.
    int nextBefore(int end) const
    {
        for (std::size_t i = 0; i < m_markers.size(); ++i)
            if (!m_placed[i] && !m_slipped[i] && m_markers[i].after > m_at && m_markers[i].after < end)
                return m_markers[i].after;
        return end;
    }
    bool markerWithin(int end) const
    {
        return std::any_of(m_markers.begin(), m_markers.end(),
                           [&](const CastOnMarker& one) { return one.after > m_at && one.after < end; });
    }

    void tell(const Phrase& phrase)
    {
        if (++m_steps > mostSteps)
            return;
        if (const auto* run = std::get_if<Stretch>(&phrase.is))
            return stretch(*run);
        if (const auto* group = std::get_if<Group>(&phrase.is))
            return repeat(*group);
        if (const auto* marker = std::get_if<MarkerPhrase>(&phrase.is))
            return move(phrase, *marker);
        if (const auto* slip = std::get_if<SlipFirst>(&phrase.is))
            m_at += slip->count.at(0);
        else if (std::holds_alternative<FinishPhrase>(phrase.is))
            placeHere();
        add(phrase);
    }

    void stretch(const Stretch& run)
    {
        placeHere();
        const int each = takes(run.stitch);
        if (each == 0)
            return add({run, 0, 0});
        const int end = m_at + times(run, m_at) * each;
        Stretch rest = run;
        if (rest.to.place == BoxUntil::Marker)
            rest.to = {};
        for (int at = nextBefore(end); at < end; at = nextBefore(end)) {
            const int before = (at - m_at) / each;
            if ((at - m_at) % each != 0) { // in the middle of a stitch
                for (std::size_t i = 0; i < m_markers.size(); ++i)
                    m_slipped[i] = m_slipped[i] || m_markers[i].after == at;
                continue;
            }
            add({Stretch{run.stitch, run.yarn, before, {}}, 0, 0});
            m_at = at;
            placeHere();
        }
        const int left = (end - m_at) / each;
        const bool open = run.count == 0 && run.to.place != BoxUntil::Marker;
        if (!open)
            rest.count = left;
        if (open || left > 0)
            add({rest, 0, 0});
        m_at = end;
    }

    static bool speaksOfMarkers(const Phrases& phrases)
    {
        return std::any_of(phrases.begin(), phrases.end(), [](const Phrase& phrase) {
            const auto* run = std::get_if<Stretch>(&phrase.is);
            const auto* group = std::get_if<Group>(&phrase.is);
            return std::holds_alternative<MarkerPhrase>(phrase.is) ||
                   (run && run->to.place == BoxUntil::Marker) ||
                   (group && (group->to.place == BoxUntil::Marker || speaksOfMarkers(group->inside)));
        });
    }

    void repeat(const Group& group)
    {
        placeHere();
        const int done = times(group, m_at);
        int end = m_at;
        for (int n = 0; n < done; ++n)
            end = after(group.inside, end);
        if (markerWithin(end) || speaksOfMarkers(group.inside)) {
            for (int n = 0; n < done && m_steps < mostSteps; ++n)
                for (const Phrase& phrase : group.inside)
                    tell(phrase);
            return;
        }
        Group told = group;
        if (group.to.place == BoxUntil::Marker) {
            told.to = {};
            told.times = done;
        }
        if (done > 0 || group.to.place != BoxUntil::Marker)
            add({std::move(told), 0, 0});
        m_at = end;
    }

    void move(const Phrase& phrase, const MarkerPhrase& marker)
    {
        for (std::size_t i = 0; i < m_markers.size(); ++i)
            if (m_markers[i].marker == marker.marker) {
                if (marker.act == MarkerPhrase::Act::Remove)
                    m_placed[i] = true; // neither placed nor removed
                else if (!m_placed[i])
                    placeMarker(i);
                else
                    add(phrase);
                return;
            }
        add(phrase);
    }

    std::vector<CastOnMarker> m_markers;
    std::vector<bool> m_placed, m_slipped;
    int m_stitches;
    const Catalogue& m_catalogue;
    Phrases m_out;
    int m_at = 0;
    int m_steps = 0;
};

} // namespace

Needle withMarkers(Needle needle, const std::vector<CastOnMarker>& markers, Side side)
{
    for (const CastOnMarker& one : markers)
        if (one.after >= 0 && one.after <= needle.count())
            needle.markers.push_back(
                {one.marker, side == Side::RS ? one.after : needle.count() - one.after, 0});
    std::stable_sort(needle.markers.begin(), needle.markers.end(),
                     [](const MarkerAt& a, const MarkerAt& b) { return a.position < b.position; });
    return needle;
}

MarkersPlaced placedInRow(const Phrases& phrases, std::vector<CastOnMarker> markers, int stitches,
                          const Catalogue& catalogue)
{
    std::stable_sort(markers.begin(), markers.end(),
                     [](const CastOnMarker& a, const CastOnMarker& b) { return a.after < b.after; });
    return Placer(std::move(markers), stitches, catalogue).place(phrases);
}

} // namespace shawlwright
