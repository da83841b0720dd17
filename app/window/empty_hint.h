// Says over a chart without stitches how the first ones come into it; the mouse goes through it.
#pragma once

#include <QLabel>

namespace shawlwright::app {

class EmptyHint : public QLabel {
    Q_OBJECT
public:
    explicit EmptyHint(QWidget* over);

    void setWanted(bool wanted);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void place();
};

} // namespace shawlwright::app
