// A section as it comes off the needles: row repeats and stitch repeats worked out for one version and size, each stitch
// a cell of its own, short rows stepping. Only to look at.
//
// Shape:   one row of `rows` per knitted row, in knitting order. The chart is as wide as its stitches need: each stands
//          over the loops it takes up as nearly as order allows (see wording/reader/layout.h).
//          `pattern` has this one section, without repeats, versions and sizes; row i has the id i + 1. `ledger` has its
//          lines, with the counts of the folded run; loops and markers stand at the columns of the unfolded chart, loops
//          that were there before the section are madeIn 0.
// Units:   columns from 1 at the right, as everywhere.
// Errors:  a fault where the section isn't knitted in this version, or would have more than mostUnfoldedCells.
#pragma once

#include "core/edits/paint.h"
#include "core/needle/ledger.h"

#include <cstdint>

namespace shawlwright {

inline constexpr int mostUnfoldedCells = 4000000;
inline constexpr int mostUnfoldedColumns = 30000;

struct UnfoldedRow {
    int row = 0;  // index in the folded section
    int line = 0; // of the folded ledger
    std::vector<std::int16_t> columns; // the folded column of each column, at column - 1; 0: no stitch
};

struct Unfolded {
    Pattern pattern;
    Ledger ledger;
    std::vector<UnfoldedRow> rows;
};

Result<Unfolded> unfolded(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger, int section);

// The same stitch in the other chart. A cell without a stitch goes with the nearest one in its row; a folded row goes to
// its first knitting, one that isn't knitted to the row before it.
At foldedAt(const Unfolded& unfolded, At at);
At unfoldedAt(const Unfolded& unfolded, At at);

} // namespace shawlwright
