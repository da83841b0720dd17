#include "app/panels/wedge_dialog.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"
#include "app/panels/plain_rows_dialog.h"
#include "app/panels/row_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>

namespace shawlwright::app {

WedgeDialog::WedgeDialog(const QStringList& places, const PatternHead& head, const WedgeWishes& first,
                         Preview preview, QWidget* parent)
    : FormDialog(tr("Wedge of short rows"), tr("Make it"), parent), m_yarns(head.yarns),
      m_markers(head.markers), m_preview(std::move(preview))
{
    auto* form = addForm();
    m_place = addChoice(form, tr("&Begin"), "place", places);
    m_at = addChoice(form, tr("&Where"), "at",
                     {tr("at the right edge"), tr("at the left edge"), tr("about a marker")});
    m_at->setCurrentIndex(static_cast<int>(first.at));
    QStringList markers;
    for (const Marker& marker : m_markers)
        markers << toQt(marker.name);
    m_marker = addChoice(form, tr("Mar&ker"), "marker", markers);
    m_growing = addChoice(form, tr("&Each turn"), "growing",
                          {tr("further out than the last"), tr("earlier than the last")});
    m_growing->setCurrentIndex(first.growing ? 0 : 1);
    m_step = stitchCount(first.step, 1, mostColumns, this);
    m_step->setObjectName(QStringLiteral("step"));
    form->addRow(tr("&Stitches from turn to turn"), m_step);
    auto* far = new QHBoxLayout;
    m_until = new QComboBox(this);
    m_until->setObjectName(QStringLiteral("until"));
    m_until->addItems({tr("as many turns as"), tr("until so many stitches are left:")});
    m_until->setCurrentIndex(first.untilLeft ? 1 : 0);
    m_turns = stitchCount(first.turns, 1, mostRows / 2, this);
    m_turns->setSuffix({});
    m_turns->setObjectName(QStringLiteral("turns"));
    m_turns->setAccessibleName(tr("Turns"));
    m_left = stitchCount(first.untilLeft.value_or(first.step), 0, mostColumns, this);
    m_left->setObjectName(QStringLiteral("left"));
    far->addWidget(m_until, 1);
    far->addWidget(m_turns);
    far->addWidget(m_left);
    addLine(form, tr("&How far"), far, m_until);
    m_method = addChoice(form, tr("&Turn"), "method", turnMethodNames());
    m_method->setCurrentIndex(static_cast<int>(first.method));
    m_explained = softLabel({}, this);
    form->addRow(QString(), m_explained);
    m_stitches = addChoice(form, tr("St&itches"), "stitches", plainStitchNames());
    m_stitches->setCurrentIndex(static_cast<int>(first.stitches));
    m_yarn = addChoice(form, tr("&Yarn"), "yarn", {});
    addYarns(m_yarn, m_yarns, first.yarns.empty() ? YarnId{} : first.yarns.front());
    m_other = addChoice(form, tr("Seco&nd yarn"), "otherYarn", {tr("none: the same yarn throughout")});
    for (const Yarn& yarn : m_yarns)
        m_other->addItem(tr("%1: two rows of each by turns").arg(yarnInWords(yarn)));
    m_slip = new QCheckBox(tr("S&lip the first stitch of the row after each turn"), this);
    m_slip->setObjectName(QStringLiteral("slip"));
    m_slip->setChecked(first.slipFirst);
    form->addRow(QString(), m_slip);
    m_closing = new QCheckBox(tr("&Close with a row over all stitches"), this);
    m_closing->setObjectName(QStringLiteral("closing"));
    m_closing->setChecked(first.closing);
    form->addRow(QString(), m_closing);
    addNote(tr("Stitches are counted as for wrap and turn. With a double stitch or a pinned yarn the turning "
               "stitch is "
               "worked too, one stitch further."));
    m_words = new QLabel(this);
    m_words->setObjectName(QStringLiteral("preview"));
    m_words->setWordWrap(true);
    m_words->setMinimumHeight(2 * fontMetrics().lineSpacing());
    m_words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    body()->addWidget(m_words);
    for (QComboBox* box :
         {m_place, m_at, m_marker, m_growing, m_until, m_method, m_stitches, m_yarn, m_other})
        connect(box, &QComboBox::currentIndexChanged, this, [this] { follow(); });
    for (QSpinBox* box : {m_step, m_turns, m_left})
        connect(box, &QSpinBox::valueChanged, this, [this] { follow(); });
    for (QCheckBox* box : {m_slip, m_closing})
        connect(box, &QCheckBox::toggled, this, [this] { follow(); });
    follow();
    setMinimumWidth(460);
}

int WedgeDialog::place() const
{
    return m_place->currentIndex();
}

WedgeWishes WedgeDialog::wishes() const
{
    WedgeWishes wishes;
    wishes.at = static_cast<WedgeAt>(m_at->currentIndex());
    if (const int marker = m_marker->currentIndex(); marker >= 0)
        wishes.marker = m_markers[static_cast<std::size_t>(marker)].id;
    wishes.growing = m_growing->currentIndex() == 0;
    wishes.step = m_step->value();
    wishes.turns = m_turns->value();
    if (m_until->currentIndex() == 1)
        wishes.untilLeft = m_left->value();
    wishes.method = static_cast<TurnMethod>(m_method->currentIndex());
    wishes.stitches = static_cast<PlainStitch>(m_stitches->currentIndex());
    wishes.slipFirst = m_slip->isEnabled() && m_slip->isChecked();
    wishes.closing = m_closing->isChecked();
    if (const int yarn = m_yarn->currentIndex(); yarn >= 0)
        wishes.yarns.push_back(m_yarns[static_cast<std::size_t>(yarn)].id);
    if (const int other = m_other->currentIndex(); other > 0 && wishes.at != WedgeAt::Marker)
        wishes.yarns.push_back(m_yarns[static_cast<std::size_t>(other) - 1].id);
    return wishes;
}

void WedgeDialog::follow()
{
    const bool marker = m_at->currentIndex() == static_cast<int>(WedgeAt::Marker);
    m_marker->setEnabled(marker);
    m_other->setEnabled(!marker); // the rows never come back to where the other yarn hangs
    m_closing->setEnabled(!marker);
    const auto method = static_cast<TurnMethod>(m_method->currentIndex());
    m_explained->setText(turnExplained(method));
    m_slip->setEnabled(!alwaysSlips(method));
    m_turns->setVisible(m_until->currentIndex() == 0);
    m_left->setVisible(m_until->currentIndex() == 1);
    m_words->setText(m_preview(place(), wishes()).words);
}

std::optional<QString> WedgeDialog::whatWrong() const
{
    const ShapingPreview now = m_preview(place(), wishes());
    return now.fits ? std::optional<QString>{} : now.words;
}

} // namespace shawlwright::app
