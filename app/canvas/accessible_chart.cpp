#include "app/canvas/accessible_chart.h"

#include "app/canvas/canvas.h"
#include "app/document/text.h"
#include "core/needle/ledger.h"

#include <QPointer>

#include <algorithm>

namespace shawlwright::app {

namespace {

const Section* sectionOf(const Canvas& canvas)
{
    const int at = canvas.sectionIndex();
    return at < 0 ? nullptr : &canvas.document().pattern().sections[static_cast<std::size_t>(at)];
}

QString sideInWords(Side side)
{
    return side == Side::RS ? Canvas::tr("RS") : Canvas::tr("WS");
}

bool rests(const Canvas& canvas, At at)
{
    const Ledger& ledger = canvas.document().derived().ledger();
    const int line = firstLineOf(ledger, canvas.sectionIndex(), at.row);
    if (line < 0)
        return false;
    const std::vector<int> resting = restingColumns(ledger, line);
    return std::find(resting.begin(), resting.end(), at.column) != resting.end();
}

class AccessibleStitch : public QAccessibleInterface,
                         public QAccessibleTableCellInterface,
                         public QAccessibleActionInterface {
public:
    AccessibleStitch(Canvas* canvas, At at) : m_canvas(canvas), m_at(at) {}

    bool isValid() const override
    {
        const Section* section = m_canvas ? sectionOf(*m_canvas) : nullptr;
        return section && m_at.row < static_cast<int>(section->rows.size()) &&
               m_at.column <= section->frame.columns;
    }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override
    {
        return m_canvas ? QAccessible::queryAccessibleInterface(m_canvas) : nullptr;
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }

    QString text(QAccessible::Text what) const override
    {
        if (!isValid())
            return {};
        if (what == QAccessible::Name)
            return stitchInWords(*m_canvas, m_at);
        return what == QAccessible::Description ? rowInWords(*m_canvas, m_at.row) : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override
    {
        if (!isValid())
            return {};
        const QRect inView = m_canvas->cellRectOnViewport(m_at.row, m_at.column);
        return inView.isEmpty() ? QRect()
                                : QRect(m_canvas->viewport()->mapToGlobal(inView.topLeft()), inView.size());
    }
    QAccessible::Role role() const override { return QAccessible::Cell; }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        state.focusable = true;
        state.selectable = true;
        state.editable = !m_canvas->document().readOnly();
        state.focused = m_canvas->hasFocus() && m_canvas->cursor() == m_at;
        state.selected = isSelected();
        state.offscreen = m_canvas->cellRectOnViewport(m_at.row, m_at.column).isEmpty();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override
    {
        if (type == QAccessible::TableCellInterface)
            return static_cast<QAccessibleTableCellInterface*>(this);
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }

    bool isSelected() const override
    {
        const auto area = isValid() ? m_canvas->selection() : std::nullopt;
        return area && area->firstRow <= m_at.row && m_at.row <= area->lastRow &&
               area->firstColumn <= m_at.column && m_at.column <= area->lastColumn;
    }
    QList<QAccessibleInterface*> columnHeaderCells() const override { return {}; }
    QList<QAccessibleInterface*> rowHeaderCells() const override { return {}; }
    int columnIndex() const override { return m_at.column - 1; }
    int rowIndex() const override { return m_at.row; }
    int columnExtent() const override { return 1; }
    int rowExtent() const override { return 1; }
    QAccessibleInterface* table() const override { return parent(); }

    QStringList actionNames() const override { return {setFocusAction()}; }
    void doAction(const QString& name) override
    {
        if (name != setFocusAction() || !isValid())
            return;
        m_canvas->setFocus();
        m_canvas->setCursor(m_at);
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QPointer<Canvas> m_canvas;
    At m_at;
};

} // namespace

QString stitchInWords(const Canvas& canvas, At at)
{
    const Section* section = sectionOf(canvas);
    if (!section)
        return {};
    const Row& row = *section->rows[static_cast<std::size_t>(at.row)];
    const Cell cell = cellAt(row, at.column);
    const QString place =
        Canvas::tr("Row %1 (%2), stitch %3: ")
            .arg(toQt(rowLabels(*section)[static_cast<std::size_t>(at.row)]), sideInWords(row.side))
            .arg(at.column);
    if (cell.stitch == noStitch)
        return place + (rests(canvas, at) ? Canvas::tr("rests on the needle") : Canvas::tr("no stitch"));
    const Stitch& stitch = canvas.document().catalogue().stitch(cell.stitch);
    const QString word = toQt(abbreviation(stitch, row.side)), name = toQt(stitch.name);
    QString words = place + (word == name || word.isEmpty() ? name : word + QStringLiteral(", ") + name);
    if (const Yarn* yarn = yarnOf(canvas.document().pattern().head, cell.yarn))
        words += Canvas::tr(", with %1").arg(toQt(yarn->code));
    return words;
}

QString rowInWords(const Canvas& canvas, int row)
{
    const Section* section = sectionOf(canvas);
    if (!section || row < 0 || row >= static_cast<int>(section->rows.size()))
        return {};
    const QString label =
        Canvas::tr("Row %1 (%2)")
            .arg(toQt(rowLabels(*section)[static_cast<std::size_t>(row)]),
                 sideInWords(section->rows[static_cast<std::size_t>(row)]->side));
    const Ledger& ledger = canvas.document().derived().ledger();
    const int line = firstLineOf(ledger, canvas.sectionIndex(), row);
    if (line < 0)
        return Canvas::tr("%1, not knitted in this version").arg(label);
    return Canvas::tr("%1, %2 sts before, %3 after")
        .arg(label)
        .arg(ledger.before[static_cast<std::size_t>(line)].count())
        .arg(ledger.before[static_cast<std::size_t>(line) + 1].count());
}

AccessibleChart::AccessibleChart(Canvas* canvas) : QAccessibleWidget(canvas, QAccessible::Table) {}

AccessibleChart::~AccessibleChart()
{
    forgetCells();
}

void AccessibleChart::install()
{
    static const bool once = [] {
        QAccessible::installFactory([](const QString&, QObject* object) -> QAccessibleInterface* {
            auto* canvas = qobject_cast<Canvas*>(object);
            return canvas ? new AccessibleChart(canvas) : nullptr;
        });
        return true;
    }();
    static_cast<void>(once);
}

void AccessibleChart::cursorMoved(Canvas& canvas)
{
    if (!QAccessible::isActive() || !canvas.hasFocus())
        return;
    const Section* section = sectionOf(canvas);
    if (!section || section->rows.empty())
        return;
    QAccessibleEvent event(&canvas, QAccessible::Focus);
    event.setChild(canvas.cursor().row * section->frame.columns + canvas.cursor().column - 1);
    QAccessible::updateAccessibility(&event);
}

void AccessibleChart::contentChanged(Canvas& canvas)
{
    const Section* section = QAccessible::isActive() ? sectionOf(canvas) : nullptr;
    if (!section || section->rows.empty())
        return;
    QAccessibleEvent event(&canvas, QAccessible::NameChanged);
    event.setChild(canvas.cursor().row * section->frame.columns + canvas.cursor().column - 1);
    QAccessible::updateAccessibility(&event);
}

void AccessibleChart::reshaped(Canvas& canvas)
{
    if (!QAccessible::isActive())
        return;
    QAccessibleTableModelChangeEvent event(&canvas, QAccessibleTableModelChangeEvent::ModelReset);
    QAccessible::updateAccessibility(&event); // which comes to modelChange() below
}

void AccessibleChart::modelChange(QAccessibleTableModelChangeEvent*)
{
    forgetCells();
}

void AccessibleChart::forgetCells()
{
    const auto cells = std::exchange(m_cells, {});
    for (const QAccessible::Id cell : cells)
        QAccessible::deleteAccessibleInterface(cell);
}

Canvas& AccessibleChart::canvas() const
{
    return *static_cast<Canvas*>(widget());
}

void* AccessibleChart::interface_cast(QAccessible::InterfaceType type)
{
    if (type == QAccessible::TableInterface)
        return static_cast<QAccessibleTableInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
}

int AccessibleChart::rowCount() const
{
    const Section* section = widget() ? sectionOf(canvas()) : nullptr;
    return section ? static_cast<int>(section->rows.size()) : 0;
}

int AccessibleChart::columnCount() const
{
    const Section* section = widget() ? sectionOf(canvas()) : nullptr;
    return section ? section->frame.columns : 0;
}

int AccessibleChart::childCount() const
{
    return rowCount() * columnCount();
}

QAccessibleInterface* AccessibleChart::child(int index) const
{
    const int columns = columnCount();
    if (index < 0 || index >= childCount())
        return nullptr;
    // The index of a cell is another cell once the chart is wider, so cells don't outlive reshaped().
    if (const auto made = m_cells.constFind(index); made != m_cells.constEnd())
        if (QAccessibleInterface* cell = QAccessible::accessibleInterface(*made)) {
            const auto* place = cell->tableCellInterface();
            if (place->rowIndex() == index / columns && place->columnIndex() == index % columns)
                return cell;
            QAccessible::deleteAccessibleInterface(*made);
        }
    auto* cell = new AccessibleStitch(&canvas(), At{index / columns, index % columns + 1});
    m_cells[index] = QAccessible::registerAccessibleInterface(cell);
    return cell;
}

int AccessibleChart::indexOfChild(const QAccessibleInterface* child) const
{
    auto* cell = child ? const_cast<QAccessibleInterface*>(child)->tableCellInterface() : nullptr;
    return cell && cell->table() == this ? cell->rowIndex() * columnCount() + cell->columnIndex() : -1;
}

QAccessibleInterface* AccessibleChart::childAt(int x, int y) const
{
    const auto at = canvas().cellAtPoint(canvas().viewport()->mapFromGlobal(QPoint(x, y)));
    return at ? cellAt(at->row, at->column - 1) : nullptr;
}

QAccessibleInterface* AccessibleChart::focusChild() const
{
    const At cursor = canvas().cursor();
    return canvas().hasFocus() ? cellAt(cursor.row, cursor.column - 1) : nullptr;
}

QAccessibleInterface* AccessibleChart::cellAt(int row, int column) const
{
    return row < 0 || row >= rowCount() || column < 0 || column >= columnCount()
               ? nullptr
               : child(row * columnCount() + column);
}

int AccessibleChart::selectedCellCount() const
{
    const auto area = canvas().selection();
    return area ? (area->lastRow - area->firstRow + 1) * (area->lastColumn - area->firstColumn + 1) : 0;
}

QList<QAccessibleInterface*> AccessibleChart::selectedCells() const
{
    QList<QAccessibleInterface*> cells;
    constexpr int most = 10'000; // a screen reader doesn't read more, and each one is made for it
    if (const auto area = canvas().selection())
        for (int row = area->firstRow; row <= area->lastRow; ++row)
            for (int column = area->firstColumn; column <= area->lastColumn && cells.size() < most; ++column)
                cells << cellAt(row, column - 1);
    return cells;
}

QString AccessibleChart::columnDescription(int column) const
{
    return Canvas::tr("Stitch %1").arg(column + 1);
}

QString AccessibleChart::rowDescription(int row) const
{
    return rowInWords(canvas(), row);
}

bool AccessibleChart::isRowSelected(int row) const
{
    const auto area = canvas().selection();
    return area && area->firstRow <= row && row <= area->lastRow && area->firstColumn == 1 &&
           area->lastColumn == columnCount();
}

bool AccessibleChart::isColumnSelected(int column) const
{
    const auto area = canvas().selection();
    return area && area->firstColumn <= column + 1 && column + 1 <= area->lastColumn && area->firstRow == 0 &&
           area->lastRow == rowCount() - 1;
}

QList<int> AccessibleChart::selectedRows() const
{
    QList<int> rows;
    for (int row = 0; row < rowCount(); ++row)
        if (isRowSelected(row))
            rows << row;
    return rows;
}

QList<int> AccessibleChart::selectedColumns() const
{
    QList<int> columns;
    for (int column = 0; column < columnCount(); ++column)
        if (isColumnSelected(column))
            columns << column;
    return columns;
}

int AccessibleChart::selectedRowCount() const
{
    return static_cast<int>(selectedRows().size());
}

int AccessibleChart::selectedColumnCount() const
{
    return static_cast<int>(selectedColumns().size());
}

bool AccessibleChart::selectRow(int row)
{
    if (row < 0 || row >= rowCount())
        return false;
    canvas().select(Area{row, row, 1, columnCount()});
    return true;
}

bool AccessibleChart::selectColumn(int column)
{
    if (column < 0 || column >= columnCount())
        return false;
    canvas().select(Area{0, rowCount() - 1, column + 1, column + 1});
    return true;
}

bool AccessibleChart::unselectRow(int row)
{
    if (!isRowSelected(row))
        return false;
    canvas().select(std::nullopt);
    return true;
}

bool AccessibleChart::unselectColumn(int column)
{
    if (!isColumnSelected(column))
        return false;
    canvas().select(std::nullopt);
    return true;
}

} // namespace shawlwright::app
