// Feet for the loops taken up, a joint where the stitch leans, heads for the loops left.
#include "core/chart/symbol_parts.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

// `count` places in `room`, evenly, `inset` away from its ends.
std::vector<double> spread(int count, double from, double to)
{
    std::vector<double> places;
    for (int i = 0; i < count; ++i)
        places.push_back(count == 1 ? (from + to) / 2 : from + (to - from) * i / (count - 1));
    return places;
}

Point between(Point a, Point b, double share)
{
    return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share};
}

// A line from the joint to where the head ends, and what stands there: nothing, the bar of a purl, a ring.
void addHead(Shapes& shapes, Point joint, Point tip, HeadKind kind, bool markPurl, double room)
{
    if (kind == HeadKind::YarnOver) {
        const double radius = std::min(0.13, room * 0.4);
        const Point centre{tip.x, headLine + radius - 0.05};
        const double length = std::hypot(joint.x - centre.x, joint.y - centre.y);
        add(shapes, segment(joint, between(centre, joint, radius / length)));
        add(shapes, ring(centre, radius));
        return;
    }
    const bool barred = kind == HeadKind::Purl && markPurl;
    add(shapes, segment(joint, barred ? Point{tip.x, tip.y} : tip));
    if (barred) {
        const double half = std::min(0.17, room * 0.42);
        add(shapes, segment({tip.x - half, tip.y - 0.03}, {tip.x + half, tip.y - 0.03}));
    }
}

// The level back of a comb with round corners; its outer teeth begin at `tooth`, above or below.
void addComb(Shapes& shapes, double left, double right, double y, double tooth)
{
    add(shapes, Path()
                    .move({left, tooth})
                    .curve({left, y}, {left, y}, {left + 0.12, y})
                    .line({right - 0.12, y})
                    .curve({right, y}, {right, y}, {right, tooth}));
}

double headRoom(const Stitch& stitch)
{
    return static_cast<double>(stitch.width()) / std::max(1, stitch.leaves);
}

constexpr int widestFan = 3; // wider symbols would have heads that lie nearly level

// Heads over their columns: a fan, or from four columns on a comb.
void addHeads(Shapes& shapes, const Stitch& stitch, Point joint)
{
    const auto heads = headPlaces(stitch.leaves, stitch.width());
    const bool comb = stitch.width() > widestFan;
    if (comb)
        addComb(shapes, heads.back(), heads.front(), joint.y, joint.y - 0.12);
    for (int i = 0; i < stitch.leaves; ++i) {
        const double x = heads[static_cast<std::size_t>(i)];
        const bool outer = i == 0 || i == stitch.leaves - 1;
        const Point from = comb ? Point{x, outer ? joint.y - 0.12 : joint.y} : joint;
        addHead(shapes, from, {x, headLine}, headKind(stitch, i), headsDiffer(stitch), headRoom(stitch));
    }
}

constexpr int mostLegs = 5; // more would run together: then three legs and a larger number

// The number of loops, small, where legs are too many to be counted at a glance.
void addCount(Shapes& shapes, int number, Point centre)
{
    add(shapes, numeral(number, {centre.x, centre.y + 0.04}, number > mostLegs ? 0.38 : 0.3), 0.06);
}

void decrease(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    auto feet = footPlaces(stitch.takesUp > mostLegs ? 3 : stitch.takesUp, stitch.width());
    const bool many = stitch.takesUp >= 4;
    if (stitch.lean == Lean::Left || stitch.lean == Lean::Right) {
        const bool right = stitch.lean == Lean::Right;
        if (!right)
            std::reverse(feet.begin(), feet.end()); // the leg that ends on top comes first
        const double reach = w > 1 ? w / 2 - 0.2 : 0.32;
        const Point foot{feet.front(), footLine};
        const Point head{w / 2 + (right ? reach : -reach), headLine};
        const Point joint = between(foot, head, stitch.takesUp == 2 ? 0.4 : 0.5);
        if (stitch.drawing == DrawnAs::ThroughBack) { // a loop at the foot of the leg on top
            add(shapes, ring(between(foot, head, 0.12), 0.11));
            add(shapes, segment(between(foot, head, 0.25), head));
        } else {
            add(shapes, segment(foot, head));
        }
        for (std::size_t i = 1; i < feet.size(); ++i)
            add(shapes, segment({feet[i], footLine}, joint));
        if (many && stitch.manner != Manner::PairWorked)
            addCount(shapes, stitch.takesUp, {w / 2 + (right ? -0.29 : 0.29), 0.27});
        return;
    }
    const Point joint{w / 2, footLine - (footLine - headLine) * (stitch.takesUp == 2 || many ? 0.5 : 0.6)};
    for (const double foot : feet)
        if (std::abs(foot - joint.x) > 0.01)
            add(shapes, segment({foot, footLine}, joint));
    if (feet.size() % 2 == 1)
        add(shapes, segment({w / 2, footLine}, joint));
    add(shapes, segment(joint, {w / 2, headLine}));
    if (many && stitch.manner != Manner::PairWorked)
        addCount(shapes, stitch.takesUp, {w / 2 + 0.27, 0.28});
}

void increase(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const auto heads = headPlaces(stitch.leaves, stitch.width());
    if ((stitch.lean == Lean::Left || stitch.lean == Lean::Right) && stitch.leaves == 2) {
        // The stitch goes straight up; the new one branches off to the side it leans.
        const bool right = stitch.lean == Lean::Right;
        const double stem = right ? heads[1] : heads[0], branch = right ? heads[0] : heads[1];
        add(shapes, segment({stem, footLine}, {stem, headLine}));
        addHead(shapes, {stem, 0.6}, {branch, headLine}, headKind(stitch, right ? 0 : 1), headsDiffer(stitch),
                headRoom(stitch));
        return;
    }
    const bool intoBothLegs = stitch.drawing == DrawnAs::ThroughBack;
    if (w == 1 && stitch.leaves > 3) { // too many for one cell: the outer heads and their number
        const Point fork{0.5, 0.64};
        add(shapes, segment({0.5, footLine}, fork));
        add(shapes, polyline({{0.1, headLine}, fork, {0.9, headLine}}));
        add(shapes, numeral(stitch.leaves, {0.5, 0.25}, 0.32), 0.06);
        return;
    }
    const Point joint{w / 2, intoBothLegs ? 0.6 : w > widestFan ? 0.5 : w > 1 ? 0.62 : 0.55};
    if (intoBothLegs)
        add(shapes, ring({w / 2, footLine - 0.1}, 0.12));
    else
        add(shapes, segment({w / 2, footLine}, joint));
    addHeads(shapes, stitch, joint);
}

void regroup(Shapes& shapes, const Stitch& stitch) // several into several
{
    const double w = stitch.width();
    auto feet = footPlaces(stitch.takesUp, stitch.width());
    if (stitch.lean == Lean::Left || stitch.lean == Lean::Right) {
        const auto heads = headPlaces(stitch.leaves, stitch.width());
        const bool right = stitch.lean == Lean::Right;
        const Point foot{right ? feet.front() : feet.back(), footLine};
        const Point head{right ? heads.front() : heads.back(), headLine};
        add(shapes, segment(foot, head));
        // Joints apart from each other, so that it doesn't look like a crossing.
        for (const double x : feet)
            if (x != foot.x)
                add(shapes, segment({x, footLine}, between(foot, head, 0.35)));
        for (std::size_t i = 0; i < heads.size(); ++i)
            if (heads[i] != head.x)
                addHead(shapes, between(foot, head, 0.65), {heads[i], headLine},
                        headKind(stitch, static_cast<int>(i)), headsDiffer(stitch), headRoom(stitch));
        return;
    }
    const Point below{w / 2, 0.6}, above{w / 2, 0.42}; // a neck between feet and heads
    const bool comb = feet.size() > static_cast<std::size_t>(widestFan);
    if (comb)
        addComb(shapes, feet.front(), feet.back(), below.y, below.y + 0.12);
    for (const double x : feet) {
        const bool outer = x == feet.front() || x == feet.back();
        add(shapes, segment({x, footLine}, comb ? Point{x, outer ? below.y + 0.12 : below.y} : below));
    }
    add(shapes, segment(below, above));
    addHeads(shapes, stitch, above);
}

// Worked into the loops of a multiple yarn over: its rings are the feet.
void intoYarnOver(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width(), y = 0.68, radius = w > 1 ? 0.16 : 0.13;
    std::vector<double> rings;
    for (int i = 0; i < stitch.takesUp; ++i)
        rings.push_back(w > 1 ? (i + 0.5) * w / stitch.takesUp
                              : 0.5 + (i - (stitch.takesUp - 1) / 2.0) * 0.5);
    for (std::size_t i = 0; i < rings.size(); ++i) {
        add(shapes, ring({rings[i], y}, radius));
        if (i > 0)
            add(shapes, segment({rings[i - 1] + radius, y}, {rings[i] - radius, y}));
    }
    const auto heads = headPlaces(stitch.leaves, stitch.width());
    for (int i = 0; i < stitch.leaves; ++i) {
        // Each ring has its own heads where they share out evenly; otherwise all rise from the middle.
        const bool shared = stitch.leaves % stitch.takesUp != 0;
        const std::size_t own =
            rings.size() - 1 -
            std::min(rings.size() - 1, static_cast<std::size_t>(i * stitch.takesUp / stitch.leaves));
        const Point joint = shared ? Point{w / 2, y} : Point{rings[own], y - radius};
        addHead(shapes, joint, {heads[static_cast<std::size_t>(i)], headLine}, headKind(stitch, i),
                headsDiffer(stitch), headRoom(stitch));
    }
}

} // namespace

std::vector<double> headPlaces(int leaves, int width)
{
    std::vector<double> places;
    if (leaves == width)
        for (int i = 0; i < leaves; ++i)
            places.push_back(width - i - 0.5);
    else if (leaves > 0) {
        places = spread(leaves, leaves == 2 ? 0.2 : 0.12, width - (leaves == 2 ? 0.2 : 0.12));
        std::reverse(places.begin(), places.end());
    }
    return places;
}

std::vector<double> footPlaces(int takesUp, int width)
{
    if (width > 1) {
        if (takesUp == width)
            return spread(takesUp, 0.5, width - 0.5);
        const double span = std::min(width - 0.34, 0.36 * (takesUp - 1) + 0.2);
        return spread(takesUp, (width - span) / 2, (width + span) / 2);
    }
    const double inset = takesUp >= 4 ? 0.08 : 0.17;
    return spread(takesUp, inset, 1 - inset);
}

HeadKind headKind(const Stitch& stitch, int head)
{
    if (head < static_cast<int>(stitch.heads.size()))
        return stitch.heads[static_cast<std::size_t>(head)];
    return stitch.face == Face::Purl ? HeadKind::Purl : HeadKind::Knit;
}

bool headsDiffer(const Stitch& stitch)
{
    const auto has = [&](HeadKind kind) {
        return std::find(stitch.heads.begin(), stitch.heads.end(), kind) != stitch.heads.end();
    };
    return has(HeadKind::Purl) &&
           (has(HeadKind::Knit) || (has(HeadKind::YarnOver) && stitch.face == Face::Knit));
}

void drawLoops(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    if (stitch.family == Family::YarnOver && stitch.takesUp > 1 && stitch.leaves > 0)
        intoYarnOver(shapes, stitch);
    else if (stitch.takesUp >= 1 && stitch.leaves >= 2)
        stitch.takesUp == 1 ? increase(shapes, stitch) : regroup(shapes, stitch);
    else if (stitch.takesUp >= 2 && stitch.leaves == 1)
        decrease(shapes, stitch);
    else if (stitch.takesUp == 0 && stitch.leaves > 0) {
        // New loops from a level strand.
        add(shapes, segment({w / 2 - 0.25, footLine}, {w / 2 + 0.25, footLine}));
        addHeads(shapes, stitch, {w / 2, footLine});
    } else if (stitch.leaves == 0 && stitch.takesUp > 0) {
        // Loops that end here.
        for (const double foot : footPlaces(stitch.takesUp, stitch.width()))
            add(shapes, segment({foot, footLine}, {w / 2 + (foot - w / 2) * 0.4, 0.4}));
        add(shapes, segment({w / 2 - 0.3, 0.36}, {w / 2 + 0.3, 0.36}));
    } else if (stitch.takesUp == 1) {
        add(shapes, segment({w / 2, footLine}, {w / 2, headLine}));
    }
}

} // namespace shawlwright::chart
