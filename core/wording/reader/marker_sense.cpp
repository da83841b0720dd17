#include "core/wording/reader/marker_sense.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>
#include <set>

namespace shawlwright {

int startOf(const Needle& before, const Row& row, int size)
{
    const bool rs = row.side == Side::RS;
    const int edge = rs ? 0 : before.count();
    const bool sameSide = row.side == before.lastSide;
    int at = before.tip;
    if (row.start.kind == StartKind::AtEdge || before.lastFinish == FinishKind::Round)
        at = edge;
    else if (before.lastFinish == FinishKind::Slide ? !sameSide : sameSide)
        at = edge;
    if (row.start.kind == StartKind::AfterSlipping) {
        const int there = rs ? before.count() - at : at;
        at += (rs ? 1 : -1) * std::min(row.start.slip.at(size), there);
    }
    return at;
}

namespace {

constexpr int mostSteps = 20000;

class Walk {
public:
    Walk(Phrases& phrases, const SenseContext& context, Vocabulary& words)
        : m_phrases(phrases), m_context(context), m_words(words), m_rs(context.row.side == Side::RS)
    {
        const int start = startOf(context.before, context.row, context.size);
        m_start = start;
        m_ahead = m_rs ? context.before.count() - start : start;
        for (const MarkerAt& marker : context.before.markers)
            if (forward(marker.position) >= 0)
                m_pending.push_back({forward(marker.position), marker.marker});
        if (!m_rs)
            std::reverse(m_pending.begin(), m_pending.end());
        for (std::size_t i = 0; i < m_phrases.size(); ++i) {
            m_top = i;
            phrase(m_phrases[i], 0);
        }
    }

    struct Slip {
        std::size_t top = 0;
        int depth = 0;
        bool needs = false;
        bool lost = false; // no marker there, at least once
        std::set<std::uint16_t> markers;
    };
    std::map<Phrase*, Slip> slips;

    struct Unsaid {
        MarkerId marker;
        std::size_t top = 0;
        int depth = 0;
        bool passed = false;
    };
    std::vector<Unsaid> unsaid() const
    {
        std::vector<Unsaid> all;
        for (std::size_t i = 0; i < m_pending.size(); ++i)
            if (m_pending[i].beside && !m_pending[i].said)
                all.push_back({m_pending[i].marker, m_pending[i].top, m_pending[i].depth, i < m_next});
        return all;
    }
    std::vector<int> furtherTurns; // stitches up to a turn beyond the last one, now told by number

    int timesOf(std::size_t top) const
    {
        const auto found = m_times.find(top);
        return found == m_times.end() ? 0 : found->second;
    }

private:
    struct Pending {
        int distance = 0;
        MarkerId marker;
        bool said = false;
        bool beside = false; // a stitch that takes up none
        std::size_t top = 0;
        int depth = 0;
    };

    int forward(int position) const { return m_rs ? position - m_start : m_start - position; }

    void step(int takes, int count, int depth)
    {
        if (takes == 0) {
            for (Phrase* open : m_open)
                slips[open].needs = true;
            for (std::size_t i = m_next; i < m_pending.size() && m_pending[i].distance <= m_at; ++i)
                if (m_pending[i].distance == m_at && !m_pending[i].beside) {
                    m_pending[i].beside = true;
                    m_pending[i].top = m_top;
                    m_pending[i].depth = depth;
                }
            m_lastTookNone = true;
        } else {
            m_at += static_cast<int>(std::min<long long>(static_cast<long long>(takes) * count, mostCount));
            m_lastTookNone = false;
            while (m_next < m_pending.size() && m_pending[m_next].distance < m_at)
                ++m_next;
        }
        m_open.clear();
    }

    int placeOf(Reach& to)
    {
        switch (to.place) {
        case BoxUntil::RowEnd:
            return m_ahead;
        case BoxUntil::LastTurn:
            for (auto turn = m_context.before.turns.rbegin(); turn != m_context.before.turns.rend(); ++turn)
                if (turn->side == m_context.row.side)
                    return forward(turn->position);
            return m_at;
        case BoxUntil::Marker: {
            const Pending* found = nullptr;
            for (std::size_t i = m_next; i < m_pending.size(); ++i) {
                const bool wanted =
                    to.marker == MarkerId{} ? m_pending[i].distance > m_at : m_pending[i].marker == to.marker;
                if (wanted && !found)
                    found = &m_pending[i];
            }
            if (!found && to.marker == MarkerId{} && m_next < m_pending.size())
                found = &m_pending[m_next];
            if (to.marker == MarkerId{})
                to.marker = found ? found->marker : m_words.marker("A");
            return found ? found->distance : m_at;
        }
        case BoxUntil::Times:
            break;
        }
        return m_at;
    }

    // The nearest turn of this direction that is still ahead; 0: none.
    int nextTurn() const
    {
        int nearest = 0;
        for (const TurnAt& turn : m_context.before.turns)
            if (const int at = forward(turn.position);
                turn.side == m_context.row.side && at > m_at && (nearest == 0 || at < nearest))
                nearest = at;
        return nearest;
    }

    template <typename Once>
    int repeat(const Quantity& times, Reach& to, const Once& once)
    {
        int done = 0;
        if (to.place == BoxUntil::Times) {
            for (; done < times.at(m_context.size) && m_steps < mostSteps; ++done)
                once();
            return done;
        }
        const int end = placeOf(to) - to.leaving.at(m_context.size);
        while (m_at < end && m_steps < mostSteps) {
            const int from = m_at;
            once();
            ++done;
            if (m_at == from)
                break;
        }
        return done;
    }

    void phrase(Phrase& phrase, int depth)
    {
        ++m_steps;
        if (auto* run = std::get_if<Stretch>(&phrase.is)) {
            const int takes = m_words.catalogue().stitch(run->stitch).takesUp;
            if (run->count > 0) {
                step(takes, run->count, depth);
                return;
            }
            int room = placeOf(run->to) - run->to.leaving.at(m_context.size) - m_at;
            if (room < 0 && run->to.place == BoxUntil::LastTurn && takes == 1 && depth == 0) {
                room = nextTurn() - run->to.leaving.at(m_context.size) - m_at;
                if (room > 0) {
                    run->count = room;
                    run->to = {};
                    furtherTurns.push_back(room);
                }
            }
            if (takes > 0 && room >= takes)
                step(takes, room / takes, depth);
        } else if (auto* group = std::get_if<Group>(&phrase.is)) {
            const int done = repeat(group->times, group->to, [&] {
                for (Phrase& each : group->inside)
                    this->phrase(each, depth + 1);
            });
            if (depth == 0)
                m_times[m_top] = done;
        } else if (auto* marker = std::get_if<MarkerPhrase>(&phrase.is)) {
            this->marker(phrase, *marker, depth);
        }
    }

    void marker(Phrase& phrase, MarkerPhrase& marker, int depth)
    {
        if (marker.act == MarkerPhrase::Act::Place) {
            if (marker.marker == MarkerId{})
                marker.marker = unusedMarker();
            return;
        }
        std::size_t at = m_next;
        const bool remove = marker.act == MarkerPhrase::Act::Remove;
        while (at < m_pending.size() &&
               !((remove || m_pending[at].distance == m_at) &&
                 (marker.marker == MarkerId{} || m_pending[at].marker == marker.marker)))
            ++at;
        if (remove) {
            if (at < m_pending.size()) {
                marker.marker = m_pending[at].marker;
                m_removed.push_back(marker.marker);
                m_pending.erase(m_pending.begin() + static_cast<std::ptrdiff_t>(at));
            } else if (marker.marker == MarkerId{}) {
                marker.marker = m_words.marker("A");
            }
            return;
        }
        Slip& slip = slips[&phrase];
        slip.top = m_top;
        slip.depth = depth;
        if (at >= m_pending.size()) {
            slip.lost = true;
            return;
        }
        slip.markers.insert(m_pending[at].marker.value);
        slip.needs = slip.needs || m_lastTookNone;
        m_pending[at].said = true;
        m_next = at + 1;
        m_open.push_back(&phrase);
    }

    // The one taken off last in this row, put back; the only marker of the pattern where it isn't on the
    // needle; else one with a new letter.
    MarkerId unusedMarker()
    {
        if (!m_removed.empty()) {
            const MarkerId back = m_removed.back();
            m_removed.pop_back();
            m_placed.insert(back.value);
            return back;
        }
        const auto onNeedle = [&](MarkerId id) {
            return std::any_of(m_context.before.markers.begin(), m_context.before.markers.end(),
                               [id](const MarkerAt& at) { return at.marker == id; }) ||
                   m_placed.contains(id.value);
        };
        const auto& markers = m_words.head().markers;
        MarkerId id;
        if (markers.size() == 1 && !onNeedle(markers.front().id))
            id = markers.front().id;
        for (char letter = 'A'; id == MarkerId{} && letter <= 'Z'; ++letter) {
            const auto known = m_words.knownMarker(std::string(1, letter));
            if (!known || !onNeedle(*known))
                id = known.value_or(MarkerId{}) == MarkerId{} ? m_words.marker(std::string(1, letter))
                                                              : *known;
        }
        for (; id == MarkerId{}; ++m_nextNumber)
            if (!m_words.knownMarker("M" + toText(m_nextNumber)) || m_nextNumber > 2000)
                id = m_words.marker("M" + toText(m_nextNumber));
        m_placed.insert(id.value);
        return id;
    }

    Phrases& m_phrases;
    const SenseContext& m_context;
    Vocabulary& m_words;
    bool m_rs;
    int m_start = 0;
    int m_ahead = 0;
    int m_at = 0;
    int m_steps = 0;
    std::size_t m_top = 0;
    std::size_t m_next = 0; // first marker not yet passed
    std::vector<Pending> m_pending;
    std::vector<Phrase*> m_open; // "sm" since the last stitch
    bool m_lastTookNone = false;
    std::set<std::uint16_t> m_placed;
    int m_nextNumber = 1; // of markers beyond the letters
    std::vector<MarkerId> m_removed;
    std::map<std::size_t, int> m_times;
};

void drop(Phrases& phrases, const std::set<const Phrase*>& gone)
{
    Phrases kept;
    for (Phrase& phrase : phrases) {
        if (gone.contains(&phrase))
            continue;
        if (auto* group = std::get_if<Group>(&phrase.is))
            drop(group->inside, gone);
        kept.push_back(std::move(phrase));
    }
    phrases = std::move(kept);
}

bool holds(const Phrases& phrases)
{
    return std::any_of(phrases.begin(), phrases.end(), [](const Phrase& phrase) {
        const auto* group = std::get_if<Group>(&phrase.is);
        return std::holds_alternative<MarkerPhrase>(phrase.is) || (group && holds(group->inside));
    });
}

bool speaksOfMarkers(const Phrases& phrases)
{
    return holds(phrases) || std::any_of(phrases.begin(), phrases.end(), [](const Phrase& phrase) {
               const auto* run = std::get_if<Stretch>(&phrase.is);
               const auto* group = std::get_if<Group>(&phrase.is);
               return (run && run->to.place == BoxUntil::Marker) ||
                      (group && (group->to.place == BoxUntil::Marker || speaksOfMarkers(group->inside)));
           });
}

bool ends(const Phrase& phrase)
{
    return std::holds_alternative<FinishPhrase>(phrase.is) ||
           (std::holds_alternative<YarnPhrase>(phrase.is) &&
            std::get<YarnPhrase>(phrase.is).act == YarnPhrase::Act::Break);
}

} // namespace

Phrases inSense(Phrases phrases, const SenseContext& context, Vocabulary& words,
                std::vector<ReadingNote>& notes)
{
    if (context.before.markers.empty() && !speaksOfMarkers(phrases) && context.before.turns.size() < 2)
        return phrases;
    const auto tell = [&](ReadingNote::Weight weight, std::string found, std::string expected,
                          std::string chosen) {
        ReadingNote note{weight, context.at, std::move(found), std::move(expected), std::move(chosen)};
        if (std::find(notes.begin(), notes.end(), note) == notes.end())
            notes.push_back(std::move(note));
    };
    for (int round = 0; round < mostNesting; ++round) {
        Walk walk(phrases, context, words);
        for (const int stitches : walk.furtherTurns)
            tell(ReadingNote::Weight::Note, "a second stretch to a turn",
                 "how many stitches there are to the next turn",
                 counted(stitches, "stitch", "stitches") + ", to the next turn ahead");
        std::map<std::size_t, int> unroll;
        std::set<const Phrase*> gone;
        for (auto& [phrase, slip] : walk.slips) {
            auto& marker = std::get<MarkerPhrase>(phrase->is);
            if (slip.needs && slip.depth > 0 && (slip.markers.size() > 1 || slip.lost) &&
                walk.timesOf(slip.top) > 0) {
                unroll[slip.top] = walk.timesOf(slip.top);
            } else if (!slip.needs || slip.markers.empty()) {
                if (slip.markers.empty() && context.before.owed.fault == RowId{})
                    tell(ReadingNote::Weight::Warning, "sm", "a marker at that place of the row",
                         "no marker to slip there");
                gone.insert(phrase);
            } else {
                marker.marker = MarkerId{*slip.markers.begin()};
            }
        }
        if (!unroll.empty() && round + 1 < mostNesting) {
            for (auto at = unroll.rbegin(); at != unroll.rend(); ++at) {
                const auto place = phrases.begin() + static_cast<std::ptrdiff_t>(at->first);
                auto* group = std::get_if<Group>(&place->is);
                if (!group)
                    continue;
                Phrases told;
                for (int n = 0; n < at->second && told.size() < static_cast<std::size_t>(mostColumns); ++n)
                    told.insert(told.end(), group->inside.begin(), group->inside.end());
                const auto next = phrases.erase(place);
                phrases.insert(next, told.begin(), told.end());
            }
            continue;
        }
        std::vector<Walk::Unsaid> unsaid = walk.unsaid();
        std::stable_sort(unsaid.begin(), unsaid.end(),
                         [](const auto& a, const auto& b) { return a.top < b.top; });
        std::vector<std::pair<const Phrase*, MarkerId>> before;
        std::vector<MarkerId> atEnd;
        for (const Walk::Unsaid& one : unsaid) {
            if (!one.passed) {
                atEnd.push_back(one.marker);
                continue;
            }
            if (one.depth == 0)
                before.emplace_back(&phrases[one.top], one.marker);
            tell(ReadingNote::Weight::Note, "a stitch made beside a marker", "'sm' before or after it",
                 one.depth == 0 ? "the marker slipped first" : "it falls in the chart");
        }
        Phrases out;
        bool ended = false;
        const auto slip = [&](MarkerId marker) {
            out.push_back({MarkerPhrase{MarkerPhrase::Act::Slip, marker}, 0, 0});
        };
        // Addresses are those of the phrases as walked; moving leaves them valid until the end.
        for (Phrase& phrase : phrases) {
            for (const auto& [place, marker] : before)
                if (place == &phrase)
                    slip(marker);
            if (ends(phrase) && !ended) {
                ended = true;
                for (const MarkerId marker : atEnd)
                    slip(marker);
            }
            if (gone.contains(&phrase))
                continue;
            if (auto* group = std::get_if<Group>(&phrase.is))
                drop(group->inside, gone);
            out.push_back(std::move(phrase));
        }
        if (!ended)
            for (const MarkerId marker : atEnd)
                slip(marker);
        return out;
    }
    return phrases;
}

Phrases asLoopsFace(const SenseContext& context, const Catalogue& catalogue)
{
    const bool rs = context.row.side == Side::RS;
    const int start = startOf(context.before, context.row, context.size);
    const StitchId knit = catalogue.require("k");
    const StitchId purl = catalogue.require("p");
    Phrases phrases;
    for (int at = start; rs ? at < context.before.count() : at > 0; at += rs ? 1 : -1) {
        const Loop& loop = context.before.loops[static_cast<std::size_t>(rs ? at : at - 1)];
        const StitchId stitch = loop.face == Face::Knit ? knit : purl;
        auto* last = phrases.empty() ? nullptr : std::get_if<Stretch>(&phrases.back().is);
        if (last && last->stitch == stitch)
            ++last->count;
        else
            phrases.push_back({Stretch{stitch, {}, 1, {}}, 0, 0});
    }
    return phrases;
}

} // namespace shawlwright
