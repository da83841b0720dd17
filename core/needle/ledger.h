// Runs a pattern on the needle: a ledger line for each knitted row, and the needle ahead of it.
//
// Shape:   rows, lines and before go together, one each per knitted row (brackets worked out); before has one more at
//          the end: the needle after the last row. Segments right to left.
// Units:   counted stitches.
// Errors:  none; findings say what doesn't come out, and the run goes on as if it had.
#pragma once

#include "core/needle/finding.h"
#include "core/needle/needle.h"
#include "core/pattern/questions.h"

#include <span>

namespace shawlwright {

// One working of one cell.
struct WorkedCell {
    int column = 1;    // its rightmost column
    int firstLoop = 0; // rightmost loop it took up, in the needle before the row; with takesUp 0: where it was made
    int takesUp = 0;
    int firstMade = 0; // rightmost loop it left, in the needle after the row
    int leaves = 0;
    int pass = 0;      // of the innermost box around it, from 1; 0: in none
    bool closesTurn = false; // took up a loop that carries a wrap, yarn over, pin or twin, or a double stitch
};

// How often a box was worked in a row.
struct BoxWorked {
    BoxId box;
    int times = 0;
};

struct Trace { // of one row, in the order worked
    std::vector<WorkedCell> cells;
    std::vector<BoxWorked> boxes; // each time a box was begun
};

struct LedgerLine {
    Side side = Side::RS;
    YarnId yarn;
    int before = 0;
    int after = 0;
    int worked = 0;  // loops this row left on the right needle
    int resting = 0; // loops it didn't touch; worked + resting = after
    int firstTaken = 0, lastTaken = 0; // loops [first, last) of the needle before were taken up
    int restingRight = 0, restingLeft = 0; // loops untouched on either side of them
    int betweenTurns = -1;
    std::vector<int> segments;
    std::vector<int> perYarn;   // stitches worked with each yarn, at yarn id - 1
    std::vector<int> ridges;    // so far in the section, at yarn id - 1
    bool showsPurl = false;     // most of what it left shows purl on the right side
    int madeUp = 0;             // loops it lacked that were made up, minus those left over that were set aside
    RowId restsOn;              // the row whose fault these counts rest on; 0: none
    bool makesGood = false;     // what it lacks or leaves over only follows from that row, and settles it
    std::vector<Finding> findings; // of this row alone, section/row/line not yet filled in
    bool operator==(const LedgerLine&) const = default;
};

struct RowContext {
    const Catalogue& catalogue;
    const PatternHead& head;
    std::span<const Box> boxes; // on this row, outer ones first
    int size = 0;
    bool startsSection = false;
};

// Works one row; the needle is then what it is after it.
LedgerLine workRow(Needle& needle, const Row& row, const RowContext& context, Trace* trace = nullptr);

// Tells in a row's line on which fault its counts rest, from what it made up; `owed` is then what is owed after it.
void settle(Owed& owed, LedgerLine& line, RowId row);

struct RunChoice {
    int version = 0;
    int size = 0;
    bool operator==(const RunChoice&) const = default;
};

struct Ledger {
    RunChoice choice;
    std::vector<KnittedRow> rows;
    std::vector<Needle> before;
    std::vector<LedgerLine> lines;
    std::vector<Finding> findings; // all, in the order of the rows, places filled in; those of the whole pattern last
};

Ledger run(const Pattern& pattern, const Catalogue& catalogue, RunChoice choice = {});
// Version by version, size by size.
std::vector<Ledger> runEvery(const Pattern& pattern, const Catalogue& catalogue);

// Brings a ledger up to date with a pattern: works again from the first row that changed until the needle is what it
// was. Gives the lines that were worked again, [first, last); of those after them nothing but restsOn and makesGood may
// have changed.
struct Reworked {
    int first = 0;
    int last = 0;
    bool headChanged = false;
};
Reworked rework(Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue, const PatternHead& oldHead);

// What each cell of a knitted row took up and left; found by working that row again.
Trace traceOf(const Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue, int line);
// The first ledger line of a row of the chart; -1: it is not knitted in this version.
int firstLineOf(const Ledger& ledger, int section, int row);
// Columns of a knitted row whose cells are no stitch but lie over loops that rest on the needle.
std::vector<int> restingColumns(const Ledger& ledger, int line);

} // namespace shawlwright
