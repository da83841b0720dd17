#include "app/panels/quantity_edit.h"

#include "app/document/text.h"
#include "core/base/text.h"

#include <algorithm>

namespace shawlwright::app {

QString quantityText(const Quantity& quantity)
{
    QStringList parts;
    for (const int value : quantity.values)
        parts << QString::number(value);
    return parts.join(QStringLiteral(", "));
}

QuantityEdit::QuantityEdit(const QStringList& sizes, int least, int most, QWidget* parent)
    : QLineEdit(parent), m_least(least), m_most(most)
{
    setSizes(sizes);
}

void QuantityEdit::setSizes(const QStringList& sizes)
{
    m_sizes = sizes;
    setToolTip(sizes.size() > 1
                   ? tr("One number for all sizes, or one for each: %1").arg(sizes.join(QStringLiteral(", ")))
                   : tr("A number from %1 to %2").arg(m_least).arg(m_most));
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
