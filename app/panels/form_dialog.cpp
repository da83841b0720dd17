#include "app/panels/form_dialog.h"

#include "app/panels/reading_order.h"

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGridLayout>
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

// No higher than its words need at the width they have: a layout asks for what they would need at the least width.
class Body : public QWidget {
public:
    QSize minimumSizeHint() const override
    {
        QSize least = QWidget::minimumSizeHint();
        if (layout() && layout()->hasHeightForWidth())
            least.setHeight(layout()->totalHeightForWidth(std::max(width(), least.width())));
        return least;
    }
};

// On the screen: the cell of the chart or the line of a list that the keys were in.
QRect placeOfKeys(const QWidget* parent)
{
    QWidget* focus = parent ? parent->window()->focusWidget() : nullptr;
    QAccessibleInterface* whole = focus && focus->isVisible() ? QAccessible::queryAccessibleInterface(focus) : nullptr;
    const QAccessibleInterface* place = whole ? whole->focusChild() : nullptr;
    return place && place->isValid() ? place->rect() : QRect();
}

bool takesAnswers(const QWidget& widget)
{
    const auto* text = qobject_cast<const QPlainTextEdit*>(&widget);
    return !(text && text->isReadOnly()) && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 && !qobject_cast<const QTabBar*>(&widget) &&
           !qobject_cast<const QPushButton*>(&widget) && !qobject_cast<const QToolButton*>(&widget) &&
           !qobject_cast<const QScrollArea*>(&widget) && !qobject_cast<const QTabWidget*>(&widget);
}

// What the chart or a reader says of a place ends without one.
QString withFullStop(const QString& words)
{
    const QString trimmed = words.trimmed();
    const bool ends = trimmed.isEmpty() || QStringLiteral(".!?:\u2026").contains(trimmed.back());
    return ends ? trimmed : trimmed + QLatin1Char('.');
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
    auto* inside = new Body;
    inside->setObjectName(QStringLiteral("formInside"));
    m_body = new QVBoxLayout(inside);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(12);
    m_scroll->setWidget(inside);
    inside->installEventFilter(this);
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
    std::optional<QString> wrong = whatWrong();
    if (!wrong && m_refusal)
        wrong = m_refusal();
    if (wrong) {
        m_wrong->setText(withFullStop(*wrong));
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
        widenLabels();
        takeUpRoom();
        const QSize hint = testAttribute(Qt::WA_Resized) ? size() : QSize(sizeHint().width(), 0);
        const int most = screen()->availableGeometry().width() - windowFrame.width();
        const int wide = std::min(std::max({hint.width(), minimumWidth(), neededWidth()}), most);
        fitTo({wide, std::max(hint.height(), neededHeight(wide))});
        if (!testAttribute(Qt::WA_Moved))
            placeBesideKeys();
        orderTabs();
        focusFirst();
    }
    QDialog::setVisible(visible);
}

// What nobody wants would open gaps between the lines.
void FormDialog::takeUpRoom()
{
    for (int i = 0; i < m_body->count(); ++i)
        if (m_body->stretch(i) > 0 || m_body->itemAt(i)->spacerItem())
            return;
    m_body->addStretch();
}

// Lines come and go with what is chosen, words become longer.
bool FormDialog::eventFilter(QObject* watched, QEvent* event)
{
    const bool handled = QDialog::eventFilter(watched, event);
    if (m_opened && event->type() == QEvent::LayoutRequest && watched == m_scroll->widget()) {
        orderTabs();
        grow();
    }
    return handled;
}

// A row is looked at while a dialog asks about it: the dialog opens below or above it, or else beside the cell.
void FormDialog::placeBesideKeys()
{
    const QRect keys = placeOfKeys(parentWidget());
    if (keys.isEmpty())
        return;
    constexpr int gap = 12;
    const QRect room = screen()->availableGeometry(), over = parentWidget()->window()->frameGeometry();
    const QSize outer = size() + windowFrame;
    QPoint at = over.center() - QPoint(outer.width() / 2, outer.height() / 2);
    if (keys.bottom() + gap + outer.height() <= room.bottom())
        at.setY(std::max(at.y(), keys.bottom() + gap));
    else if (keys.top() - gap - outer.height() >= room.top())
        at.setY(std::min(at.y(), keys.top() - gap - outer.height()));
    else if (keys.right() + gap + outer.width() <= room.right())
        at.setX(std::max(at.x(), keys.right() + gap));
    else if (keys.left() - gap - outer.width() >= room.left())
        at.setX(std::min(at.x(), keys.left() - gap - outer.width()));
    at.setX(std::clamp(at.x(), room.left(), std::max(room.left(), room.right() - outer.width())));
    at.setY(std::clamp(at.y(), room.top(), std::max(room.top(), room.bottom() - outer.height())));
    move(at);
}

// The buttons were made first, and fields are made in any order.
void FormDialog::orderTabs()
{
    QList<QWidget*> order = inReadingOrder(*m_scroll->widget());
    for (QAbstractButton* button : m_buttons->buttons())
        order << button;
    for (int i = 1; i < order.size(); ++i)
        setTabOrder(order[i - 1], order[i]);
}

void FormDialog::focusFirst()
{
    if (QWidget* chosen = focusWidget(); chosen && chosen != this && !m_buttons->isAncestorOf(chosen))
        return;
    for (QWidget* one : inReadingOrder(*m_scroll->widget())) {
        if (!takesAnswers(*one) || !one->isVisibleTo(this))
            continue;
        one->setFocus(Qt::TabFocusReason);
        if (auto* line = qobject_cast<QLineEdit*>(one))
            line->selectAll();
        else if (auto* number = qobject_cast<QAbstractSpinBox*>(one))
            number->selectAll();
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
    label.setText(fits ? words : withFullStop(words));
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

int FormDialog::neededWidth() const
{
    const QMargins around = layout()->contentsMargins();
    m_body->activate();
    const int body = m_body->totalMinimumSize().width();
    return std::max(body, m_buttons->sizeHint().width()) + around.left() + around.right();
}

// What it has or needs, as far as the screen goes.
int FormDialog::widthToHave() const
{
    return std::min(std::max(width(), neededWidth()), screen()->availableGeometry().width() - windowFrame.width());
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
    if (m_preview)
        needed += std::max(tall(*m_preview), m_preview->minimumHeight()) + layout()->spacing();
    if (forWidth < neededWidth()) // wider than the screen: a bar to scroll by comes below the fields
        needed += style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, m_scroll->horizontalScrollBar());
    return needed;
}

// At most as large as the screen, and moved so that all of it can be seen.
void FormDialog::fitTo(QSize wanted)
{
    const QRect room = screen()->availableGeometry();
    if (wanted.height() > room.height() - windowFrame.height()) // a bar to scroll by comes beside the fields
        wanted.setWidth(std::max(wanted.width(), neededWidth() + style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr,
                                                                                      m_scroll->verticalScrollBar())));
    wanted = wanted.boundedTo(room.size() - windowFrame);
    // A least width that was set keeps Qt from asking the fields for theirs, which longer words or larger text make greater.
    setMinimumSize(QSize(std::max(minimumWidth(), neededWidth()), minimumHeight()).boundedTo(wanted));
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
    const int wide = widthToHave();
    if (const int needed = neededHeight(wide); width() < wide || height() < needed)
        fitTo({wide, std::max(height(), needed)});
}

void FormDialog::fit()
{
    const int wide = widthToHave();
    fitTo({wide, neededHeight(wide)});
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

void FormDialog::lineUp(const QList<QLayout*>& forms)
{
    m_linedUp = forms;
}

void FormDialog::widenLabels()
{
    QList<QWidget*> labels;
    for (QLayout* layout : m_linedUp) {
        const auto* form = qobject_cast<QFormLayout*>(layout);
        const auto* grid = qobject_cast<QGridLayout*>(layout);
        for (int row = 0; row < (form ? form->rowCount() : grid->rowCount()); ++row)
            if (QLayoutItem* item = form ? form->itemAt(row, QFormLayout::LabelRole) : grid->itemAtPosition(row, 0);
                item && item->widget())
                labels << item->widget();
    }
    int widest = 0;
    for (const QWidget* label : labels)
        widest = std::max(widest, label->sizeHint().width());
    for (QWidget* label : labels)
        label->setMinimumWidth(widest);
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
    auto* outer = static_cast<QVBoxLayout*>(layout());
    outer->insertWidget(outer->indexOf(m_wrong), label); // in sight wherever the fields are scrolled to
    m_preview = label;
    return label;
}

namespace {

// Wants the height of long lines: a label's own wish is for short ones, and a form leaves a gap for them.
class WrappedWords : public QLabel {
public:
    using QLabel::QLabel;
    QSize sizeHint() const override
    {
        QSize wish = QLabel::sizeHint();
        if (wordWrap() && !text().isEmpty())
            wish.setHeight(std::min(wish.height(), heightForWidth(80 * fontMetrics().averageCharWidth())));
        return wish;
    }
};

} // namespace

QLabel* softLabel(const QString& text, QWidget* parent)
{
    auto* label = new WrappedWords(text, parent);
    label->setObjectName(QStringLiteral("soft"));
    label->setWordWrap(true);
    return label;
}

} // namespace shawlwright::app
