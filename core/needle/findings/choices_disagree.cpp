#include "core/needle/findings/checks.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>

namespace shawlwright {
namespace {

// The count when a section begins; -1: the section isn't knitted.
int countAtStart(const Ledger& ledger, int section)
{
    for (std::size_t i = 0; i < ledger.rows.size(); ++i)
        if (ledger.rows[i].section == section)
            return ledger.before[i].count();
    return -1;
}

int countAtEnd(const Ledger& ledger)
{
    return ledger.before.back().count();
}

using RowAt = std::pair<int, int>; // section, row

// With the first thing that is wrong in each.
std::map<RowAt, std::string> rowsThatFail(const Ledger& ledger)
{
    std::map<RowAt, std::string> rows;
    for (std::size_t i = 0; i < ledger.rows.size(); ++i)
        for (const Finding& finding : ledger.lines[i].findings)
            if (finding.severity == Severity::Error)
                rows.emplace(RowAt(ledger.rows[i].section, ledger.rows[i].row), finding.message);
    return rows;
}

} // namespace

void findVersionsDisagree(const std::vector<Ledger>& ledgers, const Pattern& pattern, std::vector<Finding>& findings)
{
    if (versionCount(pattern) < 2)
        return;
    const auto tell = [&](int section, const std::string& where, const Ledger& a, int countA, const Ledger& b, int countB) {
        Finding finding;
        finding.severity = Severity::Error;
        finding.kind = FindingKind::VersionsDisagree;
        if (section >= 0) {
            finding.section = pattern.sections[static_cast<std::size_t>(section)].id;
            finding.row = 0;
            finding.line = firstLineOf(a, section, 0);
        }
        finding.message = where + " the " + versionName(pattern, a.choice.version) + " version has " +
                          counted(countA, "stitch") + ", the " + versionName(pattern, b.choice.version) + " version " +
                          toText(countB) + "; let both come to the same count";
        const bool told = std::any_of(findings.begin(), findings.end(), [&](const Finding& one) { // of another size
            return one.kind == finding.kind && one.section == finding.section && one.message == finding.message;
        });
        if (!told)
            findings.push_back(std::move(finding));
    };
    for (std::size_t i = 0; i < ledgers.size(); ++i)
        for (std::size_t j = i + 1; j < ledgers.size(); ++j) {
            const Ledger& a = ledgers[i];
            const Ledger& b = ledgers[j];
            if (a.choice.size != b.choice.size || a.choice.version != 0)
                continue;
            bool agreed = true;
            for (std::size_t s = 0; s < pattern.sections.size() && agreed; ++s) {
                const int countA = countAtStart(a, static_cast<int>(s));
                const int countB = countAtStart(b, static_cast<int>(s));
                agreed = countA < 0 || countB < 0 || countA == countB;
                if (!agreed)
                    tell(static_cast<int>(s), "where the versions meet,", a, countA, b, countB);
            }
            const bool lastShared = !pattern.sections.empty() && countAtStart(a, static_cast<int>(pattern.sections.size()) - 1) >= 0 &&
                                    countAtStart(b, static_cast<int>(pattern.sections.size()) - 1) >= 0;
            if (agreed && !lastShared && countAtEnd(a) != countAtEnd(b))
                tell(-1, "at the end", a, countAtEnd(a), b, countAtEnd(b));
        }
}

void findSizesDisagree(const std::vector<Ledger>& ledgers, const Pattern& pattern, RunChoice shown,
                       std::vector<Finding>& findings)
{
    const int sizes = sizeCount(pattern);
    if (sizes < 2)
        return;
    // Each section in the version that is shown, or else in the first that has it.
    const auto toldIn = [&](const Section& section) {
        if (belongsTo(section, pattern, shown.version))
            return shown.version;
        int version = 0;
        while (version + 1 < versionCount(pattern) && !belongsTo(section, pattern, version))
            ++version;
        return version;
    };
    std::map<RowAt, std::map<int, std::string>> failing; // what is wrong, by row and size
    for (const Ledger& ledger : ledgers)
        for (auto& [row, wrong] : rowsThatFail(ledger))
            if (toldIn(pattern.sections[static_cast<std::size_t>(row.first)]) == ledger.choice.version)
                failing[row].emplace(ledger.choice.size, std::move(wrong));
    for (const auto& [row, failed] : failing) {
        const int version = toldIn(pattern.sections[static_cast<std::size_t>(row.first)]);
        // What is wrong in the shown run is told by its own findings.
        if (static_cast<int>(failed.size()) == sizes || (version == shown.version && failed.contains(shown.size)))
            continue;
        std::vector<std::string> fails;
        std::vector<std::string> fits;
        for (int size = 0; size < sizes; ++size)
            (failed.contains(size) ? fails : fits).push_back(pattern.head.sizes[static_cast<std::size_t>(size)]);
        const auto& [size, wrong] = *failed.begin();
        Finding finding;
        finding.severity = Severity::Error;
        finding.kind = FindingKind::SizesDisagree;
        finding.section = pattern.sections[static_cast<std::size_t>(row.first)].id;
        finding.row = row.second;
        const auto ledger = std::find_if(ledgers.begin(), ledgers.end(),
                                         [&](const Ledger& one) { return one.choice.version == version; });
        finding.line = firstLineOf(*ledger, row.first, row.second);
        finding.message = "comes out in " + joined(fits) + ", but not in " + joined(fails) + " (" +
                          (fails.size() > 1 ? "in " + pattern.head.sizes[static_cast<std::size_t>(size)] : "there") +
                          ": " + wrong + ")";
        findings.push_back(std::move(finding));
    }
}

} // namespace shawlwright
