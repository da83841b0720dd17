#include "app/panels/repeat_dialogs.h"

#include "app/document/text.h"
#include "app/panels/quantity_edit.h"
#include "app/panels/row_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

namespace shawlwright::app {

namespace {

// A third button that takes the repeat away; its stitches stay.
void addRemove(FormDialog* dialog, bool& removed)
{
    auto* buttons = dialog->findChild<QDialogButtonBox*>();
    QPushButton* remove =
        buttons->addButton(FormDialog::tr("Take the repeat away"), QDialogButtonBox::ResetRole);
    remove->setAutoDefault(false);
    QObject::connect(remove, &QPushButton::clicked, dialog, [dialog, &removed] {
        removed = true;
        dialog->done(QDialog::Accepted);
    });
}

} // namespace

StitchRepeatDialog::StitchRepeatDialog(const Box& box, const QString& rows, const PatternHead& head, bool isNew,
                                       QWidget* parent)
    : FormDialog(tr("Stitch repeat"), isNew ? tr("Repeat") : tr("Keep"), parent), m_box(box),
      m_markers(head.markers)
{
    const int columns = box.lastColumn - box.firstColumn + 1;
    auto* title =
        new QLabel(columns == 1 ? tr("Repeat stitch %1 of %2").arg(QString::number(box.firstColumn), rows)
                                : tr("Repeat stitches %1 to %2 of %3")
                                      .arg(QString::number(box.firstColumn), QString::number(box.lastColumn), rows),
                   this);
    title->setObjectName(QStringLiteral("dialogHeading"));
    body()->addWidget(title);
    const QStringList sizes = sizeNames(head);
    auto* form = addForm();
    m_until = new QComboBox(this);
    m_until->setObjectName(QStringLiteral("until"));
    m_until->addItems(
        {tr("a number of times"), tr("to the end of the row"), tr("to a marker"), tr("to the last turn")});
    m_until->setCurrentIndex(static_cast<int>(box.until));
    form->addRow(tr("&Work it"), m_until);
    m_times = new QuantityEdit(sizes, 0, mostRepeats, this);
    m_times->setObjectName(QStringLiteral("times"));
    m_times->setQuantity(box.times);
    form->addRow(tr("&Times in all"), m_times);
    m_marker = new QComboBox(this);
    m_marker->setObjectName(QStringLiteral("marker"));
    for (const Marker& marker : m_markers) {
        m_marker->addItem(toQt(marker.name));
        if (marker.id == box.marker)
            m_marker->setCurrentIndex(m_marker->count() - 1);
    }
    form->addRow(tr("&Marker"), m_marker);
    m_leaving = new QuantityEdit(sizes, 0, mostCount, this);
    m_leaving->setObjectName(QStringLiteral("leaving"));
    m_leaving->setQuantity(box.leaving);
    form->addRow(tr("&Stitches left before it"), m_leaving);
    form->addRow(QString(), m_times->sizesHint()); // of both numbers
    if (!isNew)
        addRemove(this, m_removed);
    const auto follow = [this] {
        const auto until = static_cast<BoxUntil>(m_until->currentIndex());
        m_times->setEnabled(until == BoxUntil::Times);
        m_marker->setEnabled(until == BoxUntil::Marker);
        m_leaving->setEnabled(until != BoxUntil::Times);
    };
    connect(m_until, &QComboBox::currentIndexChanged, this, follow);
    follow();
    setMinimumWidth(400);
}

std::optional<QString> StitchRepeatDialog::whatWrong() const
{
    const auto until = static_cast<BoxUntil>(m_until->currentIndex());
    if (until == BoxUntil::Times)
        return m_times->whatWrong(tr("Times in all"));
    if (until == BoxUntil::Marker && m_markers.empty())
        return tr("There is no marker yet. Place one in the chart first.");
    return m_leaving->whatWrong(tr("Stitches left before it"));
}

Box StitchRepeatDialog::box() const
{
    Box box = m_box;
    box.until = static_cast<BoxUntil>(m_until->currentIndex());
    if (box.until == BoxUntil::Times)
        box.times = m_times->quantity().value_or(box.times);
    else
        box.leaving = m_leaving->quantity().value_or(box.leaving);
    if (box.until == BoxUntil::Marker && m_marker->currentIndex() >= 0)
        box.marker = m_markers[static_cast<std::size_t>(m_marker->currentIndex())].id;
    return box;
}

RowRepeatDialog::RowRepeatDialog(const QString& rows, const Quantity& times, const PatternHead& head,
                                 bool isNew, QWidget* parent)
    : FormDialog(tr("Row repeat"), isNew ? tr("Repeat") : tr("Keep"), parent)
{
    auto* title = new QLabel(tr("Repeat %1").arg(rows), this);
    title->setObjectName(QStringLiteral("dialogHeading"));
    body()->addWidget(title);
    auto* form = addForm();
    m_times = new QuantityEdit(sizeNames(head), 1, mostRepeats, this);
    m_times->setObjectName(QStringLiteral("times"));
    m_times->setQuantity(times);
    form->addRow(tr("&Times in all"), m_times);
    form->addRow(QString(), m_times->sizesHint());
    addNote(tr("The rows as they stand are the first time."));
    if (!isNew)
        addRemove(this, m_removed);
    setMinimumWidth(360);
}

std::optional<QString> RowRepeatDialog::whatWrong() const
{
    return m_times->whatWrong(tr("Times in all"));
}

Quantity RowRepeatDialog::times() const
{
    return m_times->quantity().value_or(Quantity(1));
}

} // namespace shawlwright::app
