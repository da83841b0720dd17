#include "core/edits/mirror_edit.h"

#include "core/edits/checks.h"

#include <algorithm>
#include <set>

namespace shawlwright {
namespace {

Row mirroredRow(const Row& was, const Row& now, const Catalogue& catalogue, int sum)
{
    const int columns = static_cast<int>(now.cells.size());
    std::set<int> changed;
    for (int column = 1; column <= columns; ++column)
        if (cellAt(was, column) != cellAt(now, column))
            changed.insert(column);
    const auto free = [&](int first, int last) {
        if (first < 1 || last > columns)
            return false;
        const auto own = changed.lower_bound(first);
        return own == changed.end() || *own > last;
    };
    Row row = now;
    for (const int column : changed) // taken away first: a stitch put down beside it stays whole
        if (cellAt(now, column).stitch == noStitch && free(sum - column, sum - column))
            row = painted(std::move(row), catalogue, sum - column, noStitch, {});
    for (const int column : changed) {
        const Cell cell = cellAt(now, column);
        if (cell.stitch == noStitch || cell.part != 0)
            continue;
        const StitchId image = catalogue.mirrored(cell.stitch).value_or(cell.stitch);
        const int width = catalogue.stitch(cell.stitch).width();
        if (catalogue.stitch(image).width() != width)
            continue;
        const int first = sum - (column + width - 1);
        if (free(first, first + width - 1))
            row = painted(std::move(row), catalogue, first, image, cell.yarn);
    }
    return row;
}

} // namespace

Edit mirroredToo(const Pattern& pattern, const Catalogue& catalogue, SectionId id, Edit edit,
                 const MirrorSum& sumOf)
{
    const int at = sectionIndex(pattern, id);
    const bool splices = std::any_of(edit.steps.begin(), edit.steps.end(), [](const EditStep& step) {
        return std::holds_alternative<SpliceRows>(step) || std::holds_alternative<SpliceSections>(step);
    });
    if (at < 0 || splices)
        return edit;
    const Section& section = pattern.sections[static_cast<std::size_t>(at)];
    for (EditStep& step : edit.steps)
        if (auto* swap = std::get_if<SwapRows>(&step); swap && swap->section == id)
            for (auto& [row, now] : swap->rows)
                if (const auto sum = sumOf(row))
                    now = std::make_shared<const Row>(
                        mirroredRow(*section.rows[static_cast<std::size_t>(row)], *now, catalogue, *sum));
    return edit;
}

} // namespace shawlwright
