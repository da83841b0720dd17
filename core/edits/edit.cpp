#include "core/edits/edit.h"
