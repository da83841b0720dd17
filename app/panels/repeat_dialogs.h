// How often a stitch repeat or a row repeat is worked.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/pattern/pattern.h"

class QButtonGroup;
class QComboBox;

namespace shawlwright::app {

class QuantityEdit;

class StitchRepeatDialog : public FormDialog {
    Q_OBJECT
public:
    // `rows`: those it goes over, in words.
    StitchRepeatDialog(const Box& box, const QString& rows, const PatternHead& head, bool isNew, QWidget* parent = nullptr);

    Box box() const;
    bool removed() const { return m_removed; } // the repeat is to go; its stitches stay

protected:
    std::optional<QString> whatWrong() const override;

private:
    Box m_box;
    std::vector<Marker> m_markers;
    QComboBox* m_until;
    QuantityEdit* m_times;
    QComboBox* m_marker;
    QuantityEdit* m_leaving;
    bool m_removed = false;
};

class RowRepeatDialog : public FormDialog {
    Q_OBJECT
public:
    RowRepeatDialog(const QString& rows, const Quantity& times, const PatternHead& head, bool isNew,
                    QWidget* parent = nullptr);

    Quantity times() const;
    bool removed() const { return m_removed; }

protected:
    std::optional<QString> whatWrong() const override;

private:
    QuantityEdit* m_times;
    bool m_removed = false;
};

} // namespace shawlwright::app
