// A row in the order it is worked, its stitch repeats as branches, and the gaps between its parts, where
// markers stand.
//
// Shape:   a sequence has one gap more than it has parts; gap i lies before part i. u counts columns in the
//          direction of work: on RS u = boundary, on WS u = columns - boundary. No-stitch cells are left out,
//          so are boxes of nothing else.
#pragma once

#include "core/pattern/pattern.h"
#include "core/wording/phrases.h"

#include <memory>
#include <span>
#include <vector>

namespace shawlwright {

struct RowSequence;

struct RowPart {
    Cell cell;      // of a stitch
    int column = 0; // its rightmost column; of a stitch repeat 0
    int width = 1;
    const Box* box = nullptr; // of a stitch repeat
    std::unique_ptr<RowSequence> inside;
    int u0 = 0, u1 = 0;
};

struct RowSequence {
    std::vector<RowPart> parts;
    std::vector<std::vector<MarkerPhrase>> gaps; // parts.size() + 1
};

// A stitch repeat that is told time by time instead.
struct Unrolled {
    const Box* box;
    int times;
};

// `boxes`: those on the row, outer ones first; they must outlive the tree.
RowSequence rowTree(const Row& row, std::span<const Box> boxes, const Catalogue& catalogue,
                    std::span<const Unrolled> unrolled = {});

// The gap in which a marker move is made, as the needle makes it: inside the narrowest stitch repeat around
// its boundary, outside of one that only ends there unless it is made each time. Null: in a repeat without
// stitches, so never.
std::vector<MarkerPhrase>* gapOf(RowSequence& tree, const Row& row, std::span<const Box> boxes,
                                 const MarkerMove& move);

} // namespace shawlwright
