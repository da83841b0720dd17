// What is said of stitches after rows: counts, changes, and what the knitter should have at the end of a
// stretch.
//
// Shape:   the lines of each run; what all runs agree in is said, with one number per size where sizes
// differ. A size
//          that doesn't knit the row has 0.
// Source:  Kniterations, Indicating Stitch Count Changes, and Craft Star Studios, On Stitch Counts: a row
// worked once
//          has its total; one that is repeated, with another total each time, the change; the total follows
//          the block. The smallest size first: The Knitter, 2018-04. Ridges and stitches between turns as
//          checkpoints: common practice, no source.
#pragma once

#include "core/wording/phrases.h"
#include "core/wording/style.h"
#include "core/wording/writer/runs.h"

namespace shawlwright {

// What is on the needle at the end of a stretch.
struct Reached {
    std::optional<Quantity> stitches;
    std::optional<Quantity> betweenTurns; // short rows are open
    std::vector<std::pair<YarnId, Quantity>>
        ridges; // garter ridges of the section so far, of each yarn that has any
    bool none() const { return !stitches && !betweenTurns && ridges.empty(); }
    bool operator==(const Reached&) const = default;
};

class RowCounts {
public:
    RowCounts(const Runs& runs, const PatternHead& head, const Style& style);

    // "(45 sts)" in the marks of the style; empty: nothing worth saying. `said` are the words before it: stitches
    // that they leave unworked are not told again. `each` follows a change: " each row".
    std::string ofRow(const Row& row, const RunLines& lines, const Phrases& said, const std::string& each = {}) const;
    // Of a block that is worked again: `lines` of its last row, `ends` those after which it is done.
    Reached ofRepeat(const RunLines& lines, const RunLines& ends, bool garter) const;
    Reached atEnd(const RunLines& ends, bool garter) const;
    std::string inMarks(const Reached& reached) const;    // "(45 sts, 10 garter ridges)"
    std::string inSentence(const Reached& reached) const; // "You have 45 sts and 10 garter ridges."

    // Stitches more (or fewer) after the row, where every line of a run agrees.
    std::optional<Quantity> change(const RunLines& lines) const;

private:
    template <typename Number>
    std::optional<Quantity> number(const RunLines& lines, const Number& of) const;
    bool endsShortRows(const RunLines& lines) const;
    std::string marked(const std::string& words) const;
    std::vector<std::string> parts(const Reached& reached) const;
    void addRidges(Reached& reached, const RunLines& ends) const;

    Runs m_runs;
    const PatternHead& m_head;
    CountsShown m_shown;
    CountMarks m_marks;
};

// At least half of the lines make ridges, two or more: that many rows of the section are garter stitch.
bool isGarter(const Runs& runs, const RunLines& lines, const RunLines& ends);

} // namespace shawlwright
