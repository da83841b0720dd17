#include "app/panels/find_bar.h"

#include "app/panels/form_dialog.h"
#include "app/panels/undo_keys.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

namespace shawlwright::app {

FindBar::FindBar(QWidget* parent)
    : QWidget(parent), m_field(new QLineEdit(this)), m_place(softLabel({}, this)),
      m_previous(new QToolButton(this)), m_next(new QToolButton(this))
{
    setObjectName(QStringLiteral("findBar"));
    setAttribute(Qt::WA_StyledBackground);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(16, 6, 10, 6);
    line->setSpacing(8);
    m_field->setPlaceholderText(tr("row 37, 37 of Border, k2tog, words"));
    m_field->setAccessibleName(tr("Find in the shawl"));
    m_field->setMinimumWidth(220);
    m_field->setMaximumWidth(420);
    m_place->setWordWrap(false);
    m_place->setMinimumWidth(m_place->fontMetrics().horizontalAdvance(tr("nothing found")) + 8);
    auto* close = new QToolButton(this);
    const auto button = [](QToolButton* made, const QString& words, const QString& tip) {
        made->setObjectName(QStringLiteral("quiet"));
        made->setText(words);
        made->setToolTip(tip);
        made->setAccessibleName(tip);
    };
    button(m_previous, tr("Previous"), tr("The one before  (Shift+Return)"));
    button(m_next, tr("Next"), tr("The next one  (Return)"));
    button(close, tr("Close"), tr("Back to the chart  (Esc)"));
    line->addWidget(m_field, 4);
    line->addWidget(m_place);
    line->addWidget(m_previous);
    line->addWidget(m_next);
    line->addStretch(1);
    line->addWidget(close);
    m_field->installEventFilter(this);
    connect(m_field, &QLineEdit::textEdited, this, &FindBar::typed);
    connect(m_previous, &QToolButton::clicked, this, &FindBar::previousWanted);
    connect(m_next, &QToolButton::clicked, this, &FindBar::nextWanted);
    connect(close, &QToolButton::clicked, this, &FindBar::left);
    setPlace(0, 0);
}

QString FindBar::place() const
{
    return m_place->text();
}

void FindBar::setPlace(int at, int of)
{
    m_previous->setEnabled(of > 0);
    m_next->setEnabled(of > 0);
    m_place->setText(of > 0                               ? tr("%1 of %2").arg(at).arg(of)
                     : m_field->text().trimmed().isEmpty() ? QString()
                                                           : tr("nothing found"));
}

void FindBar::open()
{
    show();
    m_field->setFocus();
    m_field->selectAll();
}

bool FindBar::eventFilter(QObject* watched, QEvent* event)
{
    if (leavesUndo(*m_field, *event))
        return true;
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
        return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (!enter && key->key() != Qt::Key_Escape)
        return QWidget::eventFilter(watched, event);
    event->accept();
    if (event->type() == QEvent::ShortcutOverride)
        return true;
    if (!enter)
        Q_EMIT left();
    else if (key->modifiers().testFlag(Qt::ShiftModifier))
        Q_EMIT previousWanted();
    else
        Q_EMIT nextWanted();
    return true;
}

} // namespace shawlwright::app
