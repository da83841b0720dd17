// A line of text that ends in three dots where it has no room; all of it is then in its tool tip. What is said to
// somebody at once stands whole above the line meanwhile.
#pragma once

#include <QLabel>
#include <QPointer>

namespace shawlwright::app {

class ElidedLabel : public QLabel {
public:
    using QLabel::QLabel;
    QSize minimumSizeHint() const override;
    void showWords(const QString& words);
    void say(const QString& words);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString elided() const;

    QPointer<QLabel> m_whole; // of what is said, a child of the window
};

} // namespace shawlwright::app
