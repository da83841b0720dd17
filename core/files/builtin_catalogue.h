// The built-in stitches, from resources/stitches.json, which is compiled into the program.
#pragma once

#include "core/stitches/catalogue.h"

#include <string_view>

namespace shawlwright {

Result<std::vector<Stitch>> readStitches(std::string_view json);
const Catalogue& builtInCatalogue(); // read once; never changes

} // namespace shawlwright
