#include "app/panels/form_dialog.h"

#include <QAbstractSpinBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QTabBar>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr QSize windowFrame(16, 48); // about what a desktop draws around a window

// As large as what is in it wants to be; a plain scroll area asks for a share of the screen at most.
class BodyScroll : public QScrollArea {
public:
    using QScrollArea::QScrollArea;
    QSize sizeHint() const override { return widget()->sizeHint(); }
    QSize minimumSizeHint() const override
    {
        const int room = screen()->availableGeometry().width() - windowFrame.width() - 40;
        const QSize least = widget()->minimumSizeHint();
        return {std::min(least.width(), room), std::min(least.height(), 6 * fontMetrics().lineSpacing())};
    }
};

bool takesAnswers(const QWidget& widget)
{
    const auto* text = qobject_cast<const QPlainTextEdit*>(&widget);
    return !(text && text->isReadOnly()) && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 && !qobject_cast<const QTabBar*>(&widget) &&
           !qobject_cast<const QPushButton*>(&widget) && !qobject_cast<const QToolButton*>(&widget) &&
           !qobject_cast<const QScrollArea*>(&widget) && !qobject_cast<const QTabWidget*>(&widget);
}

} // namespace

FormDialog::FormDialog(const QString& title, const QString& doIt, QWidget* parent) : QDialog(parent)
{
    setWindowTitle(title);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(20, 16, 20, 16);
    outer->setSpacing(12);
    m_scroll = new BodyScroll(this);
    m_scroll->setObjectName(QStringLiteral("formBody"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto* inside = new QWidget;
    inside->setObjectName(QStringLiteral("formInside"));
    m_body = new QVBoxLayout(inside);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(12);
    m_scroll->setWidget(inside);
    outer->addWidget(m_scroll, 1);
    m_wrong = new QLabel(this);
    m_wrong->setObjectName(QStringLiteral("fault"));
    m_wrong->setWordWrap(true);
    m_wrong->hide();
    outer->addWidget(m_wrong);
    m_buttons = new QDialogButtonBox(this);
    m_doIt = m_buttons->addButton(doIt, QDialogButtonBox::AcceptRole);
    m_doIt->setDefault(true);
    m_buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    outer->addWidget(m_buttons);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &FormDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &FormDialog::reject);
}

void FormDialog::accept()
{
    if (const auto wrong = whatWrong()) {
        m_wrong->setText(*wrong);
        m_wrong->show();
        grow();
        return;
    }
    QDialog::accept();
}

void FormDialog::setVisible(bool visible)
{
    if (visible && !m_opened) {
        m_opened = true;
        for (QWidget* one : findChildren<QWidget*>())
            one->ensurePolished(); // before it is measured
        // A least width that was set keeps Qt from asking the fields for theirs, which longer words or larger text make
        // greater.
        setMinimumWidth(std::max(minimumWidth(), layout()->minimumSize().width()));
        const QSize hint = testAttribute(Qt::WA_Resized) ? size() : QSize(sizeHint().width(), 0);
        const int wide = std::max(hint.width(), minimumWidth());
        fitTo({wide, std::max(hint.height(), neededHeight(wide))});
        focusFirst();
    }
    QDialog::setVisible(visible);
}

// The buttons were made first and would be the first to get it.
void FormDialog::focusFirst()
{
    if (QWidget* chosen = focusWidget(); chosen && chosen != this && !m_buttons->isAncestorOf(chosen))
        return;
    for (QWidget* one = nextInFocusChain(); one != this; one = one->nextInFocusChain()) {
        if (!m_scroll->isAncestorOf(one) || !takesAnswers(*one) || !one->isVisibleTo(this))
            continue;
        one->setFocus(Qt::TabFocusReason);
        if (auto* line = qobject_cast<QLineEdit*>(one))
            line->selectAll();
        else if (auto* number = qobject_cast<QAbstractSpinBox*>(one))
            number->selectAll();
        // What follows by Tab: the fields as they stand, then the buttons.
        QWidget* last = one;
        for (QWidget* next = one->nextInFocusChain(); next != one; next = next->nextInFocusChain())
            if (m_scroll->isAncestorOf(next))
                last = next;
        for (QAbstractButton* button : m_buttons->buttons()) {
            setTabOrder(last, button);
            last = button;
        }
        return;
    }
    for (QAbstractButton* button : m_buttons->buttons()) // nothing is asked
        if (button->isEnabled())
            return button->setFocus(Qt::TabFocusReason);
}

void FormDialog::keyPressEvent(QKeyEvent* event)
{
    // Wherever the focus is: the tabs are those of the whole dialog.
    const bool back = event->key() == Qt::Key_Backtab || event->key() == Qt::Key_PageUp;
    const bool on = event->key() == Qt::Key_Tab || event->key() == Qt::Key_PageDown;
    if (auto* tabs = findChild<QTabWidget*>();
        tabs && (on || back) && event->modifiers().testFlag(Qt::ControlModifier)) {
        const int count = tabs->count();
        tabs->setCurrentIndex((tabs->currentIndex() + (back ? count - 1 : 1)) % count);
        return;
    }
    QDialog::keyPressEvent(event);
}

void FormDialog::showOutcome(QLabel& label, const QString& words, bool fits)
{
    label.setText(words);
    if (label.property("wrong").toBool() == fits) {
        label.setProperty("wrong", !fits);
        label.style()->unpolish(&label);
        label.style()->polish(&label);
    }
    m_doIt->setEnabled(fits);
    forgetWrong();
    if (m_opened)
        grow();
}

void FormDialog::forgetWrong()
{
    m_wrong->hide();
}

int FormDialog::neededHeight(int forWidth) const
{
    const QMargins around = layout()->contentsMargins();
    const int inner = forWidth - around.left() - around.right();
    const auto tall = [inner](const QWidget& widget) {
        return widget.hasHeightForWidth() ? widget.heightForWidth(inner) : widget.sizeHint().height();
    };
    m_body->activate();
    int needed = around.top() + around.bottom() + tall(*m_buttons) + layout()->spacing();
    needed += m_body->hasHeightForWidth() ? m_body->totalHeightForWidth(inner) : m_body->totalSizeHint().height();
    if (!m_wrong->isHidden())
        needed += tall(*m_wrong) + layout()->spacing();
    return needed;
}

// At most as large as the screen, and moved so that all of it can be seen.
void FormDialog::fitTo(QSize wanted)
{
    const QRect room = screen()->availableGeometry();
    if (wanted.height() > room.height() - windowFrame.height()) // a bar to scroll by comes beside the fields
        wanted.rwidth() += style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, m_scroll->verticalScrollBar());
    wanted = wanted.boundedTo(room.size() - windowFrame);
    setMinimumSize(minimumSize().boundedTo(wanted));
    resize(wanted);
    if (!isVisible())
        return;
    QPoint at = pos();
    at.setX(std::max(room.left(), std::min(at.x(), room.right() - frameGeometry().width())));
    at.setY(std::max(room.top(), std::min(at.y(), room.bottom() - windowFrame.height() - height())));
    if (at != pos())
        move(at);
}

void FormDialog::grow()
{
    if (const int needed = neededHeight(width()); height() < needed)
        fitTo({width(), needed});
}

void FormDialog::fit()
{
    fitTo({width(), neededHeight(width())});
}

QFormLayout* FormDialog::addForm(QVBoxLayout* into)
{
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(16);
    form->setVerticalSpacing(8);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    (into ? into : m_body)->addLayout(form);
    return form;
}

void FormDialog::addLine(QFormLayout* form, const QString& words, QLayout* line, QWidget* first)
{
    line->setSpacing(8);
    auto* label = new QLabel(words, first->parentWidget());
    label->setBuddy(first);
    form->addRow(label, line);
}

QLabel* FormDialog::addHeading(const QString& text)
{
    auto* label = new QLabel(text, this);
    label->setObjectName(QStringLiteral("strong"));
    m_body->addWidget(label);
    return label;
}

QLabel* FormDialog::addNote(const QString& text)
{
    QLabel* label = softLabel(text, this);
    m_body->addWidget(label);
    return label;
}

QLabel* FormDialog::addPreview(int lines)
{
    auto* label = new QLabel(this);
    label->setObjectName(QStringLiteral("preview"));
    label->setWordWrap(true);
    label->setMinimumHeight(lines * fontMetrics().lineSpacing());
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_body->addWidget(label);
    return label;
}

QLabel* softLabel(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setObjectName(QStringLiteral("soft"));
    label->setWordWrap(true);
    return label;
}

} // namespace shawlwright::app
