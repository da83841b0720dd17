// The sheet of keys, made from the table of actions.
#pragma once

#include <QDialog>

namespace shawlwright::app {

class ShortcutSheet : public QDialog {
    Q_OBJECT
public:
    explicit ShortcutSheet(QWidget* parent = nullptr);
};

} // namespace shawlwright::app
