#include "core/derived/short_row_arch.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>

namespace shawlwright {
namespace {

// The stitches that the first row from turn to turn works, in the needle's loops: [right, right + width).
struct Centre {
    int right = 0;
    std::string words; // "marker A"
};

class ArchMaking {
public:
    ArchMaking(const Pattern& pattern, RowsOnNeedle& made, const ArchWishes& wishes)
        : m_pattern(pattern), m_made(made), m_wishes(wishes),
          m_extra(worksTurningStitch(wishes.method) ? 1 : 0)
    {
    }

    Result<Arches> make()
    {
        if (auto fault = m_made.takeNeedle())
            return *fault;
        if (auto fault = wishesFault())
            return *fault;
        if (needle().tip != 0 && needle().tip != all())
            m_made.leadTo(m_made.nextSide() == Side::WS, yarn(), m_wishes.stitches);
        else if (!m_made.atStart(true) && !m_made.atStart(false)) // at an edge, but facing away from it
            m_made.leadTo(needle().tip == 0, yarn(), m_wishes.stitches);
        if (auto fault = findCentres())
            return *fault;
        if (auto fault = settleRows())
            return *fault;
        if (auto fault = roomFault())
            return *fault;
        m_facing = m_made.nextSide();
        if (m_facing == Side::WS)
            std::reverse(m_centres.begin(), m_centres.end());
        for (const Centre& centre : m_centres)
            work(centre);
        const YarnId after = m_made.yarnAfter(2);
        const bool brings = std::find(m_wishes.yarns.begin(), m_wishes.yarns.end(), after) != m_wishes.yarns.end();
        m_closing = brings ? after : m_with;
        add(std::nullopt, 0);
        add(std::nullopt, 0);
        auto placed = m_made.place(m_centres.size() == 1 ? "arch of short rows"
                                                         : counted(static_cast<int>(m_centres.size()), "arch", "arches") +
                                                               " of short rows",
                                   m_wishes.stitches);
        if (!placed.ok())
            return placed.fault();
        PlacedRows& done = placed.value();
        m_arches.joins = static_cast<int>(
            std::count_if(done.rows.begin(), done.rows.end(), [](const Row& row) { return row.start.joins; }));
        m_arches.rows = std::move(done.rows);
        m_arches.lead = done.lead;
        m_arches.filled = done.filled;
        m_arches.edit = std::move(done.edit);
        return std::move(m_arches);
    }

private:
    Fault fault(std::string message) const { return m_made.fault(std::move(message)); }
    const Needle& needle() const { return m_made.needle(); }
    int all() const { return needle().count(); }
    bool several() const { return m_centres.size() > 1; }

    std::optional<Fault> wishesFault() const
    {
        if (m_wishes.width < 1)
            return fault("can't begin an arch " + counted(m_wishes.width, "stitch") + " wide; take 1 or more");
        if (m_wishes.step < 1)
            return fault("can't turn every " + counted(m_wishes.step, "stitch") + "; take 1 or more");
        if (!m_wishes.untilWidth && m_wishes.rows < 2)
            return fault("an arch turns on both sides, so it takes 2 short rows or more, not " +
                         toText(m_wishes.rows));
        for (const YarnId yarn : m_wishes.yarns)
            if (auto wrong = yarnFault(m_pattern, yarn))
                return wrong;
        return std::nullopt;
    }

    std::optional<Fault> findCentres()
    {
        if (m_wishes.places.empty())
            return fault("no place is chosen for the arch; choose the middle, a marker or a stitch");
        const int half = m_wishes.width / 2;
        for (const ArchPlace& place : m_wishes.places) {
            switch (place.at) {
            case ArchPlace::At::Middle:
                m_centres.push_back({(all() - m_wishes.width + 1) / 2, "the middle"});
                break;
            case ArchPlace::At::Stitch:
                if (place.stitch < 1 || place.stitch > all())
                    return fault("has no stitch " + toText(place.stitch) + ", the needle holds " +
                                 toText(all()) + "; choose one of them");
                m_centres.push_back({place.stitch - 1 - (m_wishes.width - 1) / 2, "stitch " + toText(place.stitch)});
                break;
            case ArchPlace::At::Marker: {
                const Marker* named = markerOf(m_pattern.head, place.marker);
                const std::string name = named ? "marker " + named->name : "no marker";
                const std::size_t before = m_centres.size();
                for (const MarkerAt& at : needle().markers)
                    if (at.marker == place.marker)
                        m_centres.push_back({at.position - half, name});
                if (m_centres.size() == before)
                    return fault(named ? name + " isn't on the needle here; place it in a row before"
                                       : std::string("no marker is chosen; place one in a row before"));
                break;
            }
            }
        }
        std::stable_sort(m_centres.begin(), m_centres.end(),
                         [](const Centre& a, const Centre& b) { return a.right < b.right; });
        return std::nullopt;
    }

    // How many short rows an arch has; the last works width + (rows - 2) * step, or that much less.
    std::optional<Fault> settleRows()
    {
        m_rows = m_wishes.rows;
        if (m_wishes.untilWidth) {
            const int wide = *m_wishes.untilWidth;
            const int steps = m_wishes.widening ? wide - m_wishes.width : m_wishes.width - std::max(1, wide);
            if (steps < 0)
                return fault("begins " + counted(m_wishes.width, "stitch") + " wide, so no arch that gets " +
                             (m_wishes.widening ? "wider" : "narrower") + " ends at " + toText(wide) +
                             "; begin with " + toText(std::max(1, wide)) + " or " +
                             (m_wishes.widening ? "fewer" : "more"));
            m_rows = 2 + steps / m_wishes.step;
            if (several() && m_rows % 2 != 0)
                --m_rows;
        }
        if (several() && m_rows % 2 != 0)
            return fault("an arch of " + counted(m_rows, "short row") +
                         " ends on the side it began from, and the next one lies the other way; " +
                         (m_rows > 2 ? toText(m_rows - 1) + " or " : "") + toText(m_rows + 1) + " would do");
        const int narrowest = m_wishes.width - (m_rows - 2) * m_wishes.step;
        if (!m_wishes.widening && narrowest < 1)
            return fault("an arch that begins " + counted(m_wishes.width, "stitch") + " wide and loses " +
                         toText(m_wishes.step) + " a row has none left in short row " + toText(m_rows) +
                         "; up to " + toText(2 + (m_wishes.width - 1) / m_wishes.step) + " rows would do");
        if (m_rows > mostRows)
            return fault("an arch of " + toText(m_rows) + " rows asked for; up to " + toText(mostRows) +
                         " are possible");
        return std::nullopt;
    }

    // The turns on either side that lie furthest out, beyond the stitches it starts with.
    int reach(bool firstSide, int rows) const
    {
        const int turns = firstSide ? (rows + 1) / 2 : rows / 2;
        // The first turn and the one of the next row lie where it starts; each later one a step further.
        return m_wishes.widening ? std::max(0, turns - 1) * m_wishes.step : 0;
    }

    std::optional<Fault> roomFault() const
    {
        const bool right = m_made.nextSide() == Side::RS; // the first turn lies at the left
        const auto low = [&](const Centre& centre, int rows) {
            return centre.right - reach(!right, rows) - m_extra;
        };
        const auto high = [&](const Centre& centre, int rows) {
            return centre.right + m_wishes.width + reach(right, rows) + m_extra;
        };
        const auto fits = [&](int rows) {
            for (std::size_t i = 0; i < m_centres.size(); ++i) {
                if (low(m_centres[i], rows) < 1 || high(m_centres[i], rows) > all() - 1)
                    return false;
                if (i > 0 && high(m_centres[i - 1], rows) > low(m_centres[i], rows))
                    return false;
            }
            return true;
        };
        if (fits(m_rows))
            return std::nullopt;
        int most = m_rows;
        const int by = several() ? 2 : 1;
        while (most >= 2 && !fits(most))
            most -= by;
        const std::string mend =
            most >= 2 ? "; up to " + counted(most, "short row") + " would do"
                      : "; begin narrower" + std::string(several() ? ", or take places further apart" : "");
        for (std::size_t i = 0; i < m_centres.size(); ++i) {
            const Centre& centre = m_centres[i];
            if (low(centre, m_rows) < 1 || high(centre, m_rows) > all() - 1)
                return fault("the arch about " + centre.words + " would reach from stitch " +
                             toText(low(centre, m_rows) + 1) + " to " + toText(high(centre, m_rows)) + " of " +
                             toText(all()) + ", and one has to rest on either side" + mend);
            if (i > 0 && high(m_centres[i - 1], m_rows) > low(centre, m_rows))
                return fault("the arches about " + m_centres[i - 1].words + " and " + centre.words +
                             " would overlap by " +
                             counted(high(m_centres[i - 1], m_rows) - low(centre, m_rows), "stitch") + mend);
        }
        return std::nullopt;
    }

    void work(const Centre& centre)
    {
        int low = centre.right, high = centre.right + m_wishes.width; // of the next turns, as for wrap and turn
        const int step = m_wishes.widening ? m_wishes.step : -m_wishes.step;
        for (int row = 0; row < m_rows; ++row) {
            int& turn = m_facing == Side::RS ? high : low;
            if (row >= 2)
                turn += m_facing == Side::RS ? step : -step;
            const int tip = needle().tip;
            const int works = (m_facing == Side::RS ? turn - tip : tip - turn) + m_extra;
            add(m_wishes.method, works);
            if (row > 0 && m_arches.arches == 0)
                m_arches.widths.push_back(m_last.worked);
        }
        ++m_arches.arches;
        m_arches.shortRows = m_rows;
        m_arches.rests.push_back({m_last.restingRight, m_last.restingLeft});
        m_pairRows = 0;
    }

    YarnId yarn() const
    {
        if (m_wishes.yarns.empty())
            return m_made.yarnHere();
        const int turn = m_wishes.yarnTurns == YarnTurns::EachArch ? m_arches.arches : m_pairs;
        return m_wishes.yarns[static_cast<std::size_t>(turn) % m_wishes.yarns.size()];
    }

    void add(std::optional<TurnMethod> turns, int works)
    {
        YarnId with = yarn();
        if (!turns) // the closing rows bring the yarn along that the row after them goes on with
            with = m_closing;
        m_last = m_made.add({m_facing, with, m_wishes.stitches, turns, works, m_wishes.slipFirst});
        m_with = with;
        m_facing = otherSide(m_facing);
        if (++m_pairRows == 2) {
            m_pairRows = 0;
            ++m_pairs;
        }
    }

    const Pattern& m_pattern;
    RowsOnNeedle& m_made;
    const ArchWishes& m_wishes;
    int m_extra; // stitches a row works beyond the wrap-and-turn count
    int m_rows = 0;
    std::vector<Centre> m_centres; // in the order worked
    Side m_facing = Side::RS;
    LedgerLine m_last;
    YarnId m_with; // of the row made last
    YarnId m_closing;
    int m_pairs = 0, m_pairRows = 0;
    Arches m_arches;
};

} // namespace

Result<Arches> shortRowArches(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                              std::size_t shown, SectionId id, int at, const ArchWishes& wishes)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (at < 0 || at > static_cast<int>(section.rows.size()) || section.rows.empty())
        return Fault{{}, sectionWords(section), "the row the arch begins at is no longer there; choose one"};
    RowsOnNeedle made(pattern, catalogue, ledgers, shown, id, at, "an arch");
    return ArchMaking(pattern, made, wishes).make();
}

} // namespace shawlwright
