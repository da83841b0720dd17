#include "core/needle/findings/checks.h"

namespace shawlwright {
namespace {

const char* nameOf(TurnMethod method)
{
    switch (method) {
    case TurnMethod::WrapAndTurn:
        return "wrapped stitch";
    case TurnMethod::DoubleStitch:
        return "double stitch";
    case TurnMethod::YarnOver:
        return "yarn over of the turn";
    case TurnMethod::PinnedYarn:
        return "pinned yarn";
    case TurnMethod::TwinStitch:
        return "twin stitch";
    default:
        return "turn";
    }
}

} // namespace

// A turn is closed when a row works across its gap; one still open at the end of the piece never was.
void findTurnsNeverClosed(const Ledger& ledger, const Pattern& pattern, std::vector<Finding>& findings)
{
    for (const TurnAt& turn : ledger.before.back().turns) {
        if (turn.method == TurnMethod::Plain)
            continue;
        for (std::size_t i = ledger.rows.size(); i-- > 0;) {
            const KnittedRow& row = ledger.rows[i];
            if (row.ref->id != turn.row)
                continue;
            Finding finding;
            finding.severity = Severity::Warning;
            finding.kind = FindingKind::TurnNeverClosed;
            finding.section = pattern.sections[static_cast<std::size_t>(row.section)].id;
            finding.row = row.row;
            finding.line = static_cast<int>(i);
            finding.message = std::string("the ") + nameOf(turn.method) +
                              " of its early turn is never worked again; work a row across it";
            findings.push_back(std::move(finding));
            break;
        }
    }
}

} // namespace shawlwright
