#include "core/needle/needle.h"
