#include "tests/laws/painted_pattern.h"

#include "tests/support/knit.h"

namespace shawlwright::tests {
namespace {

struct Worked {
    const char* word;
    int takes, leaves;
};
const Worked rightSide[] = {{"k", 1, 1},     {"k", 1, 1},   {"p", 1, 1},     {"yo", 0, 1},
                            {"k2tog", 2, 1}, {"ssk", 2, 1}, {"kfb", 1, 2},   {"k3tog", 3, 1},
                            {"yo2", 0, 2},   {"sl1", 1, 1}, {"k_tbl", 1, 1}, {"yo", 0, 1}};
const Worked wrongSide[] = {{"k", 1, 1},     {"p", 1, 1},     {"p", 1, 1},   {"yo", 0, 1},
                            {"k2tog", 2, 1}, {"p2tog", 2, 1}, {"pfb", 1, 2}, {"sl1", 1, 1}};

using Cells = std::vector<Worked>;

class Painter {
public:
    explicit Painter(std::mt19937& random) : m_random(random) {}

    Pattern pattern()
    {
        m_segment = among(0, 2) == 0 ? among(2, 9) : 0; // stitches between markers; 0: none
        const int segments = among(2, 6);
        m_count = m_segment > 0 ? m_segment * segments + among(0, 5) : among(8, 70);
        Knit knit(m_count);
        std::string first;
        int marked = 0;
        for (int i = 0; i < m_count; ++i) {
            if (m_segment > 0 && i > 0 && i % m_segment == 0 && marked < segments)
                first += std::string("|") + static_cast<char>('A' + marked++) + " ";
            first += "k ";
        }
        knit.rs(first);
        const int rows = among(1, 5);
        int sinceBracket = 0;
        for (int row = 0; row < rows; ++row) {
            ++sinceBracket;
            if (among(0, 4) == 0) {
                shortRows(knit);
                continue;
            }
            const Side side = m_side = otherSide(m_side);
            knit.row(side, told(over(m_count, side, true)));
            m_count += m_change;
            if (among(0, 5) == 0 && sinceBracket > 1) {
                knit.times(2, among(2, 3));
                sinceBracket = 0;
            }
        }
        return knit.done();
    }

private:
    int among(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }

    // Stitches, some of them in parts that repeat.
    Cells some(Side side, int depth)
    {
        Cells cells;
        for (int parts = among(1, 3); parts > 0; --parts) {
            if (depth < 3 && among(0, 2) == 0) {
                const Cells part = some(side, depth + 1);
                for (int times = among(2, 4); times > 0; --times)
                    cells.insert(cells.end(), part.begin(), part.end());
                continue;
            }
            const Worked one = side == Side::RS ? rightSide[among(0, 11)] : wrongSide[among(0, 7)];
            cells.insert(cells.end(), static_cast<std::size_t>(among(0, 2) == 0 ? among(2, 4) : 1), one);
        }
        return cells;
    }

    // Exactly so many stitches are taken up; with markers no stitch lies over one.
    Cells over(int stitches, Side side, bool markers)
    {
        Cells cells;
        int taken = 0;
        m_change = 0;
        const auto add = [&](const Worked& one) {
            const int room = markers && m_segment > 0 ? m_segment - taken % m_segment : stitches;
            const bool piledUp = one.takes == 0 && cells.size() > 1 && cells.back().takes == 0 &&
                                 cells[cells.size() - 2].takes == 0;
            if (one.takes > stitches - taken || one.takes > room || piledUp || cells.size() > 120)
                return;
            cells.push_back(one);
            taken += one.takes;
            m_change += one.leaves - one.takes;
        };
        for (int edge = among(0, 3); edge > 0; --edge)
            add(wrongSide[among(0, 1)]);
        const Cells part = some(side, 0);
        for (int times = among(1, 12); times > 0; --times)
            for (const Worked& one : part)
                add(one);
        cells.insert(cells.end(), static_cast<std::size_t>(stitches - taken), wrongSide[0]);
        return cells;
    }

    // A row that stops early, and one back over what it worked.
    void shortRows(Knit& knit)
    {
        if (m_count < 4)
            return;
        const int worked = among(2, m_count - 1);
        m_side = otherSide(m_side);
        knit.row(m_side, told(over(worked, m_side, true)) + "turn");
        const int there = worked + m_change;
        m_count += m_change;
        m_side = otherSide(m_side);
        knit.row(m_side, told(over(there, m_side, false)));
        m_count += m_change;
    }

    static std::string told(const Cells& cells)
    {
        std::string text;
        for (const Worked& one : cells)
            text += std::string(one.word) + " ";
        return text;
    }

    std::mt19937& m_random;
    Side m_side = Side::RS;
    int m_segment = 0;
    int m_count = 0;
    int m_change = 0;
};

} // namespace

Pattern paintedPattern(std::mt19937& random)
{
    return Painter(random).pattern();
}

} // namespace shawlwright::tests
