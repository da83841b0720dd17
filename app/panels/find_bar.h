// A line under the chart to find places of the shawl: typed words, how many there are, on and back.
//
// Shape:   it shows and asks; what is found is the window's to say, by setPlace().
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QToolButton;

namespace shawlwright::app {

class FindBar : public QWidget {
    Q_OBJECT
public:
    explicit FindBar(QWidget* parent = nullptr);

    QLineEdit& field() { return *m_field; }
    QString place() const;           // "3 of 12"
    void setPlace(int at, int of);   // from 1; of 0: nothing found
    void open();                     // the field with all of its words chosen

Q_SIGNALS:
    void typed(const QString& words);
    void nextWanted();
    void previousWanted();
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLineEdit* m_field;
    QLabel* m_place;
    QToolButton* m_previous;
    QToolButton* m_next;
};

} // namespace shawlwright::app
