// What one stitch is: how many loops it takes up from the left needle, how many it leaves on the right one, how it
// looks, and what a knitter calls it on either side.
//
// A stitch of a chart is the fabric AS SEEN FROM THE RIGHT SIDE. The stitch `p` in a wrong-side row is therefore worked
// as a knit: its onWS is "k". Where a stitch has no counterpart on the other side it is worked as its name says on
// either side (sameOnBothSides), and the key says so.
//
// Shape:   heads are listed right to left as seen from the right side; there are `leaves` of them.
// Units:   loops, counted as stitches (a brioche pair is one, each loop of a double yarn over is one); columns of chart.
// Errors:  checked(stitch) refuses nonsense once, so that nothing later needs to.
// Source:  the entries themselves name theirs in resources/stitches.json.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <vector>

namespace shawlwright {

struct StitchId {
    std::uint16_t value = 0;
    auto operator<=>(const StitchId&) const = default;
};

inline constexpr StitchId noStitch{0};              // a filler where the fabric has no loop
inline constexpr std::uint16_t firstOwnStitch = 1000; // a pattern's own stitches are numbered from here

enum class Family { Basic, YarnOver, Increase, Decrease, Slip, Brioche, Nupp, Cable, Wrap, ShortRow, Edge };
enum class Lean { None, Right, Left, Centred };
enum class Face : std::uint8_t { Knit, Purl };
enum class HeadKind : std::uint8_t { Knit, Purl, YarnOver };

// What the stitch does to a loop beyond taking up and leaving.
enum class Manner {
    Worked,      // the yarn of the row makes the loops it leaves
    Slipped,     // loops pass over as they are, colour and origin kept
    PairMade,    // brioche: a slipped stitch and its yarn over, one stitch for counting
    PairWorked,  // brioche: takes up pairs
    BoundOff,    // takes up one, leaves none
    CastOn,      // takes up none; cast on or picked up at an edge
    Dropped,     // a loop or wrap let go
    DoubleTurn   // the doubled stitch at the start of the row after a double-stitch turn
};

// Which drawing the symbol starts from; ByLoops is drawn from feet, heads and lean alone.
enum class Drawing {
    Empty, Bar, ByLoops, Ring, Slip, ThroughBack, Hood, SlipHood, Raised, Cap, Cup, Disc, Crossing, Dashed, Wrapped, Hook,
    DoubleLeg, Elongated
};

// A crossing of `front` strands over `back` strands, leaning as the stitch leans.
struct Crossing {
    int front = 0;
    int back = 0;
    bool backPurled = false;
    std::string unknown{}; // see Stitch::unknown
    bool operator==(const Crossing&) const = default;
};

struct Stitch {
    StitchId id;
    std::string key;  // lower case letters, digits and _; the name in files: "k2tog", "yo2_k1p1"
    std::string name; // "knit two together"
    Family family = Family::Basic;
    int takesUp = 1;
    int leaves = 1;
    int columns = 0; // 0: as many as it leaves, at least one
    Lean lean = Lean::None;
    Manner manner = Manner::Worked;
    std::vector<HeadKind> heads; // empty: every head is `face`
    Face face = Face::Knit;      // what it shows on the right side
    bool sameOnBothSides = false;
    std::string onRS, onWS;       // abbreviations as worked on either side, US
    std::string onRSUK, onWSUK;   // where UK words differ; else empty
    std::string howToRS, howToWS; // a sentence each; how-to WS empty: as on RS
    std::string mirror;           // key of the mirror image; its own where it is symmetrical; empty: none
    std::string source;           // where the fact is published, or "common practice, no source"
    Drawing drawing = Drawing::ByLoops;
    int drawingNumber = 0; // the number in a disc, the wraps of an elongated stitch
    Crossing crossing;
    std::string strokes; // a designer's own drawing, see chart/symbols.h; empty: generated
    std::string unknown{}; // keys of the file that this program doesn't know, kept as JSON text

    int width() const { return columns > 0 ? columns : leaves > 1 ? leaves : 1; }
    bool operator==(const Stitch&) const = default;
};

// The stitch itself, or why it cannot be one ("takes up -1 loops; ...").
Result<Stitch> checked(Stitch stitch);

inline constexpr int mostLoopsPerStitch = 64;
inline constexpr std::size_t mostKeyLetters = 60;
inline constexpr std::size_t mostWordBytes = 200; // of an abbreviation

} // namespace shawlwright
