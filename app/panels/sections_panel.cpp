#include "app/panels/sections_panel.h"

#include "app/document/text.h"
#include "app/panels/kept_list.h"
#include "app/panels/look.h"
#include "core/edits/sections.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMimeData>
#include <QPainter>
#include <QSignalBlocker>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

struct SectionLine {
    SectionId id;
    QString title;
    QString counts;
    bool inVersion = true;
    bool operator==(const SectionLine&) const = default;
};

const QString sectionMime = QStringLiteral("application/x-shawlwright-section");

} // namespace

class SectionsModel : public KeptList<SectionLine> {
public:
    explicit SectionsModel(PatternDocument& document, QObject* parent)
        : KeptList<SectionLine>(parent), m_document(document)
    {
    }

    QVariant data(const QModelIndex& index, int role) const override
    {
        if (!index.isValid())
            return {};
        const SectionLine& line = item(index.row());
        switch (role) {
        case Qt::EditRole:
            return line.title;
        case Qt::DisplayRole:
            return titleShown(index.row());
        case Qt::UserRole:
            return line.counts;
        case Qt::AccessibleTextRole:
            return QCoreApplication::translate("SectionsPanel", "%1, stitches %2")
                .arg(titleShown(index.row()), line.counts);
        case Qt::ToolTipRole:
            return line.inVersion ? line.title
                                  : QCoreApplication::translate("SectionsPanel",
                                                                "%1 does not belong to the version shown")
                                        .arg(line.title);
        default:
            return {};
        }
    }
    // A section without a title still needs something to be known by.
    QString titleShown(int row) const
    {
        const QString& title = item(row).title;
        return title.isEmpty() ? QCoreApplication::translate("SectionsPanel", "Section %1").arg(row + 1) : title;
    }
    Qt::ItemFlags flags(const QModelIndex& index) const override
    {
        if (!index.isValid())
            return Qt::ItemIsDropEnabled;
        return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable | Qt::ItemIsDragEnabled;
    }
    bool setData(const QModelIndex& index, const QVariant& value, int role) override
    {
        if (!index.isValid() || role != Qt::EditRole || value.toString().trimmed() == item(index.row()).title)
            return false;
        return m_document.performOrTell(
            renameSection(m_document.pattern(), item(index.row()).id, fromQt(value.toString().trimmed())));
    }

    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }
    QStringList mimeTypes() const override { return {sectionMime}; }
    QMimeData* mimeData(const QModelIndexList& indexes) const override
    {
        if (indexes.isEmpty())
            return nullptr;
        auto* data = new QMimeData;
        data->setData(sectionMime, QByteArray::number(item(indexes.first().row()).id.value));
        return data;
    }
    bool dropMimeData(const QMimeData* data, Qt::DropAction, int row, int, const QModelIndex& parent) override
    {
        const SectionId id{data->data(sectionMime).toUInt()};
        const int from = sectionIndex(m_document.pattern(), id);
        int to = row >= 0 ? row : parent.isValid() ? parent.row() : rowCount();
        if (from < 0)
            return false;
        if (to > from)
            --to; // the place once it has been taken out
        // The list follows the document; were it to move the row itself, it would move twice.
        if (to != from)
            m_document.performOrTell(moveSection(m_document.pattern(), id, to));
        return false;
    }

private:
    PatternDocument& m_document;
};

namespace {

class SectionDelegate : public QStyledItemDelegate {
public:
    explicit SectionDelegate(SectionsModel& model, QObject* parent)
        : QStyledItemDelegate(parent), m_model(model)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override
    {
        return {120, QFontMetrics(option.font).height() + 12};
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const SectionLine& line = m_model.item(index.row());
        const Theme theme = themeOf(*option.widget);
        const QRect box = option.rect.adjusted(6, 1, -6, -1);
        const bool chosen = option.state & QStyle::State_Selected;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        if (chosen || (option.state & QStyle::State_MouseOver)) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(chosen ? theme.wash : theme.window);
            painter->drawRoundedRect(box, 5, 5);
        }
        if (chosen && (option.state & QStyle::State_HasFocus)) {
            painter->setPen(QPen(theme.accent, 1));
            painter->setBrush(Qt::NoBrush);
            painter->drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
        }
        const QRect inner = box.adjusted(10, 0, -8, 0);
        const QFont small = smaller(option.font);
        const int counts = QFontMetrics(small).horizontalAdvance(line.counts);
        painter->setFont(small);
        painter->setPen(theme.softInk);
        painter->drawText(inner, Qt::AlignRight | Qt::AlignVCenter, line.counts);
        QFont font = chosen ? heading(option.font) : option.font;
        font.setItalic(line.title.isEmpty());
        painter->setFont(font);
        painter->setPen(line.inVersion ? theme.ink : theme.softInk);
        const QRect titleRect = inner.adjusted(0, 0, -counts - 8, 0);
        painter->drawText(titleRect, Qt::AlignLeft | Qt::AlignVCenter,
                          painter->fontMetrics().elidedText(m_model.titleShown(index.row()), Qt::ElideRight, titleRect.width()));
        painter->restore();
    }
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override
    {
        QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
        if (auto* line = qobject_cast<QLineEdit*>(editor))
            line->setMaxLength(200);
        return editor;
    }
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex&) const override
    {
        editor->setGeometry(option.rect.adjusted(6, 0, -6, 0));
    }

private:
    SectionsModel& m_model;
};

} // namespace

SectionsPanel::SectionsPanel(PatternDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_model(new SectionsModel(document, this)),
      m_list(new QListView(this))
{
    setObjectName(QStringLiteral("panel"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 4);
    layout->addWidget(m_list);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new SectionDelegate(*m_model, m_list));
    m_list->setMouseTracking(true);
    m_list->setUniformItemSizes(true);
    m_list->setDragDropMode(QAbstractItemView::InternalMove);
    m_list->setDropIndicatorShown(true);
    m_list->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setAccessibleName(tr("Sections in knitting order"));
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_list, &QListView::customContextMenuRequested, this, [this](const QPoint& at) {
        if (m_menu)
            m_menu->popup(m_list->viewport()->mapToGlobal(at));
    });
    connect(m_list, &QListView::clicked, this, &SectionsPanel::sectionClicked);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& index) {
                if (index.isValid())
                    Q_EMIT sectionChosen(m_model->item(index.row()).id);
            });
    refresh();
}

void SectionsPanel::setMenu(QMenu* menu)
{
    m_menu = menu;
}

void SectionsPanel::refresh()
{
    const Pattern& pattern = m_document.pattern();
    const Ledger& ledger = m_document.derived().ledger();
    struct Ends {
        int before = -1, after = -1;
    };
    std::vector<Ends> ends(pattern.sections.size());
    for (std::size_t line = 0; line < ledger.rows.size(); ++line) {
        Ends& of = ends[static_cast<std::size_t>(ledger.rows[line].section)];
        if (of.before < 0)
            of.before = ledger.lines[line].before;
        of.after = ledger.lines[line].after;
    }
    std::vector<SectionLine> lines;
    for (std::size_t i = 0; i < pattern.sections.size(); ++i) {
        const Section& section = pattern.sections[i];
        QString counts;
        if (ends[i].before >= 0)
            counts = ends[i].before == ends[i].after
                         ? QString::number(ends[i].after)
                         : tr("%1 \u2013 %2").arg(ends[i].before).arg(ends[i].after);
        lines.push_back({section.id, toQt(section.frame.title), counts,
                         belongsTo(section, pattern, m_document.derived().choice().version)});
    }
    const QSignalBlocker quiet(m_list->selectionModel());
    const int before = m_model->rowCount();
    m_model->setItems(std::move(lines));
    if (m_model->rowCount() != before)
        Q_EMIT heightWantedChanged();
}

int SectionsPanel::heightWithin(int room) const
{
    constexpr int drop = 12; // below the last one there is a place to drop on
    const int line = std::max(1, m_list->sizeHintForRow(0));
    const int wanted = std::max(1, m_model->rowCount()) * line + drop;
    return wanted <= room ? wanted : std::max(2, (room - line / 2) / line) * line + line / 2; // half a line: there are more
}

void SectionsPanel::setSection(SectionId section)
{
    const int at = sectionIndex(m_document.pattern(), section);
    if (at < 0 || at >= m_model->rowCount())
        return;
    const QSignalBlocker quiet(m_list->selectionModel());
    if (m_list->currentIndex().row() != at) {
        m_list->setCurrentIndex(m_model->index(at));
        m_list->scrollTo(m_model->index(at)); // the list, told nothing, doesn't by itself
    }
    m_list->viewport()->update();
}

void SectionsPanel::rename()
{
    if (m_list->currentIndex().isValid())
        m_list->edit(m_list->currentIndex());
}

QString SectionsPanel::countsOf(int section) const
{
    return m_model->item(section).counts;
}

} // namespace shawlwright::app
