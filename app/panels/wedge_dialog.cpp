#include "app/panels/wedge_dialog.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>

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
    m_turns = stitchCount(first.turns, 1, mostRows / 2, this);
    m_turns->setObjectName(QStringLiteral("turns"));
    m_turns->setAccessibleName(tr("Turns"));
    m_left = stitchCount(first.untilLeft.value_or(first.step), 0, mostColumns, this);
    m_left->setObjectName(QStringLiteral("left"));
    m_far.emplace(form, QStringList{tr("as many turns as"), tr("until so many stitches are left:")},
                  first.untilLeft.has_value(), m_turns, m_left);
    m_turning.emplace(form, m_yarns, first.method, first.stitches,
                      first.yarns.empty() ? YarnId{} : first.yarns.front());
    m_other = addChoice(form, tr("Seco&nd yarn"), "otherYarn", {tr("none: the same yarn throughout")});
    m_turning->addSlip(form, first.slipFirst);
    m_closing = new QCheckBox(tr("&Close with a row over all stitches"), this);
    m_closing->setObjectName(QStringLiteral("closing"));
    m_closing->setChecked(first.closing);
    m_closes = first.closing;
    form->addRow(QString(), m_closing);
    addNote(tr("Stitches are counted as for wrap and turn. With a double stitch or a pinned yarn the turning "
               "stitch is "
               "worked too, one stitch further."));
    m_words = addPreview(2);
    for (QComboBox* box :
         QList<QComboBox*>{m_place, m_at, m_marker, m_growing, m_far->until(), m_other} + m_turning->choices())
        connect(box, &QComboBox::currentIndexChanged, this, [this] { follow(); });
    for (QSpinBox* box : {m_step, m_turns, m_left})
        connect(box, &QSpinBox::valueChanged, this, [this] { follow(); });
    for (QCheckBox* box : {m_turning->slip(), m_closing})
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
    if (m_far->untilStitches())
        wishes.untilLeft = m_left->value();
    wishes.closing = m_closing->isChecked();
    m_turning->into(wishes, m_yarns);
    if (const YarnId other = secondYarn(*m_other); other != YarnId{} && wishes.at != WedgeAt::Marker)
        wishes.yarns.push_back(other);
    return wishes;
}

void WedgeDialog::follow()
{
    const bool marker = m_at->currentIndex() == static_cast<int>(WedgeAt::Marker);
    m_marker->setEnabled(marker);
    m_far->until()->setItemText(0, marker ? tr("as many turns on each side as") : tr("as many turns as"));
    m_far->until()->setItemText(1, marker ? tr("until so many stitches are left on each side:")
                                          : tr("until so many stitches are left:"));
    m_turns->setAccessibleName(marker ? tr("Turns on each side") : tr("Turns"));
    m_other->setEnabled(!marker);
    m_other->setToolTip(marker ? tr("About a marker the rows never come back to where another yarn hangs: one yarn works them all.")
                               : QString());
    if (m_closing->isEnabled())
        m_closes = m_closing->isChecked();
    const QSignalBlocker quiet(m_closing);
    m_closing->setEnabled(!marker);
    m_closing->setChecked(marker || m_closes);
    m_closing->setToolTip(marker ? tr("About a marker two rows over all stitches always close the turns.") : QString());
    offerSecondYarns(m_other, m_yarns, m_turning->yarn(m_yarns), tr("%1: two rows of each by turns"));
    m_turning->follow();
    m_far->follow();
    const ShapingPreview now = m_preview(place(), wishes());
    showOutcome(*m_words, now.words, now.fits);
}

std::optional<QString> WedgeDialog::whatWrong() const
{
    const ShapingPreview now = m_preview(place(), wishes());
    return now.fits ? std::optional<QString>{} : now.words;
}

} // namespace shawlwright::app
