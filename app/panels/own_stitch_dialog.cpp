#include "app/panels/own_stitch_dialog.h"

#include "app/document/text.h"
#include "app/panels/look.h"
#include "app/panels/symbol_drawing.h"
#include "app/panels/symbol_picture.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QSpinBox>
#include <QVBoxLayout>

namespace shawlwright::app {

// The symbol as it will stand in the chart: large, or at the size of a chart on light paper and on dark.
class OwnStitchDialog::Preview : public QWidget {
public:
    Preview(const OwnStitchDialog& dialog, bool large, QWidget* parent) : QWidget(parent), m_dialog(dialog), m_large(large)
    {
        setAccessibleName(large ? OwnStitchDialog::tr("The symbol of the stitch")
                                : OwnStitchDialog::tr("The symbol at the size of a chart, on light paper and on dark"));
        setFixedSize(large ? 176 : 240, large ? 92 : 32);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Stitch stitch = m_dialog.stitch();
        const int columns = stitch.width();
        if (m_large) {
            const double cell = std::min(84.0, (width() - 8.0) / columns);
            return drawCells(painter, {(width() - cell * columns) / 2, 4, cell * columns, cell}, stitch, themeOf(*this));
        }
        const double cell = std::min(24.0, (width() / 2 - 24.0) / columns), paper = cell * columns + 16;
        double left = 0;
        for (const Theme& theme : {lightTheme(), darkTheme()}) {
            painter.fillRect(QRectF(left, 0, paper, 32), theme.paper);
            drawCells(painter, {left + 8, 4, cell * columns, cell}, stitch, theme);
            left += paper + 8;
        }
    }

private:
    static void drawCells(QPainter& painter, const QRectF& box, const Stitch& stitch, const Theme& theme)
    {
        painter.fillRect(box, theme.paper);
        painter.setPen(QPen(theme.tenthLine, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box);
        painter.setPen(QPen(theme.line, 1));
        for (int i = 1; i < stitch.width(); ++i) {
            const double x = box.left() + box.width() * i / stitch.width();
            painter.drawLine(QPointF(x, box.top() + 1), QPointF(x, box.bottom() - 1));
        }
        drawSymbol(painter, box, stitch, theme);
    }

    const OwnStitchDialog& m_dialog;
    const bool m_large;
};

OwnStitchDialog::OwnStitchDialog(const Catalogue& catalogue, StitchId id, QWidget* parent)
    : FormDialog(tr("Stitch of your own"), tr("Keep"), parent), m_catalogue(catalogue)
{
    const Stitch& known = catalogue.stitch(id);
    m_isNew = known.id != id || id.value < firstOwnStitch;
    if (m_isNew) {
        m_start.id = id;
        m_start.takesUp = 3;
        m_start.leaves = 1;
        m_start.lean = Lean::Centred;
        m_start.source = "the designer's own";
    } else {
        m_start = known;
    }

    auto* columns = new QHBoxLayout;
    columns->setSpacing(24);
    body()->addLayout(columns);
    auto* left = new QVBoxLayout;
    columns->addLayout(left, 1);
    auto* form = addForm(left);
    m_name = new QLineEdit(toQt(m_start.name), this);
    m_name->setObjectName(QStringLiteral("name"));
    m_name->setPlaceholderText(tr("five stitches gathered into three"));
    form->addRow(tr("&Name"), m_name);
    m_onRS = new QLineEdit(toQt(m_start.onRS), this);
    m_onRS->setObjectName(QStringLiteral("onRS"));
    m_onRS->setMaxLength(24);
    m_onRS->setPlaceholderText(tr("gather3"));
    form->addRow(tr("Abbreviation on &RS"), m_onRS);
    m_onWS = new QLineEdit(toQt(m_start.sameOnBothSides ? std::string() : m_start.onWS), this);
    m_onWS->setMaxLength(24);
    m_onWS->setPlaceholderText(tr("the same on both sides"));
    form->addRow(tr("Abbreviation on &WS"), m_onWS);
    const auto loops = [this](int value) {
        auto* box = new QSpinBox(this);
        box->setRange(0, mostLoopsPerStitch);
        box->setValue(value);
        return box;
    };
    m_takesUp = loops(m_start.takesUp);
    m_takesUp->setObjectName(QStringLiteral("takesUp"));
    form->addRow(tr("&Takes up"), m_takesUp);
    m_leaves = loops(m_start.leaves);
    m_leaves->setObjectName(QStringLiteral("leaves"));
    form->addRow(tr("&Leaves"), m_leaves);
    m_lean = new QComboBox(this);
    m_lean->setObjectName(QStringLiteral("lean"));
    m_lean->addItems({tr("not at all"), tr("to the right"), tr("to the left"), tr("centred")});
    m_lean->setCurrentIndex(static_cast<int>(m_start.lean));
    form->addRow(tr("L&eans"), m_lean);
    m_mirror = new QComboBox(this);
    m_mirror->setObjectName(QStringLiteral("mirror"));
    m_mirror->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_mirror->setToolTip(tr("What stands in its place where stitches are mirrored or painted on both sides of a middle"));
    form->addRow(tr("Its m&irror image"), m_mirror);
    m_face = new QComboBox(this);
    m_face->addItems({tr("knit on the right side"), tr("purl on the right side")});
    m_face->setCurrentIndex(static_cast<int>(m_start.face));
    form->addRow(tr("&Shows"), m_face);
    m_symbol = new QComboBox(this);
    m_symbol->setObjectName(QStringLiteral("symbol"));
    m_symbol->addItems({tr("made from the stitch"), tr("drawn by you")});
    m_symbol->setCurrentIndex(chart::readStrokes(m_start.strokes).ok() ? 1 : 0);
    form->addRow(tr("S&ymbol"), m_symbol);
    m_inChart = new Preview(*this, false, this);
    form->addRow(tr("In the chart"), m_inChart);
    left->addStretch();

    auto* right = new QVBoxLayout;
    columns->addLayout(right);
    m_drawing = new SymbolDrawing(m_start, this);
    right->addWidget(m_drawing);
    m_preview = new Preview(*this, true, this);
    right->addWidget(m_preview);
    right->addStretch();

    auto* how = addForm();
    const auto text = [this](const std::string& words, const QString& hint) {
        auto* edit = new QPlainTextEdit(toQt(words), this);
        edit->setTabChangesFocus(true);
        edit->setPlaceholderText(hint);
        edit->setFixedHeight(58);
        return edit;
    };
    m_howToRS = text(m_start.howToRS, tr("a sentence for the key: how it is worked on the right side"));
    how->addRow(tr("&How to, RS"), m_howToRS);
    m_howToWS = text(m_start.howToWS, tr("only where it differs on the wrong side"));
    how->addRow(tr("How t&o, WS"), m_howToWS);
    lineUp({form, how});
    setMinimumWidth(620);

    for (QSpinBox* box : {m_takesUp, m_leaves})
        connect(box, &QSpinBox::valueChanged, this, [this] {
            fillMirrors();
            followSymbol();
        });
    connect(m_lean, &QComboBox::currentIndexChanged, this, &OwnStitchDialog::fillMirrors);
    for (QComboBox* box : {m_lean, m_face, m_symbol})
        connect(box, &QComboBox::currentIndexChanged, this, [this] { followSymbol(); });
    connect(m_drawing, &SymbolDrawing::drawn, this, [this] {
        forgetWrong();
        m_inChart->update();
    });
    fillMirrors();
    followSymbol();
}

// Itself where it doesn't lean; of the others those that take up and leave as many and lean the other way.
void OwnStitchDialog::fillMirrors()
{
    const auto lean = static_cast<Lean>(m_lean->currentIndex());
    const bool leans = lean == Lean::Right || lean == Lean::Left;
    const Lean wanted = lean == Lean::Right ? Lean::Left : lean == Lean::Left ? Lean::Right : lean;
    const QVariant before = m_mirror->count() > 0 ? m_mirror->currentData()
                            : m_isNew             ? QVariant(leans ? QString() : itself())
                            : m_start.mirror == m_start.key ? QVariant(itself())
                                                            : QVariant(toQt(m_start.mirror));
    const bool filled = m_mirror->count() > 0;
    const QSignalBlocker quiet(m_mirror);
    m_mirror->clear();
    if (!leans)
        m_mirror->addItem(tr("itself"), itself());
    m_mirror->addItem(tr("none, it stays as it is"), QString());
    for (const auto* stitches : {&m_catalogue.own(), &m_catalogue.builtIn()})
        for (const Stitch& one : *stitches)
            if (one.id != noStitch && one.id != m_start.id && m_catalogue.known(one.id) && one.lean == wanted &&
                one.takesUp == m_takesUp->value() && one.leaves == m_leaves->value())
                m_mirror->addItem(toQt(one.onRS), toQt(one.key));
    if (m_mirror->findData(before) < 0 && !filled) // of the file, whatever it is
        m_mirror->addItem(before == itself() ? tr("itself") : before.toString(), before);
    m_mirror->setCurrentIndex(std::max(0, m_mirror->findData(before)));
}

bool OwnStitchDialog::drawsOwn() const
{
    return m_symbol->currentIndex() == 1;
}

void OwnStitchDialog::followSymbol()
{
    m_drawing->setStitch(stitch());
    m_drawing->setVisible(drawsOwn());
    m_preview->setVisible(!drawsOwn());
    m_preview->update();
    m_inChart->update();
    forgetWrong();
}

std::string OwnStitchDialog::keyFrom(const QString& abbreviation) const
{
    std::string key;
    for (const char letter : fromQt(abbreviation.toLower())) {
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
        if (plain)
            key += letter;
        else if (!key.empty() && key.back() != '_')
            key += '_';
    }
    if (key.empty() || (key[0] >= '0' && key[0] <= '9'))
        key = "own_" + key;
    std::string free = key;
    for (int number = 2; m_catalogue.find(free); ++number)
        free = key + "_" + std::to_string(number);
    return free;
}

Stitch OwnStitchDialog::stitch() const
{
    Stitch stitch = m_start;
    stitch.name = fromQt(m_name->text().trimmed());
    stitch.onRS = fromQt(m_onRS->text().trimmed());
    stitch.onWS = fromQt(m_onWS->text().trimmed());
    stitch.sameOnBothSides = stitch.onWS.empty();
    if (stitch.sameOnBothSides)
        stitch.onWS = stitch.onRS;
    const bool shaped = stitch.takesUp != m_takesUp->value() || stitch.leaves != m_leaves->value() ||
                        stitch.lean != static_cast<Lean>(m_lean->currentIndex()) ||
                        stitch.face != static_cast<Face>(m_face->currentIndex());
    stitch.takesUp = m_takesUp->value();
    stitch.leaves = m_leaves->value();
    stitch.lean = static_cast<Lean>(m_lean->currentIndex());
    stitch.face = static_cast<Face>(m_face->currentIndex());
    if (m_isNew || shaped) {
        stitch.heads.clear();
        stitch.columns = 0;
        stitch.family = stitch.leaves < stitch.takesUp   ? Family::Decrease
                        : stitch.leaves > stitch.takesUp ? Family::Increase
                                                         : Family::Basic;
    }
    stitch.strokes = drawsOwn() ? m_drawing->strokes() : std::string();
    if (m_isNew)
        stitch.key = keyFrom(m_onRS->text().trimmed());
    const QString mirror = m_mirror->currentData().toString();
    stitch.mirror = mirror == itself() ? stitch.key : fromQt(mirror);
    stitch.howToRS = fromQt(m_howToRS->toPlainText().trimmed());
    stitch.howToWS = fromQt(m_howToWS->toPlainText().trimmed());
    return stitch;
}

std::optional<QString> OwnStitchDialog::whatWrong() const
{
    const Stitch made = stitch();
    if (made.name.empty())
        return tr("The stitch has no name. Say in words what it is.");
    if (made.onRS.empty())
        return tr("The stitch has no abbreviation. Give it the one that stands in the written rows.");
    for (const Side side : {Side::RS, Side::WS}) {
        const auto other = m_catalogue.worked(side == Side::RS ? made.onRS : made.onWS, side);
        if (other && *other != made.id)
            return tr("%1 is already \"%2\" on the %3. Give your stitch another abbreviation.")
                .arg(toQt(side == Side::RS ? made.onRS : made.onWS), toQt(m_catalogue.stitch(*other).name),
                     side == Side::RS ? tr("right side") : tr("wrong side"));
    }
    if (drawsOwn() && made.strokes.empty())
        return tr("Nothing is drawn yet. Draw a stroke, or let the symbol be made from the stitch.");
    if (const QString outside = m_drawing->whatLiesOutside(); drawsOwn() && !outside.isEmpty())
        return outside;
    if (const auto whole = checked(made); !whole.ok())
        return toQt(toText(whole.fault()));
    return {};
}

} // namespace shawlwright::app
