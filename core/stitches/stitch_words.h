// The words in which files name the kinds of a stitch: "yarn-over", "left", "pair-made".
//
// Shape:   toWord and fromWord undo each other for every enumerator.
// Errors:  a word that names nothing gives nothing; allWords lists those that do, for messages ("none, right, left").
#pragma once

#include "core/stitches/stitch.h"

#include <optional>
#include <string>
#include <string_view>

namespace shawlwright {

std::string_view toWord(Family family);
std::string_view toWord(Lean lean);
std::string_view toWord(Face face);
std::string_view toWord(HeadKind kind);
std::string_view toWord(Manner manner);
std::string_view toWord(Drawing drawing);

// For Family, Lean, Face, HeadKind, Manner and Drawing.
template <typename Kind>
std::optional<Kind> fromWord(std::string_view word);
template <typename Kind>
std::string allWords();

} // namespace shawlwright
