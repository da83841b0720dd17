// The document: plain values, comparable, cheap to copy by row. Nothing derived lives here.
//
// Shape:   sections in knitting order; rows of a section in knitting order (the chart is drawn upwards). Boxes (stitch
//          repeats) and brackets (row repeats) name rows by id, nest and never cross.
// Units:   colours 0xRRGGBB; lengths in metres and millimetres; gauge per 10 cm.
// Errors:  questions.h tells what is wrong with a pattern that was put together by hand; files/ refuses such files.
#pragma once

#include "core/pattern/row.h"

#include <map>

namespace shawlwright {

struct SectionId {
    std::uint32_t value = 0;
    auto operator<=>(const SectionId&) const = default;
};

struct BoxId {
    std::uint32_t value = 0;
    auto operator<=>(const BoxId&) const = default;
};

struct Yarn {
    YarnId id;
    std::string code; // "MC"
    std::string name;
    std::uint32_t colour = 0;
    int weight = -1; // category 0..7 of the standard yarn weight system; -1: not said
    double metresPerBall = 0;
    double gramsPerBall = 0;
    std::string unknown{}; // see Row::unknown
    bool operator==(const Yarn&) const = default;
};

struct Marker {
    MarkerId id;
    std::string name; // "A"
    std::string unknown{}; // see Row::unknown
    bool operator==(const Marker&) const = default;
};

struct Gauge {
    double stitches = 20; // per 10 cm
    double rows = 40;
    std::string over; // "garter stitch, blocked"
    std::string unknown{}; // see Row::unknown
    bool operator==(const Gauge&) const = default;
};

struct CastOn {
    Quantity stitches{3};
    YarnId yarn;
    std::string method;   // printed with it; may be empty
    Side firstSide = Side::RS; // the side that faces when row 1 begins
    std::string unknown{}; // see Row::unknown
    bool operator==(const CastOn&) const = default;
};

enum class BoxUntil : std::uint8_t { Times, RowEnd, Marker, LastTurn };

// A stitch repeat: columns firstColumn..lastColumn on the rows first..last.
struct Box {
    BoxId id;
    RowId firstRow, lastRow;
    int firstColumn = 1, lastColumn = 1;
    BoxUntil until = BoxUntil::Times;
    Quantity times{2};   // Times
    MarkerId marker;     // Marker: the next one of this name ahead
    Quantity leaving{0}; // stitches left before the place
    std::string unknown{}; // see Row::unknown
    bool operator==(const Box&) const = default;
};

// A row repeat: the rows first..last are worked `times` times in all.
struct Bracket {
    RowId firstRow, lastRow;
    Quantity times{2};
    std::string unknown{}; // see Row::unknown
    bool operator==(const Bracket&) const = default;
};

// What a section has besides its rows.
struct SectionFrame {
    std::string title;
    std::string note;
    std::vector<std::string> versions; // empty: belongs to all
    int columns = 0;                   // width of the grid
    std::vector<Box> boxes;
    std::vector<Bracket> brackets;
    std::string words;   // the designer's own words for the whole section
    std::string unknown; // see Row::unknown
    bool operator==(const SectionFrame&) const = default;
};

struct Section {
    SectionId id;
    SectionFrame frame;
    std::vector<RowRef> rows;
};
bool operator==(const Section& a, const Section& b); // rows by value

// Stitches saved under a name, to be stamped into charts: rows as of a chart, the lowest first, each of `columns` cells
// from the right edge.
struct Motif {
    std::string name;
    int columns = 0;
    std::vector<std::vector<Cell>> rows;
    std::string unknown{}; // see Row::unknown
    bool operator==(const Motif&) const = default;
};

// What a pattern has besides its sections.
struct PatternHead {
    std::string title;
    std::string designer;
    std::string introduction;
    std::string notes;
    std::vector<Yarn> yarns;
    std::vector<Marker> markers;
    double needleMm = 4.0;
    Gauge gauge;
    CastOn castOn;
    std::vector<std::string> versions; // empty: one, without a name
    std::vector<std::string> sizes;    // empty: one, without a name
    std::vector<Stitch> stitches;      // of its own
    std::vector<Motif> motifs;
    std::map<std::string, std::string> style; // how words are written; see wording/style.h
    std::string unknown;               // see Row::unknown
    bool operator==(const PatternHead&) const = default;
};

struct Pattern {
    PatternHead head;
    std::vector<Section> sections;
    bool operator==(const Pattern&) const = default;
};

inline constexpr int mostColumns = 2000;
inline constexpr int mostRows = 20000;    // of a section
inline constexpr int mostSections = 500;
inline constexpr int mostRepeats = 10000; // of a box or bracket
inline constexpr int mostNesting = 8;     // boxes within boxes, brackets within brackets
inline constexpr int mostCount = 100000;  // any other count of stitches
inline constexpr int mostMotifs = 200;
inline constexpr int mostMotifColumns = 400;
inline constexpr int mostMotifRows = 400;
inline constexpr int mostKnittedRows = 200000; // all repeats worked out

} // namespace shawlwright
