// A lace shawl of any size for the exports: yarn overs, decreases and a double yarn over on every right side
// row.
#pragma once

#include "tests/commandline/sample.h"

#include <QByteArray>

namespace shawlwright::tests {

Pattern lace(int columns, int rows);
const Catalogue& catalogue();

std::string text(const QByteArray& bytes);
// Runs of blanks and line breaks as one blank.
std::string squeezed(const std::string& text);
int occurrences(const std::string& text, const std::string& part);

} // namespace shawlwright::tests
