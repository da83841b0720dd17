// Findings that need more than one row, or the pattern as a whole. One file per kind of finding.
#pragma once

#include "core/needle/ledger.h"

namespace shawlwright {

// Each appends what it finds; places are filled in.
void findTurnsNeverClosed(const Ledger&, const Pattern&, std::vector<Finding>&);
void findNumberingGaps(const Ledger&, const Pattern&, std::vector<Finding>&);
void findAbbreviationsTwice(const Pattern&, const Catalogue&, std::vector<Finding>&);
void findNotInKey(const Ledger&, const Pattern&, const Catalogue&, std::vector<Finding>&);
// Versions (and sizes) whose counts disagree where a section that all of them knit begins.
void findVersionsDisagree(const std::vector<Ledger>&, const Pattern&, std::vector<Finding>&);
// Sizes of which one comes out and another doesn't, told once at the row.
// Rows that fail in some sizes, though not in the one that is shown.
void findSizesDisagree(const std::vector<Ledger>&, const Pattern&, int shownSize, std::vector<Finding>&);

} // namespace shawlwright
