// Which rows of a chart are seen: a line of the view per shown row, none for a hidden one.
//
// Shape:   rows by index in the section, lines from 0 at the bottom. A hidden row lies between the lines of its
//          neighbours. Rows and lines outside of the chart go on counting.
// Errors:  none.
#pragma once

#include "core/edits/areas.h"

#include <memory>
#include <vector>

namespace shawlwright::app {

class ShownRows {
public:
    ShownRows() = default;                           // all of them
    explicit ShownRows(const std::vector<bool>& hidden); // all of them too where none would be left

    bool hidesAny() const { return m_rows != nullptr; }
    bool hides(int row) const;
    int lineOf(int row) const; // of a hidden row the line that would follow it
    int rowAt(int line) const;
    int lines(int rows) const { return lineOf(rows); } // of a chart of so many rows
    int stepped(int row, int lines) const { return rowAt(lineOf(row) + lines); }
    int nearest(int row) const; // the row itself, else the shown one below, else the one above
    int lastWith(int row) const; // the last of the hidden rows that follow it; itself where there are none

    Areas seen(const Areas& areas) const;                      // without what lies on hidden rows
    std::vector<IndexRun> together(std::vector<IndexRun> runs) const; // with the hidden rows between and after them

    bool operator==(const ShownRows& other) const;

private:
    struct Rows {
        std::vector<int> lineOf; // by row
        std::vector<int> rowAt;  // by line
    };
    std::shared_ptr<const Rows> m_rows; // null: all are shown
};

} // namespace shawlwright::app
