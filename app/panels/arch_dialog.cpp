#include "app/panels/arch_dialog.h"

#include "app/panels/number_fields.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

#include <algorithm>

namespace shawlwright::app {

ArchDialog::ArchDialog(const QStringList& begins, std::vector<ArchPlaceChoice> places,
                       const std::vector<Yarn>& yarns, const ArchWishes& first, Preview preview, QWidget* parent)
    : FormDialog(tr("Arch of short rows"), tr("Make it"), parent), m_choices(std::move(places)), m_yarns(yarns),
      m_preview(std::move(preview))
{
    auto* form = addForm();
    m_begin = addChoice(form, tr("&Begin"), "begin", begins);
    m_places = new QListWidget(this);
    m_places->setObjectName(QStringLiteral("places"));
    for (const ArchPlaceChoice& choice : m_choices) {
        auto* item = new QListWidgetItem(choice.words, m_places);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(m_places->count() == 1 ? Qt::Checked : Qt::Unchecked);
    }
    m_places->setCurrentRow(0);
    const int lines = std::clamp(m_places->count(), 2, 5);
    m_places->ensurePolished(); // its padding counts
    m_places->setFixedHeight(lines * std::max(22, m_places->sizeHintForRow(0)) + 2 * m_places->frameWidth() + 10);
    form->addRow(tr("&About"), m_places);
    m_others = new QLineEdit(this);
    m_others->setObjectName(QStringLiteral("others"));
    m_others->setPlaceholderText(tr("numbers from the right edge: 21, 61"));
    form->addRow(tr("An&d these stitches"), m_others);
    m_width = stitchCount(first.width, 1, mostColumns, this);
    m_width->setObjectName(QStringLiteral("width"));
    form->addRow(tr("First &wide"), m_width);
    auto* grows = new QHBoxLayout;
    m_widening = new QComboBox(this);
    m_widening->setObjectName(QStringLiteral("widening"));
    m_widening->addItems({tr("wider by"), tr("narrower by")});
    m_widening->setCurrentIndex(first.widening ? 0 : 1);
    m_step = stitchCount(first.step, 1, mostColumns, this);
    m_step->setObjectName(QStringLiteral("step"));
    grows->addWidget(m_widening, 1);
    grows->addWidget(m_step);
    addLine(form, tr("&Each row"), grows, m_widening);
    m_rows = stitchCount(first.rows, 2, mostRows, this);
    m_rows->setObjectName(QStringLiteral("rows"));
    m_untilWidth = stitchCount(first.untilWidth.value_or(first.width + 10 * first.step), 1, mostColumns, this);
    m_untilWidth->setObjectName(QStringLiteral("untilWidth"));
    m_far.emplace(form, QStringList{tr("so many short rows:"), tr("until it is so wide:")},
                  first.untilWidth.has_value(), m_rows, m_untilWidth);
    m_turns.emplace(form, m_yarns, first.method, first.stitches,
                    first.yarns.empty() ? YarnId{} : first.yarns.front());
    auto* second = new QHBoxLayout;
    m_other = new QComboBox(this);
    m_other->setObjectName(QStringLiteral("otherYarn"));
    m_other->addItem(tr("none"));
    m_yarnTurns = new QComboBox(this);
    m_yarnTurns->setObjectName(QStringLiteral("yarnTurns"));
    m_yarnTurns->addItems({tr("every other arch"), tr("two rows of each by turns")});
    second->addWidget(m_other, 1);
    second->addWidget(m_yarnTurns, 1);
    addLine(form, tr("Seco&nd yarn"), second, m_other);
    m_turns->addSlip(form, first.slipFirst);
    m_words = addPreview(4);
    connect(m_places, &QListWidget::itemChanged, this, [this] { follow(); });
    connect(m_others, &QLineEdit::textChanged, this, [this] { follow(); });
    for (QComboBox* box :
         QList<QComboBox*>{m_begin, m_widening, m_far->until(), m_other, m_yarnTurns} + m_turns->choices())
        connect(box, &QComboBox::currentIndexChanged, this, [this] { follow(); });
    for (QSpinBox* box : {m_width, m_step, m_rows, m_untilWidth})
        connect(box, &QSpinBox::valueChanged, this, [this] { follow(); });
    connect(m_turns->slip(), &QCheckBox::toggled, this, [this] { follow(); });
    follow();
    setMinimumWidth(480);
}

int ArchDialog::begin() const
{
    return m_begin->currentIndex();
}

ArchWishes ArchDialog::wishes() const
{
    ArchWishes wishes;
    wishes.places.clear();
    for (int i = 0; i < m_places->count(); ++i)
        if (m_places->item(i)->checkState() == Qt::Checked)
            wishes.places.push_back(m_choices[static_cast<std::size_t>(i)].place);
    for (const int stitch : numbersIn(m_others->text()).numbers) {
        ArchPlace place;
        place.at = ArchPlace::At::Stitch;
        place.stitch = stitch;
        wishes.places.push_back(place);
    }
    wishes.width = m_width->value();
    wishes.widening = m_widening->currentIndex() == 0;
    wishes.step = m_step->value();
    wishes.rows = m_rows->value();
    if (m_far->untilStitches())
        wishes.untilWidth = m_untilWidth->value();
    m_turns->into(wishes, m_yarns);
    if (const YarnId other = secondYarn(*m_other); other != YarnId{})
        wishes.yarns.push_back(other);
    wishes.yarnTurns = static_cast<YarnTurns>(m_yarnTurns->currentIndex());
    return wishes;
}

ShapingPreview ArchDialog::outcome() const
{
    if (const QString wrong = numbersIn(m_others->text()).wrong; !wrong.isEmpty())
        return {false, tr("\"%1\" is no stitch number. Give numbers apart by commas, such as 21, 61.").arg(wrong)};
    return m_preview(begin(), wishes());
}

void ArchDialog::follow()
{
    offerSecondYarns(m_other, m_yarns, m_turns->yarn(m_yarns), QStringLiteral("%1"));
    m_turns->follow();
    m_far->follow();
    m_yarnTurns->setEnabled(m_other->currentIndex() > 0);
    forgetWrong();
    const ShapingPreview now = outcome();
    showOutcome(*m_words, now.words, now.fits);
}

std::optional<QString> ArchDialog::whatWrong() const
{
    const ShapingPreview now = outcome();
    return now.fits ? std::optional<QString>{} : now.words;
}

} // namespace shawlwright::app
