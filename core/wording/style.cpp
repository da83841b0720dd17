#include "core/wording/style.h"
