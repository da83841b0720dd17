// Words set in lines of a given width.
//
// Units:   page units (page_flow.h); sizes of letters in points.
// Source:  letters are set one by one (no ligatures), or a program that copies or searches a PDF finds "fi"
// as one sign;
//          scripts whose letters join are shaped as they must be.
#pragma once

#include "app/exports/page_flow.h"

#include <QColor>
#include <QString>
#include <QTextLayout>

#include <memory>

namespace shawlwright::app {

struct ParagraphStyle {
    double points = 10;
    bool bold = false;
    int boldLetters = 0;   // the first so many are bold
    double hanging = 0;    // indent of every line but the first, points
    double leading = 1.32; // distance of lines, times the size
    QColor colour = QColor(0x23, 0x21, 0x1f);
};

QFont printedFont(double points, bool bold, const QString& words);

class Paragraph {
public:
    Paragraph(const QString& words, const ParagraphStyle& style, double width);

    int lines() const { return m_layout->lineCount(); }
    double lineHeight() const { return m_lineHeight; }
    double height() const { return lines() * m_lineHeight; }
    void paint(QPainter& painter, QPointF topLeft) const { paintLines(painter, topLeft, 0, lines()); }
    void paintLines(QPainter& painter, QPointF topLeft, int first, int last) const; // lines [first, last)

private:
    std::shared_ptr<QTextLayout> m_layout;
    QColor m_colour;
    double m_lineHeight = 0;
};

// Sets it whole where a page holds it; a longer one goes on, line by line, on the next. Gives the page it
// begins on.
int place(PageFlow& flow, const Paragraph& paragraph, double with = 0);

} // namespace shawlwright::app
