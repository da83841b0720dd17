#include "app/panels/symbol_drawing.h"

#include "app/panels/form_dialog.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace shawlwright::app {

SymbolDrawing::SymbolDrawing(const Stitch& stitch, QWidget* parent)
    : QWidget(parent), m_field(new StrokeField(this)), m_width(stitch.width())
{
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(8);
    auto* label = softLabel(tr("&Drawing; feet stand on the lower line, heads end at the upper one"), this);
    label->setBuddy(m_field);
    lines->addWidget(label);
    lines->addWidget(m_field, 0, Qt::AlignHCenter);
    m_outside = new QLabel(this);
    m_outside->setObjectName(QStringLiteral("fault"));
    m_outside->setWordWrap(true);
    lines->addWidget(m_outside);
    const auto button = [this](const QString& words, const char* name) {
        auto* one = new QPushButton(words, this);
        one->setObjectName(QString::fromLatin1(name));
        one->setAutoDefault(false);
        return one;
    };
    m_begin = button(tr("Begin with the &made symbol"), "beginWithMade");
    auto* ring = button(tr("Rin&g at the cross"), "ring");
    m_back = button(tr("Ta&ke back"), "takeBack");
    m_clear = button(tr("&Clear"), "clear");
    auto* buttons = new QGridLayout;
    buttons->setSpacing(6);
    buttons->addWidget(m_begin, 0, 0, 1, 3);
    buttons->addWidget(ring, 1, 0);
    buttons->addWidget(m_back, 1, 1);
    buttons->addWidget(m_clear, 1, 2);
    lines->addLayout(buttons);
    lines->addWidget(softLabel(tr("Drag for a stroke; drag on from its end to bend it. Click on a stroke and press Delete to take "
                                  "it away. Or by keys: arrows move the cross, Space sets a point, Return ends the stroke, "
                                  "Backspace takes back."),
                               this));
    connect(m_begin, &QPushButton::clicked, m_field, &StrokeField::beginWithMade);
    connect(ring, &QPushButton::clicked, m_field, &StrokeField::addRing);
    connect(m_back, &QPushButton::clicked, m_field, &StrokeField::takeBack);
    connect(m_clear, &QPushButton::clicked, m_field, &StrokeField::clear);
    connect(m_field, &StrokeField::drawn, this, &SymbolDrawing::follow);
    m_field->setStitch(stitch);
    if (const auto strokes = chart::readStrokes(stitch.strokes); strokes.ok())
        m_field->setStrokes(strokes.value());
    follow();
}

void SymbolDrawing::setStitch(const Stitch& stitch)
{
    m_width = stitch.width();
    m_field->setStitch(stitch);
    follow();
}

std::string SymbolDrawing::strokes() const
{
    return chart::writeStrokes(m_field->strokes());
}

QString SymbolDrawing::whatLiesOutside() const
{
    const int outside = m_field->outside();
    if (outside == 0)
        return {};
    const QString wide = m_width == 1 ? tr("1 column") : tr("%1 columns").arg(m_width);
    return outside == 1 ? tr("1 stroke reaches beyond the stitch, which is %1 wide. Take that stroke away, or let the stitch leave more.")
                              .arg(wide)
                        : tr("%1 strokes reach beyond the stitch, which is %2 wide. Take those strokes away, or let the stitch leave more.")
                              .arg(outside)
                              .arg(wide);
}

void SymbolDrawing::follow()
{
    const QString outside = whatLiesOutside();
    m_outside->setText(outside);
    m_outside->setVisible(!outside.isEmpty());
    m_back->setEnabled(m_field->canTakeBack());
    m_clear->setEnabled(!m_field->strokes().empty());
    Q_EMIT drawn();
}

} // namespace shawlwright::app
