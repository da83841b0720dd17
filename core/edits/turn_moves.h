// Early turns that an edit moves without being asked: a short row turns after its last stitch, so a stitch painted
// beyond it, or taken away before it, takes the turn along.
//
// Shape:   columns of the last stitch worked (a stitch repeat is worked up to its border), before and after; rows that turn early before and after alike, and hold
//          stitches both times.
#pragma once

#include "core/edits/edit.h"

namespace shawlwright {

struct TurnMove {
    SectionId section;
    int row = 0;
    int from = 0, to = 0;
};

std::vector<TurnMove> turnMoves(const Pattern& before, const Edit& edit);

// "Row 5 turns after stitch 12 now; it turned after stitch 9. ..."; rows beyond the first are
// counted. Nothing where no turn moves.
std::string turnMovesInWords(const Pattern& pattern, const std::vector<TurnMove>& moves);

} // namespace shawlwright
