// The pattern a command works on: read, with its catalogue, and the version and size that were asked for.
//
// Errors:  a Fault whose message is ready to print: every fault of the file with its place, one per line.
#pragma once

#include "app/commandline/arguments.h"
#include "core/needle/ledger.h"

namespace shawlwright::app {

struct OpenedPattern {
    Pattern pattern;
    Catalogue catalogue;
    RunChoice choice;
};

Result<std::string> readBytes(const std::string& file); // "-": standard input
Result<OpenedPattern> openPattern(const Arguments& arguments);

// The indexes of the sections with this title, all of those of the version where none is asked for.
Result<std::vector<int>> chosenSections(const OpenedPattern& opened, const std::optional<std::string>& title);

} // namespace shawlwright::app
