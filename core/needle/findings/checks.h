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
// Rows that come out in one size and not in another, told once at the row, with what is wrong; not what the shown run
// finds itself.
void findSizesDisagree(const std::vector<Ledger>&, const Pattern&, RunChoice shown, std::vector<Finding>&);

} // namespace shawlwright
