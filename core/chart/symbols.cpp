#include "core/chart/symbols.h"

#include "core/chart/symbol_parts.h"
#include "core/chart/touches.h"

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
    if (touchOf(stitch) == Touch::OtherWay)
        add(shapes, segment({0.46, 0.76}, {0.14, 0.88}));
}

void slip(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const Touch touch = touchOf(stitch);
    if (touch == Touch::Knitwise) { // the wedge crosses itself at the foot
        add(shapes, segment({w / 2 - 0.3, 0.2}, {w / 2 + 0.14, 0.84}));
        add(shapes, segment({w / 2 + 0.3, 0.2}, {w / 2 - 0.14, 0.84}));
        return;
    }
    add(shapes, polyline({{w / 2 - 0.3, 0.2}, {w / 2, 0.8}, {w / 2 + 0.3, 0.2}}));
    if (touch == Touch::YarnBehind)
        add(shapes, segment({w / 2 - 0.17, 0.2}, {w / 2 + 0.17, 0.2}));
}

void throughBack(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    if (stitch.takesUp >= 2) {
        drawLoops(shapes, stitch);
        return;
    }
    const double x = w / 2;
    add(shapes, Path()
                    .move({x - 0.26, footLine})
                    .curve({x + 0.04, 0.74}, {x + 0.24, 0.5}, {x + 0.24, 0.37})
                    .curve({x + 0.24, 0.09}, {x - 0.24, 0.09}, {x - 0.24, 0.37})
                    .curve({x - 0.24, 0.5}, {x - 0.04, 0.74}, {x + 0.26, footLine}));
    if (stitch.leaves >= 2)
        add(shapes, numeral(stitch.leaves, {x, 0.38}, 0.24), 0.055);
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
        add(shapes, Path().move({w / 2, 0.8}).curve({w / 2, 0.56}, {w / 2 + side * 0.28, 0.56}, {w / 2 + side * 0.28, headLine}));
        return;
    }
    // No lean: a loop laid on the needle, crossing itself.
    add(shapes, Path().move({w / 2 - 0.14, 0.8}).curve({w / 2 + 0.4, 0.5}, {w / 2 + 0.3, headLine}, {w / 2, headLine}).curve({w / 2 - 0.3, headLine}, {w / 2 - 0.4, 0.5}, {w / 2 + 0.14, 0.8}));
}

void cap(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const double half = std::max(0.3, w / 2 - 0.2);
    add(shapes, arch({w / 2 - half, 0.62}, {w / 2 + half, 0.62}, 0.32));
    for (int i = 1; i < stitch.takesUp; ++i) // several bound off as one: a foot each beneath
        add(shapes, segment({w / 2 + (i - stitch.takesUp / 2.0) * 0.24, 0.6}, {w / 2 + (i - stitch.takesUp / 2.0) * 0.24, footLine}));
}

void cup(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const double half = std::max(0.3, w / 2 - 0.2);
    add(shapes, arch({w / 2 - half, 0.38}, {w / 2 + half, 0.38}, -0.32));
    switch (touchOf(stitch)) {
    case Touch::Loop:
        add(shapes, ring({w / 2, 0.4}, 0.13));
        break;
    case Touch::PickedUp:
        add(shapes, segment({w / 2, 0.7}, {w / 2, 0.14}));
        break;
    default:
        break;
    }
}

void disc(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const Touch touch = touchOf(stitch);
    const Point centre{w / 2, touch == Touch::ClosedAtOnce ? 0.56 : 0.5};
    const int number = stitch.drawingNumber > 0 ? stitch.drawingNumber : std::max(stitch.leaves, stitch.takesUp);
    const double height = number > 9 ? 0.28 : 0.36;
    if (touch == Touch::Bobble) {
        add(shapes, ring(centre, 0.34));
        add(shapes, numeral(number, centre, height), 0.065);
        return;
    }
    shapes.push_back(Fill{ring(centre, 0.34), Ink::Symbol, {}});
    shapes.push_back(Stroke{numeral(number, centre, height), 0.07, Ink::Paper, false});
    if (touch == Touch::ClosedAtOnce)
        add(shapes, segment({w / 2 - 0.3, 0.12}, {w / 2 + 0.3, 0.12}));
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
    // The stitch, and beside its foot what the turn left there and is worked with it: as the turn marks show it.
    const double x = stitch.width() / 2.0;
    switch (touchOf(stitch)) {
    case Touch::WithDouble:
        add(shapes, segment({x - 0.16, footLine}, {x - 0.16, 0.52}));
        add(shapes, segment({x + 0.16, footLine}, {x + 0.16, 0.52}));
        add(shapes, arch({x - 0.16, 0.52}, {x + 0.16, 0.52}, 0.16));
        add(shapes, segment({x, 0.36}, {x, headLine}));
        return;
    case Touch::WithYarnOver:
        add(shapes, segment({x - 0.14, footLine}, {x - 0.14, headLine}));
        add(shapes, ring({x + 0.18, 0.66}, 0.17));
        return;
    case Touch::WithPin:
        add(shapes, segment({x, footLine}, {x, headLine}));
        add(shapes, segment({x - 0.3, 0.76}, {x + 0.24, 0.48}));
        shapes.push_back(Fill{ring({x + 0.26, 0.47}, 0.11), Ink::Symbol, {}});
        return;
    case Touch::WithTwin:
        add(shapes, segment({x, footLine}, {x, headLine}));
        add(shapes, segment({x - 0.25, 0.55}, {x + 0.25, 0.55}));
        add(shapes, segment({x - 0.25, 0.75}, {x + 0.25, 0.75}));
        return;
    default:
        add(shapes, segment({x, 0.7}, {x, headLine}));
        add(shapes, Path().move({x + 0.26, 0.5}).curve({x + 0.26, 0.95}, {x - 0.26, 0.95}, {x - 0.26, 0.5}));
        return;
    }
}

void doubleLeg(Shapes& shapes, const Stitch& stitch)
{
    const double x = stitch.width() / 2.0;
    if (stitch.manner == Manner::DoubleTurn) { // drawn up: both legs over the needle
        add(shapes, polyline({{x - 0.2, footLine}, {x, headLine}, {x + 0.2, footLine}}));
        add(shapes, segment({x - 0.1, 0.5}, {x + 0.1, 0.5}));
        return;
    }
    add(shapes, segment({x - 0.14, footLine}, {x - 0.14, 0.5})); // both legs worked as one
    add(shapes, segment({x + 0.14, footLine}, {x + 0.14, 0.5}));
    add(shapes, arch({x - 0.14, 0.5}, {x + 0.14, 0.5}, 0.14));
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
    const double top = wrapOnly ? 0.46 : headLine + 0.04;
    // Own dashes, the same on every painter.
    for (double y = top; y < footLine; y += 0.2)
        add(shapes, segment({x, y}, {x, std::min(y + 0.08, footLine)}));
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
    if (touchOf(stitch) == Touch::Twist)
        return drawLoops(shapes, stitch);
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
        Path& path = std::holds_alternative<Fill>(shape) ? std::get<Fill>(shape).path : std::get<Stroke>(shape).path;
        for (Point& p : path.points)
            p.y = p.y * 0.88 - 0.025;
    }
    add(shapes, segment({0.28, 0.9}, {width - 0.28, 0.9}));
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
    if (stitch.drawingNumber > 0 && (stitch.drawing == DrawnAs::ByLoops || stitch.drawing == DrawnAs::ThroughBack))
        add(symbol.shapes, numeral(stitch.drawingNumber, {symbol.width - 0.2, 0.24}, 0.26), 0.055);
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
