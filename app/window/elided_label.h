// A line of text that ends in three dots where it has no room; all of it is then in its tool tip. What is said to
// somebody at once stands whole above the line meanwhile, in its stead, until a dialog opens or something else is said.
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
    void beBrief(); // what was said is only in the line from now on

protected:
    bool eventFilter(QObject* of, QEvent* event) override;
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString elided() const;
    QRect roomAbove() const;

    QPointer<QLabel> m_whole; // of what is said, a child of the window
};

} // namespace shawlwright::app
