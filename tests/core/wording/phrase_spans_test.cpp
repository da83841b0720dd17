// Which letters of a written row tell which columns of the chart.

#include "core/wording/writer/phrase_text.h"
#include "core/wording/writer/row_phrases.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

// "k2=1-2 yo=3-3", by the words of each phrase.
std::string spansOf(Knit& knit, int row, Style style = {})
{
    const Pattern pattern = knit.done();
    const Ledger ledger = run(pattern, knit.catalogue());
    std::vector<int> lines;
    for (std::size_t line = 0; line < ledger.rows.size(); ++line)
        if (ledger.rows[line].row == row)
            lines.push_back(static_cast<int>(line));
    const Phrases phrases = rowPhrases({pattern, knit.catalogue(), ledger, 0, row, lines});
    const TextContext context{pattern.head, knit.catalogue(), pattern.sections[0].rows[static_cast<std::size_t>(row)]->side,
                              style};
    const std::string text = inWords(phrases, context);
    std::string all;
    for (const PhraseSpan& span : phraseSpans(phrases, context)) {
        EXPECT_LE(span.end, text.size());
        all += (all.empty() ? "" : " | ") + text.substr(span.begin, span.end - span.begin) + "=" +
               std::to_string(span.firstColumn) + "-" + std::to_string(span.lastColumn);
    }
    return all;
}

} // namespace

TEST(PhraseSpans, NameTheColumnsOfEachPhrase)
{
    Knit row(9);
    row.rs("k*2 yo ssk k k2tog yo k*2");
    EXPECT_EQ(spansOf(row, 0), "k2=1-2 | yo=3-3 | ssk=4-4 | k1=5-5 | k2tog=6-6 | yo=7-7 | k2=8-9");
}

TEST(PhraseSpans, AreCountedFromTheOtherEdgeOnWrongSideRows)
{
    Knit row(6);
    row.rs("k*6").ws("p*2 k*4");
    EXPECT_EQ(spansOf(row, 1), "p2=5-6 | k4=1-4");
}

TEST(PhraseSpans, NestInRepeats)
{
    Knit row(10);
    row.rs("k [ yo k2tog ]*4 k");
    const std::string spans = spansOf(row, 0);
    EXPECT_NE(spans.find("yo=2-2 | k2tog=3-3"), std::string::npos) << spans;
    EXPECT_NE(spans.find("=2-3 | yo=2-2"), std::string::npos) << spans; // the repeat before what is inside of it
}

TEST(PhraseSpans, StandStillWithCapitals)
{
    Knit row(9);
    row.rs("k*2 yo ssk k k2tog yo k*2");
    Style style;
    style.capitals = Capitals::Stitches;
    const std::string spans = spansOf(row, 0, style);
    EXPECT_NE(spans.find("=4-4"), std::string::npos);
    EXPECT_EQ(spans.substr(spans.size() - 4), "=8-9");
}
