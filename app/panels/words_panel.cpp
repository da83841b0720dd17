#include "app/panels/words_panel.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"
#include "app/panels/look.h"
#include "app/panels/row_words_editor.h"
#include "app/panels/words_list.h"
#include "core/derived/row_words.h"
#include "core/wording/writer/gather.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QMouseEvent>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

WordsPanel::WordsPanel(PatternDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_title(new QLabel(this)), m_note(softLabel({}, this)),
      m_model(new WordsModel(this)), m_list(new QListView(this))
{
    setObjectName(QStringLiteral("panel"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    m_title->setObjectName(QStringLiteral("dialogHeading"));
    m_title->setWordWrap(true);
    m_title->setContentsMargins(16, 0, 16, 0);
    m_note->setContentsMargins(16, 0, 16, 2);
    layout->addWidget(m_title);
    layout->addWidget(m_note);
    layout->addWidget(m_list, 1);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new WordsDelegate(*m_model, *m_list));
    m_list->setResizeMode(QListView::Adjust);
    m_list->setWordWrap(true); // else it is not laid out anew when only its width changes, as by its scroll bar
    m_list->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setMouseTracking(true);
    m_list->setAccessibleName(tr("The section in words"));
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    auto* copying = new QAction(tr("Copy rows"), m_list);
    copying->setShortcut(QKeySequence::Copy);
    copying->setShortcutContext(Qt::WidgetShortcut);
    m_list->addAction(copying);
    connect(copying, &QAction::triggered, this, &WordsPanel::copy);
    m_list->setToolTip(tr("Click: go to the row. Double click: change its words"));
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex& index) {
        if (!m_model->marked(index.row())) // of rows told together the cursor stays in its own
            Q_EMIT rowWanted(m_section, m_model->item(index.row()).firstRow);
    });
    connect(m_list, &QListView::doubleClicked, this,
            [this](const QModelIndex& index) { Q_EMIT wordsWanted(m_section, rowMeant(index.row())); });
    connect(m_list, &QListView::activated, this, [this](const QModelIndex& index) {
        if (QGuiApplication::mouseButtons() == Qt::NoButton)
            Q_EMIT rowWanted(m_section, m_model->item(index.row()).firstRow);
    });
    connect(m_list->verticalScrollBar(), &QScrollBar::valueChanged, this, &WordsPanel::placeEditor);
    m_list->viewport()->installEventFilter(this);
    m_list->installEventFilter(this);
    connect(m_list, &QListView::customContextMenuRequested, this, [this](const QPoint& at) {
        const QModelIndex index = m_list->indexAt(at);
        QMenu menu;
        QAction* rows = menu.addAction(tr("Copy chosen rows"));
        QAction* all = menu.addAction(tr("Copy the whole section"));
        QAction* settings = nullptr;
        QAction* words = nullptr;
        if (index.isValid()) {
            menu.addSeparator();
            words = menu.addAction(tr("Change these words"));
            settings = menu.addAction(tr("Row settings..."));
        }
        QAction* taken = menu.exec(m_list->viewport()->mapToGlobal(at));
        if (taken == rows)
            copy();
        else if (taken == all)
            QGuiApplication::clipboard()->setText(text());
        else if (settings && taken == settings)
            Q_EMIT settingsWanted(m_section, rowMeant(index.row()));
        else if (words && taken == words)
            Q_EMIT wordsWanted(m_section, rowMeant(index.row()));
    });
}

void WordsPanel::setSection(SectionId section)
{
    if (section != m_section) {
        endEditing();
        m_section = section;
        m_row = -1;
        m_model->setItems({}); // nothing of the other section is kept
        m_model->mark(-1);
        m_model->light({});
        m_litRow = -1;
        m_list->scrollToTop();
    }
    refresh();
}

void WordsPanel::setRow(int row)
{
    m_row = row;
    const int was = m_model->markedItem();
    m_model->mark(row);
    const int now = m_model->markedItem();
    if (now != was && now >= 0)
        m_list->scrollTo(m_model->index(now), QAbstractItemView::EnsureVisible);
    if (now >= 0 && !m_list->hasFocus()) // where the arrows will go on from
        m_list->selectionModel()->setCurrentIndex(m_model->index(now), QItemSelectionModel::NoUpdate);
    m_list->viewport()->update();
}

void WordsPanel::refresh()
{
    const Pattern& pattern = m_document.pattern();
    const int at = sectionIndex(pattern, m_section);
    if (at < 0)
        return;
    const SectionFrame& frame = pattern.sections[static_cast<std::size_t>(at)].frame;
    m_title->setText(toQt(frame.title));
    QString note;
    if (at == 0) {
        note = toQt(castOnInWords(pattern));
        if (const std::string markers = markersInWords(pattern, styleOf(pattern.head)); !markers.empty())
            note += QLatin1Char(' ') + toQt(markers);
    }
    if (const std::string sizes = sizesInWords(pattern); !sizes.empty())
        note += (note.isEmpty() ? QString() : QStringLiteral("\n")) + tr("Sizes: %1").arg(toQt(sizes));
    if (!frame.note.empty())
        note += (note.isEmpty() ? QString() : QStringLiteral("\n")) + toQt(frame.note);
    m_note->setText(note);
    m_note->setVisible(!note.isEmpty());
    m_model->setItems(m_document.derived().lines(pattern, at));
    m_model->mark(m_row);
    lightCell(m_litRow, m_litColumn);
    placeEditor();
    m_list->doItemsLayout();
    keepRowWhole();
    m_list->viewport()->update();
}

// The row in hand may have grown at the edge of the view.
void WordsPanel::keepRowWhole()
{
    const int item = m_model->markedItem();
    if (item >= 0 && m_list->viewport()->rect().intersects(m_list->visualRect(m_model->index(item))))
        m_list->scrollTo(m_model->index(item), QAbstractItemView::EnsureVisible);
}

// What the phrases of a row tell, where the line is of that row's words.
std::vector<PhraseSpan> WordsPanel::spansOf(int item, int row) const
{
    const Pattern& pattern = m_document.pattern();
    const int at = sectionIndex(pattern, m_section);
    if (at < 0 || item < 0 || item >= m_model->rowCount())
        return {};
    const Section& section = pattern.sections[static_cast<std::size_t>(at)];
    if (row < 0 || row >= static_cast<int>(section.rows.size()))
        return {};
    for (const WrittenRow& written : m_document.derived().written(pattern, at))
        if (!written.repeat && written.firstRow == row) {
            const TextContext context{pattern.head, m_document.catalogue(),
                                      section.rows[static_cast<std::size_t>(row)]->side, styleOf(pattern.head)};
            const bool same = m_model->item(item).text == written.text && inWords(written.phrases, context) == written.text;
            return same ? phraseSpans(written.phrases, context) : std::vector<PhraseSpan>{};
        }
    return {};
}

void WordsPanel::lightCell(int row, int column)
{
    m_litRow = row;
    m_litColumn = column;
    const int item = row < 0 ? -1 : lineTelling(m_model->items(), row);
    WordsModel::Lit lit;
    if (item >= 0 && column > 0 && m_model->item(item).kind == WrittenLine::Kind::Rows)
        for (const PhraseSpan& span : spansOf(item, row)) // the last that holds it is the innermost
            if (span.firstColumn <= column && column <= span.lastColumn) {
                const std::string& text = m_model->item(item).text;
                lit = {item, static_cast<int>(toQt(text.substr(0, span.begin)).size()),
                       static_cast<int>(toQt(text.substr(0, span.end)).size())};
            }
    if (lit == m_model->lit())
        return;
    m_model->light(lit);
    m_list->viewport()->update();
}

QString WordsPanel::litWords() const
{
    const WordsModel::Lit lit = m_model->lit();
    return lit.first < 0 ? QString() : toQt(m_model->item(lit.item).text).mid(lit.first, lit.last - lit.first);
}

void WordsPanel::pointAt(QPoint point)
{
    const QModelIndex index = m_list->indexAt(point);
    const PhraseSpan* over = nullptr;
    std::vector<PhraseSpan> spans;
    int row = -1;
    if (index.isValid()) {
        row = rowMeant(index.row());
        const auto* delegate = static_cast<const WordsDelegate*>(m_list->itemDelegate());
        const WrittenLine& line = m_model->item(index.row());
        const int letter = delegate->letterOf(m_list->visualRect(index), m_list->font(), line, point);
        spans = letter < 0 ? spans : spansOf(index.row(), row);
        const auto at = toQt(line.text).left(std::max(0, letter)).toUtf8().size();
        for (const PhraseSpan& span : spans)
            if (static_cast<qsizetype>(span.begin) <= at && at < static_cast<qsizetype>(span.end))
                over = &span;
    }
    if (!over && !m_pointed)
        return;
    m_pointed = over != nullptr;
    Q_EMIT phrasePointed(m_section, row, over ? over->firstColumn : 0, over ? over->lastColumn : 0);
}

int WordsPanel::rowMeant(int item) const
{
    return m_model->marked(item) ? m_row : m_model->item(item).firstRow;
}

void WordsPanel::edit(int row)
{
    endEditing();
    const Pattern& pattern = m_document.pattern();
    const int at = sectionIndex(pattern, m_section);
    const int item = lineTelling(m_model->items(), row);
    if (at < 0 || item < 0)
        return;
    const Section& section = pattern.sections[static_cast<std::size_t>(at)];
    const Row& edited = *section.rows[static_cast<std::size_t>(row)];
    QString words = toQt(edited.words);
    if (edited.words.empty())
        for (const WrittenRow& written : m_document.derived().written(pattern, at))
            if (!written.repeat && written.firstRow == row)
                words = toQt(wordsToEdit(edited, written.text));
    m_edited = edited.id;
    m_list->scrollTo(m_model->index(item));
    m_editor = new RowWordsEditor(tr("Row %1").arg(toQt(rowLabels(section)[static_cast<std::size_t>(row)])),
                                  words, m_list->viewport());
    connect(m_editor, &RowWordsEditor::left, this, &WordsPanel::leaveEditing);
    connect(m_editor, &RowWordsEditor::sizeWanted, this, &WordsPanel::placeEditor);
    connect(m_editor, &RowWordsEditor::taken, this, [this] {
        if (m_editor->unchanged())
            leaveEditing();
        else
            Q_EMIT wordsTyped(m_section, m_edited, m_editor->words());
    });
    placeEditor();
    m_editor->show();
    m_editor->field().setFocus();
}

void WordsPanel::leaveEditing()
{
    endEditing();
    Q_EMIT editingLeft();
}

void WordsPanel::endEditing()
{
    if (!m_editor)
        return;
    m_editor->hide();
    m_editor->deleteLater();
    m_editor = nullptr;
}

void WordsPanel::placeEditor()
{
    if (!m_editor)
        return;
    const int at = sectionIndex(m_document.pattern(), m_section);
    const int row =
        at < 0 ? -1 : rowIndex(m_document.pattern().sections[static_cast<std::size_t>(at)], m_edited);
    const int item = row < 0 ? -1 : lineTelling(m_model->items(), row);
    if (item < 0) { // the row is gone
        endEditing();
        return;
    }
    const QRect line = m_list->visualRect(m_model->index(item));
    const QSize room = m_list->viewport()->size();
    const int height = std::min(std::max(m_editor->heightFor(room.width()), line.height()), room.height());
    m_editor->setGeometry(0, std::clamp(line.top(), 0, std::max(0, room.height() - height)), room.width(),
                          height);
}

bool WordsPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize)
        placeEditor();
    if (watched == m_list && event->type() == QEvent::KeyPress)
        return keyPressed(*static_cast<QKeyEvent*>(event)) || QWidget::eventFilter(watched, event);
    if (watched == m_list->viewport() && event->type() == QEvent::MouseMove)
        pointAt(static_cast<QMouseEvent*>(event)->position().toPoint());
    if (watched == m_list->viewport() && event->type() == QEvent::Leave && std::exchange(m_pointed, false))
        Q_EMIT phrasePointed(m_section, -1, 0, 0);
    return QWidget::eventFilter(watched, event);
}

// The arrows go from row to row, in the chart too.
bool WordsPanel::keyPressed(QKeyEvent& event)
{
    switch (event.key()) {
    case Qt::Key_Escape:
        Q_EMIT editingLeft();
        return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_End:
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (const QModelIndex now = m_list->currentIndex(); now.isValid() && !m_model->marked(now.row()))
                    Q_EMIT rowWanted(m_section, m_model->item(now.row()).firstRow);
            },
            Qt::QueuedConnection); // once the list has moved
        return false;
    default:
        return event.modifiers() == Qt::NoModifier && !event.text().isEmpty() && event.text().front().isPrint();
    }
}

QString WordsPanel::text() const
{
    QStringList lines;
    for (const WrittenLine& row : m_model->items())
        lines << toQt(toText(row));
    return lines.join(QLatin1Char('\n'));
}

QString WordsPanel::selectedText() const
{
    QModelIndexList chosen = m_list->selectionModel()->selectedIndexes();
    if (chosen.isEmpty())
        return text();
    std::sort(chosen.begin(), chosen.end());
    QStringList lines;
    for (const QModelIndex& index : chosen)
        lines << index.data().toString();
    return lines.join(QLatin1Char('\n'));
}

void WordsPanel::copy() const
{
    QGuiApplication::clipboard()->setText(selectedText());
}

int WordsPanel::markedItem() const
{
    return m_model->markedItem();
}

} // namespace shawlwright::app
