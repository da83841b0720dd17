#include "app/panels/findings_panel.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"
#include "app/panels/kept_heights.h"
#include "app/panels/kept_list.h"
#include "app/panels/look.h"
#include "app/panels/wrapped_runs.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <cmath>
#include <map>

namespace shawlwright::app {

namespace {

struct FindingLine {
    Finding finding;
    QString place;
    int followers = 0;
    bool unfolded = false;
    bool follower = false;
    bool operator==(const FindingLine&) const = default;
};

QString inWords(const char* text)
{
    return QCoreApplication::translate("FindingsPanel", text);
}

QString foldWords(const FindingLine& line)
{
    if (line.followers == 0)
        return {};
    if (line.unfolded)
        return inWords("Hide what follows from it");
    return line.followers == 1 ? inWords("Show one more that follows from it")
                               : inWords("Show %1 more that follow from it").arg(line.followers);
}

} // namespace

class FindingsModel : public KeptList<FindingLine> {
public:
    using KeptList<FindingLine>::KeptList;

    QVariant data(const QModelIndex& index, int role) const override
    {
        if (!index.isValid())
            return {};
        const FindingLine& line = item(index.row());
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
            return QString(line.place + toQt(line.finding.message));
        return {};
    }
};

namespace {

class FindingDelegate : public QStyledItemDelegate {
public:
    FindingDelegate(FindingsModel& model, QListView& view)
        : QStyledItemDelegate(&view), m_model(model), m_view(view)
    {
    }

    struct Laid {
        QRect mend, fold;
        int height = 0;
    };

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const int width = m_view.viewport()->width();
        const FindingLine& line = m_model.item(index.row());
        const QString key = line.place + toQt(line.finding.message) + QLatin1Char('\n') + toQt(line.finding.mend.label) +
                            QLatin1Char('\n') + foldWords(line) + (line.follower ? QLatin1Char('>') : QLatin1Char(' '));
        const int height = m_heights.of(key, width, option.font, [&] {
            return laid(nullptr, QRect(0, 0, width, 0), option.font, line).height;
        });
        return {std::max(80, width - 1), height};
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const Theme theme = themeOf(*option.widget);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF box = QRectF(option.rect).adjusted(8, 0, -8, 0);
        const bool chosen = option.state & QStyle::State_Selected;
        if (chosen || (option.state & QStyle::State_MouseOver)) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(chosen ? theme.wash : theme.window);
            painter->drawRoundedRect(box, 5, 5);
        }
        if (m_view.hasFocus() && index == m_view.currentIndex()) {
            painter->setPen(QPen(theme.accent, 1));
            painter->setBrush(Qt::NoBrush);
            painter->drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
        }
        laid(painter, option.rect, option.font, m_model.item(index.row()));
        painter->restore();
    }
    Laid laid(QPainter* painter, const QRect& rect, const QFont& font, const FindingLine& line) const
    {
        const Theme theme = themeOf(m_view);
        const double indent = line.follower ? 40 : 36;
        const QRectF text(rect.left() + indent, rect.top() + 5, rect.width() - indent - 16, 0);
        if (painter)
            mark(*painter, QPointF(rect.left() + (line.follower ? 28 : 22), rect.top() + 14), line, theme);
        double y = text.top() + wrappedRuns(painter, text,
                                            {{line.place, heading(font), theme.ink},
                                             {toQt(line.finding.message), font, theme.ink}});
        Laid laid;
        const auto link = [&](const QString& words) {
            const QRectF at(text.left(), y, text.width(), 0);
            const double height = wrappedRuns(painter, at, {{words, heading(font), theme.accent}});
            const double width =
                std::min(text.width(), QFontMetricsF(heading(font)).horizontalAdvance(words));
            y += height;
            return QRectF(at.left(), at.top(), width, height).toAlignedRect();
        };
        if (line.finding.mend.kind != MendKind::None)
            laid.mend = link(toQt(line.finding.mend.label));
        if (line.followers > 0)
            laid.fold = link(foldWords(line));
        laid.height = static_cast<int>(std::ceil(y - rect.top())) + 5;
        return laid;
    }

private:
    // Told apart by shape as well as by colour: a disc, a triangle, a ring.
    static void mark(QPainter& painter, QPointF middle, const FindingLine& line, const Theme& theme)
    {
        const double r = line.follower ? 3.5 : 6;
        switch (line.finding.severity) {
        case Severity::Error:
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.error);
            painter.drawEllipse(middle, r, r);
            if (!line.follower) {
                painter.setPen(QPen(theme.paper, 1.6, Qt::SolidLine, Qt::RoundCap));
                painter.drawLine(middle + QPointF(-2.3, -2.3), middle + QPointF(2.3, 2.3));
                painter.drawLine(middle + QPointF(-2.3, 2.3), middle + QPointF(2.3, -2.3));
            }
            break;
        case Severity::Warning: {
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.warning);
            const QPointF corners[] = {middle + QPointF(0, -r), middle + QPointF(r, r * 0.8),
                                       middle + QPointF(-r, r * 0.8)};
            painter.drawPolygon(corners, 3);
            break;
        }
        case Severity::Note:
            painter.setPen(QPen(theme.note, 1.8));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(middle, r - 1.5, r - 1.5);
            break;
        }
    }

    FindingsModel& m_model;
    QListView& m_view;
    mutable KeptHeights m_heights;
};

const FindingDelegate* delegateOf(const QListView& list)
{
    return static_cast<const FindingDelegate*>(list.itemDelegate());
}

} // namespace

FindingsPanel::FindingsPanel(PatternDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_model(new FindingsModel(this)), m_list(new QListView(this)),
      m_none(softLabel(tr("Every row comes out. Nothing to mend."), this))
{
    setObjectName(QStringLiteral("panel"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 4);
    layout->setSpacing(0);
    m_none->setContentsMargins(16, 0, 16, 4);
    m_none->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    layout->addWidget(m_none);
    layout->addWidget(m_list, 1);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new FindingDelegate(*m_model, *m_list));
    m_list->setResizeMode(QListView::Adjust);
    m_list->setWordWrap(true); // see words_panel.cpp
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setMouseTracking(true);
    m_list->setAccessibleName(tr("Findings"));
    m_list->viewport()->installEventFilter(this);
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_list, &QListView::activated, this,
            [this](const QModelIndex& index) { Q_EMIT findingWanted(m_model->item(index.row()).finding); });
    connect(m_list, &QListView::customContextMenuRequested, this, [this](const QPoint& at) {
        const QModelIndex index = m_list->indexAt(at);
        if (!index.isValid())
            return;
        const FindingLine line = m_model->item(index.row());
        QMenu menu;
        QAction* go = menu.addAction(tr("Go there"));
        QAction* mend = line.finding.mend.kind == MendKind::None
                            ? nullptr
                            : menu.addAction(toQt(line.finding.mend.label));
        QAction* copy = menu.addAction(tr("Copy the sentence"));
        QAction* taken = menu.exec(m_list->viewport()->mapToGlobal(at));
        if (!taken)
            return;
        if (taken == go)
            Q_EMIT findingWanted(line.finding);
        else if (taken == mend)
            Q_EMIT mendWanted(line.finding);
        else if (taken == copy)
            QGuiApplication::clipboard()->setText(line.place + toQt(line.finding.message));
    });
    refresh();
}

bool FindingsPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::MouseMove) {
        const QPoint at = static_cast<QMouseEvent*>(event)->position().toPoint();
        const QModelIndex index = m_list->indexAt(at);
        const bool link =
            index.isValid() && (mendRect(index.row()).contains(at) || foldRect(index.row()).contains(at));
        m_list->viewport()->setCursor(link ? Qt::PointingHandCursor : Qt::ArrowCursor);
    } else if (event->type() == QEvent::MouseButtonRelease) {
        const auto* mouse = static_cast<QMouseEvent*>(event);
        const QPoint at = mouse->position().toPoint();
        const QModelIndex index = m_list->indexAt(at);
        if (mouse->button() == Qt::LeftButton && index.isValid()) {
            const Finding finding = m_model->item(index.row()).finding; // the list may change under it
            if (mendRect(index.row()).contains(at))
                Q_EMIT mendWanted(finding);
            else if (foldRect(index.row()).contains(at))
                unfold(index.row());
            else
                Q_EMIT findingWanted(finding);
        }
    }
    return QWidget::eventFilter(watched, event);
}

QRect FindingsPanel::mendRect(int item) const
{
    return delegateOf(*m_list)
        ->laid(nullptr, m_list->visualRect(m_model->index(item)), m_list->font(), m_model->item(item))
        .mend;
}

QRect FindingsPanel::foldRect(int item) const
{
    return delegateOf(*m_list)
        ->laid(nullptr, m_list->visualRect(m_model->index(item)), m_list->font(), m_model->item(item))
        .fold;
}

std::optional<Finding> FindingsPanel::finding(int item) const
{
    if (item < 0 || item >= m_model->rowCount())
        return {};
    return m_model->item(item).finding;
}

QString FindingsPanel::sentence(int item) const
{
    return m_model->index(item).data().toString();
}

int FindingsPanel::heightWanted() const
{
    constexpr int most = 1000;
    int high = layout()->contentsMargins().bottom();
    if (!m_none->isHidden())
        high += m_none->heightForWidth(width());
    for (int i = 0; i < m_model->rowCount() && high < most; ++i)
        high += m_list->sizeHintForRow(i);
    return high;
}

int FindingsPanel::count() const
{
    return std::max(0, m_count);
}

void FindingsPanel::setSection(SectionId section)
{
    if (section == m_section)
        return;
    m_section = section;
    refresh();
}

void FindingsPanel::unfold(int item)
{
    const Finding& finding = m_model->item(item).finding;
    const std::pair<std::uint32_t, int> key{finding.section.value, finding.row};
    if (!m_unfolded.erase(key))
        m_unfolded.insert(key);
    refresh();
}

void FindingsPanel::refresh()
{
    const Pattern& pattern = m_document.pattern();
    const std::vector<Finding>& findings = m_document.derived().findings();
    std::map<int, std::vector<const Finding*>> followers; // by ledger line of the fault
    std::map<std::uint32_t, std::vector<std::string>> labels;
    int standing = 0;
    for (const Finding& finding : findings) {
        if (finding.followsFrom >= 0)
            followers[finding.followsFrom].push_back(&finding);
        else
            ++standing;
    }
    const auto place = [&](const Finding& finding) {
        const int section = sectionIndex(pattern, finding.section);
        QString words;
        if (section < 0)
            return words;
        const Section& of = pattern.sections[static_cast<std::size_t>(section)];
        auto& known = labels[finding.section.value];
        if (known.empty() && !of.rows.empty())
            known = rowLabels(of);
        if (finding.section != m_section)
            words = toQt(of.frame.title);
        if (finding.row >= 0 && finding.row < static_cast<int>(known.size())) {
            words += words.isEmpty() ? tr("Row %1") : tr(", row %1");
            words = words.arg(toQt(known[static_cast<std::size_t>(finding.row)]));
            if (finding.column > 0)
                words += tr(", stitch %1").arg(finding.column);
        }
        return words.isEmpty() ? words : words + QStringLiteral(": ");
    };
    std::vector<FindingLine> lines;
    for (const Finding& finding : findings) {
        if (finding.followsFrom >= 0)
            continue;
        FindingLine line{finding, place(finding)};
        const auto under = finding.line >= 0 ? followers.find(finding.line) : followers.end();
        std::vector<const Finding*> folded;
        if (under != followers.end()) {
            folded = std::move(under->second);
            followers.erase(under); // only under the first finding of that row
        }
        line.followers = static_cast<int>(folded.size());
        line.unfolded = line.followers > 0 && m_unfolded.count({finding.section.value, finding.row}) > 0;
        lines.push_back(line);
        if (line.unfolded)
            for (const Finding* one : folded)
                lines.push_back({*one, place(*one), 0, false, true});
    }
    m_model->setItems(std::move(lines));
    m_list->doItemsLayout();
    m_none->setVisible(m_model->rowCount() == 0);
    m_list->setVisible(m_model->rowCount() > 0);
    if (standing != m_count) {
        m_count = standing;
        Q_EMIT countChanged(standing);
    }
}

} // namespace shawlwright::app
