// The abbreviations that the written rows of a pattern use, with what each one means.
//
// Shape:   by abbreviation, capitals and small letters together; each once.
#pragma once

#include "core/pattern/questions.h"

#include <span>

namespace shawlwright::app {

struct Abbreviation {
    std::string shortForm; // "k2tog"
    std::string meaning;   // "knit two together: ..."
};

std::vector<Abbreviation> abbreviationsOf(const Pattern& pattern, const Catalogue& catalogue,
                                          std::span<const int> sections, Words words);

} // namespace shawlwright::app
