// Everything about one row but its cells: side, yarn, how it starts and finishes, the count to print, label,
// note, words.
//
// Shape:   row() is the row as asked, its id and cells untouched; the caller makes one edit of it.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/pattern/pattern.h"

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace shawlwright::app {

class QuantityEdit;

class RowDialog : public FormDialog {
    Q_OBJECT
public:
    // `place` is the row in words: "Row 7 of Right wing".
    RowDialog(const Row& row, const PatternHead& head, const QString& place, QWidget* parent = nullptr);

    Row row() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void followChoices();

    Row m_row;
    const std::vector<Yarn> m_yarns;
    QComboBox* m_side;
    QComboBox* m_yarn;
    QCheckBox* m_joins;
    QComboBox* m_start;
    QuantityEdit* m_slip;
    QComboBox* m_finish;
    QComboBox* m_method;
    QCheckBox* m_breaks;
    QCheckBox* m_states;
    QuantityEdit* m_stated;
    QLineEdit* m_label;
    QLineEdit* m_note;
    QLineEdit* m_words;
};

QStringList turnMethodNames(); // in the order of TurnMethod
QStringList sizeNames(const PatternHead& head);

} // namespace shawlwright::app
