// Rows of the test notation in the writer's words.
#pragma once

#include "core/wording/writer/writer.h"
#include "tests/support/knit.h"

namespace shawlwright::tests {

inline std::vector<WrittenRow> written(const Pattern& pattern, const Style& style = {}, RunChoice choice = {})
{
    static const Catalogue& builtIn = Knit(1).catalogue();
    const Catalogue catalogue = builtIn.with(pattern.head.stitches);
    return writtenRows(pattern, catalogue, run(pattern, catalogue, choice), 0, style);
}

inline std::vector<WrittenRow> written(Knit& knit, const Style& style = {})
{
    return written(knit.done(), style);
}

// The text of one row of the first section.
inline std::string textOf(Knit& knit, int row = 0, const Style& style = {})
{
    return written(knit, style).at(static_cast<std::size_t>(row)).text;
}

// One row alone in one yarn, over a cast-on.
inline std::string textOf(Side side, const char* words, int castOn, const Style& style = {})
{
    Knit knit(castOn, side);
    knit.pattern().head.yarns.resize(1);
    knit.row(side, words);
    return textOf(knit, 0, style);
}

// Changes the last row that was written in the notation.
template <typename Change>
void changeLast(Knit& knit, const Change& change)
{
    RowRef& last = knit.pattern().sections.back().rows.back();
    Row row = *last;
    change(row);
    last = std::make_shared<const Row>(std::move(row));
}

} // namespace shawlwright::tests
