#include "core/edits/replace_stitch.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>

namespace shawlwright {
namespace {

// The areas meant, inside the section.
Areas areasOf(const Section& section, const Areas& within)
{
    const int rows = static_cast<int>(section.rows.size());
    if (within.empty())
        return joined({}, Area{0, rows - 1, 1, section.frame.columns});
    return clipped(within, rows, section.frame.columns);
}

// Calls back with the columns of each whole stitch of the section's row that is selected from end to end.
template <typename Act>
void eachStitch(const Section& section, const Areas& areas, int at, const Act& act)
{
    const Row& row = *section.rows[static_cast<std::size_t>(at)];
    for (const Area& area : areas) {
        if (at < area.firstRow || at > area.lastRow)
            continue;
        const int last = std::min(area.lastColumn, static_cast<int>(row.cells.size()));
        for (int column = area.firstColumn; column <= last; ++column) {
            const Cell cell = cellAt(row, column);
            if (cell.stitch == noStitch)
                continue;
            const Columns stitch = stitchAround(row, column);
            if (stitch.first >= area.firstColumn && stitch.last <= area.lastColumn)
                act(stitch, cell.stitch);
            column = std::max(column, stitch.last);
        }
    }
}

std::string wordsOf(const Catalogue& catalogue, StitchId id)
{
    const Stitch& stitch = catalogue.stitch(id);
    const std::string& word = abbreviation(stitch, Side::RS);
    return word.empty() ? stitch.name : word;
}

} // namespace

Result<Replaced> replaceStitch(const Pattern& pattern, const Catalogue& catalogue, SectionId id,
                               const Areas& within, StitchId from, StitchId to)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    for (const StitchId stitch : {from, to})
        if (stitch == noStitch || !catalogue.known(stitch))
            return Fault{{}, sectionWords(section), "choose a stitch to replace and one to put in its place"};
    const int width = catalogue.stitch(from).width(), wanted = catalogue.stitch(to).width();
    if (width != wanted)
        return Fault{{},
                     sectionWords(section),
                     wordsOf(catalogue, from) + " is " + counted(width, "column") + " wide and " +
                         wordsOf(catalogue, to) + " " + toText(wanted) +
                         "; choose one of the same width, or paint it"};
    Replaced replaced;
    std::map<int, Row> rows;
    const Areas areas = areasOf(section, within);
    for (const IndexRun& run : rowRuns(areas))
        for (int at = run.first; at <= run.last; ++at) {
            Row row = *section.rows[static_cast<std::size_t>(at)];
            int here = 0;
            eachStitch(section, areas, at, [&](Columns stitch, StitchId is) {
                if (is != from)
                    return;
                ++here;
                for (int column = stitch.first; column <= stitch.last; ++column)
                    row.cells[static_cast<std::size_t>(column) - 1].stitch = to;
            });
            replaced.count += here;
            if (here > 0)
                rows.emplace(at, std::move(row));
        }
    if (replaced.count == 0)
        return Fault{{},
                     sectionWords(section),
                     wordsOf(catalogue, from) + " doesn't stand " +
                         (within.empty() ? "in its chart" : "in the selection") + "; choose another stitch" +
                         (within.empty() ? "" : " or select more")};
    replaced.edit.name = "replace " + wordsOf(catalogue, from) + " by " + wordsOf(catalogue, to);
    addSwap(replaced.edit, section, std::move(rows));
    return replaced;
}

std::vector<StitchId> stitchesIn(const Section& section, const Areas& within)
{
    std::map<StitchId, int> counts;
    const Areas areas = areasOf(section, within);
    for (const IndexRun& run : rowRuns(areas))
        for (int at = run.first; at <= run.last; ++at)
            eachStitch(section, areas, at, [&](Columns, StitchId stitch) { ++counts[stitch]; });
    std::vector<StitchId> stitches;
    for (const auto& entry : counts)
        stitches.push_back(entry.first);
    std::stable_sort(stitches.begin(), stitches.end(),
                     [&](StitchId a, StitchId b) { return counts[a] > counts[b]; });
    return stitches;
}

} // namespace shawlwright
