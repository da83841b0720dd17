// Which empty columns of a row lie over loops that rest on the needle.

#include "core/needle/ledger.h"

#include <algorithm>
#include <map>

namespace shawlwright {
namespace {

class Resting {
public:
    Resting(const Ledger& ledger, std::size_t line)
        : m_ledger(ledger), m_line(line), m_row(*ledger.rows[line].ref), m_used(usedColumns(m_row, *ledger.rows[line].boxes)),
          m_starts(line == 0 || ledger.rows[line - 1].section != ledger.rows[line].section)
    {
    }

    std::vector<int> columns()
    {
        if (m_used.first == 0)
            return {};
        const LedgerLine& knitted = m_ledger.lines[m_line];
        const int loops = m_ledger.before[m_line].count();
        side(0, knitted.restingRight, -1, m_used.first - 1, 0);
        side(loops - knitted.restingLeft, loops, 1, m_used.last + 1, static_cast<int>(m_row.cells.size()) + 1);
        std::sort(m_columns.begin(), m_columns.end());
        m_columns.erase(std::unique(m_columns.begin(), m_columns.end()), m_columns.end());
        return std::move(m_columns);
    }

private:
    // Loops of this section rest over their own columns; those of an earlier one fill what is next to the worked cells.
    void side(int firstLoop, int lastLoop, int step, int from, int to)
    {
        int unknown = 0;
        for (int i = firstLoop; i < lastLoop; ++i) {
            const Loop& loop = m_ledger.before[m_line].loops[static_cast<std::size_t>(i)];
            if (m_starts || loop.column <= 0)
                ++unknown;
            else
                over(loop);
        }
        for (int column = from; column != to && unknown > 0; column += step)
            if (std::find(m_columns.begin(), m_columns.end(), column) == m_columns.end()) {
                m_columns.push_back(column);
                --unknown;
            }
    }

    // A loop made in a stitch repeat stands for the whole width that the repeat is drawn over.
    void over(const Loop& loop)
    {
        ColumnSpan span{loop.column, loop.column};
        for (const Box& box : boxesOfMaker(loop.madeIn))
            if (box.firstColumn <= loop.column && loop.column <= box.lastColumn) {
                span = {box.firstColumn, box.lastColumn};
                break;
            }
        for (int column = span.first; column <= span.last; ++column)
            if (column < m_used.first || column > m_used.last)
                m_columns.push_back(column);
    }

    const std::vector<Box>& boxesOfMaker(RowId id)
    {
        static const std::vector<Box> none;
        const auto found = m_makers.find(id);
        if (found != m_makers.end())
            return *found->second;
        const std::vector<Box>* boxes = &none;
        for (std::size_t line = m_line; line-- > 0;)
            if (m_ledger.rows[line].ref->id == id) {
                boxes = m_ledger.rows[line].boxes.get();
                break;
            }
        m_makers.emplace(id, boxes);
        return *boxes;
    }

    const Ledger& m_ledger;
    std::size_t m_line;
    const Row& m_row;
    ColumnSpan m_used;
    bool m_starts;
    std::map<RowId, const std::vector<Box>*> m_makers;
    std::vector<int> m_columns;
};

} // namespace

std::vector<int> restingColumns(const Ledger& ledger, int line)
{
    return Resting(ledger, static_cast<std::size_t>(line)).columns();
}

} // namespace shawlwright
