// What the tools do to the pattern; each act is one undo step.
#include "app/canvas/canvas_parts.h"
#include "app/canvas/turn_cut.h"
#include "core/edits/marks.h"
#include "core/edits/selected.h"

#include <QScopedValueRollback>

#include <algorithm>

namespace shawlwright::app {

bool Canvas::Parts::perform(const Result<Edit>& edit, int stroke)
{
    if (out) {
        tellToLookAtOnly();
        return false;
    }
    const QScopedValueRollback guard(performing, true);
    const std::optional<Fault> fault = edit.ok() ? hiddenFault(edit.value()) : edit.fault();
    if (!fault)
        return document.perform(edit.value(), stroke);
    Q_EMIT canvas.told(QString::fromStdString(toText(*fault)));
    return false;
}

int Canvas::Parts::brushWidth() const
{
    return document.catalogue().stitch(brush).width();
}

void Canvas::Parts::beginStroke(At at, Qt::MouseButton button, bool erases)
{
    const int width = erases ? 1 : brushWidth();
    const Extent room = extent();
    drag = {};
    drag.kind = DragKind::Stroke;
    drag.button = button;
    drag.tool = tool;
    drag.erases = erases;
    drag.strokeNumber = document.newStroke();
    drag.stroke.emplace(shownRows.lines(room.rows), room.columns, width); // hidden rows are not painted over
    if (!erases && at.column + width - 1 > room.columns) { // let the maker say why it can't stand there
        const At one[] = {at};
        perform(paint(document.pattern(), document.catalogue(), section, one, brush, brushYarn));
    }
    continueStroke(at);
}

void Canvas::Parts::continueStroke(At at)
{
    if (!drag.stroke || !shown())
        return;
    std::vector<At> fresh = drag.stroke->to(At{shownRows.lineOf(at.row), at.column});
    for (At& cell_ : fresh)
        cell_.row = shownRows.rowAt(cell_.row);
    if (fresh.empty())
        return;
    const Pattern& pattern = document.pattern();
    if (drag.erases)
        performPainted(erase(pattern, document.catalogue(), section, fresh), drag.strokeNumber);
    else
        performPainted(paint(pattern, document.catalogue(), section, fresh, brush, brushYarn), drag.strokeNumber);
}

void Canvas::Parts::finishRectangle(const Area& area, CanvasTool with)
{
    if (!shown())
        return;
    switch (with) {
    case CanvasTool::Area:
        performPainted(
            fill(document.pattern(), document.catalogue(), section, shownRows.seen({area}), brush, brushYarn));
        break;
    case CanvasTool::Repeat:
        Q_EMIT canvas.repeatDrawn(area);
        break;
    case CanvasTool::RowRepeat:
        Q_EMIT canvas.rowRepeatDrawn(area.firstRow, area.lastRow);
        break;
    default:
        break;
    }
}

void Canvas::Parts::turnAt(int at, int boundary)
{
    if (shown())
        perform(turnedAt(document.pattern(), section, at, boundary, turnMethod));
}

std::optional<MarkerGrip> Canvas::Parts::markerAt(int at, int boundary) const
{
    const Section* section_ = shown();
    const Row* here = row(at);
    if (!here)
        return std::nullopt;
    for (const MarkerMove& move : here->moves)
        if (move.boundary == boundary)
            return MarkerGrip{here->id, move.marker, boundary};
    // None of this row's own: does a marker from below stand there?
    const int line = facts.line(at);
    if (line < 0)
        return std::nullopt;
    const Needle& needle = document.derived().ledger().before[static_cast<std::size_t>(line)];
    for (const MarkerAt& stands : needle.markers) {
        if (stands.column != boundary)
            continue;
        for (int below = at - 1; below >= 0; --below)
            for (const MarkerMove& move : section_->rows[static_cast<std::size_t>(below)]->moves)
                if (move.marker == stands.marker && move.kind != MoveKind::Remove)
                    return MarkerGrip{section_->rows[static_cast<std::size_t>(below)]->id, move.marker,
                                      move.boundary};
    }
    return std::nullopt;
}

namespace {

struct MoveFound {
    int row = -1, index = -1;
};

MoveFound moveOf(const Section& section, const MarkerGrip& grip)
{
    const int at = rowIndex(section, grip.row);
    if (at < 0)
        return {};
    const auto& moves = section.rows[static_cast<std::size_t>(at)]->moves;
    for (std::size_t index = 0; index < moves.size(); ++index)
        if (moves[index].marker == grip.marker && moves[index].boundary == grip.boundary)
            return {at, static_cast<int>(index)};
    return {};
}

} // namespace

void Canvas::Parts::pressMarker(At at, int boundary, Qt::MouseButton button)
{
    const std::optional<MarkerGrip> found = markerAt(at.row, boundary);
    if (button == Qt::RightButton) {
        chosenMarker = found;
        if (!found)
            Q_EMIT canvas.told(Canvas::tr("There is no marker here to take away."));
        else if (row(at.row) && row(at.row)->id == found->row)
            deleteChosenMarker();
        else // it comes from a row below: from here on it is gone
            perform(removeMarker(document.pattern(), section, at.row, boundary, found->marker));
        return;
    }
    if (!found) {
        const Pattern& pattern = document.pattern();
        const bool exists = marker && markerOf(pattern.head, *marker);
        perform(exists ? placeMarker(pattern, section, at.row, boundary, *marker)
                       : placeNewMarker(pattern, section, at.row, boundary));
        chosenMarker = markerAt(at.row, boundary);
        canvas.viewport()->update();
        return;
    }
    chosenMarker = found;
    drag = {};
    drag.kind = DragKind::Marker;
    drag.button = button;
    drag.tool = tool;
    drag.grip = *found;
    drag.boundary = boundary;
    drag.from = drag.now = at;
    repaintAll();
}

void Canvas::Parts::dropMarker(int boundary)
{
    const Section* section_ = shown();
    const MoveFound found = section_ ? moveOf(*section_, drag.grip) : MoveFound{};
    if (found.row < 0 || boundary == drag.grip.boundary)
        return;
    const MarkerGrip moved{drag.grip.row, drag.grip.marker, boundary};
    if (perform(moveMarkerMove(document.pattern(), section, found.row, found.index, boundary)))
        chosenMarker = moved;
}

bool Canvas::Parts::deleteChosenMarker()
{
    const Section* section_ = shown();
    if (!chosenMarker || !section_)
        return false;
    const MoveFound found = moveOf(*section_, *chosenMarker);
    chosenMarker.reset();
    repaintAll();
    return found.row >= 0 && perform(deleteMarkerMove(document.pattern(), section, found.row, found.index));
}

std::optional<BoxId> Canvas::Parts::boxAt(QPointF device, bool edgeAlone) const
{
    const Section* section_ = shown();
    if (!section_)
        return std::nullopt;
    const int reach = static_cast<int>(5 * ratio);
    std::optional<BoxId> best;
    qint64 bestSize = 0;
    for (const shawlwright::Box& box : section_->frame.boxes) {
        const int first = rowIndex(*section_, box.firstRow), last = rowIndex(*section_, box.lastRow);
        if (first < 0 || last < first)
            continue;
        const QRect around = geometry.areaRect(Area{first, last, box.firstColumn, box.lastColumn});
        const QPoint point = device.toPoint();
        const bool hit = around.adjusted(-reach, -reach, reach, reach).contains(point) &&
                         (!edgeAlone || !around.adjusted(reach, reach, -reach, -reach).contains(point));
        const qint64 size = static_cast<qint64>(around.width()) * around.height();
        if (hit && (!best || size < bestSize)) { // of nested ones the inner
            best = box.id;
            bestSize = size;
        }
    }
    return best;
}

void Canvas::Parts::paintAtCursor()
{
    const Row* here = row(cursor.row);
    if (!here || !geometry.inside(cursor))
        return;
    const Side side = here->side;
    const int ahead = side == Side::RS ? cursor.column : cursor.column - 1; // the boundary after this stitch
    const int behind = side == Side::RS ? cursor.column - 1 : cursor.column;
    const Pattern& pattern = document.pattern();
    const At one[] = {cursor};
    int steps = 1;
    switch (tool) {
    case CanvasTool::Marker:
        pressMarker(cursor, behind, Qt::LeftButton);
        drag = {};
        return;
    case CanvasTool::Turn:
        turnAt(cursor.row, ahead);
        return;
    case CanvasTool::Area:
        performPainted(fill(pattern, document.catalogue(), section,
                     selected.empty() ? Areas{areaBetween(cursor, cursor)} : selected, brush, brushYarn));
        return;
    case CanvasTool::Repeat:
    case CanvasTool::RowRepeat:
        if (selected.size() > 1 && !canvas.selection())
            Q_EMIT canvas.told(
                Canvas::tr("A repeat needs one rectangle, %1 are selected; select one of them.")
                    .arg(selected.size()));
        else
            finishRectangle(canvas.selection().value_or(areaBetween(cursor, cursor)), tool);
        return;
    case CanvasTool::Select:
        return;
    case CanvasTool::Stamp: { // on beside it, whichever side the row is of
        if (!stampAt(cursor))
            return;
        const int beside = cursor.column + stamp->columns;
        if (beside <= extent().columns)
            goOnAt(At{cursor.row, beside});
        return;
    }
    case CanvasTool::Erase:
        if (!performPainted(erase(pattern, document.catalogue(), section, one)))
            return;
        break;
    case CanvasTool::Paint:
        steps = brushWidth();
        if (!performPainted(paint(pattern, document.catalogue(), section, one, brush, brushYarn)))
            return;
        break;
    }
    // On in the direction of knitting; at the end of the row it stays.
    const int column = side == Side::RS ? cursor.column + steps : cursor.column - steps;
    if (column >= 1 && column <= geometry.extent.columns)
        goOnAt(At{cursor.row, column});
}

} // namespace shawlwright::app
