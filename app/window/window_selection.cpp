// What is done to the stitches that are selected.
#include "app/document/text.h"
#include "app/panels/times_dialog.h"
#include "app/window/main_window.h"
#include "core/edits/checks.h"
#include "core/edits/selected.h"

namespace shawlwright::app {

void MainWindow::actsOnSelection()
{
    using enum ActionId;
    on(Copy, [this] { copy(); });
    on(Cut, [this] {
        copy();
        m_canvas->eraseSelection();
    });
    on(Paste, [this] { paste(); });
    on(SelectAll, [this] { m_canvas->selectAll(); });
    on(SelectRows, [this] { m_canvas->selectRows(); });
    on(SelectColumns, [this] { m_canvas->selectColumns(); });
    on(SelectCell, [this] { m_canvas->toggleSelected(); });
    on(Mirror, [this] {
        if (const auto area = oneRectangle(tr("Mirroring")))
            turnedAround(mirrored(m_document.pattern(), m_document.catalogue(), m_canvas->section(), *area));
    });
    on(UpsideDown, [this] {
        if (const auto area = oneRectangle(tr("Turning upside down")))
            turnedAround(
                upsideDown(m_document.pattern(), m_document.catalogue(), m_canvas->section(), *area));
    });
    on(NudgeLeft, [this] { m_canvas->nudgeSelected(0, 1); });
    on(NudgeRight, [this] { m_canvas->nudgeSelected(0, -1); });
    const auto nudge = [this](int lines) {
        const auto area = around(m_canvas->selected());
        const int from = !area ? 0 : lines > 0 ? area->lastRow : area->firstRow;
        m_canvas->nudgeSelected(m_canvas->rowBeside(from, lines) - from, 0);
    };
    on(NudgeUp, [nudge] { nudge(1); });
    on(NudgeDown, [nudge] { nudge(-1); });
    on(PutDownTimes, [this] { repeatSeveralTimes(); });
    on(OpenLeft, [this] { shiftPartOfRow(Part::Left, Gap::Open); });
    on(OpenRight, [this] { shiftPartOfRow(Part::Right, Gap::Open); });
    on(CloseLeft, [this] { shiftPartOfRow(Part::Left, Gap::Close); });
    on(CloseRight, [this] { shiftPartOfRow(Part::Right, Gap::Close); });
    on(FillSelection, [this] {
        m_canvas->perform(fill(m_document.pattern(), m_document.catalogue(), m_canvas->section(),
                                      m_canvas->selected(), m_canvas->brush(), m_canvas->brushYarn()));
    });
    on(RepeatSelection, [this] {
        if (const auto area = oneRectangle(tr("A stitch repeat")))
            makeStitchRepeat(withHiddenAbove(*area));
    });
    on(RepeatSelectedRows, [this] {
        if (const auto rows = rowsTogether(tr("A row repeat")))
            makeRowRepeat(rows->first, rows->second);
    });
}

std::optional<Area> MainWindow::oneRectangle(const QString& act)
{
    const Areas& areas = m_canvas->selected();
    if (areas.size() > 1 && !m_canvas->selection())
        tell(tr("%1 needs one rectangle; %2 are selected, %3 cells in all. Select a single one.")
                 .arg(act)
                 .arg(areas.size())
                 .arg(cellsIn(areas)));
    return m_canvas->selection();
}

// Hidden rows belong to the row below them.
Area MainWindow::withHiddenAbove(Area area) const
{
    area.lastRow = m_canvas->withHidden({{area.firstRow, area.lastRow}}).back().last;
    return area;
}

std::vector<IndexRun> MainWindow::rowRunsMeant() const
{
    const int row = m_canvas->cursor().row;
    return m_canvas->selected().empty() ? std::vector<IndexRun>{{row, row}} : rowRuns(m_canvas->selected());
}

std::pair<int, int> MainWindow::rowsMeant() const
{
    const std::vector<IndexRun> runs = rowRunsMeant();
    return {runs.front().first, runs.back().last};
}

std::optional<std::pair<int, int>> MainWindow::rowsTogether(const QString& act)
{
    const std::vector<IndexRun> runs = m_canvas->withHidden(rowRunsMeant());
    const Section* section = shownSection();
    if (runs.size() == 1 || !section)
        return std::pair(runs.front().first, runs.back().last);
    const auto labels = rowLabels(*section);
    QStringList words;
    for (const IndexRun& run : runs) {
        const QString first = toQt(labels[static_cast<std::size_t>(run.first)]);
        const QString last = toQt(labels[static_cast<std::size_t>(run.last)]);
        words << (run.first == run.last ? first : tr("%1 to %2").arg(first, last));
    }
    tell(tr("%1 needs rows that lie together; rows %2 are selected. Select rows without a gap.")
             .arg(act, words.join(QStringLiteral(", "))));
    return std::nullopt;
}

void MainWindow::turnedAround(const Result<Turned>& turned)
{
    if (!turned.ok()) {
        m_document.tell(toQt(toText(turned.fault())));
        return;
    }
    m_document.perform(turned.value().edit);
    const Section* section = shownSection();
    if (const std::vector<At>& unlike = turned.value().unlike; section && !unlike.empty()) {
        const Row& row = *section->rows[static_cast<std::size_t>(unlike.front().row)];
        const Stitch& first = m_document.catalogue().stitch(cellAt(row, unlike.front().column).stitch);
        const QString place =
            tr("%1 in row %2, column %3")
                .arg(toQt(abbreviation(first, row.side)),
                     toQt(rowLabels(*section)[static_cast<std::size_t>(unlike.front().row)]))
                .arg(unlike.front().column);
        tell(unlike.size() == 1 ? tr("One stitch has no mirror image and leans as before: %1.").arg(place)
                                : tr("%1 stitches have no mirror image and lean as before, the first: %2.")
                                      .arg(unlike.size())
                                      .arg(place));
    } else if (const int rows = turned.value().rowsOnOtherSide; rows > 0) {
        tell(rows == 1
                 ? tr("One row with more than knit and purl has come to the other side of the work. Select "
                      "an odd number of rows to keep sides.")
                 : tr("%1 rows with more than knit and purl have come to the other side of the work. Select "
                      "an odd number of rows to keep sides.")
                       .arg(rows));
    }
}

void MainWindow::shiftPartOfRow(Part part, Gap gap)
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    Areas areas;
    if (m_canvas->selected().empty()) { // the stitch at the cursor
        const At at = m_canvas->cursor();
        const Columns stitch = stitchAround(*section->rows[static_cast<std::size_t>(at.row)], at.column);
        Area area{at.row, at.row, stitch.first, stitch.last};
        if (gap == Gap::Open && part == Part::Left)
            area.lastColumn = area.firstColumn;
        if (gap == Gap::Open && part == Part::Right)
            area.firstColumn = area.lastColumn;
        areas = {area};
    } else if (oneRectangle(tr("Shifting a part of a row"))) {
        areas = m_canvas->selected(); // hidden rows in it stay as they are
    } else {
        return;
    }
    const auto first = shiftPart(m_document.pattern(), m_document.catalogue(), section->id, areas.front(), part, gap);
    std::vector<Maker> makers;
    for (const Area& area : areas)
        makers.push_back([this, id = section->id, area, part, gap](const Pattern& pattern) {
            return shiftPart(pattern, m_document.catalogue(), id, area, part, gap);
        });
    m_document.performOrTell(first.ok() ? inTurn(m_document.pattern(), first.value().name, makers) : first);
}

void MainWindow::repeatSeveralTimes()
{
    auto area = oneRectangle(tr("Repeating several times"));
    const Section* section = shownSection();
    if (!area || !section)
        return;
    area = withHiddenAbove(*area);
    const SectionId id = section->id;
    const auto preview = [this, id, area](Along along, int times) {
        const auto made = putDownTimes(m_document.pattern(), m_document.catalogue(), id, *area, along, times);
        return made.ok() ? TimesPreview{true, timesInWords(id, *area, along, times, made.value())}
                         : TimesPreview{false, toQt(toText(made.fault()))};
    };
    const auto fits = [this, id, area](Along along) {
        return timesThatFit(m_document.pattern(), id, *area, along);
    };
    TimesDialog dialog(fits, preview, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto made =
        putDownTimes(m_document.pattern(), m_document.catalogue(), id, *area, dialog.along(), dialog.times());
    if (m_canvas->perform(made.ok() ? Result<Edit>(made.value().edit) : Result<Edit>(made.fault())))
        tell(timesInWords(id, *area, dialog.along(), dialog.times(), made.value()));
}

// What the copies cover: told before, as the rows will be then, and after.
QString MainWindow::timesInWords(SectionId id, const Area& area, Along along, int times,
                                 const Times& made) const
{
    const int rows = made.over.lastRow - made.over.firstRow + 1;
    const int columns = made.over.lastColumn - made.over.firstColumn + 1;
    QString words = times == 1 ? tr("Once more: ") : tr("%1 times more: ").arg(times);
    const QString across = columns == 1
                               ? tr("column %1").arg(made.over.firstColumn)
                               : tr("columns %1 to %2").arg(made.over.firstColumn).arg(made.over.lastColumn);
    if (along == Along::UpNewRows) {
        words += tr("%1 above row %2, %3.")
                     .arg(rows == 1 ? tr("1 new row") : tr("%1 new rows").arg(rows), rowWords(id, area.lastRow), across);
    } else {
        const QString up = rows == 1 ? tr("row %1").arg(rowWords(id, made.over.firstRow))
                                     : tr("rows %1 to %2").arg(rowWords(id, made.over.firstRow), rowWords(id, made.over.lastRow));
        words += tr("%1 by %2, %3, %4.")
                     .arg(rows == 1 ? tr("1 row") : tr("%1 rows").arg(rows),
                          columns == 1 ? tr("1 column") : tr("%1 columns").arg(columns), up, across);
    }
    if (made.otherSide)
        words +=
            QLatin1Char(' ') + tr("That is an odd number of rows: look at the sides of the rows above them.");
    return words;
}

QString MainWindow::rowWords(SectionId id, int row) const
{
    const int at = sectionIndex(m_document.pattern(), id);
    const auto labels = rowLabels(m_document.pattern().sections[static_cast<std::size_t>(at)]);
    return toQt(labels[static_cast<std::size_t>(row)]);
}

} // namespace shawlwright::app
