#include "app/canvas/turn_cut.h"

#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright::app {

namespace {

const Row* rowAt(const Pattern& pattern, SectionId section, int row)
{
    const int index = sectionIndex(pattern, section);
    if (index < 0)
        return nullptr;
    const auto& rows = pattern.sections[static_cast<std::size_t>(index)].rows;
    return row >= 0 && row < static_cast<int>(rows.size()) ? rows[static_cast<std::size_t>(row)].get()
                                                           : nullptr;
}

Fault noSuchRow()
{
    return Fault{{}, {}, "this row isn't there any more; choose another"};
}

// The boundary, moved back until it cuts no stitch in two.
int uncut(const Row& row, int boundary)
{
    while (boundary > 0 && boundary < static_cast<int>(row.cells.size()) &&
           cellAt(row, boundary + 1).part > 0)
        boundary += row.side == Side::RS ? -1 : 1;
    return boundary;
}

} // namespace

Result<Edit> turnedAt(const Pattern& pattern, SectionId section, int row, int boundary, TurnMethod method)
{
    const Row* old = rowAt(pattern, section, row);
    if (!old)
        return noSuchRow();
    Row turned = *old;
    const int columns = static_cast<int>(turned.cells.size());
    const int cut = uncut(turned, std::clamp(boundary, 0, columns));
    const int from = turned.side == Side::RS ? cut : 0;
    const int to = turned.side == Side::RS ? columns : cut;
    std::fill(turned.cells.begin() + from, turned.cells.begin() + to, Cell{});
    turned.finish.kind = FinishKind::TurnEarly;
    turned.finish.method = method;
    return setRow(pattern, section, row, std::move(turned), "turn early");
}

Result<Edit> workedToItsEnd(const Pattern& pattern, SectionId section, int row)
{
    const Row* old = rowAt(pattern, section, row);
    if (!old)
        return noSuchRow();
    Row whole = *old;
    if (whole.finish.kind == FinishKind::TurnEarly) {
        whole.finish.kind = FinishKind::Turn;
        whole.finish.method = TurnMethod::Plain;
    }
    return setRow(pattern, section, row, std::move(whole), "turn at the end");
}

} // namespace shawlwright::app
