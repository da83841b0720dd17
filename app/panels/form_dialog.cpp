#include "app/panels/form_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

FormDialog::FormDialog(const QString& title, const QString& doIt, QWidget* parent) : QDialog(parent)
{
    setWindowTitle(title);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(20, 16, 20, 16);
    outer->setSpacing(12);
    m_body = new QVBoxLayout;
    m_body->setSpacing(12);
    outer->addLayout(m_body, 1);
    m_wrong = new QLabel(this);
    m_wrong->setObjectName(QStringLiteral("fault"));
    m_wrong->setWordWrap(true);
    m_wrong->hide();
    outer->addWidget(m_wrong);
    auto* buttons = new QDialogButtonBox(this);
    m_doIt = buttons->addButton(doIt, QDialogButtonBox::AcceptRole);
    m_doIt->setDefault(true);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    outer->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &FormDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &FormDialog::reject);
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

// A least width that was set keeps Qt from asking the fields for theirs, which longer words or larger text make greater.
void FormDialog::showEvent(QShowEvent* event)
{
    setMinimumWidth(std::max(minimumWidth(), layout()->minimumSize().width()));
    QDialog::showEvent(event);
}

void FormDialog::forgetWrong()
{
    m_wrong->hide();
}

int FormDialog::neededHeight()
{
    layout()->activate();
    return layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width()) : sizeHint().height();
}

void FormDialog::grow()
{
    if (const int needed = neededHeight(); height() < needed)
        resize(width(), needed);
}

void FormDialog::fit()
{
    resize(width(), neededHeight());
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
