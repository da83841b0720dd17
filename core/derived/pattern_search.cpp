#include "core/derived/pattern_search.h"

#include "core/base/text.h"
#include "core/wording/style.h"

#include <algorithm>
#include <set>

namespace shawlwright {
namespace {

bool holds(std::string_view text, std::string_view wanted) // `wanted` in small letters
{
    return lowered(text).find(wanted) != std::string::npos;
}

// "37 of Border" parted; the second part is empty where no section is named.
struct RowAsked {
    std::string label, section;
};

RowAsked rowAsked(std::string_view wanted)
{
    std::string_view rest = wanted;
    for (const std::string_view word : {"row ", "rows ", "r"})
        if (rest.size() > word.size() && rest.substr(0, word.size()) == word &&
            (word != "r" || (rest[1] >= '0' && rest[1] <= '9'))) {
            rest = trimmed(rest.substr(word.size()));
            break;
        }
    const std::size_t of = rest.find(" of ");
    if (of == std::string_view::npos)
        return {std::string(rest), {}};
    return {std::string(trimmed(rest.substr(0, of))), std::string(trimmed(rest.substr(of + 4)))};
}

class Search {
public:
    Search(const Pattern& pattern, Derived& derived, std::string wanted)
        : m_pattern(pattern), m_derived(derived), m_wanted(std::move(wanted))
    {
    }

    std::vector<SearchHit> hits()
    {
        byLabel();
        if (m_hits.empty())
            byStitch();
        if (m_hits.empty())
            byWords();
        return std::move(m_hits);
    }

private:
    void add(const Section& section, int row, int column = 0)
    {
        if (m_hits.size() < mostHits)
            m_hits.push_back({section.id, row, column});
    }

    void byLabel()
    {
        const RowAsked asked = rowAsked(m_wanted);
        for (const Section& section : m_pattern.sections) {
            if (!asked.section.empty() && !holds(section.frame.title, asked.section))
                continue;
            const std::vector<std::string> labels = rowLabels(section);
            for (std::size_t row = 0; row < labels.size(); ++row)
                if (lowered(labels[row]) == asked.label)
                    add(section, static_cast<int>(row));
        }
    }

    // A name may be told in part ("together"), an abbreviation only whole: "k" is not "k2tog".
    bool called(StitchId id, Side side)
    {
        const auto known = m_called.find({id, side});
        if (known != m_called.end())
            return known->second;
        const Stitch& stitch = m_derived.catalogue().stitch(id);
        bool is = m_wanted.size() >= 3 && holds(stitch.name, m_wanted);
        for (const Words words : {Words::US, Words::UK})
            is = is || lowered(abbreviation(stitch, side, words)) == m_wanted;
        return m_called[{id, side}] = is;
    }

    void byStitch()
    {
        for (const Section& section : m_pattern.sections)
            for (std::size_t at = 0; at < section.rows.size(); ++at) {
                const Row& row = *section.rows[at];
                const int columns = static_cast<int>(row.cells.size());
                for (int step = 1; step <= columns; ++step) {
                    const int column = row.side == Side::RS ? step : columns + 1 - step;
                    const Cell cell = cellAt(row, column);
                    if (cell.stitch != noStitch && cell.part == 0 && called(cell.stitch, row.side))
                        add(section, static_cast<int>(at), column);
                }
            }
    }

    void byWords()
    {
        for (std::size_t s = 0; s < m_pattern.sections.size(); ++s) {
            const Section& section = m_pattern.sections[s];
            const SectionFrame& frame = section.frame;
            if (holds(frame.title, m_wanted) || holds(frame.note, m_wanted) || holds(frame.words, m_wanted))
                add(section, -1);
            std::set<int> rows;
            for (std::size_t at = 0; at < section.rows.size(); ++at)
                if (holds(section.rows[at]->note, m_wanted) || holds(section.rows[at]->words, m_wanted))
                    rows.insert(static_cast<int>(at));
            for (const WrittenRow& written : m_derived.written(m_pattern, static_cast<int>(s)))
                if (holds(toText(written), m_wanted))
                    rows.insert(written.repeat ? written.lastRow : written.firstRow);
            for (const int row : rows)
                add(section, row);
        }
    }

    const Pattern& m_pattern;
    Derived& m_derived;
    std::string m_wanted;
    std::map<std::pair<StitchId, Side>, bool> m_called;
    std::vector<SearchHit> m_hits;
};

} // namespace

std::vector<SearchHit> searched(const Pattern& pattern, Derived& derived, std::string_view wanted)
{
    const std::string asked = lowered(trimmed(wanted));
    return asked.empty() ? std::vector<SearchHit>{} : Search(pattern, derived, asked).hits();
}

} // namespace shawlwright
