// Patterns of public-domain knitting handbooks, entered as pattern files, against the counts the books state
// or that an independent program worked out from their rows; and printed mistakes, found at their rows. The
// source of each stands beside its counts in tests/data/handbook/counts.json.

#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "core/needle/ledger.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::string contents(const std::string& name)
{
    std::ifstream in(std::string(SHAWLWRIGHT_SOURCE "/tests/data/handbook/") + name, std::ios::binary);
    EXPECT_TRUE(in.good()) << name;
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

nlohmann::json counts()
{
    return nlohmann::json::parse(contents("counts.json"));
}

Pattern loaded(const std::string& file)
{
    ReadPattern read = readPattern(contents(file), builtInCatalogue());
    for (const Fault& fault : read.faults)
        ADD_FAILURE() << file << ": " << toText(fault);
    return read.pattern.value_or(Pattern{});
}

// "Mee 1846, narrow vandyke edging (p. 29), e-text 21032"
std::string sourceOf(const nlohmann::json& entry)
{
    const auto& source = entry["source"];
    return source["author"].get<std::string>() + " " + std::to_string(source["year"].get<int>()) + ", " +
           source["place"].get<std::string>() + ", e-text " + std::to_string(source["etext"].get<int>());
}

int loopsOf(const Needle& needle) // a brioche stitch and its yarn over are two, as the old books count
{
    int loops = 0;
    for (const Loop& loop : needle.loops)
        loops += (loop.flags & BriochePair) != 0 ? 2 : 1;
    return loops;
}

} // namespace

TEST(Handbook, EveryRowHasTheCountOfTheBook)
{
    const auto all = counts();
    ASSERT_GE(all["patterns"].size(), 10u);
    int stated = 0;
    int rows = 0;
    for (const auto& entry : all["patterns"]) {
        const std::string source = sourceOf(entry);
        const Pattern pattern = loaded(entry["file"]);
        const Ledger ledger = run(pattern, builtInCatalogue());
        ASSERT_EQ(ledger.lines.size(), entry["rows"].size()) << source;
        const auto labels = rowLabels(pattern.sections[0]);
        for (std::size_t i = 0; i < ledger.lines.size(); ++i) {
            const auto& row = entry["rows"][i];
            const std::string place =
                source + ", row " + labels[i] + " (" + row["by"].get<std::string>() + ")";
            const LedgerLine& line = ledger.lines[i];
            EXPECT_EQ(labels[i], row["row"].get<std::string>()) << place;
            EXPECT_EQ(line.after, row["count"].get<int>()) << place;
            if (row.contains("unworked")) {
                EXPECT_EQ(line.side == Side::RS ? line.restingLeft : line.restingRight,
                          row["unworked"].get<int>())
                    << place;
            }
            if (row.contains("loops")) {
                EXPECT_EQ(loopsOf(ledger.before[i + 1]), row["loops"].get<int>()) << place;
            }
            stated += row["by"] == "book" ? 1 : 0;
            ++rows;
        }
        EXPECT_EQ(told(ledger, pattern), "") << source; // the books are right, so there is nothing to find
    }
    EXPECT_GE(stated, 4); // of the figures the books themselves print
    EXPECT_GE(rows, 250);
}

TEST(Handbook, CountsHoldForFilesWrittenAgain)
{
    const auto all = counts();
    for (const auto& entry : all["patterns"]) {
        const std::string bytes = contents(entry["file"]);
        EXPECT_EQ(writePattern(loaded(entry["file"]), builtInCatalogue()), bytes) << entry["file"];
    }
}

TEST(Handbook, MisprintsAreFoundAtTheirRow)
{
    const auto all = counts();
    ASSERT_GE(all["misprints"].size(), 5u);
    for (const auto& entry : all["misprints"]) {
        const std::string source = sourceOf(entry);
        const Pattern pattern = loaded(entry["file"]);
        const Ledger ledger = run(pattern, builtInCatalogue());
        const auto first =
            std::find_if(ledger.findings.begin(), ledger.findings.end(),
                         [](const Finding& finding) { return finding.severity == Severity::Error; });
        ASSERT_NE(first, ledger.findings.end()) << source;
        EXPECT_EQ(kindName(first->kind), entry["kind"].get<std::string>()) << source;
        EXPECT_EQ(rowLabels(pattern.sections[0])[static_cast<std::size_t>(first->row)],
                  entry["showsAt"].get<std::string>())
            << source;
        EXPECT_NE(first->message.find_first_of("0123456789"), std::string::npos) << source;
    }
}
