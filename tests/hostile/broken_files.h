// Broken pattern files, each with what is said of it.
#pragma once

#include <string>
#include <vector>

namespace shawlwright::tests {

struct BrokenFile {
    std::string name;
    std::string text;
    std::string expected; // all faults as toText() gives them, a line each
    bool schemaSees;      // the published schema must refuse it too
};

std::string soundFile(); // what the broken ones were made from
std::vector<BrokenFile> brokenFiles();

} // namespace shawlwright::tests
