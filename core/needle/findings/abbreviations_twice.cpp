#include "core/needle/findings/checks.h"

namespace shawlwright {

// A pattern's own stitch must not go by the word of another one: the words could then not be knitted.
void findAbbreviationsTwice(const Pattern& pattern, const Catalogue& catalogue, std::vector<Finding>& findings)
{
    const auto tell = [&](const Stitch& own, const Stitch& other, Side side) {
        Finding finding;
        finding.severity = Severity::Error;
        finding.kind = FindingKind::AbbreviationTwice;
        finding.message = "'" + abbreviation(own, side) + "' stands for two stitches on " +
                          (side == Side::RS ? "RS" : "WS") + " rows: " + own.name + " and " + other.name +
                          "; give the stitch of this pattern another abbreviation";
        findings.push_back(std::move(finding));
    };
    for (const Stitch& own : pattern.head.stitches)
        for (const Side side : {Side::RS, Side::WS}) {
            const auto clash = [&](const Stitch& other) {
                return other.id != own.id && abbreviation(other, side) == abbreviation(own, side);
            };
            bool told = false;
            for (const Stitch& other : pattern.head.stitches)
                if (!told && other.id < own.id && clash(other)) {
                    tell(own, other, side);
                    told = true;
                }
            for (const Stitch& other : catalogue.builtIn())
                if (!told && other.id != noStitch && clash(other)) {
                    tell(own, other, side);
                    told = true;
                }
        }
}

} // namespace shawlwright
