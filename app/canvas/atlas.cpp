#include "app/canvas/atlas.h"

#include "app/painting/shape_painter.h"
#include "core/chart/symbols.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <cstring>

namespace shawlwright::app {

namespace {

constexpr int leastWithSymbol = 4;
constexpr int leastWithLines = 6;

// How dark a stitch of a family looks from afar.
double weight(const Stitch& stitch)
{
    switch (stitch.family) {
    case Family::Basic:
        return stitch.face == Face::Purl ? 0.2 : 0.0;
    case Family::YarnOver:
        return 0.4;
    case Family::Increase:
        return 0.3;
    case Family::Decrease:
        return 0.5;
    default:
        return 0.35;
    }
}

} // namespace

void Atlas::prepare(AtlasKey key, const Catalogue& catalogue, const PatternHead& head, const QFont& font)
{
    m_catalogue = &catalogue;
    m_head = &head;
    if (key == m_key && catalogue.own() == m_own && font == m_font && !m_resting.isNull())
        return;
    m_key = std::move(key);
    m_own = catalogue.own();
    m_font = font;
    for (auto& ofYarn : m_pictures)
        ofYarn.clear();
    makeResting();
}

int Atlas::line() const
{
    return m_key.cell < leastWithLines ? 0 : std::max(1, static_cast<int>(std::floor(m_key.pixelRatio)));
}

QColor Atlas::ground(YarnId yarn) const
{
    const bool tinted = yarn.value > 0 && !m_key.yarnColours.empty();
    return tinted ? colourOf(m_key.theme, chart::Ink::YarnTint, *m_head, yarn) : m_key.theme.paper;
}

QImage Atlas::blank(int width, const QColor& ground, bool lines) const
{
    QImage image(width * m_key.cell, m_key.cell, QImage::Format_RGB32);
    image.fill(ground);
    if (lines && line() > 0) {
        QPainter painter(&image);
        painter.fillRect(0, image.height() - line(), image.width(), line(), m_key.theme.line);
        painter.fillRect(image.width() - line(), 0, line(), image.height(), m_key.theme.line);
    }
    return image;
}

void Atlas::makeResting()
{
    const Theme& theme = m_key.theme;
    m_resting = blank(1, mixed(theme.noStitch, theme.paper, m_key.cell < leastWithSymbol ? 0.6 : 0.25), true);
    if (m_key.cell < leastWithSymbol)
        return;
    QPainter painter(&m_resting);
    painter.setRenderHint(QPainter::Antialiasing);
    const double cell = m_key.cell;
    painter.setPen(QPen(theme.tenthLine, std::max(1.0, 0.05 * cell), Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(0.3 * cell, 0.7 * cell), QPointF(0.7 * cell, 0.3 * cell));
}

QImage Atlas::made(const Stitch& stitch, YarnId yarn) const
{
    if (stitch.id == noStitch)
        return blank(stitch.width(), m_key.theme.noStitch, false);
    if (m_key.cell < leastWithSymbol)
        return blank(stitch.width(), mixed(m_key.theme.ink, ground(yarn), weight(stitch)), false);
    QImage image = blank(stitch.width(), ground(yarn), true);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const ShapeStyle style{m_key.theme,
                           *m_head,
                           {},
                           static_cast<double>(m_key.cell),
                           std::max(1.0, std::floor(m_key.pixelRatio)),
                           m_font};
    paintShapes(painter, chart::symbolOf(stitch).shapes, style);
    return image;
}

const QImage& Atlas::picture(StitchId stitch, YarnId yarn)
{
    auto& ofYarn = m_pictures[yarn.value];
    if (ofYarn.size() <= stitch.value)
        ofYarn.resize(static_cast<std::size_t>(stitch.value) + 1);
    auto& kept = ofYarn[stitch.value];
    if (!kept)
        kept = std::make_unique<QImage>(made(m_catalogue->stitch(stitch), yarn));
    return *kept;
}

void Atlas::paintRow(QImage& to, int top, const Row& row, int first, int last,
                     const std::vector<bool>& resting)
{
    const std::size_t cell = static_cast<std::size_t>(m_key.cell);
    const std::size_t bytes = cell * 4;
    const qsizetype stride = to.bytesPerLine();
    uchar* const start = to.bits() + static_cast<qsizetype>(top) * stride;
    for (int column = first; column <= last; ++column) {
        const Cell held = cellAt(row, column);
        const QImage* image = nullptr;
        std::size_t part = 0;
        const std::size_t at = static_cast<std::size_t>(column) - 1;
        if (held.stitch == noStitch && at < resting.size() && resting[at]) {
            image = &m_resting;
        } else {
            image = &picture(held.stitch, held.stitch == noStitch ? YarnId{}
                                          : held.yarn.value       ? held.yarn
                                                                  : row.yarn);
            const std::size_t width = static_cast<std::size_t>(image->width()) / cell;
            part = width - 1 - std::min<std::size_t>(held.part, width - 1);
        }
        uchar* target = start + static_cast<std::size_t>(last - column) * bytes;
        const uchar* source = image->constBits() + part * bytes;
        for (std::size_t y = 0; y < cell; ++y, target += stride, source += image->bytesPerLine())
            std::memcpy(target, source, bytes);
    }
}

} // namespace shawlwright::app
