// A second needle, written apart from the first and as plainly as can be: two stacks, one for the needle in either hand.
// Turning the work swaps the hands. It knows nothing of findings, columns or yarns; where a row does not come out, or
// asks for what it doesn't know (the last turn, a marker slipped to the other side), it gives up.
#pragma once

#include "core/pattern/questions.h"

#include <optional>
#include <string>

namespace shawlwright::tests {

struct NaiveLine {
    int after = 0;
    int worked = 0;
    std::vector<int> segments;
    std::vector<std::string> made; // what the row left, in the order worked
    bool sideUnsure = false;       // a stitch that takes up none fell beside a marker: the chart decides its segment
};

class NaiveNeedle {
public:
    NaiveNeedle(const Pattern& pattern, const Catalogue& catalogue, int size);
    std::optional<NaiveLine> work(const KnittedRow& row);

private:
    struct Item {
        std::string loop; // empty: a marker
        MarkerId marker;
    };
    bool span(const Row& row, const std::vector<Box>& boxes, std::size_t depth, int from, int to);
    bool cell(const Row& row, const Stitch& stitch);
    bool move(const MarkerMove& move, int reach);
    bool movesAt(const Row& row, int boundary, int column);
    bool loopsBefore(const Box& box, int& loops) const;
    bool takeOne();
    int ahead() const;

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    int m_size;
    std::vector<Item> m_left, m_right; // the last one is nearest to the tip
    NaiveLine m_line;
    bool m_facingRS;
};

} // namespace shawlwright::tests
