// Stitch repeats as heavy boxes with a label, row repeats as brackets.
#include "core/base/text.h"
#include "core/chart/frame.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace shawlwright::chart {

namespace {

constexpr double boxLine = 0.1;
constexpr double tabLine = 0.05;
constexpr double nestStep = 0.13;             // between two lines on one border
constexpr double labelSizes[] = {0.44, 0.36}; // the smaller one fits between a border and the bar of a purl

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

bool overlap(const Rect& a, const Rect& b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

// Does the place keep clear of every symbol?
bool quiet(const Frame& frame, const Catalogue* catalogue, const Rect& place)
{
    const int right = static_cast<int>(std::floor(frame.x(0) - place.x - place.width)) + 1;
    const int left = static_cast<int>(std::ceil(frame.x(0) - place.x));
    const double bottom = frame.rowCount() * frame.cellHeight;
    const int low = static_cast<int>(std::floor((bottom - place.y - place.height) / frame.cellHeight + 1e-9));
    const int high = static_cast<int>(std::ceil((bottom - place.y) / frame.cellHeight - 1e-9)) - 1;
    for (int row = std::max(low, frame.firstRow); row <= std::min(high, frame.lastRow); ++row)
        for (int column = std::max(right, frame.firstColumn); column <= std::min(left, frame.lastColumn);
             ++column) {
            const Cell cell = cellAt(frame.row(row), column);
            if (cell.stitch == noStitch)
                continue;
            if (!catalogue)
                return false;
            const Symbol symbol = symbolOf(catalogue->stitch(cell.stitch));
            const Rect cells =
                cellRect(frame.section, frame.cellHeight, row, column - cell.part, symbol.width);
            const Rect drawn = boundsOf(symbolIn(symbol, cells));
            if (drawn.width > 0 && overlap(drawn, place))
                return false;
        }
    return true;
}

// Does the line of a box run through the place?
bool crosses(const Rect& box, const Rect& place)
{
    const Rect core{box.x + boxLine, box.y + boxLine, box.width - 2 * boxLine, box.height - 2 * boxLine};
    const bool inCore = place.x >= core.x && place.y >= core.y &&
                        place.x + place.width <= core.x + core.width &&
                        place.y + place.height <= core.y + core.height;
    return overlap({box.x - boxLine / 2, box.y - boxLine / 2, box.width + boxLine, box.height + boxLine},
                   place) &&
           !inCore;
}

struct Labels {
    std::vector<Rect> boxes; // as drawn
    std::vector<Rect> taken; // by other labels and the names of markers

    // `own`: a box whose line may be covered, -1: none.
    bool free(const Rect& place, int own = -1) const
    {
        for (std::size_t i = 0; i < boxes.size(); ++i)
            if (static_cast<int>(i) != own && crosses(boxes[i], place))
                return false;
        return std::none_of(taken.begin(), taken.end(), [&](const Rect& t) { return overlap(t, place); });
    }
};

struct Label {
    Rect place;
    double size = labelSizes[0];
    bool tab = false; // outside of its box: outlined and touching it, or it would be taken for the next row's
};

// The label of a repeat on one row, in the middle of it where no symbol is: at the end away from the stitches.
std::optional<Label> placedInRow(const Frame& frame, const Catalogue* catalogue, const std::string& words,
                                 const Rect& box, const Labels& labels)
{
    if (box.height > 1.5 * frame.cellHeight)
        return std::nullopt;
    for (const double size : labelSizes) {
        const double width = textWidth(words, size) + 0.16, height = size * 1.1;
        const double y = box.y + (box.height - height) / 2;
        for (double x = box.x + 0.12; x <= box.x + box.width - width - 0.12 + 1e-9; x += 0.25) {
            const Label label{{x, y, width, height}, size};
            if (labels.free(label.place) && quiet(frame, catalogue, label.place))
                return label;
        }
    }
    return std::nullopt;
}

// Where the label stands: in its row; beside the upper or lower border where no symbol is, as near as can be to the left
// end; else on the border itself.
Label placed(const Frame& frame, const Catalogue* catalogue, const std::string& words, int own,
             const Labels& labels)
{
    const Rect& box = labels.boxes[static_cast<std::size_t>(own)];
    if (const auto inRow = placedInRow(frame, catalogue, words, box, labels))
        return *inRow;
    const Rect area = frame.area();
    const double boxRight = box.x + box.width, boxBottom = box.y + box.height;
    Label label;
    for (const double size : labelSizes) {
        const double width = textWidth(words, size) + 0.16, height = size * 1.1, away = boxLine / 2 + 0.01;
        const double above = box.y - height, below = boxBottom;
        const double inTop = box.y + away, inBottom = boxBottom - height - away;
        const double onTop = box.y - height / 2, onBottom = boxBottom - height / 2;
        for (const double y : {above, inTop, below, inBottom, onTop, onBottom}) {
            const bool inside = y == inTop || y == inBottom, on = y == onTop || y == onBottom;
            const bool tab = y == above || y == below;
            if (y + height > area.y + area.height || (on && size == labelSizes[0]))
                continue;
            const double first = inside ? box.x + 0.1 : std::max(area.x, box.x - width + 0.5);
            const double last =
                inside ? boxRight - width - 0.1 : std::min(area.x + area.width - width, boxRight - 0.5);
            // To the right from the box's left end, then to the left of it.
            std::vector<double> places;
            for (double x = std::max(first, std::min(box.x, last)); x <= last + 1e-9; x += 0.25)
                places.push_back(x);
            for (double x = std::min(box.x, last); x >= first - 1e-9; x -= 0.25)
                places.push_back(x);
            for (const double x : places) {
                label = {{x, y, width, height}, size, tab};
                if (labels.free(label.place, inside ? -1 : own) && quiet(frame, catalogue, label.place))
                    return label;
            }
        }
    }
    label.tab = false; // on the border itself
    Rect& place = label.place;
    place.width = textWidth(words, label.size) + 0.16;
    place.height = label.size * 1.1;
    place.x = std::max(area.x, std::min(box.x, area.x + area.width - place.width));
    place.y = box.y - place.height / 2;
    for (int tries = 0; tries < 12 && std::any_of(labels.taken.begin(), labels.taken.end(),
                                                  [&](const Rect& t) { return overlap(t, place); });
         ++tries)
        place.y -= place.height + 0.04;
    return label;
}

} // namespace

std::string sizesLabel(const Quantity& quantity)
{
    std::string text = toText(quantity.at(0));
    for (std::size_t i = 1; i < quantity.values.size(); ++i)
        text += (i == 1 ? " (" : ", ") + toText(quantity.values[i]);
    return quantity.values.size() > 1 ? text + ")" : text;
}

std::string timesLabel(const Quantity& times)
{
    return "× " + sizesLabel(times);
}

// Short, as the label has to find room between symbols: stitches are meant, and markers go by their letter.
std::string boxLabel(const Box& box, const PatternHead& head)
{
    const std::string leaving = zero(box.leaving) ? "" : sizesLabel(box.leaving) + " before ";
    switch (box.until) {
    case BoxUntil::Times:
        return timesLabel(box.times);
    case BoxUntil::RowEnd:
        return zero(box.leaving) ? "to end" : "to last " + sizesLabel(box.leaving);
    case BoxUntil::Marker: {
        const Marker* marker = markerOf(head, box.marker);
        return "to " + leaving + (marker ? marker->name : "marker");
    }
    case BoxUntil::LastTurn:
        return "to " + leaving + (leaving.empty() ? "last turn" : "turn");
    }
    return {};
}

std::vector<Shape> boxShapes(const Frame& frame, const PatternHead& head, const Catalogue* catalogue)
{
    std::vector<Shape> lines, words;
    std::vector<const Box*> drawn;
    Labels labels;
    labels.taken = markerNames(frame, head);
    for (int row = frame.firstRow; row <= frame.lastRow; ++row)
        if (const auto arrow = slipArrow(frame, row))
            labels.taken.push_back(
                {std::min(arrow->from, arrow->tip), arrow->y - 0.06, std::abs(arrow->tip - arrow->from), 0.12});
    const auto all = placedBoxes(frame.section);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Placed& at = all[i];
        if (at.lastRow < frame.firstRow || at.firstRow > frame.lastRow || at.lastColumn < frame.firstColumn ||
            at.firstColumn > frame.lastColumn)
            continue;
        const bool openTop = at.lastRow > frame.lastRow, openBottom = at.firstRow < frame.firstRow;
        const bool openLeft = at.lastColumn > frame.lastColumn,
                   openRight = at.firstColumn < frame.firstColumn;
        const double left =
            openLeft ? frame.left()
                     : frame.x(at.lastColumn) + inset(all, i, [](const Placed& a, const Placed& b) {
                           return a.lastColumn == b.lastColumn;
                       });
        const double right =
            openRight ? frame.right()
                      : frame.x(at.firstColumn - 1) - inset(all, i, [](const Placed& a, const Placed& b) {
                            return a.firstColumn == b.firstColumn;
                        });
        const double top = openTop
                               ? frame.top(frame.lastRow)
                               : frame.top(at.lastRow) + inset(all, i, [](const Placed& a, const Placed& b) {
                                     return a.lastRow == b.lastRow;
                                 });
        const double bottom =
            openBottom ? frame.top(frame.firstRow - 1)
                       : frame.top(at.firstRow - 1) - inset(all, i, [](const Placed& a, const Placed& b) {
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
        const auto [place, size, tab] = placed(frame, catalogue, label, static_cast<int>(i), labels);
        labels.taken.push_back(place);
        words.push_back(Fill{roundedRectangle(place, 0.1), Ink::Paper, {}});
        if (tab)
            words.push_back(Stroke{roundedRectangle(place, 0.1), tabLine, Ink::BoxLine, false});
        words.push_back(Text{{place.x + place.width / 2, place.y + size * 0.91},
                             label,
                             size,
                             Align::Centre,
                             Ink::BoxLine,
                             true});
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
        const int first = rowIndex(frame.section, bracket.firstRow),
                  last = rowIndex(frame.section, bracket.lastRow);
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
        shapes.push_back(Text{{x - 0.34, (top + bottom) / 2 + 0.18},
                              timesLabel(span.bracket->times),
                              0.5,
                              Align::Right,
                              Ink::Label,
                              true});
    }
    return shapes;
}

} // namespace shawlwright::chart
