// Fills rows with plain stitches, over exactly the loops that the needle has ahead of them.
//
// Shape:   each row is worked on the needle as the row before left it. Stitches stand over the loops they
// take
//          up; the chart is widened where it has to be. A row's side, yarn, start, finish, label and markers
//          stay; stitch repeats are taken off the rows filled. A row that has different numbers of stitches
//          in its row repeat, version or size becomes one stitch repeated to the end of the row.
// Errors:  a Fault where a row can't be filled: it binds off, it turns early without a stitch to say where,
// no
//          loop lies ahead, it isn't knit in the version shown, or no one row fits all its knittings.
#pragma once

#include "core/derived/laid_row.h"
#include "core/edits/edit.h"

namespace shawlwright {

// `ledgers`: of every version and size; `shown` is the one whose needle the stitches are laid over.
Result<Edit> plainRows(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                       std::size_t shown, SectionId section, const std::vector<int>& rows, PlainStitch how);

// The rows of one side on which nothing is painted.
std::vector<int> emptyRows(const Section& section, Side side);

} // namespace shawlwright
