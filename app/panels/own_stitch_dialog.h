// A stitch of one's own: what it takes up and leaves, how it leans, what it is called; its symbol draws itself from these or
// is drawn by the designer.
//
// Shape:   stitch() has the id it was given; its key is made from the abbreviation when it is new.
// Errors:  whatWrong(): an abbreviation that another stitch has, nonsense that checked() refuses, a drawing without strokes or one
//          that reaches over the next stitch.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/stitches/catalogue.h"

class QComboBox;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;

namespace shawlwright::app {

class SymbolDrawing;

class OwnStitchDialog : public FormDialog {
    Q_OBJECT
public:
    // An own stitch of the catalogue is changed; any other id makes a new one.
    OwnStitchDialog(const Catalogue& catalogue, StitchId id, QWidget* parent = nullptr);

    Stitch stitch() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    class Preview;

    bool drawsOwn() const;
    void followSymbol();
    void fillMirrors();
    static QString itself() { return QStringLiteral("*"); } // no key of a stitch
    std::string keyFrom(const QString& abbreviation) const;

    const Catalogue m_catalogue;
    Stitch m_start;
    bool m_isNew;
    QLineEdit* m_onRS;
    QLineEdit* m_onWS;
    QLineEdit* m_name;
    QSpinBox* m_takesUp;
    QSpinBox* m_leaves;
    QComboBox* m_lean;
    QComboBox* m_mirror;
    QComboBox* m_face;
    QPlainTextEdit* m_howToRS;
    QPlainTextEdit* m_howToWS;
    QComboBox* m_symbol;
    SymbolDrawing* m_drawing;
    Preview* m_preview;
    Preview* m_inChart;
};

} // namespace shawlwright::app
