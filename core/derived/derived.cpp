#include "core/derived/derived.h"

#include "core/needle/findings/checks.h"
#include "core/wording/own_words.h"

#include <algorithm>

namespace shawlwright {

Derived::Derived(const Catalogue& builtIn, const Pattern& pattern)
    : m_builtIn(builtIn), m_catalogue(builtIn.with(pattern.head.stitches)), m_head(pattern.head),
      m_sizes(sizeCount(pattern))
{
    runAll(pattern);
    findAll(pattern);
}

void Derived::runAll(const Pattern& pattern)
{
    m_sizes = sizeCount(pattern);
    m_ledgers = runEvery(pattern, m_catalogue);
    m_choice.version = std::min(m_choice.version, versionCount(pattern) - 1);
    m_choice.size = std::min(m_choice.size, m_sizes - 1);
}

std::size_t Derived::at(RunChoice choice) const
{
    return static_cast<std::size_t>(choice.version) * static_cast<std::size_t>(m_sizes) +
           static_cast<std::size_t>(choice.size);
}

Runs Derived::toldRuns() const
{
    std::vector<const Ledger*> every;
    for (const Ledger& ledger : m_ledgers)
        every.push_back(&ledger);
    const auto first = every.begin() + static_cast<std::ptrdiff_t>(at({m_choice.version, 0}));
    return Runs(std::vector(first, first + m_sizes), every);
}

Reworked Derived::update(const Pattern& pattern)
{
    if (m_head.stitches != pattern.head.stitches)
        m_catalogue = m_builtIn.with(pattern.head.stitches);
    std::vector<Reworked> reworked;
    if (m_head.versions != pattern.head.versions || m_head.sizes != pattern.head.sizes) {
        runAll(pattern);
        for (const Ledger& ledger : m_ledgers)
            reworked.push_back({0, static_cast<int>(ledger.rows.size()), true});
    } else {
        for (Ledger& ledger : m_ledgers)
            reworked.push_back(rework(ledger, pattern, m_catalogue, m_head));
    }
    const bool headChanged = !(m_head == pattern.head);
    if (headChanged) {
        m_head = pattern.head;
        m_written.clear();
    }
    rewriteKept(pattern, reworked);
    findAll(pattern);
    return reworked[shownLedger()];
}

namespace {

std::vector<RowId> idsOf(const Section& section)
{
    std::vector<RowId> ids;
    ids.reserve(section.rows.size());
    for (const RowRef& row : section.rows)
        ids.push_back(row->id);
    return ids;
}

} // namespace

// Words stay true but for the rows worked again, as long as the rows of their section stand in the order they
// stood.
void Derived::rewriteKept(const Pattern& pattern, std::span<const Reworked> reworked)
{
    for (auto kept = m_written.begin(); kept != m_written.end();) {
        const int at = sectionIndex(pattern, SectionId{kept->first});
        const Section* section = at < 0 ? nullptr : &pattern.sections[static_cast<std::size_t>(at)];
        if (!section || idsOf(*section) != kept->second.ids ||
            section->frame.brackets != kept->second.brackets) {
            kept = m_written.erase(kept);
            continue;
        }
        rewrite(kept->second.rows, pattern, m_catalogue, toldRuns(), at, styleOf(pattern.head), reworked);
        ++kept;
    }
}

void Derived::show(const Pattern& pattern, RunChoice choice)
{
    m_choice.version = std::clamp(choice.version, 0, versionCount(pattern) - 1);
    m_choice.size = std::clamp(choice.size, 0, m_sizes - 1);
    m_written.clear();
    findAll(pattern);
}

void Derived::findAll(const Pattern& pattern)
{
    m_findings = ledger().findings;
    for (Finding& own : ownWordsFindings(pattern, m_catalogue, ledger())) {
        const auto after = std::find_if(m_findings.begin(), m_findings.end(), [&](const Finding& finding) {
            return finding.line < 0 || finding.line > own.line;
        });
        m_findings.insert(after, std::move(own));
    }
    if (m_ledgers.size() < 2)
        return;
    findVersionsDisagree(m_ledgers, pattern, m_findings);
    findSizesDisagree(m_ledgers, pattern, m_choice, m_findings);
}

const std::vector<WrittenRow>& Derived::written(const Pattern& pattern, int section)
{
    const std::uint32_t id = pattern.sections[static_cast<std::size_t>(section)].id.value;
    auto found = m_written.find(id);
    if (found == m_written.end()) {
        const Section& at = pattern.sections[static_cast<std::size_t>(section)];
        found =
            m_written
                .emplace(id,
                         Written{writtenRows(pattern, m_catalogue, toldRuns(), section, styleOf(pattern.head)),
                                 idsOf(at), at.frame.brackets})
                .first;
    }
    return found->second.rows;
}

std::vector<WrittenLine> Derived::lines(const Pattern& pattern, int section)
{
    return gathered(pattern, toldRuns(), section, styleOf(pattern.head), written(pattern, section));
}

bool Derived::operator==(const Derived& other) const
{
    const auto sameLedger = [](const Ledger& a, const Ledger& b) {
        return a.choice == b.choice && a.before == b.before && a.lines == b.lines && a.findings == b.findings;
    };
    return m_catalogue == other.m_catalogue && m_choice == other.m_choice && m_findings == other.m_findings &&
           std::equal(m_ledgers.begin(), m_ledgers.end(), other.m_ledgers.begin(), other.m_ledgers.end(),
                      sameLedger);
}

} // namespace shawlwright
