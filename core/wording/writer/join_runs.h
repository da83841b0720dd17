// Runs of one stitch that a chart draws in pieces, said as one: "k3, k to 2 sts before marker A, k2, sm A, k
// to end" is "k to end". Markers that are only slipped within such a run need no word: they are slipped as
// you come to them.
//
// Source:  the shortest true words; slip markers as you come to them: Yours UK shawl, 2017.
#pragma once

#include "core/wording/phrases.h"

#include <functional>

namespace shawlwright {

// `runs`: whether a stitch can be worked on and on ("k to end").
void joinRuns(Phrases& phrases, const std::function<bool(StitchId)>& runs);

} // namespace shawlwright
