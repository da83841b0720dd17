// Blocks set below each other on as many pages as they need, painted once all page numbers are known.
//
// Shape:   a block is never cut; one taller than a page is given a page of its own and sticks out below, so
// callers cut
//          such blocks first.
// Units:   1/20 point, y downwards from the paper's upper left corner: the pixels of a printer of 1440 dots
// per inch.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QSizeF>

#include <functional>
#include <vector>

namespace shawlwright::app {

inline constexpr int pageDpi = 1440;
inline constexpr double pageUnitsPerPoint = pageDpi / 72.0;
inline constexpr double pageUnitsPerMm = pageDpi / 25.4;

class PageFlow {
public:
    using Paint = std::function<void(QPainter&, QPointF topLeft)>;

    explicit PageFlow(QSizeF paper);

    double width() const;                                         // of the text area
    double fullHeight() const;                                    // of the text area
    double room() const;                                          // left on this page
    int page() const { return static_cast<int>(m_pages.size()); } // the number of the current one, from 1

    // Sets a block; `with` is the height of what must stay on the same page below it. Gives its page.
    int place(double height, Paint paint, double with = 0);
    void space(double height); // nothing at the head of a page
    void breakPage();          // nothing where the page is still empty
    bool atHead() const { return m_pages.back().empty(); }

    QRectF textArea() const { return m_area; }
    int pages() const { return page(); }
    void paintPage(QPainter& painter, int page) const; // from 1

private:
    struct Block {
        QPointF at;
        Paint paint;
    };
    QRectF m_area;
    double m_y = 0;
    std::vector<std::vector<Block>> m_pages;
};

} // namespace shawlwright::app
