#include "core/derived/repeat_fits.h"

#include "core/edits/marks.h"

namespace shawlwright {

std::optional<int> timesThatFit(const Pattern& pattern, const Catalogue& catalogue, SectionId section,
                                const Box& box, RunChoice choice)
{
    const Result<Edit> edit = addBox(pattern, section, box);
    if (!edit.ok())
        return std::nullopt;
    Pattern tried = pattern;
    apply(tried, edit.value());
    for (const Finding& finding : run(tried, catalogue, choice).findings)
        if (finding.kind == FindingKind::RepeatDoesNotFit && finding.section == section &&
            finding.mend.kind == MendKind::SetBoxTimes && finding.followsFrom < 0 && finding.row >= 0 &&
            tried.sections[static_cast<std::size_t>(sectionIndex(tried, section))]
                    .rows[static_cast<std::size_t>(finding.row)]
                    ->id == box.firstRow)
            return finding.mend.number;
    return std::nullopt;
}

} // namespace shawlwright
