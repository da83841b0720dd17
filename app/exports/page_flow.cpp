#include "app/exports/page_flow.h"

namespace shawlwright::app {

namespace {

constexpr double sideMm = 16;
constexpr double topMm = 15;
constexpr double bottomMm = 20; // holds the footer

} // namespace

PageFlow::PageFlow(QSizeF paper)
    : m_area(sideMm * pageUnitsPerMm, topMm * pageUnitsPerMm, paper.width() - 2 * sideMm * pageUnitsPerMm,
             paper.height() - (topMm + bottomMm) * pageUnitsPerMm),
      m_y(m_area.top()), m_pages(1)
{
}

double PageFlow::width() const
{
    return m_area.width();
}
double PageFlow::fullHeight() const
{
    return m_area.height();
}
double PageFlow::room() const
{
    return m_area.bottom() - m_y;
}

int PageFlow::place(double height, Paint paint, double with)
{
    if (height + with > room() && !atHead())
        breakPage();
    m_pages.back().push_back({{m_area.left(), m_y}, std::move(paint)});
    m_y += height;
    return page();
}

void PageFlow::space(double height)
{
    if (!atHead())
        m_y += height;
}

void PageFlow::breakPage()
{
    if (atHead())
        return;
    m_pages.emplace_back();
    m_y = m_area.top();
}

void PageFlow::paintPage(QPainter& painter, int page) const
{
    for (const Block& block : m_pages[static_cast<std::size_t>(page) - 1])
        block.paint(painter, block.at);
}

} // namespace shawlwright::app
