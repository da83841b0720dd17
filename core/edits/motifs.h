// Motifs: stitches saved under a name, to be stamped into charts.
//
// Shape:   a motif is a rectangle of cells as seen from the right side; what it holds as no stitch leaves the chart as it
//          is where it is stamped. Its corner at the lower right comes to the place. It is mirrored stitch by stitch:
//          the columns change places, and the leans with them.
// Units:   rows and columns.
// Errors:  a Fault where a name is empty or doubled, an area holds no whole stitch, or a motif doesn't find room.
#pragma once

#include "core/edits/paint.h"

namespace shawlwright {

// The whole stitches of an area.
Result<Motif> motifOf(const Pattern&, const Catalogue&, SectionId, const Area&, std::string name);
Motif mirroredMotif(const Motif&, const Catalogue&);

Result<Edit> addMotif(const Pattern&, Motif motif);
Result<Edit> renameMotif(const Pattern&, std::size_t at, std::string name);
Result<Edit> deleteMotif(const Pattern&, std::size_t at);

// Over the edge the chart grows: to the left and upwards, as far as a chart may.
Result<Edit> stampMotif(const Pattern&, const Catalogue&, SectionId, At lowerRight, const Motif& motif);

inline constexpr std::size_t mostMotifName = 200; // bytes

} // namespace shawlwright
