// Arches of short rows: about which places, how wide they begin, how they grow; with what comes of it, as one asks.
//
// Errors:  what doesn't fit is said in place of the preview, and the dialog stays open.
#pragma once

#include "app/panels/form_dialog.h"
#include "app/panels/short_row_fields.h"
#include "core/derived/short_row_arch.h"

#include <functional>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QSpinBox;

namespace shawlwright::app {

struct ArchPlaceChoice {
    ArchPlace place;
    QString words; // "marker A, after 15 stitches"
};

class ArchDialog : public FormDialog {
    Q_OBJECT
public:
    // `begins`: where it may begin, in words; `places`: what it can lie about, the first one chosen. preview() is asked
    // with the index of the beginning.
    using Preview = std::function<ShapingPreview(int begin, const ArchWishes&)>;
    ArchDialog(const QStringList& begins, std::vector<ArchPlaceChoice> places, const std::vector<Yarn>& yarns,
               const ArchWishes& first, Preview preview, QWidget* parent = nullptr);

    int begin() const;
    ArchWishes wishes() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void follow();
    ShapingPreview outcome() const;

    std::vector<ArchPlaceChoice> m_choices;
    std::vector<Yarn> m_yarns;
    Preview m_preview;
    QComboBox* m_begin;
    QListWidget* m_places;
    QLineEdit* m_others;
    QSpinBox* m_width;
    QComboBox* m_widening;
    QSpinBox* m_step;
    QSpinBox* m_rows;
    QSpinBox* m_untilWidth;
    std::optional<HowFarFields> m_far;
    std::optional<TurnFields> m_turns;
    QComboBox* m_other;
    QComboBox* m_yarnTurns;
    QLabel* m_words;
};

} // namespace shawlwright::app
