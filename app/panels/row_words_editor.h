// Typing over the words of one row, where they stand in the list; what can't be read is said below them.
//
// Shape:   Return takes the words, Esc leaves them as they were, Shift and Return breaks the line.
#pragma once

#include <QFrame>

class QLabel;
class QPlainTextEdit;

namespace shawlwright::app {

class RowWordsEditor : public QFrame {
    Q_OBJECT
public:
    RowWordsEditor(const QString& label, const QString& words, QWidget* parent);

    QString words() const;
    bool unchanged() const { return words() == m_were; }
    // Says why the words were not taken, and marks them from a place of the text (line and column from 1; 0:
    // nowhere).
    void sayWrong(const QString& sentence, int line, int column);
    int heightFor(int width) const;
    QPlainTextEdit& field() { return *m_field; }
    QString wrong() const;

Q_SIGNALS:
    void taken();
    void left();
    void sizeWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QString m_were;
    QPlainTextEdit* m_field;
    QLabel* m_hint;
    QLabel* m_wrong;
};

} // namespace shawlwright::app
