// One row of a chart as phrases, in the order worked.
//
// Shape:   what depends on the needle (where markers are passed, how many stitches rest after a turn, whether
// a
//          run takes up the whole row) is only said where it is true of every time the row is knitted; the
//          rest comes from the row alone.
// Errors:  none. A row that isn't knitted in the ledger's version is written from its cells.
#pragma once

#include "core/needle/ledger.h"
#include "core/wording/phrases.h"
#include "core/wording/style.h"

#include <span>

namespace shawlwright {

struct RowToWrite {
    const Pattern& pattern;
    const Catalogue& catalogue;
    const Ledger& ledger;
    int section = 0;
    int row = 0;
    std::span<const int> lines; // of the ledger, each time the row is knitted
    // The caller takes what is said only if every version and size says the same.
    bool comparedWithAll = false;
    LongRuns longRuns = LongRuns::ToAPlace;
    MarkersSlipped markers = MarkersSlipped::Said;
};

Phrases rowPhrases(const RowToWrite& what);

// The number where all lines agree.
template <typename Number>
std::optional<int> agreed(const Ledger& ledger, std::span<const int> lines, const Number& number)
{
    std::optional<int> value;
    for (const int line : lines) {
        const int here = number(ledger.lines[static_cast<std::size_t>(line)]);
        if (value && *value != here)
            return std::nullopt;
        value = here;
    }
    return value;
}

} // namespace shawlwright
