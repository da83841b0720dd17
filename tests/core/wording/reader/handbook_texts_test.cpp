// Rows of public-domain handbooks as text: read without an error, they have the counts of the books; printed
// mistakes are found where counting trips over them. Sources stand beside the counts in
// tests/data/handbook/texts/counts.json.

#include "tests/core/wording/reader/written_again.h"

#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::string contents(const std::string& name)
{
    std::ifstream in(std::string(SHAWLWRIGHT_SOURCE "/tests/data/handbook/texts/") + name, std::ios::binary);
    EXPECT_TRUE(in.good()) << name;
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

nlohmann::json expected()
{
    return nlohmann::json::parse(contents("counts.json"));
}

std::string sourceOf(const nlohmann::json& entry)
{
    const auto& source = entry["source"];
    return source["author"].get<std::string>() + " " + std::to_string(source["year"].get<int>()) + ", " +
           source["place"].get<std::string>() + ", e-text " + std::to_string(source["etext"].get<int>());
}

struct Outcome {
    ReadText read;
    Catalogue catalogue;
    Ledger ledger;
    std::vector<std::string> labels; // of each ledger line
    std::vector<ReadingNote> errors;
};

Outcome outcomeOf(const std::string& file)
{
    Outcome outcome;
    outcome.read = readText(contents(file), builtInCatalogue());
    for (const ReadingNote& note : outcome.read.notes)
        if (note.weight == ReadingNote::Weight::Error)
            outcome.errors.push_back(note);
    outcome.catalogue = builtInCatalogue().with(outcome.read.pattern.head.stitches);
    outcome.ledger = run(outcome.read.pattern, outcome.catalogue);
    for (const KnittedRow& row : outcome.ledger.rows)
        outcome.labels.push_back(rowLabels(outcome.read.pattern.sections[static_cast<std::size_t>(
            row.section)])[static_cast<std::size_t>(row.row)]);
    return outcome;
}

int loopsOf(const Needle& needle) // a brioche stitch and its yarn over are two, as the old books count
{
    int loops = 0;
    for (const Loop& loop : needle.loops)
        loops += (loop.flags & BriochePair) != 0 ? 2 : 1;
    return loops;
}

} // namespace

TEST(HandbookTexts, AreReadAndHaveTheCountsOfTheBooks)
{
    const auto all = expected();
    ASSERT_GE(all["texts"].size(), 30u);
    int rows = 0, stated = 0, read = 0, broken = 0;
    WrittenAgain again;
    for (const auto& entry : all["texts"]) {
        const std::string file = entry["file"];
        const std::string source = sourceOf(entry);
        const Outcome outcome = outcomeOf(file);
        if (!outcome.errors.empty()) {
            for (const ReadingNote& note : outcome.errors)
                std::printf("skipped: %s: %s\n", file.c_str(), toText(note).c_str());
            ADD_FAILURE() << source << " has rows that are not understood";
            continue;
        }
        ++read;
        EXPECT_TRUE(faultsOf(outcome.read.pattern, outcome.catalogue).empty()) << source;
        ASSERT_EQ(outcome.ledger.lines.size(), entry["rows"].size()) << source;
        for (std::size_t i = 0; i < outcome.ledger.lines.size(); ++i) {
            const auto& row = entry["rows"][i];
            const LedgerLine& line = outcome.ledger.lines[i];
            const std::string place = source + ", row " + outcome.labels[i];
            EXPECT_EQ(outcome.labels[i], row["row"].get<std::string>()) << place;
            EXPECT_EQ(line.after, row["count"].get<int>())
                << place << " (" << row["by"].get<std::string>() << ")";
            if (row.contains("unworked")) {
                EXPECT_EQ(line.side == Side::RS ? line.restingLeft : line.restingRight,
                          row["unworked"].get<int>())
                    << place;
            }
            if (row.contains("loops")) {
                EXPECT_EQ(loopsOf(outcome.ledger.before[i + 1]), row["loops"].get<int>()) << place;
            }
            ++rows;
            stated += row["by"] == "book" ? 1 : 0;
        }
        for (const Finding& finding : outcome.ledger.findings)
            if (finding.kind == FindingKind::ColumnBroken && finding.followsFrom < 0) {
                ++broken;
                std::printf("column broken: %s, row %s: %s\n", file.c_str(),
                            outcome.labels[static_cast<std::size_t>(finding.line)].c_str(), finding.message.c_str());
            }
        again.add(contents(file), outcome.read, outcome.catalogue, outcome.ledger, file);
    }
    std::printf("handbook texts: %d of %d read, %d rows (%d counts stated by the book); %s\n", read,
                static_cast<int>(all["texts"].size()), rows, stated, again.told().c_str());
    EXPECT_LE(broken, 2); // texts without a fault: few rows are told as odd that are meant
    EXPECT_GT(again.equal, rows * 3 / 4);
    EXPECT_LT(again.written, 1.01 * again.printed); // "k to end" is longer than "k35"
    for (const std::string& row : again.longer)
        ADD_FAILURE() << row;
}

TEST(HandbookTexts, PrintedMistakesAreFoundWhereTheyShow)
{
    const auto all = expected();
    const std::map<std::string, std::vector<FindingKind>> kinds = {
        {"tooFewStitches", {FindingKind::TooFewStitches, FindingKind::RepeatDoesNotFit}},
        {"stitchesLeftOver", {FindingKind::StitchesLeftOver, FindingKind::RepeatDoesNotFit}},
        {"repeatDoesNotFit",
         {FindingKind::RepeatDoesNotFit, FindingKind::StitchesLeftOver, FindingKind::TooFewStitches}},
        {"stitchTypeClash", {FindingKind::ColumnBroken}},
        {"statedCountWrong", {FindingKind::StatedCountDiffers}},
        {"doesNotAddUp",
         {FindingKind::StatedCountDiffers, FindingKind::TooFewStitches, FindingKind::StitchesLeftOver,
          FindingKind::RepeatDoesNotFit}}};
    int found = 0;
    for (const auto& entry : all["faulty"]) {
        const std::string source = sourceOf(entry);
        const Outcome outcome = outcomeOf(entry["file"]);
        for (const ReadingNote& note : outcome.errors)
            ADD_FAILURE() << source << ": " << toText(note);
        const std::string row = entry["fault"]["row"];
        // Knit and purl changed about keep every count; the columns of the rib show it, as a note.
        const bool clash = entry["fault"]["kind"] == "stitchTypeClash";
        for (std::size_t i = 0; clash && i < entry["rows"].size(); ++i) {
            EXPECT_EQ(outcome.ledger.lines.at(i).after, entry["rows"][i]["count"].get<int>()) << source;
        }
        const auto& wanted = kinds.at(entry["fault"]["kind"].get<std::string>());
        // The first fault that stands on its own is the one.
        const auto first =
            std::find_if(outcome.ledger.findings.begin(), outcome.ledger.findings.end(),
                         [clash](const Finding& f) {
                             return (clash || f.severity == Severity::Error) && f.followsFrom < 0;
                         });
        if (first == outcome.ledger.findings.end()) {
            ADD_FAILURE() << source << ": nothing found; expected " << entry["fault"].dump();
            continue;
        }
        const std::string where =
            first->line >= 0 ? outcome.labels[static_cast<std::size_t>(first->line)] : "";
        const bool right =
            where == row && std::find(wanted.begin(), wanted.end(), first->kind) != wanted.end();
        EXPECT_TRUE(right) << source << ": found at row " << where << ": " << kindName(first->kind) << ": "
                           << first->message << "; expected " << entry["fault"].dump();
        found += right ? 1 : 0;
    }
    const int mistakes = static_cast<int>(all["faulty"].size());
    std::printf("printed mistakes: %d of %d found at their row\n", found, mistakes);
    EXPECT_EQ(found, mistakes);
    EXPECT_EQ(mistakes, 21);
}
