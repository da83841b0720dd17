// Where the symbol of a stitch is drawn: the field, its buttons, a line of words on how it is done, and what lies outside.
#pragma once

#include "app/panels/stroke_field.h"

class QLabel;
class QPushButton;

namespace shawlwright::app {

class SymbolDrawing : public QWidget {
    Q_OBJECT
public:
    explicit SymbolDrawing(const Stitch& stitch, QWidget* parent = nullptr);

    void setStitch(const Stitch& stitch); // what is drawn stays
    std::string strokes() const;          // as Stitch::strokes; empty: nothing is drawn
    QString whatLiesOutside() const;      // empty: nothing

Q_SIGNALS:
    void drawn();

private:
    void follow();

    StrokeField* m_field;
    QPushButton* m_begin;
    QPushButton* m_back;
    QPushButton* m_clear;
    QLabel* m_outside;
    int m_width;
};

} // namespace shawlwright::app
