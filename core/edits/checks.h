// What the makers of edits ask before they make one.
//
// Errors:  each gives the Fault in a knitter's words, or nothing where all is well.
#pragma once

#include "core/edits/edit.h"

#include <optional>

namespace shawlwright {

using MaybeFault = std::optional<Fault>;

MaybeFault sectionFault(const Pattern&, SectionId);
MaybeFault rowFault(const Pattern&, SectionId, int row);
MaybeFault rowsFault(const Pattern&, SectionId, int first, int last);
MaybeFault yarnFault(const Pattern&, YarnId); // none is well too
MaybeFault quantityFault(const Pattern&, const std::string& where, const std::string& what, const Quantity&,
                         int least, int most);
// One row's own values: yarn, width, counts, markers.
MaybeFault rowValuesFault(const Pattern&, const Section&, const Row& row, const std::string& where);
// Boxes and brackets of a frame over these rows: inside the chart, nested, numbers in range.
MaybeFault repeatsFault(const Pattern&, const SectionFrame&, const std::vector<RowRef>& rows);

const Section& sectionIn(const Pattern&, SectionId); // one that is there
std::string sectionWords(const Section&);            // "Section 'Left wing'"
std::string cellWords(const Section&, int row, int column); // "Section 'Left wing', Row 37, column 4"
std::string stitchWords(const Catalogue&, StitchId, Side); // "k2tog"; "no stitch"

// The columns [first, last] of the stitch that a cell is part of; the cell alone where it is no whole stitch.
struct Columns {
    int first = 1;
    int last = 1;
};
Columns stitchAround(const Row& row, int column);

Row padded(Row row, int columns); // with no stitch at the left
// A step that swaps the rows that are not what stands there already; nothing is added where all are.
void addSwap(Edit& edit, const Section& section, std::map<int, Row> rows);
// The same for the frame.
void addFrame(Edit& edit, const Section& section, SectionFrame frame);

} // namespace shawlwright
