#include "app/panels/read_rows_dialog.h"

#include "app/document/text.h"
#include "core/needle/ledger.h"

#include <QFile>
#include <QFileDialog>
#include <QFontDatabase>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTextBlock>

#include <algorithm>

namespace shawlwright::app {

ReadRowsDialog::ReadRowsDialog(const Catalogue& catalogue, const QString& text, QWidget* parent)
    : FormDialog(tr("Read rows in words"), tr("Make the chart"), parent), m_catalogue(catalogue),
      m_field(new QPlainTextEdit(this)), m_summary(softLabel({}, this)),
      m_where(softLabel({}, this)), m_notes(new QListWidget(this))
{
    auto* top = new QHBoxLayout;
    top->addWidget(
        softLabel(
            tr("Type or paste the rows as they would be printed, with their cast-on, each on a line of its own:\nCast on 9 sts.\nRow 1 "
               "(RS): k1, *yo, k2tog; rep from * to end."),
            this),
        1);
    auto* file = new QPushButton(tr("From a text &file..."), this);
    file->setAutoDefault(false);
    connect(file, &QPushButton::clicked, this, &ReadRowsDialog::openFile);
    top->addWidget(file);
    body()->addLayout(top);
    auto* parts = new QSplitter(Qt::Vertical, this);
    parts->setChildrenCollapsible(false);
    m_field->setObjectName(QStringLiteral("rows"));
    m_field->setAccessibleName(tr("Rows in words"));
    m_field->setTabChangesFocus(true);
    parts->addWidget(m_field);
    auto* below = new QWidget(parts);
    auto* column = new QVBoxLayout(below);
    column->setContentsMargins(0, 8, 0, 0);
    auto* line = new QHBoxLayout;
    m_where->setWordWrap(false);
    line->addWidget(m_summary, 1);
    line->addWidget(m_where);
    column->addLayout(line);
    m_notes->setObjectName(QStringLiteral("notes"));
    m_notes->setAccessibleName(tr("What the reader has to say"));
    m_notes->setWordWrap(true);
    m_notes->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(m_notes, 1);
    parts->addWidget(below);
    parts->setStretchFactor(0, 3);
    parts->setStretchFactor(1, 2);
    body()->addWidget(parts, 1);

    m_later.setSingleShot(true);
    m_later.setInterval(250);
    connect(&m_later, &QTimer::timeout, this, &ReadRowsDialog::readNow);
    connect(m_field, &QPlainTextEdit::textChanged, this, [this] {
        forgetWrong();
        m_later.start();
    });
    connect(m_field, &QPlainTextEdit::cursorPositionChanged, this, &ReadRowsDialog::showPlace);
    connect(m_notes, &QListWidget::itemActivated, this,
            [this](QListWidgetItem* item) { goTo(m_notes->row(item)); });
    connect(m_notes, &QListWidget::itemClicked, this,
            [this](QListWidgetItem* item) { goTo(m_notes->row(item)); });
    m_field->setPlainText(text);
    m_field->moveCursor(QTextCursor::End); // what is typed goes on from the text that was kept
    m_field->setFocus();
    showPlace();
    readNow();
    resize(820, 620);
}

void ReadRowsDialog::readNow()
{
    m_later.stop();
    m_read = readText(fromQt(m_field->toPlainText()), m_catalogue);
    const auto rows = [](int count) { return count == 1 ? tr("1 row is") : tr("%1 rows are").arg(count); };
    m_summary->setText(m_read.rowsRead + m_read.rowsNot == 0 ? tr("No row yet.")
                       : m_read.rowsNot == 0                 ? tr("%1 understood.").arg(rows(m_read.rowsRead))
                                             : tr("%1 understood, %2 not and kept as your own words.")
                                                   .arg(rows(m_read.rowsRead), rows(m_read.rowsNot)));
    m_notes->clear();
    m_places.clear();
    for (const ReadingNote& note : m_read.notes)
        tell(note.weight == ReadingNote::Weight::Error     ? tr("Not understood")
             : note.weight == ReadingNote::Weight::Warning ? tr("Look here")
                                                           : tr("Note"),
             note.at, rowAt(note.at), toQt(sentence(note)));
    tellNeedle();
}

// The label of the row that is told on a line; empty: none.
QString ReadRowsDialog::rowAt(Place at) const
{
    QString label;
    for (const Section& section : m_read.pattern.sections) {
        std::vector<std::string> labels;
        for (std::size_t row = 0; row < section.rows.size(); ++row) {
            const auto told = m_read.rowPlaces.find(section.rows[row]->id.value);
            if (told == m_read.rowPlaces.end() || told->second.line != at.line)
                continue;
            if (labels.empty())
                labels = rowLabels(section);
            if (label.isEmpty() || told->second.column <= at.column)
                label = toQt(labels[row]);
        }
    }
    return label;
}

void ReadRowsDialog::tell(const QString& weight, Place at, const QString& row, const QString& words)
{
    m_places.push_back(at);
    const QString place = at.line > 0 ? tr("line %1, column %2").arg(at.line).arg(at.column) : QString();
    const QString head = row.isEmpty()     ? place
                         : place.isEmpty() ? tr("Row %1").arg(row)
                                           : tr("Row %1 (%2)").arg(row, place);
    m_notes->addItem(head.isEmpty() ? tr("%1: %2").arg(weight, words) : tr("%1, %2: %3").arg(weight, head, words));
}

// What is read may still not come out on the needle, or not with the counts that the text states.
void ReadRowsDialog::tellNeedle()
{
    const Pattern& pattern = m_read.pattern;
    const Catalogue catalogue = m_catalogue.with(pattern.head.stitches);
    if (m_read.rowsRead == 0 || !faultsOf(pattern, catalogue).empty())
        return;
    const Ledger ledger = run(pattern, catalogue);
    for (const Finding& finding : ledger.findings) {
        const int section = sectionIndex(pattern, finding.section);
        if (finding.severity == Severity::Note || finding.followsFrom >= 0 || section < 0 || finding.row < 0)
            continue;
        const Section& told = pattern.sections[static_cast<std::size_t>(section)];
        const auto row = static_cast<std::size_t>(finding.row);
        const auto at = m_read.rowPlaces.find(told.rows[row]->id.value);
        tell(tr("On the needle"), at == m_read.rowPlaces.end() ? Place{} : at->second,
             toQt(rowLabels(told)[row]), toQt(finding.message));
    }
}

void ReadRowsDialog::showPlace()
{
    const QTextCursor cursor = m_field->textCursor();
    m_where->setText(tr("Line %1, column %2").arg(cursor.blockNumber() + 1).arg(cursor.positionInBlock() + 1));
}

const Pattern& ReadRowsDialog::pattern()
{
    readNow();
    return m_read.pattern;
}

std::optional<QString> ReadRowsDialog::whatWrong() const
{
    if (readText(fromQt(m_field->toPlainText()), m_catalogue).rowsRead == 0)
        return tr("No row was understood, so there is nothing to chart. Begin rows with a label, such as "
                  "\"Row 1 (RS): knit.\"");
    return {};
}

void ReadRowsDialog::openFile()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("Read rows from a text"), {},
                                                      tr("Texts (*.txt);;All files (*)"));
    if (path.isEmpty())
        return;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        m_summary->setText(tr("%1 can't be read: %2").arg(path, file.errorString()));
        return;
    }
    m_field->setPlainText(QString::fromUtf8(file.read(static_cast<qint64>(mostTextBytes))));
    readNow();
}

void ReadRowsDialog::goTo(int note)
{
    if (note < 0 || note >= static_cast<int>(m_places.size()))
        return;
    const Place at = m_places[static_cast<std::size_t>(note)];
    const QTextBlock block = m_field->document()->findBlockByNumber(at.line - 1);
    if (at.line < 1 || !block.isValid())
        return;
    QTextCursor cursor(m_field->document());
    cursor.setPosition(block.position() + positionOf(block.text(), at.column - 1));
    cursor.movePosition(QTextCursor::EndOfWord, QTextCursor::KeepAnchor);
    m_field->setTextCursor(cursor);
    m_field->setFocus();
}

} // namespace shawlwright::app
