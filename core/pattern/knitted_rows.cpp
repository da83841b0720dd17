// Brackets worked out: the rows as they come off the needles.

#include "core/pattern/questions.h"

#include <algorithm>
#include <map>
#include <unordered_map>

namespace shawlwright {
namespace {

struct Span {
    int first, last, times;
};

// The same boxes on many rows are one list in memory.
std::vector<std::shared_ptr<const std::vector<Box>>> boxLists(const Section& section,
                                                              const std::unordered_map<std::uint32_t, int>& at)
{
    std::vector<std::vector<Box>> lists(section.rows.size());
    for (const Box& box : section.frame.boxes) {
        const auto first = at.find(box.firstRow.value);
        const auto last = at.find(box.lastRow.value);
        if (first == at.end() || last == at.end())
            continue;
        for (int row = first->second; row <= last->second; ++row)
            lists[static_cast<std::size_t>(row)].push_back(box);
    }
    std::vector<std::shared_ptr<const std::vector<Box>>> shared;
    for (auto& list : lists) {
        std::stable_sort(list.begin(), list.end(), [](const Box& a, const Box& b) {
            return a.lastColumn - a.firstColumn > b.lastColumn - b.firstColumn;
        });
        if (!shared.empty() && *shared.back() == list)
            shared.push_back(shared.back());
        else
            shared.push_back(std::make_shared<const std::vector<Box>>(std::move(list)));
    }
    return shared;
}

class Unroller {
public:
    Unroller(std::vector<KnittedRow>& out, const Section& section, int sectionAt, std::vector<Span> spans)
        : m_out(out), m_section(section), m_sectionAt(sectionAt), m_spans(std::move(spans))
    {
        std::unordered_map<std::uint32_t, int> at;
        for (std::size_t i = 0; i < section.rows.size(); ++i)
            at.emplace(section.rows[i]->id.value, static_cast<int>(i));
        m_boxes = boxLists(section, at);
    }

    void work() { rows(0, static_cast<int>(m_section.rows.size()) - 1, 0); }

private:
    void rows(int first, int last, std::size_t depth)
    {
        for (int row = first; row <= last;) {
            const Span* span = startingAt(row, last, depth);
            if (!span) {
                knit(row++);
                continue;
            }
            const std::size_t next = static_cast<std::size_t>(span - m_spans.data()) + 1;
            m_passes.push_back(0);
            for (int pass = 1; pass <= span->times && !full(); ++pass) {
                m_passes.back() = pass;
                rows(span->first, span->last, next);
            }
            m_passes.pop_back();
            row = span->last + 1;
        }
    }

    // The outermost bracket not yet entered that begins at this row. Spans are sorted outermost first.
    const Span* startingAt(int row, int last, std::size_t depth) const
    {
        for (std::size_t i = depth; i < m_spans.size(); ++i)
            if (m_spans[i].first == row && m_spans[i].last <= last)
                return &m_spans[i];
        return nullptr;
    }

    void knit(int row)
    {
        if (full())
            return;
        const auto at = static_cast<std::size_t>(row);
        m_out.push_back({m_sectionAt, row, ++m_index, m_section.rows[at], m_passes, m_boxes[at]});
    }

    bool full() const { return m_out.size() >= static_cast<std::size_t>(mostKnittedRows); }

    std::vector<KnittedRow>& m_out;
    const Section& m_section;
    int m_sectionAt;
    std::vector<Span> m_spans;
    std::vector<std::shared_ptr<const std::vector<Box>>> m_boxes;
    Passes m_passes;
    int m_index = 0;
};

} // namespace

std::vector<KnittedRow> knittedRows(const Pattern& pattern, int version, int size)
{
    std::vector<KnittedRow> out;
    for (std::size_t s = 0; s < pattern.sections.size(); ++s) {
        const Section& section = pattern.sections[s];
        if (!belongsTo(section, pattern, version))
            continue;
        std::vector<Span> spans;
        for (const Bracket& bracket : section.frame.brackets) {
            const int first = rowIndex(section, bracket.firstRow);
            const int last = rowIndex(section, bracket.lastRow);
            if (first >= 0 && last >= first)
                spans.push_back({first, last, bracket.times.at(size)});
        }
        std::stable_sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) {
            return a.last - a.first > b.last - b.first;
        });
        Unroller(out, section, static_cast<int>(s), std::move(spans)).work();
    }
    return out;
}

} // namespace shawlwright
