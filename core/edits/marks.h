// Makers of edits on markers, stitch repeats (boxes) and row repeats (brackets).
//
// Errors:  a Fault in a knitter's words where a box would cross another, a number is out of range, a marker isn't there.
#pragma once

#include "core/edits/paint.h"

namespace shawlwright {

// Places a marker in a row at a boundary; one that doesn't exist yet is added to the head under the next free letter.
Result<Edit> placeMarker(const Pattern&, SectionId, int row, int boundary, MarkerId marker);
Result<Edit> placeNewMarker(const Pattern&, SectionId, int row, int boundary); // next free name: A, B, ... Z, A2 ...
Result<Edit> removeMarker(const Pattern&, SectionId, int row, int boundary, MarkerId marker); // writes a Remove move
Result<Edit> shiftMarker(const Pattern&, SectionId, int row, int boundary, MarkerId marker);  // writes a Shift move
Result<Edit> moveMarkerMove(const Pattern&, SectionId, int row, int moveIndex, int toBoundary);
Result<Edit> deleteMarkerMove(const Pattern&, SectionId, int row, int moveIndex);
Result<Edit> renameMarker(const Pattern&, MarkerId, std::string name);

Result<Edit> addBox(const Pattern&, SectionId, Box box); // given a fresh id
Result<Edit> setBox(const Pattern&, SectionId, const Box& box); // same id
Result<Edit> deleteBox(const Pattern&, SectionId, BoxId);
Result<Edit> addBracket(const Pattern&, SectionId, int firstRow, int lastRow, Quantity times);
Result<Edit> setBracket(const Pattern&, SectionId, int index, Bracket bracket);
Result<Edit> deleteBracket(const Pattern&, SectionId, int index);

} // namespace shawlwright
