// A pattern of several sizes as that of one of them: every number that differs is the one of this size.
//
// Shape:   the pattern keeps its rows, ids and the name of the size. Words that were typed stay as they are.
// Errors:  a size that the pattern doesn't have is taken as the nearest it has.
#pragma once

#include "core/pattern/pattern.h"

namespace shawlwright {

Pattern ofOneSize(Pattern pattern, int size);

} // namespace shawlwright
