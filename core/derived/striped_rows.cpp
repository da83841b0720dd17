#include "core/derived/striped_rows.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool yarnFindings(const LedgerLine& line)
{
    return std::any_of(line.findings.begin(), line.findings.end(), [](const Finding& finding) {
        return finding.kind == FindingKind::YarnNotJoined || finding.kind == FindingKind::YarnElsewhere;
    });
}

std::vector<YarnId> laidOut(std::span<const Stripe> stripes, int rows)
{
    std::vector<YarnId> yarns;
    for (std::size_t at = 0; static_cast<int>(yarns.size()) < rows; at = (at + 1) % stripes.size())
        for (int i = 0; i < stripes[at].rows && static_cast<int>(yarns.size()) < rows; ++i)
            yarns.push_back(stripes[at].yarn);
    return yarns;
}

bool isEmpty(const Row& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const Cell& cell) { return cell.stitch == noStitch; });
}

// Works a row; one on which nothing is painted yet as if it were worked over all stitches ahead.
LedgerLine workAsPlanned(Needle& needle, const Row& row, RowContext context)
{
    if (!isEmpty(row) || row.finish.kind == FinishKind::BindOff)
        return workRow(needle, row, context);
    Row plain = row;
    plain.cells = {Cell{context.catalogue.require("k"), {}, 0}};
    plain.moves.clear();
    plain.stated.reset();
    Box box;
    box.until = BoxUntil::RowEnd;
    context.boxes = {&box, 1};
    return workRow(needle, plain, context);
}

// Joins where the needle asks for it: every knitting is worked through in order, and a row that lacks its
// yarn in one of them joins it in all. Rows with stitches are asked on the needle as it is, empty ones on the
// needle as it will be.
void joinWhereNeeded(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger, int section,
                     std::map<int, Row>& rows)
{
    const int first = firstLineOf(ledger, section, rows.begin()->first);
    if (first < 0)
        return;
    auto from = static_cast<std::size_t>(first);
    while (from > 0 && isEmpty(*ledger.rows[from - 1].ref))
        --from;
    Needle asIs = ledger.before[from];
    Needle planned = asIs;
    for (std::size_t line = from; line < ledger.rows.size(); ++line) {
        const KnittedRow& knitted = ledger.rows[line];
        const RowContext context{catalogue, pattern.head, *knitted.boxes, ledger.choice.size,
                                 line == 0 || ledger.rows[line - 1].section != knitted.section};
        const auto striped = knitted.section == section ? rows.find(knitted.row) : rows.end();
        const Row& row = striped == rows.end() ? *knitted.ref : striped->second;
        const bool lacksAsIs = yarnFindings(workRow(asIs, row, context));
        const bool lacksPlanned = yarnFindings(workAsPlanned(planned, row, context));
        if (striped != rows.end() && (lacksAsIs || (isEmpty(row) && lacksPlanned)))
            striped->second.start.joins = true; // which leaves the needle as it is
    }
}

} // namespace

Result<Edit> stripedRows(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                         SectionId id, int first, int last, std::span<const Stripe> stripes)
{
    if (auto fault = rowsFault(pattern, id, first, last))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (stripes.empty())
        return Fault{{}, sectionWords(section), "no yarn is named for its rows; name one at least"};
    for (const Stripe& stripe : stripes) {
        if (auto fault = yarnFault(pattern, stripe.yarn))
            return *fault;
        if (stripe.yarn == YarnId{})
            return Fault{{}, sectionWords(section), "a stripe has no yarn; choose one of the pattern's"};
        if (stripe.rows < 1 || stripe.rows > mostRows)
            return Fault{{},
                         sectionWords(section),
                         "a stripe of " + counted(stripe.rows, "row") + " asked for; 1 to " +
                             toText(mostRows) + " are possible"};
    }
    const std::vector<YarnId> yarns = laidOut(stripes, last - first + 1);
    std::map<int, Row> rows;
    for (int at = first; at <= last; ++at) {
        Row row = *section.rows[static_cast<std::size_t>(at)];
        row.yarn = yarns[static_cast<std::size_t>(at - first)];
        row.start.joins = false;
        for (Cell& cell : row.cells)
            if (cell.yarn == row.yarn)
                cell.yarn = YarnId{}; // the row's own need not be said
        rows.emplace(at, std::move(row));
    }
    for (const Ledger& ledger : ledgers)
        joinWhereNeeded(pattern, catalogue, ledger, sectionIndex(pattern, id), rows);
    Edit edit{"yarn of " + counted(last - first + 1, "row"), {}};
    addSwap(edit, section, std::move(rows));
    return edit;
}

std::vector<Stripe> stripesOf(const Section& section, int first, int last)
{
    std::vector<Stripe> all;
    for (int at = first; at <= last; ++at) {
        const YarnId yarn = section.rows[static_cast<std::size_t>(at)]->yarn;
        if (!all.empty() && all.back().yarn == yarn)
            ++all.back().rows;
        else
            all.push_back({1, yarn});
    }
    for (std::size_t period = 1; period < all.size(); ++period) {
        bool repeats = true;
        for (std::size_t at = period; at < all.size() && repeats; ++at) {
            const Stripe& like = all[at % period];
            const bool cut = at + 1 == all.size() && all[at].rows <= like.rows;
            repeats = all[at].yarn == like.yarn && (all[at].rows == like.rows || cut);
        }
        if (repeats) {
            all.resize(period);
            break;
        }
    }
    return all;
}

} // namespace shawlwright
