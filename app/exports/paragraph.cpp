#include "app/exports/paragraph.h"

#include "app/exports/document_font.h"

#include <algorithm>

namespace shawlwright::app {

QFont printedFont(double points, bool bold, const QString& words)
{
    QFont font = documentFont(std::max(1, qRound(points * pageUnitsPerPoint)), bold);
    const bool needsShaping = std::any_of(
        words.begin(), words.end(), [](QChar c) { return c.unicode() >= 0x0590 && c.unicode() < 0x1e00; });
    if (!needsShaping)
        font.setStyleStrategy(QFont::PreferNoShaping);
    return font;
}

Paragraph::Paragraph(const QString& words, const ParagraphStyle& style, double width)
    : m_layout(std::make_shared<QTextLayout>(words, printedFont(style.points, style.bold, words))),
      m_colour(style.colour), m_lineHeight(style.points * style.leading * pageUnitsPerPoint)
{
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    m_layout->setTextOption(option);
    if (style.boldLetters > 0) {
        QTextLayout::FormatRange range;
        range.start = 0;
        range.length = style.boldLetters;
        range.format.setFont(printedFont(style.points, true, words));
        m_layout->setFormats({range});
    }
    m_layout->beginLayout();
    for (int i = 0;; ++i) {
        QTextLine line = m_layout->createLine();
        if (!line.isValid())
            break;
        const double indent = i == 0 ? 0 : style.hanging * pageUnitsPerPoint;
        line.setLineWidth(width - indent);
        line.setPosition({indent, i * m_lineHeight});
    }
    m_layout->endLayout();
}

void Paragraph::paintLines(QPainter& painter, QPointF topLeft, int first, int last) const
{
    painter.setPen(m_colour);
    for (int i = first; i < last; ++i)
        m_layout->lineAt(i).draw(&painter, topLeft - QPointF(0, first * m_lineHeight));
}

int place(PageFlow& flow, const Paragraph& paragraph, double with)
{
    if (paragraph.height() <= flow.fullHeight())
        return flow.place(
            paragraph.height(), [paragraph](QPainter& painter, QPointF at) { paragraph.paint(painter, at); },
            with);
    int firstPage = 0;
    for (int line = 0; line < paragraph.lines();) {
        const int fits = static_cast<int>(flow.room() / paragraph.lineHeight());
        const int last = std::min(line + std::max(1, fits), paragraph.lines());
        const int page = flow.place((last - line) * paragraph.lineHeight(),
                                    [paragraph, line, last](QPainter& painter, QPointF at) {
                                        paragraph.paintLines(painter, at, line, last);
                                    });
        if (line == 0)
            firstPage = page;
        line = last;
    }
    return firstPage;
}

} // namespace shawlwright::app
