// Questions about one pattern, answered from its plain values.
//
// Shape:   a knitted row is a row as it comes off the needles: brackets worked out, in knitting order, of the sections
//          that belong to the version asked for.
// Errors:  ids that aren't there give nothing (index -1); faultsOf() tells whatever a pattern's shape breaks.
#pragma once

#include "core/pattern/pattern.h"

#include <span>

namespace shawlwright {

int sectionIndex(const Pattern& pattern, SectionId id);  // -1: none
int rowIndex(const Section& section, RowId id);          // -1: none
const Yarn* yarnOf(const PatternHead& head, YarnId id);  // null: none
const Marker* markerOf(const PatternHead& head, MarkerId id);

RowId freshRowId(const Pattern& pattern);                // one past the greatest in use
SectionId freshSectionId(const Pattern& pattern);
BoxId freshBoxId(const Section& section);
StitchId freshStitchId(const PatternHead& head);
YarnId freshYarnId(const PatternHead& head);
MarkerId freshMarkerId(const PatternHead& head);

int versionCount(const Pattern& pattern);                // at least 1
int sizeCount(const Pattern& pattern);                   // at least 1
std::string versionName(const Pattern& pattern, int version); // "" where there is only one
bool belongsTo(const Section& section, const Pattern& pattern, int version);

// The boxes that a row lies in, outer ones first; of equal ones the earlier in the frame is the outer one.
std::vector<Box> boxesOn(const Section& section, int row);

// The columns that a row is worked over: from its first stitch to its last, a stitch repeat counting in whole, since the
// empty columns in it only make room. 0, 0: nothing is painted.
struct ColumnSpan {
    int first = 0, last = 0; // right to left
    bool operator==(const ColumnSpan&) const = default;
};
ColumnSpan usedColumns(const Row& row, std::span<const Box> boxes);

// The labels that are printed: counted from 1, one number for the rows that a slide joins ("1a", "1b"), a label that
// was typed as it is and counting on from it where it is a number.
std::vector<std::string> rowLabels(const Section& section);

// The pass of each bracket around a knitted row, outermost first, from 1.
using Passes = std::vector<int>;

struct KnittedRow {
    int section = 0; // index into pattern.sections
    int row = 0;     // index into its rows
    int index = 1;   // from 1 within the section, as knitted
    RowRef ref;
    Passes passes;
    std::shared_ptr<const std::vector<Box>> boxes; // on this row, outer ones first; shared between rows alike
};
std::vector<KnittedRow> knittedRows(const Pattern& pattern, int version, int size);

// What is wrong with the shape of a pattern: boxes that cross or lie outside, brackets that cross, markers outside of
// the grid, wide stitches cut in two, lists that don't have one number per size, rows without a yarn. Empty: nothing.
Faults faultsOf(const Pattern& pattern, const Catalogue& catalogue);

// "Section 'Left wing', Row 37".
std::string placeInWords(const Pattern& pattern, int section, int row);

} // namespace shawlwright
