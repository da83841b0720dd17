// Turning a row at a boundary: what lies beyond it, in the direction of work, becomes no stitch and the row
// turns early.
//
// Shape:   a right-side row is worked towards the left (greater columns), a wrong-side row towards the right.
// Errors:  a Fault where the section or row isn't there. A stitch of several columns that the boundary would
// cut is left
//          off whole.
#pragma once

#include "core/edits/edit.h"

namespace shawlwright::app {

Result<Edit> turnedAt(const Pattern& pattern, SectionId section, int row, int boundary, TurnMethod method);
Result<Edit> workedToItsEnd(const Pattern& pattern, SectionId section, int row); // no early turn; cells stay

} // namespace shawlwright::app
