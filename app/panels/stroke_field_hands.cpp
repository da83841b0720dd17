// What mouse and keys do in the field.
#include "app/panels/stroke_field.h"
#include "app/panels/stroke_grid.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <utility>

namespace shawlwright::app {

void StrokeField::moveCross(int across, int down, bool far)
{
    const int by = far ? gridSteps / 4 : 1;
    m_cross.x = static_cast<double>(std::clamp(stepOf(m_cross.x) + across * by, 0, columns() * gridSteps)) / gridSteps;
    if (down != 0)
        m_cross.y = levelAt(std::clamp(stepOf(m_cross.y) + down * by, 0, gridSteps));
    m_held = -1;
    describe();
    update();
}

void StrokeField::setPoint()
{
    if (!m_open) {
        m_open = chart::Path().move(m_cross);
        m_bend.reset();
        m_held = -1;
    } else if (m_open->points.back() != m_cross) {
        m_open->line(m_cross);
    }
    describe();
    update();
    Q_EMIT drawn();
}

void StrokeField::endStroke()
{
    if (!m_open)
        return;
    const chart::Path stroke = *std::exchange(m_open, std::nullopt);
    if (stroke.points.size() > 1) {
        m_before.push_back(m_strokes);
        m_strokes.push_back(stroke);
    }
    changed();
}

void StrokeField::removeStroke(int stroke)
{
    if (stroke < 0)
        return;
    begin();
    m_strokes.erase(m_strokes.begin() + stroke);
    changed();
}

void StrokeField::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    endStroke();
    m_pressedAt = event->position();
    m_pressed = m_cross = snapped(m_pressedAt);
    m_dragging = false;
    update();
}

void StrokeField::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_pressed)
        return;
    m_cross = snapped(event->position());
    m_dragging = m_dragging || m_cross != *m_pressed;
    update();
}

void StrokeField::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || !m_pressed)
        return;
    const chart::Point from = *std::exchange(m_pressed, std::nullopt);
    if (m_dragging && m_cross != from) {
        const bool bends = m_bend && *m_bend == from && !m_strokes.empty();
        begin();
        if (bends)
            m_strokes.back().line(m_cross);
        else
            m_strokes.push_back(chart::Path().move(from).line(m_cross));
        m_bend = m_cross;
    } else if (!m_dragging) {
        m_held = strokeAt(m_pressedAt, 6);
    }
    m_dragging = false;
    changed();
}

bool StrokeField::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Delete) || key->key() == Qt::Key_Backspace)
            event->accept();
    }
    return QWidget::event(event);
}

void StrokeField::keyPressEvent(QKeyEvent* event)
{
    const bool far = event->modifiers().testFlag(Qt::ShiftModifier);
    if (event->matches(QKeySequence::Undo))
        return takeBack();
    if (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
        return QWidget::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Left:
        return moveCross(-1, 0, far);
    case Qt::Key_Right:
        return moveCross(1, 0, far);
    case Qt::Key_Up:
        return moveCross(0, -1, far);
    case Qt::Key_Down:
        return moveCross(0, 1, far);
    case Qt::Key_Space:
        return setPoint();
    case Qt::Key_Return:
    case Qt::Key_Enter: // ends a stroke and never the dialog
        return endStroke();
    case Qt::Key_Backspace:
        return takeBack();
    case Qt::Key_Delete:
        return removeStroke(m_held >= 0 ? m_held : strokeAt(toPixels(m_cross), cell() / gridSteps));
    case Qt::Key_Escape:
        if (!m_open)
            break;
        m_open.reset();
        return changed();
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void StrokeField::focusInEvent(QFocusEvent*)
{
    update();
}

void StrokeField::focusOutEvent(QFocusEvent* event)
{
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        endStroke(); // so that what was set is kept
    update();
}

} // namespace shawlwright::app
