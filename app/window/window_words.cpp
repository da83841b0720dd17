// Words and chart: typing over a row, reading rows into a chart, and how words are written.
#include "app/document/text.h"
#include "app/panels/read_rows_dialog.h"
#include "app/panels/row_words_editor.h"
#include "app/panels/word_style_dialog.h"
#include "app/panels/words_panel.h"
#include "app/window/main_window.h"
#include "core/derived/row_words.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/gather.h"

#include <QDockWidget>
#include <QFile>
#include <QFileInfo>
#include <QPlainTextEdit>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int exampleLines = 14;

// The readings that were taken where words have two, for the status bar.
QString readingsTaken(const std::vector<ReadingNote>& notes)
{
    QStringList taken;
    for (const ReadingNote& note : notes)
        if (note.weight != ReadingNote::Weight::Error)
            taken << toQt(sentence(note));
    return taken.join(QStringLiteral("; "));
}

} // namespace

void MainWindow::editWords(int row)
{
    m_canvas->endStroke();
    const Section* section = shownSection();
    if (!section || row < 0 || row >= static_cast<int>(section->rows.size()))
        return;
    refresh();
    m_docks.at(QStringLiteral("words"))->show();
    m_docks.at(QStringLiteral("words"))->raise();
    m_canvas->setCursor(At{row, std::max(1, m_canvas->cursor().column)});
    m_words->edit(row);
}

void MainWindow::takeWords(SectionId id, RowId rowId, const QString& words)
{
    const Pattern& pattern = m_document.pattern();
    const int at = sectionIndex(pattern, id);
    const int row = at < 0 ? -1 : rowIndex(pattern.sections[static_cast<std::size_t>(at)], rowId);
    if (row < 0) {
        m_words->endEditing();
        return;
    }
    Row was = *pattern.sections[static_cast<std::size_t>(at)].rows[static_cast<std::size_t>(row)];
    if (!was.words.empty()) { // the designer's own stay their own
        was.words = fromQt(words.trimmed());
        m_words->endEditing();
        m_document.performOrTell(setRow(pattern, id, row, std::move(was), "own words of a row"));
        m_canvas->setFocus();
        return;
    }
    const RowsFromWords read = rowsFromWords(pattern, m_document.catalogue(), m_document.derived().ledgers(),
                                             m_document.derived().shownLedger(), id, row, fromQt(words));
    if (!read.edit.ok()) {
        const Fault& fault = read.edit.fault();
        m_words->editor()->sayWrong(toQt(fault.message), fault.at.line, fault.at.column);
        return;
    }
    m_words->endEditing();
    m_document.perform(read.edit.value());
    if (const QString taken = readingsTaken(read.notes); !taken.isEmpty())
        tell(taken);
    m_canvas->setFocus();
}

void MainWindow::pasteWords(const QString& text)
{
    m_canvas->endStroke();
    const Section* section = shownSection();
    if (!section)
        return;
    const RowsFromWords read =
        rowsFromWords(m_document.pattern(), m_document.catalogue(), m_document.derived().ledgers(),
                      m_document.derived().shownLedger(), section->id, m_canvas->cursor().row, fromQt(text),
                      BadRows::LeaveOut);
    if (m_document.performOrTell(read.edit)) {
        const QString taken = readingsTaken(read.notes);
        const int left = static_cast<int>(read.leftOut.size()), rows = read.rows - left;
        QString words = rows == 1 ? tr("1 row of words is put in.") : tr("%1 rows of words are put in.").arg(rows);
        if (left > 0) {
            const QString why = toQt(toText(read.leftOut.front()));
            words += QLatin1Char(' ') +
                     (left == 1 ? tr("1 row was left out: %1.").arg(why)
                                : tr("%1 rows were left out, the first: %2.").arg(left).arg(why));
        }
        tell(words + (taken.isEmpty() ? QString() : QLatin1Char(' ') + taken));
    }
}

void MainWindow::readRows(const QString& text)
{
    m_canvas->endStroke();
    ReadRowsDialog dialog(m_document.catalogue(), text.isEmpty() ? m_rowsTyped : text, this);
    const bool taken = dialog.exec() == QDialog::Accepted && maySetAside();
    m_rowsTyped = taken ? QString() : dialog.field().toPlainText(); // there again the next time
    if (!taken)
        return;
    Pattern read = dialog.pattern();
    for (std::size_t i = 0; i < read.sections.size(); ++i)
        if (read.sections[i].frame.title.empty()) // a list of sections needs something to click on
            read.sections[i].frame.title = fromQt(tr("Section %1").arg(i + 1));
    m_document.startNew(std::move(read));
    m_document.undoStack().resetClean(); // typed work, so it is asked about before it is lost
    if (!m_document.pattern().sections.empty())
        showSection(m_document.pattern().sections.front().id);
    refresh();
    m_canvas->zoomToFit();
    showCursor();
    m_canvas->setFocus();
}

bool MainWindow::readRowsOf(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        m_ask.failed(tr("%1 can't be opened.").arg(QFileInfo(path).fileName()), file.errorString());
        return false;
    }
    if (file.size() > static_cast<qint64>(mostTextBytes)) {
        m_ask.failed(
            tr("%1 can't be opened.").arg(QFileInfo(path).fileName()),
            tr("It holds %1 bytes, a text may have %2. Part it.").arg(file.size()).arg(mostTextBytes));
        return false;
    }
    readRows(QString::fromUtf8(file.readAll()));
    return true;
}

void MainWindow::openWordStyle()
{
    m_canvas->endStroke();
    const Pattern& pattern = m_document.pattern();
    const int shown = std::max(0, shownIndex());
    const auto example = [&](const Style& style) {
        const auto rows =
            writtenRows(pattern, m_document.catalogue(), m_document.derived().toldRuns(), shown, style);
        QStringList lines;
        for (const WrittenLine& line : gathered(pattern, m_document.derived().toldRuns(), shown, style, rows)) {
            lines << toQt(toText(line));
            if (lines.size() == exampleLines)
                break;
        }
        return lines.join(QLatin1Char('\n'));
    };
    WordStyleDialog dialog(styleOf(pattern.head), pattern.head.versions.size() > 1, example, this);
    if (dialog.exec() != QDialog::Accepted || dialog.style() == styleOf(pattern.head))
        return;
    PatternHead head = pattern.head;
    for (const auto& [key, value] : toWords(dialog.style()))
        head.style[key] = value;
    m_document.performOrTell(setHead(pattern, std::move(head), "how words are written"));
}

} // namespace shawlwright::app
