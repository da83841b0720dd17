// A yarn as a pattern lists it: "MC: kelp, weight 1 (super fine), 400 m per 100 g", and back.
//
// Units:   metres and grams of a ball.
// Errors:  a text that is not read in full is no yarn.
// Source:  Craft Yarn Council, Standard Yarn Weight System.
#pragma once

#include "core/pattern/pattern.h"

#include <optional>
#include <string>
#include <string_view>

namespace shawlwright {

std::string yarnInFull(const Yarn& yarn);
std::optional<Yarn> yarnFromWords(std::string_view words); // without id and colour

} // namespace shawlwright
