// A generated shawl for measuring: painted out in full, no repeats.
#pragma once

#include "core/pattern/pattern.h"

namespace shawlwright::tests {

Pattern bigShawl(int stitches = 600, int rows = 500);

} // namespace shawlwright::tests
