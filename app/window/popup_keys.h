// While a menu or the list of a chooser is open, letters and digits are for it and never for an action of the window.
#pragma once

#include <QObject>

namespace shawlwright::app {

class PopupKeys : public QObject {
public:
    explicit PopupKeys(QObject* parent = nullptr); // listens to the whole program

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace shawlwright::app
