// Faults of patterns and slips of knitters as they are told in public, as texts: each comes out with the
// counts, segments and resting stitches that working it by hand gives, or fails where and by how much it
// says. Sources stand beside the cases in tests/data/reported/cases.json.

#include "tests/core/wording/reader/written_again.h"

#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

nlohmann::json cases()
{
    std::ifstream in(SHAWLWRIGHT_SOURCE "/tests/data/reported/cases.json", std::ios::binary);
    EXPECT_TRUE(in.good());
    return nlohmann::json::parse(in);
}

// "needs 27 stitches with those beside it, 25 are there" tells of 2; 0: it doesn't say.
int needsMore(const std::string& message)
{
    int needs = 0, there = 0;
    const auto at = message.find("needs ");
    if (at == std::string::npos ||
        std::sscanf(message.c_str() + at, "needs %d stitches with those beside it, %d", &needs, &there) != 2)
        return 0;
    return needs - there;
}

// Whether a finding says what working by hand says: how the row fails and by how many stitches.
bool saysIt(const Finding& finding, const std::string& how, int by)
{
    const std::string n = toText(by);
    const auto says = [&](const std::string& words) {
        return finding.message.find(words) != std::string::npos;
    };
    if (how == "short")
        return (finding.kind == FindingKind::TooFewStitches && says(": " + n + " too few")) ||
               (finding.kind == FindingKind::RepeatDoesNotFit && needsMore(finding.message) == by);
    if (how == "over")
        return finding.kind == FindingKind::StitchesLeftOver &&
               (says(": " + n + " are left over") || says(": " + n + " is left over"));
    if (how == "misfit")
        return finding.kind == FindingKind::RepeatDoesNotFit &&
               (says("and " + n + " are left") || says("and " + n + " is left") ||
                says(" with " + n + " left"));
    // Past the place: fewer stitches before it than are to be left there.
    return how == "past the place" && finding.kind == FindingKind::RepeatDoesNotFit && says("stops ") &&
           says(" left before it");
}

struct Case {
    ReadText read;
    Catalogue catalogue;
    Ledger ledger;
};

int straddles(const LedgerLine& line)
{
    return static_cast<int>(
        std::count_if(line.findings.begin(), line.findings.end(),
                      [](const Finding& finding) { return finding.kind == FindingKind::MarkerStraddled; }));
}

void expectLine(const Case& one, const nlohmann::json& wanted, std::size_t line, const std::string& place)
{
    ASSERT_LT(line, one.ledger.lines.size()) << place;
    const LedgerLine& is = one.ledger.lines[line];
    const KnittedRow& row = one.ledger.rows[line];
    const auto labels = rowLabels(one.read.pattern.sections[static_cast<std::size_t>(row.section)]);
    // Where the first row places the markers of the cast-on and is repeated, rows are numbered on.
    const bool anew = std::any_of(one.read.notes.begin(), one.read.notes.end(), [](const ReadingNote& note) {
        return note.chosen.find("the first time told by itself") != std::string::npos;
    });
    if (!anew) {
        EXPECT_EQ(labels[static_cast<std::size_t>(row.row)], wanted["row"].get<std::string>()) << place;
        if (wanted.contains("pass") && !row.passes.empty()) {
            EXPECT_EQ(row.passes.back(), wanted["pass"].get<int>()) << place;
        }
    }
    EXPECT_EQ(is.before, wanted["before"].get<int>()) << place;
    if (wanted.contains("fails")) {
        const bool said = std::any_of(is.findings.begin(), is.findings.end(), [&](const Finding& finding) {
            return saysIt(finding, wanted["fails"].get<std::string>(), wanted["by"].get<int>());
        });
        std::string told;
        for (const Finding& finding : is.findings)
            told += finding.message + "\n";
        EXPECT_TRUE(said) << place << ": expected " << wanted.dump() << "\nsays: " << told;
        return;
    }
    EXPECT_EQ(is.after, wanted["after"].get<int>()) << place;
    EXPECT_EQ(straddles(is), wanted.value("straddles", 0)) << place;
    if (wanted.contains("segments")) {
        EXPECT_EQ(is.segments, wanted["segments"].get<std::vector<int>>()) << place;
    }
    if (wanted.contains("worked")) {
        EXPECT_EQ(is.worked, wanted["worked"].get<int>()) << place;
        EXPECT_EQ(is.resting, wanted["resting"].get<int>()) << place;
        EXPECT_EQ((std::vector<int>{is.restingRight, is.restingLeft}), wanted["rest"].get<std::vector<int>>())
            << place;
    }
    for (const Finding& finding : is.findings)
        if (finding.severity == Severity::Error && finding.kind != FindingKind::MarkerStraddled &&
            finding.kind != FindingKind::StatedCountDiffers) {
            ADD_FAILURE() << place << ": " << finding.message;
        }
}

} // namespace

TEST(ReportedCases, ComeOutAsWorkedByHand)
{
    const auto all = cases();
    ASSERT_EQ(all["cases"].size(), 34u);
    int texts = 0, rows = 0;
    WrittenAgain again;
    for (const auto& one : all["cases"])
        for (const auto& told : one["texts"]) {
            std::string text;
            for (const auto& line : told["lines"])
                text += line.get<std::string>() + "\n";
            const std::string name = one["title"].get<std::string>() + " (" +
                                     one["source"].get<std::string>() + "), " +
                                     told["what"].get<std::string>();
            Case made;
            made.read = readText(text, builtInCatalogue());
            made.catalogue = builtInCatalogue().with(made.read.pattern.head.stitches);
            made.ledger = run(made.read.pattern, made.catalogue);
            for (const ReadingNote& note : made.read.notes)
                if (note.weight == ReadingNote::Weight::Error) {
                    ADD_FAILURE() << name << ": " << toText(note);
                }
            std::string notes;
            if (std::getenv("SHAWLWRIGHT_TELL"))
                for (const ReadingNote& note : made.read.notes)
                    std::printf("%s: %s\n", name.c_str(), toText(note).c_str());
            for (std::size_t line = 0; line < told["rows"].size(); ++line) {
                expectLine(made, told["rows"][line], line,
                           name + ", line " + toText(static_cast<int>(line) + 1));
                ++rows;
            }
            again.add(text, made.read, made.catalogue, made.ledger, name);
            ++texts;
        }
    std::printf("reported cases: %d texts, %d rows as worked by hand; %s\n", texts, rows,
                again.told().c_str());
    EXPECT_LE(again.written, 1.05 * again.printed);
    for (const std::string& row : again.longer)
        ADD_FAILURE() << row;
}
