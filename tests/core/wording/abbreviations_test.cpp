// Only what is used, each once (Tabatha Thomas; Joeli's Kitchen; Wrinkled Thistle).

#include "core/wording/abbreviations.h"
#include "core/wording/reader/reader.h"
#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::vector<std::string> listed(Knit& knit, const Style& style = {})
{
    const Pattern pattern = knit.done();
    std::vector<SaidRow> said;
    std::string text;
    const auto rows = written(pattern, style);
    for (const WrittenRow& row : rows) {
        text += toText(row) + "\n";
        if (!row.repeat)
            said.push_back(
                {pattern.sections[0].rows[static_cast<std::size_t>(row.firstRow)]->side, row.phrases});
    }
    std::vector<std::string> list;
    for (const Abbreviation& one :
         abbreviationsIn(text, said, knit.catalogue().with(pattern.head.stitches), style)) {
        EXPECT_FALSE(one.meaning.empty()) << one.shortForm;
        list.push_back(one.shortForm);
    }
    return list;
}

using List = std::vector<std::string>;

} // namespace

TEST(Abbreviations, OnlyWhatIsUsedEachOnce)
{
    Knit knit(6);
    knit.pattern().head.yarns.resize(1);
    knit.rs("k k2tog yo k*3").ws("p*6").rs("k2tog yo k*4");
    EXPECT_EQ(listed(knit), (List{"k", "k2tog", "RS", "WS", "yo"})); // "purl" needs no p
    Style silent;
    silent.sides = SidesShown::Never;
    EXPECT_EQ(listed(knit, silent), (List{"k", "k2tog", "yo"}));
}

TEST(Abbreviations, ADoubleYarnOverAsTheRowHasIt)
{
    Knit knit(6);
    knit.pattern().head.yarns.resize(1);
    knit.rs("k k2tog yo2 ssk k");
    EXPECT_EQ(listed(knit), (List{"k", "k2tog", "RS", "ssk", "yo twice"}));
}

TEST(Abbreviations, AWholeTextWithItsListReadsBack)
{
    Knit knit(6);
    knit.pattern().head.yarns.resize(1);
    knit.pattern().head.yarns[0].name = "moss green";
    knit.rs("k k2tog yo k*3").ws("p*6");
    const Pattern pattern = knit.done();
    const std::string text = writtenPattern(pattern, knit.catalogue(), run(pattern, knit.catalogue()), {});
    EXPECT_NE(text.find("\nAbbreviations\n"), std::string::npos);
    EXPECT_NE(text.find("\nk2tog: knit two together. "), std::string::npos);
    EXPECT_NE(text.find("\nMC: moss green\n"), std::string::npos);
    const ReadText read = readText(text, knit.catalogue());
    EXPECT_EQ(read.rowsRead, 2);
    EXPECT_EQ(read.rowsNot, 0);
    ASSERT_EQ(read.pattern.sections.size(), 1u);
    EXPECT_EQ(read.pattern.head.introduction + read.pattern.head.notes, "");
}

// How a turn is worked and closed stands nowhere else: rows only name it (Interweave, German Short-Rows: name the method).
TEST(Abbreviations, TurnsSayHowTheyAreWorkedAndClosed)
{
    const struct {
        const char* turn;
        const char* shortForm; // in the list
    } cases[] = {{"turn:wt", "w&t"},
                 {"turn:yo", "turn, yo"},
                 {"turn:pin", "turn, pin yarn"},
                 {"turn:twin", "make twin st, turn"},
                 {"turn:ds", "DS"}};
    for (const auto& one : cases) {
        Knit knit(12);
        knit.pattern().head.yarns.resize(1);
        knit.rs(std::string("k*8 ") + one.turn).ws("p*8").rs("k*12").ws("p*12");
        const Pattern pattern = knit.done();
        const std::string text = writtenPattern(pattern, knit.catalogue(), run(pattern, knit.catalogue()), {});
        const auto at = text.find(std::string("\n") + one.shortForm + ": ");
        ASSERT_NE(at, std::string::npos) << text;
        const std::string line = text.substr(at + 1, text.find('\n', at + 1) - at - 1);
        EXPECT_GT(line.size(), 60u) << line;
        EXPECT_NE(line.find("In the row that crosses the turn"), std::string::npos) << line;
        const ReadText read = readText(text, knit.catalogue());
        EXPECT_EQ(read.rowsNot, 0) << text;
        ASSERT_EQ(read.pattern.sections.size(), 1u) << text;
        EXPECT_EQ(read.pattern.head.introduction + read.pattern.head.notes, "") << text;
        EXPECT_EQ(read.pattern.sections[0].rows.size(), 4u) << text;
    }
}
