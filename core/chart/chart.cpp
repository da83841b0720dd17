#include "core/chart/chart.h"

#include "core/chart/cells.h"
#include "core/chart/gutters.h"

#include <algorithm>

namespace shawlwright::chart {

namespace {

constexpr double margin = 0.3; // around everything
constexpr double titleSize = 0.8;
constexpr double leastKeyWidth = 20;
constexpr double noteSize = 0.5;

void addGroup(Drawing& drawing, std::string name, std::vector<Shape> shapes, double dx = 0)
{
    if (shapes.empty())
        return;
    if (dx != 0)
        for (Shape& shape : shapes)
            shape = moved(shape, dx, 0);
    drawing.groups.push_back({std::move(name), {}, -1, std::move(shapes)});
}

Rect boundsOf(const std::vector<Group>& groups)
{
    Rect all;
    for (const Group& group : groups)
        all = united(all, boundsOf(group.shapes));
    return all;
}

void addTitle(Drawing& drawing, const std::string& title)
{
    const Rect bounds = boundsOf(drawing.groups);
    Group group{"title", title, -1, {}};
    group.shapes.push_back(
        Text{{bounds.x, bounds.y - 0.55}, title, titleSize, Align::Left, Ink::Label, true});
    drawing.groups.insert(drawing.groups.begin(), std::move(group)); // a reader hears it first
}

void addKey(Drawing& drawing, const ChartInput& input)
{
    const Rect bounds = boundsOf(drawing.groups);
    const auto entries = keyOf({&input.section}, input.catalogue, {input.facts});
    Drawing key = keyDrawing(entries, input.catalogue, std::max(bounds.width, leastKeyWidth));
    const double dx = bounds.x - key.bounds.x, dy = bounds.y + bounds.height + 0.8 - key.bounds.y;
    for (Group& group : key.groups) {
        for (Shape& shape : group.shapes)
            shape = moved(shape, dx, dy);
        drawing.groups.push_back(std::move(group));
    }
}

void addNotes(Drawing& drawing, const std::vector<std::string>& notes)
{
    Rect bounds = boundsOf(drawing.groups);
    for (const std::string& note : notes) {
        bounds.height += noteSize * (&note == &notes.front() ? 2.2 : 1.6);
        drawing.groups.push_back({"note", note, -1, {}});
        drawing.groups.back().shapes.push_back(
            Text{{bounds.x, bounds.y + bounds.height}, note, noteSize, Align::Left, Ink::Label, false});
    }
}

} // namespace

Drawing chartOf(const ChartInput& input, const ChartOptions& options)
{
    Drawing drawing;
    const Frame frame = frameOf(input.section, options);
    if (!frame.empty()) {
        drawing.groups = cellGroups(frame, input, options);
        addGroup(drawing, "stitch repeats", boxShapes(frame, input.head, &input.catalogue));
        addGroup(drawing, "markers", markerShapes(frame, input.head));
        addGroup(drawing, "turns", turnShapes(frame));
        Gutters gutters = guttersOf(frame, input, options);
        std::move(gutters.groups.begin(), gutters.groups.end(), std::back_inserter(drawing.groups));
        addGroup(drawing, "row repeats", bracketShapes(frame), gutters.leftEdge);
    }
    if (options.title && !input.section.frame.title.empty())
        addTitle(drawing, input.section.frame.title);
    if (options.key)
        addKey(drawing, input);
    addNotes(drawing, options.notes);
    const Rect all = boundsOf(drawing.groups);
    drawing.bounds = {all.x - margin, all.y - margin, all.width + 2 * margin, all.height + 2 * margin};
    return drawing;
}

} // namespace shawlwright::chart
