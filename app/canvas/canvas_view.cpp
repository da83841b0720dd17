// How the canvas follows its document, and where things lie in the view.
#include "app/canvas/accessible_chart.h"
#include "app/canvas/canvas_parts.h"
#include "app/canvas/zoom.h"
#include "app/document/text.h"
#include "core/base/text.h"
#include "core/derived/typed_stitches.h"
#include "core/pattern/grey_yarns.h"

#include <QFontInfo>
#include <QFontMetrics>
#include <QScopedValueRollback>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

const Section* Canvas::Parts::shown() const
{
    const int at = shownIndex();
    return at < 0 ? nullptr : &pattern().sections[static_cast<std::size_t>(at)];
}

const Row* Canvas::Parts::row(int at) const
{
    const Section* section_ = shown();
    return section_ && at >= 0 && at < static_cast<int>(section_->rows.size())
               ? section_->rows[static_cast<std::size_t>(at)].get()
               : nullptr;
}

Extent Canvas::Parts::extent() const
{
    const Section* section_ = shown();
    return section_ ? Extent{static_cast<int>(section_->rows.size()), section_->frame.columns} : Extent{};
}

QSize Canvas::Parts::viewSize() const
{
    const QSizeF size = QSizeF(canvas.viewport()->size()) * canvas.devicePixelRatioF();
    return QSize(static_cast<int>(size.width()), static_cast<int>(size.height()));
}

QRect Canvas::Parts::toLogical(const QRect& device) const
{
    const double ratio_ = canvas.devicePixelRatioF();
    return QRectF(device.x() / ratio_, device.y() / ratio_, device.width() / ratio_, device.height() / ratio_)
        .toAlignedRect();
}

QFont Canvas::Parts::gutterFont(int ofCell) const
{
    constexpr double least = 10; // logical pixels
    const double wanted = 11.5 / 13 * QFontInfo(canvas.font()).pixelSize();
    const int whole = std::max(1, static_cast<int>(std::lround(wanted * canvas.devicePixelRatioF())));
    const int small = std::min(whole, static_cast<int>(std::lround(std::max(least, 0.65 * wanted) * canvas.devicePixelRatioF())));
    QFont font = canvas.font();
    font.setPixelSize(whole);
    const int high = QFontMetrics(font).height();
    if (high > ofCell)
        font.setPixelSize(std::clamp(whole * ofCell / high, small, whole));
    return font;
}

NumberColumns Canvas::Parts::numberColumns(int ofCell) const
{
    const auto pixels = [this](double logical) {
        return static_cast<int>(std::lround(logical * canvas.devicePixelRatioF()));
    };
    std::size_t longest = 2, digits = 2, after = 5;
    for (int at = 0; at < facts.rows(); ++at) {
        longest = std::max(longest, static_cast<std::size_t>(codePoints(facts.at(at).label)));
        digits = std::max(digits, std::to_string(facts.at(at).before).size());
        after = std::max(after, static_cast<std::size_t>(codePoints(facts.at(at).afterInWords())));
    }
    QFont bold = gutterFont(ofCell);
    bold.setWeight(QFont::DemiBold);
    int words = 0;
    for (const BracketPlace& place : brackets)
        words = std::max(words, QFontMetrics(bold).horizontalAdvance(toQt(place.words)));
    const int figure = QFontMetrics(bold).horizontalAdvance(QLatin1Char('8'));
    NumberColumns made;
    made.textHeight = QFontMetrics(bold).height();
    made.bracket = std::max(pixels(30), words + pixels(12));
    made.number = static_cast<int>(std::min<std::size_t>(longest, 8)) * figure;
    made.numberAt = pixels(16);
    made.findingAt = made.numberAt + made.number + pixels(5);
    made.countEnd =
        made.findingAt + pixels(8) + pixels(4) + static_cast<int>(digits + 1) * figure; // with a ~
    made.changeAt = made.countEnd + pixels(5);
    made.width = made.changeAt + static_cast<int>(after) * figure + pixels(8);
    return made;
}

Gutters Canvas::Parts::gutters(const NumberColumns& columns) const
{
    const auto pixels = [this](double logical) {
        return static_cast<int>(std::lround(logical * canvas.devicePixelRatioF()));
    };
    Gutters made;
    made.left = depths(brackets) * columns.bracket + pixels(8) + columns.number + pixels(16);
    made.right = columns.width;
    made.top = columns.textHeight + pixels(8);
    made.bottom = columns.textHeight + pixels(12);
    return made;
}

QSize Canvas::Parts::roomBesideBars(const Gutters& around, Extent of) const
{
    const QSizeF full = QSizeF(canvas.maximumViewportSize()) * canvas.devicePixelRatioF();
    const double thick = canvas.devicePixelRatioF();
    const double barAcross = canvas.horizontalScrollBar()->sizeHint().height() * thick;
    const double barDown = canvas.verticalScrollBar()->sizeHint().width() * thick;
    const double wide = around.left + around.right + static_cast<double>(of.columns) * cell;
    const double high = around.top + around.bottom + static_cast<double>(shownRows.lines(of.rows)) * cell;
    bool across =
        wide > full.width(); // asked for alone, so that no bar is there only because of the other one
    const bool down = high > full.height() - (across ? barAcross : 0);
    across = across || wide > full.width() - (down ? barDown : 0);
    // Bars come and go a little later than asked; once they are as foreseen, the view's own size is the exact
    // one.
    if (across == canvas.horizontalScrollBar()->isVisible() &&
        down == canvas.verticalScrollBar()->isVisible())
        return viewSize();
    return QSize(static_cast<int>(full.width() - (down ? barDown : 0)),
                 static_cast<int>(full.height() - (across ? barAcross : 0)));
}

bool Canvas::Parts::layOut()
{
    if (layingOut)
        return false;
    const QScopedValueRollback guard(layingOut, true);
    QScrollBar* across = canvas.horizontalScrollBar();
    QScrollBar* down = canvas.verticalScrollBar();
    const CanvasGeometry old = geometry;
    const Extent extent_ = extent();
    const QPoint wanted = atLowerRight ? QPoint(1 << 28, 1 << 28) : QPoint(across->value(), down->value());
    QPoint scroll = wanted;
    const int cellBefore = cell;
    if (fitsSection && drag.kind == DragKind::None) {
        cell = fittingCell(extent_);
        if (cell != cellBefore && !atLowerRight)
            scroll = QPoint(scroll.x() * cell / cellBefore, scroll.y() * cell / cellBefore);
    }
    numbers = numberColumns(cell);
    const Gutters around = gutters(numbers);
    if (cell != cellBefore || !(old.extent == extent_) || !(old.gutters == around)) { // what stood at the lower or right edge stays there
        if (old.scroll.x() == old.farthest.x())
            scroll.setX(1 << 28);
        if (old.scroll.y() == old.farthest.y())
            scroll.setY(1 << 28);
    }
    geometry = laidOut(roomBesideBars(around, extent_), around, extent_, cell, scroll, shownRows);
    const bool sawCursor = old.cell == cell && old.grid != geometry.grid && old.grid.contains(old.cellRect(cursor.row, cursor.column));
    if ((atLowerRight || sawCursor) && geometry.inside(cursor)) // numbers that grow don't push it out of sight
        if (const QPoint shown_ = geometry.scrollToShow(geometry.cellRect(cursor.row, cursor.column)); shown_ != geometry.scroll)
            geometry = laidOut(roomBesideBars(around, extent_), around, extent_, cell, shown_, shownRows);
    across->setRange(0, geometry.farthest.x());
    across->setPageStep(geometry.grid.width());
    across->setSingleStep(cell);
    across->setValue(geometry.scroll.x());
    down->setRange(0, geometry.farthest.y());
    down->setPageStep(geometry.grid.height());
    down->setSingleStep(cell);
    down->setValue(geometry.scroll.y());
    const bool elsewhere = old.grid != geometry.grid || old.scroll != geometry.scroll ||
                           old.cell != geometry.cell || !(old.extent == geometry.extent) ||
                           !(old.shown == geometry.shown) ||
                           !(old.gutters == geometry.gutters);
    if (elsewhere)
        repaintAll();
    if (cell != cellBefore)
        Q_EMIT canvas.zoomChanged(canvas.zoomPercent());
    return elsewhere;
}

void Canvas::Parts::scrollTo(QPoint scroll)
{
    if (scroll == geometry.scroll)
        return;
    canvas.horizontalScrollBar()->setValue(scroll.x());
    canvas.verticalScrollBar()->setValue(scroll.y());
}

void Canvas::Parts::setCell(int wanted, QPointF about)
{
    wanted = std::clamp(wanted, leastCell, greatestCell);
    chosenCell = wanted;
    fitsSection = false;
    if (wanted == cell)
        return;
    const QPointF inGrid = about - QPointF(geometry.grid.topLeft());
    const QPointF cells_ = (inGrid + QPointF(geometry.scroll)) / cell;
    cell = wanted;
    atLowerRight = false;
    layOut();
    scrollTo(scrollAbout(cells_, cell, about - QPointF(geometry.grid.topLeft())));
    repaintAll();
    Q_EMIT canvas.zoomChanged(canvas.zoomPercent());
}

void Canvas::Parts::repaint(const QRect& device)
{
    canvas.viewport()->update(toLogical(device));
}

void Canvas::Parts::repaintRow(int at)
{
    const QRect band = geometry.rowRect(at);
    if (band.intersects(geometry.grid))
        repaint(QRect(0, band.top(), viewSize().width(), band.height()));
}

void Canvas::Parts::repaintAll()
{
    canvas.viewport()->update();
}

void Canvas::Parts::refreshAll()
{
    if (out)
        unfoldAgain();
    refreshShown();
}

void Canvas::Parts::refreshShown()
{
    if (blackAndWhite) {
        greyHead = pattern().head;
        greyHead.yarns = inGrey(std::move(greyHead.yarns));
    }
    lit.reset();
    const Section* section_ = shown();
    traced.line = -1;
    facts.refresh(pattern(), ledger(), findings(), shownIndex());
    facts.forgetResting();
    foldRows(0, foldedExtent().rows);
    refreshOverlay();
    overlayMoved = false;
    brackets = section_ ? bracketPlaces(*section_) : std::vector<BracketPlace>{};
    clampAll();
    layOut();
    traceHovered();
    repaintAll();
}

At Canvas::Parts::inside(At at) const
{
    const Extent room = extent();
    return At{std::clamp(at.row, 0, std::max(0, room.rows - 1)),
              std::clamp(at.column, 1, std::max(1, room.columns))};
}

void Canvas::Parts::clampAll()
{
    const Extent room = extent();
    At clamped = inside(cursor);
    clamped.row = shownRows.nearest(clamped.row);
    anchor = inside(anchor);
    selected = shownRows.seen(clipped(selected, room.rows, room.columns));
    if (flashed && (flashed->lastRow >= room.rows || flashed->lastColumn > room.columns))
        flashed.reset();
    if (clamped != cursor) {
        cursor = clamped;
        tellCursor();
    }
}

void Canvas::Parts::changed(const Change& change, const Reworked& reworked)
{
    if (!performing && drag.kind != DragKind::None)
        drag =
            {}; // somebody else changed the pattern in the middle of a drag: what the drag held may be gone
    if (change.all && index() < 0 && !document.pattern().sections.empty()) {
        canvas.setSection(document.pattern().sections.front().id);
        return;
    }
    const auto mine = std::find_if(change.rows.begin(), change.rows.end(),
                                   [this](const Change::Rows& rows) { return rows.section == section; });
    flashed.reset();
    if (out || change.all || change.head || reworked.headChanged ||
        (mine != change.rows.end() && (mine->spliced || mine->frame))) {
        if (change.all)
            atLowerRight = atLowerRight || geometry.extent.rows == 0;
        refreshAll();
        AccessibleChart::reshaped(canvas);
        return;
    }
    traced.line = -1;
    if (mine != change.rows.end() && hidesPlain) {
        for (int at = mine->first; at <= mine->last; ++at)
            if (!shownRows.hides(at) && (performing || at == cursor.row))
                keepInView(at);
        foldRows(mine->first, mine->last);
        clampAll();
    }
    for (const int at : facts.refresh(pattern(), ledger(), findings(), shownIndex()))
        repaintRow(at);
    if (mine != change.rows.end())
        for (int at = mine->first; at <= mine->last; ++at) {
            facts.forgetResting(at);
            repaintRow(at);
        }
    const Ledger& now = ledger();
    for (int line = reworked.first; line < reworked.last && line < static_cast<int>(now.rows.size());
         ++line) {
        const KnittedRow& knitted = now.rows[static_cast<std::size_t>(line)];
        if (knitted.section != index() || facts.line(knitted.row) != line)
            continue;
        const bool seen = geometry.rowRect(knitted.row).intersects(geometry.grid);
        const std::vector<bool> old = seen ? facts.resting(now, knitted.row) : std::vector<bool>{};
        facts.forgetResting(knitted.row);
        if (seen && facts.resting(now, knitted.row) != old)
            repaintRow(knitted.row);
    }
    refreshOverlay();
    if (std::exchange(overlayMoved, false))
        repaintAll();
    layOut();
    traceHovered();
    AccessibleChart::contentChanged(canvas);
}

ColumnSpan Canvas::Parts::stitchesOf(int at) const
{
    const Section* section_ = shown();
    for (int below = at; section_ && below >= std::max(0, at - 1); --below)
        if (const Row* one = row(below))
            if (const ColumnSpan used = usedColumns(*one, boxesOn(*section_, below)); used.first > 0)
                return used;
    return {};
}

At Canvas::Parts::firstStitch(int at) const
{
    const Row* here = row(at);
    if (!here)
        return At{};
    const ColumnSpan used = stitchesOf(at);
    if (used.first == 0)
        return startOfRow(*shown(), at);
    return At{at, here->side == Side::RS ? used.first : used.last};
}

} // namespace shawlwright::app
