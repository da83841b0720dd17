// One function per command; each reads its pattern, does its work and prints nothing itself.
#pragma once

#include "app/commandline/answer.h"
#include "app/commandline/arguments.h"

namespace shawlwright::app {

Answer checkCommand(const Arguments& arguments);
Answer countsCommand(const Arguments& arguments);
Answer rowsCommand(const Arguments& arguments);
Answer readCommand(const Arguments& arguments);
Answer exportCommand(const Arguments& arguments);

} // namespace shawlwright::app
