#include "app/exports/abbreviations.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>
#include <set>

namespace shawlwright::app {

namespace {

// What to do on a side; the name alone says it for a stitch without a how-to.
std::string meaning(const Stitch& stitch, Side side)
{
    const std::string& howTo = side == Side::WS && !stitch.howToWS.empty() ? stitch.howToWS : stitch.howToRS;
    if (howTo.empty())
        return stitch.name;
    return howTo;
}

} // namespace

std::vector<Abbreviation> abbreviationsOf(const Pattern& pattern, const Catalogue& catalogue,
                                          std::span<const int> sections, Words words)
{
    std::set<std::pair<StitchId, Side>> used;
    for (const int section : sections)
        for (const RowRef& row : pattern.sections[static_cast<std::size_t>(section)].rows)
            for (const Cell& cell : row->cells)
                if (cell.stitch != noStitch && cell.part == 0)
                    used.insert({cell.stitch, row->side});
    // The stitch of that name explains it best: "k" from knit worked on RS, not from purl worked on WS.
    std::map<std::string, std::string> found;
    for (const Side side : {Side::RS, Side::WS})
        for (const auto& [id, workedOn] : used)
            if (workedOn == side) {
                const std::string& shortForm = abbreviation(catalogue.stitch(id), side, words);
                if (shortForm.empty() || found.contains(shortForm))
                    continue;
                const auto own = catalogue.worked(shortForm, Side::RS);
                found.emplace(shortForm, side == Side::WS && own ? meaning(catalogue.stitch(*own), Side::RS)
                                                                 : meaning(catalogue.stitch(id), side));
            }
    std::vector<Abbreviation> list;
    for (const auto& [shortForm, means] : found)
        list.push_back({shortForm, means});
    std::ranges::stable_sort(list, {}, [](const Abbreviation& it) { return lowered(it.shortForm); });
    return list;
}

} // namespace shawlwright::app
