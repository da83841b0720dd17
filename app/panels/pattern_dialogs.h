// The dialogs on the whole pattern: its title page, its yarns, its markers; and on one section.
//
// Shape:   each takes what stands there and gives what is wanted; the caller makes one edit of it.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/pattern/pattern.h"

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QPlainTextEdit;

namespace shawlwright::app {

class QuantityEdit;
class YarnRows;

class YarnsDialog : public FormDialog {
    Q_OBJECT
public:
    explicit YarnsDialog(const PatternHead& head, QWidget* parent = nullptr);
    PatternHead head() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    PatternHead m_head;
    YarnRows* m_yarns;
};

class MarkersDialog : public FormDialog {
    Q_OBJECT
public:
    explicit MarkersDialog(const PatternHead& head, QWidget* parent = nullptr);
    std::vector<Marker> markers() const; // same ids, new names

protected:
    std::optional<QString> whatWrong() const override;

private:
    std::vector<Marker> m_markers;
    std::vector<QLineEdit*> m_names;
};

class PatternDialog : public FormDialog {
    Q_OBJECT
public:
    explicit PatternDialog(const PatternHead& head, QWidget* parent = nullptr);
    PatternHead head() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    QStringList listed(const QLineEdit& field) const;

    PatternHead m_head;
    QLineEdit* m_title;
    QLineEdit* m_designer;
    QPlainTextEdit* m_introduction;
    QPlainTextEdit* m_notes;
    QDoubleSpinBox* m_stitches;
    QDoubleSpinBox* m_rows;
    QLineEdit* m_over;
    QDoubleSpinBox* m_needle;
    QuantityEdit* m_castOn;
    QComboBox* m_castOnYarn;
    QLineEdit* m_method;
    QComboBox* m_firstSide;
    QLineEdit* m_versions;
    QLineEdit* m_sizes;
};

class SectionDialog : public FormDialog {
    Q_OBJECT
public:
    SectionDialog(const SectionFrame& frame, const PatternHead& head, QWidget* parent = nullptr);
    SectionFrame frame() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    SectionFrame m_frame;
    QLineEdit* m_title;
    QPlainTextEdit* m_note;
    std::vector<QCheckBox*> m_versions;
};

} // namespace shawlwright::app
