#include "core/derived/increase_plan.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>

namespace shawlwright {
namespace {

// One increase of a row, between loops position - 1 and position from the right edge.
struct Spot {
    int position = 0;
    bool atRight = true;    // of its place, as charted
    Lean lean = Lean::None;
    std::string words;
    bool operator<(const Spot& other) const
    {
        return position != other.position ? position < other.position : atRight && !other.atRight;
    }
};

class Planning {
public:
    Planning(const Pattern& pattern, const Catalogue& catalogue, RowsOnNeedle& made, const IncreaseWishes& wishes)
        : m_pattern(pattern), m_catalogue(catalogue), m_made(made), m_wishes(wishes)
    {
    }

    Result<IncreasePlan> make()
    {
        if (auto fault = m_made.takeNeedle())
            return *fault;
        if (m_made.workedRepeatedly())
            return fault("lies in a row repeat, so there would be more stitches each time it is worked; take it out of "
                         "the repeat, or give the increases a section of their own");
        if (auto fault = wishesFault())
            return *fault;
        if (auto fault = settleLength())
            return *fault;
        m_plan.before = needle().count();
        m_spines = firstSpines();
        if (auto fault = settleWidth())
            return *fault;
        leadIn();
        for (int row = 0; row < m_length; ++row)
            if (auto fault = addRow(row))
                return *fault;
        const std::string name =
            m_wishes.spread ? counted(*m_wishes.spread, "increase") + " over a row"
                            : "increases in " + counted(static_cast<int>(m_plan.with.size()), "row");
        const int rows = m_made.rows();
        auto placed = m_made.place(name, m_wishes.stitches);
        if (!placed.ok())
            return placed.fault();
        m_plan.rows = std::move(placed.value().rows);
        for (int more = rows; more < static_cast<int>(m_plan.rows.size()); ++more)
            m_plan.counts.push_back(needle().count());
        m_plan.lead = m_lead;
        m_plan.filled = placed.value().filled;
        m_plan.edit = std::move(placed.value().edit);
        return std::move(m_plan);
    }

private:
    using At = IncreasePlace::At;
    Fault fault(std::string message) const { return m_made.fault(std::move(message)); }
    const Needle& needle() const { return m_made.needle(); }
    YarnId yarn() const { return m_wishes.yarn == YarnId{} ? m_made.yarnHere() : m_wishes.yarn; }

    static int increasesAt(const IncreasePlace& place)
    {
        return place.at == At::AboutMarker || place.at == At::Spine || place.at == At::Middle ? 2 : 1;
    }
    bool dueIn(const IncreasePlace& place, int row) const { return row % place.every == 0; }
    int addedIn(int row) const
    {
        if (m_wishes.spread)
            return row == 0 ? *m_wishes.spread : 0;
        int added = 0;
        for (const IncreasePlace& place : m_wishes.places)
            added += dueIn(place, row) ? increasesAt(place) : 0;
        return added;
    }

    std::optional<Fault> wishesFault() const
    {
        if (m_wishes.spread) {
            if (*m_wishes.spread < 1)
                return fault("is to get " + counted(*m_wishes.spread, "stitch") + " more; take 1 or more");
        } else if (m_wishes.places.empty()) {
            return fault("no place is chosen for the increases; choose an edge, a marker or a stitch");
        }
        for (const IncreasePlace& place : m_wishes.places) {
            if (place.every < 1 || place.every > mostIncreaseRows)
                return fault("can't increase every " + counted(place.every, "row") + "; take 1 to " +
                             toText(mostIncreaseRows));
            if (place.beside < 0)
                return fault("can't leave " + counted(place.beside, "stitch") + " beside an increase; take 0 or more");
        }
        if (!m_wishes.spread && !m_wishes.until && m_wishes.times < 1)
            return fault("is to have less than one row with increases; take 1 or more");
        return yarnFault(m_pattern, m_wishes.yarn);
    }

    // The rows it takes: until the last increase and the plain rows that belong to it.
    std::optional<Fault> settleLength()
    {
        if (m_wishes.spread) {
            m_length = 1;
            return std::nullopt;
        }
        int count = needle().count(), with = 0, last = -1;
        const int wanted = m_wishes.until.value_or(0);
        if (m_wishes.until && wanted <= count)
            return fault("has " + counted(count, "stitch") + " already, " + toText(wanted) +
                         " are wanted; name a greater count");
        for (int row = 0;; ++row) {
            const bool done = m_wishes.until ? count >= wanted : with == m_wishes.times;
            if (done)
                break;
            if (row >= mostIncreaseRows)
                return fault("would take more than " + toText(mostIncreaseRows) +
                             " rows; increase more often, or do it in two goes");
            const int added = addedIn(row);
            if (added == 0)
                continue;
            last = row;
            ++with;
            count += added;
            if (m_wishes.until && count > wanted)
                return fault(counted(wanted, "stitch") + " are never reached: " +
                             (with > 1 ? toText(count - added) + " after " + counted(with - 1, "row") +
                                             " with increases, " + toText(count) + " after " + toText(with)
                                       : toText(count - added) + " before, " + toText(count) +
                                             " after the first row with increases") +
                             "; name one of these");
        }
        m_length = last + 1;
        while (addedIn(m_length) == 0 && m_length % shortest() != 0)
            ++m_length;
        return std::nullopt;
    }

    int shortest() const // rows from one increase to the next at a place
    {
        int least = mostIncreaseRows;
        for (const IncreasePlace& place : m_wishes.places)
            least = std::min(least, place.every);
        return least;
    }

    void leadIn()
    {
        if (!m_made.atStart(true) && !m_made.atStart(false))
            addPlain();
        const bool even = std::all_of(m_wishes.places.begin(), m_wishes.places.end(),
                                      [](const IncreasePlace& place) { return place.every % 2 == 0; });
        if (!m_wishes.spread && even && m_made.nextSide() == Side::WS)
            addPlain();
        m_lead = m_made.rows();
    }

    void addPlain()
    {
        m_made.add(RowsOnNeedle::Plain{m_made.nextSide(), yarn(), m_wishes.stitches, {}, 0, false});
        m_plan.counts.push_back(needle().count());
    }

    // The stitch of each spine, from 0 at the right edge.
    std::vector<int> firstSpines() const
    {
        std::vector<int> spines;
        for (const IncreasePlace& place : m_wishes.places)
            spines.push_back(place.at == At::Middle ? needle().count() / 2 : place.stitch - 1);
        return spines;
    }

    // As many columns as the last row has stitches, those of the right half to the right.
    std::optional<Fault> settleWidth()
    {
        int last = needle().count();
        for (int row = 0; row < m_length; ++row)
            last += addedIn(row);
        if (last > mostColumns)
            return fault("would have " + counted(last, "stitch") + " in the end; a chart is up to " +
                         toText(mostColumns) + " columns wide");
        auto spots = spotsOf(-1);
        if (!spots.ok())
            return spots.fault();
        const int more = last - m_made.columns();
        if (more > 0 && !spots.value().empty()) {
            const int middle = needle().count();
            const auto right = std::count_if(spots.value().begin(), spots.value().end(), [&](const Spot& spot) {
                return 2 * spot.position < middle || (2 * spot.position <= middle + 1 && spot.atRight);
            });
            m_made.widenRight(more * static_cast<int>(right) / static_cast<int>(spots.value().size()));
            m_made.widenTo(last);
        }
        return std::nullopt;
    }

    // The increases of a row, right to left; of all places for row -1.
    Result<std::vector<Spot>> spotsOf(int row) const
    {
        std::vector<Spot> spots;
        const int count = needle().count();
        if (m_wishes.spread) {
            const int n = *m_wishes.spread;
            if (n > count)
                return fault("has " + counted(count, "stitch") + ", so " + counted(n, "increase") +
                             " would lie side by side; up to " + toText(count) + " have a stitch between them");
            for (int i = 0; i < n; ++i) // the middle of the i-th of n stretches
                spots.push_back({static_cast<int>(((2LL * i + 1) * count + n) / (2LL * n)), true,
                                 (2 * i < n) == (m_wishes.lean == LeanOf::Away) ? Lean::Right : Lean::Left,
                                 "stretch " + toText(i + 1)});
            return spots;
        }
        for (std::size_t i = 0; i < m_wishes.places.size(); ++i)
            if (row < 0 || dueIn(m_wishes.places[i], row))
                if (auto fault = addSpots(m_wishes.places[i], m_spines[i], spots))
                    return *fault;
        std::stable_sort(spots.begin(), spots.end());
        for (const Spot& spot : spots)
            if (spot.position < 0 || spot.position > count)
                return fault("has " + counted(count, "stitch") + ", too few for the increase at " + spot.words +
                             "; leave fewer stitches beside it");
        if (auto fault = crowdedFault(spots))
            return *fault;
        return spots;
    }

    std::optional<Fault> addSpots(const IncreasePlace& place, int spine, std::vector<Spot>& spots) const
    {
        const int count = needle().count();
        const auto put = [&](int position, bool atRight, const std::string& words) {
            const bool leansRight = atRight == (m_wishes.lean == LeanOf::Away);
            spots.push_back({position, atRight, leansRight ? Lean::Right : Lean::Left, words});
        };
        switch (place.at) {
        case At::RightEdge: // lies to the left of its edge
            put(place.beside, false, "the right edge");
            break;
        case At::LeftEdge:
            put(count - place.beside, true, "the left edge");
            break;
        case At::BeforeMarker:
        case At::AfterMarker:
        case At::AboutMarker: {
            const Marker* named = markerOf(m_pattern.head, place.marker);
            const std::string words = named ? "marker " + named->name : std::string("a marker");
            bool found = false;
            for (const MarkerAt& at : needle().markers)
                if (at.marker == place.marker) {
                    found = true;
                    if (place.at != At::AfterMarker)
                        put(at.position - place.beside, true, words);
                    if (place.at != At::BeforeMarker)
                        put(at.position + place.beside, false, words);
                }
            if (!found)
                return fault(named ? words + " isn't on the needle here; place it in a row before"
                                   : std::string("no marker is chosen; place one in a row before"));
            break;
        }
        case At::Middle:
            if (count % 2 == 0 && m_plan.with.empty())
                return fault("has " + counted(count, "stitch") + ", so no one stitch is in the middle; " +
                             toText(count - 1) + " or " + toText(count + 1) +
                             " would have one, or place a marker there");
            [[fallthrough]];
        case At::Spine: {
            if (spine < 0 || spine >= count)
                return fault("has no stitch " + toText(spine + 1) + ", the needle holds " + toText(count) +
                             "; choose one of them");
            const std::string words = place.at == At::Middle ? "the middle stitch" : "stitch " + toText(place.stitch);
            put(spine - place.beside, true, words);
            put(spine + 1 + place.beside, false, words);
            break;
        }
        }
        return std::nullopt;
    }

    bool takesStitch() const
    {
        return m_wishes.increase == Increase::LiftedStitch || m_wishes.increase == Increase::FrontAndBack;
    }
    // The loop an increase is worked into: the one on its own side of the place.
    static int loopOf(const Spot& spot) { return spot.atRight ? spot.position - 1 : spot.position; }

    std::optional<Fault> crowdedFault(const std::vector<Spot>& spots) const
    {
        for (std::size_t i = 0; i < spots.size(); ++i) {
            const bool outside = takesStitch() && (loopOf(spots[i]) < 0 || loopOf(spots[i]) >= needle().count());
            if (outside)
                return fault("has no stitch beside " + spots[i].words +
                             " to increase in; leave it further in, or take a yarn over or made stitch");
            if (i == 0)
                continue;
            const Spot &a = spots[i - 1], &b = spots[i];
            const bool apart = takesStitch() ? loopOf(a) < loopOf(b) : a.position < b.position || markerBetween(a, b);
            if (!apart)
                return fault("the increases at " + a.words + " and " + b.words +
                             " would fall on one place; leave stitches between them");
        }
        return std::nullopt;
    }

    // Two increases with nothing but a marker between them.
    bool markerBetween(const Spot& a, const Spot& b) const
    {
        return a.position == b.position && a.atRight && !b.atRight &&
               std::any_of(needle().markers.begin(), needle().markers.end(),
                           [&](const MarkerAt& at) { return at.position == a.position; });
    }

    StitchId stitchOf(const Spot& spot, Side side) const
    {
        const bool purl = m_wishes.stitches != PlainStitch::AsTheyShow &&
                          (m_wishes.stitches == PlainStitch::Purl) == (side == Side::RS);
        const bool right = spot.lean == Lean::Right;
        switch (m_wishes.increase) {
        case Increase::YarnOver:
            return m_catalogue.require("yo");
        case Increase::MadeStitch:
            return m_catalogue.require(right ? (purl ? "m1rp" : "m1r") : (purl ? "m1lp" : "m1l"));
        case Increase::LiftedStitch:
            return m_catalogue.require(right ? (purl ? "rli_p" : "rli") : (purl ? "lli_p" : "lli"));
        case Increase::FrontAndBack:
            return m_catalogue.require(purl ? "pfb" : "kfb");
        }
        return noStitch;
    }

    std::optional<Fault> addRow(int row)
    {
        if (addedIn(row) == 0) {
            addPlain();
            return std::nullopt;
        }
        auto found = spotsOf(row);
        if (!found.ok())
            return found.fault();
        Row base;
        base.side = m_made.nextSide();
        base.yarn = yarn();
        std::vector<StitchId> plain = m_made.plainAhead(base, m_wishes.stitches);
        const bool rs = base.side == Side::RS;
        if (!rs)
            std::reverse(plain.begin(), plain.end());
        if (static_cast<int>(plain.size()) != needle().count())
            return fault("has stitches ahead of it that can't be reached from the edge; turn the row before at its end");
        std::vector<StitchId> worked; // right to left
        std::vector<MoveBefore> moves;
        auto spot = found.value().begin();
        const auto end = found.value().end();
        for (int position = 0; position <= needle().count(); ++position) {
            const auto put = [&](bool atRight) {
                bool any = false;
                for (; spot != end && spot->position == position && spot->atRight == atRight && !takesStitch(); ++spot) {
                    worked.push_back(stitchOf(*spot, base.side));
                    any = true;
                }
                return any;
            };
            const bool right = put(true);
            const std::size_t here = worked.size();
            const bool left = put(false);
            if (right || left)
                for (const MarkerAt& at : needle().markers)
                    if (at.position == position)
                        moves.push_back({{at.marker, 0, MoveKind::Shift, MoveReach::Once, {}}, here});
            if (position == needle().count())
                break;
            StitchId stitch = plain[static_cast<std::size_t>(position)];
            for (; takesStitch() && spot != end && loopOf(*spot) == position; ++spot)
                stitch = stitchOf(*spot, base.side);
            worked.push_back(stitch);
        }
        if (!rs) {
            std::reverse(worked.begin(), worked.end());
            std::reverse(moves.begin(), moves.end());
            for (MoveBefore& move : moves)
                move.stitch = worked.size() - move.stitch;
        }
        m_plan.with.push_back(m_made.rows());
        for (int& spine : m_spines) {
            const int at = spine;
            for (const Spot& one : found.value())
                spine += (takesStitch() ? loopOf(one) < at : one.position <= at) ? 1 : 0;
        }
        m_made.add(std::move(base), worked, moves);
        m_plan.counts.push_back(needle().count());
        return std::nullopt;
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    RowsOnNeedle& m_made;
    const IncreaseWishes& m_wishes;
    int m_length = 0; // rows without those that lead in
    int m_lead = 0;
    std::vector<int> m_spines; // of each place, where it has one
    IncreasePlan m_plan;
};

} // namespace

Result<IncreasePlan> increasePlan(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                                  std::size_t shown, SectionId id, int at, const IncreaseWishes& wishes)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (at < 0 || at > static_cast<int>(section.rows.size()) || section.rows.empty())
        return Fault{{}, sectionWords(section), "the row the increases begin at is no longer there; choose one"};
    RowsOnNeedle made(pattern, catalogue, ledgers, shown, id, at, "increases");
    return Planning(pattern, catalogue, made, wishes).make();
}

} // namespace shawlwright
