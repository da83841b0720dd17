// A row with its stitch repeats painted out: each stitch a cell of its own, as often as it is worked.
//
// Shape:   the row over the loops it takes up, in a chart of `columns`; no stitch repeats are left on it.
// Errors:  nothing where it doesn't come out, where a repeat is worked no times or two knittings work it differently,
//          where a marker is moved within a repeat, or where the chart is too narrow.
#pragma once

#include "core/needle/ledger.h"

#include <optional>
#include <span>

namespace shawlwright {

// `ledgers`: of every version and size, true for `pattern`.
std::optional<Row> paintedOut(const Pattern& pattern, const Catalogue& catalogue,
                              std::span<const Ledger> ledgers, int section, int row, int columns);

} // namespace shawlwright
