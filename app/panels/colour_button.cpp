#include "app/panels/colour_button.h"

#include "app/panels/look.h"

#include <QColorDialog>
#include <QPainter>

namespace shawlwright::app {

ColourButton::ColourButton(QColor colour, QWidget* parent) : QPushButton(parent), m_colour(colour)
{
    setAutoDefault(false);
    setObjectName(QStringLiteral("swatch"));
    setFixedSize(44, 28);
    setAccessibleName(tr("Colour of the yarn"));
    setToolTip(tr("Colour of the yarn"));
    connect(this, &QPushButton::clicked, this, [this] {
        const QColor chosen = QColorDialog::getColor(m_colour, window(), tr("Colour of the yarn"));
        if (!chosen.isValid() || chosen == m_colour)
            return;
        setColour(chosen);
        Q_EMIT colourChosen(chosen);
    });
}

void ColourButton::setColour(QColor colour)
{
    m_colour = colour;
    update();
}

void ColourButton::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(*this);
    painter.setPen(QPen(hasFocus() ? theme.accent : theme.tenthLine, hasFocus() ? 2 : 1));
    painter.setBrush(m_colour);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

} // namespace shawlwright::app
