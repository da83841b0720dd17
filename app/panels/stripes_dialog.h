// The yarns of rows as stripes that repeat: so many rows of one yarn, so many of the next.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/derived/striped_rows.h"

class QComboBox;
class QPushButton;
class QSpinBox;

namespace shawlwright::app {

class StripesDialog : public FormDialog {
    Q_OBJECT
public:
    // Rows that stripes can be laid over, in words, and those they have now.
    struct Rows {
        QString words;
        std::vector<Stripe> stripes;
    };
    StripesDialog(std::vector<Rows> choices, const std::vector<Yarn>& yarns, QWidget* parent = nullptr);

    int chosen() const; // of the choices
    std::vector<Stripe> stripes() const;

private:
    struct Line {
        QWidget* whole;
        QSpinBox* rows;
        QComboBox* yarn;
        QPushButton* remove;
    };
    void addStripe(const Stripe& stripe);
    void removeStripe(QWidget* line);
    void showStripes(); // of the chosen rows, in place of those in the fields
    void follow();

    std::vector<Rows> m_choices;
    std::vector<Yarn> m_yarns;
    QComboBox* m_which;
    QVBoxLayout* m_list;
    std::vector<Line> m_lines;
};

} // namespace shawlwright::app
