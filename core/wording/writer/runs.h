// The runs a text tells: of one version, one size or every size in order.
//
// Shape:   numbers of every size are told together, "45 (51, 57)". Places that depend on the needle ("k to end")
//          are said where they are true in every run of the pattern, as its rows are shared by all.
// Errors:  a pattern's run of another version among them is a bug of the caller.
#pragma once

#include "core/needle/ledger.h"

#include <vector>

namespace shawlwright {

struct Runs {
    std::vector<const Ledger*> bySize; // one or more; they must outlive the runs
    std::vector<const Ledger*> every;  // of all versions and sizes where the caller has them; else empty

    Runs(const Ledger& one) : bySize{&one} {}
    explicit Runs(std::vector<const Ledger*> sizes, std::vector<const Ledger*> all = {})
        : bySize(std::move(sizes)), every(std::move(all))
    {
    }
    Runs(const Ledger& one, const std::vector<Ledger>& all) : bySize{&one}
    {
        for (const Ledger& ledger : all)
            every.push_back(&ledger);
    }

    const Ledger& first() const { return *bySize.front(); }
    int version() const { return first().choice.version; }
    bool everySize() const { return bySize.size() > 1; }
};

// Lines of a ledger, for each of the runs.
using RunLines = std::vector<std::vector<int>>;

} // namespace shawlwright
