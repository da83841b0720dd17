// A field at the cursor's cell: stitches are typed, Return places them and goes on, Esc ends it.
#pragma once

#include <QLineEdit>

namespace shawlwright::app {

class CellEntry : public QLineEdit {
    Q_OBJECT
public:
    explicit CellEntry(QWidget* over);
    void showRefused(bool refused); // by its edge: why is told in the status bar
    QSize sizeHint() const override; // as wide as what is typed

Q_SIGNALS:
    void typed(const QString& text); // empty: on to the next row
    void left();

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
};

} // namespace shawlwright::app
