// The dialogs on pattern, rows and repeats: asked first, then one edit.
#include "app/document/text.h"
#include "app/panels/own_stitch_dialog.h"
#include "app/panels/pattern_dialogs.h"
#include "app/panels/repeat_dialogs.h"
#include "app/panels/row_dialog.h"
#include "app/window/main_window.h"
#include "app/window/row_words.h"
#include "core/derived/repeat_fits.h"
#include "core/edits/marks.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "core/wording/style.h"

#include <algorithm>

namespace shawlwright::app {

bool MainWindow::taken(FormDialog& dialog, const std::function<Result<Edit>()>& edit)
{
    dialog.refusedBy([&edit]() -> std::optional<QString> {
        const Result<Edit> made = edit();
        return made.ok() ? std::nullopt : std::optional(toQt(toText(made.fault())));
    });
    return dialog.exec() == QDialog::Accepted && m_document.performOrTell(edit());
}

void MainWindow::openRowSettings(int row)
{
    m_canvas->endStroke();
    const Section* section = shownSection();
    if (!section || row < 0 || row >= static_cast<int>(section->rows.size()))
        return;
    const SectionId id = section->id;
    const QString place =
        tr("Row %1 of %2")
            .arg(toQt(rowLabels(*section)[static_cast<std::size_t>(row)]), toQt(section->frame.title));
    RowDialog dialog(*section->rows[static_cast<std::size_t>(row)], m_document.pattern().head, place, this);
    taken(dialog, [&] { return setRow(m_document.pattern(), id, row, dialog.row(), "row settings"); });
}

namespace {

// The first marker that a row comes to behind a repeat.
std::optional<MarkerId> nextMarker(const Needle& needle, Side side, const Box& box)
{
    const MarkerAt* next = nullptr;
    const bool rs = side == Side::RS;
    for (const MarkerAt& marker : needle.markers) {
        const bool ahead = rs ? marker.column >= box.lastColumn : marker.column >= 0 && marker.column < box.firstColumn;
        if (ahead && (!next || (rs ? marker.column < next->column : marker.column > next->column)))
            next = &marker;
    }
    return next ? std::optional(next->marker) : std::nullopt;
}

} // namespace

void MainWindow::makeStitchRepeat(const Area& over)
{
    const Section* section = shownSection();
    const int rows = section ? static_cast<int>(section->rows.size()) : 0;
    if (over.firstRow < 0 || over.lastRow >= rows)
        return;
    shawlwright::Box box;
    box.firstRow = section->rows[static_cast<std::size_t>(over.firstRow)]->id;
    box.lastRow = section->rows[static_cast<std::size_t>(over.lastRow)]->id;
    box.firstColumn = over.firstColumn;
    box.lastColumn = over.lastColumn;
    const SectionId id = section->id;
    if (const auto plain = addBox(m_document.pattern(), id, box);
        !plain.ok()) { // told before anything is asked
        m_document.performOrTell(plain);
        return;
    }
    if (const auto fits = timesThatFitEach(m_document.pattern(), m_document.catalogue(), id, box,
                                           m_document.derived().choice()))
        box.times = *fits;
    // What was wanted last is wanted often; the marker is the next one ahead.
    const Ledger& ledger = m_document.derived().ledger();
    const int line = firstLineOf(ledger, shownIndex(), over.firstRow);
    std::optional<MarkerId> ahead;
    if (line >= 0)
        ahead = nextMarker(ledger.before[static_cast<std::size_t>(line)],
                           section->rows[static_cast<std::size_t>(over.firstRow)]->side, box);
    box.marker = ahead.value_or(box.marker);
    if (m_lastRepeat && (m_lastRepeat->until != BoxUntil::Marker || ahead)) {
        box.until = m_lastRepeat->until;
        box.leaving = m_lastRepeat->leaving;
    }
    StitchRepeatDialog dialog(box, rowsInWords(*section, std::pair(over.firstRow, over.lastRow)), m_document.pattern().head,
                              true, this);
    if (taken(dialog, [&] { return addBox(m_document.pattern(), id, dialog.box()); }))
        m_lastRepeat = dialog.box();
}

void MainWindow::makeRowRepeat(int firstRow, int lastRow)
{
    const Section* section = shownSection();
    const int rows = section ? static_cast<int>(section->rows.size()) : 0;
    if (firstRow < 0 || lastRow >= rows)
        return;
    const SectionId id = section->id;
    if (const auto plain = addBracket(m_document.pattern(), id, firstRow, lastRow, Quantity(2));
        !plain.ok()) {
        m_document.performOrTell(plain);
        return;
    }
    RowRepeatDialog dialog(rowsInWords(*section, std::pair(firstRow, lastRow)), Quantity(2), m_document.pattern().head,
                           true, this);
    taken(dialog, [&] { return addBracket(m_document.pattern(), id, firstRow, lastRow, dialog.times()); });
}

void MainWindow::openStitchRepeat(BoxId box)
{
    const Section* section = shownSection();
    if (!section)
        return;
    const auto& boxes = section->frame.boxes;
    const auto found = std::find_if(boxes.begin(), boxes.end(),
                                    [box](const shawlwright::Box& one) { return one.id == box; });
    if (found == boxes.end())
        return;
    const std::pair rows{rowIndex(*section, found->firstRow), rowIndex(*section, found->lastRow)};
    if (rows.first < 0 || rows.second < 0)
        return;
    StitchRepeatDialog dialog(*found, rowsInWords(*section, rows), m_document.pattern().head, false, this);
    taken(dialog, [&] {
        return dialog.removed() ? deleteBox(m_document.pattern(), m_canvas->section(), box)
                                : setBox(m_document.pattern(), m_canvas->section(), dialog.box());
    });
}

void MainWindow::openRowRepeat(int index)
{
    const Section* section = shownSection();
    if (!section || index < 0 || index >= static_cast<int>(section->frame.brackets.size()))
        return;
    Bracket bracket = section->frame.brackets[static_cast<std::size_t>(index)];
    const int first = rowIndex(*section, bracket.firstRow), last = rowIndex(*section, bracket.lastRow);
    if (first < 0 || last < 0)
        return;
    RowRepeatDialog dialog(rowsInWords(*section, std::pair(first, last)), bracket.times, m_document.pattern().head,
                           false, this);
    taken(dialog, [&] {
        bracket.times = dialog.times();
        return dialog.removed() ? deleteBracket(m_document.pattern(), m_canvas->section(), index)
                                : setBracket(m_document.pattern(), m_canvas->section(), index, bracket);
    });
}

void MainWindow::openPatternSettings()
{
    PatternDialog dialog(m_document.pattern().head, this);
    taken(dialog, [&] { return setHead(m_document.pattern(), dialog.head(), "pattern settings"); });
}

void MainWindow::openYarns()
{
    YarnsDialog dialog(m_document.pattern().head, this);
    taken(dialog, [&] { return setHead(m_document.pattern(), dialog.head(), "yarns"); });
}

void MainWindow::openMarkers()
{
    PatternHead head = m_document.pattern().head;
    MarkersDialog dialog(head, this);
    taken(dialog, [&] {
        head.markers = dialog.markers();
        return setHead(m_document.pattern(), head, "rename markers");
    });
}

void MainWindow::openSectionSettings()
{
    const Section* section = shownSection();
    if (!section)
        return;
    const SectionId id = section->id;
    SectionDialog dialog(section->frame, m_document.pattern().head, this);
    taken(dialog, [&] { return setFrame(m_document.pattern(), id, dialog.frame(), "section settings"); });
}

void MainWindow::openOwnStitch(StitchId id)
{
    OwnStitchDialog dialog(m_document.catalogue(), id, this);
    const bool made = taken(dialog, [&] {
        const PatternHead& head = m_document.pattern().head;
        PatternHead changed = withOwnStitch(head, dialog.stitch());
        const bool isNew = changed.stitches.size() > head.stitches.size();
        return setHead(m_document.pattern(), std::move(changed), isNew ? "a stitch of your own" : "change your stitch");
    });
    if (made) {
        refresh();
        setBrush(id);
    }
}

} // namespace shawlwright::app
