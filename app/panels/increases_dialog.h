// Rows with increases: where, which stitch, how often, until when; with the counts that come of it, as one asks.
//
// Errors:  what doesn't fit is said in place of the preview, and the dialog stays open.
#pragma once

#include "app/panels/form_dialog.h"
#include "app/panels/shaping_fields.h"
#include "core/derived/increase_plan.h"

#include <functional>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace shawlwright::app {

class IncreasesDialog : public FormDialog {
    Q_OBJECT
public:
    // `begins`: where it may begin, in words; `markers`: those on the needle there; `stitches`: on it. preview() is asked
    // with the index of the beginning.
    using Preview = std::function<ShapingPreview(int begin, const IncreaseWishes&)>;
    IncreasesDialog(const QStringList& begins, const std::vector<Marker>& markers, const std::vector<Yarn>& yarns,
                    int stitches, const IncreaseWishes& first, Preview preview, QWidget* parent = nullptr);

    int begin() const;
    IncreaseWishes wishes() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void follow();
    ShapingPreview outcome() const;

    std::vector<Marker> m_markers;
    std::vector<Yarn> m_yarns;
    Preview m_preview;
    QComboBox* m_begin;
    QComboBox* m_kind;
    QWidget* m_placeFields;
    QCheckBox* m_right;
    QCheckBox* m_left;
    QSpinBox* m_border;
    QSpinBox* m_everyEdge;
    QCheckBox* m_middle;
    QLineEdit* m_spines;
    std::vector<QCheckBox*> m_atMarker;
    QComboBox* m_markerSide;
    QSpinBox* m_beside;
    QSpinBox* m_everyInner;
    QSpinBox* m_spread;
    QLabel* m_spreadLabel;
    QComboBox* m_increase;
    QComboBox* m_lean;
    QComboBox* m_until;
    QSpinBox* m_times;
    QSpinBox* m_stitchesWanted;
    QComboBox* m_stitches;
    QComboBox* m_yarn;
    QLabel* m_words;
};

} // namespace shawlwright::app
