#include "core/wording/writer/phrase_columns.h"

#include <algorithm>

namespace shawlwright {

void cover(Phrase& phrase, const Phrase& part)
{
    if (part.firstColumn == 0)
        return;
    phrase.firstColumn =
        phrase.firstColumn == 0 ? part.firstColumn : std::min(phrase.firstColumn, part.firstColumn);
    phrase.lastColumn = std::max(phrase.lastColumn, part.lastColumn);
}

void append(Phrases& phrases, Phrase phrase)
{
    const auto* run = std::get_if<Stretch>(&phrase.is);
    auto* before = phrases.empty() ? nullptr : std::get_if<Stretch>(&phrases.back().is);
    if (run && before && run->stitch == before->stitch && run->yarn == before->yarn && run->count > 0 && before->count > 0) {
        before->count += run->count;
        cover(phrases.back(), phrase);
    } else {
        phrases.push_back(std::move(phrase));
    }
}

Phrase partOfRun(const Phrase& run, int from, int to, const Row& row, const Catalogue& catalogue)
{
    Phrase part = run;
    auto& stretch = std::get<Stretch>(part.is);
    if (from == 0 && to == stretch.count)
        return part;
    const int width = catalogue.stitch(stretch.stitch).width();
    int seen = 0;
    int first = 0;
    int last = 0;
    for (int i = 0; i <= run.lastColumn - run.firstColumn; ++i) {
        const int column = row.side == Side::RS ? run.firstColumn + i : run.lastColumn - i;
        const Cell cell = cellAt(row, column);
        if (cell.stitch != stretch.stitch || cell.part != 0)
            continue;
        if (seen >= from && seen < to) {
            first = first == 0 ? column : std::min(first, column);
            last = std::max(last, column + width - 1);
        }
        ++seen;
    }
    if (seen == stretch.count && first > 0) {
        part.firstColumn = first;
        part.lastColumn = last;
    }
    stretch.count = to - from;
    return part;
}

} // namespace shawlwright
