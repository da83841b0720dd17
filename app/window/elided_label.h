// A line of text that ends in three dots where it has no room; all of it is then in its tool tip.
#pragma once

#include <QLabel>

namespace shawlwright::app {

class ElidedLabel : public QLabel {
public:
    using QLabel::QLabel;
    QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString elided() const;
};

} // namespace shawlwright::app
