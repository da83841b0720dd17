// The yarns of rows as a sequence that repeats: 2 rows MC, 2 rows CC, and so on.
//
// Shape:   laid over the rows first..last in knitting order, starting with the first stripe. A row joins its
// yarn
//          where the needle has it nowhere, or where it hangs elsewhere than the row starts; other rows go on
//          with it. Stitches that have a yarn of their own keep it.
// Units:   rows of the chart; a row repeat counts once.
// Errors:  a Fault where there is no stripe, a stripe has fewer than one row, or a yarn isn't one of the
// pattern's.
#pragma once

#include "core/edits/edit.h"
#include "core/needle/ledger.h"

namespace shawlwright {

struct Stripe {
    int rows = 2;
    YarnId yarn;
    bool operator==(const Stripe&) const = default;
};

// `ledgers`: of every version and size; a row joins its yarn where one of them needs it.
Result<Edit> stripedRows(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                         SectionId section, int first, int last, std::span<const Stripe> stripes);

// The sequence that rows have now, without what follows by repeating it.
std::vector<Stripe> stripesOf(const Section& section, int first, int last);

} // namespace shawlwright
