// A small catalogue and patterns written as text, for tests of edits and of questions about a pattern.
#pragma once

#include "core/edits/edit.h"

#include <string>
#include <vector>

namespace shawlwright::test {

inline Stitch stitch(std::string key, int takesUp, int leaves, int columns = 0)
{
    Stitch made;
    made.key = key;
    made.name = key;
    made.takesUp = takesUp;
    made.leaves = leaves;
    made.columns = columns;
    made.onRS = key;
    made.onWS = key;
    return made;
}

inline const Catalogue& smallCatalogue()
{
    static const Catalogue catalogue = [] {
        std::vector<Stitch> stitches{stitch("no_st", 0, 0), stitch("k", 1, 1),     stitch("p", 1, 1),
                                     stitch("yo", 0, 1),    stitch("k2tog", 2, 1), stitch("yo2", 0, 2),
                                     stitch("c4", 4, 4)};
        stitches[1].onWS = "p";
        stitches[2].onWS = "k";
        return Catalogue(std::move(stitches));
    }();
    return catalogue;
}

inline StitchId st(std::string_view key)
{
    return smallCatalogue().require(key);
}

// "k k2tog - c4": the cells from column 1, right to left; - is no stitch; a wide stitch is written once.
inline std::vector<Cell> cellsOf(const std::string& text)
{
    std::vector<Cell> cells;
    std::string word;
    const auto put = [&] {
        if (word.empty())
            return;
        const StitchId id = word == "-" ? noStitch : st(word);
        for (int part = 0; part < smallCatalogue().stitch(id).width(); ++part)
            cells.push_back({id, {}, static_cast<std::uint8_t>(part)});
        word.clear();
    };
    for (const char c : text + " ") {
        if (c == ' ')
            put();
        else
            word += c;
    }
    return cells;
}

// The other way round; a cell with a yarn of its own is followed by @ and its number, a lone part of a stitch
// by ?.
inline std::string dump(const Row& row)
{
    std::string text;
    for (int column = 1; column <= static_cast<int>(row.cells.size());) {
        const Cell cell = cellAt(row, column);
        const Stitch& made = smallCatalogue().stitch(cell.stitch);
        text += (text.empty() ? "" : " ") + (cell.stitch == noStitch ? "-" : made.key);
        if (cell.yarn != YarnId{})
            text += "@" + std::to_string(cell.yarn.value);
        if (cell.part != 0)
            text += "?";
        column += cell.part == 0 ? made.width() : 1;
    }
    return text;
}

// One section of rows, RS first, in the pattern's first of two yarns; rows are numbered by id from 1.
inline Pattern patternOf(const std::vector<std::string>& rows, int columns)
{
    Pattern pattern;
    pattern.head.title = "Desk";
    Yarn main{YarnId{1}, "MC", "moss", 0x336633};
    Yarn other{YarnId{2}, "CC", "straw", 0xDDCC66};
    pattern.head.yarns = {main, other};
    pattern.head.markers = {{MarkerId{1}, "A"}, {MarkerId{2}, "B"}};
    pattern.head.castOn.yarn = YarnId{1};
    Section section;
    section.id = SectionId{1};
    section.frame.title = "Body";
    section.frame.columns = columns;
    std::uint32_t id = 0;
    for (const std::string& text : rows) {
        Row row;
        row.id = RowId{++id};
        row.side = id % 2 == 1 ? Side::RS : Side::WS;
        row.yarn = YarnId{1};
        row.cells = cellsOf(text);
        row.cells.resize(static_cast<std::size_t>(columns));
        section.rows.push_back(std::make_shared<const Row>(std::move(row)));
    }
    pattern.sections.push_back(std::move(section));
    return pattern;
}

inline const SectionId body{1};

inline Box box(std::uint32_t firstRow, std::uint32_t lastRow, int firstColumn, int lastColumn,
               std::uint32_t id = 1)
{
    Box made;
    made.id = BoxId{id};
    made.firstRow = RowId{firstRow};
    made.lastRow = RowId{lastRow};
    made.firstColumn = firstColumn;
    made.lastColumn = lastColumn;
    return made;
}

// "rows 1-2, columns 3-4": a box by the places of its rows in the chart, from 1.
inline std::string dump(const Section& section, const Box& box)
{
    return "rows " + std::to_string(rowIndex(section, box.firstRow) + 1) + "-" +
           std::to_string(rowIndex(section, box.lastRow) + 1) + ", columns " +
           std::to_string(box.firstColumn) + "-" + std::to_string(box.lastColumn);
}

inline std::string dump(const Section& section, const Bracket& bracket)
{
    return "rows " + std::to_string(rowIndex(section, bracket.firstRow) + 1) + "-" +
           std::to_string(rowIndex(section, bracket.lastRow) + 1);
}

inline const Row& rowOf(const Pattern& pattern, int at)
{
    return *pattern.sections.front().rows[static_cast<std::size_t>(at)];
}

} // namespace shawlwright::test
