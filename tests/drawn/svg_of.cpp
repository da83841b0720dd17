#include "tests/drawn/svg_of.h"

#include "core/chart/inks.h"
#include "core/pattern/questions.h"

#include <cstdio>

namespace shawlwright::chart {

namespace {

std::string number(double value)
{
    char text[64];
    std::snprintf(text, sizeof text, "%.4f", value);
    return text;
}

std::string colour(Ink ink, YarnId yarn, const PatternHead& head)
{
    const Yarn* known = yarnOf(head, yarn);
    char text[16];
    std::snprintf(text, sizeof text, "#%06X", inkColour(ink, known ? known->colour : 0xFFFFFF));
    return text;
}

std::string d(const Path& path)
{
    std::string text;
    std::size_t next = 0;
    for (const Verb verb : path.verbs) {
        text += verb == Verb::Move ? "M" : verb == Verb::Line ? "L" : verb == Verb::Curve ? "C" : "Z";
        for (int i = verb == Verb::Close ? 0 : verb == Verb::Curve ? 3 : 1; i > 0; --i, ++next)
            text += number(path.points[next].x) + " " + number(path.points[next].y) + " ";
    }
    return text;
}

std::string escaped(const std::string& words)
{
    std::string text;
    for (const char c : words)
        text += c == '&' ? "&amp;" : c == '<' ? "&lt;" : std::string(1, c);
    return text;
}

} // namespace

std::string svgShapes(const std::vector<Shape>& shapes, const PatternHead& head)
{
    std::string svg;
    for (const Shape& shape : shapes) {
        if (const auto* fill = std::get_if<Fill>(&shape)) {
            svg += "<path d='" + d(fill->path) + "' fill='" + colour(fill->ink, fill->yarn, head) + "'/>\n";
        } else if (const auto* stroke = std::get_if<Stroke>(&shape)) {
            svg += "<path d='" + d(stroke->path) +
                   "' fill='none' stroke-linecap='round' stroke-linejoin='round' stroke='" +
                   colour(stroke->ink, {}, head) + "' stroke-width='" + number(stroke->width) + "'" +
                   (stroke->dashed ? " stroke-dasharray='" + number(stroke->width * 2) + " " +
                                         number(stroke->width * 2.5) + "'"
                                   : "") +
                   "/>\n";
        } else {
            const auto& text = std::get<Text>(shape);
            const char* anchor = text.align == Align::Left    ? "start"
                                 : text.align == Align::Right ? "end"
                                                              : "middle";
            svg += "<text x='" + number(text.at.x) + "' y='" + number(text.at.y) +
                   "' font-family='Inter,DejaVu Sans,sans-serif' font-size='" + number(text.size) +
                   "' text-anchor='" + anchor + "' fill='" + colour(text.ink, {}, head) + "'" +
                   (text.bold ? " font-weight='600'" : "") + ">" + escaped(text.words) + "</text>\n";
        }
    }
    return svg;
}

std::string svgOf(const Drawing& drawing, const PatternHead& head, double cell)
{
    const Rect& b = drawing.bounds;
    std::string svg = "<svg xmlns='http://www.w3.org/2000/svg' width='" + number(b.width * cell) +
                      "' height='" + number(b.height * cell) + "' viewBox='" + number(b.x) + " " +
                      number(b.y) + " " + number(b.width) + " " + number(b.height) + "'>\n<rect x='" +
                      number(b.x) + "' y='" + number(b.y) + "' width='" + number(b.width) + "' height='" +
                      number(b.height) + "' fill='white'/>\n";
    for (const Group& group : drawing.groups)
        svg += "<g>" + svgShapes(group.shapes, head) + "</g>\n";
    return svg + "</svg>\n";
}

} // namespace shawlwright::chart
