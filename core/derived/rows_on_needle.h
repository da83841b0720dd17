// Rows made one after the other on the needle that stands at a place of a chart, then put into the chart there.
//
// Shape:   each row is worked on the needle as the row before left it, its stitches over the columns of the loops they
//          take up. Empty rows from `at` on are filled, what doesn't find room is inserted; a plain row more is added
//          where the row that follows would else lie on the wrong side. Only the widening of the chart to the right
//          moves other rows.
// Units:   stitches; columns.
// Errors:  a Fault where the needle is not the same in every knitting of the place, or a repeat would be torn.
#pragma once

#include "core/derived/laid_row.h"
#include "core/edits/edit.h"

namespace shawlwright {

struct PlacedRows {
    std::vector<Row> rows;
    int lead = 0;   // plain rows to the edge it starts from
    int filled = 0; // of the rows, how many take the place of empty ones
    Edit edit;
};

class RowsOnNeedle {
public:
    // `what` is made, in words for messages: "a wedge". takeNeedle() has to be well before anything else is asked.
    RowsOnNeedle(const Pattern& pattern, const Catalogue& catalogue, std::span<const Ledger> ledgers,
                 std::size_t shown, SectionId section, int at, std::string what);
    std::optional<Fault> takeNeedle();
    void widenRight(int columns); // before the first row
    void widenTo(int columns);

    Fault fault(std::string message) const;
    const Needle& needle() const { return m_needle; }
    int columns() const { return m_columns; }
    Side nextSide() const;
    bool atStart(bool rightEdge) const; // the next row starts at this edge
    YarnId yarnHere() const;            // of the row before
    // That of the row that follows what is made, one row more included, where it hangs at the tip; else `otherwise`.
    YarnId yarnGoingOn(YarnId otherwise) const;
    // That of the row that follows what is made and `more` rows; none where there is none.
    YarnId yarnAfter(int more) const;
    bool workedRepeatedly() const; // what is made lies in a row repeat
    int rows() const { return static_cast<int>(m_made.rows.size()); }

    struct Plain { // a row of plain stitches
        Side side = Side::RS;
        YarnId yarn;
        PlainStitch stitches = PlainStitch::Knit;
        std::optional<TurnMethod> turns; // early, after so many stitches:
        int works = 0;                   // all that are ahead where it doesn't turn early
        bool slipFirst = false;          // after an early turn; with a pinned yarn it always is
    };
    LedgerLine add(const Plain& plain);
    // Any stitches, in the order worked, with its yarn joined where it hangs elsewhere.
    LedgerLine add(Row base, const std::vector<StitchId>& worked, const std::vector<MoveBefore>& moves);
    std::vector<StitchId> plainAhead(const Row& base, PlainStitch how) const;
    // Up to two plain rows, so that the next one starts at this edge.
    void leadTo(bool rightEdge, YarnId yarn, PlainStitch stitches);

    Result<PlacedRows> place(const std::string& name, PlainStitch stitches);

private:
    const Section& section() const { return m_pattern.sections[static_cast<std::size_t>(m_sectionAt)]; }
    RowContext context() const;
    void spreadOverColumns();
    void breakYarn(YarnId yarn); // after the last row made with it
    bool emptyAt(int at) const;
    int filledBy(int rows) const;

    Pattern m_pattern; // a copy costs a pointer a row
    const Catalogue& m_catalogue;
    std::span<const Ledger> m_ledgers;
    const Ledger& m_shown;
    int m_sectionAt;
    int m_at;
    std::string m_what;
    int m_columns;
    bool m_starts = false; // the first row made is the section's first
    int m_size = 0;
    Needle m_needle; // as the rows made so far left it
    PlacedRows m_made;
};

bool nothingOn(const Row& row); // no stitch is painted

// Whether a row works the turning stitch before it turns, so that it goes one stitch further than it would with wrap
// and turn.
bool worksTurningStitch(TurnMethod method);

} // namespace shawlwright
