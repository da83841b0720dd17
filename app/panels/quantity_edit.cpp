#include "app/panels/quantity_edit.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"
#include "core/base/text.h"

#include <QKeyEvent>
#include <QLabel>
#include <QToolButton>
#include <QWheelEvent>

#include <algorithm>

namespace shawlwright::app {

namespace {
constexpr int arrowWidth = 18;
}

QString quantityText(const Quantity& quantity)
{
    QStringList parts;
    for (const int value : quantity.values)
        parts << QString::number(value);
    return parts.join(QStringLiteral(", "));
}

QuantityEdit::QuantityEdit(const QStringList& sizes, int least, int most, QWidget* parent)
    : QLineEdit(parent), m_up(new QToolButton(this)), m_down(new QToolButton(this)), m_least(least), m_most(most)
{
    setSizes(sizes);
    for (auto* arrow : {m_up, m_down}) {
        const bool up = arrow == m_up;
        arrow->setObjectName(up ? QStringLiteral("more") : QStringLiteral("less"));
        arrow->setArrowType(up ? Qt::UpArrow : Qt::DownArrow);
        arrow->setAccessibleName(up ? tr("One more") : tr("One less"));
        arrow->setFocusPolicy(Qt::NoFocus);
        arrow->setCursor(Qt::ArrowCursor);
        arrow->setAutoRepeat(true);
        arrow->setAutoRaise(true);
        connect(arrow, &QToolButton::clicked, this, [this, up] { step(up ? 1 : -1); });
    }
    setTextMargins(0, 0, arrowWidth, 0);
}

// Nothing happens while the text is no quantity, or where a number would leave its range.
void QuantityEdit::step(int by)
{
    auto now = quantity();
    if (!now || isReadOnly())
        return;
    for (int& value : now->values)
        value = std::clamp(value + by, m_least, m_most);
    if (const QString words = quantityText(*now); words != text()) {
        selectAll();
        insert(words); // as if it was typed: Ctrl+Z takes it back
        Q_EMIT textEdited(words);
    }
    selectAll();
}

void QuantityEdit::keyPressEvent(QKeyEvent* event)
{
    if ((event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) && event->modifiers() == Qt::NoModifier)
        return step(event->key() == Qt::Key_Up ? 1 : -1);
    QLineEdit::keyPressEvent(event);
}

void QuantityEdit::wheelEvent(QWheelEvent* event)
{
    if (!hasFocus() || event->angleDelta().y() == 0)
        return event->ignore(); // the dialog scrolls
    step(event->angleDelta().y() > 0 ? 1 : -1);
    event->accept();
}

void QuantityEdit::resizeEvent(QResizeEvent* event)
{
    QLineEdit::resizeEvent(event);
    const int half = (height() - 2) / 2;
    m_up->setGeometry(width() - arrowWidth - 1, 1, arrowWidth, half);
    m_down->setGeometry(width() - arrowWidth - 1, 1 + half, arrowWidth, half);
}

void QuantityEdit::setSizes(const QStringList& sizes)
{
    m_sizes = sizes;
    setToolTip(sizes.size() > 1
                   ? tr("One number for all sizes, or one for each: %1").arg(sizes.join(QStringLiteral(", ")))
                   : tr("A number from %1 to %2").arg(m_least).arg(m_most));
    if (!m_hint)
        return;
    m_hint->setText(tr("%1: one number for all, or one each with commas.").arg(sizes.join(QStringLiteral(", "))));
    m_hint->setVisible(sizes.size() > 1);
}

QLabel* QuantityEdit::sizesHint()
{
    if (!m_hint) {
        m_hint = softLabel({}, parentWidget());
        setSizes(QStringList(m_sizes));
    }
    return m_hint;
}

void QuantityEdit::setQuantity(const Quantity& quantity)
{
    setText(quantityText(quantity));
}

std::optional<Quantity> QuantityEdit::quantity() const
{
    std::vector<int> values;
    QString words = text();
    words.replace(QLatin1Char('('), QLatin1Char(',')).remove(QLatin1Char(')'));
    for (const QString& part : words.split(QLatin1Char(','))) {
        const auto value = readInt(fromQt(part.trimmed()));
        if (!value || *value < m_least || *value > m_most)
            return {};
        values.push_back(*value);
    }
    if (values.size() > 1 && static_cast<qsizetype>(values.size()) != m_sizes.size())
        return {};
    // The same number for every size is one number.
    if (std::all_of(values.begin(), values.end(), [&](int value) { return value == values.front(); }))
        values.resize(1);
    return Quantity(std::move(values));
}

std::optional<QString> QuantityEdit::whatWrong(const QString& what) const
{
    if (quantity())
        return {};
    if (m_sizes.size() > 1)
        return tr("%1: give one number from %2 to %3, or %4 of them with commas, one for each size (%5).")
            .arg(what)
            .arg(m_least)
            .arg(m_most)
            .arg(m_sizes.size())
            .arg(m_sizes.join(QStringLiteral(", ")));
    return tr("%1: give a number from %2 to %3.").arg(what).arg(m_least).arg(m_most);
}

} // namespace shawlwright::app
