// Patterns for tests, written as they are worked: a short notation that is not the product's reader.
//
// A row is a list of words apart by blanks, in the order worked on its side ("k*2 yo k2tog" on RS; on WS `k`
// is the stitch that shows as a purl). Besides stitches (abbreviation on that side, or key; *n for how many):
//   .          a column without a stitch          |A -A ~A   marker A placed, removed, slipped exactly here
//   [ ... ]*3  stitch repeat, 3 times             ]end-4 ]A-4 ]turn-4   until 4 before the end, marker A, the
//   last turn |A!        the marker is placed each time     slip:6 edge join   at the start turn turn:wt
//   turn:ds turn:yo turn:pin turn:twin slide round bindoff break   at the end
#pragma once

#include "core/needle/ledger.h"

#include <initializer_list>

namespace shawlwright::tests {

class Knit {
public:
    explicit Knit(int castOn, Side firstSide = Side::RS);

    Knit& rs(std::string_view words, std::string_view yarn = {}) { return row(Side::RS, words, yarn); }
    Knit& ws(std::string_view words, std::string_view yarn = {}) { return row(Side::WS, words, yarn); }
    Knit& row(Side side, std::string_view words, std::string_view yarn = {});
    Knit& section(std::string title, std::vector<std::string> versions = {});
    Knit& times(int rows, Quantity times); // brackets the last `rows` rows
    Knit& stated(Quantity count);          // of the last row

    Pattern& pattern() { return m_pattern; }
    Pattern done(); // rows padded to the width of their section
    Ledger run(RunChoice choice = {}) { return shawlwright::run(done(), catalogue(), choice); }
    const Catalogue& catalogue() const;

private:
    MarkerId marker(const std::string& name);
    Pattern m_pattern;
};

// "rows: after" of every line; the kinds of all findings that stand on their own, by name.
std::vector<int> afterEach(const Ledger& ledger);
std::vector<std::string> kinds(const Ledger& ledger);
std::string dumpEnd(const Ledger& ledger);
// The keys of a row of the first section from the right edge, "-" for no stitch; a wide stitch once.
std::string chart(const Pattern& pattern, int row, const Catalogue& catalogue);
// Every finding as "Section, Row 3, column 4: kind: message", a line each.
std::string told(const Ledger& ledger, const Pattern& pattern);

} // namespace shawlwright::tests
