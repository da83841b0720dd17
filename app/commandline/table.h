// A table as plain text, its columns lined up.
//
// Shape:   the first line holds the headings; every line has as many parts. A heading that begins with >
// lines its
//          column up on the right.
#pragma once

#include <string>
#include <vector>

namespace shawlwright::app {

std::string table(const std::vector<std::vector<std::string>>& lines);

} // namespace shawlwright::app
