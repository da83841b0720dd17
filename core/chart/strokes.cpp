#include "core/base/text.h"
#include "core/chart/symbols.h"

namespace shawlwright::chart {

namespace {
constexpr std::size_t mostPoints = 2000; // of all strokes of one drawing
}

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

} // namespace shawlwright::chart
