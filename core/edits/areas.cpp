#include "core/edits/areas.h"

#include <algorithm>
#include <set>

namespace shawlwright {
namespace {

bool empty(const Area& area)
{
    return area.lastRow < area.firstRow || area.lastColumn < area.firstColumn;
}

// Runs that overlap or touch become one.
std::vector<IndexRun> merged(std::vector<IndexRun> runs)
{
    std::sort(runs.begin(), runs.end(),
              [](const IndexRun& a, const IndexRun& b) { return a.first < b.first; });
    std::vector<IndexRun> result;
    for (const IndexRun& run : runs)
        if (!result.empty() && run.first <= result.back().last + 1)
            result.back().last = std::max(result.back().last, run.last);
        else
            result.push_back(run);
    return result;
}

std::vector<IndexRun> cut(const std::vector<IndexRun>& runs, const IndexRun& out)
{
    std::vector<IndexRun> result;
    for (const IndexRun& run : runs) {
        if (const IndexRun before{run.first, std::min(run.last, out.first - 1)}; before.first <= before.last)
            result.push_back(before);
        if (const IndexRun after{std::max(run.first, out.last + 1), run.last}; after.first <= after.last)
            result.push_back(after);
    }
    return result;
}

// The set in its one form: bands of rows that are alike, then equal neighbours on top of each other joined.
Areas inOneForm(const Areas& with, const std::optional<Area>& less)
{
    std::set<int> edges; // rows where a band begins
    const auto addEdges = [&](const Area& area) {
        edges.insert(area.firstRow);
        edges.insert(area.lastRow + 1);
    };
    std::for_each(with.begin(), with.end(), addEdges);
    if (less)
        addEdges(*less);

    Areas areas;
    for (auto edge = edges.begin(); edge != edges.end(); ++edge) {
        const auto next = std::next(edge);
        if (next == edges.end())
            break;
        std::vector<IndexRun> columns;
        for (const Area& area : with)
            if (area.firstRow <= *edge && *edge <= area.lastRow)
                columns.push_back({area.firstColumn, area.lastColumn});
        columns = merged(std::move(columns));
        if (less && less->firstRow <= *edge && *edge <= less->lastRow)
            columns = cut(columns, {less->firstColumn, less->lastColumn});
        for (const IndexRun& run : columns) {
            const auto below = std::find_if(areas.begin(), areas.end(), [&](const Area& area) {
                return area.lastRow + 1 == *edge && area.firstColumn == run.first &&
                       area.lastColumn == run.last;
            });
            if (below != areas.end())
                below->lastRow = *next - 1;
            else
                areas.push_back(Area{*edge, *next - 1, run.first, run.last});
        }
    }
    return areas;
}

} // namespace

Areas joined(const Areas& areas, const Area& more)
{
    if (empty(more))
        return areas;
    Areas with = areas;
    with.push_back(more);
    return inOneForm(with, {});
}

Areas without(const Areas& areas, const Area& less)
{
    return empty(less) ? areas : inOneForm(areas, less);
}

Areas clipped(const Areas& areas, int rows, int columns)
{
    Areas result;
    for (Area area : areas) {
        area.firstRow = std::max(0, area.firstRow);
        area.lastRow = std::min(rows - 1, area.lastRow);
        area.firstColumn = std::max(1, area.firstColumn);
        area.lastColumn = std::min(columns, area.lastColumn);
        if (!empty(area))
            result.push_back(area);
    }
    return result == areas ? result : inOneForm(result, {});
}

Areas shifted(Areas areas, int rows, int columns)
{
    for (Area& area : areas) {
        area.firstRow += rows;
        area.lastRow += rows;
        area.firstColumn += columns;
        area.lastColumn += columns;
    }
    return areas;
}

bool holds(const Areas& areas, At at)
{
    return std::any_of(areas.begin(), areas.end(), [&](const Area& area) {
        return area.firstRow <= at.row && at.row <= area.lastRow && area.firstColumn <= at.column &&
               at.column <= area.lastColumn;
    });
}

int cellsIn(const Areas& areas)
{
    int cells = 0;
    for (const Area& area : areas)
        cells += (area.lastRow - area.firstRow + 1) * (area.lastColumn - area.firstColumn + 1);
    return cells;
}

std::optional<Area> around(const Areas& areas)
{
    if (areas.empty())
        return std::nullopt;
    Area whole = areas.front();
    for (const Area& area : areas)
        whole =
            Area{std::min(whole.firstRow, area.firstRow), std::max(whole.lastRow, area.lastRow),
                 std::min(whole.firstColumn, area.firstColumn), std::max(whole.lastColumn, area.lastColumn)};
    return whole;
}

std::vector<IndexRun> rowRuns(const Areas& areas)
{
    std::vector<IndexRun> runs;
    for (const Area& area : areas)
        runs.push_back({area.firstRow, area.lastRow});
    return merged(std::move(runs));
}

std::vector<IndexRun> columnRuns(const Areas& areas)
{
    std::vector<IndexRun> runs;
    for (const Area& area : areas)
        runs.push_back({area.firstColumn, area.lastColumn});
    return merged(std::move(runs));
}

} // namespace shawlwright
