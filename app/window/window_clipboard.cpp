// Copy and paste, here and to other programs.
#include "app/document/text.h"
#include "app/panels/words_panel.h"
#include "app/window/chart_mime_data.h"
#include "app/window/main_window.h"
#include "core/wording/style.h"
#include "core/wording/writer/writer.h"

#include <QApplication>
#include <QClipboard>
#include <QListView>
#include <QMimeData>

#include <algorithm>

namespace shawlwright::app {

namespace {

bool holds(const Areas& areas, int row, int column)
{
    return std::any_of(areas.begin(), areas.end(), [&](const Area& area) {
        return row >= area.firstRow && row <= area.lastRow && column >= area.firstColumn && column <= area.lastColumn;
    });
}

// Does every row that is touched lie in them with all of its stitches?
bool wholeRows(const Section& section, const Areas& areas)
{
    for (const IndexRun& run : rowRuns(areas))
        for (int at = run.first; at <= run.last; ++at) {
            const ColumnSpan used = usedColumns(*section.rows[static_cast<std::size_t>(at)], boxesOn(section, at));
            for (int column = used.first; column > 0 && column <= used.last; ++column)
                if (!holds(areas, at, column))
                    return false;
        }
    return true;
}

} // namespace

// The stitches alone, row by row, without what their rows say of the needle: counts, turns, markers.
QString MainWindow::wordsOfStitches(const Section& section, const Areas& areas)
{
    Pattern part = m_document.pattern();
    Section cut = section;
    cut.frame.boxes.clear();
    cut.frame.brackets.clear();
    cut.rows.clear();
    std::vector<int> from;
    for (const IndexRun& run : rowRuns(areas))
        for (int at = run.first; at <= run.last; ++at) {
            const Row& whole = *section.rows[static_cast<std::size_t>(at)];
            Row row;
            row.id = whole.id;
            row.side = whole.side;
            row.yarn = whole.yarn;
            row.cells = whole.cells;
            for (int column = 1; column <= static_cast<int>(row.cells.size()); ++column)
                if (!holds(areas, at, column))
                    row.cells[static_cast<std::size_t>(column) - 1] = Cell{};
            cut.rows.push_back(std::make_shared<const Row>(std::move(row)));
            from.push_back(at);
        }
    part.sections = {cut};
    Style style = styleOf(part.head);
    style.counts = CountsShown::Never;
    style.longRuns = LongRuns::Counted;
    const std::vector<Ledger> ledgers = runEvery(part, m_document.catalogue());
    const std::vector<std::string> labels = rowLabels(section);
    QStringList lines;
    for (const WrittenRow& written :
         writtenRows(part, m_document.catalogue(), Runs(ledgers.front(), ledgers), 0, style)) {
        if (written.repeat)
            continue;
        const auto at = static_cast<std::size_t>(from[static_cast<std::size_t>(written.firstRow)]);
        lines << tr("Row %1 (%2): %3")
                     .arg(toQt(labels[at]), section.rows[at]->side == Side::RS ? tr("RS") : tr("WS"),
                          toQt(written.text));
    }
    return lines.join(QLatin1Char('\n'));
}

void MainWindow::copy()
{
    if (m_words->list()->hasFocus()) {
        m_words->copy();
        return;
    }
    const Section* section = shownSection();
    if (!section)
        return;
    const At cursor = m_canvas->cursor();
    const Areas areas = m_canvas->selected().empty()
                            ? Areas{Area{cursor.row, cursor.row, cursor.column, cursor.column}}
                            : m_canvas->selected();
    m_clip = clipOf(*section, m_document.catalogue(), areas);
    QStringList words; // other programs get the rows in words, and the chart as a picture
    if (wholeRows(*section, areas))
        for (const IndexRun& run : rowRuns(areas))
            words << wordsOfRows(run.first, run.last);
    else
        words << wordsOfStitches(*section, areas);
    QApplication::clipboard()->setMimeData(
        new ChartMimeData(m_document.pattern(), m_document.catalogue(), section->id, areas,
                          m_document.derived().choice(), words.join(QLatin1Char('\n')), ++m_clipNumber));
    tell(areas.size() == 1
             ? tr("Copied: %1 of %2.")
                   .arg(oneOrMany(m_clip.rows, tr("1 row"), tr("%1 rows")),
                        oneOrMany(m_clip.columns, tr("1 stitch"), tr("%1 stitches")))
             : tr("%1 cells in %2 rectangles are copied.").arg(cellsIn(areas)).arg(areas.size()));
    enableActions();
}

QString MainWindow::wordsOfRows(int first, int last)
{
    QStringList lines;
    const int section = shownIndex();
    if (section >= 0)
        for (const WrittenRow& row : m_document.derived().written(m_document.pattern(), section))
            if (!row.repeat && first <= row.firstRow && row.lastRow <= last)
                lines << toQt(toText(row));
    return lines.join(QLatin1Char('\n'));
}

void MainWindow::paste()
{
    // What was copied last counts, here or in another program.
    const QMimeData* outside = QApplication::clipboard()->mimeData();
    const bool ours =
        outside && outside->data(ChartMimeData::ownFormat()) == QByteArray::number(m_clipNumber);
    if (!ours && outside && outside->hasText() && !outside->text().trimmed().isEmpty()) {
        pasteWords(outside->text());
        return;
    }
    if (m_clip.rows == 0) {
        tell(tr("There is nothing to paste. Copy stitches here, or rows in words anywhere."));
        return;
    }
    At at = m_canvas->cursor();
    if (const auto area = around(m_canvas->selected()))
        at = At{area->firstRow, area->firstColumn};
    m_canvas->perform(
        putDown(m_document.pattern(), m_document.catalogue(), m_canvas->section(), at, m_clip, "paste"));
}

} // namespace shawlwright::app
