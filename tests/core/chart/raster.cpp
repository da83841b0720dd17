#include "tests/core/chart/raster.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

using Line = std::vector<Point>;

// Curves as 12 straight pieces; a closed part comes back to its start.
std::vector<Line> flattened(const Path& path)
{
    std::vector<Line> lines;
    std::size_t at = 0;
    for (const Verb verb : path.verbs) {
        switch (verb) {
        case Verb::Move:
            lines.push_back({path.points[at++]});
            break;
        case Verb::Line:
            lines.back().push_back(path.points[at++]);
            break;
        case Verb::Curve: {
            const Point a = lines.back().back(), b = path.points[at], c = path.points[at + 1],
                        d = path.points[at + 2];
            at += 3;
            for (int i = 1; i <= 12; ++i) {
                const double t = i / 12.0, u = 1 - t;
                lines.back().push_back(
                    {u * u * u * a.x + 3 * u * u * t * b.x + 3 * u * t * t * c.x + t * t * t * d.x,
                     u * u * u * a.y + 3 * u * u * t * b.y + 3 * u * t * t * c.y + t * t * t * d.y});
            }
            break;
        }
        case Verb::Close:
            lines.back().push_back(lines.back().front());
            break;
        }
    }
    return lines;
}

double distance(Point p, Point a, Point b)
{
    const double dx = b.x - a.x, dy = b.y - a.y, length = dx * dx + dy * dy;
    const double t = length == 0 ? 0 : std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / length, 0.0, 1.0);
    return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

bool inside(Point p, const std::vector<Line>& lines)
{
    bool in = false;
    for (const Line& line : lines)
        for (std::size_t i = 0; i + 1 < line.size(); ++i) {
            const Point a = line[i], b = line[i + 1];
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
                in = !in;
        }
    return in;
}

} // namespace

std::vector<double> raster(const Symbol& symbol, int pixels)
{
    struct Part {
        std::vector<Line> lines;
        double half = 0; // of a stroke; 0: a fill
        bool ink = true;
    };
    std::vector<Part> parts;
    for (const Shape& shape : symbol.shapes) {
        if (const auto* stroke = std::get_if<Stroke>(&shape)) // at least one pixel wide
            parts.push_back({flattened(stroke->path), std::max(stroke->width, 1.0 / pixels) / 2,
                             stroke->ink != Ink::Paper});
        else if (const auto* fill = std::get_if<Fill>(&shape))
            parts.push_back({flattened(fill->path), 0, fill->ink != Ink::Paper});
    }
    const int width = symbol.width * pixels, samples = 5;
    std::vector<double> picture(static_cast<std::size_t>(width * pixels));
    for (int y = 0; y < pixels; ++y)
        for (int x = 0; x < width; ++x)
            for (int s = 0; s < samples * samples; ++s) {
                const Point p{(x + (s % samples + 0.5) / samples) / pixels,
                              (y + (s / samples + 0.5) / samples) / pixels};
                bool ink = false;
                for (const Part& part : parts) {
                    bool hit = part.half == 0 && inside(p, part.lines);
                    for (std::size_t l = 0; !hit && part.half > 0 && l < part.lines.size(); ++l)
                        for (std::size_t i = 0; !hit && i + 1 < part.lines[l].size(); ++i)
                            hit = distance(p, part.lines[l][i], part.lines[l][i + 1]) <= part.half;
                    if (hit)
                        ink = part.ink;
                }
                picture[static_cast<std::size_t>(y * width + x)] += ink ? 1.0 / (samples * samples) : 0;
            }
    return picture;
}

double difference(const std::vector<double>& a, const std::vector<double>& b)
{
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += std::abs(a[i] - b[i]);
    return sum;
}

} // namespace shawlwright::chart
