// Small shawls for the tests of command line and exports, with their counts worked out by hand.
#pragma once

#include "tests/support/knit.h"

namespace shawlwright::tests {

// Two sections: "Wing" with a marker, a yarn over and a short row; "Border", two rows worked three times.
Pattern smallShawl();
// The same, its last row asking for one stitch more than there are.
Pattern faultyShawl();

std::string fileOf(const Pattern& pattern);

} // namespace shawlwright::tests
