#include "app/window/empty_hint.h"

#include <QEvent>

#include <algorithm>

namespace shawlwright::app {

EmptyHint::EmptyHint(QWidget* over) : QLabel(over)
{
    setObjectName(QStringLiteral("emptyHint"));
    setText(tr("Nothing is charted yet.\nChoose a stitch on the left and drag over the chart to paint it, "
               "or press Return and type:  k2, yo, k2tog. It goes where the cursor is, and on in the next row when a row is full."));
    setAlignment(Qt::AlignCenter);
    setWordWrap(true);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    over->installEventFilter(this);
    hide();
}

void EmptyHint::setWanted(bool wanted)
{
    if (wanted == !isHidden())
        return;
    setVisible(wanted);
    place();
}

void EmptyHint::place()
{
    if (isHidden())
        return;
    const int wanted = 58 * fontMetrics().averageCharWidth(); // two lines
    const int width = std::clamp(wanted, 120, std::max(120, parentWidget()->width() - 32));
    const int height = heightForWidth(width);
    setGeometry((parentWidget()->width() - width) / 2, (parentWidget()->height() - height) / 2, width, height);
    raise();
}

bool EmptyHint::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == parentWidget() && event->type() == QEvent::Resize)
        place();
    return QLabel::eventFilter(watched, event);
}

} // namespace shawlwright::app
