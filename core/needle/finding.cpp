#include "core/needle/finding.h"

#include <array>

namespace shawlwright {

std::string_view kindName(FindingKind kind)
{
    static constexpr std::array<std::string_view, findingKinds> names = {
        "too-few-stitches", "stitches-left-over", "repeat-does-not-fit", "too-many-stitches",
        "marker-straddled", "marker-placed-twice", "marker-not-there", "marker-in-yarn-over",
        "yarn-elsewhere", "yarn-not-joined",
        "double-yarn-over-closed",
        "no-earlier-turn", "past-last-turn", "nothing-between-turns", "turn-at-edge", "double-stitch-missing",
        "double-stitch-without-turn",
        "turn-never-closed",
        "pair-worked-as-two", "not-a-pair", "wrong-colour-worked",
        "row-drifts",
        "stated-count-differs", "versions-disagree", "sizes-disagree",
        "not-in-key", "abbreviation-twice",
        "same-side-twice", "numbering-gap", "marker-outside", "empty-row",
        "own-words-differ", "column-broken", "yarn-joined-again"};
    return names[static_cast<std::size_t>(kind)];
}

std::string_view severityName(Severity severity)
{
    return severity == Severity::Error ? "error" : severity == Severity::Warning ? "warning" : "note";
}

} // namespace shawlwright
