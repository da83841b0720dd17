// Every row the model can hold has words: patterns of any shape, each named by its seed.

#include "core/files/builtin_catalogue.h"
#include "core/wording/writer/writer.h"
#include "tests/support/random_pattern.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

// Brackets of both kinds close in order, and nothing is left open.
bool balanced(const std::string& text)
{
    std::string open;
    for (const char c : text) {
        if (c == '[' || c == '(')
            open += c;
        else if (c == ']' || c == ')') {
            if (open.empty() || open.back() != (c == ']' ? '[' : '('))
                return false;
            open.pop_back();
        }
    }
    return open.empty();
}

bool namesAColumnOutside(const Phrases& phrases, int columns)
{
    return std::any_of(phrases.begin(), phrases.end(), [columns](const Phrase& phrase) {
        const auto* group = std::get_if<Group>(&phrase.is);
        return phrase.firstColumn < 0 || phrase.lastColumn < phrase.firstColumn ||
               phrase.lastColumn > columns || (group && namesAColumnOutside(group->inside, columns));
    });
}

// Stitches that the phrases hold, each repeat of the chart counted once.
int stitchesIn(const Phrases& phrases)
{
    int stitches = 0;
    for (const Phrase& phrase : phrases) {
        if (const auto* run = std::get_if<Stretch>(&phrase.is))
            stitches += std::max(1, run->count);
        if (const auto* group = std::get_if<Group>(&phrase.is))
            stitches += stitchesIn(group->inside) * (group->from == GroupFrom::Box ? 1 : group->times.at(0));
    }
    return stitches;
}

bool saysToEnd(const Phrases& phrases)
{
    return std::any_of(phrases.begin(), phrases.end(), [](const Phrase& phrase) {
        const auto* run = std::get_if<Stretch>(&phrase.is);
        return run && run->count == 0;
    });
}

void expectSound(const WrittenRow& row, const Row& source, const std::string& text)
{
    EXPECT_EQ(row.text.back(), '.') << text;
    EXPECT_FALSE(namesAColumnOutside(row.phrases, static_cast<int>(source.cells.size()))) << text;
    const auto cells = std::count_if(source.cells.begin(), source.cells.end(), [](const Cell& cell) {
        return cell.stitch != noStitch && cell.part == 0;
    });
    if (saysToEnd(row.phrases))
        return;
    // A repeat that is told time by time has its stitches more than once.
    if (text.find("sm ") != std::string::npos) {
        EXPECT_GE(stitchesIn(row.phrases), cells) << text;
    } else {
        EXPECT_EQ(stitchesIn(row.phrases), cells) << text;
    }
}

void expectWords(const Section& section, const std::vector<WrittenRow>& written)
{
    int next = 0;
    for (const WrittenRow& row : written) {
        const std::string text = toText(row);
        EXPECT_TRUE(balanced(text)) << text;
        EXPECT_EQ(text.find(", ,"), std::string::npos) << text;
        EXPECT_EQ(text.find("no stitch"), std::string::npos) << text;
        if (row.repeat)
            continue;
        EXPECT_EQ(row.firstRow, next++);
        const Row& source = *section.rows[static_cast<std::size_t>(row.firstRow)];
        if (source.words.empty())
            expectSound(row, source, text);
    }
    EXPECT_EQ(next, static_cast<int>(section.rows.size()));
}

} // namespace

TEST(RandomRows, AllHaveWords)
{
    for (unsigned seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::mt19937 random(seed);
        const Pattern pattern = randomPattern(random);
        const Catalogue catalogue = builtInCatalogue().with(pattern.head.stitches);
        for (int version = 0; version < versionCount(pattern); ++version) {
            const Ledger ledger = run(pattern, catalogue, {version, 0});
            for (const RepeatForm repeats : {RepeatForm::Asterisk, RepeatForm::Bracket}) {
                const Style style{Words::US, CountsShown::Always, repeats};
                for (std::size_t s = 0; s < pattern.sections.size(); ++s)
                    expectWords(pattern.sections[s],
                                writtenRows(pattern, catalogue, ledger, static_cast<int>(s), style));
            }
            EXPECT_FALSE(writtenPattern(pattern, catalogue, ledger, {}).empty());
        }
    }
}

TEST(RandomRows, RowsThatAreNotKnittedHaveWordsToo)
{
    std::mt19937 random(7);
    const Pattern pattern = randomPattern(random);
    const Catalogue catalogue = builtInCatalogue().with(pattern.head.stitches);
    const Ledger nothing;
    for (std::size_t s = 0; s < pattern.sections.size(); ++s)
        for (const WrittenRow& row : writtenRows(pattern, catalogue, nothing, static_cast<int>(s), {}))
            EXPECT_FALSE(row.text.empty());
}
