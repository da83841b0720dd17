#include "core/chart/symbols.h"

#include "core/chart/symbol_parts.h"

#include <algorithm>

namespace shawlwright::chart {

namespace {

void rings(Shapes& shapes, const Stitch& stitch)
{
    const int count = std::max(1, stitch.leaves);
    const double step = static_cast<double>(stitch.width()) / count;
    const double radius = std::min(0.26, step * 0.36);
    for (int i = 0; i < count; ++i) {
        const double x = (i + 0.5) * step;
        add(shapes, ring({x, 0.5}, radius));
        if (i > 0)
            add(shapes, segment({x - step + radius, 0.5}, {x - radius, 0.5}));
    }
}

void slip(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    add(shapes, polyline({{w / 2 - 0.3, 0.2}, {w / 2, 0.8}, {w / 2 + 0.3, 0.2}}));
}

void throughBack(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    if (stitch.takesUp >= 2 || stitch.leaves >= 2) {
        drawLoops(shapes, stitch);
        return;
    }
    const double x = w / 2;
    add(shapes, Path()
                    .move({x - 0.26, footLine})
                    .curve({x + 0.04, 0.74}, {x + 0.24, 0.5}, {x + 0.24, 0.37})
                    .curve({x + 0.24, 0.09}, {x - 0.24, 0.09}, {x - 0.24, 0.37})
                    .curve({x - 0.24, 0.5}, {x - 0.04, 0.74}, {x + 0.26, footLine}));
}

void raised(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    if (stitch.takesUp >= 1) {
        // Beside the stitch that goes on, the new one rises from the strand or loop below.
        const bool right = stitch.lean == Lean::Right;
        const double stem = w / 2 + (right ? -0.25 : 0.25) * w, branch = w / 2 + (right ? 0.25 : -0.25) * w;
        add(shapes, segment({stem, footLine}, {stem, headLine}));
        add(shapes, Path().move({stem, 0.72}).curve({branch, 0.66}, {branch, 0.5}, {branch, headLine}));
        return;
    }
    add(shapes, segment({w / 2 - 0.24, 0.8}, {w / 2 + 0.24, 0.8}));
    if (stitch.leaves >= 2) {
        add(shapes, segment({w / 2, 0.8}, {w / 2, 0.58}));
        const auto heads = headPlaces(stitch.leaves, stitch.width());
        for (const double x : heads)
            add(shapes, segment({w / 2, 0.58}, {x, headLine}));
        return;
    }
    if (stitch.lean == Lean::Left || stitch.lean == Lean::Right) {
        const double side = stitch.lean == Lean::Right ? 1 : -1;
        add(shapes, Path()
                        .move({w / 2, 0.8})
                        .curve({w / 2, 0.56}, {w / 2 + side * 0.28, 0.56}, {w / 2 + side * 0.28, headLine}));
        return;
    }
    // No lean: a loop laid on the needle, crossing itself.
    add(shapes, Path()
                    .move({w / 2 - 0.14, 0.8})
                    .curve({w / 2 + 0.4, 0.5}, {w / 2 + 0.3, headLine}, {w / 2, headLine})
                    .curve({w / 2 - 0.3, headLine}, {w / 2 - 0.4, 0.5}, {w / 2 + 0.14, 0.8}));
}

void cap(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const double half = std::max(0.3, w / 2 - 0.2);
    add(shapes, arch({w / 2 - half, 0.62}, {w / 2 + half, 0.62}, 0.32));
    for (int i = 1; i < stitch.takesUp; ++i) // several bound off as one: a foot each beneath
        add(shapes, segment({w / 2 + (i - stitch.takesUp / 2.0) * 0.24, 0.6},
                            {w / 2 + (i - stitch.takesUp / 2.0) * 0.24, footLine}));
}

void cup(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const double half = std::max(0.3, w / 2 - 0.2);
    add(shapes, arch({w / 2 - half, 0.38}, {w / 2 + half, 0.38}, -0.32));
    if (stitch.manner == Manner::CastOn)
        add(shapes, segment({w / 2, 0.7}, {w / 2, headLine})); // drawn up through an edge
}

void disc(Shapes& shapes, const Stitch& stitch)
{
    const Point centre{stitch.width() / 2.0, 0.5};
    const int number =
        stitch.drawingNumber > 0 ? stitch.drawingNumber : std::max(stitch.leaves, stitch.takesUp);
    shapes.push_back(Fill{ring(centre, 0.36), Ink::Symbol, {}});
    shapes.push_back(Stroke{numeral(number, centre, number > 9 ? 0.28 : 0.38), 0.07, Ink::Paper, false});
}

void wrapped(Shapes& shapes, const Stitch& stitch)
{
    // Strands that go on as they are, bound together by the yarn; a new loop beside them is not.
    const int heads = std::max(1, stitch.leaves);
    const auto places = headPlaces(heads, stitch.width());
    double first = stitch.width(), last = 0;
    for (int i = 0; i < heads; ++i) {
        const double x = places[static_cast<std::size_t>(i)];
        if (headKind(stitch, i) == HeadKind::YarnOver) {
            add(shapes, ring({x, 0.5}, 0.26));
            continue;
        }
        add(shapes, segment({x, footLine}, {x, headLine}));
        first = std::min(first, x);
        last = std::max(last, x);
    }
    if (first <= last)
        add(shapes, ring({(first + last) / 2, 0.54}, (last - first) / 2 + 0.26, 0.15));
}

void hook(Shapes& shapes, const Stitch& stitch)
{
    // The stitch, and the wrap round its foot.
    const double x = stitch.width() / 2.0;
    add(shapes, segment({x, 0.8}, {x, headLine}));
    add(shapes, Path().move({x + 0.26, 0.5}).curve({x + 0.26, 0.92}, {x - 0.26, 0.92}, {x - 0.26, 0.5}));
}

void doubleLeg(Shapes& shapes, const Stitch& stitch)
{
    const double x = stitch.width() / 2.0;
    if (stitch.manner == Manner::DoubleTurn) { // drawn up: both legs lie over the needle
        add(shapes, polyline({{x - 0.22, footLine}, {x, headLine}, {x + 0.22, footLine}}));
        return;
    }
    add(shapes, polyline({{x - 0.16, footLine}, {x - 0.16, 0.52}})); // both legs worked as one
    add(shapes, polyline({{x + 0.16, footLine}, {x + 0.16, 0.52}}));
    add(shapes, arch({x - 0.16, 0.52}, {x + 0.16, 0.52}, 0.16));
    add(shapes, segment({x, 0.36}, {x, headLine}));
}

void elongated(Shapes& shapes, const Stitch& stitch)
{
    const double x = stitch.width() / 2.0;
    if (stitch.drawingNumber < 2) { // drawn up from the row below
        add(shapes, polyline({{x - 0.13, 0.92}, {x - 0.13, 0.3}}));
        add(shapes, arch({x - 0.13, 0.3}, {x + 0.13, 0.3}, 0.14));
        add(shapes, polyline({{x + 0.13, 0.3}, {x + 0.13, 0.92}}));
        return;
    }
    add(shapes, segment({x, footLine}, {x, headLine}));
    const int wraps = std::min(stitch.drawingNumber, 4);
    for (int i = 0; i < wraps; ++i) {
        const double y = 0.5 + (i - (wraps - 1) / 2.0) * 0.21;
        add(shapes, segment({x - 0.24, y + 0.06}, {x + 0.24, y - 0.06}));
    }
    if (stitch.drawingNumber > wraps)
        add(shapes, numeral(stitch.drawingNumber, {x + 0.32, 0.78}, 0.24), 0.055);
}

void dashed(Shapes& shapes, const Stitch& stitch)
{
    const double x = stitch.width() / 2.0;
    const bool wrapOnly = stitch.takesUp == 0 || stitch.drawingNumber > 0;
    // Own dashes, the same on every painter.
    for (double y = wrapOnly ? 0.5 : headLine; y < footLine - 0.05; y += 0.31)
        add(shapes, segment({x, y}, {x, y + 0.06}));
    if (wrapOnly)
        add(shapes, arch({x - 0.26, 0.36}, {x + 0.26, 0.36}, 0.2));
    if (stitch.leaves > 0)
        add(shapes, segment({x - 0.22, headLine}, {x + 0.22, headLine}));
}

void level(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    add(shapes, segment({0.28, 0.5}, {w - 0.28, 0.5}));
}

void generated(Shapes& shapes, const Stitch& stitch)
{
    if (stitch.manner == Manner::PairWorked)
        return drawBrioche(shapes, stitch);
    switch (stitch.drawing) {
    case DrawnAs::Empty:
        return;
    case DrawnAs::Bar:
        return level(shapes, stitch);
    case DrawnAs::ByLoops:
        return drawLoops(shapes, stitch);
    case DrawnAs::Ring:
        return rings(shapes, stitch);
    case DrawnAs::Slip:
        return slip(shapes, stitch);
    case DrawnAs::ThroughBack:
        return throughBack(shapes, stitch);
    case DrawnAs::Hood:
    case DrawnAs::SlipHood:
        return drawBrioche(shapes, stitch);
    case DrawnAs::Raised:
        return raised(shapes, stitch);
    case DrawnAs::Cap:
        return cap(shapes, stitch);
    case DrawnAs::Cup:
        return cup(shapes, stitch);
    case DrawnAs::Disc:
        return disc(shapes, stitch);
    case DrawnAs::Crossing:
        return drawCrossing(shapes, stitch);
    case DrawnAs::Dashed:
        return dashed(shapes, stitch);
    case DrawnAs::Wrapped:
        return wrapped(shapes, stitch);
    case DrawnAs::Hook:
        return hook(shapes, stitch);
    case DrawnAs::DoubleLeg:
        return doubleLeg(shapes, stitch);
    case DrawnAs::Elongated:
        return elongated(shapes, stitch);
    }
}

} // namespace

bool drawnWithOwnBar(const Stitch& stitch)
{
    const bool plainHood = (stitch.drawing == DrawnAs::Hood || stitch.manner == Manner::PairWorked) &&
                           stitch.takesUp <= 1 && stitch.leaves <= 1;
    return stitch.drawing == DrawnAs::Empty || stitch.drawing == DrawnAs::Bar || plainHood;
}

void standOnBar(Shapes& shapes, int width)
{
    for (Shape& shape : shapes) {
        Path& path =
            std::holds_alternative<Fill>(shape) ? std::get<Fill>(shape).path : std::get<Stroke>(shape).path;
        for (Point& p : path.points)
            p.y = p.y * 0.88 - 0.025;
    }
    const double half = std::min(width / 2.0 - 0.28, 0.6);
    add(shapes, segment({width / 2.0 - half, 0.9}, {width / 2.0 + half, 0.9}));
}

Symbol symbolOf(const Stitch& stitch)
{
    Symbol symbol{stitch.width(), {}};
    if (!stitch.strokes.empty()) {
        const auto own = readStrokes(stitch.strokes);
        if (own.ok()) {
            for (const Path& path : own.value())
                add(symbol.shapes, path);
            return symbol;
        }
    }
    generated(symbol.shapes, stitch);
    if (stitch.face == Face::Purl && !drawnWithOwnBar(stitch))
        standOnBar(symbol.shapes, symbol.width);
    return symbol;
}

std::vector<Shape> symbolIn(const Symbol& symbol, const Rect& place)
{
    std::vector<Shape> shapes;
    const double byWidth = place.width / symbol.width, byHeight = place.height;
    const bool flat = symbol.width == 1;
    const double even = std::min(byWidth, byHeight);
    const double sx = flat ? even : byWidth, sy = flat ? even : std::min(byHeight, byWidth);
    const double dx = place.x + (place.width - sx * symbol.width) / 2, dy = place.y + (place.height - sy) / 2;
    for (const Shape& shape : symbol.shapes)
        shapes.push_back(moved(scaled(shape, sx, sy), dx, dy));
    return shapes;
}

} // namespace shawlwright::chart
