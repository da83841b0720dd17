// What a saved pattern has that the one saved before it had not, in a few words.
#pragma once

#include "core/pattern/pattern.h"

#include <QString>

namespace shawlwright::app {

// "2 rows changed, 1 section came"; ids may have been given anew by reading, so rows are compared by what they say.
QString changesInWords(const Pattern& before, const Pattern& after);

} // namespace shawlwright::app
