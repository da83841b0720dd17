#pragma once

#include "app/document/text.h"
