#include "app/panels/words_list.h"

#include "app/panels/look.h"
#include "app/panels/wrapped_runs.h"

#include <QListView>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

constexpr int sides = 8; // around the marked row
constexpr int above = 4;

QFont slanted(QFont font)
{
    font.setItalic(true);
    return font;
}

} // namespace

WordsDelegate::WordsDelegate(WordsModel& model, QListView& view)
    : QStyledItemDelegate(&view), m_model(model), m_view(view)
{
}

QSize WordsDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const int width = m_view.viewport()->width();
    const WrittenLine& row = m_model.item(index.row());
    const QString key = toQt(row.label) + QLatin1Char('\n') + toQt(row.text) + toQt(row.count) + toQt(row.note);
    const int height =
        m_heights.of(key, width, option.font, [&] { return drawn(nullptr, QRect(0, 0, width, 0), option.font, row, {}); });
    return {std::max(80, width - 1), height};
}

void WordsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme theme = themeOf(*option.widget);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(option.rect).adjusted(8, 0, -8, 0);
    const bool marked = m_model.marked(index.row());
    if (marked || (option.state & QStyle::State_MouseOver)) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(marked ? theme.wash : theme.window);
        painter->drawRoundedRect(box, 5, 5);
    }
    if (option.state & QStyle::State_Selected && m_view.selectionModel()->selectedIndexes().size() > 1) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(theme.accent);
        painter->drawRect(QRectF(box.left(), box.top() + 3, 2, box.height() - 6));
    }
    if (m_view.hasFocus() && index == m_view.currentIndex()) {
        painter->setPen(QPen(theme.accent, 1));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    }
    const WordsModel::Lit lit = m_model.lit();
    drawn(painter, option.rect, option.font, m_model.item(index.row()),
          lit.item == index.row() ? lit : WordsModel::Lit{});
    painter->restore();
}

int WordsDelegate::letterOf(const QRect& rect, const QFont& font, const WrittenLine& row, QPointF point) const
{
    const Place place = placeOf(rect, font, row);
    return letterAt(point, place.words, {{toQt(row.text), font, {}}});
}

// Labels stand in a column of their own; one that is too long for it on a line above, the words indented as ever.
WordsDelegate::Place WordsDelegate::placeOf(const QRect& rect, const QFont& font, const WrittenLine& row) const
{
    const QFontMetricsF metrics(heading(font));
    const double left = rect.left() + 8 + sides, top = rect.top() + above;
    const double width = rect.width() - 2 * (8 + sides);
    if (row.label.empty())
        return {{}, QRectF(left, top, width, 0)};
    const double column = std::max(metrics.horizontalAdvance(QStringLiteral("Row 00 (RS):  ")),
                                   metrics.horizontalAdvance(QStringLiteral("Row 00 (WS):  ")));
    const bool narrow = width <= 2.2 * column;
    const double indent = narrow ? metrics.horizontalAdvance(QStringLiteral("00")) : column;
    const bool above_ = narrow || metrics.horizontalAdvance(toQt(row.label) + QStringLiteral("  ")) > column;
    const std::vector<Run> label{{toQt(row.label), heading(font), {}}};
    const double down = above_ ? wrappedRuns(nullptr, QRectF(0, 0, width, 0), label) : 0;
    return {QRectF(left, top, above_ ? width : column, 0), QRectF(left + indent, top + down, width - indent, 0)};
}

int WordsDelegate::drawn(QPainter* painter, const QRect& rect, const QFont& font, const WrittenLine& row,
                         WordsModel::Lit lit) const
{
    const Theme theme = themeOf(m_view);
    const Place place = placeOf(rect, font, row);
    const QString text = toQt(row.text);
    std::vector<Run> words;
    if (lit.first >= 0 && lit.last <= text.size()) {
        if (lit.first > 0)
            words.push_back({text.left(lit.first), font, theme.ink});
        words.push_back({text.mid(lit.first, lit.last - lit.first), font,
                         theme.dark ? theme.window : theme.paper, theme.accent});
        if (lit.last < text.size())
            words.push_back({text.mid(lit.last), font, theme.ink});
    } else {
        words.push_back({text, font, theme.ink});
    }
    if (!row.count.empty())
        words.push_back({QStringLiteral(" ") + numbersKept(toQt(row.count)), font, theme.softInk});
    if (!row.note.empty())
        words.push_back({QStringLiteral(" ") + toQt(row.note), slanted(font), theme.ink});
    if (!row.label.empty())
        wrappedRuns(painter, place.label, {{toQt(row.label), heading(font), theme.ink}});
    const double y = place.words.top() + wrappedRuns(painter, place.words, words);
    return static_cast<int>(std::ceil(y - rect.top())) + above;
}

} // namespace shawlwright::app
