#include "app/panels/stroke_field.h"

#include "app/panels/stroke_grid.h"

#include <QAccessible>

#include <algorithm>
#include <cmath>
#include <utility>

namespace shawlwright::app {

namespace {

constexpr double margin = 12, tallest = 200, widest = 400; // pixels
constexpr double ringRadius = 0.25;

double distance(QPointF point, QPointF from, QPointF to)
{
    const QPointF along = to - from, away = point - from;
    const double length = QPointF::dotProduct(along, along);
    const double share = length > 0 ? std::clamp(QPointF::dotProduct(away, along) / length, 0.0, 1.0) : 0;
    const QPointF gap = away - along * share;
    return std::hypot(gap.x(), gap.y());
}

} // namespace

StrokeField::StrokeField(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("strokes"));
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(tr("Drawing of the symbol"));
    describe();
}

void StrokeField::setStitch(const Stitch& stitch)
{
    m_stitch = stitch;
    m_stitch.strokes.clear();
    m_cross.x = std::min<double>(m_cross.x, columns());
    updateGeometry();
    describe();
    update();
}

void StrokeField::setStrokes(Strokes strokes)
{
    m_strokes = std::move(strokes);
    m_before.clear();
    m_open.reset();
    m_bend.reset();
    m_held = -1;
    changed();
}

int StrokeField::outside() const
{
    return static_cast<int>(std::count_if(m_strokes.begin(), m_strokes.end(), [this](const chart::Path& stroke) {
        return std::any_of(stroke.points.begin(), stroke.points.end(),
                           [this](chart::Point p) { return p.x > m_stitch.width(); });
    }));
}

void StrokeField::beginWithMade()
{
    begin();
    m_strokes = chart::strokesOf(chart::symbolOf(m_stitch));
    changed();
}

void StrokeField::addRing()
{
    begin();
    chart::Path ring;
    constexpr int corners = 24;
    for (int i = 0; i <= corners; ++i) {
        const double angle = 2 * 3.14159265358979 * i / corners;
        const chart::Point p{std::clamp<double>(m_cross.x + ringRadius * std::cos(angle), 0, columns()),
                             std::clamp(m_cross.y + ringRadius * std::sin(angle), 0.0, 1.0)};
        ring.verbs.empty() ? ring.move(p) : ring.line(p);
    }
    m_strokes.push_back(std::move(ring));
    changed();
}

void StrokeField::takeBack()
{
    if (m_open) {
        m_open->points.pop_back();
        m_open->verbs.pop_back();
        if (m_open->points.empty())
            m_open.reset();
        else
            m_cross = m_open->points.back();
    } else if (!m_before.empty()) {
        m_strokes = std::move(m_before.back());
        m_before.pop_back();
    }
    m_bend.reset();
    m_held = -1;
    changed();
}

void StrokeField::clear()
{
    if (m_strokes.empty() && !m_open)
        return;
    begin();
    m_strokes.clear();
    changed();
}

void StrokeField::begin()
{
    endStroke();
    m_before.push_back(m_strokes);
    m_held = -1;
    m_bend.reset();
}

void StrokeField::changed()
{
    updateGeometry();
    describe();
    update();
    Q_EMIT drawn();
}

// For a reader that can't see it: where the cross is, and what there is.
void StrokeField::describe()
{
    QString words = tr("Cross in column %1, %2 of %3 steps across, %4 of %3 down.")
                        .arg(std::min(static_cast<int>(m_cross.x), std::max(0, columns() - 1)) + 1)
                        .arg(stepOf(m_cross.x - std::min<int>(static_cast<int>(m_cross.x), std::max(0, columns() - 1))))
                        .arg(gridSteps)
                        .arg(stepOf(m_cross.y));
    words += QLatin1Char(' ') + (m_strokes.size() == 1 ? tr("1 stroke is drawn.") : tr("%1 strokes are drawn.").arg(m_strokes.size()));
    if (m_open)
        words += QLatin1Char(' ') + tr("A stroke goes on; Return ends it.");
    if (words == accessibleDescription())
        return;
    setAccessibleDescription(words);
    QAccessibleEvent told(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&told);
}

int StrokeField::columns() const
{
    double reach = m_stitch.width();
    for (const chart::Path& stroke : m_strokes)
        for (const chart::Point& p : stroke.points)
            reach = std::max(reach, p.x);
    return static_cast<int>(std::ceil(reach));
}

double StrokeField::cell() const
{
    return std::floor(std::min(tallest, widest / columns()));
}

QSize StrokeField::sizeHint() const
{
    return QSizeF(2 * margin + cell() * columns(), 2 * margin + cell()).toSize();
}

QPointF StrokeField::origin() const
{
    return {margin, margin};
}

QPointF StrokeField::toPixels(chart::Point point) const
{
    return origin() + QPointF(point.x, point.y) * cell();
}

QPoint StrokeField::placeOf(chart::Point point) const
{
    return toPixels(point).toPoint();
}

chart::Point StrokeField::snapped(QPointF pixels) const
{
    const QPointF at = (pixels - origin()) / cell();
    const int across = std::clamp(stepOf(at.x()), 0, columns() * gridSteps);
    int down = std::clamp(stepOf(at.y()), 0, gridSteps);
    for (const int near : {down - 1, down + 1})
        if (near >= 0 && near <= gridSteps && std::abs(levelAt(near) - at.y()) < std::abs(levelAt(down) - at.y()))
            down = near;
    return {static_cast<double>(across) / gridSteps, levelAt(down)};
}

int StrokeField::strokeAt(QPointF pixels, double within) const
{
    int nearest = -1;
    for (std::size_t i = 0; i < m_strokes.size(); ++i)
        for (std::size_t p = 1; p < m_strokes[i].points.size(); ++p)
            if (const double gap = distance(pixels, toPixels(m_strokes[i].points[p - 1]), toPixels(m_strokes[i].points[p]));
                gap <= within) {
                within = gap;
                nearest = static_cast<int>(i);
            }
    return nearest;
}

} // namespace shawlwright::app
