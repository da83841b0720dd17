#include "core/chart/shapes.h"

#include <cstdio>

namespace shawlwright::chart {

Path& Path::move(Point p)
{
    verbs.push_back(Verb::Move);
    points.push_back(p);
    return *this;
}

Path& Path::line(Point p)
{
    verbs.push_back(Verb::Line);
    points.push_back(p);
    return *this;
}

Path& Path::curve(Point handle1, Point handle2, Point end)
{
    verbs.push_back(Verb::Curve);
    points.insert(points.end(), {handle1, handle2, end});
    return *this;
}

Path& Path::close()
{
    verbs.push_back(Verb::Close);
    return *this;
}

Path& Path::add(const Path& other, double dx, double dy)
{
    verbs.insert(verbs.end(), other.verbs.begin(), other.verbs.end());
    points.reserve(points.size() + other.points.size());
    for (const Point& p : other.points)
        points.push_back({p.x + dx, p.y + dy});
    return *this;
}

namespace {

// Three places, without a sign on zero and without zeros at the end.
std::string number(double value)
{
    char text[64];
    std::snprintf(text, sizeof text, "%.3f", value);
    std::string result = text;
    while (result.back() == '0')
        result.pop_back();
    if (result.back() == '.')
        result.pop_back();
    return result == "-0" ? "0" : result;
}

std::string pathText(const Path& path)
{
    std::string text;
    std::size_t next = 0;
    for (const Verb verb : path.verbs) {
        text += verb == Verb::Move ? " M" : verb == Verb::Line ? " L" : verb == Verb::Curve ? " C" : " Z";
        const int count = verb == Verb::Close ? 0 : verb == Verb::Curve ? 3 : 1;
        for (int i = 0; i < count; ++i, ++next)
            text += (i > 0 ? " " : "") + number(path.points[next].x) + "," + number(path.points[next].y);
    }
    return text;
}

const char* inkName(Ink ink)
{
    switch (ink) {
    case Ink::Paper:
        return "paper";
    case Ink::GridLine:
        return "grid";
    case Ink::TenthLine:
        return "tenth";
    case Ink::Symbol:
        return "symbol";
    case Ink::NoStitch:
        return "no-stitch";
    case Ink::Resting:
        return "resting";
    case Ink::BoxLine:
        return "box";
    case Ink::BracketLine:
        return "bracket";
    case Ink::MarkerLine:
        return "marker";
    case Ink::TurnMark:
        return "turn";
    case Ink::Label:
        return "label";
    case Ink::SoftLabel:
        return "soft-label";
    case Ink::YarnTint:
        return "yarn-tint";
    case Ink::YarnFull:
        return "yarn";
    case Ink::FaultMark:
        return "fault";
    }
    return "";
}

std::string shapeText(const Shape& shape)
{
    if (const auto* fill = std::get_if<Fill>(&shape)) {
        std::string text = std::string("fill ") + inkName(fill->ink);
        if (fill->ink == Ink::YarnTint || fill->ink == Ink::YarnFull)
            text += " " + std::to_string(fill->yarn.value);
        return text + pathText(fill->path);
    }
    if (const auto* stroke = std::get_if<Stroke>(&shape))
        return std::string("stroke ") + inkName(stroke->ink) + " " + number(stroke->width) +
               (stroke->dashed ? " dashed" : "") + pathText(stroke->path);
    const auto& text = std::get<Text>(shape);
    const char* align = text.align == Align::Left ? "left" : text.align == Align::Right ? "right" : "centre";
    return std::string("text ") + inkName(text.ink) + " " + number(text.size) + " " + align +
           (text.bold ? " bold " : " ") + number(text.at.x) + "," + number(text.at.y) + " '" + text.words +
           "'";
}

} // namespace

std::string dump(const Shape& shape)
{
    return shapeText(shape);
}

std::string dump(const Drawing& drawing)
{
    const Rect& b = drawing.bounds;
    std::string text =
        "bounds " + number(b.x) + "," + number(b.y) + " " + number(b.width) + "x" + number(b.height) + "\n";
    for (const Group& group : drawing.groups) {
        text += "group '" + group.name + "'";
        if (group.row >= 0)
            text += " row " + std::to_string(group.row);
        if (!group.words.empty())
            text += " \"" + group.words + "\"";
        text += "\n";
        for (const Shape& shape : group.shapes)
            text += "  " + shapeText(shape) + "\n";
    }
    return text;
}

} // namespace shawlwright::chart
