#include "app/panels/words_panel.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"
#include "app/panels/kept_list.h"
#include "app/panels/look.h"
#include "app/panels/row_words_editor.h"
#include "app/panels/wrapped_runs.h"
#include "core/derived/row_words.h"
#include "core/wording/writer/gather.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHash>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QPainter>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

class WordsModel : public KeptList<WrittenLine> {
public:
    using KeptList<WrittenLine>::KeptList;

    QVariant data(const QModelIndex& index, int role) const override
    {
        if (!index.isValid())
            return {};
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
            return toQt(toText(item(index.row())));
        return {};
    }
    bool marked(int at) const { return at == m_marked; }
    int markedItem() const { return m_marked; }
    void mark(int row) { m_marked = row < 0 ? -1 : lineTelling(items(), row); } // after each setItems()

private:
    int m_marked = -1;
};

namespace {

constexpr int sides = 8; // around the marked row
constexpr int above = 4;

class WordsDelegate : public QStyledItemDelegate {
public:
    WordsDelegate(WordsModel& model, QListView& view)
        : QStyledItemDelegate(&view), m_model(model), m_view(view)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const int width = m_view.viewport()->width();
        const WrittenLine& row = m_model.item(index.row());
        const QString key = toQt(row.label) + QLatin1Char('\n') + toQt(row.text) + toQt(row.count);
        if (width != m_width || m_heights.size() > 30000) {
            m_heights.clear();
            m_width = width;
        }
        auto known = m_heights.find(key);
        if (known == m_heights.end())
            known = m_heights.insert(key, drawn(nullptr, QRect(0, 0, width, 0), option.font, row));
        return {std::max(80, width - 1), *known};
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const Theme theme = themeOf(*option.widget);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF box = QRectF(option.rect).adjusted(8, 0, -8, 0);
        const bool marked = m_model.marked(index.row());
        if (marked || (option.state & QStyle::State_MouseOver)) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(marked ? theme.wash : theme.window);
            painter->drawRoundedRect(box, 5, 5);
        }
        if (option.state & QStyle::State_Selected && m_view.selectionModel()->selectedIndexes().size() > 1) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(theme.accent);
            painter->drawRect(QRectF(box.left(), box.top() + 3, 2, box.height() - 6));
        }
        drawn(painter, option.rect, option.font, m_model.item(index.row()));
        painter->restore();
    }

private:
    int drawn(QPainter* painter, const QRect& rect, const QFont& font, const WrittenLine& row) const
    {
        const Theme theme = themeOf(m_view);
        const QFont bold = heading(font);
        const QString label = row.label.empty() ? QString() : toQt(row.label);
        const double left = rect.left() + 8 + sides;
        const double width = rect.width() - 2 * (8 + sides);
        // Short labels stand in a column of their own, long ones on a line above.
        const double column = QFontMetricsF(bold).horizontalAdvance(QStringLiteral("Row 00 (RS):  "));
        const double labelWidth = QFontMetricsF(bold).horizontalAdvance(label);
        std::vector<Run> words{{toQt(row.text), font, theme.ink}};
        if (!row.count.empty())
            words.push_back({QStringLiteral(" ") + toQt(row.count), font, theme.softInk});
        double y = rect.top() + above;
        if (label.isEmpty()) {
            y += wrappedRuns(painter, QRectF(left, y, width, 0), words);
        } else if (labelWidth <= column && width > 2.2 * column) {
            wrappedRuns(painter, QRectF(left, y, column, 0), {{label, bold, theme.ink}});
            y += wrappedRuns(painter, QRectF(left + column, y, width - column, 0), words);
        } else {
            words.insert(words.begin(), {label + QStringLiteral("  "), bold, theme.ink});
            y += wrappedRuns(painter, QRectF(left, y, width, 0), words);
        }
        return static_cast<int>(std::ceil(y - rect.top())) + above;
    }

    WordsModel& m_model;
    QListView& m_view;
    mutable QHash<QString, int> m_heights;
    mutable int m_width = 0;
};

} // namespace

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
    if (at == 0)
        note = toQt(castOnInWords(pattern, m_document.derived().choice().size));
    if (!frame.note.empty())
        note += (note.isEmpty() ? QString() : QStringLiteral("\n")) + toQt(frame.note);
    m_note->setText(note);
    m_note->setVisible(!note.isEmpty());
    m_model->setItems(m_document.derived().lines(pattern, at));
    m_model->mark(m_row);
    placeEditor();
    m_list->doItemsLayout();
    m_list->viewport()->update();
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
    return QWidget::eventFilter(watched, event);
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
