// The program without its window: check, counts, rows, export, help and version.
//
// Shape:   gives the exit code, or nothing where the arguments ask for the editor (a file, or nothing at
// all). Errors:  0: done, and no errors in the pattern; 1: `check` found errors; 2: wrong usage, or something
// could not be
//          read or written. Results go to standard output, all else to standard error. None of it needs a
//          display.
#pragma once

#include <optional>

namespace shawlwright::app {

std::optional<int> runCommandLine(int argc, char** argv);

} // namespace shawlwright::app
