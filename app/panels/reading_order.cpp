#include "app/panels/reading_order.h"

#include <QFormLayout>
#include <QGridLayout>
#include <QLayout>
#include <QSplitter>
#include <QTabWidget>
#include <QWidget>

#include <utility>

namespace shawlwright::app {

namespace {

void addFrom(QLayout& layout, QList<QWidget*>& order);

void addFrom(QWidget& widget, QList<QWidget*>& order)
{
    if ((widget.focusPolicy() & Qt::TabFocus) != 0 && !widget.focusProxy()) {
        order << &widget;
    } else if (auto* tabs = qobject_cast<QTabWidget*>(&widget)) {
        for (int page = 0; page < tabs->count(); ++page)
            addFrom(*tabs->widget(page), order);
    } else if (auto* split = qobject_cast<QSplitter*>(&widget)) {
        for (int part = 0; part < split->count(); ++part)
            addFrom(*split->widget(part), order);
    } else if (widget.layout()) {
        addFrom(*widget.layout(), order);
    }
}

void addFrom(QLayoutItem* item, QList<QWidget*>& order)
{
    if (item && item->widget())
        addFrom(*item->widget(), order);
    else if (item && item->layout())
        addFrom(*item->layout(), order);
}

// A form and a grid keep their items in the order in which they were made.
void addFrom(QLayout& layout, QList<QWidget*>& order)
{
    if (const auto* form = qobject_cast<QFormLayout*>(&layout)) {
        for (int row = 0; row < form->rowCount(); ++row)
            for (const auto role : {QFormLayout::SpanningRole, QFormLayout::LabelRole, QFormLayout::FieldRole})
                if (QLayoutItem* item = form->itemAt(row, role);
                    item && (role != QFormLayout::FieldRole || item != form->itemAt(row, QFormLayout::SpanningRole)))
                    addFrom(item, order);
    } else if (const auto* grid = qobject_cast<QGridLayout*>(&layout)) {
        const QLayoutItem* before = nullptr;
        for (int row = 0; row < grid->rowCount(); ++row)
            for (int column = 0; column < grid->columnCount(); ++column)
                if (QLayoutItem* item = grid->itemAtPosition(row, column); item != std::exchange(before, item))
                    addFrom(item, order);
    } else {
        for (int i = 0; i < layout.count(); ++i)
            addFrom(layout.itemAt(i), order);
    }
}

} // namespace

QList<QWidget*> inReadingOrder(const QWidget& form)
{
    QList<QWidget*> order;
    if (form.layout())
        addFrom(*form.layout(), order);
    return order;
}

} // namespace shawlwright::app
