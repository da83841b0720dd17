#include "core/edits/selected.h"

#include "core/base/text.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright {
namespace {

Fault nothingSelected()
{
    return Fault{{}, "", "nothing is selected; select stitches first"};
}

int countOf(const std::vector<IndexRun>& runs)
{
    int count = 0;
    for (const IndexRun& run : runs)
        count += run.last - run.first + 1;
    return count;
}

} // namespace

Result<Edit> inTurn(const Pattern& pattern, std::string name, const std::vector<Maker>& makers)
{
    Pattern after = pattern; // rows are shared, so this costs a pointer per row
    Edit whole{std::move(name), {}};
    for (const Maker& make : makers) {
        auto edit = make(after);
        if (!edit.ok())
            return edit.fault();
        if (whole.name.empty())
            whole.name = edit.value().name;
        apply(after, edit.value());
        whole = composed(std::move(whole), std::move(edit.value()));
    }
    return whole;
}

Result<Edit> fill(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Areas& areas,
                  StitchId stitch, YarnId yarn)
{
    if (areas.empty())
        return nothingSelected();
    std::vector<Maker> makers;
    for (const Area& area : areas)
        makers.push_back(
            [&, area](const Pattern& now) { return fill(now, catalogue, id, area, stitch, yarn); });
    return inTurn(pattern, "", makers);
}

Result<Edit> erase(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Areas& areas)
{
    std::vector<At> cells;
    for (const Area& area : areas)
        for (int row = area.firstRow; row <= area.lastRow; ++row)
            for (int column = area.firstColumn; column <= area.lastColumn; ++column)
                cells.push_back(At{row, column});
    return erase(pattern, catalogue, id, cells);
}

Result<Edit> deleteRows(const Pattern& pattern, SectionId id, const std::vector<IndexRun>& rows)
{
    if (rows.empty())
        return nothingSelected();
    if (rows.size() == 1)
        return deleteRows(pattern, id, rows.front().first, rows.front().last);
    std::vector<Maker> makers; // from the top, so that the indexes below stay true
    for (auto run = rows.rbegin(); run != rows.rend(); ++run)
        makers.push_back(
            [id, run = *run](const Pattern& now) { return deleteRows(now, id, run.first, run.last); });
    return inTurn(pattern, "delete " + counted(countOf(rows), "row"), makers);
}

Result<Edit> deleteColumns(const Pattern& pattern, const Catalogue& catalogue, SectionId id,
                           const std::vector<IndexRun>& columns)
{
    if (columns.empty())
        return nothingSelected();
    if (columns.size() == 1)
        return deleteColumns(pattern, catalogue, id, columns.front().first, columns.front().last);
    std::vector<Maker> makers;
    for (auto run = columns.rbegin(); run != columns.rend(); ++run)
        makers.push_back([&catalogue, id, run = *run](const Pattern& now) {
            return deleteColumns(now, catalogue, id, run.first, run.last);
        });
    return inTurn(pattern, "delete " + counted(countOf(columns), "column"), makers);
}

} // namespace shawlwright
