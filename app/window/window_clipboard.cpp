// Copy and paste, here and to other programs.
#include "app/document/text.h"
#include "app/panels/words_panel.h"
#include "app/window/chart_mime_data.h"
#include "app/window/main_window.h"

#include <QApplication>
#include <QClipboard>
#include <QListView>
#include <QMimeData>

namespace shawlwright::app {

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
    for (const IndexRun& run : rowRuns(areas))
        words << wordsOfRows(run.first, run.last);
    QApplication::clipboard()->setMimeData(
        new ChartMimeData(m_document.pattern(), m_document.catalogue(), section->id, areas,
                          m_document.derived().choice(), words.join(QLatin1Char('\n')), ++m_clipNumber));
    tell(areas.size() == 1
             ? tr("%1 rows of %2 stitches are copied.").arg(m_clip.rows).arg(m_clip.columns)
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
