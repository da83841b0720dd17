// Which rows are filled with plain stitches, and how.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/derived/plain_rows.h"

class QComboBox;

namespace shawlwright::app {

class PlainRowsDialog : public FormDialog {
    Q_OBJECT
public:
    // `rows` are those of the selection or the cursor, in words; `emptyWrongSide` how many WS rows of the
    // section have nothing painted on them.
    PlainRowsDialog(const QString& rows, int emptyWrongSide, QWidget* parent = nullptr);

    bool allEmptyWrongSide() const; // of the section, in place of the rows meant
    PlainStitch how() const;

private:
    QComboBox* m_which;
    QComboBox* m_how;
};

// In the order of PlainStitch.
QStringList plainStitchNames();

} // namespace shawlwright::app
