// Where the cursor stands, and what is selected, after something was undone or redone.
#include "app/canvas/canvas_parts.h"

#include <algorithm>

namespace shawlwright::app {

namespace {

// The first stitch, as it is knitted, in which a row differs; nothing: it has the same stitches.
std::optional<At> firstDifference(int at, const Row& was, const Row& now, int columns)
{
    for (int n = 1; n <= columns; ++n) {
        const int column = now.side == Side::RS ? n : columns + 1 - n;
        if (cellAt(was, column) != cellAt(now, column))
            return At{at, column};
    }
    return std::nullopt;
}

} // namespace

Canvas::Parts::Seat Canvas::Parts::seat() const
{
    return {section, cursor, anchor, selected};
}

void Canvas::Parts::sit(const Seat& at)
{
    canvas.selectAreas(at.selected);
    moveCursor(at.cursor, false);
    anchor = inside(at.anchor);
}

// Where cursor and selection were before the act, and, once it is over, after it.
void Canvas::Parts::keepSeat(int step)
{
    if (out)
        return;
    seats[step].before = seat();
    QMetaObject::invokeMethod(
        &canvas,
        [this] {
            if (const auto done = seats.find(document.undoStack().index() - 1); done != seats.end())
                done->second.after = seat();
        },
        Qt::QueuedConnection);
}

// Back to where somebody was then, if that was where they changed something. Where that isn't known: if one row changed, to the first stitch that did; where more did, to the lowest of them, unless the cursor is there.
void Canvas::Parts::revisited(const Change& change, const Edit& before, Going going)
{
    if (out)
        return;
    const int gone = document.undoStack().index() - (going == Going::Back ? 1 : 0);
    const auto known = seats.find(gone);
    const std::optional<Seat> then = known == seats.end() ? std::nullopt
                                     : going == Going::Back ? known->second.before
                                                            : known->second.after;
    std::optional<At> changed_;
    const auto lower = [&](At at) {
        if (!changed_ || at.row < changed_->row)
            changed_ = at;
    };
    std::size_t rowsSwapped = 0;
    for (const EditStep& step : before.steps) {
        if (const auto* swap = std::get_if<SwapRows>(&step); swap && swap->section == section) {
            rowsSwapped += swap->rows.size();
            for (const auto& [at, was] : swap->rows)
                if (const Row* now = row(at))
                    lower(firstDifference(at, *was, *now, extent().columns).value_or(firstStitch(at)));
        } else if (const auto* splice = std::get_if<SpliceRows>(&step); splice && splice->section == section) {
            lower(firstStitch(std::clamp(splice->at, 0, std::max(0, extent().rows - 1))));
        }
    }
    bool there = false, wasThere = false;
    for (const Change::Rows& rows : change.rows)
        if (rows.section == section && rows.last >= rows.first) {
            canvas.showRow(shownRows.nearest(rows.first));
            canvas.showRow(shownRows.nearest(rows.last));
            there = there || (cursor.row >= rows.first && cursor.row <= rows.last);
            wasThere = then && then->cursor.row >= rows.first - 1 && then->cursor.row <= rows.last + 1;
        }
    if (then && then->section == section && (wasThere || change.rows.empty()))
        sit(*then);
    else if (changed_ && (!there || rowsSwapped == 1))
        moveCursor(*changed_, false);
}

} // namespace shawlwright::app
