// Asks what a new shawl starts from: title, yarns, cast on, gauge, and the first section's empty grid.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/edits/sections.h"

class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;

namespace shawlwright::app {

class YarnRows;

class NewShawlDialog : public FormDialog {
    Q_OBJECT
public:
    explicit NewShawlDialog(QWidget* parent = nullptr);

    NewPattern wishes() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void fillCastOnYarns();

    QLineEdit* m_title;
    QLineEdit* m_designer;
    YarnRows* m_yarns;
    QSpinBox* m_castOn;
    QComboBox* m_castOnYarn;
    QLineEdit* m_method;
    QComboBox* m_firstSide;
    QDoubleSpinBox* m_stitches;
    QDoubleSpinBox* m_rowsGauge;
    QLineEdit* m_over;
    QDoubleSpinBox* m_needle;
    QLineEdit* m_section;
    QSpinBox* m_rows;
    QSpinBox* m_columns;
};

} // namespace shawlwright::app
