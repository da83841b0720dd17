// The chart in black and white: greys alone, by which everything is told apart as in print.
#pragma once

#include "app/painting/theme.h"

namespace shawlwright::app {

Theme greyTheme();

} // namespace shawlwright::app
