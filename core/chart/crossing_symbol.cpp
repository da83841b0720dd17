// Strands that cross: those in front run through, those behind are broken where they pass under them.
#include "core/chart/symbol_parts.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

double at(double from, double to, double share)
{
    return from + (to - from) * share;
}

// The strand from foot to head without the share of it that lies under the front strands.
void brokenStrand(Shapes& shapes, double foot, double head,
                  const std::vector<std::pair<double, double>>& fronts)
{
    double first = 2, last = -1; // shares of the way where front strands are met
    for (const auto& [frontFoot, frontHead] : fronts) {
        const double slope = (head - foot) - (frontHead - frontFoot);
        if (slope == 0)
            continue;
        const double met = (frontFoot - foot) / slope;
        if (met < 0 || met > 1)
            continue;
        // The gap is as wide on the paper whatever the angle.
        const double rise = footLine - headLine;
        const double gap = 0.15 * std::hypot(frontHead - frontFoot, rise) / std::abs(slope * rise);
        first = std::min(first, met - gap);
        last = std::max(last, met + gap);
    }
    const auto point = [&](double share) {
        return Point{at(foot, head, share), at(footLine, headLine, share)};
    };
    if (last < 0) {
        add(shapes, segment(point(0), point(1)));
        return;
    }
    if (first > 0.06)
        add(shapes, segment(point(0), point(first)));
    if (last < 0.94)
        add(shapes, segment(point(last), point(1)));
}

} // namespace

void drawCrossing(Shapes& shapes, const Stitch& stitch)
{
    const int width = stitch.width();
    const int front = std::clamp(stitch.crossing.front, 1, std::max(1, width - 1));
    const int back = std::clamp(stitch.crossing.back, 1, std::max(1, width - front));
    const int middle = std::max(0, width - front - back);
    const bool right = stitch.lean != Lean::Left;

    // Columns from the left. Leaning right: the front strands go from the left end at the foot to the right
    // end.
    const auto column = [&](int i) { return right ? i + 0.5 : width - i - 0.5; };
    std::vector<std::pair<double, double>> fronts;
    for (int i = 0; i < front; ++i)
        fronts.emplace_back(column(i), column(width - front + i));
    for (int i = 0; i < middle; ++i)
        brokenStrand(shapes, column(front + i), column(back + i), fronts);
    for (int i = 0; i < back; ++i) {
        const double head = column(i);
        brokenStrand(shapes, column(front + middle + i), head, fronts);
        if (stitch.crossing.backPurled)
            add(shapes, segment({head - 0.2, headLine - 0.04}, {head + 0.2, headLine - 0.04}));
    }
    for (const auto& [foot, head] : fronts)
        add(shapes, segment({foot, footLine}, {head, headLine}));
}

} // namespace shawlwright::chart
