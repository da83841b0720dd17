// Which rows have their label and their count written beside them where rows are lower than the text.
//
// Shape:   rows from 0 at the cast-on; `high` is the height of the text and `cell` that of a row, in the same unit. Labels
// stand on the side where their row starts, counts of all rows in one column: no two in a column come nearer than `high`.
#pragma once

#include "core/pattern/row.h"

#include <functional>

namespace shawlwright::app {

struct NumberedRows {
    int rows = 0;
    bool hidesAny = false;                // plain rows are folded away
    std::function<int(int row)> line;     // from 1, of the rows that are shown
    std::function<Side(int row)> side;
};

int stepFor(int cell, int room); // the first of 1, 2, 5, 10, 20 ... that leaves `room` between numbers
bool labelShown(const NumberedRows& rows, int at, int cell, int high);
bool countShown(const NumberedRows& rows, int at, int cell, int high);

} // namespace shawlwright::app
