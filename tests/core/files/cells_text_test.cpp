#include "core/files/builtin_catalogue.h"
#include "core/files/cells_text.h"
#include "tests/core/files/rich_pattern.h"

#include <gtest/gtest.h>

namespace shawlwright::tests {
namespace {

using namespace files;

const std::vector<Yarn> yarns{
    Yarn{YarnId{1}, "MC", "", 0, -1, 0, 0},        Yarn{YarnId{2}, "CC", "", 0, -1, 0, 0},
    Yarn{YarnId{3}, "two words", "", 0, -1, 0, 0}, Yarn{YarnId{4}, "#1", "", 0, -1, 0, 0},
    Yarn{YarnId{5}, "same", "", 0, -1, 0, 0},      Yarn{YarnId{6}, "same", "", 0, -1, 0, 0}};

struct Case {
    std::string text;
    std::vector<Cell> cells;
};

std::vector<Case> cases()
{
    return {
        {"", {}},
        {"k", cellsOf("k")},
        {"k*12 yo k2tog", cellsOf("k", 12) + cellsOf("yo") + cellsOf("k2tog")},
        {"-*2 p", cellsOf("no_st", 2) + cellsOf("p")},
        {"yo2*3 k", cellsOf("yo2", 3) + cellsOf("k")},
        {"k k@CC*3 k@#3 k@#4 k@#5 k@#6", cellsOf("k") + cellsOf("k", 3, YarnId{2}) +
                                             cellsOf("k", 1, YarnId{3}) + cellsOf("k", 1, YarnId{4}) +
                                             cellsOf("k", 1, YarnId{5}) + cellsOf("k", 1, YarnId{6})},
        {"k -@CC", cellsOf("k") + cellsOf("no_st", 1, YarnId{2})}, // a yarn keeps the last no stitch
    };
}

TEST(CellsText, IsWrittenAndReadByTable)
{
    for (const Case& c : cases()) {
        std::vector<Cell> wide = c.cells;
        wide.resize(30);
        EXPECT_EQ(cellsText(wide, builtInCatalogue(), YarnNames(yarns)), c.text);
        const ReadCells read = readCells(c.text, 30, builtInCatalogue(), YarnNames(yarns));
        EXPECT_EQ(read.fault, "") << c.text;
        EXPECT_EQ(read.cells, wide) << c.text;
    }
}

TEST(CellsText, TakesWhatAHandWrote)
{
    const ReadCells read = readCells("  k   k*2\tno_st -*1 k ", 10, builtInCatalogue(), YarnNames(yarns));
    EXPECT_EQ(read.fault, "");
    EXPECT_EQ(cellsText(read.cells, builtInCatalogue(), YarnNames(yarns)), "k*3 -*2 k");
}

struct BadCase {
    const char* text;
    std::size_t at;
    const char* fault;
};

const BadCase badCases[] = {
    {"k*3 kk", 4,
     "column 4 holds 'kk', a stitch that neither the program nor this pattern knows; correct its name, or "
     "describe it "
     "under \"stitches\""},
    {"k@", 0,
     "column 1 is worked with '', a yarn that the pattern doesn't have; name one of its yarns (MC, CC, #3, "
     "#4, #5 and #6)"},
    {"k k@XC*2", 2,
     "column 2 is worked with 'XC', a yarn that the pattern doesn't have; name one of its yarns (MC, CC, #3, "
     "#4, #5 and #6)"},
    {"k*", 0, "column 1 holds 'k*'; after * goes a whole number from 1 to 2000"},
    {"k*0", 0, "column 1 holds 'k*0'; after * goes a whole number from 1 to 2000"},
    {"k*-2", 0, "column 1 holds 'k*-2'; after * goes a whole number from 1 to 2000"},
    {"k*2.5", 0, "column 1 holds 'k*2.5'; after * goes a whole number from 1 to 2000"},
    {"k*99999999999", 0, "column 1 holds 'k*99999999999'; after * goes a whole number from 1 to 2000"},
    {"k*4 k*7", 4, "'k*7' at column 5 goes past the last column, 10; widen the section or shorten the row"},
    {"k*9 yo2", 4, "'yo2' at column 10 goes past the last column, 10; widen the section or shorten the row"},
    {"k*2000000000", 0,
     "'k*2000000000' at column 1 goes past the last column, 10; widen the section or shorten the row"},
};

TEST(CellsText, RefusesByTable)
{
    for (const BadCase& c : badCases) {
        const ReadCells read = readCells(c.text, 10, builtInCatalogue(), YarnNames(yarns));
        EXPECT_EQ(read.fault, c.fault);
        EXPECT_EQ(read.faultAt, c.at) << c.text;
    }
}

} // namespace
} // namespace shawlwright::tests
