#include "core/derived/repeat_fits.h"

#include "core/edits/marks.h"
#include "core/pattern/questions.h"

#include <algorithm>

namespace shawlwright {

namespace {

// A pattern with the repeat in it.
struct Tried {
    Pattern pattern;
    int section = 0, row = 0;
};

std::optional<Tried> withBox(const Pattern& pattern, SectionId section, const Box& box)
{
    const Result<Edit> edit = addBox(pattern, section, box);
    if (!edit.ok())
        return std::nullopt;
    Tried tried{pattern};
    apply(tried.pattern, edit.value());
    tried.section = sectionIndex(tried.pattern, section);
    tried.row = rowIndex(tried.pattern.sections[static_cast<std::size_t>(tried.section)], box.firstRow);
    return tried;
}

// The count of the repeat's first row doesn't come out, and not because of a row before it.
const Finding* misfit(const Tried& tried, const Ledger& ledger)
{
    const SectionId section = tried.pattern.sections[static_cast<std::size_t>(tried.section)].id;
    for (const Finding& finding : ledger.findings) {
        const bool ofCount = finding.kind == FindingKind::RepeatDoesNotFit ||
                             finding.kind == FindingKind::StitchesLeftOver ||
                             finding.kind == FindingKind::TooFewStitches;
        if (ofCount && finding.section == section && finding.row == tried.row && finding.followsFrom < 0)
            return &finding;
    }
    return nullptr;
}

std::optional<int> exactly(const Finding& finding)
{
    const bool says =
        finding.kind == FindingKind::RepeatDoesNotFit && finding.mend.kind == MendKind::SetBoxTimes;
    return says ? std::optional(finding.mend.number) : std::nullopt;
}

// As often as there are stitches for it: only for a row that is worked from edge to edge and has no other
// repeat.
std::optional<int> atMost(const Tried& tried, const Catalogue& catalogue, const Ledger& ledger,
                          const Box& box)
{
    const Section& section = tried.pattern.sections[static_cast<std::size_t>(tried.section)];
    const Row& row = *section.rows[static_cast<std::size_t>(tried.row)];
    const int line = firstLineOf(ledger, tried.section, tried.row);
    const bool toTheEnd = row.finish.kind == FinishKind::Turn || row.finish.kind == FinishKind::Round;
    if (line < 0 || !toTheEnd || row.start.kind != StartKind::Continue ||
        boxesOn(section, tried.row).size() != 1)
        return std::nullopt;
    const Needle& needle = ledger.before[static_cast<std::size_t>(line)];
    if (needle.tip != 0 && needle.tip != needle.count())
        return std::nullopt;
    int once = 0, beside = 0;
    for (int column = 1; column <= static_cast<int>(row.cells.size()); ++column) {
        const Cell cell = cellAt(row, column);
        if (cell.stitch == noStitch || cell.part != 0)
            continue;
        (column >= box.firstColumn && column <= box.lastColumn ? once : beside) +=
            catalogue.stitch(cell.stitch).takesUp;
    }
    const int times = once > 0 ? (needle.count() - beside) / once : 0;
    return times > 0 ? std::optional(times) : std::nullopt;
}

} // namespace

std::optional<Quantity> timesThatFitEach(const Pattern& pattern, const Catalogue& catalogue,
                                         SectionId section, const Box& box, RunChoice shown)
{
    const auto tried = withBox(pattern, section, box);
    if (!tried)
        return std::nullopt;
    const int sizes = std::max(1, static_cast<int>(pattern.head.sizes.size()));
    std::vector<std::optional<int>> each;
    for (int size = 0; size < sizes; ++size) {
        const Ledger ledger = run(tried->pattern, catalogue, {shown.version, size});
        const Finding* finding = misfit(*tried, ledger);
        std::optional<int> times = finding ? exactly(*finding) : std::optional(box.times.at(size));
        each.push_back(times || !finding ? times : atMost(*tried, catalogue, ledger, box));
    }
    const auto known =
        std::find_if(each.begin(), each.end(), [](const auto& one) { return one.has_value(); });
    if (known == each.end())
        return std::nullopt;
    const int other = each[static_cast<std::size_t>(std::clamp(shown.size, 0, sizes - 1))].value_or(**known);
    std::vector<int> values;
    for (const auto& one : each)
        values.push_back(one.value_or(other));
    const bool same =
        std::all_of(values.begin(), values.end(), [&](int value) { return value == values.front(); });
    return same ? Quantity(values.front()) : Quantity(std::move(values));
}

} // namespace shawlwright
