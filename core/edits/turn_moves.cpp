#include "core/edits/turn_moves.h"

#include "core/base/text.h"

namespace shawlwright {
namespace {

int lastWorked(const Row& row, const std::vector<Box>& boxes)
{
    const ColumnSpan used = usedColumns(row, boxes);
    return row.side == Side::RS ? used.last : used.first;
}

} // namespace

std::vector<TurnMove> turnMoves(const Pattern& before, const Edit& edit)
{
    std::vector<TurnMove> moves;
    for (const EditStep& step : edit.steps) {
        const auto* swap = std::get_if<SwapRows>(&step);
        const int section = swap ? sectionIndex(before, swap->section) : -1;
        if (section < 0)
            continue;
        const std::vector<RowRef>& rows = before.sections[static_cast<std::size_t>(section)].rows;
        for (const auto& [at, now] : swap->rows) {
            if (at >= static_cast<int>(rows.size()))
                continue;
            const Row& was = *rows[static_cast<std::size_t>(at)];
            if (was.finish.kind != FinishKind::TurnEarly || now->finish.kind != FinishKind::TurnEarly)
                continue;
            const std::vector<Box> boxes = boxesOn(before.sections[static_cast<std::size_t>(section)], at);
            const int from = lastWorked(was, boxes), to = lastWorked(*now, boxes);
            if (from > 0 && to > 0 && from != to)
                moves.push_back({swap->section, at, from, to});
        }
    }
    return moves;
}

std::string turnMovesInWords(const Pattern& pattern, const std::vector<TurnMove>& moves)
{
    if (moves.empty())
        return {};
    const TurnMove& first = moves.front();
    const Section& section = pattern.sections[static_cast<std::size_t>(sectionIndex(pattern, first.section))];
    std::string words = "Row " + rowLabels(section)[static_cast<std::size_t>(first.row)] +
                        " turns after stitch " + toText(first.to) + " now; it turned after stitch " + toText(first.from);
    if (const std::size_t more = moves.size() - 1; more > 0)
        words += more == 1 ? ", and so in 1 other row" : ", and so in " + toText(static_cast<int>(more)) + " other rows";
    return words + ". Undo, or set the turn anew with the tool Turn (T).";
}

} // namespace shawlwright
