// The lines of a section as they are printed: rows that say the same are gathered, and the ends of stretches
// say what the knitter should have. The shortest true text is taken; the row repeats the designer drew stay
// as they are.
//
// Shape:   lines in the order read. Every row of the section stands in the `rows` of one line of kind Rows,
// the one that
//          tells its words; a repeat that was found in rows painted out holds the rows that it saves telling.
//          Labels count all rows, so the row after "Rep Rows 3-6 nine more times." may be Row 43.
// Errors:  none.
// Source:  "n more times": Josephine Kush, Row Repeats, who also has it that words of a repeated row are
// relative where
//          its count changes; "every RS row" rather than "every other row", and "Row 4 and all WS rows":
//          common practice, no source.
#pragma once

#include "core/wording/writer/writer.h"

namespace shawlwright {

struct WrittenLine {
    enum class Kind {
        Rows,   // a row, or rows that say the same
        Repeat, // "Rep Rows 3-6 nine more times."
        Reached // "You have 45 sts."
    } kind = Kind::Rows;
    std::vector<int> rows; // indexes in the section, rising
    int firstRow = 0,
        lastRow =
            0; // Rows: the first and the last named; Repeat: those worked again; Reached: the row before
    std::string label; // "Rows 3-8:"
    std::string text;
    std::string count;
    std::string note;
    bool operator==(const WrittenLine&) const = default;
};

// `rows` as writtenRows() gives them for the same runs and style.
std::vector<WrittenLine> gathered(const Pattern& pattern, const Runs& runs, int section, const Style& style,
                                  std::span<const WrittenRow> rows);
int lineTelling(std::span<const WrittenLine> lines, int row); // -1: none
std::string toText(const WrittenLine& line);

} // namespace shawlwright
