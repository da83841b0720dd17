// The abbreviations that the words of a pattern use, with what each one means: nothing that isn't used, each
// once.
//
// Shape:   by abbreviation, capitals and small letters together. Stitches of the pattern's own and special
// stitches
//          with how they are worked.
// Errors:  none.
// Source:  list only what is used, define it once: Tabatha Thomas; Joeli's Kitchen; Wrinkled Thistle. "rep",
// "rem", "pm",
//          "sm", "st(s)": Craft Yarn Council, Knit Abbreviations.
#pragma once

#include "core/wording/phrases.h"
#include "core/wording/style.h"

#include <span>

namespace shawlwright {

struct Abbreviation {
    std::string shortForm; // "k2tog"
    std::string meaning;   // "knit two together: ..."
    bool operator==(const Abbreviation&) const = default;
};

// Words of rows, with the side they are worked on.
struct SaidRow {
    Side side = Side::RS;
    Phrases phrases;
};

// `text`: the whole of it, as printed. `yarns`: those whose codes need a word, where nothing else lists them.
std::vector<Abbreviation> abbreviationsIn(std::string_view text, std::span<const SaidRow> rows,
                                          const Catalogue& catalogue, const Style& style,
                                          std::span<const Yarn> yarns = {});

} // namespace shawlwright
