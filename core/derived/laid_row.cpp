#include "core/derived/laid_row.h"

#include "core/wording/reader/layout.h"

namespace shawlwright {
namespace {

bool doubleStitchDue(const Needle& needle, const Row& row)
{
    return needle.lastFinish == FinishKind::TurnEarly && needle.lastMethod == TurnMethod::DoubleStitch &&
           row.start.kind == StartKind::Continue;
}

// Two neighbouring loops of one double yarn over, `second` worked after `first`.
bool sameYarnOver(const Loop& first, const Loop& second, Side side)
{
    const int step = side == Side::RS ? 1 : -1;
    return first.kind == LoopKind::YarnOver && second.kind == LoopKind::YarnOver &&
           first.madeIn == second.madeIn && first.stitch == second.stitch &&
           second.part == first.part + step && second.column == first.column + step;
}

} // namespace

LoopsAhead loopsAhead(const Needle& needle, const Row& row, const RowContext& context)
{
    // One stitch tells where the tip is, whatever the start.
    Row probe;
    probe.side = row.side;
    probe.yarn = row.yarn;
    probe.start = row.start;
    probe.cells = {Cell{context.catalogue.require("k"), {}, 0}};
    RowContext alone = context;
    alone.boxes = {};
    Needle copy = needle;
    Trace trace;
    workRow(copy, probe, alone, &trace);
    if (trace.cells.empty())
        return {};
    const WorkedCell& cell = trace.cells.front();
    const int tip = row.side == Side::RS ? cell.firstLoop : cell.firstLoop + cell.takesUp;
    return {tip, row.side == Side::RS ? needle.count() - tip : tip};
}

std::vector<StitchId> plainStitches(const Needle& needle, const Row& row, LoopsAhead ahead, int count,
                                    PlainStitch how, const Catalogue& catalogue)
{
    const StitchId knit = catalogue.require("k"), purl = catalogue.require("p");
    const auto loopAt = [&](int i) -> const Loop& {
        return needle
            .loops[static_cast<std::size_t>(row.side == Side::RS ? ahead.tip + i : ahead.tip - 1 - i)];
    };
    const Face wanted = (how == PlainStitch::Purl) == (row.side == Side::RS) ? Face::Purl : Face::Knit;
    std::vector<StitchId> stitches;
    Face last = Face::Knit;
    for (int i = 0; i < count && i < ahead.count; ++i) {
        const Loop& loop = loopAt(i);
        Face face = how == PlainStitch::AsTheyShow ? loop.face : wanted;
        if (how == PlainStitch::AsTheyShow && loop.kind == LoopKind::YarnOver && i + 1 < ahead.count &&
            sameYarnOver(loop, loopAt(i + 1), row.side))
            face = row.side == Side::RS ? Face::Knit : Face::Purl; // worked as a knit
        if (i > 0 && sameYarnOver(loopAt(i - 1), loop, row.side))
            face = last == Face::Knit ? Face::Purl : Face::Knit;
        last = face;
        if (i == 0 && doubleStitchDue(needle, row))
            stitches.push_back(catalogue.require("ds"));
        else if ((loop.flags & BriochePair) != 0)
            stitches.push_back(catalogue.require(face == Face::Knit ? "brk" : "brp"));
        else
            stitches.push_back(face == Face::Knit ? knit : purl);
    }
    return stitches;
}

Row laidOver(const std::vector<StitchId>& worked, Row base, const std::vector<MoveBefore>& moves,
             const Needle& before, const RowContext& context, int columns)
{
    RowDraft draft;
    for (const StitchId stitch : worked)
        draft.cells.push_back({Cell{stitch, {}, 0}, context.catalogue.stitch(stitch).width()});
    for (const MoveBefore& one : moves)
        draft.moves.push_back({std::min(one.stitch, worked.size()), one.move.marker, one.move.kind});
    base.cells.clear();
    base.moves.clear();
    const Row tight = placed(draft, base, compact(draft), draft.width()).row;
    RowContext alone = context;
    alone.boxes = {};
    Needle after = before;
    Trace trace;
    workRow(after, tight, alone, &trace);
    const int width = std::max(columns, draft.width());
    Row row = placed(draft, base, overParents(draft, tight, before, trace, width), width).row;
    for (std::size_t i = 0; i < moves.size(); ++i)
        row.moves[i].unknown = moves[i].move.unknown;
    return row;
}

} // namespace shawlwright
