// Plain WS rows that are folded away: what is hidden, what comes back into view, and what may not be changed unseen.
#include "app/canvas/canvas_parts.h"
#include "app/document/text.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace shawlwright::app {

bool Canvas::plainRowsHidden() const
{
    return m->hidesPlain;
}

void Canvas::setPlainRowsHidden(bool hidden)
{
    if (hidden == m->hidesPlain)
        return;
    endStroke();
    m->closeEntry();
    m->hidesPlain = hidden;
    m->keptInView.clear();
    m->flashed.reset();
    m->hover = {};
    const QPoint stood = m->geometry.cellRect(m->cursor.row, m->cursor.column).topLeft();
    const bool atLowerRight = m->atLowerRight;
    m->refreshShown();
    if (!atLowerRight) // the stitch at the cursor stays where it is in the view
        m->scrollTo(m->geometry.scroll + m->geometry.cellRect(m->cursor.row, m->cursor.column).topLeft() - stood);
    m->showCell(m->cursor);
    Q_EMIT plainRowsHiddenChanged(hidden);
}

bool Canvas::hidesRow(int row) const
{
    return m->shownRows.hides(row);
}

std::vector<IndexRun> Canvas::withHidden(std::vector<IndexRun> runs) const
{
    return m->shownRows.together(std::move(runs));
}

int Canvas::rowBeside(int row, int lines) const
{
    return m->shownRows.stepped(row, lines);
}

bool Canvas::perform(const Result<Edit>& edit)
{
    endStroke();
    return m->performPainted(edit);
}

// "purl", or each way with its number of rows.
QString Canvas::hiddenRowsInWords() const
{
    std::map<PlainWs, int> rows;
    for (std::size_t at = 0; at < m->plain.size(); ++at)
        if (m->shownRows.hides(static_cast<int>(at)))
            ++rows[m->plain[at]];
    QStringList words;
    for (const auto& [way, count] : rows) {
        const QString how = toQt(plainWsWords(way));
        words << (count == 1 ? tr("1 WS row (%1)").arg(how) : tr("%1 WS rows (%2)").arg(count).arg(how));
    }
    return words.join(QStringLiteral(", "));
}

// `first` and `last`: the rows that changed; the row above one is judged by it.
void Canvas::Parts::foldRows(int first, int last)
{
    const Section* section_ = shown();
    if (!hidesPlain || out || !section_) {
        plain.clear();
        shownRows = {};
        return;
    }
    const int rows = static_cast<int>(section_->rows.size());
    if (static_cast<int>(plain.size()) != rows) {
        plain.assign(section_->rows.size(), PlainWs{});
        first = 0;
        last = rows - 1;
    }
    for (int at = std::max(0, first); at <= std::min(last + 1, rows - 1); ++at)
        plain[static_cast<std::size_t>(at)] = plainWs(*section_, document.catalogue(), at);
    std::vector<PlainWs> folded = plain;
    exceptWholeRepeats(folded, *section_);
    std::vector<bool> hidden(folded.size());
    for (std::size_t at = 0; at < folded.size(); ++at)
        hidden[at] = folded[at].plain() && keptInView.count(section_->rows[at]->id) == 0;
    if (ShownRows now(hidden); !(now == shownRows))
        shownRows = std::move(now);
}

void Canvas::Parts::keepInView(int at)
{
    if (const Row* here = row(at); here && hidesPlain)
        keptInView.insert(here->id);
}

void Canvas::Parts::bringIntoView(int at)
{
    if (!shownRows.hides(at))
        return;
    keepInView(at);
    foldRows(at, at);
    refreshOverlay();
    layOut();
    repaintAll();
}

// Stitches are put down and taken away only where they are seen.
std::optional<Fault> Canvas::Parts::hiddenFault(const Edit& edit) const
{
    if (!shownRows.hidesAny())
        return std::nullopt;
    for (const EditStep& step : edit.steps)
        if (const auto* swap = std::get_if<SwapRows>(&step); swap && swap->section == section)
            for (const auto& [at, row_] : swap->rows) {
                const Row* old = row(at);
                if (!shownRows.hides(at) || !old || sameStitches(*old, *row_))
                    continue;
                return Fault{{},
                             placeInWords(document.pattern(), index(), at),
                             "is hidden and would be changed too; show the plain WS rows first (View menu), or choose "
                             "a place that leaves it out"};
            }
    return std::nullopt;
}

bool Canvas::Parts::sameStitches(const Row& a, const Row& b)
{
    const int columns = static_cast<int>(std::max(a.cells.size(), b.cells.size()));
    for (int column = 1; column <= columns; ++column)
        if (cellAt(a, column) != cellAt(b, column))
            return false;
    return a.moves == b.moves;
}

void Canvas::Parts::refreshOverlay()
{
    const Section* section_ = shown();
    if (!section_ || !shownRows.hidesAny()) {
        overlayMoved = overlay.refresh(section_, pattern().head, document.catalogue()) || overlayMoved;
        return;
    }
    std::vector<bool> gone(section_->rows.size());
    for (std::size_t at = 0; at < gone.size(); ++at)
        gone[at] = shownRows.hides(static_cast<int>(at));
    const FewerRows fewer = withoutRows(*section_, gone);
    overlayMoved = overlay.refresh(&fewer.section, pattern().head, document.catalogue()) || overlayMoved;
}

// Two short strokes where the number of a hidden row would stand, at the left.
void Canvas::Parts::paintHiddenMark(QPainter& painter, int at)
{
    if (!shownRows.hides(at + 1) && !(at == shownRows.rowAt(0) && at > 0))
        return;
    const auto pixels = [this](double logical) { return static_cast<int>(std::lround(logical * ratio)); };
    const QRect band = geometry.rowRect(at);
    const int thick = std::max(1, pixels(1.5)), apart = std::max(1, pixels(1));
    const auto draw = [&](int y) {
        for (const int side : {-apart - thick, apart})
            painter.fillRect(QRect(geometry.grid.left() - pixels(14), y + side, pixels(12), thick), theme.ink);
    };
    if (shownRows.hides(at + 1))
        draw(band.top());
    if (at == shownRows.rowAt(0) && at > 0)
        draw(band.bottom() + 1);
}

} // namespace shawlwright::app
