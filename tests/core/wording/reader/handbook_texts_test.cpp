// Rows of public-domain handbooks as text: read without an error, they have the counts of the books; printed
// mistakes are found where counting trips over them. Sources stand beside the counts in
// tests/data/handbook/texts/counts.json.

#include "core/base/text.h"
#include "core/files/builtin_catalogue.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/writer.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>

using namespace shawlwright;

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

std::string normal(const std::string& text)
{
    std::string result;
    for (const char c : lowered(text))
        if (c != ' ' && c != '.')
            result += c;
    return result;
}

} // namespace

TEST(HandbookTexts, AreReadAndHaveTheCountsOfTheBooks)
{
    const auto all = expected();
    ASSERT_GE(all["texts"].size(), 30u);
    int rows = 0, stated = 0, read = 0, same = 0;
    double wordsWritten = 0, wordsPrinted = 0;
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
        // What is written from it, beside what was read.
        std::map<std::string, std::string> printed;
        std::istringstream lines(contents(file));
        for (std::string line; std::getline(lines, line);)
            if (const auto colon = line.find(": "); colon != std::string::npos)
                printed[line.substr(0, colon)] = line.substr(colon + 2, line.rfind('.') - colon - 2);
        for (const WrittenRow& row : writtenRows(outcome.read.pattern, outcome.catalogue, outcome.ledger, 0,
                                                 {Words::US, CountsShown::Never, RepeatForm::Asterisk})) {
            const auto found = printed.find(row.label);
            ASSERT_NE(found, printed.end()) << source << ", " << row.label;
            const bool equal = normal(found->second) == normal(row.text);
            same += equal ? 1 : 0;
            if (!equal && std::getenv("SHAWLWRIGHT_TELL"))
                std::printf("%s %s\n  printed %s\n  written %s\n", file.c_str(), row.label.c_str(),
                            found->second.c_str(), row.text.c_str());
            wordsWritten += static_cast<double>(normal(row.text).size());
            wordsPrinted += static_cast<double>(normal(found->second).size());
        }
    }
    std::printf("handbook texts: %d of %d read, %d rows (%d counts stated by the book); written again: "
                "%.1f%% of rows equal, "
                "length %.3f of the print\n",
                read, static_cast<int>(all["texts"].size()), rows, stated, 100.0 * same / rows,
                wordsWritten / wordsPrinted);
    EXPECT_GT(same, rows * 3 / 4);
    EXPECT_LT(wordsWritten, 1.1 * wordsPrinted);
}

TEST(HandbookTexts, PrintedMistakesAreFoundWhereTheyShow)
{
    const auto all = expected();
    const std::map<std::string, std::vector<FindingKind>> kinds = {
        {"tooFewStitches", {FindingKind::TooFewStitches, FindingKind::RepeatDoesNotFit}},
        {"stitchesLeftOver", {FindingKind::StitchesLeftOver, FindingKind::RepeatDoesNotFit}},
        {"repeatDoesNotFit",
         {FindingKind::RepeatDoesNotFit, FindingKind::StitchesLeftOver, FindingKind::TooFewStitches}},
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
        const auto& wanted = kinds.at(entry["fault"]["kind"].get<std::string>());
        // The first fault that stands on its own is the one.
        const auto first =
            std::find_if(outcome.ledger.findings.begin(), outcome.ledger.findings.end(),
                         [](const Finding& f) { return f.severity == Severity::Error && f.followsFrom < 0; });
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
    std::printf("printed mistakes: %d of %d found at their row\n", found,
                static_cast<int>(all["faulty"].size()));
}
