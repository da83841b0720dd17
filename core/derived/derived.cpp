#include "core/derived/derived.h"
