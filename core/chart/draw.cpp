#include "core/chart/draw.h"

#include <algorithm>
#include <string_view>

namespace shawlwright::chart {

namespace {
constexpr double quarter = 0.5523;
}

Path segment(Point from, Point to)
{
    return Path().move(from).line(to);
}

Path polyline(std::initializer_list<Point> points)
{
    Path path;
    for (const Point& p : points)
        path.verbs.empty() ? path.move(p) : path.line(p);
    return path;
}

Path ring(Point c, double rx, double ry)
{
    const double hx = rx * quarter, hy = ry * quarter;
    return Path()
        .move({c.x + rx, c.y})
        .curve({c.x + rx, c.y + hy}, {c.x + hx, c.y + ry}, {c.x, c.y + ry})
        .curve({c.x - hx, c.y + ry}, {c.x - rx, c.y + hy}, {c.x - rx, c.y})
        .curve({c.x - rx, c.y - hy}, {c.x - hx, c.y - ry}, {c.x, c.y - ry})
        .curve({c.x + hx, c.y - ry}, {c.x + rx, c.y - hy}, {c.x + rx, c.y})
        .close();
}

Path rectangle(const Rect& r)
{
    return Path()
        .move({r.x, r.y})
        .line({r.x + r.width, r.y})
        .line({r.x + r.width, r.y + r.height})
        .line({r.x, r.y + r.height})
        .close();
}

Path roundedRectangle(const Rect& r, double radius)
{
    const double k = std::min({radius, r.width / 2, r.height / 2});
    const double h = k * (1 - quarter);
    const double right = r.x + r.width, bottom = r.y + r.height;
    return Path()
        .move({r.x + k, r.y})
        .line({right - k, r.y})
        .curve({right - h, r.y}, {right, r.y + h}, {right, r.y + k})
        .line({right, bottom - k})
        .curve({right, bottom - h}, {right - h, bottom}, {right - k, bottom})
        .line({r.x + k, bottom})
        .curve({r.x + h, bottom}, {r.x, bottom - h}, {r.x, bottom - k})
        .line({r.x, r.y + k})
        .curve({r.x, r.y + h}, {r.x + h, r.y}, {r.x + k, r.y})
        .close();
}

Path arch(Point left, Point right, double height)
{
    const double middle = (left.x + right.x) / 2, top = (left.y + right.y) / 2 - height;
    const double hx = (right.x - left.x) / 2 * quarter, hy = height * quarter;
    return Path()
        .move(left)
        .curve({left.x, left.y - hy}, {middle - hx, top}, {middle, top})
        .curve({middle + hx, top}, {right.x, right.y - hy}, right);
}

namespace {

// The ten figures in a box of 0.6 x 1.
const Path& figure(int digit)
{
    static const Path figures[10] = {
        ring({0.3, 0.5}, 0.3, 0.5),
        polyline({{0.1, 0.2}, {0.35, 0}, {0.35, 1}}),
        Path()
            .move({0.02, 0.22})
            .curve({0.08, -0.1}, {0.6, -0.1}, {0.58, 0.28})
            .curve({0.56, 0.55}, {0.1, 0.75}, {0, 1})
            .line({0.6, 1}),
        Path()
            .move({0.02, 0.1})
            .curve({0.25, -0.08}, {0.58, 0}, {0.56, 0.25})
            .curve({0.55, 0.42}, {0.4, 0.48}, {0.22, 0.48})
            .curve({0.5, 0.47}, {0.6, 0.6}, {0.6, 0.74})
            .curve({0.6, 1.05}, {0.2, 1.08}, {0, 0.9}),
        polyline({{0.44, 1}, {0.44, 0}, {0, 0.7}, {0.6, 0.7}}),
        Path()
            .move({0.54, 0})
            .line({0.1, 0})
            .line({0.05, 0.45})
            .curve({0.3, 0.3}, {0.6, 0.4}, {0.6, 0.68})
            .curve({0.6, 1.02}, {0.2, 1.08}, {0, 0.9}),
        Path()
            .move({0.5, 0})
            .curve({0.2, 0.1}, {0, 0.4}, {0, 0.68})
            .curve({0, 1.1}, {0.6, 1.1}, {0.6, 0.68})
            .curve({0.6, 0.32}, {0.1, 0.3}, {0.02, 0.6}),
        polyline({{0, 0}, {0.6, 0}, {0.2, 1}}),
        Path()
            .move({0.3, 0.46})
            .curve({-0.05, 0.4}, {0, 0}, {0.3, 0})
            .curve({0.6, 0}, {0.65, 0.4}, {0.3, 0.46})
            .curve({-0.1, 0.52}, {-0.1, 1}, {0.3, 1})
            .curve({0.7, 1}, {0.7, 0.52}, {0.3, 0.46}),
        Path()
            .move({0.1, 1})
            .curve({0.4, 0.9}, {0.6, 0.6}, {0.6, 0.32})
            .curve({0.6, -0.1}, {0, -0.1}, {0, 0.32})
            .curve({0, 0.68}, {0.5, 0.7}, {0.58, 0.4}),
    };
    return figures[digit];
}

constexpr double figureStep = 0.85; // from one figure to the next, in heights

} // namespace

double numeralWidth(int number, double height)
{
    return (figureStep * static_cast<double>(std::to_string(std::max(0, number)).size() - 1) + 0.6) * height;
}

Path numeral(int number, Point centre, double height)
{
    Path path;
    double x = centre.x - numeralWidth(number, height) / 2;
    for (const char digit : std::to_string(std::max(0, number))) {
        Path one = figure(digit - '0');
        for (Point& p : one.points)
            p = {p.x * height, p.y * height};
        path.add(one, x, centre.y - height / 2);
        x += figureStep * height;
    }
    return path;
}

namespace {

Path mapped(Path path, double sx, double sy, double dx, double dy)
{
    for (Point& p : path.points)
        p = {p.x * sx + dx, p.y * sy + dy};
    return path;
}

Shape mapped(Shape shape, double sx, double sy, double dx, double dy)
{
    const double smaller = std::min(sx, sy);
    if (auto* fill = std::get_if<Fill>(&shape)) {
        fill->path = mapped(std::move(fill->path), sx, sy, dx, dy);
    } else if (auto* stroke = std::get_if<Stroke>(&shape)) {
        stroke->path = mapped(std::move(stroke->path), sx, sy, dx, dy);
        stroke->width *= smaller;
    } else {
        auto& text = std::get<Text>(shape);
        text.at = {text.at.x * sx + dx, text.at.y * sy + dy};
        text.size *= smaller;
    }
    return shape;
}

} // namespace

Shape moved(const Shape& shape, double dx, double dy)
{
    return mapped(shape, 1, 1, dx, dy);
}

Shape scaled(const Shape& shape, double factorX, double factorY)
{
    return mapped(shape, factorX, factorY, 0, 0);
}

double textWidth(const std::string& words, double size)
{
    double width = 0; // in parts of the size, generous rather than tight
    for (const char c : words) {
        const auto byte = static_cast<unsigned char>(c);
        if ((byte & 0xC0) == 0x80)
            continue; // the rest of a letter already counted
        if (byte >= 0xE0)
            width += 1; // scripts with wide letters
        else if (byte >= 0x80 || (c >= '0' && c <= '9'))
            width += 0.64;
        else if (std::string_view("ijlt.,:;'|!()[] ").find(c) != std::string_view::npos)
            width += 0.34;
        else if (std::string_view("MWmw@%").find(c) != std::string_view::npos)
            width += 0.92;
        else
            width += c >= 'A' && c <= 'Z' ? 0.72 : 0.58;
    }
    return width * size;
}

Rect united(const Rect& a, const Rect& b)
{
    if (a.width <= 0 && a.height <= 0)
        return b;
    if (b.width <= 0 && b.height <= 0)
        return a;
    const double left = std::min(a.x, b.x), top = std::min(a.y, b.y);
    return {left, top, std::max(a.x + a.width, b.x + b.width) - left,
            std::max(a.y + a.height, b.y + b.height) - top};
}

namespace {

// By the points and handles: never too small.
Rect pathBounds(const Path& path, double margin)
{
    if (path.points.empty())
        return {};
    double left = path.points[0].x, right = left, top = path.points[0].y, bottom = top;
    for (const Point& p : path.points) {
        left = std::min(left, p.x);
        right = std::max(right, p.x);
        top = std::min(top, p.y);
        bottom = std::max(bottom, p.y);
    }
    return {left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin};
}

Rect shapeBounds(const Shape& shape)
{
    if (const auto* fill = std::get_if<Fill>(&shape))
        return pathBounds(fill->path, 0);
    if (const auto* stroke = std::get_if<Stroke>(&shape))
        return pathBounds(stroke->path, stroke->width / 2);
    const auto& text = std::get<Text>(shape);
    const double width = textWidth(text.words, text.size);
    const double before = text.align == Align::Left ? 0 : text.align == Align::Right ? width : width / 2;
    return {text.at.x - before, text.at.y - 0.8 * text.size, width, text.size};
}

} // namespace

Rect boundsOf(const std::vector<Shape>& shapes)
{
    Rect all;
    for (const Shape& shape : shapes)
        all = united(all, shapeBounds(shape));
    return all;
}

} // namespace shawlwright::chart
