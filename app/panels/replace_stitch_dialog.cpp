#include "app/panels/replace_stitch_dialog.h"

#include "app/document/text.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>

namespace shawlwright::app {

namespace {

QString stitchWords(const Stitch& stitch)
{
    const QString word = toQt(abbreviation(stitch, Side::RS));
    const QString name = toQt(stitch.name);
    return word.isEmpty() || word == name ? name : word + QStringLiteral(" - ") + name;
}

StitchId stitchOf(const QComboBox* box)
{
    return StitchId{static_cast<std::uint16_t>(box->currentData().toUInt())}; // nothing: no stitch
}

void add(QComboBox* box, const Stitch& stitch)
{
    box->addItem(stitchWords(stitch), QVariant(static_cast<uint>(stitch.id.value)));
}

} // namespace

ReplaceStitchDialog::ReplaceStitchDialog(const Catalogue& catalogue, std::vector<StitchId> there,
                                         std::optional<std::vector<StitchId>> selected, StitchId to,
                                         QWidget* parent)
    : FormDialog(tr("Replace a stitch"), tr("Replace"), parent), m_catalogue(catalogue),
      m_there(std::move(there)), m_selected(std::move(selected))
{
    auto* form = addForm();
    m_from = new QComboBox(this);
    m_from->setObjectName(QStringLiteral("from"));
    form->addRow(tr("&Replace"), m_from);
    m_to = new QComboBox(this);
    m_to->setObjectName(QStringLiteral("to"));
    m_to->setPlaceholderText(tr("choose a stitch"));
    form->addRow(tr("Wi&th"), m_to);
    m_which = new QComboBox(this);
    m_which->setObjectName(QStringLiteral("which"));
    if (m_selected)
        m_which->addItem(tr("in the selection"));
    m_which->addItem(tr("in the whole section"));
    form->addRow(tr("&Where"), m_which);
    addNote(tr("As the chart shows them on the right side. Stitches of the same width can take each other's "
               "place."));
    m_counts = addNote({});
    fillFrom();
    fillTo(to);
    connect(m_which, &QComboBox::currentIndexChanged, this, [this] {
        fillFrom();
        fillTo(this->to());
    });
    connect(m_from, &QComboBox::currentIndexChanged, this, [this] { fillTo(this->to()); });
    connect(m_to, &QComboBox::currentIndexChanged, this, [this] { sayCounts(); });
    sayCounts();
    setMinimumWidth(420);
}

void ReplaceStitchDialog::fillFrom()
{
    const QSignalBlocker quiet(m_from);
    const StitchId was = from();
    m_from->clear();
    for (const StitchId stitch : wholeSection() ? m_there : *m_selected) {
        add(m_from, m_catalogue.stitch(stitch));
        if (stitch == was)
            m_from->setCurrentIndex(m_from->count() - 1);
    }
}

void ReplaceStitchDialog::fillTo(StitchId wanted)
{
    const QSignalBlocker quiet(m_to);
    m_to->clear();
    int chosen = -1; // rather none than another than was wanted
    const StitchId replaced = from();
    const int width = m_catalogue.stitch(replaced).width();
    for (const auto* stitches : {&m_catalogue.builtIn(), &m_catalogue.own()})
        for (const Stitch& stitch : *stitches) {
            if (stitch.id == noStitch || stitch.id == replaced || stitch.width() != width ||
                !m_catalogue.known(stitch.id))
                continue;
            add(m_to, stitch);
            if (stitch.id == wanted)
                chosen = m_to->count() - 1;
        }
    m_to->setCurrentIndex(chosen);
    sayCounts();
}

void ReplaceStitchDialog::sayCounts()
{
    const Stitch& before = m_catalogue.stitch(from());
    const Stitch& after = m_catalogue.stitch(to());
    const bool differ = from() != noStitch && to() != noStitch &&
                        (before.takesUp != after.takesUp || before.leaves != after.leaves);
    m_counts->setVisible(differ);
    if (!differ)
        return;
    m_counts->setText(
        tr("%1 takes up %2 and leaves %3, %4 takes up %5 and leaves %6: the stitch counts change.")
            .arg(toQt(abbreviation(before, Side::RS)))
            .arg(before.takesUp)
            .arg(before.leaves)
            .arg(toQt(abbreviation(after, Side::RS)))
            .arg(after.takesUp)
            .arg(after.leaves));
    grow();
}

bool ReplaceStitchDialog::wholeSection() const
{
    return m_which->currentIndex() == m_which->count() - 1;
}

StitchId ReplaceStitchDialog::from() const
{
    return stitchOf(m_from);
}

StitchId ReplaceStitchDialog::to() const
{
    return stitchOf(m_to);
}

std::optional<QString> ReplaceStitchDialog::whatWrong() const
{
    if (from() == noStitch)
        return wholeSection()
                   ? tr("The section has no stitches yet. Paint some first.")
                   : tr("The selection holds no whole stitch. Select more, or take the whole section.");
    if (m_to->count() == 0)
        return tr("No other stitch is as wide as this one. Make one of your own first.");
    if (to() == noStitch)
        return tr("Choose the stitch that takes its place.");
    return std::nullopt;
}

} // namespace shawlwright::app
