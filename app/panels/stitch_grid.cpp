#include "app/panels/stitch_grid.h"

#include "app/document/text.h"
#include "app/panels/look.h"
#include "app/panels/symbol_picture.h"

#include <QContextMenuEvent>
#include <QFontInfo>
#include <QFontMetrics>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int plainTile = 44;
constexpr int plainHeight = 34;
constexpr int gap = 8;
constexpr int margin = 12;

} // namespace

StitchGrid::StitchGrid(QWidget* parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Stitches"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setMouseTracking(true);
}

void StitchGrid::show(const Catalogue& catalogue, std::vector<StitchGroup> groups, Side side, Words words)
{
    const bool sameTiles = groups == m_groups && words == m_words && catalogue.own() == m_shown.own();
    if (sameTiles && side == m_side)
        return;
    m_side = side;
    if (sameTiles) // room is left for the abbreviations of both sides
        return update();
    m_shown = catalogue;
    m_groups = std::move(groups);
    m_words = words;
    lay();
    updateGeometry();
    update();
}

void StitchGrid::setChosen(StitchId stitch)
{
    if (stitch == m_chosen)
        return;
    m_chosen = stitch;
    for (std::size_t i = 0; i < m_laid.tiles.size(); ++i)
        if (m_laid.tiles[i].stitch == stitch) {
            m_current = i;
            break;
        }
    update();
}

QRect StitchGrid::tileOf(StitchId stitch) const
{
    for (const Tile& tile : m_laid.tiles)
        if (tile.stitch == stitch)
            return tile.rect;
    return {};
}

// Larger text needs wider tiles and more room below them.
int StitchGrid::leastTile() const
{
    return std::max(plainTile, plainTile * QFontInfo(font()).pixelSize() / 13);
}

int StitchGrid::tileHeight() const
{
    return std::max(plainHeight, plainHeight * QFontInfo(font()).pixelSize() / 13);
}

int StitchGrid::labelHeight() const
{
    return std::max(17, QFontMetrics(smaller(font())).height() + 2);
}

QString StitchGrid::labelOf(StitchId stitch, Side side) const
{
    return stitch == noStitch ? tr("no st") : toQt(abbreviation(m_shown.stitch(stitch), side, m_words));
}

// As many as the abbreviation of either side needs, and two for the symbol of more than four loops.
int StitchGrid::tilesFor(StitchId stitch, int tileWidth) const
{
    const bool crowded = stitch != noStitch && m_shown.stitch(stitch).leaves > 4;
    const QFontMetrics metrics(smaller(font()));
    const int label =
        std::max(metrics.horizontalAdvance(labelOf(stitch, Side::RS)), metrics.horizontalAdvance(labelOf(stitch, Side::WS)));
    return std::max(crowded ? 2 : 1, (label + tileWidth + gap - 1) / (tileWidth + gap));
}

StitchGrid::Laid StitchGrid::laidOut(int width) const
{
    Laid laid;
    const int across = std::max(1, (width - 2 * margin + gap) / (leastTile() + gap));
    const int tileWidth = (width - 2 * margin + gap) / across - gap;
    int y = 4;
    for (const StitchGroup& group : m_groups) {
        if (group.stitches.empty())
            continue;
        if (!group.heading.isEmpty()) {
            laid.headings.push_back({QRect(margin, y, width - 2 * margin, labelHeight() + 3), group.heading});
            y += labelHeight() + 5;
        }
        int column = 0;
        for (std::size_t i = 0; i < group.stitches.size(); ++i) {
            const int span = std::min(across, tilesFor(group.stitches[i], tileWidth));
            if (column + span > across) {
                column = 0;
                y += tileHeight() + labelHeight() + 4;
            }
            laid.tiles.push_back({group.stitches[i],
                                  QRect(margin + column * (tileWidth + gap), y, span * (tileWidth + gap) - gap, tileHeight()),
                                  group.keys && i < 9 ? static_cast<int>(i) + 1 : 0});
            column += span;
        }
        y += tileHeight() + labelHeight() + 8;
    }
    laid.height = y;
    return laid;
}

void StitchGrid::lay()
{
    m_laid = laidOut(std::max(width(), 2 * margin + leastTile()));
    m_current = std::min(m_current, m_laid.tiles.empty() ? 0 : m_laid.tiles.size() - 1);
}

int StitchGrid::heightForWidth(int width) const
{
    return laidOut(width).height;
}

QSize StitchGrid::sizeHint() const
{
    const int width = 2 * margin + 4 * leastTile() + 3 * gap;
    return {width, heightForWidth(width)};
}

void StitchGrid::resizeEvent(QResizeEvent*)
{
    lay();
    setMinimumHeight(m_laid.height);
}

void StitchGrid::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        lay();
        setMinimumHeight(m_laid.height);
        update();
    }
}

const StitchGrid::Tile* StitchGrid::tileAt(QPoint point) const
{
    for (const Tile& tile : m_laid.tiles)
        if (tile.rect.adjusted(-2, -2, 2, labelHeight()).contains(point))
            return &tile;
    return nullptr;
}

void StitchGrid::paintEvent(QPaintEvent* event)
{
    QPainter painter(this);
    const Theme theme = themeOf(*this);
    painter.fillRect(event->rect(), theme.paper);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFont plain = font();
    const QFont small = smaller(plain);
    QFont key = plain;
    key.setPixelSize(std::max(9, QFontInfo(plain).pixelSize() * 9 / 13));
    painter.setPen(theme.softInk);
    painter.setFont(small);
    for (const auto& [rect, words] : m_laid.headings)
        if (rect.intersects(event->rect()))
            painter.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter, words);
    for (std::size_t i = 0; i < m_laid.tiles.size(); ++i) {
        const Tile& tile = m_laid.tiles[i];
        if (!tile.rect.adjusted(0, 0, 0, labelHeight() + 2).intersects(event->rect()))
            continue;
        const Stitch& stitch = m_shown.stitch(tile.stitch);
        const bool chosen = tile.stitch == m_chosen;
        painter.setPen(QPen(chosen ? theme.accent : theme.line, chosen ? 2 : 1));
        painter.setBrush(tile.stitch == noStitch ? theme.noStitch : chosen ? theme.wash : theme.paper);
        painter.drawRoundedRect(QRectF(tile.rect).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
        if (hasFocus() && i == m_current) {
            QPen dots(theme.accent, 1, Qt::DotLine);
            painter.setPen(dots);
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(QRectF(tile.rect).adjusted(3.5, 3.5, -3.5, -3.5), 3, 3);
        }
        painter.setFont(small);
        drawSymbol(painter, QRectF(tile.rect).adjusted(6, 5, -6, -5), stitch, theme);
        if (tile.key > 0) {
            painter.setFont(key);
            painter.setPen(theme.softInk);
            painter.drawText(tile.rect.adjusted(4, 2, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                             QString::number(tile.key));
        }
        painter.setFont(small);
        painter.setPen(chosen ? theme.accent : theme.ink);
        const QRect label(tile.rect.left() - gap / 2, tile.rect.bottom() + 1, tile.rect.width() + gap,
                          labelHeight());
        painter.drawText(label, Qt::AlignHCenter | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(labelOf(tile.stitch, m_side), Qt::ElideRight, label.width()));
    }
}

void StitchGrid::choose(std::size_t tile)
{
    m_current = tile;
    m_chosen = m_laid.tiles[tile].stitch;
    update();
    Q_EMIT chosenByUser(m_chosen);
}

void StitchGrid::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    if (const Tile* tile = tileAt(event->position().toPoint()))
        choose(static_cast<std::size_t>(tile - m_laid.tiles.data()));
}

void StitchGrid::contextMenuEvent(QContextMenuEvent* event)
{
    const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
    const Tile* tile = byKey && !m_laid.tiles.empty() ? &m_laid.tiles[m_current] : tileAt(event->pos());
    if (tile)
        Q_EMIT contextWanted(tile->stitch, byKey ? mapToGlobal(tile->rect.center()) : event->globalPos());
}

void StitchGrid::keyPressEvent(QKeyEvent* event)
{
    if (m_laid.tiles.empty())
        return QWidget::keyPressEvent(event);
    const QRect here = m_laid.tiles[m_current].rect;
    const auto nearest = [&](int direction) {
        // The tile above or below whose middle is nearest.
        std::size_t best = m_current;
        int bestScore = 1 << 30;
        for (std::size_t i = 0; i < m_laid.tiles.size(); ++i) {
            const QRect there = m_laid.tiles[i].rect;
            const int down = (there.top() - here.top()) * direction;
            const int score = down * 8 + std::abs(there.center().x() - here.center().x());
            if (down > 0 && score < bestScore) {
                bestScore = score;
                best = i;
            }
        }
        return best;
    };
    std::size_t to = m_current;
    switch (event->key()) {
    case Qt::Key_Left:
        to = m_current > 0 ? m_current - 1 : 0;
        break;
    case Qt::Key_Right:
        to = std::min(m_current + 1, m_laid.tiles.size() - 1);
        break;
    case Qt::Key_Up:
        to = nearest(-1);
        break;
    case Qt::Key_Down:
        to = nearest(1);
        break;
    case Qt::Key_Home:
        to = 0;
        break;
    case Qt::Key_End:
        to = m_laid.tiles.size() - 1;
        break;
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        choose(m_current);
        return;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    m_current = to;
    update();
    Q_EMIT revealWanted(m_laid.tiles[to].rect.adjusted(0, -4, 0, labelHeight() + 4));
}

bool StitchGrid::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        auto* help = static_cast<QHelpEvent*>(event);
        if (const Tile* tile = tileAt(help->pos())) {
            const Stitch& stitch = m_shown.stitch(tile->stitch);
            const QString label = tile->stitch == noStitch ? QString() : labelOf(tile->stitch, m_side);
            QToolTip::showText(help->globalPos(), label.isEmpty() ? toQt(stitch.name) : tr("%1 \u2013 %2").arg(label, toQt(stitch.name)), this,
                               tile->rect.adjusted(0, 0, 0, labelHeight()));
        } else {
            QToolTip::hideText();
        }
        return true;
    }
    return QWidget::event(event);
}

} // namespace shawlwright::app
