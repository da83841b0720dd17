// What an export is to show, and how large; where it goes is asked afterwards.
#pragma once

#include "app/exports/export_file.h"
#include "app/panels/form_dialog.h"

class QComboBox;
class QDoubleSpinBox;
class QSpinBox;

namespace shawlwright::app {

enum class ExportSubject { Chart, Words, Pattern };

class ExportDialog : public FormDialog {
    Q_OBJECT
public:
    // `options` has the version and size that are shown; `section` is the one shown.
    ExportDialog(ExportSubject subject, const Pattern& pattern, ExportOptions options, SectionId section,
                 QWidget* parent = nullptr);

    ExportKind kind() const;
    QString ending() const; // "svg"
    ExportOptions options() const;

private:
    ExportSubject m_subject;
    ExportOptions m_options;
    SectionId m_section;
    int m_versions; // there are
    QComboBox* m_what = nullptr;
    QComboBox* m_version = nullptr; // where there are several
    QComboBox* m_size = nullptr;    // where there are several; the first entry is all of them
    QComboBox* m_form = nullptr;
    QComboBox* m_rows = nullptr;
    QDoubleSpinBox* m_cell = nullptr;
    QSpinBox* m_dpi = nullptr;
    QComboBox* m_letters = nullptr;
    QComboBox* m_paper = nullptr;
};

} // namespace shawlwright::app
