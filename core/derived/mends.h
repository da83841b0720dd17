// Makes the edit that a finding's mend stands for.
#pragma once

#include "core/edits/edit.h"
#include "core/needle/finding.h"

namespace shawlwright {

Result<Edit> mendEdit(const Pattern& pattern, const Catalogue& catalogue, const Finding& finding);

} // namespace shawlwright
