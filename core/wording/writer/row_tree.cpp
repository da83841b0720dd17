#include "core/wording/writer/row_tree.h"

namespace shawlwright {
namespace {

struct Stretched {
    int u0, u1;
    const Box* box;
    int unrolled; // times; -1: stays a repeat
};

std::vector<RowPart> copyOf(const std::vector<RowPart>& stitches)
{
    std::vector<RowPart> copy;
    for (const RowPart& part : stitches)
        copy.push_back({part.cell, part.column, part.width, nullptr, nullptr, part.u0, part.u1});
    return copy;
}

RowSequence sequence(std::vector<RowPart>&& stitches, std::span<const Stretched> boxes)
{
    RowSequence result;
    for (std::size_t i = 0; i < stitches.size();) {
        std::size_t b = 0;
        while (b < boxes.size() && !(boxes[b].u0 <= stitches[i].u0 && stitches[i].u0 < boxes[b].u1))
            ++b;
        if (b == boxes.size()) {
            result.parts.push_back(std::move(stitches[i++]));
            continue;
        }
        std::vector<RowPart> inside;
        while (i < stitches.size() && stitches[i].u0 < boxes[b].u1)
            inside.push_back(std::move(stitches[i++]));
        if (boxes[b].unrolled >= 0) {
            for (int time = 0; time < boxes[b].unrolled; ++time)
                for (RowPart& part : sequence(copyOf(inside), boxes.subspan(b + 1)).parts)
                    result.parts.push_back(std::move(part));
            continue;
        }
        RowPart part;
        part.box = boxes[b].box;
        part.u0 = boxes[b].u0;
        part.u1 = boxes[b].u1;
        part.inside = std::make_unique<RowSequence>(sequence(std::move(inside), boxes.subspan(b + 1)));
        result.parts.push_back(std::move(part));
    }
    result.gaps.resize(result.parts.size() + 1);
    return result;
}

} // namespace

RowSequence rowTree(const Row& row, std::span<const Box> boxes, const Catalogue& catalogue,
                    std::span<const Unrolled> unrolled)
{
    const int columns = static_cast<int>(row.cells.size());
    std::vector<RowPart> stitches;
    for (int i = 1; i <= columns; ++i) {
        const int column = row.side == Side::RS ? i : columns + 1 - i;
        const Cell cell = cellAt(row, column);
        if (cell.stitch == noStitch || cell.part != 0)
            continue;
        RowPart part;
        part.cell = cell;
        part.column = column;
        part.width = catalogue.stitch(cell.stitch).width();
        part.u0 = row.side == Side::RS ? column - 1 : columns - (column + part.width - 1);
        part.u1 = part.u0 + part.width;
        stitches.push_back(std::move(part));
    }
    std::vector<Stretched> stretched;
    for (const Box& box : boxes) {
        int times = -1;
        for (const Unrolled& one : unrolled)
            if (one.box == &box)
                times = one.times;
        if (row.side == Side::RS)
            stretched.push_back({box.firstColumn - 1, box.lastColumn, &box, times});
        else
            stretched.push_back({columns - box.lastColumn, columns - box.firstColumn + 1, &box, times});
    }
    return sequence(std::move(stitches), stretched);
}

namespace {

RowSequence* inside(RowSequence& sequence, const Box* owner)
{
    for (RowPart& part : sequence.parts) {
        if (!part.inside)
            continue;
        if (part.box == owner)
            return part.inside.get();
        if (RowSequence* found = inside(*part.inside, owner))
            return found;
    }
    return nullptr;
}

} // namespace

std::vector<MarkerPhrase>* gapOf(RowSequence& tree, const Row& row, std::span<const Box> boxes,
                                 const MarkerMove& move)
{
    const Box* owner = nullptr;
    for (const Box& box : boxes) {
        const bool within = box.firstColumn - 1 < move.boundary && move.boundary < box.lastColumn;
        const bool atEdge = move.boundary == box.firstColumn - 1 || move.boundary == box.lastColumn;
        if (within || (atEdge && move.reach == MoveReach::EachTime))
            owner = &box;
    }
    RowSequence* sequence = owner ? inside(tree, owner) : &tree;
    if (!sequence)
        return nullptr;
    const int u = row.side == Side::RS ? move.boundary : static_cast<int>(row.cells.size()) - move.boundary;
    std::size_t gap = 0;
    while (gap < sequence->parts.size() && sequence->parts[gap].u0 < u)
        ++gap;
    return &sequence->gaps[gap];
}

} // namespace shawlwright
