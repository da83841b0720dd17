#include "tests/support/shrink.h"

#include "core/pattern/questions.h"

#include <algorithm>

namespace shawlwright::tests {
namespace {

void takeRows(Section& section, std::size_t from, std::size_t count)
{
    for (std::size_t i = from; i < from + count; ++i) {
        const RowId id = section.rows[i]->id;
        const auto names = [id](const auto& one) { return one.firstRow == id || one.lastRow == id; };
        std::erase_if(section.frame.boxes, names);
        std::erase_if(section.frame.brackets, names);
    }
    section.rows.erase(section.rows.begin() + static_cast<std::ptrdiff_t>(from),
                       section.rows.begin() + static_cast<std::ptrdiff_t>(from + count));
}

class Shrinking {
public:
    Shrinking(Pattern pattern, const Catalogue& catalogue, const std::function<bool(const Pattern&)>& fails)
        : m_pattern(std::move(pattern)), m_catalogue(catalogue), m_fails(fails)
    {
    }

    Pattern smallest()
    {
        for (bool smaller = true; smaller && m_tries < mostTries;) {
            const int before = m_taken;
            sections();
            for (std::size_t s = 0; s < m_pattern.sections.size(); ++s) {
                rows(s);
                parts(s);
                for (std::size_t r = 0; r < m_pattern.sections[s].rows.size(); ++r)
                    row(s, r);
            }
            smaller = m_taken > before;
        }
        return std::move(m_pattern);
    }

private:
    static constexpr int mostTries = 3000;

    bool take(Pattern less)
    {
        if (++m_tries > mostTries || less == m_pattern || !faultsOf(less, m_catalogue).empty() ||
            !m_fails(less))
            return false;
        m_pattern = std::move(less);
        ++m_taken;
        return true;
    }
    template <typename Change>
    bool changed(std::size_t section, std::size_t row, const Change& change)
    {
        Pattern less = m_pattern;
        RowRef& ref = less.sections[section].rows[row];
        Row copy = *ref;
        change(copy);
        ref = std::make_shared<const Row>(std::move(copy));
        return take(std::move(less));
    }

    void sections()
    {
        for (std::size_t s = m_pattern.sections.size(); s-- > 0 && m_pattern.sections.size() > 1;) {
            Pattern less = m_pattern;
            less.sections.erase(less.sections.begin() + static_cast<std::ptrdiff_t>(s));
            take(std::move(less));
        }
    }
    void rows(std::size_t s)
    {
        for (std::size_t part = m_pattern.sections[s].rows.size() / 2; part > 0; part /= 2)
            for (std::size_t from = 0; from + part <= m_pattern.sections[s].rows.size() &&
                                       m_pattern.sections[s].rows.size() > part;) {
                Pattern less = m_pattern;
                takeRows(less.sections[s], from, part);
                if (!take(std::move(less)))
                    from += part;
            }
    }
    void parts(std::size_t s)
    {
        for (std::size_t i = m_pattern.sections[s].frame.boxes.size(); i-- > 0;) {
            Pattern less = m_pattern;
            auto& boxes = less.sections[s].frame.boxes;
            boxes.erase(boxes.begin() + static_cast<std::ptrdiff_t>(i));
            take(std::move(less));
        }
        for (std::size_t i = m_pattern.sections[s].frame.brackets.size(); i-- > 0;) {
            Pattern less = m_pattern;
            auto& brackets = less.sections[s].frame.brackets;
            brackets.erase(brackets.begin() + static_cast<std::ptrdiff_t>(i));
            take(std::move(less));
        }
    }
    void row(std::size_t s, std::size_t r)
    {
        changed(s, r, [](Row& row) { row.note.clear(); });
        changed(s, r, [](Row& row) { row.label.clear(); });
        changed(s, r, [](Row& row) { row.stated.reset(); });
        changed(s, r, [](Row& row) { row.start = {}; });
        changed(s, r, [](Row& row) { row.finish = {}; });
        for (std::size_t i = m_pattern.sections[s].rows[r]->moves.size(); i-- > 0;)
            changed(s, r,
                    [i](Row& row) { row.moves.erase(row.moves.begin() + static_cast<std::ptrdiff_t>(i)); });
        changed(s, r, [](Row& row) {
            for (Cell& cell : row.cells)
                cell.yarn = {};
        });
        for (std::size_t part = m_pattern.sections[s].rows[r]->cells.size(); part > 0; part /= 2)
            for (std::size_t from = 0; from < m_pattern.sections[s].rows[r]->cells.size(); from += part)
                changed(s, r, [&](Row& row) {
                    const std::size_t end = std::min(from + part, row.cells.size());
                    std::fill(row.cells.begin() + static_cast<std::ptrdiff_t>(from),
                              row.cells.begin() + static_cast<std::ptrdiff_t>(end), Cell{});
                });
    }

    Pattern m_pattern;
    const Catalogue& m_catalogue;
    const std::function<bool(const Pattern&)>& m_fails;
    int m_tries = 0;
    int m_taken = 0;
};

} // namespace

Pattern shrunk(Pattern pattern, const Catalogue& catalogue, const std::function<bool(const Pattern&)>& fails)
{
    return Shrinking(std::move(pattern), catalogue, fails).smallest();
}

} // namespace shawlwright::tests
