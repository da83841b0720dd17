// Rows of a section as a sentence names them: "row 5", "rows 5 to 24".
#pragma once

#include "core/edits/areas.h"
#include "core/pattern/questions.h"

#include <QString>

#include <utility>

namespace shawlwright::app {

QString rowsInWords(const Section& section, std::pair<int, int> rows);
QString rowsInWords(const Section& section, const std::vector<IndexRun>& runs); // "rows 1 to 4, row 7"

} // namespace shawlwright::app
