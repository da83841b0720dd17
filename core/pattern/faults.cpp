// What a pattern's shape breaks.

#include "core/base/text.h"
#include "core/pattern/questions.h"

#include <algorithm>
#include <set>
#include <unordered_map>

namespace shawlwright {
namespace {

constexpr std::size_t mostFaults = 1000; // a broken file may cross each of its repeats with each other

class Checker {
public:
    Checker(const Pattern& pattern, const Catalogue& catalogue) : m_pattern(pattern), m_catalogue(catalogue) {}

    Faults check()
    {
        head();
        for (std::size_t s = 0; s < m_pattern.sections.size(); ++s)
            section(static_cast<int>(s));
        return std::move(m_faults);
    }

private:
    void fault(std::string where, std::string message)
    {
        if (m_faults.size() < mostFaults)
            m_faults.push_back({{}, std::move(where), std::move(message)});
    }

    void quantity(const std::string& where, const std::string& what, const Quantity& q, int least, int most)
    {
        const int sizes = sizeCount(m_pattern);
        if (!q.single() && static_cast<int>(q.values.size()) != sizes)
            fault(where, what + " has " + counted(static_cast<int>(q.values.size()), "number") + " for " +
                             counted(sizes, "size") + "; give one number, or one per size");
        for (const int value : q.values)
            if (value < least || value > most)
                fault(where, what + " is " + toText(value) + "; " + toText(least) + " to " + toText(most) + " is possible");
    }

    void head()
    {
        const PatternHead& head = m_pattern.head;
        if (head.yarns.empty())
            fault("yarns", "there is none; a pattern needs at least one yarn");
        std::set<std::string> codes;
        for (const Yarn& yarn : head.yarns)
            if (!codes.insert(yarn.code).second)
                fault("yarns", "two have the code '" + yarn.code + "'; give each a code of its own");
        quantity("castOn", "the number of stitches", head.castOn.stitches, 0, mostCount);
        if (!yarnOf(head, head.castOn.yarn))
            fault("castOn", "names a yarn that the pattern doesn't have; name one of its yarns");
        for (const Motif& motif : head.motifs)
            motifCells(motif);
        std::set<std::string> names;
        for (const Marker& marker : head.markers)
            if (!names.insert(marker.name).second)
                fault("markers", "two are called '" + marker.name + "'; give each a name of its own");
    }

    void section(int at)
    {
        const Section& section = m_pattern.sections[static_cast<std::size_t>(at)];
        m_labels = rowLabels(section);
        m_rowAt.clear();
        for (std::size_t r = 0; r < section.rows.size(); ++r)
            m_rowAt.emplace(section.rows[r]->id.value, static_cast<int>(r));
        const std::string where = "Section '" + section.frame.title + "'";
        if (section.frame.columns < 0 || section.frame.columns > mostColumns)
            fault(where, "is " + toText(section.frame.columns) + " columns wide; up to " + toText(mostColumns) +
                             " are possible");
        for (std::size_t r = 0; r < section.rows.size(); ++r)
            row(section, static_cast<int>(r), where + ", Row " + m_labels[r]);
        boxes(section, where);
        brackets(section, where);
    }

    void row(const Section& section, int at, const std::string& where)
    {
        const Row& row = *section.rows[static_cast<std::size_t>(at)];
        if (!yarnOf(m_pattern.head, row.yarn))
            fault(where, "has a yarn that the pattern doesn't have; name one of its yarns");
        if (static_cast<int>(row.cells.size()) > section.frame.columns)
            fault(where, "has " + toText(static_cast<int>(row.cells.size())) + " columns in a section of " +
                             toText(section.frame.columns) + "; widen the section or shorten the row");
        if (row.start.kind == StartKind::AfterSlipping)
            quantity(where, "the number of stitches slipped first", row.start.slip, 0, mostCount);
        if (row.stated)
            quantity(where, "the stated count", *row.stated, 0, mostCount);
        cells(row, where);
        for (const MarkerMove& move : row.moves) {
            if (move.boundary < 0 || move.boundary > section.frame.columns)
                fault(where, "has a marker after column " + toText(move.boundary) + " of " +
                                 toText(section.frame.columns) + "; move it into the chart");
            if (!markerOf(m_pattern.head, move.marker))
                fault(where, "moves a marker that the pattern doesn't have; name one of its markers");
        }
    }

    void motifCells(const Motif& motif)
    {
        const std::string where = "Motif '" + motif.name + "'";
        if (motif.columns < 1 || motif.columns > mostMotifColumns ||
            static_cast<int>(motif.rows.size()) > mostMotifRows)
            fault(where, "has " + toText(motif.columns) + " columns and " +
                             toText(static_cast<int>(motif.rows.size())) + " rows; 1 to " + toText(mostMotifColumns) +
                             " and up to " + toText(mostMotifRows) + " are possible");
        for (const std::vector<Cell>& of : motif.rows) {
            if (static_cast<int>(of.size()) != motif.columns)
                fault(where, "has a row of " + toText(static_cast<int>(of.size())) + " columns, it is " +
                                 toText(motif.columns) + " wide; save it anew");
            Row row;
            row.cells = of;
            cells(row, where);
        }
    }

    void cells(const Row& row, const std::string& where)
    {
        const int columns = static_cast<int>(row.cells.size());
        for (int column = 1; column <= columns;) {
            const Cell cell = cellAt(row, column);
            const Stitch& stitch = m_catalogue.stitch(cell.stitch);
            bool whole = m_catalogue.known(cell.stitch) && cell.part == 0;
            for (int part = 1; whole && part < stitch.width(); ++part)
                whole = cellAt(row, column + part) ==
                        Cell{cell.stitch, cell.yarn, static_cast<std::uint8_t>(part)};
            if (!whole) {
                fault(where, "column " + toText(column) + " holds a part of a stitch; paint the whole stitch again");
                ++column;
            } else {
                column += stitch.width();
            }
        }
    }

    void boxes(const Section& section, const std::string& where)
    {
        struct Area { int top, bottom, right, left; };
        std::vector<Area> areas;
        for (const Box& box : section.frame.boxes) {
            const Area area{rowAt(box.lastRow), rowAt(box.firstRow), box.firstColumn, box.lastColumn};
            areas.push_back(area);
            if (area.bottom < 0 || area.top < area.bottom || area.right < 1 || area.left < area.right ||
                area.left > section.frame.columns) {
                fault(where, "a stitch repeat lies outside of the chart (columns " + toText(area.right) + " to " +
                                 toText(area.left) + " of " + toText(section.frame.columns) + "); draw it again inside");
                continue;
            }
            quantity(where, "the times of a stitch repeat", box.times, 0, mostRepeats);
            quantity(where, "the stitches left by a stitch repeat", box.leaving, 0, mostCount);
            if (box.until == BoxUntil::Marker && !markerOf(m_pattern.head, box.marker))
                fault(where, "a stitch repeat goes to a marker that the pattern doesn't have");
            int around = 0;
            for (std::size_t other = 0; other + 1 < areas.size(); ++other) {
                const Area& a = areas[other];
                const bool rowsMeet = a.bottom <= area.top && area.bottom <= a.top;
                const bool columnsMeet = a.right <= area.left && area.right <= a.left;
                const bool inside = a.right <= area.right && area.left <= a.left;
                const bool holds = area.right <= a.right && a.left <= area.left;
                if (rowsMeet && columnsMeet && !inside && !holds)
                    fault(where, "stitch repeats cross: columns " + toText(a.right) + " to " + toText(a.left) + " and " +
                                     toText(area.right) + " to " + toText(area.left) + " share rows; nest them or part them");
                around += rowsMeet && inside ? 1 : 0;
            }
            if (around >= mostNesting)
                fault(where, "stitch repeats lie more than " + toText(mostNesting) + " deep in each other; unfold some");
        }
    }

    void brackets(const Section& section, const std::string& where)
    {
        std::vector<std::pair<int, int>> spans;
        for (const Bracket& bracket : section.frame.brackets) {
            const int first = rowAt(bracket.firstRow);
            const int last = rowAt(bracket.lastRow);
            if (first < 0 || last < first) {
                fault(where, "a row repeat lies outside of the chart; draw it again");
                continue;
            }
            quantity(where, "the times of a row repeat", bracket.times, 0, mostRepeats);
            int around = 0;
            for (const auto& [f, l] : spans) {
                if (f <= last && first <= l && !(f <= first && last <= l) && !(first <= f && l <= last))
                    fault(where, "row repeats cross: Rows " + m_labels[static_cast<std::size_t>(f)] + " to " +
                                     m_labels[static_cast<std::size_t>(l)] + " and " +
                                     m_labels[static_cast<std::size_t>(first)] + " to " +
                                     m_labels[static_cast<std::size_t>(last)] + "; nest them or part them");
                around += f <= first && last <= l ? 1 : 0;
            }
            if (around >= mostNesting)
                fault(where, "row repeats lie more than " + toText(mostNesting) + " deep in each other; unfold some");
            spans.emplace_back(first, last);
        }
    }

    int rowAt(RowId id) const
    {
        const auto found = m_rowAt.find(id.value);
        return found == m_rowAt.end() ? -1 : found->second;
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    std::vector<std::string> m_labels;                // of the section at hand
    std::unordered_map<std::uint32_t, int> m_rowAt;   // likewise
    Faults m_faults;
};

} // namespace

Faults faultsOf(const Pattern& pattern, const Catalogue& catalogue)
{
    return Checker(pattern, catalogue).check();
}

} // namespace shawlwright
