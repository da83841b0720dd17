// Stitch repeats as heavy boxes with a label, row repeats as brackets.
#include "core/base/text.h"
#include "core/chart/frame.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

constexpr double boxLine = 0.1;
constexpr double nestStep = 0.13; // between two lines on one border
constexpr double labelSize = 0.44;

std::string quantityText(const Quantity& quantity)
{
    std::string text = toText(quantity.at(0));
    for (std::size_t i = 1; i < quantity.values.size(); ++i)
        text += (i == 1 ? " (" : ", ") + toText(quantity.values[i]);
    return quantity.values.size() > 1 ? text + ")" : text;
}

std::string stitchesText(const Quantity& quantity)
{
    return quantityText(quantity) + (quantity.single() && quantity.at(0) == 1 ? " st" : " sts");
}

bool zero(const Quantity& quantity)
{
    return std::all_of(quantity.values.begin(), quantity.values.end(), [](int n) { return n == 0; });
}

// A box within the frame, in rows and columns.
struct Placed {
    const Box* box = nullptr;
    int firstRow = 0, lastRow = 0, firstColumn = 1, lastColumn = 1;
};

bool inside(const Placed& inner, const Placed& outer)
{
    return inner.firstRow >= outer.firstRow && inner.lastRow <= outer.lastRow &&
           inner.firstColumn >= outer.firstColumn && inner.lastColumn <= outer.lastColumn;
}

std::vector<Placed> placedBoxes(const Section& section)
{
    std::vector<Placed> placed;
    for (const Box& box : section.frame.boxes) {
        const int first = rowIndex(section, box.firstRow), last = rowIndex(section, box.lastRow);
        if (first >= 0 && last >= first)
            placed.push_back({&box, first, last, box.firstColumn, box.lastColumn});
    }
    return placed;
}

// How far a side moves inwards so that the lines of nested boxes on one border lie side by side.
template <typename SameSide>
double inset(const std::vector<Placed>& all, std::size_t at, SameSide sameSide)
{
    int around = 0, within = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i == at || !sameSide(all[i], all[at]))
            continue;
        const bool isInner = inside(all[i], all[at]), isOuter = inside(all[at], all[i]);
        if (isInner && isOuter) // equal: the earlier one is the outer one
            (i < at ? around : within) += 1;
        else if (isOuter)
            ++around;
        else if (isInner)
            ++within;
    }
    return nestStep / 2 * (around - within);
}

// Are all cells under the place without a symbol?
bool quiet(const Frame& frame, const Catalogue* catalogue, const Rect& place)
{
    const int right = static_cast<int>(std::floor(frame.x(0) - place.x - place.width)) + 1;
    const int left = static_cast<int>(std::ceil(frame.x(0) - place.x));
    const double bottom = frame.rowCount() * frame.cellHeight;
    const int low = static_cast<int>(std::floor((bottom - place.y - place.height) / frame.cellHeight + 1e-9));
    const int high = static_cast<int>(std::ceil((bottom - place.y) / frame.cellHeight - 1e-9)) - 1;
    for (int row = std::max(low, frame.firstRow); row <= std::min(high, frame.lastRow); ++row)
        for (int column = std::max(right, frame.firstColumn); column <= std::min(left, frame.lastColumn); ++column) {
            const StitchId id = cellAt(frame.row(row), column).stitch;
            if (id == noStitch)
                continue;
            if (!catalogue)
                return false;
            const Stitch& stitch = catalogue->stitch(id);
            if (stitch.drawing != shawlwright::Drawing::Empty || !stitch.strokes.empty())
                return false;
        }
    return true;
}

bool overlap(const Rect& a, const Rect& b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

// Does the line of a box run through the place?
bool crosses(const Rect& box, const Rect& place)
{
    const Rect core{box.x + boxLine, box.y + boxLine, box.width - 2 * boxLine, box.height - 2 * boxLine};
    const bool inCore = place.x >= core.x && place.y >= core.y && place.x + place.width <= core.x + core.width &&
                        place.y + place.height <= core.y + core.height;
    return overlap({box.x - boxLine / 2, box.y - boxLine / 2, box.width + boxLine, box.height + boxLine}, place) && !inCore;
}

struct Labels {
    std::vector<Rect> boxes; // as drawn
    std::vector<Rect> taken; // labels that stand already

    bool free(const Rect& place) const
    {
        return std::none_of(taken.begin(), taken.end(), [&](const Rect& t) { return overlap(t, place); }) &&
               std::none_of(boxes.begin(), boxes.end(), [&](const Rect& box) { return crosses(box, place); });
    }
};

// Where the label stands: beside the upper or lower border on quiet cells, as near as can be to the corner; else above
// the grid, or over the border.
Rect labelPlace(const Frame& frame, const Catalogue* catalogue, const Rect& box, double width, const Labels& labels)
{
    const double height = labelSize * 1.15;
    const Rect area = frame.area();
    const double above = box.y - height - 0.08, below = box.y + box.height + 0.08;
    const double inTop = box.y + 0.1, inBottom = box.y + box.height - height - 0.1;
    for (const double y : {above, inTop, below, inBottom}) {
        if (y + height > area.y + area.height)
            continue;
        const bool within = y == inTop || y == inBottom;
        const double from = within ? box.x + 0.1 : box.x;
        const double last = within ? box.x + box.width - width - 0.1 : box.x + box.width - 0.5;
        for (double x = from; x <= last + 1e-9; x += 0.5) {
            const Rect place{x, y, width, height};
            if (x + width <= area.x + area.width + 0.01 && labels.free(place) && quiet(frame, catalogue, place))
                return place;
        }
        for (double x = box.x + box.width - width; !within && x > box.x - width + 0.5; x -= 0.5) {
            const Rect place{x, y, width, height};
            if (x >= area.x - 0.01 && labels.free(place) && quiet(frame, catalogue, place))
                return place;
        }
    }
    Rect place{box.x, box.y <= area.y + 0.2 ? above : box.y - height / 2, width, height};
    for (int tries = 0; tries < 12 && std::any_of(labels.taken.begin(), labels.taken.end(),
                                                  [&](const Rect& t) { return overlap(t, place); });
         ++tries)
        place.y -= height + 0.04;
    return place;
}

} // namespace

std::string timesLabel(const Quantity& times)
{
    return "× " + quantityText(times);
}

std::string boxLabel(const Box& box, const PatternHead& head)
{
    switch (box.until) {
    case BoxUntil::Times:
        return timesLabel(box.times);
    case BoxUntil::RowEnd:
        return zero(box.leaving) ? "to end" : "to last " + stitchesText(box.leaving);
    case BoxUntil::Marker: {
        const Marker* marker = markerOf(head, box.marker);
        const std::string name = marker ? "marker " + marker->name : "marker";
        return zero(box.leaving) ? "to " + name : "to " + stitchesText(box.leaving) + " before " + name;
    }
    case BoxUntil::LastTurn:
        return zero(box.leaving) ? "to last turn" : "to " + stitchesText(box.leaving) + " before last turn";
    }
    return {};
}

std::vector<Shape> boxShapes(const Frame& frame, const PatternHead& head, const Catalogue* catalogue)
{
    std::vector<Shape> lines, words;
    std::vector<const Box*> drawn;
    Labels labels;
    const auto all = placedBoxes(frame.section);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Placed& at = all[i];
        if (at.lastRow < frame.firstRow || at.firstRow > frame.lastRow || at.lastColumn < frame.firstColumn ||
            at.firstColumn > frame.lastColumn)
            continue;
        const bool openTop = at.lastRow > frame.lastRow, openBottom = at.firstRow < frame.firstRow;
        const bool openLeft = at.lastColumn > frame.lastColumn, openRight = at.firstColumn < frame.firstColumn;
        const double left = openLeft ? frame.left()
                                     : frame.x(at.lastColumn) + inset(all, i, [](const Placed& a, const Placed& b) {
                                           return a.lastColumn == b.lastColumn;
                                       });
        const double right =
            openRight ? frame.right()
                      : frame.x(at.firstColumn - 1) - inset(all, i, [](const Placed& a, const Placed& b) {
                            return a.firstColumn == b.firstColumn;
                        });
        const double top = openTop ? frame.top(frame.lastRow)
                                   : frame.top(at.lastRow) + inset(all, i, [](const Placed& a, const Placed& b) {
                                         return a.lastRow == b.lastRow;
                                     });
        const double bottom = openBottom ? frame.top(frame.firstRow - 1)
                                         : frame.top(at.firstRow - 1) -
                                               inset(all, i, [](const Placed& a, const Placed& b) {
                                                   return a.firstRow == b.firstRow;
                                               });
        // A side that lies on another page stays open.
        const Rect rect{left, top, right - left, bottom - top};
        Path outline;
        if (!openTop && !openBottom && !openLeft && !openRight) {
            outline = rectangle(rect);
        } else {
            if (!openTop)
                outline.move({left, top}).line({right, top});
            if (!openRight)
                outline.move({right, top}).line({right, bottom});
            if (!openBottom)
                outline.move({right, bottom}).line({left, bottom});
            if (!openLeft)
                outline.move({left, bottom}).line({left, top});
        }
        lines.push_back(Stroke{std::move(outline), boxLine, Ink::BoxLine, false});

        labels.boxes.push_back(rect);
        drawn.push_back(at.box);
    }
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const std::string label = boxLabel(*drawn[i], head);
        const double width = textWidth(label, labelSize) + 0.2;
        const Rect place = labelPlace(frame, catalogue, labels.boxes[i], width, labels);
        labels.taken.push_back(place);
        words.push_back(Fill{roundedRectangle(place, 0.12), Ink::Paper, {}});
        words.push_back(Text{{place.x + width / 2, place.y + labelSize * 0.93}, label, labelSize, Align::Centre,
                             Ink::BoxLine, true});
    }
    lines.insert(lines.end(), words.begin(), words.end());
    return lines;
}

std::vector<Shape> bracketShapes(const Frame& frame)
{
    struct Span {
        int first = 0, last = 0;
        const Bracket* bracket = nullptr;
        int lane = 0; // 0: next to the numbers; an outer one stands further left
    };
    std::vector<Span> spans;
    for (const Bracket& bracket : frame.section.frame.brackets) {
        const int first = rowIndex(frame.section, bracket.firstRow), last = rowIndex(frame.section, bracket.lastRow);
        if (first >= 0 && last >= first && last >= frame.firstRow && first <= frame.lastRow)
            spans.push_back({first, last, &bracket, 0});
    }
    std::stable_sort(spans.begin(), spans.end(),
                     [](const Span& a, const Span& b) { return a.last - a.first < b.last - b.first; });
    std::vector<double> laneWidths;
    for (std::size_t i = 0; i < spans.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k)
            if (spans[k].first <= spans[i].last && spans[i].first <= spans[k].last)
                spans[i].lane = std::max(spans[i].lane, spans[k].lane + 1);
        laneWidths.resize(std::max(laneWidths.size(), static_cast<std::size_t>(spans[i].lane) + 1));
        double& width = laneWidths[static_cast<std::size_t>(spans[i].lane)];
        width = std::max(width, textWidth(timesLabel(spans[i].bracket->times), 0.5) + 0.55);
    }
    std::vector<Shape> shapes;
    for (const Span& span : spans) {
        double x = -0.12;
        for (int lane = 0; lane < span.lane; ++lane)
            x -= laneWidths[static_cast<std::size_t>(lane)];
        const bool openTop = span.last > frame.lastRow, openBottom = span.first < frame.firstRow;
        const double top = frame.top(std::min(span.last, frame.lastRow)) + (openTop ? 0 : 0.1);
        const double bottom = frame.top(std::max(span.first, frame.firstRow) - 1) - (openBottom ? 0 : 0.1);
        Path path;
        openTop ? path.move({x - 0.2, top}) : path.move({x, top}).line({x - 0.2, top});
        path.line({x - 0.2, bottom});
        if (!openBottom)
            path.line({x, bottom});
        shapes.push_back(Stroke{std::move(path), 0.08, Ink::BracketLine, false});
        shapes.push_back(Text{{x - 0.34, (top + bottom) / 2 + 0.18}, timesLabel(span.bracket->times), 0.5,
                              Align::Right, Ink::Label, true});
    }
    return shapes;
}

} // namespace shawlwright::chart
