// A wedge of short rows: where it stands, how it turns, how far it goes; with what comes of it, as one asks.
//
// Errors:  what doesn't fit is said in place of the preview, and the dialog stays open.
#pragma once

#include "app/panels/form_dialog.h"
#include "app/panels/short_row_fields.h"
#include "core/derived/short_row_wedge.h"

#include <functional>

class QCheckBox;
class QComboBox;
class QLabel;
class QSpinBox;

namespace shawlwright::app {

class WedgeDialog : public FormDialog {
    Q_OBJECT
public:
    // `places`: where it may begin, in words, the first one as proposed. preview() is asked with the place.
    using Preview = std::function<ShapingPreview(int place, const WedgeWishes&)>;
    WedgeDialog(const QStringList& places, const PatternHead& head, const WedgeWishes& first, Preview preview,
                QWidget* parent = nullptr);

    int place() const;
    WedgeWishes wishes() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void follow();

    std::vector<Yarn> m_yarns;
    std::vector<Marker> m_markers;
    Preview m_preview;
    QComboBox* m_place;
    QComboBox* m_at;
    QComboBox* m_marker;
    QComboBox* m_growing;
    QSpinBox* m_step;
    QSpinBox* m_turns;
    QSpinBox* m_left;
    std::optional<HowFarFields> m_far;
    std::optional<TurnFields> m_turning;
    QComboBox* m_other;
    QCheckBox* m_closing;
    bool m_closes = true; // as it was chosen, at an edge
    QLabel* m_words;
};

} // namespace shawlwright::app
