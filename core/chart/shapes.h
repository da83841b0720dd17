// A chart as plain shapes: paths, fills and texts with an ink. The canvas and every exporter walk the same
// shapes; none of them knows what a stitch is.
//
// Shape:   a Drawing is a list of groups in painting order; a group belongs to one row of the chart or to
// none. Units:   chart units: a cell is 1 wide and `cellHeight` high (ChartOptions), x to the right, y
// DOWNWARDS. Errors:  none.
#pragma once

#include "core/pattern/row.h"

#include <string>
#include <variant>
#include <vector>

namespace shawlwright::chart {

struct Point {
    double x = 0, y = 0;
    bool operator==(const Point&) const = default;
};

struct Rect {
    double x = 0, y = 0, width = 0, height = 0;
    bool operator==(const Rect&) const = default;
};

enum class Verb : std::uint8_t {
    Move,
    Line,
    Curve,
    Close
}; // a curve takes three points: two handles and its end

struct Path {
    std::vector<Verb> verbs;
    std::vector<Point> points;

    Path& move(Point p);
    Path& line(Point p);
    Path& curve(Point handle1, Point handle2, Point end);
    Path& close();
    Path& add(const Path& other, double dx, double dy); // the other path moved by dx, dy
    bool operator==(const Path&) const = default;
};

// What a shape is drawn with; a painter gives each ink a colour. Exports use the light colours of inks.h
// always.
enum class Ink : std::uint8_t {
    Paper,
    GridLine,
    TenthLine,
    Symbol,
    NoStitch,
    Resting,
    BoxLine,
    BracketLine,
    MarkerLine,
    TurnMark,
    Label,
    SoftLabel,
    YarnTint,
    YarnFull,
    FaultMark
};

struct Stroke {
    Path path;
    double width = 0.075; // chart units
    Ink ink = Ink::Symbol;
    bool dashed = false;
};
struct Fill {
    Path path;
    Ink ink = Ink::Paper;
    YarnId yarn; // of YarnTint and YarnFull
};
enum class Align : std::uint8_t { Left, Centre, Right };
struct Text {
    Point at; // on the baseline
    std::string words;
    double size = 0.5; // chart units
    Align align = Align::Centre;
    Ink ink = Ink::Label;
    bool bold = false;
};
using Shape = std::variant<Fill, Stroke, Text>;

struct Group {
    std::string name;  // "row 12", "grid", "stitch numbers", "key"
    std::string words; // for a reader that cannot see it: "Row 12, wrong side, 45 stitches"
    int row = -1;      // index of the chart's row, -1: none
    std::vector<Shape> shapes;
};

struct Drawing {
    Rect bounds;
    std::vector<Group> groups;
};

// A text as tests compare it: one shape per line, numbers to three places.
std::string dump(const Drawing& drawing);
std::string dump(const Shape& shape);

} // namespace shawlwright::chart
