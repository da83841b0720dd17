// How rows are written: a style sheet, kept in the pattern as plain words (PatternHead::style).
//
// Errors:  a value that isn't known gives the default.
#pragma once

#include "core/pattern/pattern.h"

namespace shawlwright {

enum class CountsShown { Always, WhereTheyChange, Never };
enum class RepeatForm { Bracket, Asterisk };

struct Style {
    Words words = Words::US;
    CountsShown counts = CountsShown::WhereTheyChange;
    RepeatForm repeats = RepeatForm::Asterisk; // which of two texts of one length is taken
    bool operator==(const Style&) const = default;
};

Style styleOf(const PatternHead& head);
std::map<std::string, std::string> toWords(const Style& style);

} // namespace shawlwright
