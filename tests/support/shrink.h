// Makes a pattern that fails a law small: sections, rows and cells are taken out by halves, then one by one,
// for as long as it still fails and its shape is sound.
#pragma once

#include "core/pattern/pattern.h"

#include <functional>

namespace shawlwright::tests {

Pattern shrunk(Pattern pattern, const Catalogue& catalogue, const std::function<bool(const Pattern&)>& fails);

} // namespace shawlwright::tests
