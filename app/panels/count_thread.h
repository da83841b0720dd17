// The stitch count over the whole shawl as a thread; a click goes to the row.
//
// Shape:   knitted rows from left to right, stitches upwards; a hairline where a section begins.
#pragma once

#include "app/document/pattern_document.h"

#include <QWidget>

namespace shawlwright::app {

class CountThread : public QWidget {
    Q_OBJECT
public:
    explicit CountThread(PatternDocument& document, QWidget* parent = nullptr);

    void setRow(SectionId section, int row); // marked by a dotted line
    void refresh();
    QSize sizeHint() const override { return {400, labelHeight() + 50}; }
    QSize minimumSizeHint() const override { return {120, labelHeight() + 30}; }
    QPointF pointOf(int line) const; // where the thread passes after that knitted row

Q_SIGNALS:
    void rowWanted(shawlwright::SectionId section, int row);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    int labelHeight() const; // of the titles above the thread
    QRectF area() const;
    QPointF pointOf(int line, const QRectF& area) const;
    int lineAt(double x) const; // -1: none
    int markedLine() const;
    QString inWords(int line) const;

    PatternDocument& m_document;
    SectionId m_section;
    int m_row = -1;
    int m_hovered = -1;
    std::vector<int> m_counts;                       // after each knitted row
    std::vector<std::pair<int, QString>> m_sections; // first line, title
    int m_most = 1;
};

} // namespace shawlwright::app
