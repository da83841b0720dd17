// The lines of a section before their words are joined: which rows each tells.
//
// Shape:   in the order read. Rows on one side that stay alike while those between differ are told where the
// first of them
//          stands ("Row 4 and all following WS rows: purl.", "Rows 2, 4 and 6").
#pragma once

#include "core/wording/writer/fewest_lines.h"
#include "core/wording/writer/gather.h"
#include "core/wording/writer/row_labels.h"

namespace shawlwright {

struct LineDraft {
    WrittenLine::Kind kind = WrittenLine::Kind::Rows;
    LabelledRows label;
    std::vector<int> rows;           // all that it speaks of
    const WrittenRow* own = nullptr; // a row repeat of the designer's
    bool ownCount = true;
    int first = 0, last = 0, times = 1; // of a found repeat
    RunLines ends;
};

// Gathered.
std::vector<LineDraft> gatheredLines(const SectionFacts& facts, const AlikeRows& rows,
                                     std::span<const SectionNode> nodes);
// Each row and row repeat by itself.
std::vector<LineDraft> rowByRow(const SectionFacts& facts, const AlikeRows& rows);

} // namespace shawlwright
