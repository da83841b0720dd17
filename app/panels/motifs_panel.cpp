#include "app/panels/motifs_panel.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"
#include "app/panels/look.h"
#include "app/panels/symbol_picture.h"

#include <QEvent>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QPixmap>
#include <QSignalBlocker>
#include <QStyledItemDelegate>
#include <QTextLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr double legibleCell = 11; // below it a symbol is a smudge
constexpr QSize pictureSize(88, 56);

} // namespace

QPixmap motifPicture(const Motif& motif, const Catalogue& catalogue, const Theme& theme, QSize size,
                     double ratio)
{
    QPixmap picture(size * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    const int rows = static_cast<int>(motif.rows.size());
    if (rows == 0 || motif.columns == 0)
        return picture;
    QPainter painter(&picture);
    const double cell = std::clamp(std::min(static_cast<double>(size.width() - 1) / motif.columns,
                                            static_cast<double>(size.height() - 1) / rows),
                                   legibleCell, 20.0);
    const double wide = cell * motif.columns, high = cell * rows;
    const QRectF whole(wide < size.width() ? (size.width() - wide) / 2 : size.width() - 0.5 - wide,
                       high < size.height() ? (size.height() - high) / 2 : size.height() - 0.5 - high, wide,
                       high);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int row = 0; row < rows; ++row)
        for (int column = 1; column <= motif.columns; ++column) {
            const Cell at = motif.rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column) - 1];
            if (at.stitch == noStitch || at.part != 0)
                continue;
            const Stitch& stitch = catalogue.stitch(at.stitch);
            const QRectF into(whole.right() - cell * (column + stitch.width() - 1),
                              whole.bottom() - cell * (row + 1), cell * stitch.width(), cell);
            if (into.right() < 0 || into.bottom() < 0)
                continue;
            painter.fillRect(into, theme.paper);
            painter.setPen(QPen(theme.line, 0));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(into);
            drawSymbol(painter, into, stitch, theme);
        }
    const auto fade = [&](QPointF from, QPointF to) { // there is more of it
        QLinearGradient gradient(from, to);
        gradient.setColorAt(0, Qt::transparent);
        gradient.setColorAt(1, Qt::black);
        painter.setCompositionMode(QPainter::CompositionMode_DestinationIn);
        painter.fillRect(QRect(QPoint(0, 0), size), gradient);
    };
    if (whole.left() < 0)
        fade({0, 0}, {2 * cell, 0});
    if (whole.top() < 0)
        fade({0, 0}, {0, cell});
    return picture;
}

namespace {

QString motifSize(const Motif& motif)
{
    const int rows = static_cast<int>(motif.rows.size());
    return (motif.columns == 1 ? MotifsPanel::tr("1 st") : MotifsPanel::tr("%1 sts").arg(motif.columns)) +
           QStringLiteral(", ") +
           (rows == 1 ? MotifsPanel::tr("1 row") : MotifsPanel::tr("%1 rows").arg(rows));
}

bool isExcerpt(const Motif& motif, QSize size)
{
    return legibleCell * motif.columns > size.width() ||
           legibleCell * static_cast<double>(motif.rows.size()) > size.height();
}

// A picture, the name on at most two lines beside it, and below that the size.
class MotifDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override
    {
        const int words =
            2 * QFontMetrics(option.font).lineSpacing() + QFontMetrics(smaller(option.font)).lineSpacing();
        return {120, std::max(words, pictureSize.height()) + 2 * pad};
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const Theme theme = themeOf(*option.widget);
        const bool chosen = option.state & QStyle::State_Selected;
        const QRectF box = QRectF(option.rect).adjusted(6, 0.5, -6, -0.5);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(chosen && (option.state & QStyle::State_HasFocus) ? QPen(theme.accent, 1)
                                                                          : Qt::NoPen);
        if (chosen || (option.state & QStyle::State_MouseOver)) {
            painter->setBrush(chosen ? theme.wash : theme.window);
            painter->drawRoundedRect(box, 5, 5);
        }
        const QPixmap picture = index.data(Qt::DecorationRole)
                                    .value<QIcon>()
                                    .pixmap(pictureSize, option.widget->devicePixelRatioF());
        painter->drawPixmap(QPointF(box.left() + pad, option.rect.center().y() - pictureSize.height() / 2),
                            picture);
        const QRectF words = box.adjusted(pictureSize.width() + 2 * pad, pad, -pad, -pad);
        const QFont small = smaller(option.font);
        const double size = QFontMetricsF(small).lineSpacing();
        QTextLayout name(index.data().toString(), option.font);
        const double high = layOut(name, words.width());
        double y = words.center().y() - (high + size) / 2;
        painter->setPen(theme.ink);
        drawName(*painter, name, QPointF(words.left(), y), words.width());
        painter->setFont(small);
        painter->setPen(theme.softInk);
        painter->drawText(QRectF(words.left(), y + high, words.width(), size),
                          Qt::AlignLeft | Qt::AlignVCenter, index.data(Qt::UserRole).toString());
        painter->restore();
    }

private:
    static constexpr int pad = 6;
    static constexpr int mostLines = 2;

    static double layOut(QTextLayout& name, double width)
    {
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        name.setTextOption(option);
        double y = 0;
        name.beginLayout();
        while (name.lineCount() < mostLines) {
            QTextLine line = name.createLine();
            if (!line.isValid())
                break;
            line.setLineWidth(width);
            line.setPosition({0, y});
            y += line.height();
        }
        name.endLayout();
        return y;
    }
    // The last line ends in dots where the name goes on.
    static void drawName(QPainter& painter, const QTextLayout& name, QPointF at, double width)
    {
        for (int i = 0; i < name.lineCount(); ++i) {
            const QTextLine line = name.lineAt(i);
            QString text = name.text().mid(line.textStart(), line.textLength());
            if (i + 1 == name.lineCount() && line.textStart() + line.textLength() < name.text().size())
                text = QFontMetricsF(name.font())
                           .elidedText(name.text().mid(line.textStart()), Qt::ElideRight, width);
            painter.setFont(name.font());
            painter.drawText(at + line.position() + QPointF(0, line.ascent()), text);
        }
    }
};

} // namespace

MotifsPanel::MotifsPanel(PatternDocument& document, QWidget* parent) : QWidget(parent), m_document(document)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_list = new QListWidget(this);
    m_list->setObjectName(QStringLiteral("motifs"));
    m_list->setAccessibleName(tr("Motifs"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setIconSize(pictureSize);
    m_list->setSpacing(1);
    m_list->setMouseTracking(true);
    m_list->setItemDelegate(new MotifDelegate(m_list));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    layout->addWidget(m_list, 1);
    m_hint = softLabel(
        tr("Select stitches in the chart and save them here, to stamp them as often as you like."), this);
    m_hint->setContentsMargins(16, 8, 12, 12);
    m_hint->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    layout->addWidget(m_hint, 1);
    connect(m_list, &QListWidget::currentRowChanged, this, &MotifsPanel::motifChosen);
    connect(m_list, &QListWidget::itemClicked, this, &MotifsPanel::motifTaken);
    connect(m_list, &QListWidget::itemActivated, this, &MotifsPanel::motifTaken);
    connect(m_list, &QWidget::customContextMenuRequested, this, [this](const QPoint& at) {
        if (m_list->itemAt(at))
            Q_EMIT contextWanted(m_list->viewport()->mapToGlobal(at));
    });
    refresh();
}

void MotifsPanel::refresh()
{
    const std::vector<Motif>& motifs = m_document.pattern().head.motifs;
    m_list->setVisible(!motifs.empty());
    m_hint->setVisible(motifs.empty());
    if (motifs == m_shown && m_list->count() == static_cast<int>(motifs.size()))
        return;
    const int chosenBefore = m_list->currentRow();
    const bool came = motifs.size() > m_shown.size();
    m_shown = motifs;
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (const Motif& motif : motifs) {
            auto* item = new QListWidgetItem(toQt(motif.name), m_list);
            const QString size = motifSize(motif);
            item->setData(Qt::UserRole, size);
            item->setData(Qt::AccessibleTextRole, tr("%1, %2").arg(toQt(motif.name), size));
            item->setToolTip(
                isExcerpt(motif, pictureSize)
                    ? tr("%1: %2; the picture shows its lower right corner").arg(toQt(motif.name), size)
                    : tr("%1: %2").arg(toQt(motif.name), size));
        }
        const int last = static_cast<int>(motifs.size()) - 1;
        m_list->setCurrentRow(came ? last : std::clamp(chosenBefore, std::min(0, last), std::max(0, last)));
    }
    draw();
    Q_EMIT motifChosen();
}

void MotifsPanel::draw()
{
    const Theme& theme = themeOf(*this);
    for (int i = 0; i < m_list->count() && i < static_cast<int>(m_shown.size()); ++i)
        m_list->item(i)->setIcon(
            QIcon(motifPicture(m_shown[static_cast<std::size_t>(i)], m_document.catalogue(), theme,
                               m_list->iconSize(), devicePixelRatioF())));
}

void MotifsPanel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        draw();
    QWidget::changeEvent(event);
}

void MotifsPanel::choose(std::size_t motif)
{
    m_list->setCurrentRow(static_cast<int>(motif));
}

std::optional<std::size_t> MotifsPanel::chosen() const
{
    const int row = m_list->currentRow();
    if (row < 0 || row >= static_cast<int>(m_document.pattern().head.motifs.size()))
        return std::nullopt;
    return static_cast<std::size_t>(row);
}

} // namespace shawlwright::app
