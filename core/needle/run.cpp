#include "core/needle/findings/checks.h"
#include "core/needle/ledger.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace shawlwright {
namespace {

RowContext contextOf(const std::vector<KnittedRow>& rows, std::size_t at, const Pattern& pattern, const Catalogue& catalogue,
                     int size)
{
    const KnittedRow& row = rows[at];
    const bool starts = at == 0 || rows[at - 1].section != row.section;
    return {catalogue, pattern.head, *row.boxes, size, starts};
}

Needle startingNeedle(const Pattern& pattern, int size)
{
    const CastOn& castOnOf = pattern.head.castOn;
    return castOn(std::min(castOnOf.stitches.at(size), mostCount), castOnOf.yarn, castOnOf.firstSide);
}

// Would working this row on the same needle give the same line?
bool alike(const KnittedRow& a, const KnittedRow& b)
{
    return (a.ref == b.ref || *a.ref == *b.ref) && (a.boxes == b.boxes || *a.boxes == *b.boxes);
}

bool startsSection(const std::vector<KnittedRow>& rows, std::size_t at)
{
    return at == 0 || rows[at - 1].section != rows[at].section;
}

// Ridges so far in the section: a ridge begins with a row that shows purl after one that shows knit, or after one of
// another yarn; rows with nothing in them change nothing.
void countRidges(Ledger& ledger, std::size_t yarns)
{
    std::vector<int> ridges;
    bool purl = false;
    YarnId yarn;
    for (std::size_t i = 0; i < ledger.lines.size(); ++i) {
        LedgerLine& line = ledger.lines[i];
        if (startsSection(ledger.rows, i))
            ridges.assign(yarns, 0);
        if (line.worked > 0) {
            if (line.showsPurl && (!purl || yarn != line.yarn) && line.yarn.value >= 1 && line.yarn.value <= yarns)
                ++ridges[static_cast<std::size_t>(line.yarn.value) - 1];
            purl = line.showsPurl;
            yarn = line.yarn;
        }
        line.ridges = ridges;
    }
}

// The line in which a row was knitted last before line `at`; `at` where it wasn't.
std::size_t lastKnitted(const std::vector<KnittedRow>& rows, RowId row, std::size_t at)
{
    for (std::size_t line = at; line-- > 0;)
        if (rows[line].ref->id == row)
            return line;
    return at;
}

// Columns broken in row after row of a section are a texture, not a slip.
void dropTexture(std::vector<Finding>& all)
{
    constexpr std::size_t few = 2;
    std::map<std::uint32_t, std::set<int>> rows; // by section
    for (const Finding& finding : all)
        if (finding.kind == FindingKind::ColumnBroken)
            rows[finding.section.value].insert(finding.row);
    std::erase_if(all, [&rows](const Finding& finding) {
        return finding.kind == FindingKind::ColumnBroken && rows[finding.section.value].size() > few;
    });
}

bool aboutCount(FindingKind kind)
{
    return kind == FindingKind::TooFewStitches || kind == FindingKind::StitchesLeftOver ||
           kind == FindingKind::RepeatDoesNotFit;
}

// Once per row of the chart and kind: what a row repeat finds again on later passes follows from the first.
void gatherFindings(Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue)
{
    std::vector<Finding> all;
    std::map<std::uint32_t, int> lineOfRow; // of rows with a fault, their first line
    std::map<std::tuple<int, int, FindingKind, int>, int> firstFound; // section, row, kind, column: its first line
    int emptyFrom = -1;
    for (std::size_t i = 0; i < ledger.lines.size(); ++i) {
        const KnittedRow& row = ledger.rows[i];
        bool empty = false;
        for (const Finding& local : ledger.lines[i].findings) {
            if (local.kind == FindingKind::EmptyRow) {
                empty = true;
                const bool more = emptyFrom >= 0 && ledger.rows[static_cast<std::size_t>(emptyFrom)].section == row.section;
                if (more)
                    continue;
                emptyFrom = static_cast<int>(i);
            }
            Finding finding = local;
            const std::size_t about = finding.in == RowId{} ? i : lastKnitted(ledger.rows, finding.in, i);
            finding.section = pattern.sections[static_cast<std::size_t>(ledger.rows[about].section)].id;
            finding.row = ledger.rows[about].row;
            finding.line = static_cast<int>(about);
            const auto [first, fresh] =
                firstFound.emplace(std::tuple(ledger.rows[about].section, finding.row, finding.kind, finding.column), finding.line);
            if (!fresh && first->second < finding.line) {
                finding.followsFrom = first->second;
            } else if (ledger.lines[i].makesGood && aboutCount(finding.kind)) {
                const auto fault = lineOfRow.find(ledger.lines[i].restsOn.value);
                finding.followsFrom = fault == lineOfRow.end() ? -1 : fault->second;
            }
            all.push_back(std::move(finding));
        }
        if (!empty)
            emptyFrom = -1;
        if (ledger.lines[i].restsOn == row.ref->id)
            lineOfRow.emplace(row.ref->id.value, static_cast<int>(i));
    }
    dropTexture(all);
    findTurnsNeverClosed(ledger, pattern, all);
    findNumberingGaps(ledger, pattern, all);
    std::stable_sort(all.begin(), all.end(), [](const Finding& a, const Finding& b) { return a.line < b.line; });
    findNotInKey(ledger, pattern, catalogue, all);
    findAbbreviationsTwice(pattern, catalogue, all);
    ledger.findings = std::move(all);
}

bool sameButOwed(Needle& a, const Needle& b)
{
    const Owed own = std::exchange(a.owed, b.owed);
    const bool same = a == b;
    a.owed = own;
    return same;
}

// The loops of line `at` and all after it are what they were, but their counts rest on another fault.
void settleFrom(Ledger& ledger, std::size_t at, Owed owed)
{
    for (; ledger.before[at].owed != owed; ++at) {
        ledger.before[at].owed = owed;
        if (at == ledger.lines.size())
            return;
        settle(owed, ledger.lines[at], ledger.rows[at].ref->id);
    }
}

// Works rows from `first` on until the needle is what it was there before, at `untouched` or later. Gives one past the
// last row worked.
std::size_t workFrom(Ledger& ledger, std::size_t first, std::size_t untouched, const Pattern& pattern,
                     const Catalogue& catalogue)
{
    Needle needle = ledger.before[first];
    std::size_t at = first;
    for (; at < ledger.rows.size(); ++at) {
        if (at > first) {
            if (at >= untouched && sameButOwed(needle, ledger.before[at])) {
                settleFrom(ledger, at, needle.owed);
                return at;
            }
            ledger.before[at] = needle;
        }
        ledger.lines[at] = workRow(needle, *ledger.rows[at].ref, contextOf(ledger.rows, at, pattern, catalogue, ledger.choice.size));
    }
    ledger.before[at] = std::move(needle);
    return at;
}

// Whether a run can't tell two heads apart. Markers may have been added: rows that don't move them never see them.
bool sameForNeedle(const PatternHead& was, const PatternHead& is)
{
    return was.castOn == is.castOn && was.yarns == is.yarns && was.stitches == is.stitches && was.sizes == is.sizes &&
           was.versions == is.versions && was.markers.size() <= is.markers.size() &&
           std::equal(was.markers.begin(), was.markers.end(), is.markers.begin());
}

} // namespace

void settle(Owed& owed, LedgerLine& line, RowId row)
{
    line.makesGood = line.madeUp != 0 && owed.fault != RowId{} && owed.loops + line.madeUp == 0;
    line.restsOn = owed.fault;
    if (line.madeUp == 0)
        return;
    if (line.makesGood) {
        owed = {};
        return;
    }
    if (owed.fault == RowId{})
        owed.fault = row;
    owed.loops += line.madeUp;
    line.restsOn = owed.fault;
}

Ledger run(const Pattern& pattern, const Catalogue& catalogue, RunChoice choice)
{
    Ledger ledger;
    ledger.choice = choice;
    ledger.rows = knittedRows(pattern, choice.version, choice.size);
    ledger.lines.resize(ledger.rows.size());
    ledger.before.resize(ledger.rows.size() + 1);
    ledger.before[0] = startingNeedle(pattern, choice.size);
    workFrom(ledger, 0, ledger.rows.size(), pattern, catalogue);
    countRidges(ledger, pattern.head.yarns.size());
    gatherFindings(ledger, pattern, catalogue);
    return ledger;
}

std::vector<Ledger> runEvery(const Pattern& pattern, const Catalogue& catalogue)
{
    std::vector<Ledger> ledgers;
    for (int version = 0; version < versionCount(pattern); ++version)
        for (int size = 0; size < sizeCount(pattern); ++size)
            ledgers.push_back(run(pattern, catalogue, {version, size}));
    return ledgers;
}

Reworked rework(Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue, const PatternHead& oldHead)
{
    std::vector<KnittedRow> rows = knittedRows(pattern, ledger.choice.version, ledger.choice.size);
    const std::size_t was = ledger.rows.size();
    const std::size_t is = rows.size();
    const bool headChanged = !sameForNeedle(oldHead, pattern.head);
    if (headChanged) {
        ledger = run(pattern, catalogue, ledger.choice);
        return {0, static_cast<int>(is), true};
    }
    const std::size_t common = std::min(was, is);
    std::size_t first = 0;
    const auto same = [&](std::size_t a, std::size_t b) { // old row a, new row b
        return alike(ledger.rows[a], rows[b]) && startsSection(ledger.rows, a) == startsSection(rows, b);
    };
    while (first < common && same(first, first))
        ++first;
    std::size_t tail = 0; // rows alike at the end
    while (tail < common - first && same(was - 1 - tail, is - 1 - tail))
        ++tail;

    // Lines and needles move along with their rows; the rows in between are worked anew.
    const auto movedTo = [&](auto& list, std::size_t extra) {
        const auto from = list.begin() + static_cast<std::ptrdiff_t>(first + extra);
        const auto to = list.end() - static_cast<std::ptrdiff_t>(tail);
        const auto length = static_cast<std::ptrdiff_t>(is - first - tail);
        const std::ptrdiff_t difference = length - (to - from);
        if (difference > 0)
            list.insert(to, static_cast<std::size_t>(difference), {});
        else
            list.erase(to + difference, to);
    };
    movedTo(ledger.lines, 0);
    {
        Needle start = ledger.before[first];
        const auto from = ledger.before.begin() + static_cast<std::ptrdiff_t>(first);
        const auto to = ledger.before.end() - static_cast<std::ptrdiff_t>(tail + 1);
        const std::ptrdiff_t difference = static_cast<std::ptrdiff_t>(is - first - tail) - (to - from);
        if (difference > 0)
            ledger.before.insert(to, static_cast<std::size_t>(difference), Needle{});
        else
            ledger.before.erase(to + difference, to);
        ledger.before[first] = std::move(start);
    }
    ledger.rows = std::move(rows);
    std::size_t end = first;
    if (first < is - tail || was != is)
        end = workFrom(ledger, first, is - tail, pattern, catalogue);
    countRidges(ledger, pattern.head.yarns.size());
    gatherFindings(ledger, pattern, catalogue);
    return {static_cast<int>(first), static_cast<int>(end), false};
}

Trace traceOf(const Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue, int line)
{
    const auto at = static_cast<std::size_t>(line);
    Needle needle = ledger.before[at];
    Trace trace;
    workRow(needle, *ledger.rows[at].ref, contextOf(ledger.rows, at, pattern, catalogue, ledger.choice.size), &trace);
    return trace;
}

int firstLineOf(const Ledger& ledger, int section, int row)
{
    for (std::size_t i = 0; i < ledger.rows.size(); ++i)
        if (ledger.rows[i].section == section && ledger.rows[i].row == row)
            return static_cast<int>(i);
    return -1;
}

} // namespace shawlwright
