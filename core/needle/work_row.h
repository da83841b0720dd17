// The working of one row, step by step. See ledger.h for what comes out of it.
//
// Shape:   positions are those of the needle before the row until splice(); m_made holds what the row leaves, in the
//          order made. m_at is the tip: what lies between m_start and m_at was taken up.
#pragma once

#include "core/needle/row_plan.h"

namespace shawlwright {

class RowWork {
public:
    RowWork(Needle& needle, const Row& row, const RowContext& context, Trace* trace);
    LedgerLine work();

private:
    struct Distance {
        enum class How { Found, NoPlace, Behind } how = How::Found;
        int loops = 0;
    };
    struct Passed { // a marker this row has passed or placed
        MarkerAt marker;
        int made = 0; // loops made by then
    };
    struct Span { // cells [from, to) of the plan, inside box `owner` (-1: none) on its `pass`th working
        std::size_t from, to;
        int owner;
        int pass;
    };

    // row_start.cpp
    void start();
    int continuedTip();
    void passOver();
    bool slideWasMeant(int edge) const;
    void checkYarn();
    std::string positionInWords(int position) const;
    // work_cells.cpp
    void workSpan(const Span& span);
    void workCell(const PlannedCell& cell, int pass);
    void makeLoops(const PlannedCell& cell, int take, bool madeUp);
    bool checkTaken(const PlannedCell& cell, int take); // whether it closes a turn
    void checkDoubleYarnOver(const PlannedCell& cell, const Loop& loop);
    void followDrift(const PlannedCell& cell);
    void advance(int loops);
    // work_columns.cpp
    void followColumn(const Stitch& stitch);
    void checkColumns();
    // work_boxes.cpp
    void workBox(const Span& inside);
    void workTimes(const Span& inside);
    void workUntil(const Span& inside);
    void workUntilByNeedle(const Span& inside, int leaving);
    void onePass(Span inside, int number);
    int takesOf(std::size_t from, std::size_t to, std::size_t firstBox) const; // -1: depends on the needle
    Distance distanceTo(const Box& box, std::size_t after) const;
    std::string placeInWords(const Box& box) const;
    void setAside(int loops);
    // work_markers.cpp
    void passMarkersBefore(const PlannedCell& cell);
    void passMarkersUnder(const PlannedCell& cell, int take, int firstMade);
    bool drawnBefore(const PlannedCell& cell, const MarkerAt& marker) const;
    void passNearest(const PlannedCell* next);
    void fireMoves(const Span& span, int& cursor, int u, const PlannedCell* next);
    void fire(const PlannedMove& move, bool inBox, const PlannedCell* next);
    void place(const MarkerMove& move, bool inBox);
    void remove(const MarkerMove& move, const PlannedCell* next);
    void shift(const MarkerMove& move);
    bool waitsForShift(MarkerId marker) const;
    void settleMarkers();
    std::string markerName(MarkerId id) const;
    // row_finish.cpp
    void finish();
    void turnEarly();
    void splice();
    int movedPosition(int position) const;
    void settleTurnsAndYarns();
    void tellCounts();
    bool isFirst() const; // of the shawl
    bool tellFit(int wanted, int there);
    void checkDrift();
    void checkStated();
    void fillLine(int before);

    bool rs() const { return m_row.side == Side::RS; }
    int ahead() const { return rs() ? m_needle.count() - m_at : m_at; }
    int forward(int position) const { return rs() ? position - m_at : m_at - position; }
    const Loop& loopAhead(int i) const
    {
        return m_needle.loops[static_cast<std::size_t>(rs() ? m_at + i : m_at - 1 - i)];
    }
    int low() const { return rs() ? m_start : m_at; }
    int high() const { return rs() ? m_at : m_start; }
    int made() const { return static_cast<int>(m_made.size()); }
    Finding& find(Severity severity, FindingKind kind, int column, std::string message);
    // Repeats in repeats may ask for more than anybody could knit.
    bool full() const { return m_steps > mostSteps; }

    Needle& m_needle;
    const Row& m_row;
    const RowContext& m_context;
    Trace* m_trace;
    RowPlan m_plan;
    LedgerLine m_line;

    int m_start = 0;
    int m_at = 0;
    int m_available = 0; // loops ahead when the row began
    std::vector<Loop> m_made;
    std::vector<MarkerAt> m_pending; // not yet passed, nearest LAST
    std::vector<MarkerAt> m_behind;  // on the other side of the start
    std::vector<MarkerId> m_placed;  // by this row
    std::vector<MarkerId> m_refused; // in a repeat, since they were on the needle before
    std::vector<Passed> m_passed;
    std::vector<int> m_watched;                     // turns and yarns ahead, nearest LAST
    std::vector<std::pair<int, int>> m_crossings;   // position passed, loops made by then
    int m_missing = 0, m_missingColumn = 0;
    int m_setAside = 0;
    bool m_toldCount = false;
    bool m_tooMany = false;
    static constexpr int mostSteps = 10 * mostCount;
    int m_steps = 0; // stitches worked
    int m_previousColumn = 0, m_previousWidth = 1; // of the cell worked before; column 0: none yet
    Loop m_previousTaken;                           // by a stitch of one into one
    Face m_previousFace = Face::Knit;
    bool m_previousSingle = false;
    // Three stitches one above the other, the last of this row: how many show the same, and how many of the middle
    // ones show the other side; by the face of the outer ones.
    struct Columns {
        int kept = 0, broken = 0;
        int column = 0; // of the rightmost broken one, in the chart of its row
        RowId row;      // of the broken ones
    };
    Columns m_columns[2];
    int m_drift = 0, m_driftCells = 0;
    bool m_driftMixed = false;
};

} // namespace shawlwright
