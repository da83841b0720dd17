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
constexpr int leastWithPoints = 12;

std::vector<std::uint32_t> partsOf(const QImage& image, int cell)
{
    const int parts = image.width() / cell;
    std::vector<std::uint32_t> pixels;
    pixels.reserve(static_cast<std::size_t>(image.width()) * static_cast<std::size_t>(cell));
    for (int part = 0; part < parts; ++part)
        for (int y = 0; y < cell; ++y) {
            const auto* line = reinterpret_cast<const std::uint32_t*>(image.constScanLine(y));
            const auto* from = line + static_cast<std::ptrdiff_t>(parts - 1 - part) * cell;
            pixels.insert(pixels.end(), from, from + cell);
        }
    return pixels;
}

// Lines of pixels side by side. A width that is known beforehand is copied several times as fast where cells
// are small.
template <std::size_t Cell>
void copyLine(std::uint32_t* to, const std::vector<const std::uint32_t*>& sources, std::size_t offset,
              std::size_t)
{
    for (const std::uint32_t* source : sources) {
        std::memcpy(to, source + offset, Cell * sizeof *to);
        to += Cell;
    }
}

template <>
void copyLine<0>(std::uint32_t* to, const std::vector<const std::uint32_t*>& sources, std::size_t offset,
                 std::size_t cell)
{
    for (const std::uint32_t* source : sources) {
        std::memcpy(to, source + offset, cell * sizeof *to);
        to += cell;
    }
}

using CopyLine = void (*)(std::uint32_t*, const std::vector<const std::uint32_t*>&, std::size_t, std::size_t);

CopyLine copierOf(std::size_t cell)
{
    constexpr CopyLine known[] = {copyLine<0>,  copyLine<1>,  copyLine<2>,  copyLine<3>,  copyLine<4>,
                                  copyLine<5>,  copyLine<6>,  copyLine<7>,  copyLine<8>,  copyLine<9>,
                                  copyLine<10>, copyLine<11>, copyLine<12>, copyLine<13>, copyLine<14>,
                                  copyLine<15>, copyLine<16>};
    return cell < std::size(known) ? known[cell] : copyLine<0>;
}

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
    if (key == m_key && catalogue.own() == m_own && font == m_font && !m_resting.empty())
        return;
    m_key = std::move(key);
    m_own = catalogue.own();
    m_font = font;
    for (auto& ofYarn : m_pixels)
        ofYarn.clear();
    m_resting = partsOf(resting(), m_key.cell);
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
        const bool paper = ground == m_key.theme.paper;
        const QColor colour =
            paper ? m_key.theme.line : mixed(m_key.theme.ink, ground, 0.14); // seen on a tint too
        painter.fillRect(0, image.height() - line(), image.width(), line(), colour);
        painter.fillRect(image.width() - line(), 0, line(), image.height(), colour);
    }
    return image;
}

QImage Atlas::resting() const
{
    const Theme& theme = m_key.theme;
    QImage image =
        blank(1, mixed(theme.noStitch, theme.paper, m_key.cell < leastWithSymbol ? 0.6 : 0.25), true);
    if (m_key.cell < leastWithSymbol)
        return image;
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const double cell = m_key.cell;
    painter.setPen(QPen(colourOf(theme, chart::Ink::Resting, *m_head, {}), std::max(1.0, 0.04 * cell), Qt::SolidLine,
                        Qt::RoundCap));
    painter.drawLine(QPointF(0.3 * cell, 0.7 * cell), QPointF(0.7 * cell, 0.3 * cell));
    return image;
}

// No stitch is a flat area, as in print; a point at each crossing lets the eye and the mouse find a cell.
QImage Atlas::nothing() const
{
    QImage image = blank(1, m_key.theme.noStitch, false);
    if (m_key.cell >= leastWithPoints) {
        const int point = 2 * line();
        QPainter painter(&image);
        painter.fillRect(image.width() - point, image.height() - point, point, point, m_key.theme.tenthLine);
    }
    return image;
}

QImage Atlas::made(const Stitch& stitch, YarnId yarn) const
{
    if (stitch.id == noStitch)
        return nothing();
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

const Atlas::Pixels& Atlas::pixels(StitchId stitch, YarnId yarn)
{
    auto& ofYarn = m_pixels[yarn.value];
    if (ofYarn.size() <= stitch.value)
        ofYarn.resize(static_cast<std::size_t>(stitch.value) + 1);
    Pixels& kept = ofYarn[stitch.value];
    if (kept.empty())
        kept = partsOf(made(m_catalogue->stitch(stitch), yarn), m_key.cell);
    return kept;
}

const std::uint32_t* Atlas::sourceOf(Cell held, YarnId ofRow, const std::vector<bool>& resting, int column)
{
    const std::size_t square = static_cast<std::size_t>(m_key.cell) * static_cast<std::size_t>(m_key.cell);
    const std::size_t at = static_cast<std::size_t>(column) - 1;
    const bool none = held.stitch == noStitch;
    if (none && at < resting.size() && resting[at])
        return m_resting.data();
    const Pixels& parts = pixels(held.stitch, none ? YarnId{} : held.yarn.value ? held.yarn : ofRow);
    return parts.data() + std::min<std::size_t>(held.part, parts.size() / square - 1) * square;
}

void Atlas::paintRow(QImage& to, int top, const Row& row, int first, int last,
                     const std::vector<bool>& resting)
{
    const std::size_t cell = static_cast<std::size_t>(m_key.cell);
    m_sources.clear();
    m_sources.reserve(static_cast<std::size_t>(std::max(0, last - first + 1)));
    const int held = std::min(last, static_cast<int>(row.cells.size()));
    for (int column = last; column > held; --column) // the row is shorter than the chart
        m_sources.push_back(sourceOf({}, row.yarn, resting, column));
    for (int column = held; column >= first;) {
        const Cell& one = row.cells[static_cast<std::size_t>(column) - 1];
        if (one.stitch == noStitch && !resting.empty()) {
            m_sources.push_back(sourceOf(one, row.yarn, resting, column));
            --column;
            continue;
        }
        int alike = 1; // most cells are as the one beside them
        while (column - alike >= first && row.cells[static_cast<std::size_t>(column - alike) - 1] == one)
            ++alike;
        m_sources.insert(m_sources.end(), static_cast<std::size_t>(alike), sourceOf(one, row.yarn, {}, column));
        column -= alike;
    }
    const CopyLine copy = copierOf(cell);
    const std::size_t flatFrom =
        m_key.cell < leastWithSymbol ? 1 : cell; // lines from here on are as the first
    for (std::size_t y = 0; y < cell; ++y) {
        auto* line = reinterpret_cast<std::uint32_t*>(to.scanLine(top + static_cast<int>(y)));
        if (y < flatFrom)
            copy(line, m_sources, y * cell, cell);
        else
            std::memcpy(line, to.constScanLine(top), m_sources.size() * cell * sizeof *line);
    }
}

} // namespace shawlwright::app
