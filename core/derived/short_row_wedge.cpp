#include "core/derived/short_row_wedge.h"

#include "core/base/text.h"
#include "core/derived/rows_on_needle.h"
#include "core/edits/checks.h"

#include <algorithm>

namespace shawlwright {
namespace {

class WedgeMaking {
public:
    WedgeMaking(const Pattern& pattern, RowsOnNeedle& made, const WedgeWishes& wishes)
        : m_pattern(pattern), m_made(made), m_wishes(wishes),
          m_extra(worksTurningStitch(wishes.method) ? 1 : 0)
    {
    }

    Result<Wedge> make()
    {
        if (auto fault = m_made.takeNeedle())
            return *fault;
        if (auto fault = wishesFault())
            return *fault;
        if (m_wishes.at == WedgeAt::Marker) {
            if (auto fault = aboutMarker())
                return *fault;
        } else if (auto fault = fromEdge()) {
            return *fault;
        }
        auto placed = m_made.place("wedge of " + counted(m_made.rows(), "short row"), m_wishes.stitches);
        if (!placed.ok())
            return placed.fault();
        m_wedge.rows = std::move(placed.value().rows);
        m_wedge.lead = placed.value().lead;
        m_wedge.filled = placed.value().filled;
        m_wedge.edit = std::move(placed.value().edit);
        return std::move(m_wedge);
    }

private:
    Fault fault(std::string message) const { return m_made.fault(std::move(message)); }
    const Needle& needle() const { return m_made.needle(); }

    std::optional<Fault> wishesFault()
    {
        if (m_wishes.step < 1)
            return fault("can't turn every " + counted(m_wishes.step, "stitch") + "; take 1 or more");
        if (m_wishes.untilLeft ? *m_wishes.untilLeft < 0 : m_wishes.turns < 1)
            return fault("is to have less than one turn; take 1 or more");
        for (const YarnId yarn : m_wishes.yarns)
            if (auto wrong = yarnFault(m_pattern, yarn))
                return wrong;
        if (m_wishes.at == WedgeAt::Marker && m_wishes.yarns.size() > 1)
            return fault(
                "about a marker the rows never come back to where the other yarn hangs; use one yarn");
        return std::nullopt;
    }

    void add(Side side, YarnId yarn)
    {
        m_made.add({side, yarn, m_wishes.stitches, {}, 0, m_wishes.slipFirst});
    }
    void addEarly(Side side, int works, YarnId yarn)
    {
        m_made.add({side, yarn, m_wishes.stitches, m_wishes.method, works, m_wishes.slipFirst});
        ++m_wedge.turns;
    }

    YarnId yarnOfPair(int pair) const
    {
        return m_wishes.yarns.empty()
                   ? m_made.yarnHere()
                   : m_wishes.yarns[static_cast<std::size_t>(pair) % m_wishes.yarns.size()];
    }
    void leadTo(bool rightEdge) { m_made.leadTo(rightEdge, yarnOfPair(0), m_wishes.stitches); }

    // How far the turns begin further in, because a stitch has to rest beyond each.
    int offset() const { return m_wishes.growing ? 0 : std::max(0, m_extra + 1 - m_wishes.step); }

    std::optional<Fault> fromEdge()
    {
        const bool right = m_wishes.at == WedgeAt::RightEdge;
        leadTo(right);
        const int all = needle().count(), step = m_wishes.step;
        // Pair i, from 1, works step * i, or all - offset - step * i; and a stitch rests beyond it.
        const int room = m_wishes.growing ? all - 1 - m_extra : all - offset() - 1;
        const int most = room / step;
        int pairs = m_wishes.turns;
        if (m_wishes.untilLeft) {
            const int left = *m_wishes.untilLeft;
            pairs = std::min(most, (all - (m_wishes.growing ? 0 : offset()) - left) / step);
            if (pairs < 1)
                return fault("has " + counted(all, "stitch") + ", so no turn at every " + toText(step) +
                             " leaves " + toText(left) + "; leave fewer, or turn more often");
        }
        if (pairs > most)
            return tooMany(pairs, most, all);
        const Side out = right ? Side::RS : Side::WS;
        for (int pair = 1; pair <= pairs; ++pair) {
            const int works = m_wishes.growing ? step * pair : all - offset() - step * pair;
            addEarly(out, works + m_extra, yarnOfPair(pair - 1));
            add(otherSide(out), yarnOfPair(pair - 1));
            m_wedge.lastWorked = works + m_extra;
        }
        m_wedge.resting = all - m_wedge.lastWorked;
        if (m_wishes.closing) // it carries the yarn along that the row after goes on with
            add(out, m_made.yarnGoingOn(yarnOfPair(pairs)));
        return std::nullopt;
    }

    std::optional<Fault> aboutMarker()
    {
        const auto marker = std::find_if(needle().markers.begin(), needle().markers.end(),
                                         [&](const MarkerAt& at) { return at.marker == m_wishes.marker; });
        if (marker == needle().markers.end()) {
            const Marker* named = markerOf(m_pattern.head, m_wishes.marker);
            return fault(named
                             ? "marker " + named->name + " isn't on the needle here; place it in a row before"
                             : std::string("no marker is chosen; place one in a row before"));
        }
        const int all = needle().count(), step = m_wishes.step;
        const int side = std::min(marker->position, all - marker->position); // stitches beside the marker
        if (needle().tip != 0 && needle().tip != all)
            leadTo(m_made.nextSide() == Side::WS);
        const int most = (side - 1 - m_extra) / step;
        int turns = m_wishes.turns;
        if (m_wishes.untilLeft) {
            turns = std::min(most, (side - *m_wishes.untilLeft) / step);
            if (turns < 1)
                return fault("has " + counted(side, "stitch") + " beside the marker, so no turn at every " +
                             toText(step) + " leaves " + toText(*m_wishes.untilLeft) +
                             "; leave fewer, or turn more often");
        }
        if (turns > most)
            return tooMany(turns, most, side);
        Side facing = m_made.nextSide();
        for (int row = 0; row < 2 * turns; ++row) {
            const int turn = row / 2;
            const int beyond = step * (m_wishes.growing ? turn + 1 : turns - turn) + m_extra;
            const int position = markerPosition();
            const int works =
                facing == Side::RS ? position + beyond - needle().tip : needle().tip - (position - beyond);
            addEarly(facing, works, yarnOfPair(0));
            m_wedge.lastWorked = works;
            facing = otherSide(facing);
        }
        m_wedge.resting = all - m_wedge.lastWorked;
        add(facing, yarnOfPair(0));
        add(otherSide(facing), yarnOfPair(0));
        return std::nullopt;
    }

    int markerPosition() const
    {
        for (const MarkerAt& at : needle().markers)
            if (at.marker == m_wishes.marker)
                return at.position;
        return 0;
    }

    Fault tooMany(int turns, int most, int stitches) const
    {
        const bool marker = m_wishes.at == WedgeAt::Marker;
        const std::string where = marker ? " beside the marker" : "";
        return fault(counted(turns, "turn") + (marker ? " on each side" : "") + " at every " + counted(m_wishes.step, "stitch") +
                     " don't fit into the " + toText(stitches) + where + ", of which one has to rest; " +
                     (most < 1 ? "turn more often" : "up to " + toText(most) + " would"));
    }

    const Pattern& m_pattern;
    RowsOnNeedle& m_made;
    const WedgeWishes& m_wishes;
    int m_extra; // stitches a row works beyond the wrap-and-turn count
    Wedge m_wedge;
};

} // namespace

Result<Wedge> shortRowWedge(const Pattern& pattern, const Catalogue& catalogue,
                            std::span<const Ledger> ledgers, std::size_t shown, SectionId id, int at,
                            const WedgeWishes& wishes)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (at < 0 || at > static_cast<int>(section.rows.size()) || section.rows.empty())
        return Fault{{}, sectionWords(section), "the row the wedge begins at is no longer there; choose one"};
    RowsOnNeedle made(pattern, catalogue, ledgers, shown, id, at, "a wedge");
    return WedgeMaking(pattern, made, wishes).make();
}

} // namespace shawlwright
