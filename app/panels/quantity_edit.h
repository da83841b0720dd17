// A field for a quantity: one number, or one number per size ("45, 51, 57"). Its arrows, the Up and Down keys and the wheel
// make every number one more or one less.
//
// Errors:  quantity() gives nothing while the text is no quantity; whatWrong() then says why, with the
// numbers wanted.
#pragma once

#include "core/pattern/quantity.h"

#include <QLineEdit>
#include <QStringList>

#include <optional>

class QLabel;
class QToolButton;

namespace shawlwright::app {

QString quantityText(const Quantity& quantity);

class QuantityEdit : public QLineEdit {
    Q_OBJECT
public:
    QuantityEdit(const QStringList& sizes, int least, int most, QWidget* parent = nullptr);

    void setSizes(const QStringList& sizes);
    QLabel* sizesHint(); // a line for below it, that says how sizes are told apart; hidden where there is one size
    void setQuantity(const Quantity& quantity);
    std::optional<Quantity> quantity() const;
    std::optional<QString> whatWrong(const QString& what) const; // what: "Cast on"

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void step(int by);

    QToolButton* m_up;
    QToolButton* m_down;
    QLabel* m_hint = nullptr;
    QStringList m_sizes;
    int m_least;
    int m_most;
};

} // namespace shawlwright::app
