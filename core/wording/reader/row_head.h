// What a line begins with: "Row 5 (RS):", "Rows 2-8:", "Row 4 and all following WS rows:", "Rnd 1:", "Next
// row (WS):".
//
// Shape:   labels as printed, a range of numbers worked out; none where the row is only "next" or "set-up".
#pragma once

#include "core/stitches/catalogue.h"
#include "core/wording/reader/cursor.h"

namespace shawlwright {

struct RowHead {
    std::vector<std::string> labels;
    bool range = false; // "2-8", "3 and 4 (RS first)": sides take turns
    std::optional<Side> side;
    bool round = false;
    enum class Also {
        None,
        RS,
        WS,
        Odd,
        Even,
        Same
    } also = Also::None;   // and all of these; Same: of this row's side
    bool onlyAlso = false; // "All WS rows"
    int until = 0;         // "and all WS rows to Row 12"; 0: all there are
    std::string yarn;      // "(RS, MC)"
    std::size_t end = 0;   // where the row's words begin
    bool sure = true;      // a colon, a full stop or a side ends it
};

std::optional<RowHead> rowHead(const NormalText& line);

// "Knit 6 rows."
struct PlainRows {
    NormalText words; // "Knit"
    int count = 0;
    bool round = false;
};
std::optional<PlainRows> plainRows(const NormalText& line);

// "Rep Rows 3-6 nine more times.", "Work Rows 1-4 a total of 6 times.", "Rep last 2 rows until 45 sts
// remain."
struct RowRepeat {
    std::string first, last; // labels; empty: the last `rows` rows
    int rows = 0;
    Quantity times;
    enum class Means { InAll, More, Unsaid, UntilStitches } means = Means::More; // Unsaid: "three times"
    bool work = false;             // "Work Rows ..." rather than "Rep Rows ..."
    std::optional<Quantity> total; // count after it
    std::string rest;
};
// `afterHead`: the words of "Rows 17-20: Rep Rows 15 and 16 twice.", where "as Rows 15 and 16" says it too.
std::optional<RowRepeat> rowRepeat(const NormalText& line, int sizes, bool afterHead = false);

// "CO 34 sts, pm after 4 and 30 sts.", "Cast on 34 (40, 46) sts with MC (long-tail)."
struct CastOnWords {
    Quantity stitches;
    std::string yarn;
    std::string method;
    std::vector<int> markersAfter;
    bool wrongSideFaces = false;
    std::string rest; // not understood
};
std::optional<CastOnWords> castOnWords(const NormalText& line, int sizes);

std::optional<int> labelNumber(std::string_view label); // "12", and 12 of "12a"

} // namespace shawlwright
