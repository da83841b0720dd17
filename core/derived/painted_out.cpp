#include "core/derived/painted_out.h"

#include "core/derived/stays_put.h"
#include "core/wording/reader/layout.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool countsAreOff(const LedgerLine& line)
{
    return std::any_of(line.findings.begin(), line.findings.end(), [](const Finding& finding) {
        return finding.kind == FindingKind::TooFewStitches || finding.kind == FindingKind::StitchesLeftOver ||
               finding.kind == FindingKind::RepeatDoesNotFit;
    });
}

bool movesWithin(const Row& row, std::span<const Box> boxes)
{
    return std::any_of(row.moves.begin(), row.moves.end(), [&](const MarkerMove& move) {
        return move.reach == MoveReach::EachTime ||
               std::any_of(boxes.begin(), boxes.end(), [&](const Box& box) {
                   return box.firstColumn - 1 < move.boundary && move.boundary < box.lastColumn;
               });
    });
}

// The columns worked, in order, each stitch by its rightmost one; nothing where two knittings differ.
std::optional<std::vector<int>> workedAlike(const Pattern& pattern, const Catalogue& catalogue,
                                            std::span<const Ledger> ledgers, int section, int row)
{
    std::optional<std::vector<int>> alike;
    for (const Ledger& ledger : ledgers)
        for (std::size_t line = 0; line < ledger.rows.size(); ++line) {
            if (ledger.rows[line].section != section || ledger.rows[line].row != row)
                continue;
            if (countsAreOff(ledger.lines[line]))
                return std::nullopt;
            const Trace trace = traceOf(ledger, pattern, catalogue, static_cast<int>(line));
            if (std::any_of(trace.boxes.begin(), trace.boxes.end(), [](const BoxWorked& box) { return box.times == 0; }))
                return std::nullopt; // painted out nothing would be left of it
            std::vector<int> columns;
            for (const WorkedCell& cell : trace.cells)
                columns.push_back(cell.column);
            if (alike && *alike != columns)
                return std::nullopt;
            alike = std::move(columns);
        }
    return alike;
}

RowDraft draftOf(const Row& row, const Catalogue& catalogue, const std::vector<int>& worked)
{
    RowDraft draft;
    for (const int column : worked) {
        Cell cell = cellAt(row, column);
        cell.part = 0;
        draft.cells.push_back({cell, catalogue.stitch(cell.stitch).width()});
    }
    const bool rs = row.side == Side::RS;
    for (const MarkerMove& move : row.moves) {
        const auto beyond = std::find_if(worked.begin(), worked.end(), [&](int column) {
            return rs ? column > move.boundary : column <= move.boundary;
        });
        draft.moves.push_back({static_cast<std::size_t>(beyond - worked.begin()), move.marker, move.kind});
    }
    return draft;
}

} // namespace

std::optional<Row> paintedOut(const Pattern& pattern, const Catalogue& catalogue,
                              std::span<const Ledger> ledgers, int section, int at, int columns)
{
    const Section& here = pattern.sections[static_cast<std::size_t>(section)];
    const Row& row = *here.rows[static_cast<std::size_t>(at)];
    if (movesWithin(row, boxesOn(here, at)))
        return std::nullopt;
    const auto worked = workedAlike(pattern, catalogue, ledgers, section, at);
    if (!worked)
        return std::nullopt;
    const RowDraft draft = draftOf(row, catalogue, *worked);
    if (draft.width() > columns)
        return std::nullopt;
    Row base = row;
    base.cells.clear();
    base.moves.clear();
    const Row tight = placed(draft, base, compact(draft), draft.width()).row;
    for (const Ledger& ledger : ledgers) {
        const int line = firstLineOf(ledger, section, at);
        if (line < 0)
            continue;
        Needle before = ledger.before[static_cast<std::size_t>(line)];
        if (at == 0) // what lies below is another chart
            before = stayingPut(std::move(before), traceOf(ledger, pattern, catalogue, line), row, catalogue);
        spreadColumns(before, columns);
        Needle after = before;
        Trace trace;
        workRow(after, tight, {catalogue, pattern.head, {}, ledger.choice.size, at == 0}, &trace);
        return placed(draft, base, overParents(draft, tight, before, trace, columns), columns).row;
    }
    return std::nullopt;
}

} // namespace shawlwright
