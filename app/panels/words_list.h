// The rows in words as a list: its lines, the row at the cursor and the phrase that is lit, and how they are drawn.
#pragma once

#include "app/document/text.h"
#include "app/panels/kept_heights.h"
#include "app/panels/kept_list.h"
#include "core/wording/writer/gather.h"

#include <QRectF>
#include <QStyledItemDelegate>

class QListView;

namespace shawlwright::app {

class WordsModel : public KeptList<WrittenLine> {
public:
    using KeptList<WrittenLine>::KeptList;

    QVariant data(const QModelIndex& index, int role) const override
    {
        if (!index.isValid())
            return {};
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
            return toQt(toText(item(index.row())));
        return {};
    }
    bool marked(int at) const { return at == m_marked; }
    int markedItem() const { return m_marked; }
    // Letters [first, last) of an item's text; none where first is -1.
    struct Lit {
        int item = -1, first = -1, last = -1;
        bool operator==(const Lit&) const = default;
    };
    Lit lit() const { return m_lit; }
    void light(Lit lit) { m_lit = lit; }
    void mark(int row) { m_marked = row < 0 ? -1 : lineTelling(items(), row); } // after each setItems()

private:
    int m_marked = -1;
    Lit m_lit;
};

class WordsDelegate : public QStyledItemDelegate {
public:
    WordsDelegate(WordsModel& model, QListView& view);

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    // The letter of the item's text that a point of the view is over; -1: none.
    int letterOf(const QRect& rect, const QFont& font, const WrittenLine& row, QPointF point) const;

private:
    struct Place {
        QRectF label, words;
    };

    Place placeOf(const QRect& rect, const QFont& font, const WrittenLine& row) const;

    int drawn(QPainter* painter, const QRect& rect, const QFont& font, const WrittenLine& row,
              WordsModel::Lit lit) const;

    WordsModel& m_model;
    QListView& m_view;
    mutable KeptHeights m_heights;
};

} // namespace shawlwright::app
