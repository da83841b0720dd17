// A row as a tree of phrases, between the chart and its words: the writer builds it from a row, the reader
// from a text.
//
// Shape:   in the order worked. A phrase knows the columns it speaks of, so that words and cells can point at
//          each other.
// Units:   stitches, columns. A count of 0 in a Stretch means: as far as `to` says. Counts are those of the
//          cells: the tree of "bo 5, k11" holds 5 and 12, see writer/phrase_text.h.
#pragma once

#include "core/pattern/pattern.h"

#include <string>
#include <variant>
#include <vector>

namespace shawlwright {

struct Phrase;
using Phrases = std::vector<Phrase>;

// How far something goes on.
struct Reach {
    BoxUntil place = BoxUntil::Times;
    MarkerId marker;
    Quantity leaving{0};             // stitches left before the place
    bool countsDoubleStitch = false; // LastTurn: a double stitch stands there and is one of those left
    bool operator==(const Reach&) const = default;
};

struct Stretch { // "k3", "yo twice", "k to last 5 sts"
    StitchId stitch;
    YarnId yarn;   // other than the row's
    int count = 1; // 0: to `to`
    Reach to;
    bool operator==(const Stretch&) const = default;
};
// Where a group comes from: a box of the chart, or found by the writer in stitches painted out in full. A found
// one holds the columns of all its times, `times` is always how often, and `to` may tell the same as a place;
// the leading one of a row is told by an asterisk where the style has it so.
enum class GroupFrom { Box, Found, FoundLeading };
struct Group { // "[yo, k2tog] 4 times", "*yo, k2tog; rep from * to last 5 sts"
    std::vector<Phrase> inside;
    Quantity times{1};
    Reach to; // place other than Times: until there
    GroupFrom from = GroupFrom::Box;
    bool operator==(const Group&) const;
};
struct MarkerPhrase { // "pm", "sm", "remove marker"
    enum class Act { Place, Slip, Remove } act = Act::Slip;
    MarkerId marker; // 0: whichever stands there
    bool operator==(const MarkerPhrase&) const = default;
};
struct YarnPhrase { // "with MC", "join CC", "break MC"
    enum class Act { With, Join, Break } act = Act::With;
    YarnId yarn;
    bool operator==(const YarnPhrase&) const = default;
};
struct SlipFirst { // "slip first 6 sts to right needle"
    Quantity count;
    bool operator==(const SlipFirst&) const = default;
};
struct StartAtEdge {
    bool operator==(const StartAtEdge&) const = default;
};
struct FinishPhrase { // "turn", "w&t", "slide", "bind off all sts"
    Finish finish;
    int restingAhead = 0;  // stitches left unworked by an early turn; 0: not worth saying
    bool bindsAll = false; // BindOff: no stitch was worked or passed over before
    bool operator==(const FinishPhrase&) const = default;
};
struct OwnWords { // the designer's own
    std::string words;
    bool operator==(const OwnWords&) const = default;
};

struct Phrase {
    std::variant<Stretch, Group, MarkerPhrase, YarnPhrase, SlipFirst, StartAtEdge, FinishPhrase, OwnWords> is;
    int firstColumn = 0, lastColumn = 0; // 0: none
    bool operator==(const Phrase&) const = default;
};
inline bool Group::operator==(const Group& other) const
{
    return inside == other.inside && times == other.times && to == other.to && from == other.from;
}

} // namespace shawlwright
