#include "core/base/text.h"
#include "core/chart/symbols.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

constexpr std::size_t mostPoints = 2000; // of all strokes of one drawing
constexpr int piecesOfCurve = 6;         // a ring becomes a figure of 24 corners

Point onCurve(Point from, Point handle1, Point handle2, Point to, double share)
{
    const double rest = 1 - share;
    const double a = rest * rest * rest, b = 3 * rest * rest * share, c = 3 * rest * share * share, d = share * share * share;
    return {a * from.x + b * handle1.x + c * handle2.x + d * to.x, a * from.y + b * handle1.y + c * handle2.y + d * to.y};
}

std::vector<Path> straightened(const Path& path)
{
    std::vector<Path> lines;
    std::size_t at = 0;
    Point first, now;
    for (const Verb verb : path.verbs)
        switch (verb) {
        case Verb::Move:
            first = now = path.points[at++];
            lines.push_back(Path().move(now));
            break;
        case Verb::Line:
            now = path.points[at++];
            lines.back().line(now);
            break;
        case Verb::Curve:
            for (int piece = 1; piece <= piecesOfCurve; ++piece)
                lines.back().line(onCurve(now, path.points[at], path.points[at + 1], path.points[at + 2],
                                          static_cast<double>(piece) / piecesOfCurve));
            now = path.points[at + 2];
            at += 3;
            break;
        case Verb::Close:
            if (now != first)
                lines.back().line(first);
            now = first;
            break;
        }
    return lines;
}

double rounded(double value)
{
    return std::round(value * 1000) / 1000;
}

} // namespace

Result<std::vector<Path>> readStrokes(std::string_view text)
{
    std::vector<Path> paths;
    std::size_t points = 0, at = 0;
    const auto refuse = [](std::string what) {
        return Fault{{},
                     "drawing of a stitch",
                     std::move(what) + "; write points as \"0.1,0.2 0.8,0.9\" and part strokes with ;"};
    };
    while (at <= text.size()) {
        const std::size_t end = std::min(text.find(';', at), text.size());
        std::string_view stroke = trimmed(text.substr(at, end - at));
        at = end + 1;
        Path path;
        while (!stroke.empty()) {
            const std::size_t space = std::min(stroke.find(' '), stroke.size());
            const std::string_view word = stroke.substr(0, space);
            stroke = trimmed(stroke.substr(space));
            const std::size_t comma = word.find(',');
            const auto x = comma == std::string_view::npos ? std::nullopt : readDouble(word.substr(0, comma));
            const auto y =
                comma == std::string_view::npos ? std::nullopt : readDouble(word.substr(comma + 1));
            if (!x || !y)
                return refuse("'" + std::string(word.substr(0, 40)) + "' is no point");
            if (!(*x >= 0 && *x <= mostLoopsPerStitch && *y >= 0 && *y <= 1))
                return refuse("the point " + std::string(word.substr(0, 40)) +
                              " lies outside of the cell (0 to 1)");
            if (++points > mostPoints)
                return refuse("more than " + toText(static_cast<int>(mostPoints)) + " points");
            path.verbs.empty() ? path.move({*x, *y}) : path.line({*x, *y});
        }
        if (path.points.size() == 1)
            return refuse("stroke " + toText(static_cast<int>(paths.size()) + 1) + " has one point only");
        if (!path.points.empty())
            paths.push_back(std::move(path));
    }
    if (paths.empty())
        return refuse("there is no stroke in it");
    return paths;
}

std::string writeStrokes(const std::vector<Path>& strokes)
{
    std::string text;
    for (const Path& stroke : strokes) {
        if (stroke.points.size() < 2)
            continue;
        text += text.empty() ? "" : ";";
        for (const Point& p : stroke.points) {
            text += text.empty() ? "" : " ";
            text += toText(rounded(p.x)) + "," + toText(rounded(p.y));
        }
    }
    return text;
}

std::vector<Path> strokesOf(const Symbol& symbol)
{
    std::vector<Path> strokes;
    for (const Shape& shape : symbol.shapes) {
        if (std::holds_alternative<Text>(shape))
            continue;
        const Path& path =
            std::holds_alternative<Fill>(shape) ? std::get<Fill>(shape).path : std::get<Stroke>(shape).path;
        for (Path& line : straightened(path)) {
            for (Point& p : line.points) // a drawing stays in its cells
                p = {std::clamp(rounded(p.x), 0.0, static_cast<double>(symbol.width)), std::clamp(rounded(p.y), 0.0, 1.0)};
            if (line.points.size() > 1)
                strokes.push_back(std::move(line));
        }
    }
    return strokes;
}

} // namespace shawlwright::chart
