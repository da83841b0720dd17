// Asks how often the selected stitches are put down again, and where.
//
// Errors:  while so many don't fit the line at the foot says why, and the dialog stays open.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/edits/times.h"

#include <functional>

class QComboBox;
class QSpinBox;

namespace shawlwright::app {

struct TimesPreview {
    bool fits = false;
    QString words;
};

class TimesDialog : public FormDialog {
    Q_OBJECT
public:
    using Fits = std::function<int(Along)>;
    using Preview = std::function<TimesPreview(Along, int times)>;
    TimesDialog(Fits fits, Preview preview, QWidget* parent);

    Along along() const;
    int times() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void follow();

    Fits m_fits;
    Preview m_preview;
    QComboBox* m_along = nullptr;
    QSpinBox* m_times = nullptr;
    QLabel* m_fit = nullptr;
    QLabel* m_note = nullptr;
    QLabel* m_words = nullptr;
};

} // namespace shawlwright::app
