// The chart as a table for screen readers: each stitch says row, place and what it is.
//
// Shape:   in a knitter's order, not the screen's: row 0 is the first one knitted (the lowest), column 0 is
// column 1 of the chart (at the right edge). A cell is made when somebody asks for it and kept until rows or
// columns come or go; a chart has hundreds of thousands.
// Source:  Qt's QAccessibleTableInterface, which reaches AT-SPI, UI Automation and NSAccessibility.
#pragma once

#include "core/edits/paint.h"

#include <QAccessibleWidget>
#include <QHash>

namespace shawlwright::app {

class Canvas;

class AccessibleChart : public QAccessibleWidget, public QAccessibleTableInterface {
public:
    explicit AccessibleChart(Canvas* canvas);
    ~AccessibleChart() override;

    static void install(); // once: from then on a Canvas has one

    // What a canvas tells, cheap where nobody listens.
    static void cursorMoved(Canvas& canvas);
    static void contentChanged(Canvas& canvas); // of the stitch at the cursor
    static void reshaped(Canvas& canvas);       // rows or columns came or went, or another section is shown

    void* interface_cast(QAccessible::InterfaceType type) override;
    int childCount() const override;
    QAccessibleInterface* child(int index) const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;

    QAccessibleInterface* caption() const override { return nullptr; }
    QAccessibleInterface* summary() const override { return nullptr; }
    QAccessibleInterface* cellAt(int row, int column) const override;
    int selectedCellCount() const override;
    QList<QAccessibleInterface*> selectedCells() const override;
    QString columnDescription(int column) const override;
    QString rowDescription(int row) const override;
    int selectedColumnCount() const override;
    int selectedRowCount() const override;
    int columnCount() const override;
    int rowCount() const override;
    QList<int> selectedColumns() const override;
    QList<int> selectedRows() const override;
    bool isColumnSelected(int column) const override;
    bool isRowSelected(int row) const override;
    bool selectRow(int row) override;
    bool selectColumn(int column) override;
    bool unselectRow(int row) override;
    bool unselectColumn(int column) override;
    void modelChange(QAccessibleTableModelChangeEvent* event) override;

    int cellsMade() const { return static_cast<int>(m_cells.size()); }

private:
    Canvas& canvas() const;
    void forgetCells();

    mutable QHash<int, QAccessible::Id> m_cells;
};

QString stitchInWords(const Canvas& canvas, At at); // "Row 12 (WS), stitch 5: k2tog, knit 2 together"
QString rowInWords(const Canvas& canvas, int row);  // "Row 12 (WS), 24 sts before, 23 after"

} // namespace shawlwright::app
