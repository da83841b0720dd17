#include "app/canvas/brackets.h"

#include "core/base/text.h"
#include "core/pattern/questions.h"

#include <algorithm>
#include <numeric>

namespace shawlwright::app {

namespace {

std::string timesInWords(const Quantity& times)
{
    std::string words = toText(times.at(0));
    for (std::size_t size = 1; size < times.values.size(); ++size)
        words += (size == 1 ? " (" : ", ") + toText(times.values[size]);
    return words + (times.single() ? "\u00d7" : ")\u00d7");
}

} // namespace

std::vector<BracketPlace> bracketPlaces(const Section& section)
{
    std::vector<BracketPlace> places;
    for (std::size_t index = 0; index < section.frame.brackets.size(); ++index) {
        const Bracket& bracket = section.frame.brackets[index];
        const int first = rowIndex(section, bracket.firstRow);
        const int last = rowIndex(section, bracket.lastRow);
        if (first >= 0 && last >= first)
            places.push_back({static_cast<int>(index), first, last, 0, timesInWords(bracket.times)});
    }
    // Shorter ones first: each goes one out from the deepest that it holds.
    std::stable_sort(places.begin(), places.end(), [](const BracketPlace& a, const BracketPlace& b) {
        return a.lastRow - a.firstRow < b.lastRow - b.firstRow;
    });
    for (std::size_t outer = 0; outer < places.size(); ++outer)
        for (std::size_t inner = 0; inner < outer; ++inner)
            if (places[inner].firstRow >= places[outer].firstRow &&
                places[inner].lastRow <= places[outer].lastRow)
                places[outer].depth = std::max(places[outer].depth, places[inner].depth + 1);
    return places;
}

int depths(const std::vector<BracketPlace>& places)
{
    return std::accumulate(places.begin(), places.end(), 0, [](int most, const BracketPlace& place) {
        return std::max(most, place.depth + 1);
    });
}

} // namespace shawlwright::app
