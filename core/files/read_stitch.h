// One stitch of a file: the built-in list's and a pattern's own are written alike.
//
// Shape:   members named as those of Stitch; the id is not among them. Members nobody knows go to
// Stitch::unknown. Errors:  noted in the list of faults; what checked() says is noted too, when nothing else
// was wrong with the stitch.
#pragma once

#include "core/files/checked_values.h"
#include "core/stitches/stitch.h"

namespace shawlwright::files {

Stitch readStitch(FaultList& faults, Fields& in);

} // namespace shawlwright::files
