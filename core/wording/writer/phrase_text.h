// Phrases in words.
//
// Shape:   "k2, *yo, k2tog; rep from * to last 2 sts, k2." Commas part single actions, a semicolon ends a
//          starred repeat; counted groups stand in [ ], within them in ( ). The first repeat to a place is
//          starred *, the second **; a third, and one inside of another, reads
//          "rep [yo, k2tog] to marker A".
//          Binding off: "bo 5, k11" are five and twelve cells. The stitch that stays on the right needle
//          after binding off is worked already, so it is not among the 11; it is of the same kind as the
//          run that follows. Where what follows is no plain run of two or more, that stitch is part of it,
//          and the words say so: "bo 5 (st on right needle counts as next st), k2tog".
//          A row that works one plain stitch to its end is "knit" or "purl".
// Source:  Interweave, Pattern Play (commas, semicolon, asterisk); Remade by Hand (brackets in brackets);
//          Yours UK shawl, 2017 (* and **); the count after bo: Mee, Exercises in Knitting, 1846
//          (e-text 21032), p. 98, vandyke border, row 20.
#pragma once

#include "core/wording/phrases.h"
#include "core/wording/style.h"

#include <string>
#include <vector>

namespace shawlwright {

struct TextContext {
    const PatternHead& head;
    const Catalogue& catalogue;
    Side side = Side::RS;
    Style style;
};

// With its full stop. The designer's own words as they are.
std::string inWords(const Phrases& phrases, const TextContext& context);

bool notDrawn(const Phrases& phrases); // nothing but yarns: no stitch stands in the row yet

// Which bytes of inWords() tell which columns of the chart: each phrase that has columns, a group before what is inside of
// it. Style and capitals change no length.
struct PhraseSpan {
    std::size_t begin = 0, end = 0; // [begin, end) of the text
    int firstColumn = 0, lastColumn = 0;
    bool operator==(const PhraseSpan&) const = default;
};
std::vector<PhraseSpan> phraseSpans(const Phrases& phrases, const TextContext& context);

std::string yarnInWords(const PatternHead& head, YarnId yarn); // "MC"; its name where it has no code
std::string markerInWords(const PatternHead& head,
                          MarkerId marker); // "marker A"; "marker" where there is only one

} // namespace shawlwright
