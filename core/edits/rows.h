// Makers of edits on whole rows and columns.
//
// Errors:  a Fault where an index lies outside, or where a row repeat, stitch repeat or marker would be cut; nothing is
//          changed then. Boxes and brackets whose first or last row is deleted shrink to the rows that stay.
#pragma once

#include "core/edits/edit.h"

namespace shawlwright {

// Any change of one row's own values (side, yarn, start, finish, stated count, label, note, words): `row` keeps its id.
Result<Edit> setRow(const Pattern&, SectionId, int at, Row row, std::string name);
Result<Edit> setRows(const Pattern&, SectionId, const std::map<int, Row>& rows, std::string name);
// `count` empty rows before row `at` (at the end: rows.size()); sides alternate, the yarn is that of the row below.
Result<Edit> insertRows(const Pattern&, SectionId, int at, int count);
Result<Edit> insertRows(const Pattern&, SectionId, int at, std::vector<Row> rows, std::string name); // given fresh ids
Result<Edit> deleteRows(const Pattern&, SectionId, int first, int last);
Result<Edit> duplicateRows(const Pattern&, SectionId, int first, int last);
Result<Edit> moveRows(const Pattern&, SectionId, int first, int last, int before);
// `count` no-stitch columns inserted at the left of boundary `boundary`, boxes and markers beyond it moved.
Result<Edit> insertColumns(const Pattern&, SectionId, int boundary, int count);
Result<Edit> deleteColumns(const Pattern&, const Catalogue&, SectionId, int first, int last);

} // namespace shawlwright
