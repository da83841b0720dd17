#include "app/panels/stripes_dialog.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QPushButton>

#include <algorithm>
#include <utility>

namespace shawlwright::app {

StripesDialog::StripesDialog(std::vector<Rows> choices, const std::vector<Yarn>& yarns, QWidget* parent)
    : FormDialog(tr("Yarn of the rows"), tr("Lay the stripes"), parent), m_choices(std::move(choices)),
      m_yarns(yarns)
{
    auto* form = addForm();
    m_which = new QComboBox(this);
    m_which->setObjectName(QStringLiteral("which"));
    for (const Rows& rows : m_choices)
        m_which->addItem(rows.words);
    form->addRow(tr("&Rows"), m_which);
    addHeading(tr("Stripes, over and over"));
    m_list = new QVBoxLayout;
    m_list->setSpacing(6);
    body()->addLayout(m_list);
    auto* add = new QPushButton(tr("&Add a stripe"), this);
    add->setObjectName(QStringLiteral("addStripe"));
    add->setAutoDefault(false);
    auto* line = new QHBoxLayout;
    line->addWidget(add);
    line->addStretch();
    body()->addLayout(line);
    connect(add, &QPushButton::clicked, this, [this] {
        // As many rows again, of the yarn after its own; one stripe over all rows would leave none for a second.
        const auto& now = m_choices.empty() ? std::vector<Stripe>{} : m_choices[static_cast<std::size_t>(chosen())].stripes;
        if (m_lines.size() == 1 && now.size() == 1 && m_lines.front().rows->value() >= now.front().rows)
            m_lines.front().rows->setValue(std::min(2, now.front().rows));
        Stripe next = stripes().back();
        for (std::size_t i = 0; i < m_yarns.size(); ++i)
            if (m_yarns[i].id == next.yarn) {
                next.yarn = m_yarns[(i + 1) % m_yarns.size()].id;
                break;
            }
        addStripe(next);
        follow();
        orderTabs();
        grow();
        m_lines.back().rows->setFocus(Qt::OtherFocusReason);
        m_lines.back().rows->selectAll();
    });
    addNote(tr("A yarn is joined at its first row, and anew where it hangs at the other edge. Stitches with "
               "a yarn of "
               "their own keep it."));
    showStripes();
    connect(m_which, &QComboBox::currentIndexChanged, this, [this] {
        showStripes();
        fit();
    });
    setMinimumWidth(400);
}

int StripesDialog::chosen() const
{
    return std::max(0, m_which->currentIndex());
}

void StripesDialog::showStripes()
{
    for (const Line& line : std::exchange(m_lines, {}))
        delete line.whole;
    if (!m_choices.empty())
        for (const Stripe& stripe : m_choices[static_cast<std::size_t>(chosen())].stripes)
            addStripe(stripe);
    if (m_lines.empty())
        addStripe({2, m_yarns.empty() ? YarnId{} : m_yarns.front().id});
    follow();
}

void StripesDialog::addStripe(const Stripe& stripe)
{
    Line line{};
    line.whole = new QWidget(this);
    auto* fields = new QHBoxLayout(line.whole);
    fields->setContentsMargins(0, 0, 0, 0);
    line.rows = stitchCount(stripe.rows, 1, mostRows, line.whole);
    setUnit(*line.rows, tr(" row"), tr(" rows"));
    line.rows->setObjectName(QStringLiteral("stripeRows"));
    line.rows->setAccessibleName(tr("Rows"));
    line.yarn = new QComboBox(line.whole);
    line.yarn->setObjectName(QStringLiteral("stripeYarn"));
    line.yarn->setAccessibleName(tr("Yarn"));
    for (const Yarn& yarn : m_yarns) {
        line.yarn->addItem(toQt(yarn.name.empty() ? yarn.code : yarn.code + " " + yarn.name));
        if (yarn.id == stripe.yarn)
            line.yarn->setCurrentIndex(line.yarn->count() - 1);
    }
    line.remove = new QPushButton(tr("Remove"), line.whole);
    line.remove->setAutoDefault(false);
    fields->addWidget(line.rows);
    fields->addWidget(line.yarn, 1);
    fields->addWidget(line.remove);
    m_list->addWidget(line.whole);
    line.whole->show(); // the dialog grows by it at once
    connect(line.remove, &QPushButton::clicked, this, [this, whole = line.whole] { removeStripe(whole); });
    m_lines.push_back(line);
}

void StripesDialog::removeStripe(QWidget* line)
{
    std::erase_if(m_lines, [line](const Line& one) { return one.whole == line; });
    m_list->removeWidget(line);
    line->hide();
    line->deleteLater();
    follow();
    fit();
}

void StripesDialog::follow()
{
    for (const Line& line : m_lines)
        line.remove->setEnabled(m_lines.size() > 1);
}

std::vector<Stripe> StripesDialog::stripes() const
{
    std::vector<Stripe> stripes;
    for (const Line& line : m_lines) {
        const int at = line.yarn->currentIndex();
        stripes.push_back({line.rows->value(), at < 0 ? YarnId{} : m_yarns[static_cast<std::size_t>(at)].id});
    }
    return stripes;
}

} // namespace shawlwright::app
