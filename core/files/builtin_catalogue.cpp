#include "core/files/builtin_catalogue.h"
