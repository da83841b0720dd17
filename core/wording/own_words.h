// A designer's own words for a row or a section, which are printed in place of written ones, compared with
// the chart: they are read and worked on the needle that the chart's row is worked on.
//
// Shape:   at most one finding per row, at the first place that differs, on the first of its times that does;
// one per section
//          with words of its own. Words that can't be read are a warning where the chart has something to
//          compare.
// Errors:  none; a version that a section doesn't belong to compares nothing.
#pragma once

#include "core/needle/ledger.h"

namespace shawlwright {

std::vector<Finding> ownWordsFindings(const Pattern& pattern, const Catalogue& catalogue,
                                      const Ledger& ledger);

} // namespace shawlwright
