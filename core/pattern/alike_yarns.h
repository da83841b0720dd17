// Yarns of a pattern that can't be told apart by their colours.
//
// Shape:   each pair at most once, by the first that holds: alike to everybody; alike to eyes that lack one kind of
//          colour; alike in a print without colours. Pairs in the order of the yarns.
// Units:   see base/colour.h.
// Source:  3 : 1 between parts of a drawing: WCAG 2.2, 1.4.11. The least colour difference is our own: common practice,
//          no source.
#pragma once

#include "core/base/colour.h"
#include "core/pattern/pattern.h"

#include <span>

namespace shawlwright {

inline constexpr double leastColourDifference = 10;
inline constexpr double leastContrast = 3;

struct AlikeYarns {
    enum class Where { ToEverybody, ToSomeEyes, WithoutColour } where = Where::ToEverybody;
    YarnId one, two;
    ColourVision vision = ColourVision::Full; // of ToSomeEyes, the worst
    double number = 0;                        // colour difference, or contrast
    std::string message;                      // both yarns, the number and what to do
};

std::vector<AlikeYarns> alikeYarns(std::span<const Yarn> yarns);

} // namespace shawlwright
