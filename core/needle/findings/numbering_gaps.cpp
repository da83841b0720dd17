#include "core/needle/findings/checks.h"

#include "core/base/text.h"

namespace shawlwright {

// Typed row numbers must go on from the row before.
void findNumberingGaps(const Ledger& ledger, const Pattern& pattern, std::vector<Finding>& findings)
{
    for (std::size_t s = 0; s < pattern.sections.size(); ++s) {
        const Section& section = pattern.sections[s];
        bool typed = false;
        for (const RowRef& row : section.rows)
            typed = typed || !row->label.empty();
        if (!typed)
            continue;
        const std::vector<std::string> labels = rowLabels(section);
        for (std::size_t r = 1; r < labels.size(); ++r) {
            const auto before = readInt(labels[r - 1]);
            const auto here = readInt(labels[r]);
            if (section.rows[r]->label.empty() || !before || !here || *here == *before + 1)
                continue;
            Finding finding;
            finding.severity = Severity::Warning;
            finding.kind = FindingKind::NumberingGap;
            finding.section = section.id;
            finding.row = static_cast<int>(r);
            finding.line = firstLineOf(ledger, static_cast<int>(s), static_cast<int>(r));
            if (finding.line < 0)
                continue; // not knitted in this version
            finding.message = "is numbered " + labels[r] + " after Row " + labels[r - 1] + "; " + toText(*before + 1) +
                              " would go on from it";
            finding.mend = {MendKind::SetLabel, "Number it " + toText(*before + 1), 0, {}, 0, {}, {}, toText(*before + 1)};
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace shawlwright
