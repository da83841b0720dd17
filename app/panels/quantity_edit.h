// A field for a quantity: one number, or one number per size ("45, 51, 57").
//
// Errors:  quantity() gives nothing while the text is no quantity; whatWrong() then says why, with the
// numbers wanted.
#pragma once

#include "core/pattern/quantity.h"

#include <QLineEdit>
#include <QStringList>

#include <optional>

namespace shawlwright::app {

QString quantityText(const Quantity& quantity);

class QuantityEdit : public QLineEdit {
    Q_OBJECT
public:
    QuantityEdit(const QStringList& sizes, int least, int most, QWidget* parent = nullptr);

    void setSizes(const QStringList& sizes);
    void setQuantity(const Quantity& quantity);
    std::optional<Quantity> quantity() const;
    std::optional<QString> whatWrong(const QString& what) const; // what: "Cast on"

private:
    QStringList m_sizes;
    int m_least;
    int m_most;
};

} // namespace shawlwright::app
