// Writes rows in words: what stands in the chart, exactly, as a technical editor would put it.
//
// Shape:   one WrittenRow per row of the chart, in knitting order; a row repeat follows its last row as one of its
//          own ("Rep Rows 3-6 nine more times.").
// Errors:  none: every row the model can hold can be written.
#pragma once

#include "core/wording/phrases.h"
#include "core/wording/style.h"
#include "core/wording/writer/runs.h"

namespace shawlwright {

struct WrittenRow {
    int firstRow = 0, lastRow = 0; // row indexes in the section
    bool repeat = false;           // "Rep Rows ..." rather than a row
    std::string label;             // "Row 5 (RS):"
    std::string text;              // "k2, *yo, k2tog; rep from * to last 2 sts, k2."
    std::string count;             // "(45 sts)" or empty
    std::string note;              // the row's own, printed after the count
    Phrases phrases;
    bool operator==(const WrittenRow&) const = default;
};

std::vector<WrittenRow> writtenRows(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs,
                                    int section, const Style& style);

// The same after an edit that left the head, the style and the order of the section's rows and row repeats as
// they were: `rows` were true before it, `reworked` tells the ledger lines that have been worked again since,
// of each run (of every run of the pattern, where `runs` has them).
void rewrite(std::vector<WrittenRow>& rows, const Pattern& pattern, const Catalogue& catalogue,
             const Runs& runs, int section, const Style& style, std::span<const Reworked> reworked);

// "Rep Rows 3-6 nine more times.", given the rows and how often they are worked in all.
std::string rowRepeatInWords(const std::string& range, const Quantity& times, const Style& style);

// "Row 5 (RS): k2, yo, k to end. (45 sts)", the note after it
std::string toText(const WrittenRow& row);
// The whole section with its title; the whole pattern of one version with abbreviations and cast-on.
std::string writtenSection(const Pattern&, const Catalogue&, const Runs&, int section, const Style&);
// Facts: with designer, introduction, yarns, needles, gauge and notes, where there is a title.
enum class HeadTold { Rows, Facts };
std::string writtenPattern(const Pattern&, const Catalogue&, const Runs&, const Style&, HeadTold = HeadTold::Rows);
// Several versions: one after the other, or section by section with what they share said once, as the style
// has it.
std::string writtenVersions(const Pattern&, const Catalogue&, std::span<const Runs> versions, const Style&,
                            HeadTold = HeadTold::Rows);

// Runs the pattern as a text of it needs: the version and the size asked for, where none is, all of them.
struct ToldRuns {
    std::vector<Ledger> ledgers; // of every version and size, told or not
    std::vector<Runs> versions;  // they point into the ledgers
};
ToldRuns runsToTell(const Pattern& pattern, const Catalogue& catalogue, std::optional<int> version,
                    std::optional<int> size);
std::string sizesInWords(const Pattern& pattern); // "Small (Medium, Large)"; empty where there is one size
// "Slip markers as you come to them." where rows leave such slips out; else nothing.
std::string markersInWords(const Pattern& pattern, const Style& style);
std::string castOnInWords(const Pattern& pattern); // "Cast on 34 (40) sts with MC."

} // namespace shawlwright
