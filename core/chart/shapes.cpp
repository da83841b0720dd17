#include "core/chart/shapes.h"
