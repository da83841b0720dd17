// Finds places in a pattern by what a knitter would say of them.
//
// Shape:   hits in knitting order. What is asked for is, in this order, and the first that there is counts:
//          a row by its label ("row 37", "37", "37 of Border" for one section); a stitch by its abbreviation on the side
//          of the row or by its name ("ssk", "yarn over": each cell); words that stand in a row's note, in the designer's
//          own words for it, in its written words, or in a section's title, note or words (row -1).
//          Letters count alike whether small or capital, ASCII letters only.
// Errors:  none; nothing found is an empty list.
#pragma once

#include "core/derived/derived.h"

namespace shawlwright {

struct SearchHit {
    SectionId section;
    int row = -1;   // index in the section; -1: the section itself
    int column = 0; // rightmost column of a stitch; 0: the whole row
    bool operator==(const SearchHit&) const = default;
};

inline constexpr std::size_t mostHits = 100000;

std::vector<SearchHit> searched(const Pattern& pattern, Derived& derived, std::string_view wanted);

} // namespace shawlwright
