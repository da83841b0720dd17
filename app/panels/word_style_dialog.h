// How the words are written: the style sheet of the pattern, with rows of the shawl as they would read.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/wording/style.h"

#include <functional>

class QComboBox;
class QPlainTextEdit;

namespace shawlwright::app {

class WordStyleDialog : public FormDialog {
    Q_OBJECT
public:
    // `example` writes some rows in a style; it is asked anew with every choice.
    WordStyleDialog(const Style& style, bool severalVersions, std::function<QString(const Style&)> example,
                    QWidget* parent = nullptr);

    Style style() const { return m_style; }

private:
    template <typename Choice>
    void addChoice(QFormLayout* form, const QString& label, const char* name, Choice Style::*which,
                   const QStringList& words);
    void write();

    Style m_style;
    std::function<QString(const Style&)> m_write;
    QPlainTextEdit* m_example;
};

} // namespace shawlwright::app
