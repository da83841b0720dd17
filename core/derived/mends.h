// Makes the edit that a finding's mend stands for.
//
// Errors:  a Fault where the finding has no mend, or where what it names is no longer there; nothing is
// changed then.
#pragma once

#include "core/edits/edit.h"
#include "core/needle/ledger.h"

namespace shawlwright {

// `choice` is the one whose run made the finding: where numbers go by size, that size's number alone is
// mended.
Result<Edit> mendEdit(const Pattern& pattern, const Catalogue& catalogue, const Finding& finding,
                      RunChoice choice = {});

} // namespace shawlwright
