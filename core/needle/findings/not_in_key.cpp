#include "core/needle/findings/checks.h"

#include <set>

namespace shawlwright {

// The key is made from the stitches themselves; one that says nothing of itself would be blank there.
void findNotInKey(const Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue, std::vector<Finding>& findings)
{
    if (pattern.head.stitches.empty())
        return;
    std::set<StitchId> told;
    for (std::size_t i = 0; i < ledger.rows.size(); ++i) {
        const Row& row = *ledger.rows[i].ref;
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            const StitchId id = row.cells[c].stitch;
            if (id.value < firstOwnStitch || told.contains(id))
                continue;
            const Stitch& stitch = catalogue.stitch(id);
            if (catalogue.known(id) && !stitch.name.empty() && !stitch.howToRS.empty())
                continue;
            told.insert(id);
            Finding finding;
            finding.severity = Severity::Warning;
            finding.kind = FindingKind::NotInKey;
            finding.section = pattern.sections[static_cast<std::size_t>(ledger.rows[i].section)].id;
            finding.row = ledger.rows[i].row;
            finding.line = static_cast<int>(i);
            finding.column = static_cast<int>(c) + 1;
            finding.message = "uses " + (stitch.onRS.empty() ? std::string("a stitch") : stitch.onRS) +
                              ", which the key can't explain; " +
                              (!catalogue.known(id)         ? "replace it by a stitch of the pattern"
                               : !stitch.name.empty()       ? "say how it is worked"
                               : !stitch.howToRS.empty()    ? "give it a name"
                                                            : "give it a name and say how it is worked");
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace shawlwright
