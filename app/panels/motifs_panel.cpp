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
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

QPixmap motifPicture(const Motif& motif, const Catalogue& catalogue, const Theme& theme, QSize size, double ratio)
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
                                   0.5, 20.0);
    const QRectF whole((size.width() - cell * motif.columns) / 2, (size.height() - cell * rows) / 2,
                       cell * motif.columns, cell * rows);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int row = 0; row < rows; ++row)
        for (int column = 1; column <= motif.columns; ++column) {
            const Cell at = motif.rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column) - 1];
            if (at.stitch == noStitch || at.part != 0)
                continue;
            const Stitch& stitch = catalogue.stitch(at.stitch);
            const QRectF into(whole.right() - cell * (column + stitch.width() - 1), whole.bottom() - cell * (row + 1),
                              cell * stitch.width(), cell);
            painter.fillRect(into, theme.paper);
            if (cell >= 4) {
                painter.setPen(QPen(theme.line, 0));
                painter.setBrush(Qt::NoBrush);
                painter.drawRect(into);
                drawSymbol(painter, into, stitch, theme);
            } else if (stitch.drawing != Drawing::Empty) {
                painter.fillRect(into, theme.softInk);
            }
        }
    return picture;
}

MotifsPanel::MotifsPanel(PatternDocument& document, QWidget* parent) : QWidget(parent), m_document(document)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_list = new QListWidget(this);
    m_list->setObjectName(QStringLiteral("motifs"));
    m_list->setAccessibleName(tr("Motifs"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setIconSize(QSize(72, 56));
    m_list->setSpacing(2);
    m_list->setWordWrap(true);
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    layout->addWidget(m_list, 1);
    m_hint = softLabel(tr("Select stitches in the chart and save them here, to stamp them as often as you like."), this);
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
            item->setToolTip(tr("%1: %2 stitches, %3 rows")
                                 .arg(toQt(motif.name))
                                 .arg(motif.columns)
                                 .arg(motif.rows.size()));
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
        m_list->item(i)->setIcon(QIcon(motifPicture(m_shown[static_cast<std::size_t>(i)], m_document.catalogue(),
                                                    theme, m_list->iconSize(), devicePixelRatioF())));
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
