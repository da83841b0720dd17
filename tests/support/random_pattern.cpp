#include "tests/support/random_pattern.h"
