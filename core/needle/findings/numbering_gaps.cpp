#include "core/needle/findings/checks.h"

#include "core/base/text.h"

#include <algorithm>
#include <set>

namespace shawlwright {
namespace {

// The number of a row and those of the rows that its repeats knit after it: after "Row 16. Rep Rows 15 and 16 twice
// more." a designer goes on with 17 or with 21.
std::set<int> endsAt(const Section& section, const std::vector<std::string>& labels, std::size_t row, int number)
{
    std::vector<std::pair<std::size_t, const Bracket*>> ending; // first row; inner ones first
    for (const Bracket& bracket : section.frame.brackets) {
        const int first = rowIndex(section, bracket.firstRow);
        if (first >= 0 && rowIndex(section, bracket.lastRow) == static_cast<int>(row))
            ending.emplace_back(static_cast<std::size_t>(first), &bracket);
    }
    std::sort(ending.begin(), ending.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    std::set<int> ends{number};
    for (const auto& [first, bracket] : ending) {
        const auto begin = readInt(labels[first]);
        const std::set<int> once = ends;
        for (const int end : once)
            for (const int times : bracket->times.values)
                if (begin && *begin <= end && times > 1 && (end - *begin + 1LL) * times < mostCount)
                    ends.insert(end + (end - *begin + 1) * (times - 1));
    }
    return ends;
}

} // namespace

// Typed row numbers must go on from the row before, its repeats counted or not.
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
            if (section.rows[r]->label.empty() || !before || !here ||
                endsAt(section, labels, r - 1, *before).contains(*here - 1))
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
