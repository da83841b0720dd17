// Rows of public-domain handbooks, painted out stitch by stitch without any repeat, come out in the words of
// the books: their asterisks, brackets and places are found again. Sources of the texts stand in
// tests/data/handbook/texts/counts.json.

#include "tests/core/wording/reader/written_again.h"

#include "core/files/builtin_catalogue.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::string contents(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

// The stitches of a row as worked each time; empty where the times differ.
std::vector<Cell> workedCells(const Ledger& ledger, const Pattern& pattern, const Catalogue& catalogue,
                              RowId row)
{
    std::vector<Cell> cells;
    bool first = true;
    for (std::size_t line = 0; line < ledger.rows.size(); ++line) {
        const Row& knitted = *ledger.rows[line].ref;
        if (knitted.id != row)
            continue;
        std::vector<Cell> here;
        for (const WorkedCell& worked : traceOf(ledger, pattern, catalogue, static_cast<int>(line)).cells)
            here.push_back(cellAt(knitted, worked.column));
        if (!first && here != cells)
            return {};
        cells = std::move(here);
        first = false;
    }
    return cells;
}

// Each row in full, where that is the same each time it is knitted and no marker is moved in it.
Pattern paintedOut(const Pattern& pattern, const Catalogue& catalogue, int& painted)
{
    const Ledger ledger = run(pattern, catalogue);
    Pattern out = pattern;
    for (Section& section : out.sections) {
        for (RowRef& ref : section.rows) {
            const auto cells = workedCells(ledger, pattern, catalogue, ref->id);
            if (cells.empty() || !ref->moves.empty() || ref->finish.kind == FinishKind::BindOff)
                continue;
            Row row = *ref;
            row.cells.clear();
            for (std::size_t i = 0; i < cells.size(); ++i) {
                Cell cell = cells[row.side == Side::RS ? i : cells.size() - 1 - i];
                for (int part = 0; part < catalogue.stitch(cell.stitch).width(); ++part) {
                    cell.part = static_cast<std::uint8_t>(part);
                    row.cells.push_back(cell);
                }
            }
            std::erase_if(section.frame.boxes, [&](const Box& box) { return box.firstRow == row.id; });
            ref = std::make_shared<const Row>(std::move(row));
            ++painted;
        }
        for (const RowRef& ref : section.rows)
            section.frame.columns = std::max(section.frame.columns, static_cast<int>(ref->cells.size()));
        for (RowRef& ref : section.rows) {
            Row row = *ref;
            row.cells.resize(static_cast<std::size_t>(section.frame.columns));
            ref = std::make_shared<const Row>(std::move(row));
        }
    }
    return out;
}

} // namespace

TEST(PaintedHandbook, IsToldAsInPrint)
{
    WrittenAgain again;
    int painted = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(SHAWLWRIGHT_SOURCE "/tests/data/handbook/texts")) {
        if (entry.path().extension() != ".txt")
            continue;
        const std::string text = contents(entry.path());
        ReadText read = readText(text, builtInCatalogue());
        const Catalogue catalogue = builtInCatalogue().with(read.pattern.head.stitches);
        const Pattern full = paintedOut(read.pattern, catalogue, painted);
        EXPECT_TRUE(faultsOf(full, catalogue).empty()) << entry.path();
        const Ledger was = run(read.pattern, catalogue);
        read.pattern = full;
        const Ledger ledger = run(full, catalogue);
        ASSERT_EQ(was.lines.size(), ledger.lines.size()) << entry.path();
        for (std::size_t i = 0; i < was.lines.size(); ++i)
            EXPECT_EQ(was.lines[i].after, ledger.lines[i].after) << entry.path() << " line " << i;
        again.add(text, read, catalogue, ledger, entry.path().filename().string());
    }
    std::printf("handbook rows painted out: %d; %s\n", painted, again.told().c_str());
    EXPECT_GT(painted, 500);
    // The others are mostly shorter than the print, or "knit" and "to last turn" for a number.
    EXPECT_GT(again.equal, again.rows * 65 / 100);
    EXPECT_LT(again.written, again.printed);
}
