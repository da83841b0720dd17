// A button that shows a yarn's colour and asks for another.
#pragma once

#include <QColor>
#include <QPushButton>

namespace shawlwright::app {

class ColourButton : public QPushButton {
    Q_OBJECT
public:
    explicit ColourButton(QColor colour, QWidget* parent = nullptr);

    QColor colour() const { return m_colour; }
    void setColour(QColor colour);

Q_SIGNALS:
    void colourChosen(const QColor& colour);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QColor m_colour;
};

} // namespace shawlwright::app
