// The marks of turning, sliding, binding off and breaking the yarn. A turn is a post with a flag; the way the
// gap is closed later is told by what stands at the post's foot.
#include "core/chart/symbol_parts.h"

namespace shawlwright::chart {

namespace {

void addMark(Shapes& shapes, Path path, double width = 0.09)
{
    shapes.push_back(Stroke{std::move(path), width, Ink::TurnMark, false});
}

void mirror(Shapes& shapes)
{
    for (Shape& shape : shapes) {
        Path& path =
            std::holds_alternative<Fill>(shape) ? std::get<Fill>(shape).path : std::get<Stroke>(shape).path;
        for (Point& p : path.points)
            p.x = -p.x;
    }
}

} // namespace

Symbol turnMark(TurnMethod method, Side side)
{
    // Drawn as after a right-side row: the worked cells lie to the right of x = 0, the next row goes to the
    // right.
    Symbol mark;
    const double post = -0.55;
    Path flag;
    flag.move({post, 0.12}).line({-0.1, 0.28}).line({post, 0.44}).close();
    mark.shapes.push_back(Fill{flag, Ink::TurnMark, {}});
    addMark(mark.shapes, segment({post, 0.12}, {post, 0.88}));
    switch (method) {
    case TurnMethod::Plain:
        break;
    case TurnMethod::WrapAndTurn: // the yarn round the foot
        addMark(mark.shapes, Path().move({post, 0.88}).curve({-0.3, 0.98}, {-0.1, 0.9}, {-0.14, 0.64}));
        break;
    case TurnMethod::DoubleStitch: // a second leg
        addMark(mark.shapes, segment({-0.28, 0.5}, {-0.28, 0.88}));
        break;
    case TurnMethod::YarnOver:
        addMark(mark.shapes, ring({-0.26, 0.7}, 0.15), 0.08);
        break;
    case TurnMethod::PinnedYarn: // a pin stuck through
        addMark(mark.shapes, segment({-0.86, 0.88}, {-0.2, 0.66}));
        mark.shapes.push_back(Fill{ring({-0.17, 0.65}, 0.11), Ink::TurnMark, {}});
        break;
    case TurnMethod::TwinStitch: // two alike
        addMark(mark.shapes, segment({-0.8, 0.64}, {-0.18, 0.64}));
        addMark(mark.shapes, segment({-0.8, 0.84}, {-0.18, 0.84}));
        break;
    }
    if (side == Side::WS)
        mirror(mark.shapes);
    return mark;
}

Symbol slideMark(Side side)
{
    // After a right-side row the next one starts at the right again.
    Symbol mark;
    const auto x = [side](double right) { return side == Side::RS ? right : 1 - right; };
    addMark(mark.shapes, segment({x(0.14), 0.5}, {x(0.86), 0.5}), 0.07);
    addMark(mark.shapes, polyline({{x(0.64), 0.3}, {x(0.86), 0.5}, {x(0.64), 0.7}}), 0.07);
    addMark(mark.shapes, segment({x(0.14), 0.3}, {x(0.14), 0.7}), 0.07);
    return mark;
}

Symbol bindOffMark()
{
    Symbol mark;
    for (int i = 0; i < 3; ++i)
        addMark(mark.shapes, arch({0.08 + i * 0.28, 0.62}, {0.36 + i * 0.28, 0.62}, 0.26), 0.07);
    return mark;
}

Symbol breakYarnMark()
{
    Symbol mark;
    addMark(mark.shapes, segment({0.1, 0.5}, {0.38, 0.5}), 0.07);
    addMark(mark.shapes, segment({0.62, 0.5}, {0.9, 0.5}), 0.07);
    addMark(mark.shapes, segment({0.4, 0.76}, {0.6, 0.24}), 0.07);
    return mark;
}

} // namespace shawlwright::chart
