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
    // `rows`: those selected, in words; empty: none are, and the section's are meant.
    StripesDialog(const QString& rows, const std::vector<Yarn>& yarns, const std::vector<Stripe>& now,
                  QWidget* parent = nullptr);

    bool wholeSection() const;
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
    void follow();

    std::vector<Yarn> m_yarns;
    QComboBox* m_which;
    QVBoxLayout* m_list;
    std::vector<Line> m_lines;
};

} // namespace shawlwright::app
