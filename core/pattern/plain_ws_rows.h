// Wrong-side rows that are a plain way back: a chart can be read without them, as many published charts are drawn.
//
// Shape:   by row index. Plain is a WS row that is worked across without a turn of its own, a slip, another yarn or a
//          yarn that is broken, without markers, note, stated count and words of its own, and whose stitches are all
//          purled, all knitted, or worked as the row below shows them, but for a garter border of a few stitches
//          knitted at either end. Rows of a row repeat that has no other rows are
//          not plain, so that the repeat stays to be seen.
// Source:  "all WS rows: purl", "knit the knits and purl the purls": common practice, no source.
#pragma once

#include "core/pattern/questions.h"

#include <compare>
#include <string>
#include <vector>

namespace shawlwright {

struct PlainWs {
    enum class Way : std::uint8_t { None, Purl, Knit, AsTheyShow }; // none: the row is not plain
    Way way = Way::None;
    int first = 0, last = 0; // stitches knitted before and after, in the order worked
    bool plain() const { return way != Way::None; }
    auto operator<=>(const PlainWs&) const = default;
};

inline constexpr int mostGarterBorder = 8; // stitches; a wider band of knit and purl is a pattern to be seen

// One row by itself and the row below it; repeats are not asked about.
PlainWs plainWs(const Section& section, const Catalogue& catalogue, int row);
std::vector<PlainWs> plainWsRows(const Section& section, const Catalogue& catalogue);
void exceptWholeRepeats(std::vector<PlainWs>& rows, const Section& section);

// "purl"; "knit"; "k3, purl to the last 3 sts, k3"; "knit the knits and purl the purls".
std::string plainWsWords(PlainWs how);

// The section without some of its rows: labels stay those of the whole section, stitch and row repeats hold the rows
// that are left, and one without any is gone.
struct FewerRows {
    Section section;
    std::vector<int> rows; // their indexes in the whole section
};
FewerRows withoutRows(const Section& section, const std::vector<bool>& gone);

// What a reader has to know where they are left out, a sentence for each way of working them: "WS rows not shown: purl."
// where they are all the WS rows, else with their labels: "WS rows 2-12 and 16 not shown: knit."
std::vector<std::string> rowsNotShown(const Section& section, const std::vector<PlainWs>& plain);

} // namespace shawlwright
